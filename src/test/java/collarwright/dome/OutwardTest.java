package collarwright.dome;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import collarwright.frame.FrameNet;
import collarwright.geometry.Vec3;
import collarwright.testing.Seeds;
import collarwright.units.LengthUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.function.BiFunction;
import org.junit.jupiter.api.Test;

/** Which way the axes of a frame's hubs face, on surfaces whose normals are known (textbook). */
class OutwardTest {

    /** A frame of a net of m × n hubs on a surface, closed or open each way, with one diagonal in each quad. */
    private static Dome net(int m, int n, boolean roundM, boolean roundN, BiFunction<Integer, Integer, Vec3> at) {
        double[] coordinates = new double[3 * m * n];
        TreeSet<Long> pairs = new TreeSet<>();
        for (int i = 0; i < m; i++) {
            for (int j = 0; j < n; j++) {
                DomeParts.put(coordinates, i * n + j, at.apply(i, j));
                boolean nextM = roundM || i + 1 < m;
                boolean nextN = roundN || j + 1 < n;
                int here = i * n + j;
                if (nextM) {
                    pairs.add(pair(here, (i + 1) % m * n + j));
                }
                if (nextN) {
                    pairs.add(pair(here, i * n + (j + 1) % n));
                }
                if (nextM && nextN) {
                    pairs.add(pair(here, (i + 1) % m * n + (j + 1) % n));
                }
            }
        }
        int[] members = pairs.stream()
                .flatMap(p -> List.of((int) (p >> 32), (int) (long) p).stream())
                .mapToInt(Integer::intValue)
                .toArray();
        return dome(coordinates, members, List.of());
    }

    private static long pair(int a, int b) {
        return (long) StrictMath.min(a, b) << 32 | StrictMath.max(a, b);
    }

    private static Dome dome(double[] coordinates, int[] members, List<FrameSettings.NodeAxis> axes) {
        return Dome.of(new FrameSettings(
                new FrameNet(coordinates, members), LengthUnit.MM, 0, 0, 1, Form.Axis.FITTED, axes, List.of()));
    }

    @Test
    void saddle_facesUpEverywhere() {
        Dome saddle = net(9, 9, false, false, (i, j) -> {
            double x = (i - 4) * 1000.0;
            double y = (j - 4) * 1000.0;
            return new Vec3(x, y, x * y / 8000);
        });
        for (int node = 0; node < saddle.nodeCount(); node++) {
            Vec3 at = saddle.node(node);
            Vec3 normal = new Vec3(-at.y() / 8000, -at.x() / 8000, 1).unit();
            if (!Double.isNaN(saddle.axis(node).x())) {
                assertThat(saddle.axis(node).dot(normal)).isGreaterThan(0.8);
            }
        }
    }

    @Test
    void waves_faceUpEverywhere() {
        Seeds.each(20, draw -> {
            double high = draw.between(100, 900);
            double shift = draw.between(0, 6);
            Dome waves = net(
                    11,
                    7,
                    false,
                    false,
                    (i, j) -> new Vec3(
                            i * 1000.0, j * 1000.0, high * StrictMath.sin(i + shift) + 0.2 * high * StrictMath.cos(j)));
            // At the edge three struts fit many surfaces; inside there are six.
            for (int i = 1; i < 10; i++) {
                for (int j = 1; j < 6; j++) {
                    assertThat(waves.axis(7 * i + j).z()).isGreaterThan(0);
                }
            }
        });
    }

    @Test
    void wall_facesOneSide() {
        Dome wall = net(5, 5, false, false, (i, j) -> new Vec3(0, i * 1000.0 + 100 * j, j * 1000.0));
        for (int node = 0; node < wall.nodeCount(); node++) {
            if (!Double.isNaN(wall.axis(node).x())) {
                assertThat(wall.axis(node).x()).isCloseTo(1, within(1e-9));
            }
        }
    }

    // Inside a torus' hole outward is toward its middle.
    @Test
    void torus_facesAwayFromItsTube() {
        Dome torus = net(16, 9, true, true, (i, j) -> {
            double round = 2 * StrictMath.PI * i / 16;
            double tube = 2 * StrictMath.PI * j / 9;
            double out = 5000 + 1500 * StrictMath.cos(tube);
            return new Vec3(out * StrictMath.cos(round), out * StrictMath.sin(round), 1500 * StrictMath.sin(tube));
        });
        for (int node = 0; node < torus.nodeCount(); node++) {
            Vec3 at = torus.node(node);
            Vec3 ring = new Vec3(at.x(), at.y(), 0).unit().times(5000);
            assertThat(torus.axis(node).dot(at.minus(ring).unit())).isGreaterThan(0.8);
        }
        assertThat(least(torus)).isGreaterThan(0.5);
    }

