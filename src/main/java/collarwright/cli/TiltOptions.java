package collarwright.cli;

import collarwright.collar.Aperture;
import collarwright.collar.Bench;
import collarwright.collar.Direction;
import collarwright.collar.RolledFlat;
import collarwright.collar.Rolls;
import collarwright.collar.StrutSection;
import collarwright.collar.SwungContact.Wall;
import collarwright.units.Decimals;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** The options of {@code tilt} that tell sizes and angles, read into a question that has an answer. */
final class TiltOptions {

    private static final double LARGEST_LEAN_DEGREES = 80;
    private static final double LARGEST_SWING_DEGREES = 75;

    @Option(names = "--strut", required = true, paramLabel = "LENGTH", description = "Strut diameter.")
    private String strut = "";

    @Option(
            names = "--strut-oval",
            paramLabel = "LENGTH",
            description = "Smallest diameter of an oval strut; --strut is its largest.")
    private @Nullable String strutOval;

    @Option(
            names = "--collar-od",
            required = true,
            paramLabel = "LENGTH",
            description = "Outside diameter of the collar.")
    private String collarOd = "";

    @Option(names = "--wall", required = true, paramLabel = "LENGTH", description = "Wall of the collar.")
    private String wall = "";

    @Option(
            names = "--rims",
            paramLabel = "LENGTH",
            description = "Size of the 45° chamfer that eases both rims evenly; sharp rims without it.")
    private @Nullable String rims;

    @Option(
            names = "--hole",
            paramLabel = "LENGTH",
            description = "Hole diameter, or a slot's width: prints the tilt limit; with --lean the slack too.")
    private @Nullable String hole;

    @Option(
            names = "--lean",
            paramLabel = "DEGREES",
            description = "Needed lean; with --swing the needed tilt. Without --hole: prints the hole's size.")
    private @Nullable String lean;

    @Option(
            names = "--bearing",
            paramLabel = "DEGREES",
            description = "The way it leans, round the hole: 0 toward the dome's centre (default), 90 to the side.")
    private @Nullable String bearing;

    @Option(
            names = "--swing",
            paramLabel = "DEGREES",
            description = "The strut is swung to the side by so much, clockwise from above, and tilts besides.")
    private @Nullable String swing;

    @Option(names = "--units", paramLabel = "UNIT", description = "Unit of bare numbers: mm (default) or in.")
    private String units = "mm";

    @Mixin
    private TiltShape shape = new TiltShape();

    /** Whether neither a hole nor a lean was given. */
    boolean sizesOnly() {
        return hole == null && lean == null;
    }

    /**
     * Reads all options.
     *
     * @param rack whether a table for a rack is asked for too: then sizes alone are enough, and the hole counts as wide as
     *     the strut
     * @return what was asked
     * @throws collarwright.finding.JobException with all that is wrong
     */
    TiltAsked read(boolean rack) {
        TiltValues values = new TiltValues(units);
        StrutSection section = section(values);
        double od = values.length("--collar-od", collarOd);
        double t = values.length("--wall", wall);
        double c = rims == null ? 0 : values.length("--rims", rims);
        Optional<Double> size = Optional.ofNullable(hole).map(text -> values.length("--hole", text));
        Optional<Double> need =
                Optional.ofNullable(lean).map(text -> values.angle("--lean", text, 0, LARGEST_LEAN_DEGREES));
        if (size.isEmpty() && need.isEmpty() && !rack) {
            values.wrong(
                    "tilt",
                    "--hole, --lean or --rack",
                    "none of them",
                    "add --hole LENGTH or --lean DEGREES, or --rack NAME for a table");
        }
        Aperture aperture = shape.read(values, size.orElse(section.largest()));
        Bench.Way way = way(values, aperture);
        if (rims != null && shape.easesEdges()) {
            values.wrong("--rims", "edges eased in one way", "--rims and --countersink", "leave one of them out");
        }
        values.stopIfAny();
        collar(values, section, new double[] {od, t, c});
        size.ifPresent(s -> wideEnough(values, section, s, od - 2 * t));
        values.stopIfAny();
        Bench bench = new Bench(aperture, section, new Wall(od / 2 - t, od / 2), c);
        if (rack && size.isEmpty() && need.isEmpty()) {
            return new TiltAsked(bench, way, need, t, false);
        }
        return size.isPresent()
                ? new TiltAsked(whole(values, bench), way, need, t, false)
                : new TiltAsked(found(values, bench, way, need.orElseThrow()), way, need, t, true);
    }

