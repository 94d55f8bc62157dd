package collarwright.plan;

import static org.assertj.core.api.Assertions.assertThat;

import collarwright.dome.Base;
import collarwright.dome.Breakdown;
import collarwright.dome.Cut;
import collarwright.dome.Dome;
import collarwright.dome.DomeSettings;
import collarwright.dome.Foot;
import collarwright.dome.Form;
import collarwright.dome.FrameSettings;
import collarwright.dome.SphereSettings;
import collarwright.dome.Subdivision;
import collarwright.dome.Up;
import collarwright.frame.FrameNet;
import collarwright.geometry.Vec3;
import collarwright.hub.HubType;
import collarwright.strut.SizeRule;
import collarwright.testing.Jobs;
import collarwright.testing.Seeds;
import collarwright.tooling.Hole;
import collarwright.tooling.Pattern;
import collarwright.units.Decimals;
import collarwright.units.LengthUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** What must not change a collar: where the frame stands, which node comes first, and the way it came in. */
class FrameLawsTest {

    private static final double NEAR = 1e-6;

    private static DomeSettings dome(Seeds draw) {
        SphereSettings sphere = new SphereSettings(
                Base.ICOSAHEDRON, new Breakdown(draw.whole(2, 3), draw.whole(0, 1)), Subdivision.CHORDS, Up.VERTEX);
        Form form = draw.coin() ? Form.SPHERE : new Form(0.8, Form.Axis.FITTED);
        return new DomeSettings(sphere, new Cut.Height(-0.2), form, new Foot.Natural(), false, List.of());
    }

    private static Plan planned(Dome frame, double radius, UnaryOperator<Vec3> moved, List<Integer> order) {
        int[] place = new int[order.size()];
        double[] coordinates = new double[3 * place.length];
        for (int i = 0; i < place.length; i++) {
            place[order.get(i)] = i;
            Vec3 at = moved.apply(frame.node(order.get(i)).times(radius));
            coordinates[3 * i] = at.x();
            coordinates[3 * i + 1] = at.y();
            coordinates[3 * i + 2] = at.z();
        }
        int[] members = IntStream.range(0, frame.memberCount())
                .mapToObj(m -> new int[] {place[frame.memberA(m)], place[frame.memberB(m)]})
                .map(m -> new int[] {StrictMath.min(m[0], m[1]), StrictMath.max(m[0], m[1])})
                .sorted(java.util.Arrays::compare)
                .flatMapToInt(IntStream::of)
                .toArray();
        FrameSettings settings = new FrameSettings(
                new FrameNet(coordinates, members),
                LengthUnit.MM,
                0.1,
                // Finer than usual: the law is about collars that are alike, not about what is taken as alike.
                1e-5,
                FrameSettings.USUAL_FEET_WITHIN,
                Form.Axis.FITTED,
                List.of(),
                List.of());
        return Planner.plan(
                Jobs.windbreak().dome(settings).size(new SizeRule.AsDrawn()).job(), List.of());
    }

    private static List<Integer> asItIs(Dome frame) {
        return IntStream.range(0, frame.nodeCount()).boxed().toList();
    }

    // Each pattern of one plan has a fellow in the other, of as many collars and with the same holes.
    private static void sameCollars(Plan one, Plan other) {
        List<Pattern> left = new ArrayList<>(other.book().patterns());
        assertThat(one.book().patterns()).isNotEmpty().hasSameSizeAs(left);
        for (Pattern pattern : one.book().patterns()) {
            assertThat(left.removeIf(new OnceAlike(pattern)::test))
                    .as("%s of %s in %s", pattern, one.book().patterns(), left)
                    .isTrue();
        }
    }

    /** True for the first pattern that is like another. */
    private static final class OnceAlike {
        private final Pattern pattern;
        private boolean found;

        OnceAlike(Pattern pattern) {
            this.pattern = pattern;
        }

        boolean test(Pattern other) {
            boolean alike = !found
                    && other.count() == pattern.count()
                    && other.holes().size() == pattern.holes().size()
                    && IntStream.range(0, other.holes().size())
                            .allMatch(i ->
                                    alike(pattern.holes().get(i), other.holes().get(i)));
            found |= alike;
            return alike;
        }

        private static boolean alike(Hole a, Hole b) {
            return StrictMath.abs(a.azimuth() - b.azimuth()) < NEAR
                    && StrictMath.abs(a.neededLean() - b.neededLean()) < NEAR
                    && StrictMath.abs(a.required() - b.required()) < NEAR
                    && a.cutter().equals(b.cutter());
        }
    }

