package collarwright.assembly;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import collarwright.assembly.HubTravel.HoleTravel;
import collarwright.collar.CollarBody;
import collarwright.geometry.Interval;
import collarwright.geometry.Vec3;
import collarwright.testing.Seeds;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

class HubTravelTest {

    // The hubs of a 3v icosahedron, struts of 40.2 mm, ring radius 45, middle of the wall at 77.5: 99 to 102 mm against
    // 34 mm
    // with the ring out, and about the end gap with it in (our own figures, by sampled finite cylinders).
    @Test
    void available_hubsOfA3v_areThoseOfTheSampledCylinders() {
        for (List<SeatedStrut> hub : List.of(Seats.fiveWay(Seats.SPACE), Seats.sixWay(Seats.SPACE))) {
            HubTravel travel = HubTravel.of(hub, Seats.SPACE);
            for (int hole = 0; hole < hub.size(); hole++) {
                assertThat(travel.available(hole, travel.all())).isBetween(99.0, 102.0);
                assertThat(travel.holes().get(hole).needed() - 2).isCloseTo(34, within(0.5));
                assertThat(travel.holes().get(hole).ring()).isBetween(2.0, 2.1);
                assertThat(travel.holes().get(hole).ringRoom()).isCloseTo(2, within(1e-9));
            }
        }
    }

    // A level strut straight across: everything is plain arithmetic.
    @Test
    void travel_levelStruts_isPlainArithmetic() {
        List<SeatedStrut> across = Seats.hub(Seats.SPACE, 0, 0, 0, 180);
        HoleTravel hole = HubTravel.of(across, Seats.SPACE).holes().get(0);
        double setback = 45 + 2;
        assertThat(hole.past().get(1)).isCloseTo(2 * setback, within(1e-6));
        assertThat(hole.past().get(0)).isEqualTo(Double.POSITIVE_INFINITY);
        // The sides of the end face meet the curved wall first.
        assertThat(hole.wall()).isCloseTo(setback + StrictMath.sqrt(75 * 75 - 20.1 * 20.1), within(1e-6));
        assertThat(hole.ring()).isCloseTo(2, within(1e-6));
        assertThat(hole.needed()).isCloseTo(80 - setback + 2, within(1e-9));
    }

    // A steep strut in a narrow collar comes out above it.
    @Test
    void wall_steepStrut_isPassedByOrMetLower() {
        HubSpace narrow = new HubSpace(new CollarBody(80, Interval.of(5), 30), 10, Seats.RING, 2);
        HubTravel steep = HubTravel.of(Seats.hub(narrow, 50, 0), narrow);
        assertThat(steep.holes().get(0).wall()).isEqualTo(Double.POSITIVE_INFINITY);
        assertThat(Push.ringOut(steep, 0).met()).isEqualTo(Push.Met.NOTHING);
        HubTravel level = HubTravel.of(Seats.hub(narrow, 5, 0), narrow);
        assertThat(Push.ringOut(level, 0).met()).isEqualTo(Push.Met.WALL);
        assertThat(Push.ringIn(level, 0).met()).isEqualTo(Push.Met.RING);
    }

    // The far wall by brute force: points of the end face, each stepped along the push until it is in the wall.
    @Test
    void wall_drawnStruts_isThatOfSteppedPoints() {
        Seeds.each(40, draw -> {
            double width = draw.between(30, 120);
            HubSpace space = new HubSpace(
                    new CollarBody(80, Interval.of(5), width), draw.between(5, 45), new HubSpace.Ring(30, -10, 10), 2);
            SeatedStrut plain = Seats.seat(draw.between(-35, 35), draw.between(0, 360), space);
            SeatedStrut seat = new SeatedStrut(
                    plain.axialAngle(), plain.azimuth(), draw.between(-0.1, 0.1), plain.setback(), plain.hole());
            double stepped = stepped(seat, space, width);
            double wall = new FarWall(seat, space).travel();
            if (Double.isFinite(stepped) && Double.isFinite(wall)) {
                assertThat(wall).isBetween(stepped - 0.3, stepped + 1e-3);
            } else {
                assertThat(stepped).isEqualTo(Double.POSITIVE_INFINITY);
            }
        });
    }

