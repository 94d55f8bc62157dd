package collarwright.testing;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.Consumer;
import java.util.stream.IntStream;
import java.util.stream.LongStream;

/**
 * Drawn cases for tests of laws ("for every hub ..."). The same seeds are drawn in every run, and a case that fails names
 * its seed; {@code -Dseed=NUMBER} runs that one alone.
 *
 * <pre>{@code
 * Seeds.each(500, draw -> {
 *     double angle = draw.between(0, 2 * Math.PI);
 *     ...
 * });
 * }</pre>
 */
public final class Seeds {
    /** Values where number handling breaks first. */
    public static final List<Double> AWKWARD = List.of(
            Double.NaN,
            Double.POSITIVE_INFINITY,
            Double.NEGATIVE_INFINITY,
            0.0,
            -0.0,
            Double.MIN_VALUE,
            -Double.MIN_VALUE,
            Double.MIN_NORMAL,
            1e-300,
            1e-9,
            -1e-9,
            -1.0,
            1e9,
            1e300,
            -1e300,
            Double.MAX_VALUE,
            -Double.MAX_VALUE);

    private final SplittableRandom random;

    private Seeds(long seed) {
        random = new SplittableRandom(seed);
    }

    /** Draws with one seed. */
    public static Seeds of(long seed) {
        return new Seeds(seed);
    }

    /** Tries a law on as many cases as told, seeds 1, 2, 3 ... */
    public static void each(int cases, Consumer<Seeds> law) {
        Long only = Long.getLong("seed");
        LongStream seeds = only == null ? LongStream.rangeClosed(1, cases) : LongStream.of(only);
        seeds.forEach(seed -> {
            try {
                law.accept(new Seeds(seed));
            } catch (AssertionError | RuntimeException e) {
                throw new AssertionError(
                        "seed " + seed + " (run it alone with -Dseed=" + seed + "): " + e.getMessage(), e);
            }
        });
    }

    /** A number from low (included) to high (excluded). */
    public double between(double low, double high) {
        return random.nextDouble(low, high);
    }

    /** A whole number, both ends included. */
    public int whole(int low, int high) {
        return random.nextInt(low, high + 1);
    }

    /** True or false. */
    public boolean coin() {
        return random.nextBoolean();
    }

    /** One of several. */
    public <T> T oneOf(List<T> several) {
        return several.get(whole(0, several.size() - 1));
    }

    /** The same things in a drawn order. */
    public <T> List<T> shuffled(List<T> things) {
        List<T> order = new ArrayList<>(things);
        for (int i = order.size() - 1; i > 0; i--) {
            Collections.swap(order, i, whole(0, i));
        }
        return List.copyOf(order);
    }

    /** As many numbers as told, each from low to high. */
    public List<Double> numbers(int count, double low, double high) {
        return IntStream.range(0, count).mapToObj(i -> between(low, high)).toList();
    }
}
