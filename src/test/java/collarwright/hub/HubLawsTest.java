package collarwright.hub;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import collarwright.dome.Dome;
import collarwright.dome.Faces;
import collarwright.geometry.Vec3;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What holds for the hubs of every dome, found by turning vectors in space instead of by tables of angles. */
class HubLawsTest {
    private static final double SAME = 1e-9;

    static Stream<Hubs> hubs() {
        return SomeDomes.all();
    }

    /** Turns a vector about an axis, counter-clockwise seen from the axis' tip (Rodrigues' formula). */
    private static Vec3 turned(Vec3 v, Vec3 axis, double angle) {
        double c = StrictMath.cos(angle);
        return v.times(c).plus(axis.cross(v).times(StrictMath.sin(angle))).plus(axis.times(axis.dot(v) * (1 - c)));
    }

    private static Vec3 uphill(Vec3 axis) {
        boolean pole = StrictMath.abs(axis.z()) > 1 - 1e-12;
        Vec3 up = pole ? new Vec3(1, 0, 0) : new Vec3(0, 0, 1);
        return up.minus(axis.times(up.dot(axis))).unit();
    }

    // From the collar to the dome: lay the 0° line where the node's turn says, go clockwise to the hole, lean inward.
    private static Vec3 direction(Vec3 axis, double turn, HubStrut strut) {
        Vec3 zeroLine = turned(uphill(axis), axis, turn);
        Vec3 level = turned(zeroLine, axis, -strut.azimuth());
        Vec3 sideways = level.cross(axis);
        return turned(level, sideways, -strut.axialAngle());
    }

    @ParameterizedTest
    @MethodSource("hubs")
    void everyHole_turnedInSpace_pointsAlongItsMember(Hubs hubs) {
        Dome dome = hubs.dome();
        int[] used = new int[dome.nodeCount()];
        double worst = 0;
        for (int m = 0; m < dome.memberCount(); m++) {
            int a = dome.memberA(m);
            int b = dome.memberB(m);
            worst = StrictMath.max(worst, miss(hubs, a, hubs.holeAtA(m), b));
            worst = StrictMath.max(worst, miss(hubs, b, hubs.holeAtB(m), a));
            assertThat(strut(hubs, a, hubs.holeAtA(m)).strutType()).isEqualTo(hubs.strutTypeOf(m));
            assertThat(strut(hubs, b, hubs.holeAtB(m)).strutType()).isEqualTo(hubs.strutTypeOf(m));
            used[a] |= 1 << hubs.holeAtA(m);
            used[b] |= 1 << hubs.holeAtB(m);
        }
        assertThat(worst).isLessThan(SAME);
        for (int node = 0; node < dome.nodeCount(); node++) {
            int holes = hubs.types().get(hubs.typeOf(node)).struts().size();
            assertThat(used[node])
                    .as("every hole of %s is used", dome.nodeId(node))
                    .isEqualTo((2 << holes) - 2);
        }
    }

    private static HubStrut strut(Hubs hubs, int node, int hole) {
        return hubs.types().get(hubs.typeOf(node)).struts().get(hole - 1);
    }

    private static double miss(Hubs hubs, int node, int hole, int other) {
        Vec3 axis = hubs.dome().node(node);
        Vec3 wanted = hubs.dome().node(other).minus(axis).unit();
        return direction(axis, hubs.turnOf(node), strut(hubs, node, hole))
                .minus(wanted)
                .norm();
    }

    @ParameterizedTest
    @MethodSource("hubs")
    void types_everyDome_areCountedInOrderOfTheirFirstNodes(Hubs hubs) {
        int[] counts = new int[hubs.types().size()];
        int next = 0;
        for (int node = 0; node < hubs.dome().nodeCount(); node++) {
            int type = hubs.typeOf(node);
            counts[type]++;
            if (type == next) {
                assertThat(hubs.types().get(type).firstNode()).isEqualTo(node);
                next++;
            }
            assertThat(type).isLessThan(next);
        }
        assertThat(hubs.types())
                .extracting(HubType::count)
                .containsExactly(IntStream.of(counts).boxed().toArray(Integer[]::new));
    }

    @ParameterizedTest
    @MethodSource("hubs")
    void azimuths_everyType_goOnceRoundFromHoleOne(Hubs hubs) {
        for (HubType type : hubs.types()) {
            assertThat(type.struts().get(0).azimuth()).isZero();
            double sum = 0;
            for (int hole = 0; hole < type.struts().size(); hole++) {
                assertThat(type.struts().get(hole).azimuth()).isCloseTo(sum, within(1e-14));
                assertThat(type.gapAfter(hole)).isPositive();
                sum += type.gapAfter(hole);
            }
            assertThat(sum).isCloseTo(2 * StrictMath.PI, within(1e-14));
        }
    }

    /** One hole of a cycle as it is ordered: the gap that follows it, its axial angle, its strut type. */
    private record Step(double gap, double axialAngle, int type) {
        int compare(Step o) {
            if (StrictMath.abs(gap - o.gap) > SAME) {
                return Double.compare(gap, o.gap);
            }
            if (StrictMath.abs(axialAngle - o.axialAngle) > SAME) {
                return Double.compare(axialAngle, o.axialAngle);
            }
            return Integer.compare(type, o.type);
        }
    }

