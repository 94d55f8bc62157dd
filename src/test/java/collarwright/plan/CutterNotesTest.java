package collarwright.plan;

import static collarwright.plan.Plans.found;
import static collarwright.plan.Plans.hinted;
import static collarwright.plan.Plans.plan;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import collarwright.finding.Code;
import collarwright.finding.Finding;
import collarwright.finding.Level;
import collarwright.geometry.Interval;
import collarwright.hub.HubStrut;
import collarwright.strut.SizeBins;
import collarwright.strut.StrutType;
import collarwright.testing.Jobs;
import collarwright.tooling.Cutter;
import collarwright.tooling.CutterNeed;
import collarwright.tooling.Hole;
import collarwright.tooling.HoleSize;
import collarwright.tooling.Pattern;
import collarwright.tooling.SharingLimits;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

class CutterNotesTest {

    private static double worstSlack(Plan plan) {
        return plan.book().patterns().stream()
                .flatMap(p -> p.holes().stream())
                .mapToDouble(h -> StrictMath.toDegrees(h.slack()))
                .max()
                .orElseThrow();
    }

    private static double figure(String text) {
        return Double.parseDouble(text.substring(0, text.indexOf('°')));
    }

    @Test
    void oneCutter_costsSlack_andTheNoteSaysHowMuch() {
        Plan free = plan(Jobs.windbreak());
        Plan one = plan(Jobs.windbreak().mostCutters(1));
        Finding note = found(one, Code.CUTTERS_FEW).get(0);
        assertThat(note.level()).isEqualTo(Level.NOTE);
        assertThat(one.book().holesByCutter()).hasSize(1);
        assertThat(figure(note.found())).isCloseTo(worstSlack(one), within(0.005));
        assertThat(figure(note.expected().substring("slack of ".length()))).isCloseTo(worstSlack(free), within(0.005));
        assertThat(hinted(note, "with 2 cutters it is "))
                .isCloseTo(worstSlack(plan(Jobs.windbreak().mostCutters(2))), within(0.005));
    }

    // The hint is followed: the cutter is bought, and what it promised comes out.
    @Test
    void oneCutter_cutterOfTheHint_givesWhatItSays() {
        Finding note =
                found(plan(Jobs.windbreak().mostCutters(1)), Code.CUTTERS_FEW).get(0);
        double size = hinted(note, "or add a cutter of ");
        double promised = hinted(note, "mm as drilled to the rack: then it is ");
        List<Cutter> rack = new ArrayList<>(Jobs.windbreak().job().drilling().cutters());
        rack.add(Jobs.saw(size));
        Plan then = plan(Jobs.windbreak().cutters(rack.toArray(Cutter[]::new)).mostCutters(1));
        assertThat(worstSlack(then)).isCloseTo(promised, within(0.005)).isLessThan(figure(note.found()));
    }

    @Test
    void enoughCutters_costNothing_andNothingIsSaid() {
        assertThat(found(plan(Jobs.windbreak().mostCutters(9)), Code.CUTTERS_FEW))
                .isEmpty();
        assertThat(found(plan(Jobs.windbreak()), Code.CUTTERS_FEW)).isEmpty();
        assertThat(found(plan(Jobs.windbreak().cutters(Jobs.saw(39)).mostCutters(1)), Code.CUTTERS_FEW))
                .as("no cutter fits at all: that is told")
                .isEmpty();
    }

    @Test
    void cuttersThatServeAPartEach_tooFew_stops() {
        CutterNeed low = new CutterNeed(1, 1, c -> c.size() < 43 ? OptionalDouble.of(0) : OptionalDouble.empty());
        CutterNeed high = new CutterNeed(2, 1, c -> c.size() >= 43 ? OptionalDouble.of(0) : OptionalDouble.empty());
        CutterNotes notes = new CutterNotes(Jobs.windbreak().mostCutters(1).job());
        Finding stop = notes.limited(List.of(low, high)).orElseThrow();
        assertThat(stop.level()).isEqualTo(Level.STOP);
        assertThat(stop.code()).isEqualTo(Code.CUTTERS_FEW);
        assertThat(stop.expected()).isEqualTo("cutters that serve every hole, 2 or more of these racks");
        assertThat(stop.hints()).contains("write most-cutters = 2");
        CutterNotes two = new CutterNotes(Jobs.windbreak().mostCutters(2).job());
        assertThat(two.limited(List.of(low, high))).isEmpty();
    }

