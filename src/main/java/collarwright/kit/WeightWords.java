package collarwright.kit;

import collarwright.plan.Plan;
import collarwright.plan.UnitWords;
import collarwright.units.Decimals;

/** How papers and labels tell a weight. */
public final class WeightWords {

    /** International yard and pound agreement of 1959: exact. */
    private static final double POUND_KG = 0.45359237;

    private WeightWords() {}

    /**
     * Tells a weight.
     *
     * @param plan whose job says which unit comes first
     * @param kg the weight
     * @param decimals digits after the point
     * @return such as {@code 12.3 kg}, in an inch job {@code 27.1 lb (12.3 kg)}
     */
    public static String words(Plan plan, double kg, int decimals) {
        String metric = Decimals.fixed(kg, decimals) + " kg";
        return UnitWords.inches(plan.job()) ? Decimals.fixed(kg / POUND_KG, decimals) + " lb (" + metric + ")" : metric;
    }
}
