package collarwright.trial;

/**
 * Student's t for whole degrees of freedom: how far from its estimate a value lies that was fitted to few readings.
 *
 * <p>The share between −t and +t is a finite sum of powers of cos ψ, with ψ = arctan(t/√ν): Abramowitz and Stegun, Handbook
 * of Mathematical Functions, 26.7.3 (odd ν) and 26.7.4 (even ν). Its inverse is found by halving ψ. Accuracy: about 1e-13 of
 * the share, so 1e-12 of t for the shares and degrees of freedom that occur here.
 */
final class StudentT {

    private static final int HALVINGS = 60;

    private StudentT() {}

    /**
     * Finds t for a share.
     *
     * @param share probability between −t and +t, 0 to below 1
     * @param degrees degrees of freedom, 1 or more
     * @return t
     */
    static double twoSided(double share, int degrees) {
        if (!(share >= 0 && share < 1) || degrees < 1) {
            throw new IllegalArgumentException("a share of " + share + " with " + degrees + " degrees of freedom");
        }
        double low = 0;
        double high = StrictMath.PI / 2;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (low + high) / 2;
            if (between(middle, degrees) < share) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return StrictMath.tan((low + high) / 2) * StrictMath.sqrt(degrees);
    }

    // The share between −t and t, by the angle whose tangent is t/√ν.
    private static double between(double angle, int degrees) {
        double sine = StrictMath.sin(angle);
        double cosine = StrictMath.cos(angle);
        boolean odd = degrees % 2 != 0;
        double term = odd ? cosine : 1;
        double sum = odd && degrees == 1 ? 0 : term;
        for (int n = odd ? 3 : 2; n <= degrees - 2; n += 2) {
            term *= cosine * cosine * (n - 1) / n;
            sum += term;
        }
        return odd ? (angle + sine * sum) * 2 / StrictMath.PI : sine * sum;
    }
}
