package collarwright.rehearsal;

import java.util.Optional;

/**
 * Reads G2 and G3 in the XY plane: X and Y of the end, I and J from the start to the centre, Z for a helix.
 *
 * <p>Under G91 the end counts from the start; I and J always do. An end that is the start is a full turn. Arcs by radius
 * (R) are faults: they leave the centre to rounding.
 *
 * <p>Source: Kramer, Proctor, Messina, The NIST RS274NGC Interpreter - Version 3, NISTIR 6556, 2000, section 3.5.3.2.
 */
final class ArcReader {

    /** How far the two radii may differ. Source: the same report, section 3.5.3.2: 0.002 mm, or 0.0002 in. */
    private static final double TOLERANCE_MM = 0.002;

    private static final double TOLERANCE_INCH = 0.0002 * 25.4;

    private final Interpreter machine;

    ArcReader(Interpreter machine) {
        this.machine = machine;
    }

    /** The arc from where the tool stands, or empty after a fault. */
    Optional<Swept.Arc> read(Block block, boolean clockwise, Pose to) {
        Pose from = machine.pose();
        if (!block.hasAny("X", "Y") || !block.hasAny("I", "J")) {
            return refused(
                    block, "an arc with X or Y for its end, and I or J for its centre", "one of them is missing");
        }
        if (block.has("A") || machine.turnsByY()) {
            return refused(block, "no turning in an arc, and a linear Y", "the pipe turns");
        }
        if (Double.isNaN(from.x()) || Double.isNaN(from.y()) || Double.isNaN(from.z())) {
            return refused(block, "X, Y and Z stated before an arc", "a start that nobody knows");
        }
        double i = machine.length(block, block.value('I').orElse(0.0));
        double j = machine.length(block, block.value('J').orElse(0.0));
        double centreX = from.x() + i;
        double centreY = from.y() + j;
        double radius = StrictMath.hypot(i, j);
        double end = StrictMath.hypot(to.x() - centreX, to.y() - centreY);
        double tolerance = machine.inch() ? TOLERANCE_INCH : TOLERANCE_MM;
        if (!(radius > tolerance) || StrictMath.abs(radius - end) > tolerance) {
            return refused(block, "a centre as far from the start as from the end", radius + " mm and " + end + " mm");
        }
        double turn = turn(-i, -j, to.x() - centreX, to.y() - centreY);
        boolean full = to.x() == from.x() && to.y() == from.y();
        return Optional.of(new Swept.Arc(centreX, centreY, full ? whole(clockwise) : directed(turn, clockwise)));
    }

    /** From the one direction to the other, counter-clockwise, in (−π, π]. */
    private static double turn(double fromX, double fromY, double toX, double toY) {
        return StrictMath.atan2(fromX * toY - fromY * toX, fromX * toX + fromY * toY);
    }

    private static double directed(double turn, boolean clockwise) {
        boolean wrong = clockwise ? turn >= 0 : turn <= 0;
        return wrong ? turn + whole(clockwise) : turn;
    }

    private static double whole(boolean clockwise) {
        return clockwise ? -2 * StrictMath.PI : 2 * StrictMath.PI;
    }

    private Optional<Swept.Arc> refused(Block block, String expected, String found) {
        machine.fault(block, expected, found);
        return Optional.empty();
    }
}
