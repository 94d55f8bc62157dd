package collarwright.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import collarwright.cutting.CutPiece;
import collarwright.cutting.CutPlan;
import collarwright.cutting.CuttingPlanner;
import collarwright.cutting.CuttingTask;
import collarwright.cutting.SawSettings;
import collarwright.cutting.StockLength;
import collarwright.dome.Base;
import collarwright.dome.Breakdown;
import collarwright.dome.Cut;
import collarwright.dome.Dome;
import collarwright.dome.DomeSettings;
import collarwright.dome.Foot;
import collarwright.dome.Form;
import collarwright.dome.FrameSettings;
import collarwright.dome.Girth;
import collarwright.dome.Opening;
import collarwright.dome.Role;
import collarwright.dome.SphereSettings;
import collarwright.dome.Subdivision;
import collarwright.dome.Up;
import collarwright.finding.Code;
import collarwright.finding.Finding;
import collarwright.frame.FrameNet;
import collarwright.geometry.Vec3;
import collarwright.hub.HubStrut;
import collarwright.hub.Hubs;
import collarwright.strut.SizeRule;
import collarwright.strut.StrutType;
import collarwright.testing.Jobs;
import collarwright.testing.Seeds;
import collarwright.units.LengthUnit;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Feet, risers, openings, forms and sizes, each by a closed form or by looking at every point. */
class DomeFormsTest {

    private static final SphereSettings THREE = sphere(Base.ICOSAHEDRON, 3);

    private static SphereSettings sphere(Base base, int frequency) {
        return new SphereSettings(base, new Breakdown(frequency, 0), Subdivision.CHORDS, Up.VERTEX);
    }

    private static DomeSettings dome(SphereSettings sphere, int tiers, Form form, Foot foot, Opening... openings) {
        return new DomeSettings(sphere, new Cut.Tiers(tiers), form, foot, false, List.of(openings));
    }

    private static Plan plan(DomeSettings dome, SizeRule size) {
        return Planner.plan(Jobs.windbreak().dome(dome).size(size).job(), List.of());
    }

    // Foot nodes of the natural 3v 5/9 lie at z = −0.1716 and −0.1876; the middle of their two angles from the apex is
    // reached by moving each half the difference (circle geometry, textbook).
    @Test
    void level_leastMove_movesEachFootHalfTheDifference() {
        Dome natural = Dome.of(dome(THREE, 5, Form.SPHERE, new Foot.Natural()));
        Dome level = Dome.of(dome(THREE, 5, Form.SPHERE, new Foot.Level(Foot.Plane.LEAST_MOVE)));
        double high = natural.feet().stream().mapToDouble(natural::z).max().orElseThrow();
        double low = natural.feet().stream().mapToDouble(natural::z).min().orElseThrow();
        double half = (StrictMath.acos(low) - StrictMath.acos(high)) / 2;
        for (int foot : level.feet()) {
            assertThat(level.z(foot)).isCloseTo(StrictMath.cos(StrictMath.acos(high) + half), within(1e-12));
            assertThat(level.moved(foot)).isCloseTo(2 * StrictMath.sin(half / 2), within(1e-12));
            assertThat(level.node(foot).norm()).isCloseTo(1, within(1e-15));
        }
        assertThat(high).isCloseTo(-0.1716, within(0.5e-4));
        assertThat(low).isCloseTo(-0.1876, within(0.5e-4));
    }

    @Test
    void level_fewestTypes_hasNoMoreTypesThanLeastMove() {
        for (int tiers = 3; tiers <= 8; tiers++) {
            Hubs least = Hubs.of(Dome.of(dome(THREE, tiers, Form.SPHERE, new Foot.Level(Foot.Plane.LEAST_MOVE))));
            Hubs fewest = Hubs.of(Dome.of(dome(THREE, tiers, Form.SPHERE, new Foot.Level(Foot.Plane.FEWEST_TYPES))));
            assertThat(fewest.strutShapes())
                    .hasSizeLessThanOrEqualTo(least.strutShapes().size());
            assertThat(most(fewest.dome())).isGreaterThanOrEqualTo(most(least.dome()) - 1e-12);
        }
    }

