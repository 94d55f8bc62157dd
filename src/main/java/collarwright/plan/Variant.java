package collarwright.plan;

import collarwright.cutting.CutPlan;
import collarwright.cutting.StickLayout;
import collarwright.dome.DomeSettings;
import collarwright.finding.Finding;
import collarwright.finding.Level;
import collarwright.tooling.Pattern;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One job as it stands beside others: what it takes to make and to put up, spares included.
 *
 * @param title the job's title
 * @param revision its revision
 * @param breakdown b and c of a geodesic dome; none for a frame from outside
 * @param types kinds of things that differ
 * @param made what is made
 * @param stock what is cut
 * @param time how long it takes
 * @param bill what is bought
 * @param stops findings that stop it
 * @param warnings findings that warn
 */
public record Variant(
        String title,
        String revision,
        List<Integer> breakdown,
        Types types,
        OrderTotals made,
        Stock stock,
        WorkTime time,
        BillOfMaterials bill,
        int stops,
        int warnings) {

    /** Keeps the list. */
    public Variant {
        breakdown = List.copyOf(breakdown);
    }

    /**
     * Kinds of things that differ.
     *
     * @param patterns drillings of collars
     * @param hubs hub types
     * @param struts strut types
     */
    public record Types(int patterns, int hubs, int struts) {}

    /**
     * What is cut.
     *
     * @param sticks new sticks of all cutting plans
     * @param offcuts offcuts that are used
     * @param cuts of the saw in all
     * @param holes in all collars
     * @param waste share of the sticks that becomes no part, 0 to 1; empty where no plan cuts any
     * @param planned whether all stock is planned on sticks
     */
    public record Stock(int sticks, int offcuts, long cuts, long holes, OptionalDouble waste, boolean planned) {}

    /**
     * Sums a production up.
     *
     * @param production a plan with its programs
     * @param findings all findings, those of reading too
     * @return the variant
     */
    public static Variant of(Production production, List<Finding> findings) {
        Plan plan = production.plan();
        List<Integer> breakdown = plan.job().dome() instanceof DomeSettings dome
                ? List.of(
                        dome.sphere().breakdown().b(), dome.sphere().breakdown().c())
                : List.of();
        Types types = new Types(
                plan.book().patterns().size(),
                plan.hubs().types().size(),
                plan.struts().types().size());
        return new Variant(
                plan.job().title(),
                plan.job().revision(),
                breakdown,
                types,
                OrderTotals.of(plan),
                stock(production),
                WorkTime.of(plan, production.machines()),
                BillOfMaterials.of(plan, production.stock()),
                count(findings, Level.STOP),
                count(findings, Level.WARN));
    }

    private static int count(List<Finding> findings, Level level) {
        return (int) findings.stream().filter(f -> f.level() == level).count();
    }

    private static Stock stock(Production production) {
        int sticks = 0;
        int offcuts = 0;
        long cuts = 0;
        double length = 0;
        double parts = 0;
        boolean planned = true;
        for (StockNeed need : production.stock().needs()) {
            Optional<CutPlan> cut = need.plan();
            planned = planned && (cut.isPresent() || need.pieces() == 0);
            if (cut.isEmpty()) {
                continue;
            }
            sticks += cut.get().newSticks();
            offcuts += cut.get().offcutsUsed();
            for (StickLayout layout : cut.get().layouts()) {
                cuts += (long) layout.runs()
                        * (layout.sums().cuts() + (layout.sums().trim() > 0 ? 1 : 0));
                length += layout.runs() * layout.sums().length();
                parts += layout.runs() * layout.sums().pieces();
            }
        }
        long holes = 0;
        for (Pattern pattern : production.plan().book().patterns()) {
            holes += (long) production.plan().job().order().made(pattern.count())
                    * pattern.holes().size();
        }
        OptionalDouble waste = length > 0 ? OptionalDouble.of(1 - parts / length) : OptionalDouble.empty();
        return new Stock(sticks, offcuts, cuts, holes, waste, planned);
    }
}
