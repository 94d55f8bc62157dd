package collarwright.plan;

import collarwright.collar.CollarBody;
import collarwright.collar.Direction;
import collarwright.finding.Code;
import collarwright.finding.Finding;
import collarwright.finding.Level;
import collarwright.finding.Where;
import collarwright.geometry.Interval;
import collarwright.job.Job;
import collarwright.tooling.Cutter;
import collarwright.tooling.CutterChoice;
import collarwright.tooling.CutterKind;
import collarwright.tooling.CutterNeed;
import collarwright.tooling.DrillingSettings;
import collarwright.tooling.Fit;
import collarwright.tooling.HoleNeed;
import collarwright.tooling.HoleSize;
import collarwright.tooling.PatternBook;
import collarwright.units.Angles;
import collarwright.units.Decimals;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;

/** Tells of holes that no cutter fits, and of what a limit on the number of cutters costs. */
final class CutterNotes {

    /** With more sizes than this no extra cutter is looked for: each of them is tried. */
    private static final int TRIED = 200;

    private final DrillingSettings drilling;

    CutterNotes(Job job) {
        this.drilling = job.drilling();
    }

    /** A hole that has no cutter: what is missing, what is nearest, and what a bored hole would give. */
    Finding noCutter(String where, HoleSize size) {
        double bore = 2 * size.need().body().leastInnerRadius();
        if (!(size.required() < bore)) {
            return Finding.stop(
                    Code.HOLE_TOO_WIDE,
                    new Where.Part(where),
                    "a hole narrower than the collar's bore, " + Decimals.fixed(bore, 2) + " mm",
                    "no such hole lets the strut reach its angle",
                    "take a wider collar pipe or a thinner strut");
        }
        double wanted = wanted(size);
        if (!(wanted < bore)) {
            return tooMuchRoom(where, size, bore);
        }
        List<String> hints = new ArrayList<>();
        hints.add("add a cutter of " + Decimals.fixed(StrictMath.ceil(wanted * 10) / 10, 1)
                + " mm or a little more to the rack");
        bored(size).ifPresent(hints::add);
        hints.add("or take a thinner strut or a thinner collar wall");
        return new Finding(
                Level.STOP,
                Code.HOLE_NO_CUTTER,
                new Where.Part(where),
                "a cutter of at least " + Decimals.fixed(wanted, 2) + " mm as drilled, below " + Decimals.fixed(bore, 2)
                        + " mm",
                "the nearest are " + nearestTwo(wanted),
                hints);
    }

    // The least size that the rule of choice takes: under nearest it may come up short by the band.
    private double wanted(HoleSize size) {
        double easy = size.need().strut().max() + drilling.leastClearance();
        if (drilling.fit() == Fit.REACH) {
            return StrictMath.max(size.required(), easy);
        }
        HoleNeed need = size.need();
        double lean = StrictMath.max(0, need.lean() - drilling.nearestBand());
        Direction inBandOf = Direction.leaning(lean, need.toward().bearing());
        double inBand = need.body()
                .required(
                        need.strut().nominal(), inBandOf, need.body().bearing().nominal());
        return StrictMath.max(easy, inBand);
    }

    // The strut itself would pass: it is the room it was given that no hole has.
    private Finding tooMuchRoom(String where, HoleSize size, double bore) {
        double strut = size.need().strut().max();
        double most = StrictMath.floor((bore - strut) * 10) / 10;
        return Finding.stop(
                Code.HOLE_NO_CUTTER,
                new Where.Part(where),
                "a hole that leaves the strut its least clearance and is narrower than the collar's bore, "
                        + Decimals.fixed(bore, 2) + " mm",
                "a strut of up to " + Decimals.fixed(strut, 2) + " mm with least-clearance = "
                        + Decimals.fixed(drilling.leastClearance(), 2) + " mm leaves no such hole",
                "make least-clearance smaller, well below " + Decimals.fixed(most, 1) + " mm; a millimetre is much");
    }

    private Optional<String> bored(HoleSize size) {
        HoleNeed need = size.need();
        CollarBody body = need.body();
        double least = StrictMath.max(size.required(), need.strut().max() + drilling.leastClearance());
        double hole = StrictMath.ceil(least * 100) / 100;
        if (!(hole < 2 * body.leastInnerRadius())) {
            return Optional.empty();
        }
        double limit =
                body.tiltLimit(need.strut().nominal(), hole, body.bearing().nominal(), need.toward());
        return Optional.of(
                "or bore it to " + Decimals.fixed(hole, 2) + " mm: a nominal strut then binds at " + degrees(limit)
                        + ", " + degrees(limit - need.lean()) + " of slack, and the thickest reaches its angle");
    }

