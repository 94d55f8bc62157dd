package collarwright.machining;

import collarwright.geometry.Interval;
import collarwright.stock.Material;
import collarwright.stock.RoundStock;
import collarwright.tooling.Cutter;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/** Beds, struts and drills for tests; invented figures of usual sizes. */
public final class EndSamples {

    private EndSamples() {}

    /** A bed of 2 m, without or with drilling cycles, with or without a Y axis. */
    public static Machine bed(boolean cycles, boolean across) {
        return bed(cycles, across, 2000, new Bed(20, 2, 25));
    }

    /** A bed of any length. */
    public static Machine bed(boolean cycles, boolean across, double reach, Bed bed) {
        Set<String> words = new TreeSet<>(ProgramWords.PLAIN);
        if (cycles) {
            words.addAll(ProgramWords.CYCLES);
        }
        words.remove("A");
        if (!across) {
            words.remove("Y");
        }
        return new Machine(
                "bed",
                "Long bed",
                Machine.Kind.BED,
                new Machine.Post(cycles, words, 3, 3, 70, "M2", "ngc"),
                new Machine.Travel(
                        0,
                        reach,
                        -80,
                        250,
                        5000,
                        2000,
                        300,
                        6,
                        across ? Optional.of(new Machine.Reach(-40, 40)) : Optional.empty()),
                new Machine.Spindle(200, 6000, 2),
                new Machine.Rotary(true, true, 0, 0, 0, 0, 0, 0, 0, 0, 0),
                "invented",
                Optional.of(bed),
                Optional.empty());
    }

    /** PVC pipe of 40 mm, 39.9 to 40.2 as measured, out of round by 0.2. */
    public static RoundStock pipe() {
        return new RoundStock(
                "pvc 40",
                "PVC-U pipe 40 × 3.0",
                new Material("pvc", "PVC-U", true, 1400),
                new Interval(39.9, 40.05, 40.2),
                Optional.of(Interval.between(3.0, 3.4)),
                true,
                true,
                0.2,
                List.of(3000.0),
                "invented");
    }

    /** A 6 mm twist drill that is long enough, on a bed. */
    public static BedSettings settings(Machine bed, ProgramUnits units) {
        return settings(bed, units, RotarySamples.twist(6));
    }

    /** Any drill on a bed. */
    public static BedSettings settings(Machine bed, ProgramUnits units, Cutter drill) {
        return new BedSettings(
                new CutSettings(bed, units, RotarySamples.cutting("pvc", 30)),
                new StrutBar(pipe()),
                drill,
                new JobLabel("Bee-yard windbreak, east slope", "ABCDFGHJ"),
                1);
    }

    /** A strut of 1,234.567 mm whose second hole stands 23.4 degrees clockwise of the first. */
    public static EndStops twisted() {
        return new EndStops("SA", 12, 1234.567, 18, 21.5, StrictMath.toRadians(23.4));
    }

    /** A strut with parallel holes. */
    public static EndStops straight() {
        return new EndStops("SB", 3, 801.25, 18, 18, 0);
    }
}
