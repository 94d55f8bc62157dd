package collarwright.job;

import collarwright.tooling.Cutter;
import collarwright.tooling.CutterKind;
import java.util.List;

/**
 * The cutters of one kind that stand in one rack.
 *
 * @param kind twist drills, hole saws or end mills
 * @param cutters in the order of the file
 */
public record Rack(CutterKind kind, List<Cutter> cutters) {
    /** Keeps the list. */
    public Rack {
        cutters = List.copyOf(cutters);
    }
}
