package collarwright.collar;

import collarwright.geometry.Vec3;

/**
 * The line that a strut takes when its holes are not quite where it points: through both hole centres, at the middle of
 * the wall, instead of from node to node.
 *
 * @param a how it stands at end a
 * @param b how it stands at end b
 * @param growth distance between the two hubs along the line, from foot to foot, less that between the nodes; a foot is
 *     where the line passes a hub's axis nearest
 */
public record StrutLine(End a, End b, double growth) {

    private static final double ROUNDING = 1e-9;

    /**
     * A strut as its nodes have it.
     *
     * @param chord node to node
     * @param axialA angle to the hub's plane at end a
     * @param axialB angle at end b
     * @param twist from the tie hole at a to that at b, clockwise looking from a to b
     */
    public record Ideal(double chord, double axialA, double axialB, double twist) {}

    /**
     * One end.
     *
     * @param direction where the strut points, seen from its hole
     * @param miss how far the line passes the hub's axis; above 0 on the clockwise side seen from above
     * @param reach from the hole's centre back along the line to its foot
     */
    public record End(Direction direction, double miss, double reach) {}

    /**
     * Lays a line through two holes.
     *
     * @param ideal the strut as its nodes have it
     * @param midRadius radius of the middle of the collar's wall
     * @param errorA azimuth of the hole at end a less that of the strut
     * @param errorB the same at end b
     * @return the line; the collars stand where each strut crosses the wall at the height of its hole
     */
    public static StrutLine of(Ideal ideal, double midRadius, double errorA, double errorB) {
        double sinA = StrictMath.sin(ideal.axialA());
        double cosA = StrictMath.cos(ideal.axialA());
        double sinB = StrictMath.sin(ideal.axialB());
        double cosB = StrictMath.cos(ideal.axialB());
        // From node a, x toward node b, z outward in the plane of hub a's axis.
        Vec3 axisA = new Vec3(-sinA, 0, cosA);
        Vec3 axisB = new Vec3(sinB, -cosB * StrictMath.sin(ideal.twist()), cosB * StrictMath.cos(ideal.twist()));
        Vec3 toB = new Vec3(1, 0, 0);
        Seat seatA = Seat.of(new Vec3(0, 0, 0), axisA, toB, midRadius, errorA);
        Seat seatB = Seat.of(new Vec3(ideal.chord(), 0, 0), axisB, toB.times(-1), midRadius, errorB);
        Vec3 line = seatB.hole().minus(seatA.hole());
        Vec3 along = line.unit();
        End endA = seatA.end(along);
        End endB = seatB.end(along.times(-1));
        return new StrutLine(endA, endB, line.norm() + endA.reach() + endB.reach() - ideal.chord());
    }

    /**
     * A hole in its hub.
     *
     * @param node of the hub
     * @param axis of the hub, outward
     * @param radial of the hole, outward
     * @param hole its centre
     */
    private record Seat(Vec3 node, Vec3 axis, Vec3 radial, Vec3 hole) {

        static Seat of(Vec3 node, Vec3 axis, Vec3 strut, double midRadius, double error) {
            double down = -strut.dot(axis);
            Vec3 ahead = strut.plus(axis.times(down)).unit();
            Vec3 clockwise = ahead.cross(axis);
            Vec3 radial = ahead.times(StrictMath.cos(error)).plus(clockwise.times(StrictMath.sin(error)));
            double drop = midRadius * down / StrictMath.sqrt(1 - down * down);
            return new Seat(
                    node, axis, radial, node.plus(radial.times(midRadius)).minus(axis.times(drop)));
        }

        // From the hole's centre back along the line to where it is nearest to the hub's axis.
        double toFoot(Vec3 out) {
            Vec3 flat = out.minus(axis.times(out.dot(axis)));
            return hole.minus(node).dot(flat) / flat.dot(flat);
        }

        End end(Vec3 out) {
            double tilt = StrictMath.asin(-out.dot(axis));
            double turned = StrictMath.atan2(out.dot(radial.cross(axis)), out.dot(radial));
            // What is left of rounding must not give a strut that hardly leans a bearing to the side.
            double swing = StrictMath.abs(turned) < ROUNDING ? 0 : turned;
            Vec3 across = out.cross(axis).unit();
            return new End(new Direction(tilt, swing), hole.minus(node).dot(across), toFoot(out));
        }
    }
}
