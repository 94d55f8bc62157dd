package collarwright.machining;

import collarwright.finding.Code;
import collarwright.finding.Finding;
import collarwright.finding.Level;
import collarwright.finding.Where;
import collarwright.tooling.Cutter;
import collarwright.tooling.CutterKind;
import collarwright.units.Decimals;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Chooses speed and feed for each cutter, and says so where the machine sets the limit.
 *
 * <p>rpm = 1000 · v / (π · D) with v the surface speed in m/min and D the marked size in mm (the same as 12 · sfm / (π ·
 * D in inches)); feed = advance per turn · rpm, of an end mill advance per
 * tooth · teeth · rpm at the wall of the hole that it bores. The speed may fall to the cutter's lowest and rise a quarter over the
 * cutting data, never over the cutter's highest; the spindle must be able to turn within that range. A press has no
 * program that would turn it wrongly: there it is a warning, with the nearest speed that the press can turn.
 *
 * <p>Source of the formula: definition of surface speed. The quarter is our choice, no source.
 */
final class CutPlanner {

    /** Pecks shorter than this only rub: our choice, no source. */
    private static final double LEAST_PECK = 1;

    private final CutSettings settings;
    private final List<Finding> findings = new ArrayList<>();

    CutPlanner(CutSettings settings) {
        this.settings = settings;
    }

    CutPlanner(RotarySettings settings) {
        this(settings.cuts());
    }

    /** What was found so far: stops (for a press warnings) where a cutter cannot be turned, notes where a limit was used. */
    List<Finding> findings() {
        return List.copyOf(findings);
    }

    Optional<Cut> plan(Cutter cutter) {
        Optional<CuttingData.Row> row = settings.cutting().rows().stream()
                .filter(r -> r.kind() == cutter.kind() && r.fromSize() <= cutter.size() && cutter.size() <= r.toSize())
                .findFirst();
        if (row.isEmpty()) {
            findings.add(noRow(cutter));
            return Optional.empty();
        }
        return speed(cutter, row.get()).map(rpm -> cut(cutter, row.get(), rpm));
    }

    private Optional<Integer> speed(Cutter cutter, CuttingData.Row row) {
        double wanted = wanted(cutter, row);
        double high = StrictMath.min(cutter.maxRpm(), StrictMath.max(SpeedsAndFeeds.OVER * wanted, cutter.minRpm()));
        Machine.Spindle spindle = settings.machine().spindle();
        double least = StrictMath.ceil(StrictMath.max(cutter.minRpm(), spindle.minRpm()));
        double most = StrictMath.floor(StrictMath.min(high, spindle.maxRpm()));
        if (least > most) {
            return nearest(cutter, wanted, high);
        }
        double rpm = StrictMath.max(least, StrictMath.min(most, StrictMath.rint(wanted)));
        if (rpm != StrictMath.rint(wanted)) {
            findings.add(Finding.note(
                    Code.SPINDLE_RANGE,
                    where(cutter),
                    Sizes.rpm(wanted) + " rpm by the cutting data",
                    Sizes.rpm(rpm) + " rpm, by the limits of cutter and spindle",
                    "nothing to do; watch heat and chips on the first holes"));
        }
        return Optional.of((int) rpm);
    }

    /** No speed is in range: a press may still turn as near to it as it can, within what the cutter allows. */
    private Optional<Integer> nearest(Cutter cutter, double wanted, double high) {
        Machine.Spindle spindle = settings.machine().spindle();
        if (settings.machine().programmed()) {
            findings.add(cannotTurn(cutter, wanted, high));
            return Optional.empty();
        }
        boolean tooFast = spindle.minRpm() > high;
        double rpm = tooFast ? StrictMath.ceil(spindle.minRpm()) : StrictMath.floor(spindle.maxRpm());
        boolean allowed = cutter.minRpm() <= rpm && rpm <= cutter.maxRpm();
        findings.add(pressCannotTurn(cutter, range(cutter, wanted, high), rpm, allowed));
        return allowed ? Optional.of((int) rpm) : Optional.empty();
    }

    private Cut cut(Cutter cutter, CuttingData.Row row, int rpm) {
        double byData = row.feedPerRevolution() * cutter.teeth() * rpm;
        double limit = settings.machine().programmed()
                ? settings.machine().travel().maxFeedMmPerMin()
                : Double.POSITIVE_INFINITY; // a hand feeds it
        double feed = StrictMath.min(byData, limit);
        if (feed < byData) {
            findings.add(Finding.note(
                    Code.SPINDLE_RANGE,
                    where(cutter),
                    Decimals.fixed(byData, 1) + " mm/min by the cutting data",
                    Decimals.fixed(limit, 1) + " mm/min, the highest feed of the machine",
                    "nothing to do; the cutter advances less per turn"));
        }
        double snapped = settings.grid().snapFeed(feed);
        double peck = StrictMath.max(LEAST_PECK, row.peckDepthRatio() * cutter.size());
        return new Cut(rpm, snapped, peck, formulas(cutter, row, rpm, snapped), row.source());
    }

