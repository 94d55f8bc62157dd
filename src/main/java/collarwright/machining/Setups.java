package collarwright.machining;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Writes setup sheets. */
final class Setups {

    private Setups() {}

    static SetupSheet sheet(RotarySettings settings, List<ProgramTask> tasks, List<SetupSheet.Step> steps) {
        Load load = tasks.get(0).load();
        return new SetupSheet(
                settings.machine().title(),
                load,
                zero(settings),
                stick(settings, load),
                steps,
                notes(settings, tasks, steps));
    }

    private static SetupSheet.Zero zero(RotarySettings settings) {
        boolean byY = ProgramHead.overAxis(settings.machine());
        boolean table = settings.machine().post().layout().habits().lengthTable();
        String height =
                "Z0 at the rotary axis, for the cutter's lowest point: touch the crown of the pipe with it and set Z to "
                        + Sizes.in(settings.units(), settings.work().body().outerRadius());
        return new SetupSheet.Zero(
                "X0 at the chuck's jaw face, X+ toward the free end",
                (byY ? "the tool over the rotary axis" : "Y0 over the rotary axis") + ", within "
                        + (settings.units() == ProgramUnits.INCH ? "0.004 in (0.1 mm)" : "0.1 mm (0.004 in)"),
                height
                        + (table
                                ? "; the lengths of all cutters stand in the control's table (H, the number of the cutter)"
                                : settings.machine().tube().isPresent()
                                        ? "; again after every change of what cuts"
                                        : "; again after every tool change"),
                turn(settings),
                Indexing.of(settings).topDirection());
    }

    private static String turn(RotarySettings settings) {
        Machine.Rotary rotary = settings.machine().rotary();
        String way = rotary.positive() ? "clockwise" : "anticlockwise";
        if (rotary.form().byHand()) {
            return "turn the pipe by hand, " + way + " as seen from the free end, where the program stops and says the"
                    + " angle; 0° anywhere on a new stick, it becomes every collar's 0° line; always come from the same"
                    + " side";
        }
        String word = rotary.form().byY() ? "Y" : "A";
        String takeUp = rotary.takeUpDegrees() > 0
                ? "; set it while the axis comes from below, as the programs do by "
                        + settings.grid().degrees(rotary.takeUpDegrees()) + "°"
                : "";
        String counts = switch (rotary.form().word()) {
            case Y_DEGREES -> "; Y counts degrees";
            case Y_MM ->
                "; Y counts an arc, "
                        + Sizes.in(
                                settings.units(),
                                rotary.form().perTurn(settings.work().body().outerRadius()))
                        + " for one turn";
            default -> "";
        };
        return word + "0 anywhere on a new stick, it becomes every collar's 0° line" + takeUp + "; " + word
                + "+ turns the pipe " + way + " as seen from the free end" + counts;
    }

    private static SetupSheet.Stick stick(RotarySettings settings, Load load) {
        double chuck = settings.machine().rotary().chuckLength();
        return new SetupSheet.Stick(
                load.stickLength(),
                chuck,
                load.stickLength() - chuck,
                load.firstEdge(),
                load.firstEdge() + settings.work().body().width() / 2,
                load.pitch());
    }

    private static List<String> notes(RotarySettings settings, List<ProgramTask> tasks, List<SetupSheet.Step> steps) {
        List<String> notes = new ArrayList<>();
        List<String> setUp = new ArrayList<>();
        FreeEnd.note(settings, tasks.get(0).load()).ifPresent(setUp::add);
        loosened(settings, steps).ifPresent(setUp::add);
        if (settings.machine().tube().isPresent()) {
            notes.addAll(TubeWords.notes(settings));
            notes.addAll(1, setUp);
            return notes;
        }
        notes.add("Run " + DirectionTest.fileName(settings.machine()) + " once after every change to the machine.");
        notes.addAll(setUp);
        notes.add("Run every program in the air first, single step, hand on stop.");
        if (!settings.machine().spindle().controlled()) {
            notes.add(
                    "The programs do not switch the spindle: they stop (M0) and say when to set its speed, start it and"
                            + " stop it. Wait until it stands before hands go near.");
        }
        if (settings.machine().post().layout().habits().toolChange() == ControlHabits.ToolChange.PAUSE) {
            notes.add("One program has all cutters of the stick: it stops for each and says which one comes next.");
        }
        notes.add("The two dimples: one on the 0° line, one beside it clockwise as seen from above TOP;"
                + " both lie near the TOP edge.");
        for (SetupSheet.Step step : steps) {
            int plugs = SawPlugs.most(settings.work(), step.cutter(), settings.overtravel());
            if (plugs > 0) {
                boolean stops = !settings.machine().post().layout().habits().keepsPlugs();
                notes.add(step.cutter().marked() + " hole saw: " + SawPlugs.words(plugs) + ". "
                        + (stops
                                ? "The program stops for it (M0) before the saw is full."
                                : "The program does not stop for it: stay beside the machine."));
            }
        }
        notes.addAll(bores(settings, tasks));
        if (!settings.work().measured()) {
            notes.add("The pipe's size is nominal, not measured: measure circumference and wall before drilling.");
        }
        if (!settings.cutting().caution().isBlank()) {
            notes.add(settings.cutting().caution());
        }
        return notes;
    }

    /** Where more than one program runs on a stick. */
    private static Optional<String> loosened(RotarySettings settings, List<SetupSheet.Step> steps) {
        if (steps.stream().map(SetupSheet.Step::file).distinct().count() < 2) {
            return Optional.empty();
        }
        String zero = switch (settings.machine().rotary().form().word()) {
            case A -> "A";
            case BY_HAND -> "the head";
            default -> "Y";
        };
        return Optional.of("Several programs run on a stick: do not loosen it, turn it in the chuck, or zero " + zero
                + " or X anew until its last program is done.");
    }

    /** How deep each turn of an end mill goes, and how the arcs are counted. */
    private static List<String> bores(RotarySettings settings, List<ProgramTask> tasks) {
        List<String> notes = new ArrayList<>();
        for (ProgramTask task : tasks) {
            task.operations().stream()
                    .filter(Operation.Bore.class::isInstance)
                    .map(o -> new BorePath((Operation.Bore) o, settings.grid()).turnWords(task))
                    .distinct()
                    .sorted()
                    .forEach(notes::add);
        }
        if (!notes.isEmpty()) {
            notes.add(
                    "Arcs: I and J are from the start of the arc (incremental). Set the control so, or try one in the air.");
        }
        return notes;
    }
}
