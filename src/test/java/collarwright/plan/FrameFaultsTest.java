package collarwright.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

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
import collarwright.dome.SphereSettings;
import collarwright.dome.Subdivision;
import collarwright.dome.Up;
import collarwright.finding.Code;
import collarwright.finding.Finding;
import collarwright.finding.JobException;
import collarwright.finding.Level;
import collarwright.frame.FrameNet;
import collarwright.geometry.Vec3;
import collarwright.strut.SizeRule;
import collarwright.testing.Jobs;
import collarwright.testing.Seeds;
import collarwright.units.LengthUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Frames that no collar can be made for, and doorways that have to be clear. */
class FrameFaultsTest {

    private static SphereSettings sphere(int b, int c) {
        return new SphereSettings(Base.ICOSAHEDRON, new Breakdown(b, c), Subdivision.CHORDS, Up.VERTEX);
    }

    private static DomeSettings level(SphereSettings sphere, int tiers, Foot.Plane plane) {
        return new DomeSettings(sphere, new Cut.Tiers(tiers), Form.SPHERE, new Foot.Level(plane), false, List.of());
    }

    private static DomeSettings opened(int tiers, Opening opening) {
        return new DomeSettings(
                sphere(3, 0), new Cut.Tiers(tiers), Form.SPHERE, new Foot.Natural(), false, List.of(opening));
    }

    private static Opening opening(List<String> nodes, String... added) {
        List<Opening.Between> struts = new ArrayList<>();
        for (String one : added) {
            struts.add(new Opening.Between(one.substring(0, 5), one.substring(6)));
        }
        return new Opening(nodes, List.of(), Optional.empty(), struts, List.of());
    }

    private static List<Finding> stops(DomeSettings dome, double radius) {
        List<Finding> found = new ArrayList<>();
        assertThatExceptionOfType(JobException.class)
                .isThrownBy(() -> Planner.plan(
                        Jobs.windbreak()
                                .dome(dome)
                                .size(new SizeRule.Radius(radius))
                                .job(),
                        List.of()))
                .satisfies(e -> found.addAll(e.findings()));
        return found.stream().filter(f -> f.level() == Level.STOP).toList();
    }

    @Test
    void foot_ofAZigzag_cannotBeLevelled() {
        for (Foot.Plane plane : Foot.Plane.values()) {
            assertThat(stops(level(sphere(4, 4), 10, plane), 12_000))
                    .extracting(Finding::code)
                    .containsExactly(Code.FOOT_LEVELLED);
        }
    }

    // Every row of class I runs evenly round: no plane of least movement crushes it.
    @Test
    void foot_ofAnyRow_canBeLevelled() {
        for (int n = 1; n <= 8; n++) {
            for (int rows = 1; rows < 3 * n; rows++) {
                assertThat(FootFaults.of(Dome.of(level(sphere(n, 0), rows, Foot.Plane.LEAST_MOVE))))
                        .as("%s %s", n, rows)
                        .isEmpty();
            }
        }
    }

    // No struts of the whole sphere lean so far; one through its middle stands on the hub's axis.
    @Test
    void addedStrut_throughTheMiddle_isRefused() {
        assertThat(stops(opened(9, opening(List.of(), "T0-01/T9-01")), 4000))
                .extracting(f -> f.code() + " " + f.where().text())
                .containsExactly("HUB_AXIS hub T0-01 / strut to T9-01", "HUB_AXIS hub T9-01 / strut to T0-01");
    }

    @Test
    void addedStruts_thatCross_areRefused() {
        assertThat(stops(opened(5, opening(List.of("T2-01", "T3-01"), "T2-02/T3-15", "T2-10/T3-02")), 8000))
                .extracting(f -> f.code() + " " + f.where().text())
                .containsExactly("DOME_OPENING added strut T2-02/T3-15");
    }

    @Test
    void addedStruts_apart_areTaken() {
        DomeSettings dome = opened(5, opening(List.of("T2-01"), "T1-01/T3-01"));
        Plan plan = Planner.plan(
                Jobs.windbreak().dome(dome).size(new SizeRule.Radius(8000)).job(), List.of());
        assertThat(Plans.found(plan, Code.DOME_OPENING)).isEmpty();
    }

