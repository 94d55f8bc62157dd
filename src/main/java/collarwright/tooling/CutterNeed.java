package collarwright.tooling;

import java.util.OptionalDouble;
import java.util.function.Function;

/**
 * What some holes that are alike ask of a cutter, whatever the reason: all that a choice among cutters has to know.
 *
 * @param required the least hole, as a length; needs are put in its order
 * @param holes how many holes of a dome are like this, above 0
 * @param miss how far off the lean is with a cutter, an angle of 0 or more; empty for a cutter that will not do
 */
public record CutterNeed(double required, int holes, Function<Cutter, OptionalDouble> miss) {
    /** Checks the numbers. */
    public CutterNeed {
        if (!(required > 0) || holes < 1) {
            throw new IllegalArgumentException(holes + " holes of " + required);
        }
    }

    /**
     * States what the holes of a collar ask.
     *
     * @param need what each of them has to fit
     * @param holes how many there are
     * @param drilling the rule of choice
     * @return the need; under {@link Fit#REACH} the miss is the slack, under {@link Fit#NEAREST} it counts both ways
     */
    public static CutterNeed of(HoleNeed need, int holes, DrillingSettings drilling) {
        return of(need, need.required(), holes, drilling);
    }

    /** The same for holes that several struts use: what the furthest leaning needs, and the least that serves all. */
    static CutterNeed of(HoleNeed need, double required, int holes, DrillingSettings drilling) {
        return new CutterNeed(
                drilling.fit() == Fit.REACH ? HoleSize.reaching(need, required, drilling) : required,
                holes,
                cutter -> HoleSize.fits(need, required, cutter, drilling)
                        ? OptionalDouble.of(StrictMath.abs(HoleSize.limit(need, cutter) - need.lean()))
                        : OptionalDouble.empty());
    }
}
