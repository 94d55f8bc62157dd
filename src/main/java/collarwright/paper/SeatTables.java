package collarwright.paper;

import collarwright.picture.Figures;
import collarwright.plan.DomeMeasures;
import collarwright.plan.HubSeat;
import collarwright.plan.Plan;
import collarwright.tooling.Pattern;
import collarwright.units.Ids;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * How the parts of a hub stand to each other once it is put up: where the collar is below its node, where the centre ring
 * belongs in it, and how low the collars reach.
 */
final class SeatTables {

    private final Plan plan;
    private final Figures figures;
    private final List<HubSeat> seats;
    private final List<Double> lowest;

    SeatTables(Plan plan) {
        this.plan = plan;
        this.seats = HubSeat.all(plan);
        this.lowest = DomeMeasures.lowestCollarPoints(plan);
        this.figures = new Figures(plan.job().shop().programUnits());
    }

    /** One pattern in words: the hub type that it is for, or all that share it. */
    List<DomeFacts.Fact> facts(Pattern pattern) {
        List<DomeFacts.Fact> facts = new ArrayList<>();
        List<Integer> served = plan.served(plan.book().patterns().indexOf(pattern));
        for (int type : served) {
            HubSeat seat = seats.get(type);
            facts.add(new DomeFacts.Fact(
                    (served.size() == 1 ? "hub" : "hub " + Ids.letters('H', type)) + top(type),
                    "mid-plane " + figures.length(seat.collar().mean())
                            + " below the node (spread "
                            + figures.length(seat.collar().spread()) + "), lowest point " + lowest(type)
                            + " the foot"));
            facts.add(new DomeFacts.Fact(
                    "ring",
                    "middle of the centre ring " + side(seat.ring().middle()) + " the mid-plane"
                            + (plan.placement(type).flipped() ? " as it hangs" : "") + ", at least "
                            + figures.length(seat.ring().width()) + " wide"));
        }
        return facts;
    }

    /** All hub types in one table. */
    Grid grid() {
        boolean shared = plan.book().hubsShare();
        return new Grid(
                "How a hub sits when it is put up",
                List.of(
                        Column.words(shared ? "hub, pattern" : "pattern"),
                        Column.numbers("mid-plane below the node"),
                        Column.numbers("spread between its struts"),
                        Column.numbers("ring's middle to the mid-plane"),
                        Column.numbers("ring at least wide"),
                        Column.numbers("collar's lowest point to the foot")),
                IntStream.range(0, plan.hubs().types().size())
                        .mapToObj(type -> row(type, shared))
                        .toList());
    }

    private List<Cell> row(int type, boolean shared) {
        HubSeat seat = seats.get(type);
        String pattern = Ids.letters('C', plan.placement(type).pattern());
        return List.of(
                Cell.strong(shared ? Ids.letters('H', type) + ", " + pattern + top(type) : pattern + top(type)),
                Cell.of(figures.length(seat.collar().mean())),
                Cell.of(figures.length(seat.collar().spread())),
                Cell.of(side(seat.ring().middle())),
                Cell.of(figures.length(seat.ring().width())),
                Cell.of(lowest(type)));
    }

    private String top(int type) {
        return plan.placement(type).flipped() ? ", TOP inside" : "";
    }

    private String lowest(int type) {
        return side(lowest.get(type) - DomeMeasures.of(plan).lowestNodeZ());
    }

    private String side(double height) {
        return figures.length(StrictMath.abs(height)) + (height < 0 ? " below" : " above");
    }

    /** What the figures are measured from. */
    static String note() {
        return "Heights of a hub count along its axis: the node is where the strut axes meet, on average; the spread is how"
                + " far apart they cross the hub's axis. The collar's lowest point"
                + " counts straight down from the lowest nodes, the foot, over all collars of the pattern.";
    }
}