    // Every strut and every hub that is left is held against the doorway in small steps; none that is far from it is
    // gone.
    @Test
    void doorway_drawn_isClearOfStrutsAndCollars() {
        Seeds.each(40, draw -> {
            Opening.Box box =
                    new Opening.Box(draw.between(200, 2000), draw.between(300, 3000), draw.between(-3.1, 3.1));
            Girth girth = new Girth(draw.between(5, 30), draw.between(40, 120));
            Opening opening = new Opening(List.of(), List.of(), Optional.of(box), List.of(), List.of());
            Dome whole = Dome.of(opened(5, opening));
            Dome open = whole.finished(3000, girth, new ArrayList<>());
            double floor = whole.lowestZ() * 3000;
            List<String> left = new ArrayList<>();
            for (int m = 0; m < open.memberCount(); m++) {
                left.add(open.nodeId(open.memberA(m)) + "/" + open.nodeId(open.memberB(m)));
            }
            for (int m = 0; m < whole.memberCount(); m++) {
                Vec3 a = whole.node(whole.memberA(m)).times(3000);
                Vec3 b = whole.node(whole.memberB(m)).times(3000);
                double strut = deepest(box, floor, a, b) + girth.strut();
                double hubs = StrictMath.max(deepest(box, floor, a, a), deepest(box, floor, b, b)) + girth.collar();
                double in = StrictMath.max(strut, hubs);
                if (StrictMath.abs(in) > 1) {
                    String name = whole.nodeId(whole.memberA(m)) + "/" + whole.nodeId(whole.memberB(m));
                    assertThat(left.contains(name)).as("%s of %s", name, box).isEqualTo(in < 0);
                }
            }
        });
    }

    // How deep the deepest of many points lies inside a doorway; negative outside.
    private static double deepest(Opening.Box box, double floor, Vec3 a, Vec3 b) {
        double deepest = Double.NEGATIVE_INFINITY;
        for (int step = 0; step <= 4000; step++) {
            Vec3 at = a.plus(b.minus(a).times(step / 4000.0));
            double clockwise = -StrictMath.atan2(at.y(), at.x()) - box.azimuth();
            double out = StrictMath.hypot(at.x(), at.y());
            double aside = StrictMath.abs(out * StrictMath.sin(clockwise));
            double inside = StrictMath.min(box.width() / 2 - aside, floor + box.height() - at.z());
            deepest = StrictMath.max(deepest, StrictMath.min(inside, out * StrictMath.cos(clockwise)));
        }
        return deepest;
    }

    // A doorway between two foot hubs of a 3v 5/9 of 4 m: the collars beside it and the strut over it tell its clear
    // size.
    @Test
    void doorway_clearSize_isTold() {
        Opening.Box box = new Opening.Box(900, 1000, StrictMath.toRadians(12));
        Opening opening = new Opening(
                List.of(), List.of(), Optional.of(box), List.of(new Opening.Between("T4-01", "T4-02")), List.of());
        List<Finding> findings = new ArrayList<>();
        Dome open = Dome.of(opened(5, opening)).finished(4000, new Girth(20, 100), findings);
        String told = findings.stream()
                .map(Finding::found)
                .filter(f -> f.startsWith("clear between"))
                .findFirst()
                .orElseThrow();
        double aside = Double.POSITIVE_INFINITY;
        for (int node = 0; node < open.nodeCount(); node++) {
            Vec3 at = open.node(node).times(4000);
            double turn = -StrictMath.atan2(at.y(), at.x()) - box.azimuth();
            double out = StrictMath.hypot(at.x(), at.y());
            if (StrictMath.cos(turn) > 0 && at.z() < open.lowestZ() * 4000 + 1000) {
                aside = StrictMath.min(aside, StrictMath.abs(out * StrictMath.sin(turn)) - 100);
            }
        }
        double wide = Double.parseDouble(told.replaceAll(".*: (\\d+) mm wide.*", "$1"));
        assertThat(wide).isGreaterThanOrEqualTo(900).isLessThanOrEqualTo(2 * aside + 1);
    }

    @Test
    void doorway_strutAddedInIt_isWarnedOf() {
        Opening.Box box = new Opening.Box(1000, 1900, 0);
        Opening opening = new Opening(
                List.of(), List.of(), Optional.of(box), List.of(new Opening.Between("T3-02", "T3-15")), List.of());
        List<Finding> findings = new ArrayList<>();
        Dome open = Dome.of(opened(5, opening)).finished(2600, new Girth(12.5, 70), findings);
        assertThat(open.memberCount()).isGreaterThan(100);
        assertThat(findings)
                .filteredOn(f -> f.level() == Level.WARN)
                .extracting(Finding::found)
                .containsExactly("T3-02/T3-15, which comes into it");
    }

    @Test
    void frame_axisGivenInward_isWarnedOf() {
        double[] coordinates = {0, 0, 1000, 1000, 0, 0, 0, 1000, 0, -1000, 0, 0, 0, -1000, 0};
        int[] members = {0, 1, 0, 2, 0, 3, 0, 4, 1, 2, 1, 4, 2, 3, 3, 4};
        for (double z : new double[] {1, -1}) {
            FrameSettings frame = new FrameSettings(
                    new FrameNet(coordinates, members),
                    LengthUnit.MM,
                    0.1,
                    0.1,
                    1,
                    Form.Axis.FITTED,
                    List.of(new FrameSettings.NodeAxis(0, new Vec3(0, 0, z))),
                    List.of());
            assertThat(FacingSides.of(Dome.of(frame), frame))
                    .extracting(f -> f.level() + " " + f.where().text())
                    .isEqualTo(z > 0 ? List.of() : List.of("WARN hub N001"));
        }
    }
}
