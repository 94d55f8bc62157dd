package collarwright.machining;

import collarwright.hub.StrutTip;
import collarwright.tooling.Cutter;
import collarwright.units.Decimals;
import java.util.ArrayList;
import java.util.List;

/** What stands at the top of a program for the ends of struts. */
final class EndHead {

    private final BedSettings settings;
    private final EndTask task;

    EndHead(BedSettings settings, EndTask task) {
        this.settings = settings;
        this.task = task;
    }

    List<String> lines(double lift, double seconds) {
        List<String> lines = new ArrayList<>();
        if (lift > 0) {
            lines.add("AIR CUT: every Z is raised by " + length(lift) + ", nothing is cut");
        }
        EndStops stops = task.stops();
        lines.add("JOB " + settings.label().title());
        lines.add("REVISION " + settings.label().revision());
        lines.add("STRUT " + stops.type() + ", cut " + length(stops.cut()) + "; run it for " + stops.made()
                + (stops.made() == 1 ? " strut" : " struts"));
        lines.add("STOCK " + settings.bar().stock().title()
                + (settings.bar().stock().odMeasured() ? ", measured" : ", NOMINAL, NOT MEASURED"));
        lines.addAll(laid());
        lines.addAll(zero());
        lines.addAll(tool());
        lines.add("CLEAR Z " + length(task.heights().clear() + lift) + ", DEEPEST Z " + length(task.deepest() + lift));
        lines.add("TIME " + Sizes.time(seconds) + ", pauses not counted");
        lines.add("CAUTION run in the air first, single step, hand on stop");
        lines.add("CAUTION clamp the strut, eye protection, no gloves");
        if (!settings.cuts().cutting().caution().isBlank()) {
            lines.add("CAUTION " + settings.cuts().cutting().caution());
        }
        return lines;
    }

    private List<String> laid() {
        List<String> lines = new ArrayList<>();
        if (task.inLine()) {
            lines.add("BOTH HOLES IN ONE LINE, end E1 against the stop");
        } else if (task.atStop() == StrutTip.A) {
            lines.add("FILE 1 OF 2, hole at E1, end E1 against the stop");
            lines.add("MARK A LINE along the top of the strut before it is let go");
        } else {
            lines.add("FILE 2 OF 2, hole at E2, strut turned end for end");
            lines.add("END E2 against the stop, MARKED LINE UP");
        }
        for (EndHole hole : task.holes()) {
            lines.add(hole.title().toUpperCase(java.util.Locale.ROOT) + " at X " + length(hole.x())
                    + (hole.turn() == 0
                            ? ""
                            : ", strut turned " + StrutTurn.shown(hole.turn()).replace("°", " deg")));
        }
        return lines;
    }

    private List<String> zero() {
        String y = settings.machine().travel().across().isPresent() ? ". Y0 over its axis" : "";
        return List.of(
                "UNITS " + settings.cuts().units().symbol(),
                "X0 face of the stop, X+ along the strut" + y,
                "Z0 axis of the strut, tip of the drill; tip on its top is Z "
                        + length(task.heights().crown()));
    }

    private List<String> tool() {
        Cutter drill = settings.drill();
        double unit = settings.cuts().units().millimetres();
        boolean numbered = settings.machine().post().layout().habits().toolChange() == ControlHabits.ToolChange.M6;
        String number = numbered ? EndTask.TOOL + ", " : "";
        return List.of(
                "TOOL " + number + drill.id() + ", twist drill "
                        + drill.marked().replace("#", "No. ") + ", flutes " + length(settings.flutes()) + " or more",
                "THROUGH " + (settings.bar().stock().wall().isPresent() ? "BOTH WALLS" : "THE WHOLE BAR")
                        + ", room below " + length(-task.heights().crown() - task.deepest()) + " or more",
                "SPINDLE " + task.cut().rpm() + " rpm, FEED "
                        + Decimals.fixed(task.cut().feedMmPerMin() / unit, 2) + " "
                        + settings.cuts().units().symbol() + "/min");
    }

    private String length(double length) {
        return Sizes.in(settings.cuts().units(), length);
    }
}