    private static List<Step> cycle(HubType type, int start) {
        List<Step> steps = new ArrayList<>();
        for (int i = 0; i < type.struts().size(); i++) {
            int hole = (start + i) % type.struts().size();
            HubStrut strut = type.struts().get(hole);
            steps.add(new Step(type.gapAfter(hole), strut.axialAngle(), strut.strutType()));
        }
        return steps;
    }

    // Seen in a mirror the struts come in the other order, and the gap after a hole is the one that was before it.
    private static List<Step> mirrored(HubType type, int start) {
        int size = type.struts().size();
        List<Step> steps = new ArrayList<>();
        for (int i = 0; i < size; i++) {
            int hole = StrictMath.floorMod(start - i, size);
            HubStrut strut = type.struts().get(hole);
            steps.add(new Step(
                    type.gapAfter(StrictMath.floorMod(hole - 1, size)), strut.axialAngle(), strut.strutType()));
        }
        return steps;
    }

    private static int compare(List<Step> a, List<Step> b) {
        for (int i = 0; i < StrictMath.min(a.size(), b.size()); i++) {
            int order = a.get(i).compare(b.get(i));
            if (order != 0) {
                return order;
            }
        }
        return Integer.compare(a.size(), b.size());
    }

    @ParameterizedTest
    @MethodSource("hubs")
    void holeOne_everyType_beginsTheLeastCycle(Hubs hubs) {
        for (HubType type : hubs.types()) {
            for (int start = 1; start < type.struts().size(); start++) {
                assertThat(compare(cycle(type, 0), cycle(type, start))).isLessThanOrEqualTo(0);
            }
        }
    }

    @ParameterizedTest
    @MethodSource("hubs")
    void types_twoOfOneDome_areNeverTheSame(Hubs hubs) {
        for (int i = 0; i < hubs.types().size(); i++) {
            for (int j = 0; j < i; j++) {
                HubType other = hubs.types().get(j);
                for (int start = 0; start < other.struts().size(); start++) {
                    assertThat(compare(cycle(hubs.types().get(i), 0), cycle(other, start)))
                            .isNotZero();
                }
            }
        }
    }

    @ParameterizedTest
    @MethodSource("hubs")
    void turn_hubThatLooksTheSameWhenTurned_isTheLeast(Hubs hubs) {
        for (int node = 0; node < hubs.dome().nodeCount(); node++) {
            HubType type = hubs.types().get(hubs.typeOf(node));
            double turn = hubs.turnOf(node);
            assertThat(turn).isBetween(0.0, Math.nextDown(2 * StrictMath.PI));
            for (int start = 1; start < type.struts().size(); start++) {
                if (compare(cycle(type, 0), cycle(type, start)) == 0) {
                    double other = turn - type.struts().get(start).azimuth();
                    other = other < -SAME ? other + 2 * StrictMath.PI : other;
                    assertThat(turn).isLessThanOrEqualTo(other + SAME);
                }
            }
        }
    }

    @ParameterizedTest
    @MethodSource("hubs")
    void mirrorImages_everyDome_areOtherTypesAndAsMany(Hubs hubs) {
        // A portion of a class I dome is its own mirror image, so every type's image is there, and as often.
        for (HubType type : hubs.types()) {
            List<HubType> images = hubs.types().stream()
                    .filter(t -> IntStream.range(0, t.struts().size())
                            .anyMatch(start -> compare(mirrored(t, start), cycle(type, 0)) == 0))
                    .toList();
            assertThat(images).hasSize(1);
            assertThat(images.get(0).count()).isEqualTo(type.count());
        }
    }

    @ParameterizedTest
    @MethodSource("hubs")
    void gaps_everyFace_areItsCornersOnTheSphere(Hubs hubs) {
        Dome dome = hubs.dome();
        Faces faces = Faces.of(dome);
        for (int m = 0; m < dome.memberCount(); m++) {
            int a = dome.memberA(m);
            int b = dome.memberB(m);
            for (int n = m + 1; n < dome.memberCount() && dome.memberA(n) == a; n++) {
                int c = dome.memberB(n);
                if (faces.neighbours(b).contains(c)) {
                    double between = strut(hubs, a, hubs.holeAtA(m)).azimuth()
                            - strut(hubs, a, hubs.holeAtA(n)).azimuth();
                    double gap = StrictMath.min(StrictMath.abs(between), 2 * StrictMath.PI - StrictMath.abs(between));
                    assertThat(gap).isCloseTo(corner(dome, a, b, c), within(1e-12));
                }
            }
        }
    }

    // The angle of a spherical triangle from its three arcs alone (half-angle formula): no hub plane, no azimuth.
    private static double corner(Dome dome, int at, int first, int second) {
        double b = arc(dome.node(at), dome.node(first));
        double c = arc(dome.node(at), dome.node(second));
        double a = arc(dome.node(first), dome.node(second));
        double s = (a + b + c) / 2;
        return 2
                * StrictMath.atan(StrictMath.sqrt(
                        StrictMath.sin(s - b) * StrictMath.sin(s - c) / (StrictMath.sin(s) * StrictMath.sin(s - a))));
    }

    private static double arc(Vec3 a, Vec3 b) {
        return 2 * StrictMath.asin(a.minus(b).norm() / 2);
    }
}
