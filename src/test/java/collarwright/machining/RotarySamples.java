package collarwright.machining;

import collarwright.collar.CollarBody;
import collarwright.geometry.Interval;
import collarwright.tooling.Cutter;
import collarwright.tooling.CutterKind;
import collarwright.tooling.Hole;
import collarwright.tooling.Pattern;
import collarwright.units.Angles;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/** Machines, pipes and patterns for tests; invented figures of usual sizes. */
public final class RotarySamples {

    /** 44 mm hole saw with a 12 mm pilot. */
    public static final Cutter HOLE_SAW_44 = new Cutter(
            "HS-44", CutterKind.HOLE_SAW, "44 mm", 44, new Interval(44, 44.2, 44.5), false, 12, 38, 95, 2100, "saws");

    /** 1-1/8 in twist drill with a 118 degree point. */
    public static final Cutter TWIST_1_1_8 = new Cutter(
            "TW-1-1/8in",
            CutterKind.TWIST,
            "1-1/8 in",
            28.575,
            new Interval(28.575, 28.6, 28.85),
            false,
            28.575 / 2 / StrictMath.tan(Angles.radians(59)),
            120,
            60,
            900,
            "twist");

    private RotarySamples() {}

    /** A slow rotary mill, without or with drilling cycles. */
    public static Machine machine(boolean cycles) {
        Set<String> words = new TreeSet<>(ProgramWords.PLAIN);
        if (cycles) {
            words.addAll(ProgramWords.CYCLES);
        }
        return new Machine(
                cycles ? "mill-cycles" : "mill-plain",
                "Small mill with a rotary axis",
                Machine.Kind.ROTARY,
                new Machine.Post(cycles, words, 3, 3, 70, "M2", "ngc"),
                new Machine.Travel(-10, 1000, -60, 400, 3000, 1500, 400, 10),
                new Machine.Spindle(60, 3000, 3),
                new Machine.Rotary(true, true, 3600, 720, 2, 100, 20, 15, 3, 10, 1200),
                "invented");
    }

    /** A drill press; it has a spindle and nothing else that counts. */
    public static Machine press(double minRpm, double maxRpm) {
        return new Machine(
                "press",
                "Drill press",
                Machine.Kind.PRESS,
                new Machine.Post(false, Set.of(), 3, 3, 70, "M2", "ngc"),
                new Machine.Travel(0, 0, 0, 0, 0, 0, 0, 0),
                new Machine.Spindle(minRpm, maxRpm, 2),
                new Machine.Rotary(true, true, 0, 0, 0, 0, 0, 0, 0, 0, 0),
                "invented");
    }

    /** The same machine with another post. */
    public static Machine with(Machine m, Machine.Post post) {
        return new Machine(
                m.name(),
                m.title(),
                m.kind(),
                post,
                m.travel(),
                m.spindle(),
                m.rotary(),
                m.source(),
                m.bed(),
                m.tube());
    }

    /** The same machine with another travel. */
    public static Machine with(Machine m, Machine.Travel travel) {
        return new Machine(
                m.name(),
                m.title(),
                m.kind(),
                m.post(),
                travel,
                m.spindle(),
                m.rotary(),
                m.source(),
                m.bed(),
                m.tube());
    }

    /** The same machine with another spindle. */
    public static Machine with(Machine m, Machine.Spindle spindle) {
        return new Machine(
                m.name(),
                m.title(),
                m.kind(),
                m.post(),
                m.travel(),
                spindle,
                m.rotary(),
                m.source(),
                m.bed(),
                m.tube());
    }

    /** The same machine with another rotary axis. */
    public static Machine with(Machine m, Machine.Rotary rotary) {
        return new Machine(
                m.name(),
                m.title(),
                m.kind(),
                m.post(),
                m.travel(),
                m.spindle(),
                rotary,
                m.source(),
                m.bed(),
                m.tube());
    }

