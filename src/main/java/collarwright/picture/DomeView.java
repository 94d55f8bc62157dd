package collarwright.picture;

import collarwright.dome.Dome;
import collarwright.geometry.Vec3;
import collarwright.units.Angles;

/**
 * A parallel view of a dome from outside and a little above.
 *
 * @param toEye direction from the dome to the eye
 * @param right direction that is to the right on paper
 * @param up direction that is up on paper
 */
record DomeView(Vec3 toEye, Vec3 right, Vec3 up) {

    /** A view in which no two struts of an icosahedral dome hide each other: our choice. */
    static DomeView ofDome() {
        return from(Angles.radians(11), Angles.radians(16));
    }

    /** A view from a side: azimuth counterclockwise from +x, seen from above, and height over the horizon. */
    static DomeView from(double azimuth, double height) {
        double c = StrictMath.cos(azimuth);
        double s = StrictMath.sin(azimuth);
        double ch = StrictMath.cos(height);
        double sh = StrictMath.sin(height);
        return new DomeView(new Vec3(c * ch, s * ch, sh), new Vec3(-s, c, 0), new Vec3(-c * sh, -s * sh, ch));
    }

    Spot spot(Vec3 point) {
        return new Spot(point.dot(right), -point.dot(up));
    }

    /** How squarely a member faces the eye: 1 at the middle, 0 at the rim, negative on the far side. */
    double facing(Dome dome, int member) {
        Vec3 middle = dome.node(dome.memberA(member)).plus(dome.node(dome.memberB(member)));
        return middle.times(0.5).minus(dome.middle()).unit().dot(toEye);
    }
}
