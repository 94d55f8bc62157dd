package collarwright.paper;

import collarwright.machining.CuttingData;
import collarwright.machining.Machine;
import collarwright.machining.SpeedsAndFeeds;
import collarwright.picture.Figures;
import collarwright.plan.Plan;
import collarwright.tooling.Cutter;
import collarwright.tooling.CutterKind;
import collarwright.tooling.Pattern;
import collarwright.units.Decimals;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** The cutters that the patterns need. */
final class CutterTables {

    private final Plan plan;
    private final Figures figures;

    CutterTables(Plan plan) {
        this.plan = plan;
        this.figures = new Figures(plan.job().shop().programUnits());
    }

    private List<Cutter> used() {
        return plan.book().patterns().stream()
                .flatMap(p -> p.holes().stream())
                .map(h -> h.cutter())
                .distinct()
                .sorted(Comparator.comparingDouble((Cutter c) -> c.asDrilled().nominal())
                        .thenComparing(Cutter::id))
                .toList();
    }

    private Map<String, Integer> holesToMake() {
        Map<String, Integer> counts = new TreeMap<>();
        for (Pattern pattern : plan.book().patterns()) {
            int collars = plan.job().order().made(pattern.count());
            pattern.holes().forEach(h -> counts.merge(h.cutter().id(), collars, Integer::sum));
        }
        return counts;
    }

    Grid grid() {
        Map<String, Integer> perDome = plan.book().holesByCutter();
        Map<String, Integer> toMake = holesToMake();
        List<List<Cell>> rows = new ArrayList<>();
        for (Cutter cutter : used()) {
            rows.add(List.of(
                    Cell.strong(cutter.title()),
                    Cell.of(figures.size(cutter.asDrilled().nominal()) + asDrilled(cutter)),
                    Cell.of(figures.length(cutter.lead())),
                    Cell.of(figures.length(cutter.depth())),
                    Cell.of(speed(cutter)),
                    Cell.of(Integer.toString(perDome.getOrDefault(cutter.id(), 0))),
                    Cell.strong(Integer.toString(toMake.getOrDefault(cutter.id(), 0)))));
        }
        return new Grid(
                "Cutters for the collars",
                List.of(
                        Column.words("cutter"),
                        Column.numbers("as drilled"),
                        Column.numbers("point or pilot"),
                        Column.numbers("cuts up to"),
                        Column.numbers("start speed"),
                        Column.numbers("holes in one dome"),
                        Column.numbers("holes to make")),
                rows);
    }

    private String asDrilled(Cutter cutter) {
        if (cutter.kind() == CutterKind.TUBE_CUTTER) {
            return "\ncut, kerf by\nthe profile";
        }
        if (cutter.bores()) {
            return "\nbored" + (cutter.measured() ? "" : ",\nmeasure the\nend mill");
        }
        if (cutter.measured()) {
            return "\nmeasured";
        }
        return plan.job()
                .hub()
                .trialPiece()
                .map(piece -> "\nwith " + figures.size(piece.oversize().nominal()) + "\nof trial piece")
                .orElse("\nnominal,\nnot measured");
    }

    private Optional<CuttingData.Row> row(Cutter cutter) {
        return plan.job().shop().cutting().rows().stream()
                .filter(r -> r.kind() == cutter.kind() && r.fromSize() <= cutter.size() && cutter.size() <= r.toSize())
                .findFirst();
    }

    private String speed(Cutter cutter) {
        String unknown = cutter.kind() == CutterKind.TUBE_CUTTER ? "by the\nprofile" : "ask its maker";
        return row(cutter).map(r -> speed(cutter, r)).orElse(unknown);
    }

    // Definition of surface speed: v = π · D · n. Held within what cutter and spindle can turn, and no more than a
    // quarter over what was wanted, the rule of the programs.
    private String speed(Cutter cutter, CuttingData.Row row) {
        double wanted = 1000 * row.surfaceSpeedMPerMin() / (StrictMath.PI * cutter.size());
        Machine.Spindle spindle = plan.job().shop().machine().spindle();
        double most = StrictMath.min(cutter.maxRpm(), StrictMath.max(SpeedsAndFeeds.OVER * wanted, cutter.minRpm()));
        if (spindle.minRpm() > most) {
            return "below " + rpm(most) + ":\nthe spindle\nis too fast";
        }
        if (spindle.maxRpm() < cutter.minRpm()) {
            return "above " + rpm(cutter.minRpm()) + ":\nthe spindle\nis too slow";
        }
        double least = StrictMath.max(cutter.minRpm(), spindle.minRpm());
        return rpm(StrictMath.max(least, StrictMath.min(StrictMath.min(most, spindle.maxRpm()), wanted)));
    }

    private static String rpm(double speed) {
        return Decimals.fixed(speed, 0) + " rpm";
    }

    /** Where the start speeds come from, one line for each source. */
    List<String> sources() {
        List<String> lines = new ArrayList<>();
        CuttingData data = plan.job().shop().cutting();
        for (Cutter cutter : used()) {
            row(cutter).ifPresent(r -> {
                String line = "Start speed for " + (cutter.bores() ? "an " : "a ")
                        + cutter.kind().title() + " in " + data.title() + ": "
                        + Decimals.trimmed(r.surfaceSpeedMPerMin(), 1) + " m/min ("
                        + Decimals.fixed(r.surfaceSpeedMPerMin() / 0.3048, 0)
                        + " ft/min) at the edge, within the limits"
                        + " of cutter and spindle. Source: " + r.source() + ".";
                if (!lines.contains(line)) {
                    lines.add(line);
                }
            });
        }
        if (!data.caution().isBlank()) {
            lines.add(data.caution());
        }
        return lines;
    }
}
