package collarwright.assembly;

import java.util.List;

/**
 * How far struts may bow.
 *
 * @param diameter largest diameter of a strut
 * @param lengths between the cut ends, by strut type, above 0
 * @param strainLimit most strain that their material stands, as change of length by length
 */
public record Bending(double diameter, List<Double> lengths, double strainLimit) {
    /** Keeps the list. */
    public Bending {
        lengths = List.copyOf(lengths);
    }
}
