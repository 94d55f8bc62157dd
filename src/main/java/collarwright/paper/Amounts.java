package collarwright.paper;

import collarwright.collar.Fix;
import collarwright.cutting.SawnLength;
import collarwright.job.Job;
import collarwright.job.Order;
import collarwright.plan.OrderTotals;
import collarwright.plan.Plan;
import collarwright.plan.UnitWords;
import collarwright.strut.EndWork;
import collarwright.strut.StrutType;
import collarwright.tooling.Pattern;
import collarwright.units.Decimals;
import java.util.ArrayList;
import java.util.List;

/** How many of everything: per dome, and to make for the whole order with its spares. */
final class Amounts {

    private final Plan plan;
    private final Order order;

    Amounts(Plan plan) {
        this.plan = plan;
        this.order = plan.job().order();
    }

    /** What the spares come to, in words. */
    String spares() {
        String domes = order.domes() == 1 ? "1 dome" : order.domes() + " domes";
        return order.sparesPercent() == 0
                ? domes + ", no spares"
                : domes + " and " + Decimals.trimmed(order.sparesPercent(), 2)
                        + " % spares, at least one of every type";
    }

    Grid toMake() {
        List<List<Cell>> rows = new ArrayList<>();
        for (Pattern pattern : plan.book().patterns()) {
            int holes = pattern.holes().size();
            rows.add(row("collar " + pattern.id() + ", " + holes + " holes", pattern.count()));
        }
        Job job = plan.job();
        int hubs = plan.hubs().dome().nodeCount();
        rows.add(row("centre ring, " + job.hub().ring().title(), hubs));
        for (StrutType type : plan.struts().types()) {
            double cut = SawnLength.of(type.cut());
            rows.add(row("strut " + type.id() + ", " + Sizes.mm(cut) + " (" + Sizes.inches(cut) + ")", type.count()));
        }
        String tie = job.hub().fix() == Fix.TIE ? "tie, one for each strut end" : "pin, one for each strut end";
        int ends = 2 * plan.hubs().dome().memberCount();
        rows.add(row(tie, ends));
        int made = OrderTotals.of(plan).endParts();
        EndWork work = job.strut().endWork();
        work.plugs()
                .ifPresent(p -> rows.add(row(
                        "plug Ø " + Decimals.trimmed(p.diameter(), 2) + " mm, " + Decimals.trimmed(p.length(), 2)
                                + " mm long, two for each strut that is made",
                        ends,
                        made)));
        if (work.caps()) {
            rows.add(row("end cap, two for each strut that is made", ends, made));
        }
        return new Grid(
                "What to make",
                List.of(Column.words("part"), Column.numbers("in one dome"), Column.numbers("to make")),
                rows);
    }

    private List<Cell> row(String part, int perDome) {
        return row(part, perDome, order.made(perDome));
    }

    private List<Cell> row(String part, int perDome, int made) {
        return List.of(
                Cell.of(UnitWords.of(plan.job(), part)),
                Cell.of(Integer.toString(perDome)),
                Cell.strong(Integer.toString(made)));
    }
}
