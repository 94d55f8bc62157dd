package collarwright.rehearsal;

import collarwright.finding.Finding;
import collarwright.machining.ControlHabits;
import collarwright.machining.PatternRun;
import collarwright.machining.ProgramFile;
import collarwright.machining.RotaryPlan;
import collarwright.machining.RotarySettings;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Reads programs back and proves them, before any of them may be written.
 *
 * <p>Steps for each program: 1. its letters, line by line; 2. its words against the profile; 3. a replay by our own
 * interpreter; 4. what the replay did against the rules of motion and spindle; 5. its holes against the plan and against
 * the pipe. Then for the whole plan: every hole and both dimples of every collar of every pattern made once, at its place
 * in space, on sticks that are long enough.
 */
public final class Rehearsal {

    private Rehearsal() {}

    /**
     * Rehearses a whole plan.
     *
     * @param plan its programs
     * @param settings what it was made with
     * @param runs the patterns with the collars to make
     * @return REHEARSAL_FAILED stops in the order of programs and lines; empty if every program may leave
     */
    public static List<Finding> rehearse(RotaryPlan plan, RotarySettings settings, List<PatternRun> runs) {
        List<Finding> findings = new ArrayList<>();
        List<Reading> readings =
                plan.programs().stream().map(f -> Reading.of(f, settings)).toList();
        readings.forEach(r -> findings.addAll(findings(r, settings)));
        findings.addAll(PlanRules.check(plan, readings, settings, runs));
        return List.copyOf(findings);
    }

    /**
     * Rehearses one program.
     *
     * @param file the program, of which only the text is trusted to be what will run
     * @param settings what it was made with
     * @return REHEARSAL_FAILED stops by line, the first 25 if there are more; empty if the program may leave
     */
    public static List<Finding> rehearse(ProgramFile file, RotarySettings settings) {
        return findings(Reading.of(file, settings), settings);
    }

    private static List<Finding> findings(Reading reading, RotarySettings settings) {
        return FaultyProgram.findings(reading.file().name(), faults(reading, settings));
    }

    private static List<Fault> faults(Reading reading, RotarySettings settings) {
        ProgramFile file = reading.file();
        List<Fault> faults =
                new ArrayList<>(TextRules.check(file.text(), settings.machine().post()));
        faults.addAll(reading.blocks().faults());
        faults.addAll(reading.run().faults());
        faults.addAll(rules(new Proof(
                file, settings, reading.blocks().blocks(), reading.run().events())));
        return faults;
    }

    /** The rules on what a program says and does, after its letters were read. */
    static List<Fault> rules(Proof proof) {
        ProgramFile file = proof.file();
        List<Fault> faults = new ArrayList<>(WordRules.check(proof));
        double crown = proof.settings().work().body().outerRadius();
        faults.addAll(ZeroRules.check(proof.blocks(), crown));
        if (file.purpose() == ProgramFile.Purpose.DIRECTION_TEST) {
            faults.addAll(DirectionRules.check(proof));
            return faults;
        }
        if (proof.machine().tube().isPresent()) {
            file.task().ifPresent(t -> faults.addAll(TubeRules.check(proof, t)));
            return faults;
        }
        faults.addAll(HandRules.check(proof));
        for (Section section :
                Section.of(file, proof.events(), proof.machine().rotary().form().byY())) {
            faults.addAll(section(section, proof));
        }
        return faults;
    }

    private static List<Fault> section(Section section, Proof whole) {
        Proof proof = new Proof(section.file(), whole.settings(), whole.blocks(), section.events());
        ControlHabits habits = whole.machine().post().layout().habits();
        List<Fault> faults = new ArrayList<>();
        section.file()
                .task()
                .ifPresent(t -> faults.addAll(CutterRules.check(habits, section.events(), t.tool(), t.cutter())));
        faults.addAll(SpindleRules.check(proof));
        faults.addAll(MotionRules.check(proof));
        section.file().task().ifPresent(t -> {
            faults.addAll(RapidRules.check(proof, Ground.of(proof, t)));
            faults.addAll(PlugRules.check(proof, t));
            boolean bores = proof.bores();
            faults.addAll(bores ? BoreRules.check(proof, t) : HoleRules.check(proof, t));
            if (!bores || proof.file().purpose() == ProgramFile.Purpose.AIR_CUT) {
                faults.addAll(PipeRules.check(proof, t));
            }
        });
        return once(faults);
    }

    /** A rapid into the work is told once, in the words of the rule that looks at all moves; not where it goes sideways. */
    private static List<Fault> once(List<Fault> faults) {
        Set<Integer> told = new HashSet<>();
        faults.stream()
                .filter(f -> f.expected().startsWith("X and Y move only at ")
                        || f.expected().startsWith("the pipe turns only at "))
                .forEach(f -> told.add(f.line()));
        return faults.stream()
                .filter(f -> !f.expected().equals(RapidRules.ABOVE) || told.add(f.line()))
                .toList();
    }
}