    private static double most(Dome dome) {
        return dome.feet().stream().mapToDouble(dome::moved).max().orElse(0);
    }

    // A plumb line leans arcsin(n_z) from the plane square to an axis n (textbook): −10.35° under a levelled 3v 5/9.
    @Test
    void riser_under3v59_leansAsAPlumbLineDoes() {
        Plan plan = plan(
                dome(THREE, 5, Form.SPHERE, new Foot.Riser(Foot.Plane.LEAST_MOVE, 900, true)),
                new SizeRule.Radius(4000));
        Dome dome = plan.hubs().dome();
        int risers = 0;
        for (int m = 0; m < dome.memberCount(); m++) {
            if (dome.role(m) == Role.RISER) {
                risers++;
                StrutType type = plan.struts().types().get(plan.hubs().strutTypeOf(m));
                assertThat(StrictMath.toDegrees(type.a().axialAngle())).isCloseTo(-10.35, within(0.005));
                assertThat(type.b().axialAngle()).isCloseTo(0, within(1e-12));
                assertThat(type.chord()).isCloseTo(900, within(1e-9));
                assertThat(dome.axis(dome.memberB(m)).z()).isZero();
            }
        }
        assertThat(risers).isEqualTo(15);
        assertThat(dome.feet()).hasSize(15);
    }

    @ParameterizedTest
    @CsvSource({"1, 0, 0", "3, 12, 2", "4, 30, 3.2", "3, 10, 3", "7, 0, 3.1755"})
    void piecesPerStock_longestStruts_fillTheStick(int pieces, double trim, double kerf) {
        Plan plan = plan(
                dome(THREE, 5, Form.SPHERE, new Foot.Natural()), new SizeRule.PiecesPerStock(pieces, 6000, trim, kerf));
        double longest =
                plan.struts().types().stream().mapToDouble(StrutType::cut).max().orElseThrow();
        // To the thousandth of a millimetre in which the saw counts, never over it.
        assertThat(pieces * longest + (pieces - 1) * kerf + trim)
                .isBetween(6000 - (2 * pieces - 1) * 0.001 - 1e-9, 6000 + 1e-9);
        CutPlan cut = CuttingPlanner.plan(new CuttingTask(
                List.of(new CutPiece("S", longest, 5 * pieces)),
                List.of(StockLength.unlimited("6 m", 6000)),
                new SawSettings(kerf, trim, 0, 0)));
        assertThat(cut.newSticks()).isEqualTo(5);
        assertThat(cut.layouts())
                .allSatisfy(l -> assertThat(l.sums().remainder()).isLessThan(0.001 * 2 * pieces));
        assertThat(plan.findings()).extracting(Finding::code).contains(Code.STOCK_YIELD);
    }

    // Every strut is walked along in small steps, and every step is held against the doorway.
    @Test
    void box_drawnDoorways_areFreeOfStrutsAndTakeNoOthers() {
        Seeds.each(60, draw -> {
            Opening.Box box =
                    new Opening.Box(draw.between(200, 2000), draw.between(300, 3000), draw.between(-3.1, 3.1));
            Opening opening = new Opening(List.of(), List.of(), Optional.of(box), List.of(), List.of());
            Dome whole = Dome.of(dome(THREE, 5, Form.SPHERE, new Foot.Natural()));
            Dome open = Dome.of(dome(THREE, 5, Form.SPHERE, new Foot.Natural(), opening))
                    .finished(3000, Girth.NONE, new java.util.ArrayList<>());
            List<String> left = members(open);
            double floor = whole.lowestZ() * 3000;
            for (int m = 0; m < whole.memberCount(); m++) {
                double deepest = deepest(
                        box,
                        floor,
                        whole.node(whole.memberA(m)).times(3000),
                        whole.node(whole.memberB(m)).times(3000));
                if (StrictMath.abs(deepest) > 1) {
                    assertThat(left.contains(name(whole, m)))
                            .as("%s of %s", name(whole, m), box)
                            .isEqualTo(deepest < 0);
                }
            }
        });
    }

