package collarwright.kit;

import collarwright.job.Job;
import collarwright.job.Order;
import collarwright.plan.OrderTotals;
import collarwright.plan.Plan;
import collarwright.strut.StrutType;
import collarwright.tooling.Pattern;
import collarwright.units.Ids;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * The bundles of an order: the same for every dome, and the spares of all domes apart from them. All bundles together are
 * exactly what is made.
 *
 * @param domes how many domes
 * @param perDome bundles of one dome: struts shortest first, collars by pattern, rings, ties, caps
 * @param spares bundles of spares in the same order; empty where there are none
 */
public record Kit(int domes, List<Bundle> perDome, List<Bundle> spares) {

    /** Keeps the lists. */
    public Kit {
        perDome = List.copyOf(perDome);
        spares = List.copyOf(spares);
    }

    /**
     * Bundles an order.
     *
     * @param plan a plan with patterns
     * @return the bundles
     * @throws IllegalStateException if they are not what is made, which is a fault of the program
     */
    public static Kit of(Plan plan) {
        Order order = plan.job().order();
        List<Part> parts = parts(plan);
        List<Bundle> perDome = new ArrayList<>();
        List<Bundle> spares = new ArrayList<>();
        double most = plan.job().site().bundleKg();
        for (Part part : parts) {
            split(part, part.perDome(), most, false, perDome);
        }
        for (Part part : parts) {
            int extra = part.made() - order.domes() * part.perDome();
            split(part, extra, most, true, spares);
        }
        number(perDome, 0);
        number(spares, perDome.size());
        Kit kit = new Kit(order.domes(), perDome, spares);
        kit.hold(parts, OrderTotals.of(plan));
        return kit;
    }

    private record Part(Bundle.Kind kind, String id, int perDome, int made, OptionalDouble kg) {}

    private static List<Part> parts(Plan plan) {
        Job job = plan.job();
        Order order = job.order();
        List<Part> parts = new ArrayList<>();
        for (StrutType type : plan.struts().types()) {
            OptionalDouble kg = OptionalDouble.of(Weights.kg(job.strut().stock(), type.cut()));
            parts.add(new Part(Bundle.Kind.STRUTS, type.id(), type.count(), order.made(type.count()), kg));
        }
        OptionalDouble collar =
                OptionalDouble.of(Weights.kg(job.hub().collar(), job.hub().width()));
        for (Pattern pattern : plan.book().patterns()) {
            parts.add(
                    new Part(Bundle.Kind.COLLARS, pattern.id(), pattern.count(), order.made(pattern.count()), collar));
        }
        OptionalDouble ring =
                OptionalDouble.of(Weights.kg(job.hub().ring(), job.hub().ringWidth()));
        int hubs = plan.hubs().dome().nodeCount();
        int ends = 2 * plan.hubs().dome().memberCount();
        parts.add(new Part(Bundle.Kind.RINGS, "ring", hubs, order.made(hubs), ring));
        parts.add(new Part(Bundle.Kind.TIES, "tie", ends, order.made(ends), OptionalDouble.empty()));
        if (job.strut().endWork().caps()) {
            int caps = OrderTotals.of(plan).endParts();
            parts.add(new Part(Bundle.Kind.CAPS, "cap", ends, caps, OptionalDouble.empty()));
        }
        return parts;
    }

    // As few bundles as the weight lets, as equal as whole pieces can be, the fuller ones first.
    private static void split(Part part, int pieces, double most, boolean spare, List<Bundle> into) {
        if (pieces == 0) {
            return;
        }
        int fit = pieces;
        if (part.kg().isPresent()) {
            double room = most / part.kg().getAsDouble() + 1e-9;
            fit = room >= pieces ? pieces : (int) StrictMath.max(1, StrictMath.floor(room));
        }
        int bundles = (pieces + fit - 1) / fit;
        for (int i = 0; i < bundles; i++) {
            int share = pieces / bundles + (i < pieces % bundles ? 1 : 0);
            into.add(new Bundle("", part.kind(), part.id(), share, part.kg(), spare));
        }
    }

    private static void number(List<Bundle> bundles, int from) {
        for (int i = 0; i < bundles.size(); i++) {
            Bundle b = bundles.get(i);
            String id = Ids.letters('B', from + i);
            bundles.set(i, new Bundle(id, b.kind(), b.part(), b.pieces(), b.pieceKg(), b.spare()));
        }
    }

    private void hold(List<Part> parts, OrderTotals made) {
        for (Part part : parts) {
            if (made(part.kind(), part.id()) != part.made()) {
                throw new IllegalStateException("bundles of " + part + " are not what is made");
            }
        }
        boolean whole = made(Bundle.Kind.STRUTS) == made.struts()
                && made(Bundle.Kind.COLLARS) == made.collars()
                && made(Bundle.Kind.RINGS) == made.rings()
                && made(Bundle.Kind.TIES) == made.ties();
        if (!whole) {
            throw new IllegalStateException("all bundles are not " + made);
        }
    }

    /**
     * Counts what all bundles of an order hold of one kind.
     *
     * @param kind which
     * @return pieces, spares included
     */
    public int made(Bundle.Kind kind) {
        return domes * pieces(perDome, kind) + pieces(spares, kind);
    }

    private int made(Bundle.Kind kind, String part) {
        int each = perDome.stream()
                .filter(b -> b.kind() == kind && b.part().equals(part))
                .mapToInt(Bundle::pieces)
                .sum();
        int extra = spares.stream()
                .filter(b -> b.kind() == kind && b.part().equals(part))
                .mapToInt(Bundle::pieces)
                .sum();
        return domes * each + extra;
    }

    private static int pieces(List<Bundle> bundles, Bundle.Kind kind) {
        return bundles.stream()
                .filter(b -> b.kind() == kind)
                .mapToInt(Bundle::pieces)
                .sum();
    }

    /**
     * Adds up the weight of bundles.
     *
     * @param bundles any of them
     * @return kg of those whose weight is known
     */
    public static double kg(List<Bundle> bundles) {
        return bundles.stream().mapToDouble(b -> b.kg().orElse(0)).sum();
    }
}
