package collarwright.paper;

import collarwright.cutting.SheetPacker;
import collarwright.job.StripSettings;
import collarwright.machining.BenchProgram;
import collarwright.machining.FlatSettings;
import collarwright.machining.FlatTask;
import collarwright.machining.ProgramUnits;
import collarwright.machining.SawPlugs;
import collarwright.picture.Figures;
import collarwright.plan.RolledHole;
import collarwright.plan.StripWork;
import collarwright.tooling.FlatStrip;
import collarwright.units.Angles;
import collarwright.units.Decimals;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** What to cut and drill where collars are made from flat strip. */
final class StripPages {

    private final Flow flow;
    private final Figures figures;

    StripPages(Flow flow, Figures figures) {
        this.flow = flow;
        this.figures = figures;
    }

    void print(StripWork work, StripSettings settings, Optional<FlatSettings> flat) {
        flow.page("Flat strips");
        flow.title("Flat strips: cut, drill, roll");
        flow.grid(sizes(work));
        flow.points(List.of(
                "The length is that of the middle of the wall, π (OD - wall), with the joint. Roll one strip and measure"
                        + " its outside before you cut the others.",
                settings.kerf() > 0
                        ? "Cut files allow for a kerf of " + figures.size(settings.kerf())
                                + ": do not allow for it again."
                        : "Cut files are nominal: no kerf is allowed for.",
                "Outer face up, TOP away from you: azimuth grows to the left. Holes come first, outlines last.",
                "The sum of all strips stands under stock to pull; cuts and margins of the sheet come on top."));
        settings.nest()
                .ifPresent(sheet -> flow.points(List.of("Nested on sheets of " + sheet(sheet)
                        + ": strips/nest.csv tells which file is cut how often.")));
        if (!work.programs().programs().isEmpty()) {
            flow.points(
                    List.of("Two ways to the holes: cut them with the outline, as the cut files have them, or cut the"
                            + " outline alone and drill them by the programs below. Not both: a hole is made once."));
        }
        flow.text(tightest(work));
        if (!work.programs().programs().isEmpty()) {
            programs(work, flat.orElseThrow());
        }
    }

    private String sheet(SheetPacker.Stock sheet) {
        return figures.size(sheet.length()) + " by " + figures.size(sheet.width());
    }

    private Grid sizes(StripWork work) {
        List<List<Cell>> rows = new ArrayList<>();
        for (FlatStrip strip : work.strips()) {
            double joint = strip.joint().length();
            rows.add(List.of(
                    Cell.strong(strip.pattern()),
                    Cell.strong(Integer.toString(strip.made())),
                    Cell.strong(length(strip.length())),
                    Cell.of(figures.size(strip.body().width())),
                    Cell.of(figures.size(strip.body().wall().nominal())),
                    Cell.of(strip.joint().kind().word() + (joint > 0 ? " " + figures.size(joint) : "") + " at "
                            + Decimals.fixed(Angles.degrees(strip.seam()), 1) + "°"),
                    Cell.tick()));
        }
        return new Grid(
                "Strips to cut",
                List.of(
                        Column.words("pattern"),
                        Column.numbers("to make"),
                        Column.numbers("length"),
                        Column.numbers("width"),
                        Column.numbers("thick"),
                        Column.words("ends meet"),
                        Column.marks("cut")),
                rows);
    }

    /** In the shop's unit first. */
    private String length(double length) {
        String mm = Decimals.fixed(length, 2) + " mm";
        String inches = Decimals.fixed(length / 25.4, 3) + " in";
        return figures.units() == ProgramUnits.INCH ? inches + "\n" + mm : mm + "\n" + inches;
    }

    private static String tightest(StripWork work) {
        RolledHole least = work.holes().stream()
                .min(Comparator.comparingDouble(RolledHole::slack))
                .orElseThrow();
        return "After rolling a hole is narrower inside, across the collar. The least slack then is "
                + Decimals.fixed(Angles.degrees(least.slack()), 2) + "°, in pattern " + least.pattern() + ", hole "
                + least.hole().number() + "; every hole stands in strips/strips.csv.";
    }

    private void programs(StripWork work, FlatSettings settings) {
        FlatTask first = work.programs().programs().get(0).task();
        flow.heading("Programs of the flat machine");
        flow.points(List.of(
                "X0 Y0 at the lower left corner of the strip, X+ along it, Y+ toward TOP; Z0 on its upper face, for the"
                        + " cutter's lowest point, again after every tool change",
                "clear Z " + figures.length(first.heights().clear())
                        + " and more, by the cutter; a board below the strip;" + " clamps beside every hole"));
        List<List<Cell>> rows = new ArrayList<>();
        for (BenchProgram<FlatTask> program : work.programs().programs()) {
            if (program.air()) {
                continue;
            }
            for (FlatTask task : program.tasks()) {
                rows.add(row(program, task));
            }
        }
        flow.points(plugs(work, settings));
        flow.grid(new Grid(
                "Stick-out from the holder to the cutter's lowest point, so that the holder clears the clamps; time for one"
                        + " strip; in the air first: the file of the same name with -air",
                List.of(
                        Column.words("program"),
                        Column.words("cutter"),
                        Column.numbers("speed, feed"),
                        Column.numbers("lowest Z"),
                        Column.numbers("holes, time"),
                        Column.numbers("strips"),
                        Column.marks("done")),
                rows));
    }

    /** What a hole saw holds, once for each saw. */
    private static List<String> plugs(StripWork work, FlatSettings settings) {
        boolean stops = !settings.machine().post().layout().habits().keepsPlugs();
        return work.programs().programs().stream()
                .flatMap(p -> p.tasks().stream())
                .filter(t -> settings.plugs(t) > 0)
                .map(t -> t.cutter().marked() + " hole saw: " + SawPlugs.words(settings.plugs(t)) + ". "
                        + (stops
                                ? "The program stops for it (M0) before the saw is full."
                                : "The program does not stop for it: stay beside the machine."))
                .distinct()
                .toList();
    }

    /** The time is that of the whole file and stands beside its first cutter. */
    private List<Cell> row(BenchProgram<FlatTask> program, FlatTask task) {
        boolean first = task.equals(program.task());
        return List.of(
                first ? Cell.strong(program.name()) : Cell.of("then cutter " + task.tool()),
                Cell.of(task.cutter().marked() + " " + task.cutter().kind().title() + ", stick-out "
                        + figures.length(task.stickOut()) + " or more"),
                Cell.of(task.cut().rpm() + " rpm\n" + figures.length(task.cut().feedMmPerMin()) + "/min"),
                Cell.of(figures.length(task.deepest())),
                Cell.of(task.points().size() + (first ? "\n" + SetupPages.time(program.seconds()) : "")),
                Cell.of(Integer.toString(task.strip().made())),
                Cell.tick());
    }
}
