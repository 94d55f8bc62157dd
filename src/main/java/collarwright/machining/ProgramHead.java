package collarwright.machining;

import collarwright.units.Decimals;
import java.util.ArrayList;
import java.util.List;

/** What stands at the top of a program for the one who runs it. */
final class ProgramHead {

    private final RotarySettings settings;
    private final List<ProgramTask> tasks;
    private final ProgramTask task;

    ProgramHead(RotarySettings settings, List<ProgramTask> tasks) {
        this.settings = settings;
        this.tasks = List.copyOf(tasks);
        this.task = tasks.get(0);
    }

    List<String> lines(ProgramFile.Purpose purpose, String place, double lift, double seconds) {
        List<String> lines = new ArrayList<>();
        if (purpose == ProgramFile.Purpose.AIR_CUT) {
            lines.add("AIR CUT: every Z is raised by " + length(lift) + ", nothing is cut");
        }
        lines.add("JOB " + settings.label().title());
        lines.add("REVISION " + settings.label().revision());
        lines.add("STICK " + task.load().id() + ", " + place);
        lines.add("COLLARS " + task.load().laid());
        lines.add("THIS STICK " + count(task.load().collars(), "collar") + "; run it for "
                + count(task.load().runs(), "stick"));
        lines.addAll(stock());
        lines.addAll(zero(settings, task.heights().crown()));
        for (ProgramTask each : tasks) {
            lines.addAll(tool(each));
            lines.add("CLEAR Z " + length(each.heights().clear() + lift) + ", DEEPEST Z "
                    + length(each.deepest() + lift));
        }
        lines.add("TIME " + Sizes.time(seconds) + ", tool change not counted");
        lines.addAll(cautions());
        return lines;
    }

    private static String count(int count, String thing) {
        return count + " " + thing + (count == 1 ? "" : "s");
    }

    private List<String> stock() {
        Workpiece work = settings.work();
        return List.of(
                "STOCK " + work.title() + (work.measured() ? ", measured" : ", NOMINAL, NOT MEASURED"),
                "OD " + length(2 * work.body().outerRadius()) + ", WALL up to "
                        + length(work.body().wall().max()) + ", stick "
                        + length(task.load().stickLength())
                        + " or longer",
                "FIRST COLLAR from X " + length(task.load().firstEdge()) + ", pitch "
                        + length(task.load().pitch()));
    }

    /** Where everything is zero. */
    static List<String> zero(RotarySettings settings, double crown) {
        Indexing indexing = Indexing.of(settings);
        return List.of(
                "UNITS " + settings.units().symbol() + ", angles in degrees",
                "X0 jaw face, X+ to the free end. "
                        + (overAxis(settings.machine()) ? "Tool over the axis" : "Y0 over the axis"),
                "Z0 rotary axis, tip of the cutter; tip on the crown is Z " + length(settings, crown),
                turnWord(settings.machine().rotary().form()) + "anywhere on a new stick, makes the 0 line. "
                        + indexing.topDirection());
    }

    /** Whether no Y word brings the tool over the axis. */
    static boolean overAxis(Machine machine) {
        return machine.rotary().form().byY() || machine.kind() == Machine.Kind.TUBE;
    }

    private static String turnWord(RotaryForm form) {
        return switch (form.word()) {
            case A -> "A0 ";
            case Y_DEGREES -> "Y turns the pipe, in degrees. Y0 ";
            case Y_MM -> "Y turns the pipe, as an arc. Y0 ";
            case BY_HAND -> "A hand turns the pipe. 0 degrees ";
        };
    }

    private List<String> tool(ProgramTask task) {
        if (settings.machine().tube().isPresent()) {
            return TubeWords.tool(settings, task);
        }
        String number = settings.machine().post().layout().habits().allInOneFile() ? task.tool() + ", " : "";
        return List.of(
                "TOOL " + number + Move.Tool.title(task.cutter()) + ", tip "
                        + length(task.cutter().lead()) + " below its edge",
                "SPINDLE " + task.cut().rpm() + " rpm, FEED "
                        + Decimals.fixed(
                                task.cut().feedMmPerMin() / settings.units().millimetres(), 2)
                        + " " + settings.units().symbol() + "/min");
    }

    private boolean leavesDisc(Operation operation) {
        return operation instanceof Operation.Bore bore && new BorePath(bore, settings.grid()).disc() > 0;
    }

    private List<String> cautions() {
        if (settings.machine().tube().isPresent()) {
            return TubeWords.cautions(settings.machine().tube().get());
        }
        List<String> lines = new ArrayList<>();
        lines.add("CAUTION run in the air first, single step, hand on stop");
        lines.add("CAUTION clamp the work, eye protection, no gloves");
        if (tasks.stream().flatMap(t -> t.operations().stream()).anyMatch(this::leavesDisc)) {
            lines.add("CAUTION a disc comes loose at the end of a bored hole, take it out with the spindle stopped");
        }
        for (ProgramTask each : tasks) {
            int plugs = SawPlugs.most(settings.work(), each.cutter(), settings.overtravel());
            if (plugs > 0) {
                boolean stops = !settings.machine().post().layout().habits().keepsPlugs();
                lines.add("CAUTION " + SawPlugs.words(plugs) + (stops ? " and the program stops" : ", with no stop"));
            }
        }
        if (!settings.cutting().caution().isBlank()) {
            lines.add("CAUTION " + settings.cutting().caution());
        }
        return lines;
    }

    private String length(double length) {
        return length(settings, length);
    }

    private static String length(RotarySettings settings, double length) {
        return Sizes.in(settings.units(), length);
    }
}
