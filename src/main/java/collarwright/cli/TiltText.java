package collarwright.cli;

import collarwright.collar.Aperture;
import collarwright.collar.Bench;
import collarwright.collar.Countersunk;
import collarwright.collar.Direction;
import collarwright.collar.RolledFlat;
import collarwright.collar.RoundAperture;
import collarwright.collar.SelfLocking;
import collarwright.collar.Slot;
import collarwright.collar.StrutSection;
import collarwright.collar.TiltReport;
import collarwright.collar.TiltedDrilling;
import collarwright.units.Angles;
import collarwright.units.Decimals;
import collarwright.units.InchFractions;

/** What {@code tilt} answers, in words. */
final class TiltText {

    /** Coefficients of friction that the note reckons with: our examples, no source. */
    private static final double SMOOTH = 0.2;

    private static final double ROUGH = 0.5;

    private final StringBuilder text = new StringBuilder();
    private final TiltAsked asked;
    private final TiltReport report;

    private TiltText(TiltAsked asked, TiltReport report) {
        this.asked = asked;
        this.report = report;
    }

    static String of(TiltAsked asked, TiltReport report) {
        TiltText words = new TiltText(asked, report);
        words.sizes();
        words.angles();
        if (report.binds()) {
            words.slopes();
            words.friction();
        }
        words.notes();
        return words.text.toString();
    }

    private void sizes() {
        Bench bench = asked.bench();
        StrutSection strut = bench.strut();
        line("strut", both(strut.largest()) + (strut.isRound() ? "" : ", oval, smallest " + both(strut.smallest())));
        line("collar", both(asked.outsideDiameter()) + " outside, wall " + both(asked.wall()));
        if (bench.rims() > 0) {
            line("rims", "eased, " + both(bench.rims()) + " × 45°");
        }
        if (!(asked.way() instanceof Bench.Toward toward && toward.bearing() == 0)) {
            line("way", way(asked.way()));
        }
        asked.lean().ifPresent(lean -> line("needed lean", degrees(lean)));
        line(asked.found() ? "hole needed" : "hole", both(bench.hole().size()) + made(bench.hole()));
    }

    private static String way(Bench.Way way) {
        return way instanceof Bench.Swung swung
                ? "swung to the side by " + degrees(swung.swing()) + "; angles are the tilt besides"
                : "bearing " + degrees(way.at(0.5).bearing());
    }

    private void angles() {
        if (report.leanFrom() > 0) {
            line("passes from", degrees(report.leanFrom()) + "; with less lean it does not go through the hole");
        }
        String more = report.binds() ? "" : " or more: up to there it does not bind";
        line("tilt limit", degrees(report.tiltLimit()) + more + (roundStrut() ? "" : roll(report.worstRoll())));
        if (!roundStrut()) {
            line("at its best", degrees(report.best()) + roll(report.bestRoll()));
        }
        if (asked.way() instanceof Bench.Swung) {
            line("lean in all", degrees(asked.way().at(report.tiltLimit()).lean()));
        }
        if (!asked.found()) {
            asked.lean().ifPresent(lean -> line("slack", signed(report.tiltLimit() - lean)));
        }
        report.beside(asked.bench(), asked.way())
                .ifPresent(beside ->
                        line("contact", beside ? "inner rim, beside the mid-plane" : "both rims, on the mid-plane"));
    }

    private boolean roundStrut() {
        return asked.bench().strut().isRound();
    }

    private static String roll(double roll) {
        return ", largest diameter " + Decimals.fixed(Angles.degrees(roll), 0) + "° from upright";
    }

    private void slopes() {
        line("0.1 mm more hole", signed(report.slopes().perHole()));
        line("0.1 mm more strut", signed(report.slopes().perStrut()));
        line("0.1 mm more wall", signed(report.slopes().perWall()));
    }

    private void friction() {
        double bearing = bearingLength(asked, report);
        line(
                "friction",
                "bears on about " + about(bearing)
                        + " of its length; pushed along farther off its axis than "
                        + about(SelfLocking.farthestSliding(bearing, ROUGH)) + ", coefficient "
                        + ROUGH + ", to "
                        + about(SelfLocking.farthestSliding(bearing, SMOOTH)) + ", coefficient " + SMOOTH
                        + ", it locks: friction holds it however hard it is pushed, so push in line with it");
    }

    private void notes() {
        boolean sharp = asked.bench().rims() == 0 && !(asked.bench().hole() instanceof Countersunk);
        text.append((sharp ? "Sharp rims are assumed. " : "") + "Drill and measure a test piece before a batch.\n");
    }

    static double bearingLength(TiltAsked asked, TiltReport report) {
        double wall = asked.bench().bearing().outer() - asked.bench().bearing().inner();
        double lean = asked.way().at(report.tiltLimit()).lean();
        return SelfLocking.bearingLength(asked.bench().hole().size(), wall, lean);
    }

    /** How a hole is made, with its sizes. */
    static String shape(Aperture hole) {
        return mm(hole.size()) + made(hole);
    }

    private static String made(Aperture hole) {
        if (hole instanceof TiltedDrilling tilted) {
            Direction drill = tilted.drill();
            return ", drilled off-radial, tilt " + degrees(drill.tilt()) + ", swing " + degrees(drill.swing());
        }
        if (hole instanceof Slot slot) {
            return " wide, a slot " + mm(slot.length()) + " long "
                    + (slot.around() ? "round the collar" : "along its axis");
        }
        if (hole instanceof Countersunk sunk) {
            return ", countersunk to " + mm(sunk.outside()) + " outside, " + mm(sunk.inside()) + " inside";
        }
        return hole instanceof RolledFlat ? ", cut flat, then rolled" : "";
    }

    /** The word for a kind of hole in JSON. */
    static String name(Aperture hole) {
        if (hole instanceof RoundAperture) {
            return "round";
        }
        if (hole instanceof TiltedDrilling) {
            return "tilted-drilling";
        }
        if (hole instanceof Slot) {
            return "slot";
        }
        return hole instanceof RolledFlat ? "rolled-flat" : "countersunk";
    }

    static String mm(double length) {
        return Decimals.trimmed(length, 3) + " mm";
    }

    private static String about(double length) {
        return Decimals.fixed(length, 1) + " mm (" + InchFractions.decimal(length, 2) + ")";
    }

    private static String both(double length) {
        return Decimals.fixed(length, 3) + " mm (" + InchFractions.decimal(length, 4) + ")";
    }

    private void line(String name, String value) {
        text.append(name).append(" ".repeat(20 - name.length())).append(value).append('\n');
    }

    private static String degrees(double angle) {
        return Decimals.fixed(Angles.degrees(angle), 3) + "°";
    }

    private static String signed(double angle) {
        double inDegrees = Angles.degrees(angle);
        return (inDegrees >= 0 ? "+" : "") + Decimals.fixed(inDegrees, 3) + "°";
    }
}
