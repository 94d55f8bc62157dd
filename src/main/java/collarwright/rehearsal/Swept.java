package collarwright.rehearsal;

/** The way between two places: straight, or along an arc in the XY plane with Z going along evenly. */
sealed interface Swept {

    /** All axes go evenly. */
    record Straight() implements Swept {}

    /**
     * An arc about a centre.
     *
     * @param centreX X of the centre
     * @param centreY Y of the centre
     * @param turn how far it goes round, counter-clockwise as seen from above if positive, radians; a full turn is 2π
     */
    record Arc(double centreX, double centreY, double turn) implements Swept {}

    /**
     * The least box round a way.
     *
     * @param minX least X
     * @param maxX largest X
     * @param minY least Y
     * @param maxY largest Y
     */
    record Reach(double minX, double maxX, double minY, double maxY) {}

    /** Where the tool stands after a share of the way, 0 to 1. */
    default Pose at(Pose from, Pose to, double share) {
        double z = between(from.z(), to.z(), share);
        double a = between(from.a(), to.a(), share);
        if (this instanceof Arc arc) {
            double angle = arc.turn() * share;
            double dx = from.x() - arc.centreX();
            double dy = from.y() - arc.centreY();
            double cos = StrictMath.cos(angle);
            double sin = StrictMath.sin(angle);
            return new Pose(arc.centreX() + dx * cos - dy * sin, arc.centreY() + dx * sin + dy * cos, z, a);
        }
        return new Pose(between(from.x(), to.x(), share), between(from.y(), to.y(), share), z, a);
    }

    private static double between(double from, double to, double share) {
        return Double.isNaN(from) || Double.isNaN(to) ? to : from + (to - from) * share;
    }

    /** How far it reaches: the ends, and of an arc the four outermost points that it passes. */
    default Reach reach(Pose from, Pose to) {
        double x = Double.isNaN(from.x()) ? to.x() : from.x();
        double y = Double.isNaN(from.y()) ? to.y() : from.y();
        double minX = StrictMath.min(x, to.x());
        double maxX = StrictMath.max(x, to.x());
        double minY = StrictMath.min(y, to.y());
        double maxY = StrictMath.max(y, to.y());
        if (this instanceof Arc arc) {
            double radius = StrictMath.hypot(x - arc.centreX(), y - arc.centreY());
            double start = StrictMath.atan2(y - arc.centreY(), x - arc.centreX());
            maxX = passes(arc, start, 0) ? arc.centreX() + radius : maxX;
            maxY = passes(arc, start, 0.5) ? arc.centreY() + radius : maxY;
            minX = passes(arc, start, 1) ? arc.centreX() - radius : minX;
            minY = passes(arc, start, 1.5) ? arc.centreY() - radius : minY;
        }
        return new Reach(minX, maxX, minY, maxY);
    }

    /** Whether an arc passes a direction, given in half turns from +X counter-clockwise. */
    private static boolean passes(Arc arc, double start, double halfTurns) {
        double whole = 2 * StrictMath.PI;
        double ahead = (halfTurns * StrictMath.PI - start) * StrictMath.signum(arc.turn());
        double first = ahead - whole * StrictMath.floor(ahead / whole);
        return first <= StrictMath.abs(arc.turn());
    }
}
