package collarwright.paper;

import collarwright.hub.StrutTip;
import collarwright.machining.BedSettings;
import collarwright.machining.BenchProgram;
import collarwright.machining.EndHole;
import collarwright.machining.EndPlan;
import collarwright.machining.EndStops;
import collarwright.machining.EndTask;
import collarwright.machining.ProgramUnits;
import collarwright.machining.StrutTurn;
import collarwright.picture.Figures;
import java.util.ArrayList;
import java.util.List;

/** The setup sheet of the bed that drills the ends of struts. */
final class EndPages {

    private final Flow flow;
    private final Figures figures;

    EndPages(Flow flow, Figures figures) {
        this.flow = flow;
        this.figures = figures;
    }

    void print(EndPlan plan, BedSettings settings) {
        List<BenchProgram<EndTask>> programs =
                plan.programs().stream().filter(p -> !p.air()).toList();
        EndTask first = programs.get(0).task();
        boolean tube = settings.bar().stock().wall().isPresent();
        flow.page("Setup, strut ends");
        flow.title("Setup: strut ends on the bed");
        flow.facts(List.of(
                new DomeFacts.Fact("machine", settings.machine().title()),
                new DomeFacts.Fact(
                        "drill",
                        settings.drill().marked() + " twist drill, flutes " + figures.length(settings.flutes())
                                + " or more; stick-out from the holder to its point "
                                + figures.length(first.stickOut(settings.drill().lead()))
                                + " or more, so that the holder clears the clamps"),
                new DomeFacts.Fact(
                        "speed, feed",
                        first.cut().rpm() + " rpm, "
                                + figures.length(first.cut().feedMmPerMin()) + "/min"),
                new DomeFacts.Fact(
                        "depth",
                        "through " + (tube ? "both walls" : "the whole bar") + ", point at Z "
                                + figures.length(first.deepest()) + "; room below the strut "
                                + figures.length(-first.heights().crown() - first.deepest()) + " or more"),
                new DomeFacts.Fact(
                        "clear Z",
                        figures.length(first.heights().clear()) + ", clamps up to "
                                + figures.length(settings.bed().clampHeight()) + " above the strut")));
        flow.points(zero(settings, first));
        flow.heading("Programs, one for each strut type");
        flow.grid(table(programs));
        flow.text(
                "Turn: before the hole at E2, with the spindle off, as seen from the stop. In the air first: the file of"
                        + " the same name with -air"
                        + (plan.programs().size() < 2 * programs.size() ? ", where there is one" : "") + ".");
        flow.points(first.cut().formulas());
    }

    private List<String> zero(BedSettings settings, EndTask first) {
        List<String> points = new ArrayList<>(List.of(
                "X0 at the face of the stop, X+ along the strut; end E1 of the strut against the stop",
                "Z0 at the strut's axis: touch the top of a strut with the drill's point and set Z to "
                        + figures.length(first.heights().crown())));
        if (settings.machine().travel().across().isPresent()) {
            points.add(1, "Y0 over the strut's axis, within " + within() + ": a hole off the middle is no tie hole");
        } else {
            points.add(1, "the drill over the strut's axis, within " + within());
        }
        points.add("Back the far side up, or clear the bed below the holes; keep clamps away from both holes.");
        points.add(
                "Where a type has two programs: mark a line along the top before the strut is let go, turn the strut end"
                        + " for end, E2 against the stop, line up; hold its free end level.");
        return points;
    }

    private String within() {
        return figures.units() == ProgramUnits.INCH ? "0.004 in (0.1 mm)" : "0.1 mm (0.004 in)";
    }

    private Grid table(List<BenchProgram<EndTask>> programs) {
        List<List<Cell>> rows = new ArrayList<>();
        for (BenchProgram<EndTask> program : programs) {
            EndTask task = program.task();
            EndStops stops = task.stops();
            StringBuilder at = new StringBuilder();
            double turn = 0;
            for (EndHole hole : task.holes()) {
                at.append(at.isEmpty() ? "" : "\n").append("X ").append(figures.size(hole.x()));
                turn += hole.turn();
            }
            rows.add(List.of(
                    Cell.strong(stops.type()),
                    Cell.of(program.name()),
                    Cell.of(task.atStop() == StrutTip.A ? "E1" : "E2"),
                    Cell.of(at.toString()),
                    Cell.of(StrutTurn.shown(turn)),
                    Cell.of(stops.made() + "\n" + SetupPages.time(program.seconds())),
                    Cell.tick()));
        }
        return new Grid(
                "X of the holes from the stop; time for one strut, without loading and turning it by hand",
                List.of(
                        Column.words("type"),
                        Column.words("program"),
                        Column.words("at the stop"),
                        Column.numbers("holes"),
                        Column.words("turn"),
                        Column.numbers("struts, time"),
                        Column.marks("done")),
                rows);
    }
}
