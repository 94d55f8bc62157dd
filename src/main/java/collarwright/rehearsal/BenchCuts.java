package collarwright.rehearsal;

import collarwright.machining.Cut;
import collarwright.machining.ProgramUnits;
import java.util.ArrayList;
import java.util.List;

/** Holds each hole against work that lies still: through all of it, in pecks, with room below and chips cleared. */
final class BenchCuts {

    /** Closest that a rapid may come to uncut material: a peck's 0.254 less rounding; our choice, no source. */
    private static final double LEAST_GAP = 0.2;

    private final BenchProof proof;
    private final List<Fault> faults = new ArrayList<>();

    private BenchCuts(BenchProof proof) {
        this.proof = proof;
    }

    static List<Fault> check(BenchProof proof) {
        BenchCuts rules = new BenchCuts(proof);
        for (DrilledHole hole : proof.holes()) {
            rules.cuts(hole);
            if (!proof.air()) {
                rules.through(hole);
            }
        }
        if (proof.air()) {
            proof.strokes().forEach(rules::inTheAir);
        }
        return List.copyOf(rules.faults);
    }

    private double highest() {
        return proof.levels().top() + proof.levels().lift();
    }

    private void through(DrilledHole hole) {
        BenchProof.Levels levels = proof.levels();
        double lead = proof.tool().dimples() ? 0 : proof.tool().cutter().lead();
        double edge = hole.bottom() + lead;
        if (edge > levels.through() + 2 * proof.tolerance()) {
            fault(
                    hole.line(),
                    proof.tool().dimples()
                            ? "a dimple in the work"
                            : "the full diameter through the whole work, Z " + proof.text(levels.through()),
                    "its edge at Z " + proof.text(edge));
        }
        if (hole.bottom() < levels.floor() - 2 * proof.tolerance()) {
            fault(
                    hole.line(),
                    "the cutter off the bed, Z " + proof.text(levels.floor()) + " or higher",
                    "Z " + proof.text(hole.bottom()));
        }
    }

    private void cuts(DrilledHole hole) {
        double crown = highest();
        double reached = Double.POSITIVE_INFINITY;
        for (Event.Stroke cut : hole.cuts()) {
            double from = cut.from().z();
            double ground = StrictMath.min(reached, crown);
            if (from < ground + (reached < crown ? LEAST_GAP : 0) - proof.tolerance()) {
                fault(cut.line(), "a rapid ends above uncut material", "Z " + proof.text(from));
            }
            bite(cut, StrictMath.min(reached, from) - cut.to().z());
            reached = StrictMath.min(reached, cut.to().z());
        }
        Event.Stroke first = hole.cuts().get(0);
        if (!first.drive().feedStated()) {
            fault(first.line(), "F on the first cut of each hole", "none");
        }
        retracts(hole, crown);
    }

    private void bite(Event.Stroke cut, double bite) {
        Cut planned = proof.tool().cut();
        if (!proof.tool().dimples() && bite > planned.peck() + 4 * proof.tolerance() + 1e-6) {
            fault(cut.line(), "pecks up to " + proof.text(planned.peck()), proof.text(bite));
        }
        if (!(bite > 0)) {
            fault(cut.line(), "every cut goes deeper", proof.text(bite));
        }
        double slack = proof.units() == ProgramUnits.INCH ? 0.0051 * 25.4 : 0.051;
        if (StrictMath.abs(cut.drive().feedMmPerMin() - planned.feedMmPerMin()) > slack) {
            fault(
                    cut.line(),
                    "feed " + proof.text(planned.feedMmPerMin()) + " a minute",
                    proof.text(cut.drive().feedMmPerMin()) + " a minute");
        }
    }

    /** Chips come out: between two cuts the cutter goes up out of the work. */
    private void retracts(DrilledHole hole, double crown) {
        List<Event.Stroke> strokes = hole.strokes();
        List<Event.Stroke> cuts = hole.cuts();
        for (int i = 1; i < cuts.size(); i++) {
            int after = strokes.indexOf(cuts.get(i - 1));
            int before = strokes.indexOf(cuts.get(i));
            boolean out =
                    strokes.subList(after + 1, before).stream().anyMatch(s -> s.to().z() >= crown - proof.tolerance());
            if (!out) {
                fault(cuts.get(i).line(), "the cutter out of the hole between pecks", "none");
            }
        }
    }

    private void inTheAir(Event.Stroke stroke) {
        double least = proof.levels().top() + proof.machine().travel().clearGap();
        if (stroke.to().z() < least - proof.tolerance()) {
            fault(
                    stroke.line(),
                    "an air cut at Z " + proof.text(least) + " or higher",
                    "Z " + proof.text(stroke.to().z()));
        }
    }

    private void fault(int line, String expected, String found) {
        faults.add(new Fault(line, expected, found));
    }
}
