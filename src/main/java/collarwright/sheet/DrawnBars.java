package collarwright.sheet;

import collarwright.drawing.Box;
import collarwright.units.Decimals;
import java.util.ArrayList;
import java.util.List;

/**
 * Finds the scale bars among a drawing's notes: a long line with ticks across it at equal steps, eleven on the metric
 * bar, five on the inch bar.
 *
 * @param metric bars of 100 mm, right ones
 * @param inch bars of 4 in, right ones
 * @param wrong bars that are not as long as they say, each with its line, what it should be and what it is
 */
record DrawnBars(int metric, int inch, List<Wrong> wrong) {
    private static final double TOLERANCE = 0.001;
    private static final double LEAST = 20;
    private static final double LONGEST_TICK = 10;
    private static final int METRIC_TICKS = 11;
    private static final int INCH_TICKS = 5;

    DrawnBars {
        wrong = List.copyOf(wrong);
    }

    /** A bar of another length than it says. */
    record Wrong(int line, double expected, double found) {}

    /** A level or upright line. */
    private record Rule(int line, boolean level, double along, double across, double length) {
        Box box() {
            return level
                    ? new Box(along, across, along + length, across)
                    : new Box(across, along, across, along + length);
        }

        static List<Rule> of(List<DrawnPiece> pieces) {
            List<Rule> rules = new ArrayList<>();
            for (DrawnPiece p : pieces) {
                boolean level = p.first().y() == p.last().y();
                boolean upright = p.first().x() == p.last().x();
                if (!p.curved() && level != upright) {
                    double x = StrictMath.min(p.first().mmX(), p.last().mmX());
                    double y = StrictMath.min(p.first().mmY(), p.last().mmY());
                    rules.add(new Rule(p.line(), level, level ? x : y, level ? y : x, p.length()));
                }
            }
            return rules;
        }
    }

    static DrawnBars of(List<DrawnPiece> notes, DrawnWork work) {
        int metric = 0;
        int inch = 0;
        List<Wrong> wrong = new ArrayList<>();
        List<Rule> rules = Rule.of(notes);
        List<Rule> ticks =
                rules.stream().filter(r -> r.length() <= LONGEST_TICK).toList();
        NearBoxes near = new NearBoxes(ticks.stream().map(Rule::box).toList());
        for (Rule bar : rules.stream().filter(r -> r.length() >= LEAST).toList()) {
            List<Integer> neighbours = near.meeting(bar.box().grown(0.01));
            if (!work.allows(neighbours.size() + 1L)) {
                break;
            }
            int count = ticks(bar, neighbours.stream().map(ticks::get).toList());
            if (count == METRIC_TICKS || count == INCH_TICKS) {
                double expected = count == METRIC_TICKS ? 100 : 4 * 25.4;
                if (StrictMath.abs(bar.length() - expected) > TOLERANCE) {
                    wrong.add(new Wrong(bar.line(), expected, bar.length()));
                } else if (count == METRIC_TICKS) {
                    metric++;
                } else {
                    inch++;
                }
            }
        }
        return new DrawnBars(metric, inch, wrong);
    }

    // How many ticks stand on a bar at equal steps from end to end; 0 if they do not.
    private static int ticks(Rule bar, List<Rule> rules) {
        List<Double> at = new ArrayList<>();
        for (Rule tick : rules) {
            double middle = tick.along() + tick.length() / 2;
            if (tick.level() != bar.level()
                    && StrictMath.abs(middle - bar.across()) < 0.01
                    && tick.across() > bar.along() - 0.01
                    && tick.across() < bar.along() + bar.length() + 0.01) {
                at.add(tick.across() - bar.along());
            }
        }
        at.sort(Double::compare);
        for (int i = 0; i < at.size(); i++) {
            if (StrictMath.abs(at.get(i) - i * bar.length() / (at.size() - 1)) > 0.01) {
                return 0;
            }
        }
        return at.size();
    }

    String words() {
        if (metric + inch == 0) {
            return "no bars: measure an edge";
        }
        return "bars " + metric + " of 100 mm, " + inch + " of 4 in";
    }

    static String mm(double length) {
        return Decimals.trimmed(length, 4) + " mm";
    }
}
