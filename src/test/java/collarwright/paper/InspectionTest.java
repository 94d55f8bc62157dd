package collarwright.paper;

import static org.assertj.core.api.Assertions.assertThat;

import collarwright.geometry.Interval;
import collarwright.tooling.Cutter;
import collarwright.tooling.CutterKind;
import collarwright.tooling.Hole;
import org.junit.jupiter.api.Test;

/** The rule of the gauge pins, worked by hand. */
class InspectionTest {

    private static Hole hole(double least, double most, double required) {
        Interval size = new Interval(least, (least + most) / 2, most);
        Cutter cutter = new Cutter("HS-44", CutterKind.HOLE_SAW, "44 mm", 44, size, true, 8, 38, 60, 400, "trial");
        return new Hole(1, 0, 0, 0.2, required, cutter, 0.21, 0.2, 0.22);
    }

    @Test
    void goPin_isTheLeastHole_roundedDown() {
        assertThat(Inspection.go(hole(44.13, 44.31, 43.5), Inspection.Steps.MM)).isBetween(44.0999, 44.1001);
    }

    @Test
    void goPin_isNeverBelowWhatTheStrutNeeds() {
        assertThat(Inspection.go(hole(44.13, 44.31, 44.121), Inspection.Steps.MM))
                .isBetween(44.1299, 44.1301);
    }

    @Test
    void goPin_ofAHoleThatMayComeUpShort_isWhatTheCutterMakes() {
        assertThat(Inspection.go(hole(44.13, 44.31, 45), Inspection.Steps.MM)).isBetween(44.0999, 44.1001);
    }

    // 44.13 mm / 25.4 = 1.73740 in; a need of 44.121 mm is 1.737047 in, so 1.7371 in; 44.31 + 0.254 mm is 1.75449 in.
    @Test
    void pinsOfInchJobs_areInThousandths() {
        Inspection.Steps inch = Inspection.Steps.INCH;
        assertThat(Inspection.go(hole(44.13, 44.31, 43.5), inch) / 25.4).isBetween(1.73699, 1.73701);
        assertThat(Inspection.go(hole(44.13, 44.31, 44.121), inch) / 25.4).isBetween(1.73709, 1.73711);
        assertThat(Inspection.noGo(hole(44.13, 44.31, 43.5), inch) / 25.4).isBetween(1.75499, 1.75501);
    }

    @Test
    void noGoPin_isAQuarterMillimetreOverTheLargestHole_roundedUp() {
        assertThat(Inspection.noGo(hole(44.13, 44.31, 43.5), Inspection.Steps.MM))
                .isBetween(44.5999, 44.6001);
        assertThat(Inspection.noGo(hole(44, 44, 43.5), Inspection.Steps.MM)).isBetween(44.2499, 44.2501);
    }
}
