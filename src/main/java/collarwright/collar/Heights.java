package collarwright.collar;

import java.util.List;

/** At which height on its collar a hole is drilled. */
public enum Heights {
    /** All holes on the mid-plane: quick to set up; struts of unequal angles do not quite meet in one point. */
    MIDPLANE,
    /** Each hole so that all struts of the hub meet in its node. */
    CONVERGING;

    /**
     * Finds the heights of the holes of a hub.
     *
     * @param midRadius radius of the middle of the wall
     * @param tilts axial angles of the struts, positive where a strut leans inward
     * @return above the mid-plane; converging heights are {@code H − Rm·tan θ} with H in the middle between the largest and
     *     the least of {@code Rm·tan θ}, so that no hole lies further from the mid-plane than it must
     */
    public List<Double> of(double midRadius, List<Double> tilts) {
        if (this == MIDPLANE) {
            return tilts.stream().map(t -> 0.0).toList();
        }
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        for (double tilt : tilts) {
            double rise = midRadius * StrictMath.tan(tilt);
            least = StrictMath.min(least, rise);
            most = StrictMath.max(most, rise);
        }
        double middle = (least + most) / 2;
        return tilts.stream().map(t -> middle - midRadius * StrictMath.tan(t)).toList();
    }
}
