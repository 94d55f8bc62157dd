package collarwright.machining;

import collarwright.tooling.Cutter;
import java.util.List;

/**
 * What one program does with one cutter to one stick.
 *
 * @param load how the stick is laid out
 * @param cutter the one cutter of the program
 * @param cut how it turns and feeds
 * @param heights crown, R plane and clear height
 * @param operations in the order in which they are done: A rising, X to and fro
 * @param tool the cutter's number in the job, from 1
 */
public record ProgramTask(Load load, Cutter cutter, Cut cut, Heights heights, List<Operation> operations, int tool) {
    /** Checks that there is something to do, with this cutter. */
    public ProgramTask {
        operations = List.copyOf(operations);
        if (operations.isEmpty()
                || operations.stream().anyMatch(o -> !o.cutter().equals(cutter))) {
            throw new IllegalArgumentException(load.id() + ": one program, one cutter, one hole or more");
        }
    }

    /**
     * A task with the only cutter of its job.
     *
     * @param load how the stick is laid out
     * @param cutter the one cutter of the program
     * @param cut how it turns and feeds
     * @param heights crown, R plane and clear height
     * @param operations in the order in which they are done: A rising, X to and fro
     */
    public ProgramTask(Load load, Cutter cutter, Cut cut, Heights heights, List<Operation> operations) {
        this(load, cutter, cut, heights, operations, 1);
    }

    /**
     * Returns the deepest Z of the program.
     *
     * @return least bottom of all operations
     */
    public double deepest() {
        return operations.stream().mapToDouble(Operation::bottom).min().orElseThrow();
    }

    /**
     * Returns whether it only sets dimples.
     *
     * @return true if every operation is a mark
     */
    public boolean marks() {
        return operations.stream().allMatch(o -> o instanceof Operation.Mark);
    }
}
