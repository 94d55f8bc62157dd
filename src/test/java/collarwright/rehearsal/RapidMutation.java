package collarwright.rehearsal;

import collarwright.testing.Seeds;
import collarwright.units.Decimals;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Rapids into the work, put into a good program where the cutter stands at its clear height. */
final class RapidMutation {

    static final String RULE = "rapids";

    private static final Pattern RAPID = Pattern.compile("^(?:N\\d+ )?G0 ([XYZA])(-?\\d+\\.\\d+)\\s*$");
    private static final Pattern DEPTH = Pattern.compile("\\bZ(-?\\d+\\.\\d+)");
    private static final Pattern NUMBER = Pattern.compile("^N(\\d+) ");

    private RapidMutation() {}

    static List<Mutation> all() {
        return List.of(
                new Mutation(RULE, "a rapid plunge beside the holes", RapidMutation::beside),
                new Mutation(RULE, "a rapid plunge straight down", RapidMutation::straight),
                new Mutation(RULE, "a rapid for a cut", RapidMutation::forCut));
    }

    private static Optional<Integer> forCut(Seeds draw, List<String> lines) {
        List<Integer> cuts = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            if (lines.get(i).matches("^(?:N\\d+ )?(?:G1 Z|G98 ).*")) {
                cuts.add(i);
            }
        }
        if (cuts.isEmpty()) {
            return Optional.empty();
        }
        int at = draw.oneOf(cuts);
        String line = lines.get(at);
        Matcher cycle = Pattern.compile("G98 G\\d+ .*\\bZ(-?\\d+\\.\\d+).*").matcher(line);
        // A cycle's rapid goes down over the hole before it, so it has to end below that.
        lines.set(
                at,
                cycle.find()
                        ? line.substring(0, cycle.start()) + "G0 Z" + fixed(lines, below(draw, lines))
                        : line.replace("G1 Z", "G0 Z"));
        return Optional.of(at);
    }

    private static Optional<Integer> beside(Seeds draw, List<String> lines) {
        List<Double> along = numbers(lines, Pattern.compile("\\bX(-?\\d+\\.\\d+)"));
        double least = along.stream().mapToDouble(x -> x).min().orElseThrow();
        double most = along.stream().mapToDouble(x -> x).max().orElseThrow();
        for (int tries = 0; tries < 1000 && most > least; tries++) {
            double x = draw.between(least, most);
            if (along.stream().allMatch(other -> Math.abs(x - other) > 0.02 * (most - least))) {
                return insert(draw, lines, Optional.of(x));
            }
        }
        return Optional.empty();
    }

    private static Optional<Integer> straight(Seeds draw, List<String> lines) {
        return insert(draw, lines, Optional.empty());
    }

    private static Optional<Integer> insert(Seeds draw, List<String> lines, Optional<Double> x) {
        List<Double> heights = numbers(lines, DEPTH);
        double clear = heights.stream().mapToDouble(z -> z).max().orElseThrow();
        List<Integer> safe = safe(lines, clear, x.isPresent());
        if (safe.isEmpty()) {
            return Optional.empty();
        }
        int at = draw.oneOf(safe);
        double z = below(draw, lines);
        List<String> inserted = new ArrayList<>();
        x.ifPresent(value -> inserted.add("G0 X" + fixed(lines, value)));
        inserted.add("G0 Z" + fixed(lines, z));
        inserted.add("G0 Z" + fixed(lines, clear));
        Matcher number = NUMBER.matcher(lines.get(at));
        boolean numbered = number.find();
        int before = numbered ? Integer.parseInt(number.group(1)) : 0;
        for (int i = 0; i < inserted.size(); i++) {
            String front = numbered ? "N" + (before + i + 1) + " " : "";
            lines.add(at + i + 1, front + inserted.get(i));
        }
        return Optional.of(at + inserted.size() - 1);
    }

    /** A little below all that the program cuts. */
    private static double below(Seeds draw, List<String> lines) {
        List<Double> heights = numbers(lines, DEPTH);
        double clear = heights.stream().mapToDouble(z -> z).max().orElseThrow();
        double deepest = heights.stream().mapToDouble(z -> z).min().orElseThrow();
        return deepest - draw.between(0.005, 0.02) * (clear - deepest);
    }

    /** Lines after which the cutter stands at the clear height and no cycle is active. */
    private static List<Integer> safe(List<String> lines, double clear, boolean overX) {
        List<Integer> safe = new ArrayList<>();
        boolean x = false;
        for (int i = 0; i < lines.size(); i++) {
            Matcher rapid = RAPID.matcher(lines.get(i));
            boolean is = rapid.matches();
            // With the next cutter in a file the axes are stated anew.
            x = (x || (is && rapid.group(1).equals("X"))) && !lines.get(i).startsWith("(CUTTER");
            boolean up = is && (!rapid.group(1).equals("Z") || Double.parseDouble(rapid.group(2)) == clear);
            boolean uncycled = lines.get(i).matches("^(?:N\\d+ )?G80\\s*$");
            if ((up || uncycled) && (x || !overX)) {
                safe.add(i);
            }
        }
        return safe;
    }

    private static String fixed(List<String> lines, double value) {
        String some = lines.stream()
                .map(RAPID::matcher)
                .filter(Matcher::matches)
                .map(m -> m.group(2))
                .findFirst()
                .orElseThrow();
        return Decimals.fixed(value, some.length() - some.indexOf('.') - 1);
    }

    private static List<Double> numbers(List<String> lines, Pattern pattern) {
        List<Double> numbers = new ArrayList<>();
        for (String line : lines) {
            Matcher matcher = pattern.matcher(line);
            while (!line.startsWith("(") && matcher.find()) {
                numbers.add(Double.valueOf(matcher.group(1)));
            }
        }
        return numbers;
    }
}
