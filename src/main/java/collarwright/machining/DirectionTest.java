package collarwright.machining;

import collarwright.tooling.Cutter;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * A program that turns the pipe by 30 degrees, stops, and asks one question, to be answered with yes or no.
 *
 * <p>With the rotary sign of RS274 the pipe turns clockwise as seen from the free end, so what was up goes to the right.
 */
final class DirectionTest {

    /** The file's name without its ending. */
    static final String NAME = "rotary-direction-test";

    /** Enough to be seen, too little to be mistaken for the other way round: our choice, no source. */
    private static final double TURN_DEGREES = 30;

    private DirectionTest() {}

    static String fileName(Machine machine) {
        boolean shortName = machine.post().layout().habits().shortNames();
        return (shortName ? "ROTTEST" : NAME) + "." + ProgramNames.extension(machine);
    }

    /**
     * The program; Z goes to a height that is clear for the longest cutter of the job. Where programs change cutters, that
     * one comes in first: no height counts before a cutter has its length.
     *
     * @param cutters all cutters of the job, by number; one or more
     */
    static ProgramFile program(RotarySettings settings, List<Cutter> cutters, ProgramNames names) {
        Cutter longest =
                cutters.stream().max(Comparator.comparingDouble(Cutter::lead)).orElseThrow();
        Grid grid = settings.grid();
        Machine machine = settings.machine();
        double crown = settings.work().body().outerRadius();
        double clear = grid.snapUp(crown
                + settings.work().outOfRound()
                + machine.rotary().jawHeight()
                + machine.travel().clearGap()
                + longest.lead());
        List<Move> moves = new ArrayList<>();
        head(settings, crown).forEach(l -> moves.add(new Move.Comment(l)));
        moves.add(new Move.Setup());
        if (machine.post().layout().habits().toolChange() == ControlHabits.ToolChange.M6) {
            moves.add(Move.Tool.change(cutters.indexOf(longest) + 1, longest, ProgramWriter.zero(settings)));
        }
        moves.add(new Move.Rapid(Axis.Z, clear));
        moves.add(new Move.Rapid(Axis.A, 0));
        moves.add(new Move.Pause("Make a line on top of the pipe. Then start again"));
        moves.add(new Move.Rapid(Axis.A, TURN_DEGREES));
        moves.add(new Move.Pause(question(machine)));
        moves.add(new Move.End());
        MotionTime time = MotionTime.of(moves, machine);
        ProgramFile.Effort effort =
                new ProgramFile.Effort(time.seconds(), time.rotationDegrees(), TURN_DEGREES, 0, 0, time.handTurns());
        ProgramNames.Name name = names.directionTest();
        return new ProgramFile(
                name.file(),
                ProgramFile.Purpose.DIRECTION_TEST,
                Optional.empty(),
                0,
                effort,
                ProgramPost.print(moves, machine, new ProgramPost.Sheet(grid, crown, name.number())));
    }

    private static List<String> head(RotarySettings settings, double crown) {
        List<String> lines = new ArrayList<>();
        lines.add("ROTARY DIRECTION TEST for " + settings.machine().title());
        lines.add("JOB " + settings.label().title());
        lines.add("REVISION " + settings.label().revision());
        lines.addAll(ProgramHead.zero(settings, crown));
        lines.add("Spindle stays off, nothing is cut");
        lines.add("CAUTION single step, hand on stop");
        return lines;
    }

    private static String question(Machine machine) {
        String side = machine.rotary().positive() ? "RIGHT" : "LEFT";
        return "Stand at the free end, look toward the chuck. Did the line go to your " + side
                + ": yes or no. Yes: go on. No: write the other rotary.sign in the machine profile, and make the programs anew";
    }
}
