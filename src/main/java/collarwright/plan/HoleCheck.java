package collarwright.plan;

import collarwright.finding.Code;
import collarwright.finding.Where;
import collarwright.plan.Check.Limits;
import collarwright.plan.Check.Quantity;
import collarwright.plan.Check.Sense;
import java.util.List;
import java.util.function.IntFunction;
import java.util.function.IntToDoubleFunction;

/**
 * A check that every hole of a hub is put to, of which only the worst is told. The numbers of a hole come first; its place
 * is put into words for the worst hole only, and what to do where that one fails: a large dome has thousands of holes.
 *
 * @param code what is checked
 * @param quantity whether it is a length or an angle
 * @param sense which side of the limits is right
 * @param value what comes out for a hole, from 0
 * @param limits what the hole is held to
 * @param words how a hole is spoken of
 */
record HoleCheck(
        Code code, Quantity quantity, Sense sense, IntToDoubleFunction value, IntFunction<Limits> limits, Words words) {

    /**
     * How a hole is spoken of.
     *
     * @param where the place of a hole
     * @param hints what to do where it fails
     */
    record Words(IntFunction<Where.Part> where, IntFunction<List<String>> hints) {}

    Check worst(int holes) {
        int worst = 0;
        double least = margin(0);
        for (int hole = 1; hole < holes; hole++) {
            double margin = margin(hole);
            if (margin < least) {
                least = margin;
                worst = hole;
            }
        }
        return of(worst);
    }

    private double margin(int hole) {
        return sense.margin(value.applyAsDouble(hole), limits.apply(hole).warn());
    }

    private Check of(int hole) {
        Check check = new Check(
                code,
                words.where().apply(hole),
                quantity,
                sense,
                value.applyAsDouble(hole),
                limits.apply(hole),
                List.of());
        return check.verdict().isPresent() ? check.withHints(words.hints().apply(hole)) : check;
    }
}
