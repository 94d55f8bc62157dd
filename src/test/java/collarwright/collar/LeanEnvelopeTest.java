package collarwright.collar;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import collarwright.collar.SwungContact.Wall;
import java.util.List;
import org.junit.jupiter.api.Test;

class LeanEnvelopeTest {

    private static final Wall WALL = new Wall(51.1, 57.15);

    @Test
    void round_everyBearing_isTheLimitThere() {
        LeanEnvelope envelope = LeanEnvelope.round(48.26, 50.8, WALL);
        assertThat(envelope.limits()).hasSize(72);
        for (int i = 0; i < 72; i++) {
            double bearing = StrictMath.toRadians(5 * i);
            assertThat(envelope.lean(i)).isCloseTo(SwungContact.tiltLimit(48.26, 50.8, WALL, bearing), within(1e-9));
            assertThat(StrictMath.cos(envelope.limits().get(i).bearing() - bearing))
                    .isCloseTo(1, within(1e-12));
        }
        assertThat(envelope.lean(0)).isCloseTo(RoundHole.tiltLimit(48.26, 50.8, 51.1, 57.15), within(1e-9));
    }

    @Test
    void general_onARoundHole_isTheSame() {
        LeanEnvelope exact = LeanEnvelope.round(48.26, 50.8, WALL);
        HoleContact slot = new HoleContact(new Slot(50.8, 50.8, false), WALL, StrutSection.round(48.26), 0);
        LeanEnvelope general = LeanEnvelope.of(List.of(slot), 12).orElseThrow();
        for (int i = 0; i < 12; i++) {
            assertThat(general.lean(i)).isCloseTo(exact.lean(6 * i), within(StrictMath.toRadians(0.001)));
        }
    }

    @Test
    void tiltedDrilling_isSeenFromItsOwnAxis() {
        Direction drill = new Direction(0.2, 0);
        HoleContact contact =
                new HoleContact(new TiltedDrilling(50.8, drill), new Wall(77, 81.5), StrutSection.round(50), 0);
        LeanEnvelope envelope = LeanEnvelope.of(List.of(contact), 8).orElseThrow();
        assertThat(envelope.axis()).isEqualTo(drill);
        assertThat(envelope.limits().get(0).tilt()).isGreaterThan(0.2);
        // Drilled straight up and down, it is the same to both sides.
        assertThat(envelope.lean(1)).isCloseTo(envelope.lean(7), within(1e-6));
        HoleContact narrow =
                new HoleContact(new TiltedDrilling(50.8, drill), new Wall(77, 81.5), StrutSection.round(51), 0);
        assertThat(LeanEnvelope.of(List.of(narrow), 8)).isEmpty();
    }
}
