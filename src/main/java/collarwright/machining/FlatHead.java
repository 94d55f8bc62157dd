package collarwright.machining;

import collarwright.tooling.FlatStrip;
import collarwright.units.Decimals;
import java.util.ArrayList;
import java.util.List;

/** What stands at the top of a program for a flat strip. */
final class FlatHead {

    private final FlatSettings settings;
    private final List<FlatTask> tasks;
    private final Place place;

    FlatHead(FlatSettings settings, List<FlatTask> tasks, Place place) {
        this.settings = settings;
        this.tasks = List.copyOf(tasks);
        this.place = place;
    }

    /**
     * Which of a strip's files.
     *
     * @param order from 1
     * @param files how many there are
     */
    record Place(int order, int files) {}

    List<String> lines(double lift, double seconds) {
        List<String> lines = new ArrayList<>();
        if (lift > 0) {
            lines.add("AIR CUT: every Z is raised by " + length(lift) + ", nothing is cut");
        }
        FlatStrip strip = tasks.get(0).strip();
        int made = strip.made();
        lines.add("JOB " + settings.label().title());
        lines.add("REVISION " + settings.label().revision());
        lines.add("FLAT STRIP of pattern " + strip.pattern() + ", FILE " + place.order() + " OF " + place.files()
                + "; run it for " + made + (made == 1 ? " strip" : " strips"));
        lines.add("STRIP " + length(strip.length()) + " long, "
                + length(strip.body().width()) + " wide, up to "
                + length(strip.body().wall().max()) + " thick");
        lines.add("OUTER FACE UP, TOP away from you; rolled afterwards");
        lines.add("UNITS " + settings.cuts().units().symbol());
        lines.add("X0 Y0 lower left corner of the strip, X+ along it, Y+ to TOP");
        lines.add("Z0 upper face of the strip, tip of the cutter");
        tasks.forEach(t -> lines.addAll(tool(t, lift)));
        lines.add("TIME " + Sizes.time(seconds) + ", tool change not counted");
        lines.add("CAUTION run in the air first, single step, hand on stop");
        lines.add("CAUTION clamp the strip beside every hole, board below it");
        lines.add("CAUTION eye protection, no gloves");
        boolean stops = !settings.machine().post().layout().habits().keepsPlugs();
        for (FlatTask task : tasks) {
            int plugs = settings.plugs(task);
            if (plugs > 0) {
                lines.add("CAUTION " + SawPlugs.words(plugs) + (stops ? " and the program stops" : ", with no stop"));
            }
        }
        if (!settings.cuts().cutting().caution().isBlank()) {
            lines.add("CAUTION " + settings.cuts().cutting().caution());
        }
        return lines;
    }

    private List<String> tool(FlatTask task, double lift) {
        double unit = settings.cuts().units().millimetres();
        String number = settings.machine().post().layout().habits().allInOneFile() ? task.tool() + ", " : "";
        return List.of(
                "TOOL " + number + Move.Tool.title(task.cutter()) + ", tip "
                        + length(task.cutter().lead()) + " below its edge",
                "SPINDLE " + task.cut().rpm() + " rpm, FEED "
                        + Decimals.fixed(task.cut().feedMmPerMin() / unit, 2) + " "
                        + settings.cuts().units().symbol() + "/min",
                "CLEAR Z " + length(task.heights().clear() + lift) + ", DEEPEST Z " + length(task.deepest() + lift));
    }

    private String length(double length) {
        return Sizes.in(settings.cuts().units(), length);
    }
}
