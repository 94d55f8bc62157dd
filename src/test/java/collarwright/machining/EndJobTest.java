package collarwright.machining;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import collarwright.finding.Code;
import collarwright.finding.Finding;
import collarwright.hub.StrutTip;
import collarwright.strut.TieHole;
import java.util.List;
import org.junit.jupiter.api.Test;

class EndJobTest {

    private static EndPlan plan(Machine bed, EndStops... struts) {
        return EndJob.plan(EndSamples.settings(bed, ProgramUnits.MM), List.of(struts));
    }

    @Test
    void longBed_drillsBothHolesInOneLine_withAnAirCut() {
        EndPlan plan = plan(EndSamples.bed(false, true), EndSamples.straight());
        assertThat(plan.findings()).isEmpty();
        assertThat(plan.programs()).extracting(BenchProgram::name).containsExactly("SB-ends.ngc", "SB-ends-air.ngc");
        BenchProgram<EndTask> cut = plan.programs().get(0);
        assertThat(cut.task().holes()).extracting(EndHole::x).containsExactly(18.0, 783.25);
        assertThat(cut.text())
                .contains("(STRUT SB, cut 801.25 mm, run it for 3 struts)", "G0 Y0.000\nG0 X18.000\nS1592 M3")
                .contains("(THROUGH BOTH WALLS, room below ")
                .doesNotContain("M0", "TURN");
        assertThat(plan.programs().get(1).air()).isTrue();
    }

    @Test
    void bedWithoutY_movesXAndZOnly_alsoInCycles() {
        String plain = plan(EndSamples.bed(false, false), EndSamples.straight())
                .programs()
                .get(0)
                .text();
        String cycles = plan(EndSamples.bed(true, false), EndSamples.straight())
                .programs()
                .get(0)
                .text();
        assertThat(plain.lines().filter(l -> l.startsWith("G"))).noneMatch(l -> l.contains("Y"));
        assertThat(cycles.lines().filter(l -> l.startsWith("G98")))
                .hasSize(2)
                .allMatch(l -> l.matches("G98 G83 X\\S+ Z\\S+ R\\S+ Q\\S+ F\\S+"));
    }

    @Test
    void twist_isTurnedBackInLine_andTheOtherWayRoundEndForEnd() {
        EndPlan inLine = plan(EndSamples.bed(false, true), EndSamples.twisted());
        assertThat(inLine.programs().get(0).text())
                .contains("M5\nG4 P2.00\n(TURN THE STRUT 23.4 DEG ANTICLOCKWISE SEEN FROM THE STOP)\nM0\nS1592 M3");

        EndPlan turned = plan(EndSamples.bed(false, true, 600, new Bed(20, 2, 25)), EndSamples.twisted());
        assertThat(turned.programs())
                .extracting(BenchProgram::name)
                .containsExactly("SA-E1.ngc", "SA-E1-air.ngc", "SA-E2.ngc", "SA-E2-air.ngc");
        EndTask second = turned.programs().get(2).task();
        assertThat(second.atStop()).isEqualTo(StrutTip.B);
        assertThat(second.holes()).extracting(EndHole::x).containsExactly(21.5);
        assertThat(turned.programs().get(0).text()).contains("MARK A LINE").doesNotContain("M0");
        assertThat(turned.programs().get(2).text())
                .contains("MARKED LINE UP", "(TURN THE STRUT 23.4 DEG CLOCKWISE SEEN FROM THE STOP)\nM0\nS1592 M3");
    }

    @Test
    void turnTooSmallToSet_isNotAskedFor() {
        EndStops nearly = new EndStops("SA", 1, 900, 18, 18, StrictMath.toRadians(0.049));
        assertThat(plan(EndSamples.bed(false, true), nearly).programs().get(0).text())
                .doesNotContain("M0");
    }

    @Test
    void everythingThatDoesNotGo_isTold_andNothingIsWritten() {
        Machine small = EndSamples.bed(false, true, 15, new Bed(20, 18, 1));
        EndPlan plan = EndJob.plan(
                EndSamples.settings(small, ProgramUnits.MM, RotarySamples.twist(4)), List.of(EndSamples.straight()));
        assertThat(plan.programs()).isEmpty();
        // A 4 mm drill that is 40 mm deep; no room below; the stop in its way; X too short.
        assertThat(plan.findings())
                .extracting(Finding::code)
                .containsExactly(Code.CUTTER_REACH, Code.MACHINE_UNABLE, Code.STRUT_TIE_HOLE, Code.MACHINE_TRAVEL);
    }

    @Test
    void lowBridge_hasNoRoomForTheAirCut_andSaysSo() {
        Machine bed = EndSamples.bed(false, true);
        Machine.Travel t = bed.travel();
        Machine low = new Machine(
                bed.name(),
                bed.title(),
                bed.kind(),
                bed.post(),
                new Machine.Travel(0, 2000, -80, 60, 5000, 2000, 300, 6, t.across()),
                bed.spindle(),
                bed.rotary(),
                bed.source(),
                bed.bed());
        EndPlan plan = plan(low, EndSamples.straight());
        assertThat(plan.programs()).hasSize(1);
        assertThat(plan.findings()).extracting(Finding::code).containsExactly(Code.MACHINE_TRAVEL);
    }

    @Test
    void nothingToDrill_givesNothing() {
        assertThat(plan(EndSamples.bed(false, true))).isEqualTo(EndPlan.NONE);
    }

    @Test
    void drill_isTheShopsOwnOfTheSize_orOneToBeFound() {
        var own = RotarySamples.twist(6);
        assertThat(TieDrill.from(new TieHole(6.02, 18), List.of(RotarySamples.HOLE_SAW_44, own)))
                .isEqualTo(own);
        var wanted = TieDrill.from(new TieHole(6.2, 18), List.of(own));
        assertThat(wanted.rack()).isEqualTo("wanted");
        assertThat(wanted.size()).isEqualTo(6.2);
        // tan 59° = 1.66428 by a table of tangents.
        assertThat(wanted.lead()).isCloseTo(3.1 / 1.66428, within(1e-5));
    }

    @Test
    void bars_standHigherAndLower_thanNominal() {
        StrutBar bar = new StrutBar(EndSamples.pipe());
        assertThat(bar.play()).isCloseTo(0.35, within(1e-12));
        assertThat(bar.highest()).isCloseTo(20.025 + 0.7, within(1e-12));
        assertThat(bar.lowest()).isCloseTo(-20.025 - 0.35, within(1e-12));
    }

    @Test
    void valuesThatCannotBe_areRefused() {
        assertThatThrownBy(() -> new Bed(-1, 0, 0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new EndStops("SA", 0, 900, 18, 18, 0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new EndStops("SA", 1, 30, 18, 18, 0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new EndStops("SA", 1, 900, 18, 18, 2)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> EndSamples.settings(RotarySamples.machine(false), ProgramUnits.MM))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
