package collarwright.cutting;

/** The length of a piece as it is sawn and told on every paper: one length, one value. */
public final class SawnLength {

    private SawnLength() {}

    /**
     * Rounds a length up to a thousandth of a millimetre, as the cutting plan counts it; what is less than a millionth of
     * that above a whole thousandth, is not counted.
     *
     * @param length mm
     * @return mm
     */
    public static double of(double length) {
        return StrictMath.ceil(length * 1000 - 1e-6) / 1000;
    }
}