    // Plane trigonometry, without the small angle: the hub's end of a strut of length L at angle θ is moved out by w,
    // the
    // far end and its distance from the axis stay: the new angle has the tangent (L·sin θ + w) / (L·cos θ).
    @Test
    void hubPlay_movedSoFar_turnsTheHoldingStrutByItsSlack() {
        Plan plan = plan(Jobs.windbreak().mostCutters(1));
        for (int type = 0; type < plan.hubs().types().size(); type++) {
            HubPlay play = HubPlay.of(plan, type);
            List<HubStrut> struts = plan.hubs().types().get(type).struts();
            Pattern pattern = plan.book().patterns().get(type);
            for (Hole hole : pattern.holes()) {
                HubStrut strut = struts.get(hole.number() - 1);
                StrutType kind = plan.struts().types().get(strut.strutType());
                double angle = strut.axialAngle();
                double turned = StrictMath.atan2(
                                kind.chord() * StrictMath.sin(angle) + play.movement(),
                                kind.chord() * StrictMath.cos(angle))
                        - angle;
                assertThat(turned).as("no other strut binds before").isLessThan(hole.slack() * 1.0001);
                if (hole.number() == play.hole()) {
                    assertThat(turned).isCloseTo(hole.slack(), within(0.05 * hole.slack()));
                    assertThat(play.length()).isEqualTo(kind.chord());
                    assertThat(play.slack()).isEqualTo(hole.slack());
                }
            }
        }
        assertThat(found(plan, Code.HUB_MOVEMENT)).hasSize(1);
        assertThat(found(plan(Jobs.windbreak()), Code.HUB_MOVEMENT))
                .as("as loose, though as near as the rack has them")
                .hasSize(1);
        assertThat(found(plan(Jobs.windbreak().nearest(0.02)), Code.HUB_MOVEMENT))
                .as("the same rule for nearest as for reach")
                .hasSize(moves(plan(Jobs.windbreak().nearest(0.02))) >= 5 ? 1 : 0);
        assertThat(found(plan(Jobs.windbreak().cutters(Jobs.saw(45))), Code.HUB_MOVEMENT))
                .as("slack beyond its limit")
                .hasSize(1);
    }

    // How far the hub goes that moves most, mm.
    private static double moves(Plan plan) {
        return java.util.stream.IntStream.range(0, plan.hubs().types().size())
                .mapToDouble(type -> HubPlay.of(plan, type).movement())
                .max()
                .orElseThrow();
    }

    @Test
    void shortHole_saysThatTheFrameHasToBeForced() {
        Plan plan = plan(Jobs.windbreak().cutters(Jobs.saw(42.3)).nearest(StrictMath.toRadians(1.5)));
        Finding warning = found(plan, Code.HOLE_SHORT_OF_REACH).get(0);
        assertThat(warning.hints().get(0))
                .startsWith(
                        "use fit = \"reach\", or ease the rims by hand (now: cannot be put together without forcing,"
                                + " the strut binds ")
                .endsWith("° before its angle)");
        Pattern holding = plan.book().patterns().stream()
                .filter(p -> p.holes().stream().anyMatch(h -> h.slack() < 0))
                .findFirst()
                .orElseThrow();
        List<String> lines = HubPlay.consequences(plan, holding);
        assertThat(lines).anyMatch(l -> l.matches("Hole \\d: cannot be put together without forcing.*"));
        assertThat(lines).as("a hub that cannot move").noneMatch(l -> l.startsWith("This hub"));
        Plan exact = plan(Jobs.windbreak());
        for (int i = 0; i < exact.book().patterns().size(); i++) {
            assertThat(HubPlay.consequences(exact, exact.book().patterns().get(i)))
                    .hasSize(HubPlay.of(exact, i).movement() >= 5 ? 1 : 0);
        }
    }

    @Test
    void bins_eachGetsItsOwnHoles_andTheThickestThoseOfAll() {
        SizeBins second = new SizeBins(List.of(39.0, 40.0, 41.0, 42.0), Optional.of(2));
        Plan plan = plan(Jobs.windbreak().bins(second));
        List<BinTable.Row> rows = BinTable.of(plan).rows();
        assertThat(rows).hasSize(3 * 3).filteredOn(BinTable.Row::chosen).hasSize(3);
        for (BinTable.Row row : rows) {
            double own = BinTable.Row.slack(row.own()).orElseThrow();
            double whole = BinTable.Row.slack(row.whole()).orElseThrow();
            if (row.bin() == 3) {
                assertThat(row.own().cutter()).isEqualTo(row.whole().cutter());
            } else {
                // A millimetre of strut and more is two degrees and more with this wall.
                assertThat(whole - own).isGreaterThan(StrictMath.toRadians(2));
            }
            assertThat(own).isPositive();
        }
        List<HoleSize> book = plan.book().sizes().stream().map(s -> s.size()).toList();
        assertThat(rows)
                .filteredOn(BinTable.Row::chosen)
                .allSatisfy(row -> assertThat(book).contains(row.own()));
        assertThat(found(plan, Code.STRUT_BINS)).isEmpty();
    }

