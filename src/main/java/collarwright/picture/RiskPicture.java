package collarwright.picture;

import collarwright.hub.HubStrut;
import collarwright.plan.Plan;
import collarwright.tooling.Hole;
import collarwright.tooling.Pattern;
import collarwright.units.Angles;
import collarwright.units.Decimals;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;

/**
 * Which holes are at risk: for every kind of hole of a job the interval that its tilt limit may lie in, from the tightest to
 * the loosest case, with what chance makes of it and the limit itself, and the lean that is needed. The hole with the least
 * slack in its tightest case stands on top.
 */
public final class RiskPicture implements Picture {

    /** Rows that fit on a page with their letters. */
    private static final int MOST = 24;

    /** Kinds of hole that the verdict names. */
    private static final int TOLD = 6;

    /**
     * What chance means, for every paper that tells it. The root-sum-square of evenly spread sizes holds 91 % or more:
     * least for two of like weight, 1 − (2 − √2)²/4; worked out, no source.
     */
    public static final String CHANCE =
            "By chance: where at least 9 of 10 holes come to lie if strut, hole and wall each fall anywhere between their"
                    + " limits, independent of each other (root-sum-square of the full ranges, 91 % or more).";

    private static final double ROW = 7;
    private static final double HEAD = 7;
    private static final double FOOT = 12;
    private static final double NAMES = 46;
    private static final double FIGURES = 24;
    /** Letters that fit before the scale. */
    private static final int LETTERS = 22;

    private final double width;
    private final List<Row> all;
    private final List<Row> rows;
    private final int kinds;
    private final double low;
    private final double high;

    private record Row(String names, Hole hole) {
        double leastSlack() {
            return hole.tiltMin() - hole.neededLean();
        }
    }

    /**
     * Prepares the picture.
     *
     * @param plan the plan, with patterns
     * @param width mm on paper
     */
    public RiskPicture(Plan plan, double width) {
        this.width = width;
        this.all = rows(plan);
        this.kinds = all.size();
        this.rows = all.subList(0, StrictMath.min(MOST, kinds));
        double least = Double.POSITIVE_INFINITY;
        double most = 0;
        for (Row row : rows) {
            least = StrictMath.min(
                    least, StrictMath.min(row.hole().tiltMin(), row.hole().neededLean()));
            most = StrictMath.max(
                    most, StrictMath.max(row.hole().tiltMax(), row.hole().neededLean()));
        }
        this.low = StrictMath.floor(Angles.degrees(least));
        this.high = StrictMath.max(low + 1, StrictMath.ceil(Angles.degrees(most)));
    }

    private static List<Row> rows(Plan plan) {
        Map<String, Kind> kinds = new LinkedHashMap<>();
        List<Pattern> patterns = plan.book().patterns();
        for (int i = 0; i < patterns.size(); i++) {
            for (Hole hole : patterns.get(i).holes()) {
                String key = hole.cutter().id() + " " + hole.neededLean() + " " + hole.tiltLimit();
                Kind kind = kinds.computeIfAbsent(key, k -> new Kind(hole, new LinkedHashMap<>()));
                if (plan.book().hubsShare()) {
                    kind.add(patterns.get(i).id(), Integer.toString(hole.number()));
                } else {
                    kind.add(strut(plan, i, hole), "");
                }
            }
        }
        return kinds.values().stream()
                .map(k -> new Row(k.name(), k.hole()))
                .sorted(Comparator.comparingDouble(Row::leastSlack))
                .toList();
    }

    // Where each hub type has its own pattern, all holes for one end of a strut type are alike.
    private static String strut(Plan plan, int pattern, Hole hole) {
        int type = plan.served(pattern).get(0);
        int at = plan.placement(type).holes().indexOf(hole.number() - 1);
        HubStrut strut = plan.hubs().types().get(type).struts().get(at);
        return plan.struts().types().get(strut.strutType()).idAt(strut.tip());
    }

    /** Holes that are alike, by pattern with their numbers, or by strut. */
    private record Kind(Hole hole, Map<String, List<String>> places) {

        void add(String place, String number) {
            List<String> numbers = places.computeIfAbsent(place, p -> new ArrayList<>());
            if (!number.isEmpty()) {
                numbers.add(number);
            }
        }

        // Such as "CB 1 3, CC 2: 42 mm" or "SA: 22 mm".
        String name() {
            String cutter = ": " + hole.cutter().marked();
            String all = places.entrySet().stream()
                    .map(e -> (e.getKey() + " " + String.join(" ", e.getValue())).trim())
                    .collect(Collectors.joining(", "));
            if (all.length() + cutter.length() <= LETTERS) {
                return all + cutter;
            }
            String first = places.keySet().iterator().next();
            return first + " and " + (places.size() - 1) + " more" + cutter;
        }
    }

    @Override
    public double width() {
        return width;
    }

    @Override
    public double height() {
        return HEAD + rows.size() * ROW + FOOT;
    }

