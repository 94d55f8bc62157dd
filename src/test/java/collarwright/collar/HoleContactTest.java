package collarwright.collar;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import collarwright.collar.HoleContact.Seat;
import collarwright.collar.SwungContact.Wall;
import collarwright.testing.Seeds;
import java.util.List;
import org.junit.jupiter.api.Test;

class HoleContactTest {

    private static final Wall WALL = new Wall(77, 81.5);
    private static final StrutSection STRUT = StrutSection.round(48.26);
    private static final double HALF_THOUSANDTH = StrictMath.toRadians(0.0005);

    // Other ways to make the same round hole: a slot no longer than wide, a cone that removes nothing, a jig not
    // tilted.
    @Test
    void generalSolver_onARoundHole_isTheExactOne() {
        Seeds.each(25, draw -> {
            double inner = draw.between(40, 100);
            Wall wall = new Wall(inner, inner + draw.between(1.5, 9));
            double hole = inner * draw.between(0.3, 1);
            StrutSection strut = StrutSection.round(hole * draw.between(0.9, 0.99));
            double bearing = draw.between(0, StrictMath.PI / 2);
            double exact = new HoleContact(new RoundAperture(hole), wall, strut, 0)
                    .toward(bearing)
                    .orElseThrow()
                    .most();
            for (Aperture same :
                    List.of(new Slot(hole, hole, draw.coin()), new TiltedDrilling(hole, new Direction(0, 0)))) {
                assertThat(new HoleContact(same, wall, strut, 0)
                                .toward(bearing)
                                .orElseThrow()
                                .most())
                        .as("%s %s %s", same, wall, strut)
                        .isCloseTo(exact, within(HALF_THOUSANDTH));
            }
        });
    }

    @Test
    void sizeToAngleToSize_everyKind_isTheIdentity() {
        double bearing = 0.4;
        for (Aperture hole : List.of(
                new Slot(50.8, 56, false),
                new Slot(50.8, 56, true),
                new RolledFlat(52),
                new Countersunk(50.8, 52, 50.8),
                new TiltedDrilling(50.8, new Direction(0.1, 0.03)))) {
            double limit = new HoleContact(hole, WALL, STRUT, 0)
                    .toward(bearing)
                    .orElseThrow()
                    .most();
            Seat seat = new Seat(Direction.leaning(limit, bearing), 0);
            assertThat(HoleContact.required(hole, WALL, STRUT, seat))
                    .as("%s", hole)
                    .isCloseTo(hole.size(), within(1e-4));
        }
    }

    // Circle of 50.8 mm cut flat for radii 51.1 and 57.15: 2·51.1·sin(25.4/54.125) = 46.22 mm wide inside, worked by
    // hand.
    @Test
    void circleCutFlat_rolled_isTooNarrowInside() {
        Wall small = new Wall(51.1, 57.15);
        RolledFlat flat = new RolledFlat(50.8);
        assertThat(2 * flat.reach(small)).isCloseTo(46.2, within(0.05));
        assertThat(new HoleContact(flat, small, STRUT, 0).toward(0)).isEmpty();
        assertThat(new HoleContact(flat, small, StrutSection.round(46.21), 0).toward(0))
                .isPresent();
        assertThat(new HoleContact(flat, small, StrutSection.round(46.23), 0).toward(0))
                .isEmpty();
    }

    @Test
    void jigTiltedByTheAxialAngle_needsAHoleHardlyLargerThanTheStrut() {
        double axial = StrictMath.toRadians(11.64);
        TiltedDrilling hole = new TiltedDrilling(48.28, new Direction(axial, 0));
        HoleContact contact = new HoleContact(hole, WALL, STRUT, 0);
        assertThat(contact.toward(0).orElseThrow().most()).isGreaterThan(axial);
        assertThat(contact.toward(0).orElseThrow().least()).isBetween(0.1, axial);
        assertThat(contact.toward(StrictMath.PI))
                .as("the other way it does not pass")
                .isEmpty();
        assertThat(contact.tilting(0).orElseThrow().most())
                .isCloseTo(contact.toward(0).orElseThrow().most(), within(1e-7));
    }

