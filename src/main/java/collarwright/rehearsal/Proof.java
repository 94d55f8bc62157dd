package collarwright.rehearsal;

import collarwright.machining.Machine;
import collarwright.machining.Operation;
import collarwright.machining.ProgramFile;
import collarwright.machining.ProgramUnits;
import collarwright.machining.RotaryForm;
import collarwright.machining.RotarySettings;
import collarwright.units.Decimals;
import java.util.List;

/** A printed program beside what it is held against; heights are worked out anew from machine and pipe. */
final class Proof implements Replayed {

    private final ProgramFile file;
    private final RotarySettings settings;
    private final List<Block> blocks;
    private final List<Event> events;
    private final boolean bores;
    private final double tolerance;

    /**
     * Puts a program beside its plan; what is asked for every stroke is worked out here, once.
     *
     * @param file the program with its plan
     * @param settings machine and pipe
     * @param blocks the text's words
     * @param events what they do
     */
    Proof(ProgramFile file, RotarySettings settings, List<Block> blocks, List<Event> events) {
        this.file = file;
        this.settings = settings;
        this.blocks = List.copyOf(blocks);
        this.events = List.copyOf(events);
        this.bores = file.task()
                .filter(t -> t.operations().stream().anyMatch(Operation.Bore.class::isInstance))
                .isPresent();
        this.tolerance = tolerance(settings);
    }

    ProgramFile file() {
        return file;
    }

    RotarySettings settings() {
        return settings;
    }

    List<Block> blocks() {
        return blocks;
    }

    @Override
    public List<Event> events() {
        return events;
    }

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
        return tolerance;
    }

    private static double tolerance(RotarySettings settings) {
        return 0.5
                        * StrictMath.pow(10, -lengthDecimals(settings))
                        * settings.units().millimetres()
                + 1e-9;
    }

    int lengthDecimals() {
        return lengthDecimals(settings);
    }

    private static int lengthDecimals(RotarySettings settings) {
        return settings.machine().post().lengthDecimals() + (settings.units() == ProgramUnits.INCH ? 1 : 0);
    }

    double angleToleranceDegrees() {
        return 0.5 * angleStepDegrees() + 1e-9;
    }

    double angleStepDegrees() {
        return angleStepDegrees(settings);
    }

    /** A step of the angle, and of the arc where a Y word counts one. */
    static double angleStepDegrees(RotarySettings settings) {
        double step = StrictMath.pow(10, -settings.machine().post().angleDecimals());
        if (settings.machine().rotary().form().word() != RotaryForm.Word.Y_MM) {
            return step;
        }
        return step + 360 * 2 * tolerance(settings) / TurnWord.of(settings).perTurn();
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
        return bores;
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
