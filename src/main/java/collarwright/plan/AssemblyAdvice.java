package collarwright.plan;

import collarwright.assembly.Assembly;
import collarwright.assembly.Fitting;
import collarwright.assembly.RoomFor;
import collarwright.hub.Hubs;
import collarwright.job.Job;
import collarwright.units.Decimals;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.DoubleFunction;
import java.util.function.UnaryOperator;

/** Solves for the dimension that would let struts be pushed in with all their neighbours seated. */
final class AssemblyAdvice {

    private static final int HALVINGS = 12;

    private final Job job;
    private final Hubs hubs;
    private final Assembly assembly;

    AssemblyAdvice(Job job, Hubs hubs, Assembly assembly) {
        this.job = job;
        this.hubs = hubs;
        this.assembly = assembly;
    }

    /** What to change for these members, the best first; a thing that no size of it cures is left out. */
    List<String> hints(List<Integer> members) {
        double ring = job.hub().ring().outerRadius();
        double room = job.hub().body().leastInnerRadius()
                - job.hub().ring().od().max() / 2
                - job.hub().endGap();
        double bore = job.hub().body().leastInnerRadius();
        List<String> hints = new ArrayList<>();
        RoomFor struts = RoomFor.of(hubs, members);
        least(struts, more -> f -> f.withRing(more), room)
                .ifPresent(more -> hints.add("take a centre ring of at least " + up(2 * (ring + more))
                        + " mm outside diameter: the struts then end further out"));
        least(
                        struts,
                        less -> f -> f.withCollar(-less),
                        StrictMath.min(room, bore - job.strut().stock().od().max()))
                .ifPresent(less -> hints.add("or a collar pipe of at most " + down(2 * (outer() - less))
                        + " mm outside diameter with the same wall: the struts then have less far to come"));
        if (hints.isEmpty()) {
            least(struts, more -> f -> f.withCollar(more), outer())
                    .ifPresent(more -> hints.add("take a collar pipe of at least " + up(2 * (outer() + more))
                            + " mm outside diameter with the same wall"));
        }
        return hints;
    }

    private double outer() {
        return job.hub().body().outerRadius();
    }

    // The least change up to the most that gives room; it only ever gives more.
    private OptionalDouble least(RoomFor struts, DoubleFunction<UnaryOperator<Fitting>> change, double most) {
        if (!(most > 0) || !struts.enough(changed(change.apply(most)))) {
            return OptionalDouble.empty();
        }
        double low = 0;
        double high = most;
        for (int step = 0; step < HALVINGS; step++) {
            double middle = (low + high) / 2;
            if (struts.enough(changed(change.apply(middle)))) {
                high = middle;
            } else {
                low = middle;
            }
        }
        return OptionalDouble.of(high);
    }

    private List<Fitting> changed(UnaryOperator<Fitting> change) {
        return assembly.fittings().stream().map(change).toList();
    }

    private static String up(double size) {
        return Decimals.fixed(StrictMath.ceil(size * 10) / 10, 1);
    }

    private static String down(double size) {
        return Decimals.fixed(StrictMath.floor(size * 10) / 10, 1);
    }
}