    /** The same machine with another sign of A, and TOP the other way. */
    public static Machine turned(Machine m, boolean positive, boolean topTowardChuck) {
        Machine.Rotary r = m.rotary();
        return with(
                m,
                new Machine.Rotary(
                        positive,
                        topTowardChuck,
                        r.rapidDegreesPerMin(),
                        r.accelerationDegreesPerS2(),
                        r.takeUpDegrees(),
                        r.chuckLength(),
                        r.jawClear(),
                        r.jawHeight(),
                        r.partingKerf(),
                        r.endTrim(),
                        r.maxStick()));
    }

    /** Cutting data that cover every cutter of these samples. */
    public static CuttingData cutting(String material, double surfaceSpeedMPerMin) {
        return new CuttingData(
                material,
                material,
                List.of(
                        new CuttingData.Row(CutterKind.TWIST, 1, 60, surfaceSpeedMPerMin, 0.1, 0.5, "invented"),
                        new CuttingData.Row(CutterKind.HOLE_SAW, 14, 160, surfaceSpeedMPerMin, 0.1, 0.2, "invented"),
                        new CuttingData.Row(CutterKind.END_MILL, 1, 25, surfaceSpeedMPerMin, 0.04, 0.3, "invented")),
                "Chips are sharp");
    }

    /** PVC pipe 160 with a wall of 4.7 to 5.4, collars 80 wide. */
    public static Workpiece pvc160() {
        return new Workpiece(
                "PVC-U pipe 160 × 4.7",
                new CollarBody(80.05, Interval.between(4.7, 5.4), 80),
                0.6,
                true,
                List.of(1000.0, 3000.0));
    }

    /** Steel pipe of 4 in: OD 114.3, wall 6.02 (ASME B36.10M), collars 2-1/2 in wide. */
    public static Workpiece steel4in() {
        return new Workpiece(
                "Steel pipe 4 in Sch 40",
                new CollarBody(57.15, Interval.of(6.02), 63.5),
                0,
                false,
                List.of(20 * 304.8));
    }

    /** The PVC job in millimetres. */
    public static RotarySettings metric(boolean cycles) {
        return settings(machine(cycles), ProgramUnits.MM, cutting("pvc", 60), pvc160());
    }

    /** The steel job in inches. */
    public static RotarySettings inch(boolean cycles) {
        return settings(machine(cycles), ProgramUnits.INCH, cutting("steel", 25), steel4in());
    }

    /** Settings with the usual title, overtravel and mark tool. */
    public static RotarySettings settings(Machine machine, ProgramUnits units, CuttingData cutting, Workpiece work) {
        JobLabel label = new JobLabel("Bee-yard windbreak, east slope", "ABCDFGHJ");
        return new RotarySettings(machine, units, cutting, work, label, 1, MarkTool.standard());
    }

    /** The same settings on another machine. */
    public static RotarySettings on(RotarySettings s, Machine machine) {
        return new RotarySettings(machine, s.units(), s.cutting(), s.work(), s.label(), s.overtravel(), s.mark());
    }

    /** A pattern with one cutter for all holes. */
    public static Pattern pattern(String id, Cutter cutter, double... azimuthsDegrees) {
        List<Hole> holes = new ArrayList<>();
        for (double azimuth : azimuthsDegrees) {
            holes.add(hole(holes.size() + 1, azimuth, 0, cutter));
        }
        return new Pattern(id, 1, holes, "FFFFFFFF");
    }

    /** A hole. */
    public static Hole hole(int number, double azimuthDegrees, double height, Cutter cutter) {
        double size = cutter.asDrilled().nominal();
        return new Hole(number, Angles.radians(azimuthDegrees), height, 0.2, size, cutter, 0.21, 0.2, 0.22);
    }

    /** Six holes with the gaps of a six-way hub of a 2-frequency dome. */
    public static Pattern sixWay(Cutter cutter) {
        return pattern("CA", cutter, 0, 58.28252559, 121.71747441, 180, 238.28252559, 301.71747441);
    }

    /** A twist drill with a 118 degree point. */
    public static Cutter twist(double size) {
        return new Cutter(
                "TW-" + size,
                CutterKind.TWIST,
                size + " mm",
                size,
                new Interval(size, size + 0.05, size + 0.2),
                false,
                size / 2 / StrictMath.tan(Angles.radians(59)),
                10 * size,
                30,
                6000,
                "twist");
    }
}
