package collarwright.collar;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class SelfLockingTest {

    // J. L. Meriam, L. G. Kraige, J. N. Bolton, Engineering Mechanics: Statics, 9th ed., Problem 6/110: the collar of a
    // drill-press table, h = 200 mm high, is loaded L = 450 mm from the column: 0.222.
    @Test
    void leastFriction_drillPressTable_isTheAnswer() {
        assertThat(SelfLocking.leastFriction(200, 450)).isCloseTo(0.222, within(0.0005));
    }

    // The same book, Problem 6/20: a body in a slot of length b slides while the force is no further off than b/(2µ).
    // With
    // b = 1 in and µ = 0.1 that is 5 in (an exercise of that kind, worked by hand).
    @Test
    void farthestSliding_bodyInASlot_isTheAnswer() {
        assertThat(SelfLocking.farthestSliding(1, 0.1)).isCloseTo(5, within(1e-12));
    }

    // The strut's own contact points: outer edge below, inner edge above, measured along it by a dot product.
    @Test
    void bearingLength_isBetweenTheTwoContacts() {
        double lean = StrictMath.toRadians(13.8008);
        double along = (81.5 - 77) * StrictMath.cos(lean) + (25.4 + 25.4) * StrictMath.sin(lean);
        assertThat(SelfLocking.bearingLength(50.8, 4.5, lean)).isCloseTo(along, within(1e-12));
        assertThat(SelfLocking.bearingLength(50, 5, 0)).isEqualTo(5);
    }
}
