package collarwright.machining;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;

/**
 * Prints what is done to work that lies still as a program and as its air cut.
 *
 * @param machine a bed or a flat machine
 * @param grid steps of the programs
 * @param highest the highest that the work may stand
 * @param names names and numbers of the job's programs
 */
record BenchPrint(Machine machine, Grid grid, double highest, ProgramNames names) {

    /**
     * What is printed.
     *
     * @param <T> what its tasks are
     * @param tasks cutter by cutter
     * @param id of the strip or the strut
     * @param middle what stands behind it in a long name
     * @param what the cutter or the work
     * @param moves what cuts
     * @param deepest the lowest Z of them
     * @param clear the highest Z of them
     */
    record Work<T>(
            List<T> tasks, String id, String middle, String what, List<Move> moves, double deepest, double clear) {
        Work {
            tasks = List.copyOf(tasks);
            moves = List.copyOf(moves);
        }
    }

    /** Makes the lines at the top: for how far Z is raised, for a running time. */
    interface Head extends DoubleFunction<DoubleFunction<List<String>>> {}

    <T> BenchProgram<T> cut(Work<T> work, Head head) {
        return file(work, 0, work.moves(), head);
    }

    /** The air cut, if the machine goes up so far. */
    <T> Optional<BenchProgram<T>> air(Work<T> work, Head head) {
        double lift = lift(work.deepest());
        if (work.clear() + lift > machine.travel().maxZ()) {
            return Optional.empty();
        }
        return Optional.of(file(work, lift, MoveList.lifted(work.moves(), lift, grid), head));
    }

    /** Brings the deepest point above the work by the clear gap. */
    double lift(double deepest) {
        return grid.snapUp(highest + machine.travel().clearGap() - deepest);
    }

    private <T> BenchProgram<T> file(Work<T> work, double lift, List<Move> moves, Head head) {
        double seconds = MotionTime.of(MoveList.expanded(moves, grid), machine).seconds();
        List<Move> whole = new ArrayList<>();
        head.apply(lift).apply(seconds).forEach(l -> whole.add(new Move.Comment(l)));
        whole.addAll(moves);
        ProgramNames.Name name = names.next(work.id(), work.middle(), work.what(), lift > 0);
        String text = ProgramPost.print(whole, machine, grid, name.number());
        return new BenchProgram<>(name.file(), work.tasks(), lift, seconds, text);
    }
}
