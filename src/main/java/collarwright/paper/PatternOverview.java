package collarwright.paper;

import collarwright.picture.Figures;
import collarwright.plan.Plan;
import collarwright.tooling.Hole;
import collarwright.tooling.Pattern;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;

/** All patterns in one table. */
final class PatternOverview {

    private PatternOverview() {}

    static Grid of(Plan plan) {
        List<List<Cell>> rows = new ArrayList<>();
        for (Pattern pattern : plan.book().patterns()) {
            Hole loosest = pattern.holes().stream()
                    .max(Comparator.comparingDouble(Hole::slack))
                    .orElseThrow();
            rows.add(List.of(
                    Cell.strong(pattern.id()),
                    Cell.of(Integer.toString(pattern.holes().size())),
                    Cell.of(pattern.holes().stream()
                            .map(h -> h.cutter().marked())
                            .distinct()
                            .collect(Collectors.joining(", "))),
                    Cell.of(Figures.degrees(loosest.slack())),
                    Cell.of(Integer.toString(pattern.count())),
                    Cell.strong(Integer.toString(plan.job().order().made(pattern.count()))),
                    Cell.of(pattern.fingerprint())));
        }
        return new Grid(
                "Collar patterns",
                List.of(
                        Column.words("pattern"),
                        Column.numbers("holes"),
                        Column.words("cutters"),
                        Column.numbers("largest slack"),
                        Column.numbers("in one dome"),
                        Column.numbers("to make"),
                        Column.words("fingerprint")),
                rows);
    }
}