    @Test
    void frame_thatADomeIs_hasTheDomesCollars() {
        Seeds.each(30, draw -> {
            DomeSettings settings = dome(draw);
            Plan computed = Planner.plan(
                    Jobs.windbreak()
                            .dome(settings)
                            .size(new SizeRule.Radius(4000))
                            .job(),
                    List.of());
            Dome dome = Dome.of(settings);
            sameCollars(computed, planned(dome, 4000, at -> at, asItIs(dome)));
        });
    }

    @Test
    void frame_turnedAnyWay_hasTheSameCollars() {
        Seeds.each(30, draw -> {
            Dome dome = Dome.of(dome(draw));
            Vec3 z = new Vec3(draw.between(-1, 1), draw.between(-1, 1), draw.between(0.1, 1)).unit();
            Vec3 x = new Vec3(draw.between(-1, 1), draw.between(-1, 1), draw.between(-1, 1))
                    .cross(z)
                    .unit();
            Vec3 y = z.cross(x);
            Vec3 off = new Vec3(draw.between(-1e4, 1e4), draw.between(-1e4, 1e4), draw.between(-1e4, 1e4));
            sameCollars(
                    planned(dome, 4000, at -> at, asItIs(dome)),
                    planned(dome, 4000, at -> new Vec3(at.dot(x), at.dot(y), at.dot(z)).plus(off), asItIs(dome)));
        });
    }

    @Test
    void frame_nodesInAnotherOrder_hasTheSameCollars() {
        Seeds.each(30, draw -> {
            Dome dome = Dome.of(dome(draw));
            sameCollars(
                    planned(dome, 4000, at -> at, asItIs(dome)),
                    planned(dome, 4000, at -> at, draw.shuffled(asItIs(dome))));
        });
    }

    @Test
    void frame_scaled_hasTheSameCollarsAndLongerStruts() {
        Seeds.each(30, draw -> {
            Dome dome = Dome.of(dome(draw));
            double scale = draw.between(1, 3);
            Plan small = planned(dome, 4000, at -> at, asItIs(dome));
            Plan large = planned(dome, 4000 * scale, at -> at, asItIs(dome));
            sameCollars(small, large);
            for (int i = 0; i < small.struts().types().size(); i++) {
                assertThat(large.struts().types().get(i).chord())
                        .isCloseTo(
                                scale * small.struts().types().get(i).chord(),
                                org.assertj.core.api.Assertions.within(NEAR));
            }
        });
    }

    // The mirror of (b, c) is (c, b): H. S. M. Coxeter, Virus macromolecules and geodesic domes, 1971 (from memory).
    @Test
    void dome_ofTheMirroredBreakdown_hasTheMirroredHubs() {
        List<String> left = cycles(whole(new Breakdown(2, 1)), false);
        List<String> right = cycles(whole(new Breakdown(1, 2)), false);
        List<String> mirrored = cycles(whole(new Breakdown(1, 2)), true);
        assertThat(mirrored).containsExactlyInAnyOrderElementsOf(left);
        assertThat(right).isNotEqualTo(left);
    }

    // How often each hub type occurs, and its gaps and struts, clockwise or the other way, from the least.
    private static List<String> cycles(Plan plan, boolean mirrored) {
        List<String> found = new ArrayList<>();
        for (HubType type : plan.hubs().types()) {
            int size = type.struts().size();
            List<String> turns = new ArrayList<>();
            for (int start = 0; start < size; start++) {
                StringBuilder turn = new StringBuilder();
                for (int i = 0; i < size; i++) {
                    int at = (mirrored ? start - i + size : start + i) % size;
                    int gapAt = mirrored ? (at + size - 1) % size : at;
                    turn.append(type.struts().get(at).strutType())
                            .append(' ')
                            .append(Decimals.fixed(type.gapAfter(gapAt), 9))
                            .append(' ');
                }
                turns.add(turn.toString());
            }
            found.add(type.count() + ": " + turns.stream().sorted().findFirst().orElseThrow());
        }
        return found;
    }

    private static Plan whole(Breakdown breakdown) {
        SphereSettings sphere = new SphereSettings(Base.ICOSAHEDRON, breakdown, Subdivision.CHORDS, Up.VERTEX);
        return Planner.plan(
                Jobs.windbreak()
                        .dome(new DomeSettings(sphere, new Cut.Height(-1)))
                        .size(new SizeRule.Radius(4000))
                        .job(),
                List.of());
    }
}
