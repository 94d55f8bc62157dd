package collarwright.tooling;

import collarwright.geometry.Interval;
import collarwright.units.Decimals;
import java.util.Optional;

/**
 * A cutter that a shop owns, or an end mill with the size that it bores.
 *
 * @param id short plain name, unique in a job, such as {@code HS-44} or {@code TW-1-1/2in}
 * @param kind twist drill, hole saw or end mill
 * @param marked the size stamped on it, as a person reads it, such as {@code 44 mm} or {@code 1-3/4 in}
 * @param size the marked size
 * @param asDrilled the diameter of the hole it makes, with its spread; of an end mill in the rack its own diameter
 * @param measured whether the as-drilled size was measured by the shop
 * @param lead how far its point or pilot stands out beyond the cutting edge that makes the full diameter
 * @param depth deepest cut it can make, from the cutting edge; of an end mill the length of its flutes
 * @param minRpm lowest speed it may turn
 * @param maxRpm highest speed it may turn
 * @param rack the rack it belongs to
 * @param teeth cutting edges of an end mill, 1 or more; 1 for every other cutter, whose data count whole turns
 * @param boredWith the end mill or tube cutter that makes this size; empty for a cutter as it stands in the rack
 */
public record Cutter(
        String id,
        CutterKind kind,
        String marked,
        double size,
        Interval asDrilled,
        boolean measured,
        double lead,
        double depth,
        double minRpm,
        double maxRpm,
        String rack,
        int teeth,
        Optional<Cutter> boredWith) {
    /** Checks the values. */
    public Cutter {
        if (!(size > 0 && asDrilled.min() > 0 && lead >= 0 && depth > 0 && minRpm > 0 && maxRpm >= minRpm)) {
            throw new IllegalArgumentException(id + ": a size, a depth or a speed is out of range");
        }
        if (teeth < 1 || (boredWith.isPresent() && (!kind.goesRound() || !(asDrilled.min() > size)))) {
            throw new IllegalArgumentException(
                    id + ": only an end mill or a tube cutter makes any size, and only what is wider than itself");
        }
    }

    /**
     * A twist drill or a hole saw.
     *
     * @param id short plain name
     * @param kind what it is
     * @param marked the size stamped on it
     * @param size the marked size
     * @param asDrilled the diameter of the hole it makes
     * @param measured whether that was measured
     * @param lead how far its point or pilot stands out
     * @param depth deepest cut it can make
     * @param minRpm lowest speed
     * @param maxRpm highest speed
     * @param rack the rack it belongs to
     */
    public Cutter(
            String id,
            CutterKind kind,
            String marked,
            double size,
            Interval asDrilled,
            boolean measured,
            double lead,
            double depth,
            double minRpm,
            double maxRpm,
            String rack) {
        this(id, kind, marked, size, asDrilled, measured, lead, depth, minRpm, maxRpm, rack, 1, Optional.empty());
    }

    /**
     * An end mill that bores a hole, or a tube cutter that cuts it along its outline.
     *
     * @param tool an end mill of the rack, or a tube cutter
     * @param diameter of the hole, larger than the end mill or the kerf
     * @return a cutter that makes this size and no other, named after tool and size
     */
    public static Cutter bored(Cutter tool, double diameter) {
        String text = Decimals.fixed(diameter, 2);
        return new Cutter(
                tool.id + "-" + text,
                tool.kind,
                text + (tool.kind == CutterKind.TUBE_CUTTER ? " mm cut" : " mm bored"),
                tool.size,
                Interval.of(diameter),
                tool.measured,
                tool.lead,
                tool.depth,
                tool.minRpm,
                tool.maxRpm,
                tool.rack,
                tool.teeth,
                Optional.of(tool));
    }

    /**
     * Returns what stands in the spindle.
     *
     * @return the end mill of a bored size; itself for any other cutter
     */
    public Cutter tool() {
        return boredWith.orElse(this);
    }

    /**
     * Returns whether it makes its hole by going round in it.
     *
     * @return true for an end mill with the size that it bores
     */
    public boolean bores() {
        return boredWith.isPresent();
    }

    /**
     * Returns its name for people.
     *
     * @return such as {@code 44 mm hole saw} or {@code 12 mm end mill, bored to 47.32 mm}
     */
    public String title() {
        String own = tool().marked + " " + kind.title();
        String made = kind == CutterKind.TUBE_CUTTER ? ", cut to " : ", bored to ";
        return bores() ? own + made + Decimals.fixed(asDrilled.nominal(), 2) + " mm" : own;
    }

    /**
     * The same cutter where its holes come out wider than given; one whose as-drilled size was measured stays as it
     * is, and so does a bored size.
     *
     * @param oversize how much wider, with its limits
     * @return the cutter; its holes are at least half as wide as before
     */
    public Cutter wider(Interval oversize) {
        if (measured || bores()) {
            return this;
        }
        double nominal = StrictMath.max(asDrilled.nominal() / 2, asDrilled.nominal() + oversize.nominal());
        double least = StrictMath.max(asDrilled.nominal() / 2, asDrilled.min() + oversize.min());
        double most = StrictMath.max(nominal, asDrilled.max() + oversize.max());
        return new Cutter(
                id,
                kind,
                marked,
                size,
                new Interval(StrictMath.min(least, nominal), nominal, most),
                false,
                lead,
                depth,
                minRpm,
                maxRpm,
                rack,
                teeth,
                boredWith);
    }
}
