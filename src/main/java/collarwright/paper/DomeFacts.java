package collarwright.paper;

import collarwright.dome.Dome;
import collarwright.job.Job;
import collarwright.plan.DomeMeasures;
import collarwright.plan.Plan;
import collarwright.plan.UnitWords;
import collarwright.units.Decimals;
import java.util.ArrayList;
import java.util.List;

/** What the dome is, in a few lines. */
final class DomeFacts {

    private DomeFacts() {}

    /**
     * One line.
     *
     * @param name what it is
     * @param value how much or which
     */
    record Fact(String name, String value) {}

    static List<Fact> of(Plan plan) {
        Dome dome = plan.hubs().dome();
        DomeMeasures sizes = DomeMeasures.of(plan);
        List<Fact> facts = new ArrayList<>();
        facts.add(new Fact("dome", DomeWords.of(dome.source())));
        if (sizes.radius().isPresent()) {
            facts.add(new Fact("radius", Sizes.both(round(sizes.radius().getAsDouble())) + " to the nodes"));
        }
        if (sizes.floorDiameter().isPresent()) {
            facts.add(new Fact(
                    "floor diameter", Sizes.both(round(sizes.floorDiameter().getAsDouble()))));
        }
        if (sizes.floorDiameter().isPresent() || sizes.radius().isEmpty()) {
            facts.add(new Fact("height", Sizes.both(round(sizes.height()))));
        }
        facts.add(
                new Fact("lowest collar", Sizes.both(round(sizes.collarBelowLowestNode())) + " below the lowest node"));
        facts.add(new Fact("hubs and struts", dome.nodeCount() + " hubs, " + dome.memberCount() + " struts"));
        facts.add(new Fact("order", new Amounts(plan).spares()));
        facts.add(new Fact("machine", plan.job().shop().machine().title()));
        return worded(plan.job(), facts);
    }

    /** The same facts in the unit that the shop works in, with the other behind it. */
    static List<Fact> worded(Job job, List<Fact> facts) {
        return facts.stream()
                .map(f -> new Fact(f.name(), UnitWords.of(job, f.value())))
                .toList();
    }

    // A tenth of a millimetre is finer than any dome is put up.
    private static double round(double length) {
        return Double.parseDouble(Decimals.fixed(length, 1));
    }
}