    private static double stepped(SeatedStrut seat, HubSpace space, double width) {
        Cylinder strut = space.solid(seat);
        Vec3 axis = strut.direction();
        Vec3 one = axis.cross(new Vec3(0, 0, 1)).unit();
        Vec3 two = axis.cross(one);
        double least = Double.POSITIVE_INFINITY;
        for (int turn = 0; turn < 180; turn++) {
            for (int ring = 0; ring <= 20; ring++) {
                double radius = strut.radius() * ring / 20;
                double a = turn * StrictMath.PI / 90;
                Vec3 from = strut.start()
                        .plus(one.times(radius * StrictMath.cos(a)))
                        .plus(two.times(radius * StrictMath.sin(a)));
                for (double t = 0; t < StrictMath.min(least, 250); t += 1e-3 * 64) {
                    Vec3 at = from.minus(axis.times(t));
                    if (StrictMath.hypot(at.x(), at.y()) >= 75 && StrictMath.abs(at.z()) <= width / 2) {
                        least = StrictMath.min(least, t);
                    }
                }
            }
        }
        return least;
    }

    // The lip of the outer rim, point by point.
    @Test
    void needed_drawnStruts_isThatOfTheOuterRim() {
        Seeds.each(100, draw -> {
            SeatedStrut plain = Seats.seat(draw.between(-40, 40), 0, Seats.SPACE);
            SeatedStrut seat =
                    new SeatedStrut(plain.axialAngle(), 0, draw.between(-0.1, 0.1), plain.setback(), plain.hole());
            double most = 0;
            double rim = seat.hole().diameter() / 2;
            for (int i = 0; i < 3600; i++) {
                double a = i * StrictMath.PI / 1800;
                double azimuth = -seat.swing() + StrictMath.asin(rim * StrictMath.sin(a) / 80);
                Vec3 lip =
                        new Vec3(80 * StrictMath.cos(azimuth), -80 * StrictMath.sin(azimuth), rim * StrictMath.cos(a));
                most = StrictMath.max(
                        most, lip.minus(Seats.SPACE.solid(seat).start()).dot(seat.direction()));
            }
            assertThat(HubTravel.needed(seat, Seats.SPACE)).isCloseTo(most + 2, within(1e-4));
        });
    }

    @Test
    void travel_hubTurned_isTheSame() {
        Seeds.each(20, draw -> {
            List<SeatedStrut> hub = hub(draw, Seats.SPACE);
            HubTravel one = HubTravel.of(hub, Seats.SPACE);
            HubTravel two = HubTravel.of(Seats.turned(hub, draw.between(0, 6.28)), Seats.SPACE);
            for (int i = 0; i < hub.size(); i++) {
                assertSame(one.available(i, one.all()), two.available(i, two.all()));
                assertSame(one.holes().get(i).ring(), two.holes().get(i).ring());
                assertSame(one.holes().get(i).wall(), two.holes().get(i).wall());
            }
        });
    }

    private static void assertSame(double one, double two) {
        assertThat(one == two || StrictMath.abs(one - two) < 1e-5)
                .as(one + " and " + two)
                .isTrue();
    }

    private static List<SeatedStrut> hub(Seeds draw, HubSpace space) {
        List<Double> all = new ArrayList<>();
        int struts = draw.whole(3, 6);
        for (int i = 0; i < struts; i++) {
            all.add(draw.between(0, 25));
            all.add(360.0 / struts * i + draw.between(-4, 4));
        }
        return Seats.hub(space, all.stream().mapToDouble(d -> d).toArray());
    }

    @Test
    void available_ringLargerAndStrutsWhereTheyAre_isNeverMoreWithTheRingIn() {
        Seeds.each(30, draw -> {
            HubSpace small = ring(draw.between(20, 44));
            HubSpace large = ring(draw.between(small.ring().radius(), 46.9));
            List<SeatedStrut> hub = hub(draw, Seats.SPACE);
            HubTravel one = HubTravel.of(hub, small);
            HubTravel two = HubTravel.of(hub, large);
            for (int i = 0; i < hub.size(); i++) {
                assertThat(Push.ringIn(two, i).travel())
                        .isLessThanOrEqualTo(Push.ringIn(one, i).travel() + 1e-6);
            }
        });
    }

    private static HubSpace ring(double radius) {
        return new HubSpace(Seats.BODY, Seats.STRUT, new HubSpace.Ring(radius, -15, 25), 2);
    }

