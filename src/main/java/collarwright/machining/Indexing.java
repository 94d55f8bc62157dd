package collarwright.machining;

import collarwright.units.Angles;

/**
 * Where a hole of a collar lies for the machine.
 *
 * <p>Frame: see the package. TOP toward the chuck gives A = azimuth; TOP toward the free end gives 360° − azimuth; a
 * machine whose A turns against RS274 flips the sign once, last.
 *
 * @param topTowardChuck whether TOP faces the chuck (−X)
 * @param positive whether A has the sign of RS274
 * @param grid steps of the angle
 */
record Indexing(boolean topTowardChuck, boolean positive, Grid grid) {

    static Indexing of(RotarySettings settings) {
        Machine.Rotary rotary = settings.machine().rotary();
        return new Indexing(rotary.topTowardChuck(), rotary.positive(), settings.grid());
    }

    /** The A word that brings an azimuth under the tool, in [0, 360) and on the grid. */
    double angleDegrees(double azimuth) {
        return word(exactDegrees(azimuth));
    }

    /** The same before it is put on the grid, in [0, 360). */
    double exactDegrees(double azimuth) {
        double turned = topTowardChuck ? Angles.degrees(azimuth) : 360 - Angles.degrees(azimuth);
        double signed = (positive ? turned : 360 - turned) % 360;
        return signed < 0 ? signed + 360 : signed;
    }

    /** An angle as the nearest A word, in [0, 360). */
    double word(double angleDegrees) {
        double snapped = grid.snapDegrees(angleDegrees) % 360;
        return snapped < 0 ? snapped + 360 : snapped;
    }

    /** Distance of a height on the collar (from the mid-plane, + toward TOP) from the collar's edge at the chuck. */
    double fromEdge(double width, double height) {
        return width / 2 + (topTowardChuck ? -height : height);
    }

    String topDirection() {
        return topTowardChuck ? "TOP faces the chuck" : "TOP faces the free end";
    }
}
