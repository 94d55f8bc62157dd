package collarwright.rehearsal;

import collarwright.machining.Machine;
import collarwright.machining.Operation;
import collarwright.machining.ProgramFile;
import collarwright.machining.ProgramUnits;
import collarwright.machining.RotaryForm;
import collarwright.machining.RotarySettings;
import collarwright.units.Decimals;
import java.util.List;

/**
 * A printed program beside what it is held against; heights are worked out anew from machine and pipe.
 *
 * @param file the program with its plan
 * @param settings machine and pipe
 * @param blocks the text's words
 * @param events what they do
 */
record Proof(ProgramFile file, RotarySettings settings, List<Block> blocks, List<Event> events) implements Replayed {

    @Override
    public Machine machine() {
        return settings.machine();
    }

    @Override
    public ProgramUnits units() {
        return settings.units();
    }

    /** Half a step of a length in the program, and a little for the arithmetic. */
    @Override
    public double tolerance() {
        return 0.5 * StrictMath.pow(10, -lengthDecimals()) * settings.units().millimetres() + 1e-9;
    }

    int lengthDecimals() {
        return machine().post().lengthDecimals() + (settings.units() == ProgramUnits.INCH ? 1 : 0);
    }

    double angleToleranceDegrees() {
        return 0.5 * angleStepDegrees() + 1e-9;
    }

    /** A step of the angle, and of the arc where a Y word counts one. */
    double angleStepDegrees() {
        double step = StrictMath.pow(10, -machine().post().angleDecimals());
        if (machine().rotary().form().word() != RotaryForm.Word.Y_MM) {
            return step;
        }
        return step + 360 * 2 * tolerance() / TurnWord.of(settings).perTurn();
    }

    /** The highest that the pipe can stand. */
    double highestCrown() {
        return settings.work().body().outerRadius() + settings.work().outOfRound();
    }

    /** Where the pipe may turn: above crown, out-of-round, jaws, gap and the cutter's lead, raised for an air cut. */
    @Override
    public double clear() {
        double lead = file.task().map(t -> t.cutter().lead()).orElse(0.0);
        return highestCrown()
                + machine().rotary().jawHeight()
                + machine().travel().clearGap()
                + lead
                + file.lift();
    }

    /** Whether holes are bored, by arcs. */
    boolean bores() {
        return file.task()
                .filter(t -> t.operations().stream().anyMatch(Operation.Bore.class::isInstance))
                .isPresent();
    }

    /** A length as the shop reads it. */
    @Override
    public String text(double length) {
        if (!Double.isFinite(length)) {
            return "nowhere stated";
        }
        double unit = settings.units().millimetres();
        return Decimals.fixed(length / unit, lengthDecimals()) + " "
                + settings.units().symbol();
    }

    String degrees(double angleDegrees) {
        return Double.isFinite(angleDegrees) ? Decimals.fixed(angleDegrees, 3) + " degrees" : "nowhere stated";
    }
}
