package collarwright.machining;

import collarwright.collar.CollarBody;
import collarwright.geometry.Interval;
import collarwright.tooling.FlatStrip;
import collarwright.tooling.Pattern;
import collarwright.tooling.StripJoint;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/** Flat machines and strips for tests; invented figures of usual sizes. */
public final class FlatSamples {

    /** Aluminium of 2.9 to 3.1 mm, 110 outside, 50 wide. */
    public static final CollarBody BODY = new CollarBody(55, Interval.between(2.9, 3.1), 50);

    private FlatSamples() {}

    /** A flat machine of 1 m by 0.5 m, without or with drilling cycles. */
    public static Machine machine(boolean cycles) {
        return machine(cycles, 1000, new Bed(15, 0, 25));
    }

    /** A flat machine of any length. */
    public static Machine machine(boolean cycles, double reach, Bed table) {
        Set<String> words = new TreeSet<>(ProgramWords.PLAIN);
        if (cycles) {
            words.addAll(ProgramWords.CYCLES);
        }
        words.remove("A");
        return new Machine(
                "flat",
                "Flat mill",
                Machine.Kind.FLAT,
                new Machine.Post(cycles, words, 3, 3, 70, "M2", "ngc"),
                new Machine.Travel(0, reach, -60, 120, 5000, 2000, 300, 6, Optional.of(new Machine.Reach(0, 500))),
                new Machine.Spindle(60, 6000, 2),
                new Machine.Rotary(true, true, 0, 0, 0, 0, 0, 0, 0, 0, 0),
                "invented",
                Optional.of(table),
                Optional.empty());
    }

    /** Settings with the usual title, overtravel and mark tool. */
    public static FlatSettings settings(Machine machine, ProgramUnits units) {
        return new FlatSettings(
                new CutSettings(machine, units, RotarySamples.cutting("aluminium", 60)),
                new JobLabel("Bean tunnel", "ABCDFGHJ"),
                1,
                MarkTool.standard());
    }

    /** Four holes with one cutter, no two gaps alike. */
    public static Pattern pattern() {
        return RotarySamples.pattern("CA", RotarySamples.twist(22), 0, 62.5, 150, 240);
    }

    /** Its strip, ends meeting. */
    public static FlatStrip strip() {
        return FlatStrip.of(pattern(), 4, BODY, new StripJoint(StripJoint.Kind.BUTT, 0));
    }
}