    @Test
    void available_neighbourGone_isNeverLess() {
        Seeds.each(30, draw -> {
            List<SeatedStrut> hub = hub(draw, Seats.SPACE);
            HubTravel all = HubTravel.of(hub, Seats.SPACE);
            int gone = draw.whole(1, hub.size() - 1);
            List<SeatedStrut> fewer = new ArrayList<>(hub);
            fewer.remove(gone);
            HubTravel less = HubTravel.of(fewer, Seats.SPACE);
            assertThat(less.available(0, less.all())).isGreaterThanOrEqualTo(all.available(0, all.all()) - 1e-9);
            assertThat(all.available(0, all.all() & ~(1 << gone))).isEqualTo(less.available(0, less.all()));
        });
    }

    // Ring last: an end face that swings past the hub's axis, and one that covers it.
    @Test
    void ringRoom_swingAndOverlap_isTheNearestPointOfTheEnd() {
        SeatedStrut plain = Seats.seat(10, 0, Seats.SPACE);
        SeatedStrut swung = new SeatedStrut(plain.axialAngle(), 0, 0.3, plain.setback(), plain.hole());
        assertThat(HubTravel.of(List.of(swung), Seats.SPACE).holes().get(0).ringRoom())
                .isCloseTo(nearest(Seats.SPACE.solid(swung)) - 45, within(1e-3));
        SeatedStrut through = plain.withSetback(1);
        assertThat(HubTravel.of(List.of(through), Seats.SPACE).holes().get(0).ringRoom())
                .isEqualTo(-45);
    }

    private static double nearest(Cylinder strut) {
        Vec3 one = strut.direction().cross(new Vec3(0, 0, 1)).unit();
        Vec3 two = strut.direction().cross(one);
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < 20000; i++) {
            double a = i * StrictMath.PI / 10000;
            Vec3 at = strut.start()
                    .plus(one.times(strut.radius() * StrictMath.cos(a)))
                    .plus(two.times(strut.radius() * StrictMath.sin(a)));
            least = StrictMath.min(least, StrictMath.hypot(at.x(), at.y()));
        }
        return least;
    }

    @Test
    void records_impossibleSizes_areRefused() {
        assertThatIllegalArgumentException().isThrownBy(() -> new HubSpace(Seats.BODY, 160, Seats.RING, 2));
        assertThatIllegalArgumentException().isThrownBy(() -> new HubSpace.Ring(0, 0, 1));
        assertThatIllegalArgumentException().isThrownBy(() -> new HubSpace.Ring(1, 1, 1));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new SeatedStrut(2, 0, 0, 1, new SeatedStrut.Opening(1, 0)));
        assertThatIllegalArgumentException().isThrownBy(() -> new Cylinder(new Vec3(0, 0, 0), new Vec3(0, 0, 2), 1, 1));
    }

    /** What a shared pattern lets one hub's strut do another's may not: the least of all that can meet. */
    @Test
    void worst_severalLines_isTheLeastOfAllThatMeet() {
        List<SeatedStrut> one = Seats.fiveWay(Seats.SPACE);
        List<SeatedStrut> other = Seats.turned(one, 0.06);
        List<List<SeatedStrut>> lines = new ArrayList<>();
        for (int i = 0; i < one.size(); i++) {
            lines.add(List.of(one.get(i), other.get(i)));
        }
        HubTravel worst = HubTravel.worst(lines, Seats.SPACE);
        double[][] past = new double[one.size()][one.size()];
        for (double[] row : past) {
            Arrays.fill(row, Double.POSITIVE_INFINITY);
        }
        double[] needed = new double[one.size()];
        for (int set = 0; set < 1 << one.size(); set++) {
            List<SeatedStrut> hub = new ArrayList<>();
            for (int i = 0; i < one.size(); i++) {
                hub.add((set & 1 << i) != 0 ? other.get(i) : one.get(i));
            }
            List<HoleTravel> holes = HubTravel.of(hub, Seats.SPACE).holes();
            for (int i = 0; i < one.size(); i++) {
                needed[i] = StrictMath.max(needed[i], holes.get(i).needed());
                for (int j = 0; j < one.size(); j++) {
                    past[i][j] = StrictMath.min(past[i][j], holes.get(i).past().get(j));
                }
            }
        }
        for (int i = 0; i < one.size(); i++) {
            assertThat(worst.holes().get(i).needed()).isEqualTo(needed[i]);
            for (int j = 0; j < one.size(); j++) {
                assertThat(worst.holes().get(i).past().get(j)).isEqualTo(past[i][j]);
            }
        }
    }
}
