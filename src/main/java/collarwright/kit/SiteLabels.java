package collarwright.kit;

import collarwright.collar.Fix;
import collarwright.hub.StrutTip;
import collarwright.plan.PartNames;
import collarwright.plan.Plan;
import collarwright.plan.Uphill;
import collarwright.strut.StrutType;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * The labels of an order: strut ends by strut type, then collars by node, then bundles, the same for every dome; and those
 * of the spares, once for the order.
 *
 * @param perDome labels to print once for each dome
 * @param spares labels to print once
 */
public record SiteLabels(List<SiteLabel> perDome, List<SiteLabel> spares) {

    /** Keeps the lists. */
    public SiteLabels {
        perDome = List.copyOf(perDome);
        spares = List.copyOf(spares);
    }

    /**
     * Writes the labels.
     *
     * @param plan a plan with patterns
     * @param connections its strut ends
     * @param kit its bundles
     * @return two labels for each strut, one for each hub, one for each bundle
     */
    public static SiteLabels of(Plan plan, Connections connections, Kit kit) {
        PartNames names = PartNames.of(plan);
        List<SiteLabel> labels = new ArrayList<>();
        List<Connection> ends = new ArrayList<>(connections.byStrut());
        ends.sort(Comparator.comparingInt((Connection c) -> plan.hubs().strutTypeOf(c.member()))
                .thenComparingInt(Connection::member)
                .thenComparing(Connection::tip));
        ends.forEach(end -> labels.add(end(plan, names, end)));
        for (int node = 0; node < plan.hubs().dome().nodeCount(); node++) {
            labels.add(collar(plan, names, node));
        }
        kit.perDome().forEach(bundle -> labels.add(bundle(plan, kit, bundle)));
        List<SiteLabel> spares =
                kit.spares().stream().map(b -> bundle(plan, kit, b)).toList();
        return new SiteLabels(labels, spares);
    }

    /**
     * Names a strut end.
     *
     * @param names the names of the plan's parts
     * @param end the end
     * @return such as {@code M017-a}
     */
    public static String id(PartNames names, Connection end) {
        return names.member(end.member()) + (end.tip() == StrutTip.A ? "-a" : "-b");
    }

    private static SiteLabel end(Plan plan, PartNames names, Connection end) {
        int index = plan.hubs().strutTypeOf(end.member());
        StrutType type = plan.struts().types().get(index);
        String tip = type.alike() ? "either end" : end.tip() == StrutTip.A ? "end a" : "end b";
        return new SiteLabel(
                SiteLabel.Kind.STRUT_END,
                plan.job().revision() + " " + id(names, end),
                names.node(end.node()) + " hole " + end.hole(),
                List.of("strut " + type.id() + ", " + tip));
    }

    private static SiteLabel collar(Plan plan, PartNames names, int node) {
        int type = plan.hubs().typeOf(node);
        List<String> lines = new ArrayList<>(List.of("collar " + names.pattern(type) + ", hub " + names.hubType(type)));
        lines.add(Uphill.of(plan, node).words() + (plan.flipped(node) ? ", TOP inside" : ""));
        return new SiteLabel(
                SiteLabel.Kind.COLLAR, plan.job().revision() + " " + names.node(node), names.node(node), lines);
    }

    private static SiteLabel bundle(Plan plan, Kit kit, Bundle bundle) {
        List<String> lines = new ArrayList<>();
        lines.add(contents(plan, bundle));
        bundle.kg().ifPresent(kg -> lines.add(WeightWords.words(plan, kg, kg < 1 ? 2 : 1)));
        lines.add(bundle.spare() ? "spares" : kit.domes() == 1 ? "dome 1 of 1" : "dome ____ of " + kit.domes());
        return new SiteLabel(SiteLabel.Kind.BUNDLE, plan.job().revision() + " " + bundle.id(), bundle.id(), lines);
    }

    /**
     * Says what is in a bundle.
     *
     * @param plan the plan
     * @param bundle the bundle
     * @return such as {@code 40 × strut SB, stripes: 2 narrow}
     */
    public static String contents(Plan plan, Bundle bundle) {
        boolean pinned = plan.job().hub().fix() == Fix.PIN;
        return switch (bundle.kind()) {
            case STRUTS -> {
                List<StrutType> types = plan.struts().types();
                int type = 0;
                while (!types.get(type).id().equals(bundle.part())) {
                    type++;
                }
                yield bundle.pieces() + " × strut " + bundle.part() + ", stripes: "
                        + Stripes.of(type).words();
            }
            case COLLARS -> bundle.pieces() + " × collar " + bundle.part();
            case RINGS -> bundle.pieces() + " × centre ring";
            case TIES -> bundle.pieces() + (pinned ? " × pin" : " × tie");
            case CAPS -> bundle.pieces() + " × end cap";
        };
    }
}