    @Override
    public String describe() {
        return "Needed lean and the interval of the tilt limit for " + rows.size() + " of " + kinds
                + " kinds of hole, the one with the least slack in its tightest case first: "
                + rows.stream()
                        .map(r ->
                                r.names() + " needs " + Figures.degrees(r.hole().neededLean()) + ", binds between "
                                        + Figures.degrees(r.hole().tiltMin()) + " and "
                                        + Figures.degrees(r.hole().tiltMax()))
                        .collect(Collectors.joining("; "))
                + ".";
    }

    private double x(double degrees) {
        return NAMES + (degrees - low) / (high - low) * (width - NAMES - FIGURES);
    }

    @Override
    public void paint(Sketch sketch) {
        scale(sketch);
        for (int i = 0; i < rows.size(); i++) {
            row(sketch, rows.get(i), HEAD + (i + 0.5) * ROW);
        }
        sketch.write(Label.of("least slack", width, 4, Label.Side.RIGHT));
    }

    private void scale(Sketch sketch) {
        double bottom = HEAD + rows.size() * ROW;
        double step = high - low > 12 ? 2 : 1;
        for (double degrees = low; degrees <= high + 1e-9; degrees += step) {
            sketch.line(
                    Stroking.solid(Stroking.FINE, Ink.RULE),
                    new Spot(x(degrees), HEAD - 1),
                    new Spot(x(degrees), bottom));
            sketch.write(Label.of(Decimals.fixed(degrees, 0) + "°", x(degrees), bottom + 5, Label.Side.MIDDLE));
        }
    }

    private void row(Sketch sketch, Row row, double y) {
        Hole hole = row.hole();
        sketch.write(Label.of(row.names(), 0, y + 1.4, Label.Side.LEFT));
        double from = x(Angles.degrees(hole.tiltMin()));
        double to = x(Angles.degrees(hole.tiltMax()));
        sketch.fill(Ink.TINT, new Rectangle2D.Double(from, y - 1.1, StrictMath.max(0.2, to - from), 2.2));
        double limit = x(Angles.degrees(hole.tiltLimit()));
        double chance = x(Angles.degrees(hole.tiltLimit() + hole.tolerance().spread())) - limit;
        sketch.fill(Ink.FAR, new Rectangle2D.Double(limit - chance, y - 1.1, StrictMath.max(0.2, 2 * chance), 2.2));
        sketch.line(Stroking.edge(), new Spot(limit, y - 1.8), new Spot(limit, y + 1.8));
        double need = x(Angles.degrees(hole.neededLean()));
        sketch.line(Stroking.solid(Stroking.WIDE, Ink.DATUM), new Spot(need, y - 2.6), new Spot(need, y + 2.6));
        sketch.fill(Ink.DATUM, Sketch.circle(new Spot(need, y), 1.1));
        sketch.write(Label.of(signed(row.leastSlack()), width, y + 1.4, Label.Side.RIGHT)
                .in(row.leastSlack() < 0 ? Ink.DATUM : Ink.INK));
    }

    /**
     * How it is read.
     *
     * @return some sentences
     */
    public String legend() {
        return "Dot: the lean that is needed. Pale bar: where the strut may bind, from the tightest case (thickest strut"
                + " and wall, smallest hole) to the loosest; grey: by chance; black line: at nominal sizes. Least slack:"
                + " tightest case less need; below 0 a strut may fall short. " + CHANCE
                + (kinds > rows.size() ? " The " + rows.size() + " kinds with the least slack of " + kinds + "." : "");
    }

    /**
     * Says whether any hole is at risk.
     *
     * @return a sentence or two: which holes fall short at nominal sizes, which in the worst case, or how much the
     *     tightest has to spare
     */
    public String verdict() {
        List<Row> shorts = all.stream().filter(r -> r.hole().slack() < 0).toList();
        List<Row> risks = all.stream()
                .filter(r -> r.hole().slack() >= 0 && r.leastSlack() < 0)
                .toList();
        if (shorts.isEmpty() && risks.isEmpty()) {
            return "No hole is at risk: even in its tightest case every strut has "
                    + Figures.degrees(all.get(0).leastSlack()) + " or more to spare"
                    + (all.stream().allMatch(r -> r.hole().cutter().measured())
                            ? "."
                            : ", where cutters that are not measured drill the size that is given for them.");
        }
        List<String> words = new ArrayList<>();
        if (!shorts.isEmpty()) {
            words.add("Short of the needed lean at nominal sizes already: "
                    + told(shorts, r -> r.hole().slack()));
        }
        if (!risks.isEmpty()) {
            words.add("At risk in the tightest case, enough at nominal sizes: " + told(risks, Row::leastSlack));
        }
        return String.join(" ", words);
    }

    private static String told(List<Row> rows, ToDoubleFunction<Row> slack) {
        String few = rows.stream()
                .limit(TOLD)
                .map(r -> r.names() + " (" + signed(slack.applyAsDouble(r)) + ")")
                .collect(Collectors.joining("; "));
        return few + (rows.size() > TOLD ? "; and " + (rows.size() - TOLD) + " more kinds of hole." : ".");
    }

    private static String signed(double angle) {
        return (angle < 0 ? "" : "+") + Decimals.fixed(Angles.degrees(angle), 2) + "°";
    }
}
