package collarwright.cli;

import collarwright.collar.Aperture;
import collarwright.collar.Countersunk;
import collarwright.collar.Direction;
import collarwright.collar.RolledFlat;
import collarwright.collar.RoundAperture;
import collarwright.collar.Slot;
import collarwright.collar.TiltedDrilling;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** The options of {@code tilt} that tell how a hole is made, when it is not simply drilled toward the collar's axis. */
final class TiltShape {

    private static final double MOST_DRILL_DEGREES = 45;

    @Option(
            names = "--drill-tilt",
            paramLabel = "DEGREES",
            description = "The hole is drilled off-radial, in the jig tilted by so much; + as a strut tilts.")
    private @Nullable String drillTilt;

    @Option(
            names = "--drill-swing",
            paramLabel = "DEGREES",
            description = "The same to the side, clockwise from above.")
    private @Nullable String drillSwing;

    @Option(
            names = "--slot-length",
            paramLabel = "LENGTH",
            description = "The hole is a slot with round ends, --hole wide, along the collar's axis.")
    private @Nullable String slotLength;

    @Option(names = "--slot-around", description = "The slot runs round the collar.")
    private boolean slotAround;

    @Option(names = "--flat-cut", description = "The hole is a circle cut in a flat strip that is then rolled.")
    private boolean flatCut;

    @Option(
            names = "--countersink",
            paramLabel = "LENGTH",
            description = "A 45° cone driven straight in from outside, to this diameter up and down.")
    private @Nullable String countersink;

    @Option(names = "--countersink-inside", paramLabel = "LENGTH", description = "The same from inside.")
    private @Nullable String countersinkInside;

    /**
     * Reads the shape.
     *
     * @param values takes the findings
     * @param size of the hole, or of the strut where the hole's is looked for
     * @return the hole in that size
     */
    Aperture read(TiltValues values, double size) {
        List<String> kinds = kinds();
        if (kinds.size() > 1) {
            values.wrong(
                    kinds.get(1), "one way to make the hole", String.join(" and ", kinds), "leave one of them out");
        }
        if (slotAround && slotLength == null) {
            values.wrong("--slot-around", "a slot's length too", "no --slot-length", "add --slot-length");
        }
        if (kinds.isEmpty()) {
            return new RoundAperture(size);
        }
        return switch (kinds.get(0)) {
            case "--drill-tilt" ->
                new TiltedDrilling(
                        size,
                        new Direction(
                                drill(values, "--drill-tilt", drillTilt), drill(values, "--drill-swing", drillSwing)));
            case "--slot-length" -> {
                double length = values.length("--slot-length", String.valueOf(slotLength));
                yield new Slot(StrictMath.min(size, length), length, slotAround);
            }
            case "--flat-cut" -> new RolledFlat(size);
            default ->
                new Countersunk(
                        size,
                        mouth(values, "--countersink", countersink, size),
                        mouth(values, "--countersink-inside", countersinkInside, size));
        };
    }

    /** Whether it eases the edges in its own way. */
    boolean easesEdges() {
        return countersink != null || countersinkInside != null;
    }

    private List<String> kinds() {
        List<String> kinds = new ArrayList<>();
        if (drillTilt != null || drillSwing != null) {
            kinds.add("--drill-tilt");
        }
        if (slotLength != null) {
            kinds.add("--slot-length");
        }
        if (flatCut) {
            kinds.add("--flat-cut");
        }
        if (easesEdges()) {
            kinds.add("--countersink");
        }
        return kinds;
    }

    private static double drill(TiltValues values, String option, @Nullable String text) {
        return text == null ? 0 : values.angle(option, text, -MOST_DRILL_DEGREES, MOST_DRILL_DEGREES);
    }

    private static double mouth(TiltValues values, String option, @Nullable String text, double hole) {
        Optional<String> given = Optional.ofNullable(text);
        double mouth = given.map(g -> values.length(option, g)).orElse(hole);
        if (given.isPresent() && mouth <= hole) {
            values.wrong(
                    option,
                    "a cone wider than the hole, above " + TiltText.mm(hole),
                    TiltText.mm(mouth),
                    "give the mouth's diameter, not the depth");
        }
        return mouth;
    }
}
