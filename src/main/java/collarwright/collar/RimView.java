package collarwright.collar;

/**
 * Both rims of a hole as they are seen along a strut that leans in it, in the plane square to the strut: a along the lean,
 * b across. With the lean λ, its bearing χ and φ round the rim from the far side of the lean, the rim on the cylinder of
 * radius R is seen at {@code a = −(X − Ri)·sin λ − p·cos λ·cos φ}, {@code b = p·sin φ}, with
 * {@code X = √(R² − p²·sin²(φ − χ))}.
 */
final class RimView {

    /** Places on each rim from which a search for its nearest points may start. */
    static final int PLACES = 48;

    private final double inner;
    private final double outer;
    private final double bearing;
    private final double sinBearing;
    private final double cosBearing;
    private final double[] sinPlace = new double[PLACES];
    private final double[] cosPlace = new double[PLACES];

    private double p;
    private double sinLean;
    private double cosLean;

    RimView(double inner, double outer, double bearing) {
        this.inner = inner;
        this.outer = outer;
        this.bearing = bearing;
        this.sinBearing = StrictMath.sin(bearing);
        this.cosBearing = StrictMath.cos(bearing);
        for (int i = 0; i < PLACES; i++) {
            sinPlace[i] = StrictMath.sin(phi(i));
            cosPlace[i] = StrictMath.cos(phi(i));
        }
    }

    static double phi(int place) {
        return 2 * StrictMath.PI * place / PLACES;
    }

    double inner() {
        return inner;
    }

    void set(double holeRadius, double lean) {
        p = holeRadius;
        sinLean = StrictMath.sin(lean);
        cosLean = StrictMath.cos(lean);
    }

    /**
     * A rim point.
     *
     * @param a along the lean
     * @param b across
     * @param da derivative of a by φ
     * @param db derivative of b by φ
     * @param dda second derivative
     * @param ddb second derivative
     * @param leanA derivative of a by the lean; that of b is 0
     * @param holeA derivative of a by the hole's radius
     * @param holeB derivative of b by the hole's radius
     */
    record Spot(
            double a,
            double b,
            double da,
            double db,
            double dda,
            double ddb,
            double leanA,
            double holeA,
            double holeB) {}

    Spot spot(boolean onOuter, double phi) {
        double radius = onOuter ? outer : inner;
        double sin = StrictMath.sin(phi);
        double cos = StrictMath.cos(phi);
        double sinRim = StrictMath.sin(phi - bearing);
        double cosRim = StrictMath.cos(phi - bearing);
        double x = StrictMath.sqrt(radius * radius - p * p * sinRim * sinRim);
        double dx = -p * p * sinRim * cosRim / x;
        double ddx = -(p * p * (cosRim * cosRim - sinRim * sinRim) + dx * dx) / x;
        return new Spot(
                -(x - inner) * sinLean - p * cosLean * cos,
                p * sin,
                -dx * sinLean + p * cosLean * sin,
                p * cos,
                -ddx * sinLean + p * cosLean * cos,
                -p * sin,
                -(x - inner) * cosLean + p * sinLean * cos,
                p * sinRim * sinRim / x * sinLean - cosLean * cos,
                sin);
    }

    /**
     * Measures from a point to the places of a rim.
     *
     * @param onOuter which rim
     * @param a the point
     * @param b the point
     * @param squares taken up: the squared distance of each place
     */
    void measure(boolean onOuter, double a, double b, double[] squares) {
        double radius = onOuter ? outer : inner;
        for (int i = 0; i < PLACES; i++) {
            double sinRim = sinPlace[i] * cosBearing - cosPlace[i] * sinBearing;
            double x = StrictMath.sqrt(radius * radius - p * p * sinRim * sinRim);
            double da = -(x - inner) * sinLean - p * cosLean * cosPlace[i] - a;
            double db = p * sinPlace[i] - b;
            squares[i] = da * da + db * db;
        }
    }
}