    private static double least(Dome dome) {
        double least = 1;
        for (int m = 0; m < dome.memberCount(); m++) {
            least = StrictMath.min(least, dome.facing(m));
        }
        return least;
    }

    // Neighbours of a tetrahedron face 109.47° apart, of an octahedron 90°: more than the angle of their axes must
    // tell.
    @Test
    void solids_ofLargeAngles_faceOutward() {
        for (Base base : Base.values()) {
            Dome solid = Dome.of(new DomeSettings(
                    new SphereSettings(base, new Breakdown(1, 0), Subdivision.CHORDS, Up.VERTEX), new Cut.Height(-1)));
            double[] coordinates = new double[3 * solid.nodeCount()];
            List<Integer> ends = new ArrayList<>();
            for (int node = 0; node < solid.nodeCount(); node++) {
                DomeParts.put(coordinates, node, solid.node(node).times(1000).plus(new Vec3(7e4, -3e4, 1e3)));
            }
            for (int m = 0; m < solid.memberCount(); m++) {
                ends.add(solid.memberA(m));
                ends.add(solid.memberB(m));
            }
            Dome frame = dome(coordinates, ends.stream().mapToInt(i -> i).toArray(), List.of());
            for (int node = 0; node < solid.nodeCount(); node++) {
                assertThat(frame.axis(node).minus(solid.node(node)).norm())
                        .as("%s", base)
                        .isLessThan(1e-9);
            }
            assertThat(least(frame)).isCloseTo(1, within(1e-9));
        }
    }

    @Test
    void axisGivenInward_isKeptAndItsNeighboursStayAsTheyAre() {
        double[] coordinates = {0, 0, 1000, 1000, 0, 0, 0, 1000, 0, -1000, 0, 0, 0, -1000, 0};
        int[] members = {0, 1, 0, 2, 0, 3, 0, 4, 1, 2, 1, 4, 2, 3, 3, 4};
        Dome pyramid = dome(coordinates, members, List.of(new FrameSettings.NodeAxis(0, new Vec3(0, 0, -1))));
        assertThat(pyramid.axis(0)).isEqualTo(new Vec3(0, 0, -1));
        for (int node = 1; node < 5; node++) {
            assertThat(pyramid.axis(node).dot(pyramid.node(node))).isGreaterThan(0);
        }
        assertThat(least(pyramid)).isLessThan(-0.5);
    }

    // On a band with a half twist no choice of sides fits everywhere; on one with a whole twist it does.
    @Test
    void bands_twisted_haveOneSideOrTwo() {
        for (int halfTurns = 1; halfTurns <= 2; halfTurns++) {
            double twist = halfTurns / 2.0;
            double[] coordinates = new double[3 * 3 * 40];
            TreeSet<Long> pairs = new TreeSet<>();
            for (int i = 0; i < 40; i++) {
                double round = 2 * StrictMath.PI * i / 40;
                for (int j = 0; j < 3; j++) {
                    double aside = (j - 1) * 800;
                    double out = 5000 + aside * StrictMath.cos(twist * round);
                    DomeParts.put(
                            coordinates,
                            3 * i + j,
                            new Vec3(
                                    out * StrictMath.cos(round),
                                    out * StrictMath.sin(round),
                                    aside * StrictMath.sin(twist * round)));
                    // A half twist joins the last row to the first one turned round.
                    boolean turned = i == 39 && halfTurns == 1;
                    int next = 3 * ((i + 1) % 40);
                    pairs.add(pair(3 * i + j, next + (turned ? 2 - j : j)));
                    if (j < 2) {
                        pairs.add(pair(3 * i + j, 3 * i + j + 1));
                        pairs.add(pair(3 * i + j, next + (turned ? 1 - j : j + 1)));
                    }
                }
            }
            int[] members = pairs.stream()
                    .flatMap(p -> List.of((int) (p >> 32), (int) (long) p).stream())
                    .mapToInt(Integer::intValue)
                    .toArray();
            Dome band = dome(coordinates, members, List.of());
            assertThat(least(band) < -0.5).as("%s half turns", halfTurns).isEqualTo(halfTurns == 1);
        }
    }
}
