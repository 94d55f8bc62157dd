package collarwright.collar;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import collarwright.geometry.Vec3;
import collarwright.testing.Seeds;
import org.junit.jupiter.api.Test;

/** Struts laid through their holes, beside the same hubs built in space by turning them about their axes. */
class StrutLineTest {
    private static final double MID = 77;

    @Test
    void of_holesWhereTheStrutPoints_isTheStrutItself() {
        StrutLine line = StrutLine.of(new StrutLine.Ideal(900, 0.2, 0.15, 0.03), MID, 0, 0);
        assertThat(line.a().direction().tilt()).isCloseTo(0.2, within(1e-14));
        assertThat(line.b().direction().tilt()).isCloseTo(0.15, within(1e-14));
        assertThat(line.a().direction().swing()).isCloseTo(0, within(1e-14));
        assertThat(line.a().miss()).isCloseTo(0, within(1e-12));
        assertThat(line.a().reach()).isCloseTo(MID / StrictMath.cos(0.2), within(1e-11));
        assertThat(line.growth()).isCloseTo(0, within(1e-11));
    }

    // By hand: on flat hubs a hole that is off by 3 mm at one end turns a line of 1000 mm by 3 mm over what lies
    // between
    // the holes.
    @Test
    void of_flatHubs_turnsByTheOffsetOverTheLength() {
        double error = StrictMath.asin(3 / MID);
        StrutLine line = StrutLine.of(new StrutLine.Ideal(1000, 0, 0, 0), MID, error, 0);
        double between = 1000 - MID - MID * StrictMath.cos(error);
        double turn = StrictMath.atan(3 / between);
        assertThat(line.a().direction().swing()).isCloseTo(-error - turn, within(1e-12));
        assertThat(line.b().direction().swing()).isCloseTo(-turn, within(1e-12));
        assertThat(line.a().miss())
                .isCloseTo((3 + MID * StrictMath.cos(error) * 3 / between) * StrictMath.cos(turn), within(1e-9));
    }

    // The same struts in space: rotation matrices for the hub axes and the holes, the angle between vectors for lean,
    // the
    // common perpendicular for the miss. None of the formulas of the class is used.
    @Test
    void of_anyStrut_isTheLineThroughBothHoles() {
        Seeds.each(500, draw -> {
            double chord = draw.between(400, 2000);
            double axialA = draw.between(-0.3, 0.4);
            double axialB = draw.between(-0.3, 0.4);
            double twist = draw.between(-0.2, 0.2);
            double errorA = draw.between(-0.08, 0.08);
            double errorB = draw.between(-0.08, 0.08);
            StrutLine line = StrutLine.of(new StrutLine.Ideal(chord, axialA, axialB, twist), MID, errorA, errorB);
            Vec3 nodeB = new Vec3(chord, 0, 0);
            Vec3 axisA = new Vec3(-StrictMath.sin(axialA), 0, StrictMath.cos(axialA));
            Vec3 axisB = about(new Vec3(1, 0, 0), new Vec3(StrictMath.sin(axialB), 0, StrictMath.cos(axialB)), twist);
            Vec3 holeA = hole(new Vec3(0, 0, 0), axisA, new Vec3(1, 0, 0), errorA);
            Vec3 holeB = hole(nodeB, axisB, new Vec3(-1, 0, 0), errorB);
            Vec3 along = holeB.minus(holeA).unit();
            check(line.a(), new Vec3(0, 0, 0), axisA, holeA, along);
            check(line.b(), nodeB, axisB, holeB, along.times(-1));
        });
    }

    private static void check(StrutLine.End end, Vec3 node, Vec3 axis, Vec3 hole, Vec3 out) {
        Vec3 onAxis = node.plus(axis.times(hole.minus(node).dot(axis)));
        Vec3 radial = hole.minus(onAxis).unit();
        assertThat(end.direction().lean()).isCloseTo(StrictMath.acos(out.dot(radial)), within(1e-7));
        assertThat(StrictMath.sin(end.direction().tilt())).isCloseTo(-out.dot(axis), within(1e-12));
        Vec3 perpendicular = axis.cross(out).unit();
        assertThat(StrictMath.abs(end.miss()))
                .isCloseTo(StrictMath.abs(hole.minus(node).dot(perpendicular)), within(1e-10));
        // Clockwise from above: turning the radial direction about the axis by a negative angle.
        Vec3 clockwise = about(axis, radial, -StrictMath.PI / 2);
        assertThat(end.direction().swing())
                .isCloseTo(StrictMath.atan2(out.dot(clockwise), out.dot(radial)), within(1e-12));
        assertThat(StrictMath.signum(end.miss()))
                .isEqualTo(StrictMath.signum(
                        hole.minus(out.times(end.reach())).minus(node).dot(clockwise)));
        // The foot lies as far from the hub's axis as the line ever comes.
        Vec3 foot = hole.minus(out.times(end.reach()));
        double nearest = foot.minus(node).cross(axis).norm();
        assertThat(nearest).isCloseTo(StrictMath.abs(end.miss()), within(1e-9));
    }

    private static Vec3 hole(Vec3 node, Vec3 axis, Vec3 strut, double error) {
        // Where the strut itself crosses the cylinder, turned about the axis clockwise by the error.
        double across = strut.minus(axis.times(strut.dot(axis))).norm();
        Vec3 crossing = strut.times(MID / across);
        return node.plus(about(axis, crossing, -error));
    }

    // Rodrigues' rotation.
    private static Vec3 about(Vec3 axis, Vec3 v, double angle) {
        double c = StrictMath.cos(angle);
        return v.times(c).plus(axis.cross(v).times(StrictMath.sin(angle))).plus(axis.times(axis.dot(v) * (1 - c)));
    }
}
