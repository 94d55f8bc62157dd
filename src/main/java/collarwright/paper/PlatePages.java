package collarwright.paper;

import collarwright.job.PlateSettings;
import collarwright.picture.Figures;
import collarwright.plan.PlateWork;
import collarwright.tooling.GuideSaddle;
import collarwright.tooling.IndexPlate;
import collarwright.units.Angles;
import collarwright.units.Decimals;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** Which index plate goes with which pattern, and which saddle with which cutter. */
final class PlatePages {
    private final Flow flow;
    private final Figures figures;

    PlatePages(Flow flow, Figures figures) {
        this.flow = flow;
        this.figures = figures;
    }

    void print(PlateWork work, PlateSettings settings) {
        if (work.plates().isEmpty()) {
            return;
        }
        flow.page("Index plates");
        flow.title("Index plates: pattern by pattern");
        flow.grid(plates(work, settings));
        IndexPlate.Sizes sizes = work.plates().get(0).sizes();
        PlateSettings.Kerf kerf = settings.kerf();
        boolean nominal = kerf.inside() + kerf.outside() == 0;
        flow.points(List.of(
                settings.material().title() + ", cut with a "
                        + settings.process().word() + " from sheets of "
                        + figures.size(settings.sheet().length()) + " by "
                        + figures.size(settings.sheet().width())
                        + ": laser/plates.csv tells which part lies where, and which file is cut how often.",
                "Plates are " + figures.size(sizes.diameter()) + " across, with a bore of " + figures.size(sizes.bore())
                        + " for the mandrel and notches for a pin of " + figures.size(sizes.pin()) + ".",
                "Face with TOP toward the collar's TOP side; the small hole lies clockwise of the 0° line. Try the pin in a"
                        + " notch cut in scrap first.",
                "Pin in notch 1: hole 1 is under the drill once it is aligned there. The pin stays at one place.",
                nominal
                        ? "Cut files are nominal: no kerf is allowed for."
                        : "Cut files allow for a kerf of " + figures.size(kerf.inside()) + " in holes and "
                                + figures.size(kerf.outside()) + " along edges: do not allow for it again."));
        if (!work.saddles().isEmpty()) {
            flow.heading("Saddles");
            flow.grid(saddles(work, settings));
            flow.points(List.of(
                    "A saddle stands across the pipe; the line on its face points at the pipe's axis, the short lines are"
                            + " the cutter's sides.",
                    "It guides and guards nothing: clamp the pipe, keep hands away."));
        }
    }

    private static Grid plates(PlateWork work, PlateSettings settings) {
        List<List<Cell>> rows = new ArrayList<>();
        for (IndexPlate plate : work.plates()) {
            String notches = plate.notches().stream()
                    .map(n -> n.holes().stream().map(String::valueOf).collect(Collectors.joining("+")) + ": "
                            + Decimals.fixed(Angles.degrees(n.azimuth()), 2) + "°")
                    .collect(Collectors.joining("; "));
            rows.add(List.of(
                    Cell.strong(plate.pattern()),
                    Cell.of(Integer.toString(settings.counts().plates())),
                    Cell.of(notches),
                    Cell.tick()));
        }
        return new Grid(
                "A notch for each hole, clockwise from the 0° line",
                List.of(
                        Column.words("plate and pattern"),
                        Column.numbers("to cut"),
                        Column.words("hole: azimuth"),
                        Column.marks("cut")),
                rows);
    }

    private Grid saddles(PlateWork work, PlateSettings settings) {
        List<List<Cell>> rows = new ArrayList<>();
        for (GuideSaddle saddle : work.saddles()) {
            rows.add(List.of(
                    Cell.strong(saddle.cutter().marked() + " "
                            + saddle.cutter().kind().title()),
                    Cell.of(Integer.toString(settings.counts().saddles())),
                    Cell.of(figures.size(saddle.width())),
                    Cell.of(figures.size(saddle.height())),
                    Cell.of(figures.size(saddle.radius())),
                    Cell.tick()));
        }
        return new Grid(
                "For the outside of this pipe only",
                List.of(
                        Column.words("cutter"),
                        Column.numbers("to cut"),
                        Column.numbers("wide"),
                        Column.numbers("high"),
                        Column.numbers("radius of the foot"),
                        Column.marks("cut")),
                rows);
    }
}
