package collarwright.units;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;

/**
 * An exact number, in lowest terms. Lengths are counted in it until they are rounded once, to a double.
 *
 * @param numerator any whole number
 * @param denominator 1 or more
 */
public record Ratio(BigInteger numerator, BigInteger denominator) implements Comparable<Ratio> {

    /** Nothing. */
    public static final Ratio ZERO = new Ratio(BigInteger.ZERO, BigInteger.ONE);

    // Far more digits than the 53 bits of a double: with at most 80 characters of input no quotient lies so near to the
    // middle between two doubles that cutting it here could round it to the wrong one.
    private static final MathContext DIGITS = new MathContext(250);

    // Whole numbers of so many bits are doubles.
    private static final int DOUBLE_BITS = 53;

    /** Reduces to lowest terms. */
    public Ratio {
        if (denominator.signum() == 0) {
            throw new ArithmeticException("a fraction with nothing below the line");
        }
        BigInteger shared = numerator.gcd(denominator);
        BigInteger divisor = denominator.signum() < 0 ? shared.negate() : shared;
        numerator = numerator.divide(divisor);
        denominator = denominator.divide(divisor);
    }

    /**
     * A fraction of whole numbers.
     *
     * @param numerator above the line
     * @param denominator below the line, not 0
     * @return the fraction in lowest terms
     */
    public static Ratio of(long numerator, long denominator) {
        return new Ratio(BigInteger.valueOf(numerator), BigInteger.valueOf(denominator));
    }

    /**
     * A decimal number, exactly.
     *
     * @param number any decimal
     * @return the same number
     */
    public static Ratio from(BigDecimal number) {
        BigInteger digits = number.unscaledValue();
        BigInteger power = BigInteger.TEN.pow(StrictMath.abs(number.scale()));
        return number.scale() >= 0 ? new Ratio(digits, power) : new Ratio(digits.multiply(power), BigInteger.ONE);
    }

    /**
     * Adds.
     *
     * @param other the other
     * @return this + other
     */
    public Ratio plus(Ratio other) {
        return new Ratio(
                numerator.multiply(other.denominator).add(other.numerator.multiply(denominator)),
                denominator.multiply(other.denominator));
    }

    /**
     * Multiplies.
     *
     * @param other the other
     * @return this · other
     */
    public Ratio times(Ratio other) {
        return new Ratio(numerator.multiply(other.numerator), denominator.multiply(other.denominator));
    }

    /**
     * Divides.
     *
     * @param other the other, not 0
     * @return this / other
     */
    public Ratio over(Ratio other) {
        return new Ratio(numerator.multiply(other.denominator), denominator.multiply(other.numerator));
    }

    /**
     * Tells the sign.
     *
     * @return −1, 0 or 1
     */
    public int signum() {
        return numerator.signum();
    }

    /**
     * Rounds once.
     *
     * @return the nearest double
     */
    public double value() {
        if (numerator.bitLength() <= DOUBLE_BITS && denominator.bitLength() <= DOUBLE_BITS) {
            // Both are doubles, and a quotient of doubles is rounded once.
            return numerator.doubleValue() / denominator.doubleValue();
        }
        return new BigDecimal(numerator)
                .divide(new BigDecimal(denominator), DIGITS)
                .doubleValue();
    }

    @Override
    public int compareTo(Ratio other) {
        return numerator.multiply(other.denominator).compareTo(other.numerator.multiply(denominator));
    }
}