    private String nearestTwo(double required) {
        return drilling.cutters().stream()
                .sorted(Comparator.comparingDouble(
                        (Cutter c) -> StrictMath.abs(c.asDrilled().nominal() - required)))
                .limit(2)
                .sorted(Comparator.comparingDouble((Cutter c) -> c.asDrilled().nominal()))
                .map(c -> c.kind().title() + " " + c.marked() + " (" + c.rack() + ")")
                .collect(Collectors.joining(" and "));
    }

    /** What the limit on the number of cutters costs; empty where it costs nothing, or holes have no cutter at all. */
    Optional<Finding> limited(PatternBook book) {
        return drilling.mostCutters().isEmpty() || book.asked().isEmpty()
                ? Optional.empty()
                : limited(book.needs(drilling));
    }

    Optional<Finding> limited(List<CutterNeed> all) {
        List<CutterNeed> needs = CutterChoice.drilled(all, drilling);
        OptionalDouble free = CutterChoice.unlimited(needs, drilling.cutters());
        if (drilling.mostCutters().isEmpty() || free.isEmpty()) {
            return Optional.empty();
        }
        int most = drilling.mostCutters().get();
        Optional<CutterChoice> choice = CutterChoice.of(needs, drilling.cutters(), most);
        if (choice.isEmpty()) {
            return Optional.of(tooFew(needs, most));
        }
        if (choice.get().worst() <= free.getAsDouble()) {
            return Optional.empty();
        }
        List<String> hints = new ArrayList<>();
        CutterChoice.of(needs, drilling.cutters(), most + 1)
                .ifPresent(more -> hints.add("with " + (most + 1) + " cutters it is " + degrees(more.worst()) + ": "
                        + names(more.cutters())));
        better(needs, choice.get(), most).ifPresent(hints::add);
        hints.add("each hole's slack stands in the pack: compare before you buy or change anything");
        return Optional.of(new Finding(
                Level.NOTE,
                Code.CUTTERS_FEW,
                new Where.Part("rack"),
                word() + " of " + degrees(free.getAsDouble()) + " at worst, as with every cutter of the racks",
                degrees(choice.get().worst()) + " with most-cutters = " + most + ": "
                        + names(choice.get().cutters()),
                hints));
    }

    private String word() {
        return drilling.fit() == Fit.REACH ? "slack" : "a lean off by no more than";
    }

    private Finding tooFew(List<CutterNeed> needs, int most) {
        int enough = most + 1;
        while (CutterChoice.of(needs, drilling.cutters(), enough).isEmpty()) {
            enough++;
        }
        return Finding.stop(
                Code.CUTTERS_FEW,
                new Where.Part("rack"),
                "cutters that serve every hole, " + enough + " or more of these racks",
                "most-cutters = " + most,
                "write most-cutters = " + enough,
                "or add a cutter that serves the holes of two");
    }

    // The one size more that helps most: a least hole of one of the needs, rounded up to a tenth.
    private Optional<String> better(List<CutterNeed> needs, CutterChoice now, int most) {
        if (needs.size() > TRIED) {
            return Optional.empty();
        }
        double worst = now.worst();
        Optional<String> best = Optional.empty();
        for (CutterNeed need : needs) {
            double size = StrictMath.ceil(need.required() * 10) / 10;
            List<Cutter> more = new ArrayList<>(drilling.cutters());
            more.add(bought(size));
            double then =
                    CutterChoice.of(needs, more, most).map(CutterChoice::worst).orElse(worst);
            if (then < worst - StrictMath.PI / 18000) {
                worst = then;
                best = Optional.of("or add a cutter of " + Decimals.fixed(size, 1)
                        + " mm as drilled to the rack: then it is " + degrees(then));
            }
        }
        return best;
    }

    private static Cutter bought(double size) {
        return new Cutter(
                "~", CutterKind.TWIST, "", size, Interval.of(size), false, 0, Double.MAX_VALUE, 1, 1, "to buy");
    }

    private static String names(List<Cutter> cutters) {
        return cutters.stream().map(c -> c.kind().title() + " " + c.marked()).collect(Collectors.joining(", "));
    }

    private static String degrees(double angle) {
        return Decimals.fixed(Angles.degrees(angle), 2) + "°";
    }
}
