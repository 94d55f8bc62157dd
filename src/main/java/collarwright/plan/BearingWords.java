package collarwright.plan;

import collarwright.collar.HubSettings;
import collarwright.collar.TrialPiece;
import collarwright.geometry.Interval;
import collarwright.units.Decimals;
import java.util.Optional;

/** Says what bears in a collar's holes where a trial piece was measured. */
public final class BearingWords {

    private BearingWords() {}

    /**
     * Says which bearing wall the holes count on.
     *
     * @param hub the hub
     * @return such as {@code bearing wall 1.2 mm (0.9 to 1.5 mm) from trial piece our-160}; empty if the full wall bears
     */
    public static Optional<String> of(HubSettings hub) {
        return hub.trialPiece()
                .map(piece -> "bearing wall " + limits(hub.body().bearing()) + " from trial piece " + piece.name());
    }

    /**
     * Says how much wider than stamped the cutters drill.
     *
     * @param piece a trial piece
     * @return such as {@code oversize 0.15 mm (0.1 to 0.2 mm)}
     */
    public static String oversize(TrialPiece piece) {
        return "oversize " + limits(piece.oversize());
    }

    private static String limits(Interval size) {
        String value = mm(size.nominal()) + " mm";
        return size.min() == size.max() ? value : value + " (" + mm(size.min()) + " to " + mm(size.max()) + " mm)";
    }

    private static String mm(double length) {
        return Decimals.trimmed(length, 2);
    }
}
