package collarwright.rehearsal;

import collarwright.finding.Level;
import collarwright.machining.BenchProgram;
import collarwright.machining.Machine;
import java.util.ArrayList;
import java.util.List;

/** A program for work that lies still, which somebody may have edited, held against the planned one: as {@link Comparison}. */
final class BenchComparison {

    private BenchComparison() {}

    static <T> Comparison of(BenchProgram<T> planned, String raw, String shown, BenchRehearsal.Bench<T> bench) {
        Machine machine = bench.machine();
        EditedText edited = EditedText.of(raw, machine.post());
        Teller teller = new Teller(edited, shown);
        edited.faults().forEach(f -> teller.tellInFile(Level.STOP, f, ""));
        TextRules.check(edited.text(), machine.post()).forEach(f -> teller.stop(f, ""));
        BlockReader reader = BlockReader.read(edited.text());
        reader.faults().forEach(f -> teller.stop(f, ""));
        Interpreter.Run run = Interpreter.run(reader.blocks(), Pose.UNKNOWN, BenchRehearsal.dialect(machine));
        run.faults().forEach(f -> teller.stop(f, ""));
        List<BenchProof> proofs = BenchRehearsal.proofs(planned, bench, run.events());
        List<BenchProof> asMade = new ArrayList<>();
        for (int i = 0; i < proofs.size(); i++) {
            asMade.add(part(planned.tasks().get(i), proofs.get(i), bench, teller));
        }
        BenchRehearsal.rules(bench, reader.blocks(), run.events(), asMade).forEach(f -> teller.stop(f, ""));
        teller.revision(bench.label());
        return new Comparison(teller.findings(), Replay.of(run.events(), proofs));
    }

    /** Tells what one cutter does otherwise; what is left is as if it had been planned so. */
    private static <T> BenchProof part(T task, BenchProof proof, BenchRehearsal.Bench<T> bench, Teller teller) {
        BenchDifferences holes = new BenchDifferences(proof, bench.piece(task), bench::side);
        holes.told().forEach(teller::stop);
        bench.byHand(task, proof).forEach(f -> teller.stop(f, ""));
        if (holes.reordered()) {
            Fault order = new Fault(1, "the holes in their planned order", "the same in another order");
            teller.tell(Level.NOTE, order, "");
        }
        Drives drives = new Drives(proof, proof.tool().cut(), proof.tool().cutter());
        drives.changes().forEach(f -> teller.tell(Level.WARN, f, f.found().substring(0, 1)));
        return new BenchProof(
                proof.machine(), proof.units(), proof.tool(), proof.levels(), holes.asMade(), drives.asPlanned());
    }
}
