package collarwright.rehearsal;

import collarwright.stock.RoundStock;
import java.util.ArrayList;
import java.util.List;

/**
 * A strut of one diameter in one seat, Z0 being the axis of a strut of nominal diameter in the same seat.
 *
 * @param radius half its diameter
 * @param axis Z of its axis
 */
record SeatedStrut(double radius, double axis) {

    /** Half the opening of a V, degrees; 90 is a flat seat, 20 the steepest that is counted on: our choice, no source. */
    private static final int FLAT = 90;

    private static final int STEEPEST = 20;

    double crown() {
        return axis + radius;
    }

    double lowest() {
        return axis - radius;
    }

    /** The thinnest and the thickest strut in every seat, degree by degree. */
    static List<SeatedStrut> all(RoundStock stock) {
        List<SeatedStrut> struts = new ArrayList<>();
        double thin = (stock.od().min() - stock.outOfRound()) / 2;
        double thick = (stock.od().max() + stock.outOfRound()) / 2;
        for (int half = STEEPEST; half <= FLAT; half++) {
            double sine = StrictMath.sin(StrictMath.toRadians(half));
            for (double radius : new double[] {thin, thick}) {
                // Both touch the sides of the V, so the axes lie (r - r0) / sin(half) apart along its middle.
                struts.add(new SeatedStrut(radius, (radius - stock.outerRadius()) / sine));
            }
        }
        return List.copyOf(struts);
    }
}
