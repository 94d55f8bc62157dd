package collarwright.rehearsal;

import collarwright.machining.Cut;
import collarwright.machining.ProgramUnits;
import java.util.ArrayList;
import java.util.List;

/**
 * How a hole is drilled on any machine, whether the pipe turns or the work lies still: in pecks, each close to
 * the last, chips brought out or broken. Its rapids are held by {@link RapidRules}.
 */
final class DrillRules {

    /** Furthest that a cut may begin above the last bottom, twice a peck's 0.254: our choice, no source. */
    private static final double MOST_GAP = 0.508;

    private final Replayed program;
    private final Drilling drilling;
    private final List<Fault> faults = new ArrayList<>();

    /**
     * How it is drilled.
     *
     * @param cut planned feed and peck
     * @param marks whether it only sets dimples, in one cut each
     * @param crown the highest that the work may stand, raised for an air cut
     * @param retract the R plane, raised for an air cut
     */
    record Drilling(Cut cut, boolean marks, double crown, double retract) {}

    private DrillRules(Replayed program, Drilling drilling) {
        this.program = program;
        this.drilling = drilling;
    }

    static List<Fault> check(Replayed program, List<DrilledHole> holes, Drilling drilling) {
        DrillRules rules = new DrillRules(program, drilling);
        holes.forEach(rules::cuts);
        return List.copyOf(rules.faults);
    }

    private void cuts(DrilledHole hole) {
        double reached = Double.POSITIVE_INFINITY;
        List<Event.Stroke> cuts = hole.cuts();
        for (Event.Stroke cut : cuts) {
            startsClose(cut, reached);
            bite(cut, StrictMath.min(reached, cut.from().z()) - cut.to().z());
            reached = StrictMath.min(reached, cut.to().z());
        }
        Event.Stroke first = cuts.get(0);
        if (!first.drive().feedStated()) {
            fault(first.line(), "F on the first cut of each hole", "none");
        }
        pecks(hole, cuts.size());
        retracts(hole);
    }

    /** No feed through the air: the first cut begins at the R plane, others just above the last bottom. */
    private void startsClose(Event.Stroke cut, double reached) {
        double slack = 2 * program.tolerance();
        double from = cut.from().z();
        double retract = drilling.retract();
        boolean first = !Double.isFinite(reached);
        if (first && StrictMath.abs(from - retract) > slack) {
            fault(
                    cut.line(),
                    "the first cut of a hole from Z " + program.text(retract),
                    "from Z " + program.text(from));
        } else if (!first && from > reached + MOST_GAP + slack) {
            fault(
                    cut.line(),
                    "a cut that starts at Z " + program.text(reached + MOST_GAP) + " or lower",
                    "from Z " + program.text(from));
        }
    }

    /** As many pecks as the depth asks for. */
    private void pecks(DrilledHole hole, int made) {
        double depth = drilling.retract() - hole.bottom();
        double most = drilling.cut().peck();
        boolean marks = drilling.marks();
        long least = marks ? 1 : (long) StrictMath.ceil((depth - 2 * program.tolerance()) / most);
        if (depth > 0 && made > least + (marks ? 0 : 1)) {
            fault(hole.line(), "a hole in " + pecks(least), pecks(made));
        }
    }

    private static String pecks(long count) {
        return count + (count == 1 ? " peck" : " pecks");
    }

    private void bite(Event.Stroke cut, double bite) {
        double most = drilling.cut().peck();
        if (!drilling.marks() && bite > most + 4 * program.tolerance() + 1e-6) {
            fault(cut.line(), "pecks up to " + program.text(most), program.text(bite));
        }
        if (Double.isNaN(bite)) {
            fault(cut.line(), "Z stated before a cut", "Z " + program.text(bite));
        } else if (!(bite > 0)) {
            fault(cut.line(), "every cut goes deeper", program.text(bite));
        }
        double feed = drilling.cut().feedMmPerMin();
        double found = cut.drive().feedMmPerMin();
        if (StrictMath.abs(found - feed) > feedTolerance()) {
            fault(cut.line(), "feed " + program.text(feed) + " a minute", program.text(found) + " a minute");
        }
    }

    /** Feeds are printed with one decimal of mm/min or two of in/min. */
    private double feedTolerance() {
        return program.units() == ProgramUnits.INCH ? 0.0051 * 25.4 : 0.051;
    }

    /** Chips come out: between two cuts the cutter goes up out of the work. */
    private void retracts(DrilledHole hole) {
        boolean chipBreak = program.machine().post().layout().habits().chipBreak();
        if (chipBreak && hole.cuts().stream().allMatch(s -> s.block().has("G73"))) {
            return; // chips are broken, not brought out
        }
        double outside = drilling.crown() - program.tolerance();
        boolean out = true;
        for (Event.Stroke stroke : hole.strokes()) {
            if (!stroke.feed()) {
                out |= stroke.to().z() >= outside;
                continue;
            }
            if (!out) {
                fault(stroke.line(), "the cutter out of the hole between pecks", "none");
            }
            out = false;
        }
    }

    private void fault(int line, String expected, String found) {
        faults.add(new Fault(line, expected, found));
    }
}
