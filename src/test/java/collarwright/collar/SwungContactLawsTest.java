package collarwright.collar;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import collarwright.collar.SwungContact.Wall;
import collarwright.testing.Seeds;
import org.junit.jupiter.api.Test;

/** Laws that every leaning strut keeps; a case that fails names its seed. */
class SwungContactLawsTest {

    /** A strut in a hole, with the wall and the way it leans. */
    private record Case(double strut, double hole, Wall wall, double bearing) {
        static Case drawn(Seeds draw) {
            double inner = draw.between(30, 110);
            double hole = inner * draw.between(0.15, 1.3);
            double strut = hole * draw.between(0.85, 0.995);
            return new Case(
                    strut,
                    hole,
                    new Wall(inner, inner + draw.between(1, 10)),
                    draw.between(-StrictMath.PI, StrictMath.PI));
        }

        double limit() {
            return SwungContact.tiltLimit(strut, hole, wall, bearing);
        }

        boolean binds() {
            return SwungContact.limit(strut, hole, wall, bearing).binds();
        }
    }

    @Test
    void sizeToAngleToSize_isTheIdentity() {
        Seeds.each(400, draw -> {
            Case c = Case.drawn(draw);
            if (c.binds()) {
                Direction to = Direction.leaning(c.limit(), c.bearing);
                assertThat(SwungContact.thickest(c.hole, to, c.wall)).isCloseTo(c.strut, within(1e-6 * c.hole));
                assertThat(SwungContact.required(c.strut, to, c.wall)).isCloseTo(c.hole, within(1e-6 * c.hole));
            }
        });
    }

    @Test
    void moreWall_neverGivesMoreLean() {
        Seeds.each(200, draw -> {
            Case c = Case.drawn(draw);
            Wall thicker = new Wall(c.wall.inner(), c.wall.outer() + draw.between(0.01, 3));
            assertThat(SwungContact.tiltLimit(c.strut, c.hole, thicker, c.bearing))
                    .isLessThanOrEqualTo(c.limit() + 1e-8);
        });
    }

    @Test
    void largerHole_upToTheBore_neverGivesLess() {
        Seeds.each(120, draw -> {
            double inner = draw.between(30, 110);
            Wall wall = new Wall(inner, inner + draw.between(1, 10));
            double strut = inner * draw.between(0.1, 1.2);
            double bearing = draw.between(-StrictMath.PI, StrictMath.PI);
            double before = 0;
            for (double hole = strut; hole < 1.999 * inner; hole += 0.03 * inner) {
                double limit = SwungContact.tiltLimit(strut, hole, wall, bearing);
                assertThat(limit).as("hole %s", hole).isGreaterThanOrEqualTo(before - 1e-8);
                before = limit;
            }
        });
    }

    // What leans so far for certain in a smaller hole: the general solver, which has another form and other limits,
    // passes it.
    @Test
    void limit_whereTheStrutDoesNotBind_isPassedBySolverOfAnyShape() {
        Seeds.each(30, draw -> {
            double inner = draw.between(30, 110);
            Wall wall = new Wall(inner, inner + draw.between(1, 10));
            double hole = inner * draw.between(1, 1.9);
            double strut = inner * draw.between(0.2, 0.6);
            double bearing = draw.between(0, StrictMath.PI / 2);
            SwungContact.Limit limit = SwungContact.limit(strut, hole, wall, bearing);
            if (!limit.binds()) {
                // In the widest hole that still binds, which lies within this one.
                double smaller = SwungContact.required(strut, Direction.leaning(limit.lean() * 0.99, bearing), wall);
                double passes = new ProjectedRims(new RoundAperture(smaller), wall)
                        .thickest(Direction.leaning(limit.lean() * 0.99, bearing), StrutSection.round(strut), 0);
                assertThat(smaller).isLessThanOrEqualTo(hole);
                assertThat(passes).isGreaterThanOrEqualTo(strut * (1 - 1e-6));
            }
        });
    }

    @Test
    void straightDown_isTheAxialForm() {
        Seeds.each(200, draw -> {
            Case c = Case.drawn(draw);
            double axial = RoundHole.tiltLimit(c.strut, c.hole, c.wall.inner(), c.wall.outer());
            SwungContact.Limit limit = SwungContact.limit(c.strut, c.hole, c.wall, 0);
            if (limit.binds()) {
                assertThat(limit.lean()).isCloseTo(axial, within(1e-8));
            } else {
                assertThat(limit.lean()).isBetween(RimContacts.mostLean(c.hole / 2, c.wall.inner()), axial + 1e-8);
            }
        });
    }

    @Test
    void limits_areTheSameOnEverySide() {
        Seeds.each(200, draw -> {
            Case c = Case.drawn(draw);
            for (double other : new double[] {-c.bearing, StrictMath.PI - c.bearing, StrictMath.PI + c.bearing}) {
                assertThat(SwungContact.tiltLimit(c.strut, c.hole, c.wall, other))
                        .isCloseTo(c.limit(), within(1e-7));
            }
        });
    }

    @Test
    void direction_thereAndBack_isTheSame() {
        Seeds.each(400, draw -> {
            Direction to = new Direction(draw.between(-1.4, 1.4), draw.between(-1.4, 1.4));
            for (Direction back : new Direction[] {
                Direction.leaning(to.lean(), to.bearing()),
                Direction.along(to.line().times(7))
            }) {
                assertThat(back.tilt()).isCloseTo(to.tilt(), within(1e-12));
                assertThat(back.swing()).isCloseTo(to.swing(), within(1e-12));
            }
            double lean = draw.between(0, 1);
            double bearing = draw.between(-3, 3);
            Direction away = to.away(0.001, bearing);
            assertThat(to.line().dot(away.line())).isCloseTo(StrictMath.cos(0.001), within(1e-12));
            Direction straight = new Direction(0, 0).away(lean, bearing);
            assertThat(straight.tilt())
                    .isCloseTo(Direction.leaning(lean, bearing).tilt(), within(1e-12));
            assertThat(straight.swing())
                    .isCloseTo(Direction.leaning(lean, bearing).swing(), within(1e-12));
        });
    }
}
