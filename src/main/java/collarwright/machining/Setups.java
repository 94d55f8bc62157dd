package collarwright.machining;

import java.util.ArrayList;
import java.util.List;

/** Writes setup sheets. */
final class Setups {

    private Setups() {}

    static SetupSheet sheet(RotarySettings settings, ProgramTask task, List<SetupSheet.Step> steps) {
        return new SetupSheet(
                settings.machine().title(),
                task.load(),
                zero(settings),
                stick(settings, task.load()),
                steps,
                notes(settings));
    }

    private static SetupSheet.Zero zero(RotarySettings settings) {
        Machine.Rotary rotary = settings.machine().rotary();
        String takeUp = rotary.takeUpDegrees() > 0
                ? ", set while the axis comes from below (the programs come from "
                        + settings.grid().degrees(rotary.takeUpDegrees()) + "° below)"
                : "";
        String turn = rotary.positive()
                ? "; A+ turns the pipe clockwise as seen from the free end"
                : "; A+ turns the pipe anticlockwise as seen from the free end";
        return new SetupSheet.Zero(
                "X0 at the chuck's jaw face, X+ toward the free end",
                "Y0 over the rotary axis, within 0.1 mm (0.004 in)",
                "Z0 at the rotary axis, for the cutter's lowest point: touch the crown of the pipe with it and set Z to "
                        + Sizes.in(settings.units(), settings.work().body().outerRadius())
                        + "; again after every tool change",
                "A0 with the 0° line of the pattern up" + takeUp + turn,
                Indexing.of(settings).topDirection());
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

    private static List<String> notes(RotarySettings settings) {
        List<String> notes = new ArrayList<>();
        notes.add("Run " + DirectionTest.fileName(settings.machine()) + " once after every change to the machine.");
        notes.add("Run every program in the air first, single step, hand on stop.");
        notes.add("The two dimples: one on the 0° line, one beside it clockwise as seen from above TOP;"
                + " both lie near the TOP edge.");
        if (!settings.work().measured()) {
            notes.add("The pipe's size is nominal, not measured: measure circumference and wall before drilling.");
        }
        if (!settings.cutting().caution().isBlank()) {
            notes.add(settings.cutting().caution());
        }
        return notes;
    }
}
