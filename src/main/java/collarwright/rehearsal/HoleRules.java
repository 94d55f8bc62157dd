package collarwright.rehearsal;

import collarwright.geometry.Vec3;
import collarwright.machining.Operation;
import collarwright.machining.ProgramTask;
import collarwright.machining.ProgramUnits;
import collarwright.units.Angles;
import java.util.ArrayList;
import java.util.List;

/** Holds the holes that the text makes against the planned ones, and each against the pipe. */
final class HoleRules {

    /** Closest that a rapid may come to uncut material: a peck's 0.254 less rounding; our choice, no source. */
    private static final double LEAST_GAP = 0.2;

    /** Furthest that a cut may begin above the last bottom, twice a peck's 0.254: our choice, no source. */
    private static final double MOST_GAP = 0.508;

    private final Proof proof;
    private final ProgramTask task;
    private final List<Fault> faults = new ArrayList<>();

    private HoleRules(Proof proof, ProgramTask task) {
        this.proof = proof;
        this.task = task;
    }

    static List<Fault> check(Proof proof, ProgramTask task) {
        HoleRules rules = new HoleRules(proof, task);
        List<DrilledHole> holes = DrilledHole.from(proof);
        int planned = task.operations().size();
        if (holes.size() != planned) {
            int line = proof.events().isEmpty()
                    ? 1
                    : proof.events().get(proof.events().size() - 1).line();
            rules.fault(line, planned + " holes or dimples", holes.size() + " made");
        }
        for (int i = 0; i < StrictMath.min(planned, holes.size()); i++) {
            rules.place(holes.get(i), task.operations().get(i));
        }
        holes.forEach(rules::cuts);
        return List.copyOf(rules.faults);
    }

    private void place(DrilledHole hole, Operation operation) {
        Operation.Place place = operation.place();
        double slack = 2 * proof.tolerance();
        String name = "collar " + place.collar() + ", " + operation.title();
        if (StrictMath.abs(hole.at().x() - place.x()) > slack) {
            fault(
                    hole.line(),
                    name + " at X " + proof.text(place.x()),
                    "X " + proof.text(hole.at().x()));
        }
        double bottom = operation.bottom() + proof.file().lift();
        if (StrictMath.abs(hole.bottom() - bottom) > slack) {
            fault(hole.line(), name + " to Z " + proof.text(bottom), "Z " + proof.text(hole.bottom()));
        }
        double off = offAzimuth(hole, place.azimuth());
        if (Double.isNaN(off)) {
            fault(hole.line(), name + " after the pipe was turned to it", "A nowhere stated");
        } else if (!(off <= 2 * proof.angleToleranceDegrees())) {
            fault(
                    hole.line(),
                    name + " at azimuth " + proof.degrees(Angles.degrees(place.azimuth())),
                    "A " + proof.degrees(hole.at().a()) + ", which is " + proof.degrees(off) + " off");
        }
    }

    /** The angle in degrees between the hole turned back into the pipe's frame and the azimuth about TOP. */
    private double offAzimuth(DrilledHole hole, double azimuth) {
        return Wrap.offDegrees(
                Wrap.drilled(hole.at().a(), proof.machine().rotary().positive()), azimuth, top());
    }

    private Vec3 top() {
        return new Vec3(proof.machine().rotary().topTowardChuck() ? -1 : 1, 0, 0);
    }

    private void cuts(DrilledHole hole) {
        double crown = proof.highestCrown() + proof.file().lift();
        double reached = Double.POSITIVE_INFINITY;
        for (Event.Stroke cut : hole.cuts()) {
            double from = cut.from().z();
            startsClose(cut, reached);
            double bite = StrictMath.min(reached, from) - cut.to().z();
            bite(cut, bite);
            reached = StrictMath.min(reached, cut.to().z());
        }
        Event.Stroke first = hole.cuts().get(0);
        if (!first.drive().feedStated()) {
            fault(first.line(), "F on the first cut of each hole", "none");
        }
        rapids(hole, crown);
        pecks(hole);
        retracts(hole, crown);
    }

    /** No rapid into uncut material, also not after the last cut. */
    private void rapids(DrilledHole hole, double crown) {
        double reached = Double.POSITIVE_INFINITY;
        for (Event.Stroke stroke : hole.strokes()) {
            double z = stroke.to().z();
            double ground = StrictMath.min(reached, crown) + (reached < crown ? LEAST_GAP : 0);
            if (stroke.feed()) {
                reached = StrictMath.min(reached, z);
            } else if (z < ground - proof.tolerance()) {
                fault(stroke.line(), "a rapid ends above uncut material", "Z " + proof.text(z));
            }
        }
    }

    /** No feed through the air: the first cut begins at the R plane, others just above the last bottom. */
    private void startsClose(Event.Stroke cut, double reached) {
        double slack = 2 * proof.tolerance();
        double from = cut.from().z();
        double retract = task.heights().retract() + proof.file().lift();
        boolean first = !Double.isFinite(reached);
        if (first && StrictMath.abs(from - retract) > slack) {
            fault(cut.line(), "the first cut of a hole from Z " + proof.text(retract), "from Z " + proof.text(from));
        } else if (!first && from > reached + MOST_GAP + slack) {
            fault(
                    cut.line(),
                    "a cut that starts at Z " + proof.text(reached + MOST_GAP) + " or lower",
                    "from Z " + proof.text(from));
        }
    }

    /** As many pecks as the depth asks for. */
    private void pecks(DrilledHole hole) {
        double depth = task.heights().retract() + proof.file().lift() - hole.bottom();
        double most = task.cut().peck();
        long least = task.marks() ? 1 : (long) StrictMath.ceil((depth - 2 * proof.tolerance()) / most);
        if (depth > 0 && hole.cuts().size() > least + (task.marks() ? 0 : 1)) {
            fault(hole.line(), "a hole in " + pecks(least), pecks(hole.cuts().size()));
        }
    }

    private static String pecks(long count) {
        return count + (count == 1 ? " peck" : " pecks");
    }

    private void bite(Event.Stroke cut, double bite) {
        double step = 2 * proof.tolerance();
        boolean whole = task.marks();
        if (!whole && bite > task.cut().peck() + 2 * step + 1e-6) {
            fault(cut.line(), "pecks up to " + proof.text(task.cut().peck()), proof.text(bite));
        }
        if (Double.isNaN(bite)) {
            fault(cut.line(), "Z stated before a cut", "Z " + proof.text(bite));
        } else if (!(bite > 0)) {
            fault(cut.line(), "every cut goes deeper", proof.text(bite));
        }
        double feed = task.cut().feedMmPerMin();
        if (StrictMath.abs(cut.drive().feedMmPerMin() - feed) > feedTolerance()) {
            fault(
                    cut.line(),
                    "feed " + proof.text(feed) + " a minute",
                    proof.text(cut.drive().feedMmPerMin()) + " a minute");
        }
    }

    /** Feeds are printed with one decimal of mm/min or two of in/min. */
    private double feedTolerance() {
        return proof.settings().units() == ProgramUnits.INCH ? 0.0051 * 25.4 : 0.051;
    }

    /** Chips come out: between two cuts the tool goes up out of the pipe. */
    private void retracts(DrilledHole hole, double crown) {
        boolean chipBreak = proof.machine().post().layout().habits().chipBreak();
        if (chipBreak && hole.cuts().stream().allMatch(s -> s.block().has("G73"))) {
            return; // chips are broken, not brought out
        }
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

    private void fault(int line, String expected, String found) {
        faults.add(new Fault(line, expected, found));
    }
}