    // The mid-plane answer of a slot is that of a round hole as high as the slot is long, where the contact is on it.
    @Test
    void slotAlongTheAxis_leansLikeAHoleOfItsLength() {
        double limit = new HoleContact(new Slot(50.8, 56, false), WALL, STRUT, 0)
                .toward(0)
                .orElseThrow()
                .most();
        assertThat(limit).isCloseTo(RoundHole.tiltLimit(48.26, 56, 77, 81.5), within(StrictMath.toRadians(0.001)));
    }

    @Test
    void countersinkFromOutside_easesUpAndDown_notToTheSide() {
        HoleContact plain = new HoleContact(new RoundAperture(50.8), WALL, STRUT, 0);
        HoleContact eased = new HoleContact(new Countersunk(50.8, 51.8, 50.8), WALL, STRUT, 0);
        double side = StrictMath.PI / 2;
        // Up and down the outer edge lies 0.5 mm deeper: a wall of 77 to 81 mm.
        assertThat(eased.toward(0).orElseThrow().most())
                .isCloseTo(RoundHole.tiltLimit(48.26, 50.8, 77, 81), within(HALF_THOUSANDTH));
        assertThat(eased.toward(side).orElseThrow().most())
                .isCloseTo(plain.toward(side).orElseThrow().most(), within(HALF_THOUSANDTH));
    }

    // In the plane in which its largest diameter lies an oval strut binds like a round one of that diameter.
    @Test
    void ovalStrut_bindsFirstWithItsLargestDiameterInThePlaneOfLean() {
        StrutSection oval = new StrutSection(48.26, 47);
        double round = RoundHole.tiltLimit(48.26, 50.8, 77, 81.5);
        HoleContact upright = new HoleContact(new RoundAperture(50.8), WALL, oval, 0);
        HoleContact lying = new HoleContact(new RoundAperture(50.8), WALL, oval, StrictMath.PI / 2);
        assertThat(upright.toward(0).orElseThrow().most()).isCloseTo(round, within(HALF_THOUSANDTH));
        assertThat(lying.toward(0).orElseThrow().most()).isGreaterThan(round + 0.05);
        Rolls rolls = Rolls.of(
                oval,
                roll -> new HoleContact(new RoundAperture(50.8), WALL, oval, roll)
                        .toward(0)
                        .orElseThrow()
                        .most());
        assertThat(rolls.least()).isCloseTo(round, within(HALF_THOUSANDTH));
        assertThat(StrictMath.sin(rolls.leastRoll())).isCloseTo(0, within(0.02));
        assertThat(StrictMath.cos(rolls.mostRoll())).isCloseTo(0, within(0.02));
    }

    @Test
    void swungStrut_leansInAllAsFarAsTowardThatBearing() {
        HoleContact contact = new HoleContact(new RoundAperture(50.8), WALL, STRUT, 0);
        double tilt = contact.tilting(0.1).orElseThrow().most();
        Direction to = new Direction(tilt, 0.1);
        assertThat(contact.toward(to.bearing()).orElseThrow().most()).isCloseTo(to.lean(), within(1e-7));
        assertThat(contact.tilting(0.3)).isEmpty();
    }

    @Test
    void holesThatDoNotGoThroughWhole_areRefused() {
        for (Aperture hole : List.of(
                new Slot(50, 160, true),
                new Countersunk(50.8, 60.8, 50.8),
                new Countersunk(50.8, 51.8, 54),
                new TiltedDrilling(150, new Direction(0, 0.1)))) {
            assertThat(hole.goesThrough(WALL)).as("%s", hole).isFalse();
            assertThatThrownBy(() -> new ProjectedRims(hole, WALL)).isInstanceOf(IllegalArgumentException.class);
            Seat seat = new Seat(Direction.leaning(1.2, 0), 0);
            assertThat(HoleContact.required(hole, WALL, StrutSection.round(140), seat))
                    .isInfinite();
        }
    }
}
