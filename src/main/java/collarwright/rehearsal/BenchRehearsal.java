package collarwright.rehearsal;

import collarwright.finding.Finding;
import collarwright.machining.BenchProgram;
import collarwright.machining.ControlHabits;
import collarwright.machining.JobLabel;
import collarwright.machining.Machine;
import collarwright.machining.ProgramUnits;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;

/** Reads a program for work that lies still back and proves it, cutter by cutter: a strut on a bed, a strip on a flat table. */
final class BenchRehearsal {

    private BenchRehearsal() {}

    /**
     * What a program is held against.
     *
     * @param <T> what its tasks are
     */
    interface Bench<T> {

        Machine machine();

        ProgramUnits units();

        /** Z of what a cutter's tip is set on. */
        double zero();

        /** How it may move. */
        BenchMotion.Ways ways();

        /** Whether a hand turns the work at a stop. */
        boolean turned();

        /** Title and revision of the job. */
        JobLabel label();

        /** The piece of work for people, such as {@code strut SA}. */
        String piece(T task);

        /** What a cutter would run into, such as {@code the strut}. */
        String work();

        /** Where a hole that is off along an axis lies, such as {@code nearer to the stop}. */
        String side(char axis, boolean more);

        /** What a hand does otherwise than planned between holes. */
        List<Fault> byHand(T task, BenchProof proof);

        /** Where a hole saw is not emptied before it is full. */
        List<Fault> plugs(BenchProof proof);

        /** One task beside what is done for it. */
        BenchProof proof(T task, double lift, List<Event> events);
    }

    /** REHEARSAL_FAILED stops by line, the first 25 if there are more. */
    static <T> List<Finding> rehearse(BenchProgram<T> file, Bench<T> bench) {
        Machine machine = bench.machine();
        List<Fault> faults = new ArrayList<>(TextRules.check(file.text(), machine.post()));
        BlockReader reader = BlockReader.read(file.text());
        faults.addAll(reader.faults());
        Interpreter.Run run = Interpreter.run(reader.blocks(), Pose.UNKNOWN, dialect(machine));
        faults.addAll(run.faults());
        faults.addAll(rules(bench, reader.blocks(), run.events(), proofs(file, bench, run.events())));
        return FaultyProgram.findings(file.name(), faults);
    }

    /** The rules on what a program says and does, after its letters were read. */
    static <T> List<Fault> rules(Bench<T> bench, List<Block> blocks, List<Event> events, List<BenchProof> proofs) {
        Machine machine = bench.machine();
        ControlHabits habits = machine.post().layout().habits();
        List<Fault> faults = new ArrayList<>(WordRules.check(machine, bench.units(), blocks));
        faults.addAll(ZeroRules.check(blocks, bench.zero()));
        faults.addAll(HandRules.check(machine, events, new HandRules.Bench(bench.turned())));
        for (BenchProof proof : proofs) {
            BenchProof.Tool tool = proof.tool();
            faults.addAll(CutterRules.check(habits, proof.events(), tool.number(), tool.cutter()));
            faults.addAll(SpindleRules.check(
                    machine, proof.events(), OptionalInt.of(tool.cut().rpm())));
            faults.addAll(BenchMotion.check(proof, bench.ways()));
            faults.addAll(RapidRules.check(proof, Ground.of(proof, bench.work())));
            faults.addAll(BenchCuts.check(proof));
            faults.addAll(bench.plugs(proof));
        }
        return faults;
    }

    /** What words mean where the work lies still. */
    static Interpreter.Dialect dialect(Machine machine) {
        boolean dwellByX = machine.post().layout().habits().dwellByX();
        return new Interpreter.Dialect(TurnWord.DEGREES, dwellByX, false);
    }

    /** What a program's text does, task by task. */
    static <T> List<BenchProof> proofs(BenchProgram<T> file, Bench<T> bench) {
        List<Block> blocks = BlockReader.read(file.text()).blocks();
        List<Event> events =
                Interpreter.run(blocks, Pose.UNKNOWN, dialect(bench.machine())).events();
        return proofs(file, bench, events);
    }

    static <T> List<BenchProof> proofs(BenchProgram<T> file, Bench<T> bench, List<Event> events) {
        List<List<Event>> parts = Section.split(events, file.tasks().size(), false);
        List<BenchProof> proofs = new ArrayList<>();
        for (int i = 0; i < parts.size(); i++) {
            proofs.add(bench.proof(file.tasks().get(i), file.lift(), parts.get(i)));
        }
        return proofs;
    }
}