    /** What cures a hole with too much slack: never a cutter that the rack has, nor one that would leave as much. */
    @Test
    void slack_tooMuch_namesWhatIsTheCause() {
        // Whole sizes are as near as half ones to some holes; one for all is not.
        Plan few = plan(Jobs.windbreak().mostCutters(1));
        assertThat(found(few, Code.HOLE_SLACK))
                .isNotEmpty()
                .allSatisfy(f -> assertThat(f.hints().get(0))
                        .startsWith("the rack has hole saw ")
                        .endsWith("write a larger most-cutters than 1"));

        Plan coarse = plan(Jobs.windbreak().cutters(Jobs.saw(50)));
        assertThat(found(coarse, Code.HOLE_SLACK))
                .isNotEmpty()
                .allSatisfy(f -> assertThat(f.hints().get(0)).startsWith("add a cutter nearer to "));

        Plan spread = plan(
                Jobs.windbreak().strut(Jobs.pipe("natural", new Interval(36, 38.1, 40.2), Interval.between(3.0, 3.4))));
        assertThat(found(spread, Code.HOLE_SLACK)).isNotEmpty().allSatisfy(f -> {
            assertThat(f.hints().get(0)).startsWith("narrow the spread of strut (36.00 to 40.20 mm)");
            assertThat(f.hints()).noneMatch(h -> h.startsWith("add a cutter"));
        });
    }

    // The row of this job is what this job is drilled with, whatever limits the choice of cutters or shares the holes.
    @Test
    void bins_fewCuttersOrSharedPatterns_areWhatTheJobGets() {
        SizeBins second = new SizeBins(List.of(39.0, 40.0, 41.0, 42.0), Optional.of(2));
        Jobs few = Jobs.windbreak().bins(second).mostCutters(1);
        assertThat(BinTable.of(plan(few)).rows())
                .filteredOn(r -> r.bin() == 1)
                .extracting(r -> r.own().cutter().orElseThrow().id())
                .hasSize(3)
                .isSubsetOf(plan(Jobs.windbreak()
                                .bins(new SizeBins(second.limits(), Optional.of(1)))
                                .mostCutters(1))
                        .book()
                        .holesByCutter()
                        .keySet());
        for (Jobs jobs : List.of(
                few,
                Jobs.windbreak().bins(second).shared(SharingLimits.USUAL),
                Jobs.windbreak().bins(second))) {
            Plan plan = plan(jobs);
            Set<String> drilled = plan.book().holesByCutter().keySet();
            Set<String> told = BinTable.of(plan).rows().stream()
                    .filter(BinTable.Row::chosen)
                    .map(r -> r.own().cutter().orElseThrow().id())
                    .collect(Collectors.toSet());
            assertThat(told).isEqualTo(drilled);
        }
    }

    @Test
    void bins_noneChosen_countsTheWholeRange_andAsks() {
        SizeBins bins = new SizeBins(List.of(39.0, 40.0, 42.0), Optional.empty());
        Plan plan = plan(Jobs.windbreak().bins(bins));
        assertThat(found(plan, Code.STRUT_BINS).get(0).expected())
                .isEqualTo("one of the 2 bins: 39.00 / 40.00 / 42.00 mm");
        assertThat(plan.book().sizes().get(0).size().need().strut()).isEqualTo(bins.whole());
        assertThat(BinTable.of(plan).rows()).noneMatch(BinTable.Row::chosen);
        assertThat(BinTable.of(plan(Jobs.windbreak())).rows()).isEmpty();
    }

    // The thickest bin is as wide as the bore of 184 mm: nothing fits, and nothing breaks.
    @Test
    void bins_thickerThanTheBore_haveNoCutter() {
        SizeBins bins = new SizeBins(List.of(39.0, 40.0, 190.0), Optional.of(1));
        List<BinTable.Row> rows = BinTable.of(plan(Jobs.windbreak().bins(bins))).rows();
        assertThat(rows)
                .filteredOn(r -> r.bin() == 2)
                .isNotEmpty()
                .allSatisfy(row -> assertThat(BinTable.Row.slack(row.own())).isEmpty());
        assertThat(rows)
                .filteredOn(r -> r.bin() == 1)
                .allSatisfy(row -> assertThat(BinTable.Row.slack(row.own())).isPresent());
    }
}
