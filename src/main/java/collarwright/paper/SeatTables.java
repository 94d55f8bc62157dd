package collarwright.paper;

import collarwright.picture.Figures;
import collarwright.plan.DomeMeasures;
import collarwright.plan.HubSeat;
import collarwright.plan.Plan;
import collarwright.tooling.Pattern;
import java.util.List;
import java.util.stream.IntStream;

/**
 * How the parts of a hub stand to each other once it is put up: where the collar is below its node, where the centre ring
 * belongs in it, and how low the collars reach. A pattern serves the hub type of its own place in the book.
 */
final class SeatTables {

    private final Plan plan;
    private final Figures figures;

    SeatTables(Plan plan) {
        this.plan = plan;
        this.figures = new Figures(plan.job().shop().programUnits());
    }

    /** One pattern in words. */
    List<DomeFacts.Fact> facts(Pattern pattern) {
        int index = plan.book().patterns().indexOf(pattern);
        HubSeat seat = HubSeat.of(plan, index);
        return List.of(
                new DomeFacts.Fact(
                        "hub",
                        "mid-plane " + figures.length(seat.collar().mean())
                                + " below the node (spread "
                                + figures.length(seat.collar().spread()) + "), lowest point " + lowest(index)
                                + " the foot"),
                new DomeFacts.Fact(
                        "ring",
                        "middle of the centre ring " + side(seat.ring().middle()) + " the mid-plane, at least "
                                + figures.length(seat.ring().width()) + " wide"));
    }

    /** All patterns in one table. */
    Grid grid() {
        return new Grid(
                "How a hub sits when it is put up",
                List.of(
                        Column.words("pattern"),
                        Column.numbers("mid-plane below the node"),
                        Column.numbers("spread between its struts"),
                        Column.numbers("ring's middle to the mid-plane"),
                        Column.numbers("ring at least wide"),
                        Column.numbers("collar's lowest point to the foot")),
                IntStream.range(0, plan.book().patterns().size())
                        .mapToObj(this::row)
                        .toList());
    }

    private List<Cell> row(int index) {
        HubSeat seat = HubSeat.of(plan, index);
        return List.of(
                Cell.strong(plan.book().patterns().get(index).id()),
                Cell.of(figures.length(seat.collar().mean())),
                Cell.of(figures.length(seat.collar().spread())),
                Cell.of(side(seat.ring().middle())),
                Cell.of(figures.length(seat.ring().width())),
                Cell.of(lowest(index)));
    }

    private String lowest(int index) {
        double lowest = DomeMeasures.lowestCollarPoints(plan).get(index);
        return side(lowest - DomeMeasures.of(plan).lowestNodeZ());
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