    private static List<String> members(Dome dome) {
        return IntStream.range(0, dome.memberCount())
                .mapToObj(m -> name(dome, m))
                .toList();
    }

    private static String name(Dome dome, int member) {
        return dome.nodeId(dome.memberA(member)) + "/" + dome.nodeId(dome.memberB(member));
    }

    // How deep the deepest of many points of a strut lies inside a doorway; negative outside.
    private static double deepest(Opening.Box box, double floor, Vec3 a, Vec3 b) {
        double deepest = Double.NEGATIVE_INFINITY;
        for (int step = 0; step <= 4000; step++) {
            Vec3 at = a.plus(b.minus(a).times(step / 4000.0));
            double clockwise = -StrictMath.atan2(at.y(), at.x()) - box.azimuth();
            double out = StrictMath.hypot(at.x(), at.y());
            double ahead = out * StrictMath.cos(clockwise);
            double aside = StrictMath.abs(out * StrictMath.sin(clockwise));
            double inside =
                    StrictMath.min(ahead, StrictMath.min(box.width() / 2 - aside, floor + box.height() - at.z()));
            deepest = StrictMath.max(deepest, inside);
        }
        return deepest;
    }

    @Test
    void evenTilts_ofAnEllipsoid_areMoreEvenThanFitted() {
        SphereSettings octahedron = sphere(Base.OCTAHEDRON, 4);
        double fitted = spread(dome(octahedron, 4, new Form(0.8, Form.Axis.FITTED), new Foot.Natural()));
        double even = spread(dome(octahedron, 4, new Form(0.8, Form.Axis.EVEN_TILTS), new Foot.Natural()));
        assertThat(even).isLessThan(fitted / 2);
    }

    private static double spread(DomeSettings dome) {
        return Hubs.of(Dome.of(dome)).types().stream()
                .mapToDouble(type -> {
                    var tilts = type.struts().stream()
                            .mapToDouble(HubStrut::axialAngle)
                            .summaryStatistics();
                    return tilts.getMax() - tilts.getMin();
                })
                .max()
                .orElseThrow();
    }

    // Edges and corners of a triangulated sphere, E = 3V − 6 (Euler), are just what Maxwell's count of a free frame
    // asks.
    @Test
    void maxwell_wholeSpheres_areZero() {
        for (Base base : Base.values()) {
            for (int n = 1; n <= 6; n++) {
                DomeSettings whole = new DomeSettings(sphere(base, n), new Cut.Height(-1));
                assertThat(FrameCounts.onFeet(Dome.of(whole)))
                        .as("%s %s", base, n)
                        .isZero();
            }
        }
    }

    // The axis of a hub in a flat frame is the flat's normal: on a plane every v·n is 0, and so is the curvature.
    @Test
    void axes_ofAFlatFrame_areItsNormal() {
        double[] coordinates = new double[3 * 7];
        int[] members = new int[2 * 12];
        for (int k = 0; k < 6; k++) {
            double angle = StrictMath.PI / 3 * k;
            // A plane through a tilted pair of directions, its corners not all as far out.
            double out = 1000 + 70 * k;
            coordinates[3 + 3 * k] = out * StrictMath.cos(angle);
            coordinates[4 + 3 * k] = out * 0.8 * StrictMath.sin(angle);
            coordinates[5 + 3 * k] = out * 0.6 * StrictMath.sin(angle);
            members[2 * k + 1] = k + 1;
        }
        for (int k = 0; k < 6; k++) {
            int next = (k + 1) % 6;
            members[12 + 2 * k] = StrictMath.min(k, next) + 1;
            members[13 + 2 * k] = StrictMath.max(k, next) + 1;
        }
        FrameSettings flat = new FrameSettings(
                new FrameNet(coordinates, members), LengthUnit.MM, 0, 0, 1, Form.Axis.FITTED, List.of(), List.of());
        Vec3 axis = Dome.of(flat).axis(0);
        assertThat(axis.minus(new Vec3(0, -0.6, 0.8)).norm()).isLessThan(1e-12);
    }
}
