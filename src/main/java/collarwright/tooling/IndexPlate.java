package collarwright.tooling;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * A round plate that turns with the collar on one mandrel: a pin dropped into a notch holds the collar at a hole's
 * azimuth.
 *
 * <p>Frame: the face that looks the way TOP looks is toward the reader, origin in the bore's middle; azimuth is clockwise
 * from the 0° line, as on the collar seen from above. A notch has straight sides and a half round bottom of the pin's
 * diameter, whose middle lies one pin inside the rim.
 *
 * @param pattern the pattern's id
 * @param sizes rim, bore and pin
 * @param notches one for each azimuth, clockwise from the 0° line
 */
public record IndexPlate(String pattern, Sizes sizes, List<Notch> notches) {

    /** Holes nearer in azimuth than this share a notch: a pin cannot tell them apart. Our choice, no source. */
    private static final double ALIKE = StrictMath.toRadians(0.01);

    private static final double TURN = 2 * StrictMath.PI;

    /** Keeps the list. */
    public IndexPlate {
        notches = List.copyOf(notches);
        if (notches.isEmpty()) {
            throw new IllegalArgumentException(pattern + ": a plate has notches");
        }
    }

    /**
     * Sizes of a plate.
     *
     * @param diameter of the rim
     * @param bore diameter for the mandrel, above 0
     * @param pin diameter of the pin, above 0
     */
    public record Sizes(double diameter, double bore, double pin) {
        /** Checks the order of sizes. */
        public Sizes {
            boolean good = bore > 0 && pin > 0 && diameter < Double.POSITIVE_INFINITY;
            if (!good || !(diameter / 2 > bore / 2 + 1.5 * pin)) {
                throw new IllegalArgumentException("no plate: " + diameter + ", " + bore + ", " + pin);
            }
        }

        /**
         * Returns the radius of a pin's axis when it is in its notch.
         *
         * @return one pin inside the rim
         */
        public double pinRadius() {
            return diameter / 2 - pin;
        }

        /**
         * Returns how much is left between the bore and the bottom of a notch.
         *
         * @return a length, above 0
         */
        public double room() {
            return pinRadius() - pin / 2 - bore / 2;
        }
    }

    /**
     * A notch.
     *
     * @param azimuth clockwise, in [0, 2π)
     * @param holes numbers of the holes it stands for, one or more
     */
    public record Notch(double azimuth, List<Integer> holes) {
        /** Keeps the list. */
        public Notch {
            holes = List.copyOf(holes);
        }
    }

    /**
     * Makes the plate of a pattern.
     *
     * @param pattern the holes
     * @param sizes rim, bore and pin
     * @return the plate; its notches may run into one another, see {@link #leastWeb()}
     */
    public static IndexPlate of(Pattern pattern, Sizes sizes) {
        List<Hole> holes = pattern.holes().stream()
                .sorted(Comparator.comparingDouble(Hole::azimuth).thenComparingInt(Hole::number))
                .toList();
        List<Notch> notches = new ArrayList<>();
        for (Hole hole : holes) {
            Notch last = notches.isEmpty() ? new Notch(-1, List.of()) : notches.get(notches.size() - 1);
            if (hole.azimuth() - last.azimuth() <= ALIKE) {
                List<Integer> both = new ArrayList<>(last.holes());
                both.add(hole.number());
                notches.set(notches.size() - 1, new Notch(last.azimuth(), both));
            } else {
                notches.add(new Notch(hole.azimuth(), List.of(hole.number())));
            }
        }
        return new IndexPlate(pattern.id(), sizes, closed(notches));
    }

    // The last notch may lie just before the 0° line and the first on it.
    private static List<Notch> closed(List<Notch> notches) {
        Notch first = notches.get(0);
        Notch last = notches.get(notches.size() - 1);
        if (notches.size() == 1 || first.azimuth() + TURN - last.azimuth() > ALIKE) {
            return notches;
        }
        List<Integer> both = new ArrayList<>(first.holes());
        both.addAll(last.holes());
        List<Notch> rest = new ArrayList<>(notches.subList(0, notches.size() - 1));
        rest.set(0, new Notch(first.azimuth(), both));
        return rest;
    }

    /**
     * Returns the angle from a notch to the next one clockwise.
     *
     * @param index of the notch, from 0
     * @return in (0, 2π]
     */
    public double gap(int index) {
        double to = index + 1 < notches.size()
                ? notches.get(index + 1).azimuth()
                : notches.get(0).azimuth() + TURN;
        return to - notches.get(index).azimuth();
    }

    /**
     * Returns the least width that is left between two notches, at the pins' axes.
     *
     * @return below 0 where they run into one another; infinity for one notch
     */
    public double leastWeb() {
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < notches.size() && notches.size() > 1; i++) {
            double gap = StrictMath.min(gap(i), StrictMath.PI);
            least = StrictMath.min(least, 2 * sizes.pinRadius() * StrictMath.sin(gap / 2) - sizes.pin());
        }
        return least;
    }
}
