package collarwright.assembly;

import static org.assertj.core.api.Assertions.assertThat;

import collarwright.geometry.Vec3;
import collarwright.testing.Seeds;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

/**
 * Travel against brute force, on the surfaces of both. From points all over the strut's end face, whose grid closes in on the
 * best of them, the way along the push to the obstacle's inside is searched by halving; and no point of the obstacle's
 * surface that lies inside the strut's own endless cylinder may be nearer than the travel says. {@code
 * target/slide-oracle.csv} keeps every case.
 */
class SlideOracleTest {

    private static final int CASES = 120;
    private static final double CLOSE = 1e-3;

    @Test
    void travel_drawnCases_isThatOfTheSampledSurfaces() {
        List<String> rows = new ArrayList<>(List.of("case,travel_mm,sampled_mm,error_mm"));
        List<Double> errors = new ArrayList<>();
        int[] met = new int[2];
        Seeds.each(CASES, draw -> {
            Cylinder strut = strut(draw);
            Cylinder obstacle = obstacle(draw);
            double travel = Slide.travel(strut, obstacle);
            Sampled surfaces = new Sampled(strut, obstacle);
            double sampled = surfaces.travel();
            boolean both = Double.isFinite(travel) && Double.isFinite(sampled);
            met[both ? 0 : 1]++;
            assertThat(travel).isLessThanOrEqualTo(surfaces.nearestPoint() + 2e-6);
            // A touch in passing, too small for the grid, may be seen by one alone: it has to be one.
            if (both) {
                errors.add(StrictMath.abs(travel - sampled));
                assertThat(travel).isBetween(sampled - CLOSE, sampled + 2e-6);
            } else {
                assertThat(sampled).isEqualTo(Double.POSITIVE_INFINITY);
                double thinner = strut.radius() - 0.05;
                Cylinder less = new Cylinder(strut.start(), strut.direction(), strut.length(), thinner);
                assertThat(Slide.travel(less, obstacle)).isEqualTo(Double.POSITIVE_INFINITY);
            }
            rows.add(
                    both
                            ? String.format(
                                    Locale.ROOT, "%d,%.7f,%.7f,%.1e", rows.size(), travel, sampled, travel - sampled)
                            : rows.size() + ",passes,passes,");
        });
        write(rows, errors);
        assertThat(errors.stream().filter(e -> e > 1e-5).count()).isLessThanOrEqualTo(errors.size() / 20);
        assertThat(met[0]).isGreaterThan(CASES / 3);
        assertThat(met[1]).isGreaterThan(CASES / 20);
    }

