package collarwright.machining;

import collarwright.geometry.Interval;
import collarwright.tooling.Cutter;
import collarwright.tooling.CutterKind;
import collarwright.tooling.Hole;
import collarwright.tooling.Pattern;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/** Machines that bore, end mills and patterns for tests; invented figures of usual sizes. */
public final class BoreSamples {

    /** Leaves a disc in a 47.32 mm hole, none in a 20.5 mm hole. */
    public static final Cutter MILL_12 = mill(12, 38);

    private BoreSamples() {}

    /** An end mill with two teeth. */
    public static Cutter mill(double size, double flutes) {
        String text = String.valueOf(size).replaceAll("\\.0$", "");
        return new Cutter(
                "EM-" + text,
                CutterKind.END_MILL,
                text + " mm",
                size,
                Interval.of(size),
                false,
                0,
                flutes,
                100,
                20000,
                "mills",
                2,
                Optional.empty());
    }

    /** The rotary mill of the samples with a linear Y of ±60 and arcs. */
    public static Machine machine(boolean cycles) {
        Machine m = RotarySamples.machine(cycles);
        Set<String> words = new TreeSet<>(m.post().words());
        words.addAll(ProgramWords.ARCS);
        Machine.Post p = m.post();
        Machine.Travel t = m.travel();
        Machine.Post post = new Machine.Post(
                p.cycles(), words, p.lengthDecimals(), p.angleDecimals(), p.lineLength(), p.endWord(), p.extension());
        return RotarySamples.with(RotarySamples.with(m, post), across(t, 60));
    }

    /** The same travel with a linear Y that goes as far to both sides. */
    public static Machine.Travel across(Machine.Travel t, double side) {
        return new Machine.Travel(
                t.minX(),
                t.maxX(),
                t.minZ(),
                t.maxZ(),
                t.rapidMmPerMin(),
                t.maxFeedMmPerMin(),
                t.accelerationMmPerS2(),
                t.clearGap(),
                Optional.of(new Machine.Reach(-side, side)));
    }

    /** The PVC job in millimetres, or the steel job in inches. */
    public static RotarySettings settings(boolean cycles, boolean inch) {
        RotarySettings base = inch ? RotarySamples.inch(cycles) : RotarySamples.metric(cycles);
        return RotarySamples.on(base, machine(cycles));
    }

    /** Two bored sizes of one end mill beside drilled holes. */
    public static Pattern mixed(Cutter mill, double small, double large) {
        Cutter drill = RotarySamples.twist(12);
        List<Hole> holes = List.of(
                RotarySamples.hole(1, 0, 0, Cutter.bored(mill, large)),
                RotarySamples.hole(2, 58.28252559, 0, drill),
                RotarySamples.hole(3, 121.71747441, 0, Cutter.bored(mill, small)),
                RotarySamples.hole(4, 180, 2.5, Cutter.bored(mill, large)),
                RotarySamples.hole(5, 287.65, 0, Cutter.bored(mill, small)));
        return new Pattern("CA", 1, holes, "FFFFFFFF");
    }
}