    private StrutSection section(TiltValues values) {
        double largest = values.length("--strut", strut);
        double smallest = strutOval == null ? largest : values.length("--strut-oval", strutOval);
        if (smallest > largest) {
            values.wrong(
                    "--strut-oval",
                    "the smallest diameter, at most --strut, " + TiltText.mm(largest),
                    TiltText.mm(smallest),
                    "give the largest as --strut and the smallest as --strut-oval");
        }
        return new StrutSection(largest, StrictMath.min(smallest, largest));
    }

    private Bench.Way way(TiltValues values, Aperture aperture) {
        if (bearing != null && swing != null) {
            values.wrong("--swing", "a swing or a bearing", "both", "leave one of them out");
        }
        if (swing != null) {
            return new Bench.Swung(values.angle("--swing", swing, -LARGEST_SWING_DEGREES, LARGEST_SWING_DEGREES));
        }
        Direction drill = aperture.axis();
        return new Bench.Toward(
                bearing != null
                        ? values.angle("--bearing", bearing, -180, 360)
                        : drill.lean() > 0 ? drill.bearing() : 0);
    }

    // Outside diameter, wall and rims.
    private static void collar(TiltValues values, StrutSection section, double[] sizes) {
        double od = sizes[0];
        double t = sizes[1];
        double c = sizes[2];
        double d = section.largest();
        if (t >= od / 2) {
            values.wrongSize(
                    "--wall", "a wall below half the outside diameter, " + TiltText.mm(od / 2), TiltText.mm(t));
        } else if (c >= t / 2) {
            values.wrongSize("--rims", "rims below half the wall, " + TiltText.mm(t / 2), TiltText.mm(c));
        } else if (d >= od - 2 * t) {
            values.wrongSize(
                    "--strut", "a strut thinner than the collar's bore, " + TiltText.mm(od - 2 * t), TiltText.mm(d));
        }
    }

    private static void wideEnough(TiltValues values, StrutSection section, double size, double bore) {
        if (size < section.smallest()) {
            values.wrongSize(
                    "--hole",
                    "a hole that the strut passes through, " + TiltText.mm(section.smallest()) + " or more",
                    TiltText.mm(size));
        } else if (bore > 0 && size >= bore) {
            values.wrongSize(
                    "--hole", "a hole narrower than the collar's bore, " + TiltText.mm(bore), TiltText.mm(size));
        }
    }

    private static Bench whole(TiltValues values, Bench bench) {
        if (!bench.hole().goesThrough(bench.bearing())) {
            values.wrongSize(
                    "--hole",
                    "a hole that goes through the wall whole, with wall left at its edges",
                    TiltText.shape(bench.hole()));
        }
        values.stopIfAny();
        return bench;
    }

    private Bench found(TiltValues values, Bench bench, Bench.Way way, double need) {
        Rolls sizes =
                Rolls.of(bench.strut(), roll -> bench.required(way, need, roll).orElse(Double.POSITIVE_INFINITY));
        if (!(sizes.most() < Double.POSITIVE_INFINITY)) {
            values.wrongSize(
                    "--lean", "a lean that a hole of this kind, narrower than the bore, allows", String.valueOf(lean));
        }
        values.stopIfAny();
        Aperture hole = bench.hole().withSize(sizes.most());
        return new Bench(hole, bench.strut(), bench.pipe(), bench.rims());
    }

    /** Says that the strut does not pass the hole at all. */
    static void passes(TiltAsked asked) {
        TiltValues values = new TiltValues("mm");
        Bench bench = asked.bench();
        String narrow = bench.hole() instanceof RolledFlat flat
                ? "; inside it is " + Decimals.fixed(2 * flat.reach(bench.bearing()), 3) + " mm wide once rolled"
                : "";
        values.wrong(
                "--hole",
                "a hole that the strut passes through this way" + (bench.strut().isRound() ? "" : ", at every roll"),
                TiltText.shape(bench.hole()) + narrow,
                bench.hole().axis().lean() > 0
                        ? "name a bearing or a swing near the drill's own"
                        : "take a larger hole");
        values.stopIfAny();
    }
}
