package collarwright.collar;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A hole that is cut toward the axis against the solvers for drilled holes, which work in another way. */
class RadialCutTest {

    /** Up and down it is a drilled hole; to the sides a strut leans as far or further. */
    @ParameterizedTest
    @CsvSource({"77, 81.5, 50.8, 48.26", "77, 84.1, 50.8, 48.26", "50, 53, 27.5, 26.9", "51, 57.15, 44, 40"})
    void radialCut_leansAsFarAsDrilled(double inner, double outer, double hole, double strut) {
        SwungContact.Wall wall = new SwungContact.Wall(inner, outer);
        RadialCut cut = new RadialCut(hole, inner);
        HoleContact contact = new HoleContact(cut, wall, StrutSection.round(strut), 0);
        double drilled = RoundHole.tiltLimit(strut, hole, inner, outer);
        assertThat(contact.toward(0).orElseThrow().most()).isCloseTo(drilled, within(2e-5));
        for (double bearing : new double[] {0.4, 0.9, 1.3, Math.PI / 2}) {
            double round = SwungContact.tiltLimit(strut, hole, wall, bearing);
            assertThat(contact.toward(bearing).orElseThrow().most())
                    .as("toward " + bearing)
                    .isGreaterThan(round - 2e-5);
        }
    }

    @Test
    void edges_lieOnThePipe_andOnLinesTowardTheAxis() {
        SwungContact.Wall wall = new SwungContact.Wall(51, 57);
        RadialCut cut = new RadialCut(40, 51);
        assertThat(cut.withSize(30)).isEqualTo(new RadialCut(30, 51));
        assertThat(cut.size()).isEqualTo(40);
        assertThat(cut.limit(wall)).isEqualTo(102);
        assertThat(cut.goesThrough(wall)).isTrue();
        assertThat(new RadialCut(102, 51).goesThrough(wall)).isFalse();
        for (double turn : new double[] {0, 0.7, 2, 4.4}) {
            var inside = cut.rims(wall).get(0).at(turn);
            var outside = cut.rims(wall).get(1).at(turn);
            assertThat(Math.hypot(inside.x(), inside.y())).isCloseTo(51, within(1e-9));
            assertThat(Math.hypot(outside.x(), outside.y())).isCloseTo(57, within(1e-9));
            assertThat(Math.atan2(outside.y(), outside.x()))
                    .isCloseTo(Math.atan2(inside.y(), inside.x()), within(1e-12));
            assertThat(Math.hypot(inside.y(), inside.z())).isCloseTo(20, within(1e-9));
        }
    }
}