    private static void write(List<String> rows, List<Double> errors) {
        double largest = errors.stream().mapToDouble(e -> e).max().orElseThrow();
        rows.add(String.format(Locale.ROOT, "largest,,,%.2e", largest));
        try {
            Files.createDirectories(Path.of("target"));
            Files.write(Path.of("target/slide-oracle.csv"), rows);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Cylinder strut(Seeds draw) {
        return new Cylinder(point(draw, 5), direction(draw), 400, draw.between(5, 25));
    }

    // Half of them like a strut of the far side, half anyhow.
    private static Cylinder obstacle(Seeds draw) {
        double length = draw.coin() ? draw.between(5, 60) : draw.between(60, 300);
        return new Cylinder(point(draw, 60), direction(draw), length, draw.between(5, 45));
    }

    private static Vec3 point(Seeds draw, double within) {
        return new Vec3(draw.between(-within, within), draw.between(-within, within), draw.between(-within, within));
    }

    private static Vec3 direction(Seeds draw) {
        if (draw.whole(0, 9) == 0) {
            return draw.coin() ? new Vec3(1, 0, 0) : new Vec3(0, 0, -1);
        }
        Vec3 any = point(draw, 1);
        return any.norm() < 0.1 ? new Vec3(0, 1, 0) : any.unit();
    }

    /** Points of the strut's end face by turn and distance from its axis, of the obstacle by two numbers from 0 to 1. */
    private record Sampled(Cylinder strut, Cylinder obstacle) {
        private static final int TURNS = 120;
        private static final int RINGS = 24;
        private static final int ROUNDS = 90;

        double travel() {
            double turn = StrictMath.PI;
            double ring = 0.5;
            double least = Double.POSITIVE_INFINITY;
            double span = 1;
            for (int round = 0; round < ROUNDS; round++) {
                int turns = round == 0 ? TURNS : 12;
                int rings = round == 0 ? RINGS : 12;
                double bestTurn = turn;
                double bestRing = ring;
                for (int i = 0; i <= turns; i++) {
                    for (int j = 0; j <= rings; j++) {
                        double a = turn + 2 * StrictMath.PI * span * (i / (double) turns - 0.5);
                        double b = StrictMath.min(1, StrictMath.max(0, ring + span * (j / (double) rings - 0.5)));
                        double way = way(end(a, b));
                        if (way < least) {
                            least = way;
                            bestTurn = a;
                            bestRing = b;
                        }
                    }
                }
                turn = bestTurn;
                ring = bestRing;
                span *= round == 0 ? 0.15 : 0.84;
            }
            return StrictMath.max(0, least);
        }

        private Vec3 end(double turn, double ring) {
            return around(strut.start(), strut.direction(), turn, ring * strut.radius());
        }

        private static Vec3 around(Vec3 middle, Vec3 axis, double turn, double radius) {
            Vec3 any = StrictMath.abs(axis.z()) < 0.9 ? new Vec3(0, 0, 1) : new Vec3(0, 1, 0);
            Vec3 one = axis.cross(any).unit();
            Vec3 two = axis.cross(one);
            return middle.plus(one.times(radius * StrictMath.cos(turn))).plus(two.times(radius * StrictMath.sin(turn)));
        }

        // The place deepest inside, then the way in, from far outside to there.
        private double way(Vec3 from) {
            double low = -600;
            double high = 600;
            for (int step = 0; step < 50; step++) {
                double left = low + (high - low) * 0.45;
                double right = low + (high - low) * 0.55;
                if (outside(from, left) < outside(from, right)) {
                    high = right;
                } else {
                    low = left;
                }
            }
            double in = (low + high) / 2;
            if (outside(from, in) > 0) {
                return Double.POSITIVE_INFINITY;
            }
            double out = -600;
            for (int step = 0; step < 40; step++) {
                double middle = (in + out) / 2;
                if (outside(from, middle) > 0) {
                    out = middle;
                } else {
                    in = middle;
                }
            }
            return in;
        }

        // At most 0 inside the obstacle; it falls and then rises along any line.
        private double outside(Vec3 from, double pushed) {
            Vec3 at = from.minus(strut.direction().times(pushed)).minus(obstacle.start());
            double along = at.dot(obstacle.direction());
            double off = at.minus(obstacle.direction().times(along)).norm() - obstacle.radius();
            return StrictMath.max(off, StrictMath.max(-along, along - obstacle.length()));
        }

        double nearestPoint() {
            double least = Double.POSITIVE_INFINITY;
            for (int face = 0; face < 3; face++) {
                for (int i = 0; i < 200; i++) {
                    for (int j = 0; j <= 100; j++) {
                        Vec3 from = point(face, i / 200.0, j / 100.0).minus(strut.start());
                        double along = -from.dot(strut.direction());
                        double off = from.plus(strut.direction().times(along)).norm();
                        least = off < strut.radius() ? StrictMath.min(least, along) : least;
                    }
                }
            }
            return StrictMath.max(0, least);
        }

        private Vec3 point(int face, double a, double b) {
            double radius = face == 0 ? obstacle.radius() : obstacle.radius() * b;
            double along = face == 0 ? obstacle.length() * b : face == 1 ? 0 : obstacle.length();
            return around(obstacle.at(along), obstacle.direction(), 2 * StrictMath.PI * a, radius);
        }
    }
}
