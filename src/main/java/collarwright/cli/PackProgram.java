package collarwright.cli;

import collarwright.machining.BedSettings;
import collarwright.machining.BenchProgram;
import collarwright.machining.FlatSettings;
import collarwright.machining.ProgramFile;
import collarwright.machining.RotarySettings;
import collarwright.plan.Production;
import collarwright.plan.StripWork;
import collarwright.rehearsal.Comparison;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;

/**
 * A program of the pack, of whichever machine.
 *
 * @param name its file name
 * @param purpose what it is for
 * @param text the planned text
 * @param rotary the program itself, if it is for a machine that turns the pipe
 * @param comparison holds a text against it, which stands in a file of a name
 */
record PackProgram(
        String name,
        ProgramFile.Purpose purpose,
        String text,
        Optional<ProgramFile> rotary,
        BiFunction<String, String, Comparison> comparison) {

    /** All programs of a pack: stick by stick, then strut ends, then strips. */
    static List<PackProgram> of(Production production) {
        List<PackProgram> programs = new ArrayList<>();
        RotarySettings settings = Production.settings(production.plan().job());
        production
                .rotary()
                .programs()
                .forEach(p -> programs.add(new PackProgram(
                        p.name(),
                        p.purpose(),
                        p.text(),
                        Optional.of(p),
                        (raw, shown) -> Comparison.of(p, raw, shown, settings))));
        Optional<BedSettings> bed = Production.bed(production.plan().job());
        bed.ifPresent(b -> production
                .ends()
                .programs()
                .forEach(p -> programs.add(lying(p, (raw, shown) -> Comparison.of(p, raw, shown, b)))));
        Optional<FlatSettings> flat = StripWork.flat(production.plan().job());
        flat.ifPresent(f -> production
                .strips()
                .programs()
                .programs()
                .forEach(p -> programs.add(lying(p, (raw, shown) -> Comparison.of(p, raw, shown, f)))));
        return List.copyOf(programs);
    }

    private static PackProgram lying(BenchProgram<?> program, BiFunction<String, String, Comparison> comparison) {
        ProgramFile.Purpose purpose = program.air() ? ProgramFile.Purpose.AIR_CUT : ProgramFile.Purpose.CUT;
        return new PackProgram(program.name(), purpose, program.text(), Optional.empty(), comparison);
    }
}
