package collarwright.paper;

import collarwright.job.Job;
import collarwright.machining.ControlHabits;
import collarwright.machining.Load;
import collarwright.machining.SetupSheet;
import collarwright.machining.TubeCutter;
import collarwright.picture.Figures;
import collarwright.picture.StickPicture;
import collarwright.plan.UnitWords;
import collarwright.tooling.Pattern;
import collarwright.units.Decimals;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The setup sheets of the programs of a rotary machine. */
final class SetupPages {

    /** With more collars the table of places has a row for each stretch of one pattern. Our choice, no source. */
    private static final int MOST_ROWS = 60;

    private final Flow flow;
    private final Job job;
    private final List<Pattern> patterns;
    private final Figures figures;
    private final int checkEvery;
    private final double handTurn;

    SetupPages(Flow flow, Job job, List<Pattern> patterns) {
        this.flow = flow;
        this.job = job;
        this.patterns = List.copyOf(patterns);
        this.figures = new Figures(job.shop().programUnits());
        this.checkEvery = job.shop().checkEvery();
        this.handTurn = job.shop().times().hands().turn();
    }

    void print(SetupSheet setup) {
        var load = setup.load();
        flow.page("Setup " + load.id());
        flow.title("Setup " + load.id() + ": " + load.collars() + (load.collars() == 1 ? " collar" : " collars")
                + " on a stick, run it for " + load.runs() + (load.runs() == 1 ? " stick" : " sticks"));
        flow.facts(facts(setup));
        flow.pictures(new StickPicture(setup, figures, Flow.WIDTH));
        flow.points(List.of(
                setup.zero().x() + "; " + setup.zero().top(),
                setup.zero().y(),
                setup.zero().z(),
                setup.zero().a()));
        flow.heading("Programs, in this order");
        flow.grid(steps(setup));
        flow.points(setup.notes().stream().map(n -> UnitWords.of(job, n)).toList());
        Grid places = places(setup);
        flow.need(GridFlow.keeping(places) + 28);
        flow.heading("What lies where");
        flow.text(
                "Write the pattern on each collar, on the side of TOP, before it is parted off: afterwards only the holes"
                        + " tell it.");
        flow.grid(places);
        Grid heights = new HoleHeights(job).onStick(patterns, load);
        if (!heights.rows().isEmpty()) {
            flow.text("Holes are not on the middle line: the programs count on it, and so does what is measured.");
            flow.grid(heights);
        }
        TallyTable.of(load.runs()).ifPresent(flow::grid);
        flow.heading("What is measured");
        flow.points(checks());
    }

    private List<DomeFacts.Fact> facts(SetupSheet setup) {
        var load = setup.load();
        var stick = setup.stick();
        double clear =
                setup.steps().stream().mapToDouble(SetupSheet.Step::clear).max().orElseThrow();
        return List.of(
                new DomeFacts.Fact("machine", setup.machine()),
                new DomeFacts.Fact("collars", load.laid() + ", counted from the chuck"),
                new DomeFacts.Fact(
                        "stick",
                        figures.size(stick.needed()) + " or longer"
                                + (load.fromLength().isPresent() ? "; struts/saw.pdf says what it is sawn from" : "")),
                new DomeFacts.Fact(
                        "in the chuck",
                        figures.size(stick.inChuck()) + " behind the jaw face; stands out "
                                + figures.size(stick.stickOut())),
                new DomeFacts.Fact(
                        "first collar",
                        "edge at X " + figures.size(stick.firstEdge()) + ", mid-plane at X "
                                + figures.size(stick.firstMiddle()) + ", then every " + figures.size(stick.pitch())),
                new DomeFacts.Fact(
                        "clear height",
                        "Z " + figures.size(clear)
                                + ": the cutter's tip goes up to it (clear of the jaws, which stand out "
                                + figures.size(job.shop().machine().rotary().jawHeight())
                                + " beyond the pipe); the pipe turns only there"
                                + (setup.steps().stream().allMatch(s -> s.clear() == clear)
                                        ? ""
                                        : " (this is the highest: each program's own stands in its row)")
                                + (job.shop().machine().tube().isPresent() ? ", but for what is cut" : "")),
                new DomeFacts.Fact(
                        "time",
                        time(setup.inAll().seconds(handTurn)) + " for all sticks, without loading and tool changes"
                                + hand(setup.inAll().handTurns(), handTurn)));
    }

