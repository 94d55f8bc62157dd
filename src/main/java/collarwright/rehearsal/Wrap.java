package collarwright.rehearsal;

import collarwright.geometry.Vec3;
import collarwright.units.Angles;

/**
 * Turns drilled places back into the frame of the pipe as it lies at A0.
 *
 * <p>Frame: +X toward the free end, +Z up, +Y = Z × X. With the rotary sign of RS274 the tool moves about the work
 * counter-clockwise as seen from +X; with the other sign the other way.
 */
final class Wrap {

    private static final Vec3 UP = new Vec3(0, 0, 1);

    private Wrap() {}

    /** The direction in which a hole was drilled, seen in the pipe. */
    static Vec3 drilled(double angleDegrees, boolean positive) {
        double angle = Angles.radians(positive ? angleDegrees : -angleDegrees);
        return turned(UP, new Vec3(1, 0, 0), angle);
    }

    /** The angle between a drilled direction and an azimuth, clockwise from above TOP, from the 0° line up. */
    static double offDegrees(Vec3 drilled, double azimuth, Vec3 top) {
        Vec3 wanted = turned(UP, top, -azimuth);
        double sine = drilled.cross(wanted).norm();
        return Angles.degrees(StrictMath.atan2(sine, drilled.dot(wanted)));
    }

    /**
     * Turns a vector about an axis, right-handed.
     *
     * <p>Source: O. Rodrigues' rotation formula.
     */
    static Vec3 turned(Vec3 v, Vec3 axis, double angle) {
        double cos = StrictMath.cos(angle);
        double sin = StrictMath.sin(angle);
        return v.times(cos).plus(axis.cross(v).times(sin)).plus(axis.times(axis.dot(v) * (1 - cos)));
    }
}
