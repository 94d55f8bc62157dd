package collarwright.paper;

import collarwright.job.Job;
import collarwright.picture.Figures;
import collarwright.plan.Plan;
import collarwright.tooling.Hole;
import collarwright.tooling.PatternBook;
import collarwright.tooling.Sharing;
import java.util.List;

/** What sharing patterns saves and what it costs, beside patterns of every hub type's own. */
final class SharingTable {

    private SharingTable() {}

    static Grid of(Plan plan, Sharing sharing) {
        Job job = plan.job();
        PatternBook exact =
                PatternBook.exact(plan.hubs(), job.hub(), job.strut().stock().od(), job.drilling());
        Figures figures = new Figures(job.shop().programUnits());
        return new Grid(
                "Shared patterns: what they save and what they cost",
                List.of(
                        Column.words("patterns"),
                        Column.numbers("to draw, set up and check"),
                        Column.numbers("least possible"),
                        Column.numbers("hole beyond its strut's need"),
                        Column.numbers("slack with the cutters"),
                        Column.numbers("strut passes the hub's axis")),
                List.of(
                        List.of(
                                Cell.of("one for each hub type"
                                        + (sharing.exact() < sharing.hubTypes() ? " or mirror pair" : "")),
                                Cell.of(Integer.toString(sharing.exact())),
                                Cell.of(Integer.toString(sharing.exact())),
                                Cell.of("0°"),
                                Cell.of(slack(exact)),
                                Cell.of(figures.length(0))),
                        List.of(
                                Cell.strong("shared"),
                                Cell.strong(Integer.toString(sharing.patterns())),
                                Cell.of((sharing.atLeast() == sharing.patterns() ? "" : "not below ")
                                        + sharing.atLeast()),
                                Cell.of(Figures.degrees(sharing.extraLean())),
                                Cell.of(slack(plan.book())),
                                Cell.of(figures.length(sharing.miss())))));
    }

    private static String slack(PatternBook book) {
        return book.patterns().isEmpty()
                ? "no cutter"
                : Figures.degrees(book.patterns().stream()
                        .flatMap(p -> p.holes().stream())
                        .mapToDouble(Hole::slack)
                        .max()
                        .orElseThrow());
    }
}