    private Grid places(SetupSheet setup) {
        var load = setup.load();
        double width = 2 * (setup.stick().firstMiddle() - setup.stick().firstEdge());
        boolean each = load.collars() <= MOST_ROWS;
        List<List<Cell>> rows = new ArrayList<>();
        for (Load.Stretch stretch : load.stretches()) {
            for (int place = stretch.first(); place <= (each ? stretch.last() : stretch.first()); place++) {
                int last = each ? place : stretch.last();
                rows.add(List.of(
                        Cell.strong(place == last ? Integer.toString(place) : place + "-" + last),
                        Cell.strong(stretch.pattern()),
                        Cell.of(figures.size(load.edge(place))),
                        Cell.of(figures.size(load.edge(last) + width)),
                        Cell.tick(),
                        Cell.tick()));
            }
        }
        return new Grid(
                "Collars from the chuck outward, X of their edges",
                List.of(
                        Column.numbers("place"),
                        Column.words("pattern"),
                        Column.numbers("from X"),
                        Column.numbers("to X"),
                        Column.marks("pattern written"),
                        Column.marks("parted off")),
                rows);
    }

    /** The first piece, then one out of so many. */
    private List<String> checks() {
        String interval = checkEvery == 1
                ? "Then measure every collar."
                : "Then measure one collar of each pattern out of every " + checkEvery + ", and the last.";
        String first = job.shop().machine().tube().isPresent() ? "cut" : "drill";
        return List.of(
                "First article: " + first
                        + " one stick, part off the first collar of each pattern on it, and measure it by the table"
                        + " on its pattern's page. Go on only if it is right.",
                interval,
                "After a new or sharpened cutter, a new zero or a bump, begin again with a first article.");
    }

    private Grid steps(SetupSheet setup) {
        Optional<TubeCutter> tube = job.shop().machine().tube();
        if (tube.isPresent()) {
            return TubeTables.steps(setup, tube.get(), figures);
        }
        List<List<Cell>> rows = new ArrayList<>();
        boolean all = setup.files() < setup.steps().size();
        if (all) {
            SetupSheet.Step first = setup.steps().get(0);
            String time = time(setup.onOneStick().seconds(handTurn));
            rows.add(List.of(
                    Cell.of("1"),
                    Cell.strong(files(first)),
                    Cell.of(setup.steps().size() + " cutters, in this order:"),
                    Cell.of(""),
                    Cell.of(""),
                    Cell.of(""),
                    Cell.of(time),
                    Cell.tick()));
        }
        for (SetupSheet.Step step : setup.steps()) {
            rows.add(List.of(
                    Cell.of(all ? "" : Integer.toString(step.order())),
                    all ? Cell.strong(number(step)) : Cell.strong(files(step)),
                    Cell.of(step.cutter().marked() + " " + step.cutter().kind().title() + ", stick-out "
                            + figures.size(step.stickOut()) + " or more"),
                    Cell.of(step.cut().rpm() + " rpm\n"
                            + figures.length(step.cut().feedMmPerMin()) + "/min"),
                    Cell.of(figures.size(step.clear())),
                    Cell.of(figures.size(step.bottom())),
                    Cell.of(step.operations() + "\n" + time(step.effort().seconds(handTurn))),
                    Cell.tick()));
        }
        return new Grid(
                "Z from the rotary axis; stick-out from the holder to the cutter's lowest point, so that the holder clears the"
                        + " jaws; time for one stick; in the air first: the file "
                        + (setup.steps().stream().allMatch(SetupPages::alike)
                                ? "of the same name with -air"
                                : "named as air cut, else that of the same name with -air"),
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

    /** As the program calls it. */
    private String number(SetupSheet.Step step) {
        ControlHabits habits = job.shop().machine().post().layout().habits();
        if (habits.toolChange() != ControlHabits.ToolChange.M6) {
            return "cutter " + step.tool();
        }
        return "T" + step.tool() + (habits.lengthTable() ? ", H" + step.tool() : "");
    }

    private static String files(SetupSheet.Step step) {
        if (step.airFile().isEmpty()) {
            return step.file() + "\nno air cut: too little Z travel";
        }
        return step.file() + (alike(step) ? "" : "\nair cut\n" + step.airFile().orElseThrow());
    }

    /** Whether the air cut has the program's own name with {@code -air}. */
    private static boolean alike(SetupSheet.Step step) {
        int dot = step.file().lastIndexOf('.');
        String air = step.file().substring(0, dot) + "-air" + step.file().substring(dot);
        return step.airFile().filter(f -> !f.equals(air)).isEmpty();
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

    /** What a hand that turns the pipe takes, as it is counted; nothing where the machine turns it. */
    static String hand(int turns, double each) {
        return turns == 0
                ? ""
                : "; " + turns + (turns == 1 ? " turn" : " turns") + " by hand counted at " + Decimals.trimmed(each, 1)
                        + " s";
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