    private List<String> formulas(Cutter cutter, CuttingData.Row row, int rpm, double feed) {
        boolean inch = settings.units() == ProgramUnits.INCH;
        String speed = inch
                ? "12 × " + Decimals.fixed(row.surfaceSpeedMPerMin() / 0.3048, 0) + " ft/min ÷ (π × "
                        + Sizes.in(settings.units(), cutter.size())
                : "1000 × " + Decimals.trimmed(row.surfaceSpeedMPerMin(), 1) + " m/min ÷ (π × "
                        + Sizes.in(settings.units(), cutter.size());
        double unit = settings.units().millimetres();
        String turn = Decimals.fixed(row.feedPerRevolution() / unit, inch ? 4 : 3);
        boolean mill = cutter.kind() == CutterKind.END_MILL;
        String teeth = mill ? " × " + cutter.teeth() + (cutter.teeth() == 1 ? " tooth" : " teeth") : "";
        return List.of(
                "rpm = " + speed + ") = " + Sizes.rpm(wanted(cutter, row)) + ", used " + rpm,
                (mill ? "feed at the wall = " : "feed = ") + turn + " "
                        + settings.units().symbol() + teeth + " × " + rpm + " rpm = "
                        + Decimals.fixed(row.feedPerRevolution() * cutter.teeth() * rpm / unit, inch ? 2 : 1)
                        + ", used "
                        + settings.grid().feed(feed) + " " + settings.units().symbol() + "/min");
    }

    private Finding cannotTurn(Cutter cutter, double wanted, double high) {
        Machine.Spindle spindle = settings.machine().spindle();
        return Finding.stop(
                Code.SPINDLE_RANGE,
                where(cutter),
                range(cutter, wanted, high),
                spindleTurns(),
                spindle.minRpm() > high
                        ? "use a machine or a gear that turns so slowly, such as a drill press"
                        : "use a machine or a gear that turns so fast",
                "take the cutter out of the rack, if another size will do");
    }

    private Finding pressCannotTurn(Cutter cutter, String range, double nearest, boolean allowed) {
        boolean tooFast = nearest > cutter.minRpm();
        List<String> hints = new ArrayList<>();
        hints.add("use a press or a gear that turns so " + (tooFast ? "slowly" : "fast"));
        if (allowed) {
            hints.add("or drill at " + Sizes.rpm(nearest) + " rpm: light feed, watch heat and chips");
        }
        hints.add("take the cutter out of the rack, if another size will do");
        return new Finding(
                Level.WARN,
                Code.SPINDLE_RANGE,
                where(cutter),
                range,
                spindleTurns() + "; the nearest is " + Sizes.rpm(nearest) + " rpm",
                hints);
    }

    private String range(Cutter cutter, double wanted, double high) {
        return "a spindle that turns " + Sizes.rpm(cutter.minRpm()) + " to " + Sizes.rpm(high) + " rpm for a "
                + cutter.marked() + " " + cutter.kind().title() + " in "
                + settings.cutting().material() + " (" + Sizes.rpm(wanted) + " rpm by the cutting data)";
    }

    private String spindleTurns() {
        Machine.Spindle spindle = settings.machine().spindle();
        return settings.machine().name() + " turns " + Sizes.rpm(spindle.minRpm()) + " to "
                + Sizes.rpm(spindle.maxRpm()) + " rpm";
    }

    private Finding noRow(Cutter cutter) {
        return new Finding(
                settings.machine().programmed() ? Level.STOP : Level.WARN,
                Code.PROFILE_WRONG,
                where(cutter),
                "a row of the cutting data for " + settings.cutting().material() + " that covers a " + cutter.marked()
                        + " " + cutter.kind().title(),
                "no such row",
                List.of(
                        "add a row for " + cutter.kind().title() + "s of this size to the cutting data",
                        "take the cutter out of the rack"));
    }

    private static double wanted(Cutter cutter, CuttingData.Row row) {
        return 1000 * row.surfaceSpeedMPerMin() / (StrictMath.PI * cutter.size());
    }

    private static Where where(Cutter cutter) {
        return new Where.Part("cutter " + cutter.id());
    }
}
