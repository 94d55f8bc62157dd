package collarwright.dome;

import collarwright.geometry.Vec3;
import java.util.Arrays;

/** Brings the foot nodes of a shell to one plane, along their meridians on the unit sphere. */
final class FootLevel {

    /** Heights and chord factors nearer than this are one. */
    private static final double SAME = 1e-9;

    private final DomeParts natural;
    private final double[] colatitudes;

    private FootLevel(DomeParts natural) {
        this.natural = natural;
        this.colatitudes = Arrays.stream(natural.feet())
                .mapToDouble(node -> {
                    Vec3 at = natural.node(node);
                    return StrictMath.atan2(StrictMath.sqrt(at.x() * at.x() + at.y() * at.y()), at.z());
                })
                .toArray();
    }

    static DomeParts level(DomeParts natural, Foot.Plane plane) {
        if (natural.feet().length == 0) {
            return natural;
        }
        FootLevel level = new FootLevel(natural);
        return plane == Foot.Plane.LEAST_MOVE ? level.to(level.middle()) : level.fewestTypes();
    }

    private double middle() {
        return (Arrays.stream(colatitudes).min().orElseThrow()
                        + Arrays.stream(colatitudes).max().orElseThrow())
                / 2;
    }

    private double largestMove(double colatitude) {
        return Arrays.stream(colatitudes)
                .map(c -> StrictMath.abs(c - colatitude))
                .max()
                .orElseThrow();
    }

    private DomeParts to(double colatitude) {
        double[] coordinates = natural.coordinates().clone();
        double[] moved = new double[natural.nodeCount()];
        double z = StrictMath.cos(colatitude);
        double flat = StrictMath.sin(colatitude);
        for (int i = 0; i < colatitudes.length; i++) {
            if (StrictMath.abs(colatitudes[i] - colatitude) < 1e-12) {
                continue;
            }
            int node = natural.feet()[i];
            Vec3 at = natural.node(node);
            double here = StrictMath.sqrt(at.x() * at.x() + at.y() * at.y());
            Vec3 there = new Vec3(at.x() / here * flat, at.y() / here * flat, z);
            DomeParts.put(coordinates, node, there);
            moved[node] = there.minus(at).norm();
        }
        return new DomeParts(
                natural.source(),
                coordinates,
                coordinates,
                natural.members(),
                natural.roles(),
                natural.names(),
                natural.feet(),
                moved);
    }

    // Of the planes through a foot node and the middle one: fewest chord factors, then least movement, then the higher.
    private DomeParts fewestTypes() {
        double best = middle();
        int fewest = chordFactors(to(best));
        double[] sorted = colatitudes.clone();
        Arrays.sort(sorted);
        for (int i = 0; i < sorted.length; i++) {
            if (i > 0 && sorted[i] - sorted[i - 1] < SAME) {
                continue;
            }
            int types = chordFactors(to(sorted[i]));
            double less = largestMove(best) - largestMove(sorted[i]);
            if (types < fewest || (types == fewest && (less > SAME || (less > -SAME && sorted[i] < best - SAME)))) {
                fewest = types;
                best = sorted[i];
            }
        }
        return to(best);
    }

    private static int chordFactors(DomeParts parts) {
        double[] chords = new double[parts.memberCount()];
        for (int m = 0; m < chords.length; m++) {
            chords[m] = parts.node(parts.members()[2 * m + 1])
                    .minus(parts.node(parts.members()[2 * m]))
                    .norm();
        }
        Arrays.sort(chords);
        int kinds = 0;
        double first = 0;
        for (double chord : chords) {
            if (kinds == 0 || chord > first * (1 + SAME)) {
                kinds++;
                first = chord;
            }
        }
        return kinds;
    }
}
