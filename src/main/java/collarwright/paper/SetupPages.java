package collarwright.paper;

import collarwright.machining.SetupSheet;
import collarwright.picture.Figures;
import collarwright.units.Decimals;
import java.util.ArrayList;
import java.util.List;

/** The setup sheets of the programs of a rotary machine. */
final class SetupPages {

    private final Flow flow;
    private final Figures figures;

    SetupPages(Flow flow, Figures figures) {
        this.flow = flow;
        this.figures = figures;
    }

    void print(SetupSheet setup) {
        var load = setup.load();
        flow.page("Setup " + setup.pattern() + ", load " + load.number());
        flow.title("Setup: pattern " + setup.pattern() + ", " + load.collars()
                + (load.collars() == 1 ? " collar" : " collars") + " on a stick, " + load.runs()
                + (load.runs() == 1 ? " stick" : " sticks"));
        flow.facts(List.of(
                new DomeFacts.Fact("machine", setup.machine()),
                new DomeFacts.Fact(
                        "stick",
                        figures.length(setup.stick().needed()) + " or longer"
                                + load.fromLength()
                                        .map(l ->
                                                ", " + load.sticksPerLength() + " from a length of " + figures.span(l))
                                        .orElse("")),
                new DomeFacts.Fact(
                        "time", time(setup.secondsInAll()) + " for all sticks, without loading and tool changes")));
        flow.pictures(new collarwright.picture.StickPicture(setup, figures, Flow.WIDTH));

        flow.points(List.of(
                setup.zero().x(),
                setup.zero().y(),
                setup.zero().z(),
                setup.zero().a(),
                setup.zero().top()));
        flow.heading("Programs, in this order");
        flow.grid(steps(setup));
        flow.points(setup.notes());
    }

    private Grid steps(SetupSheet setup) {
        List<List<Cell>> rows = new ArrayList<>();
        for (SetupSheet.Step step : setup.steps()) {
            rows.add(List.of(
                    Cell.of(Integer.toString(step.order())),
                    Cell.strong(step.file() + (step.airFile().isPresent() ? "" : "\nno air cut: too little Z travel")),
                    Cell.of(step.cutter().marked() + " " + step.cutter().kind().title() + ", stick-out "
                            + figures.length(step.depth()) + " or more"),
                    Cell.of(step.cut().rpm() + " rpm\n"
                            + figures.length(step.cut().feedMmPerMin()) + "/min"),
                    Cell.of(figures.length(step.clear())),
                    Cell.of(figures.length(step.bottom())),
                    Cell.of(step.operations() + "\n" + time(step.effort().seconds())),
                    Cell.tick()));
        }
        return new Grid(
                "Z from the rotary axis; time for one stick; in the air first: the file of the same name with -air",
                List.of(
                        Column.numbers("no."),
                        Column.words("program"),
                        Column.words("cutter"),
                        Column.numbers("speed, feed"),
                        Column.numbers("clear Z"),
                        Column.numbers("lowest Z"),
                        Column.numbers("holes, time"),
                        Column.marks("done")),
                rows);
    }

    /** How speeds and feeds come about, one line for each cutter; the same on every sheet, so told once. */
    static List<String> formulas(List<SetupSheet> setups) {
        List<String> lines = new ArrayList<>();
        for (SetupSheet setup : setups) {
            for (SetupSheet.Step step : setup.steps()) {
                String line =
                        step.cutter().marked() + " " + step.cutter().kind().title() + ": "
                                + String.join("; ", step.cut().formulas());
                if (!lines.contains(line)) {
                    lines.add(line);
                }
            }
        }
        return lines;
    }

    static String time(double seconds) {
        long whole = (long) StrictMath.ceil(seconds - 1e-9);
        long minutes = whole / 60;
        if (minutes == 0) {
            return whole + " s";
        }
        return minutes < 60
                ? minutes + " min " + whole % 60 + " s"
                : Decimals.fixed(StrictMath.floor(minutes / 60.0), 0) + " h " + minutes % 60 + " min";
    }
}
