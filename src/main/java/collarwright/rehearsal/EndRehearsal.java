package collarwright.rehearsal;

import collarwright.finding.Code;
import collarwright.finding.Finding;
import collarwright.finding.Where;
import collarwright.machining.BedSettings;
import collarwright.machining.EndPlan;
import collarwright.machining.EndProgram;
import collarwright.machining.EndStops;
import collarwright.units.Angles;
import collarwright.units.Decimals;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;

/**
 * Reads the programs for the ends of struts back and proves them, before any of them may be written.
 *
 * <p>Steps for each program: its letters, its words, a replay, the rules of motion and spindle, its holes against the strut
 * in every seat. Then for each strut type: two holes in all programs together, at their distances from the strut's own
 * ends and turned against each other by its twist, with the strut put back into its own frame.
 */
public final class EndRehearsal {

    /** A turn in words has one decimal of degrees, and less than 0.05° is not asked for. */
    private static final double TURN_SLACK = Angles.radians(0.0501);

    private EndRehearsal() {}

    /**
     * Rehearses all programs.
     *
     * @param plan the programs
     * @param settings what they were made with
     * @param struts the strut types that have to be drilled; none where no program is asked for
     * @return REHEARSAL_FAILED stops; empty if every program may leave
     */
    public static List<Finding> rehearse(EndPlan plan, BedSettings settings, List<EndStops> struts) {
        List<Finding> findings = new ArrayList<>();
        plan.programs().forEach(p -> findings.addAll(rehearse(p, settings)));
        struts.forEach(s -> findings.addAll(strut(plan, settings, s)));
        return List.copyOf(findings);
    }

    /**
     * Rehearses one program.
     *
     * @param file the program, of which only the text is trusted to be what will run
     * @param settings what it was made with
     * @return REHEARSAL_FAILED stops by line, the first 25 if there are more
     */
    public static List<Finding> rehearse(EndProgram file, BedSettings settings) {
        List<Fault> faults =
                new ArrayList<>(TextRules.check(file.text(), settings.machine().post()));
        BlockReader reader = BlockReader.read(file.text());
        faults.addAll(reader.faults());
        Interpreter.Run run = Interpreter.run(reader.blocks(), Pose.UNKNOWN);
        faults.addAll(run.faults());
        faults.addAll(WordRules.check(settings.machine(), settings.cuts().units(), reader.blocks()));
        faults.addAll(SpindleRules.check(
                settings.machine(),
                run.events(),
                OptionalInt.of(file.task().cut().rpm())));
        EndProof proof = proof(file, settings, run.events());
        String order = settings.machine().withoutY() ? "ZX" : "ZYX";
        BenchMotion.Ways ways = new BenchMotion.Ways(order, true, settings.bed().stopClear());
        faults.addAll(BenchMotion.check(proof.bench(), ways));
        faults.addAll(RapidRules.check(proof.bench(), Ground.of(proof.bench(), file.task())));
        faults.addAll(BenchCuts.check(proof.bench()));
        faults.addAll(stops(proof));
        return FaultyProgram.findings(file.name(), faults);
    }

    /** The program waits where the strut is turned and nowhere else, the spindle off. */
    private static List<Fault> stops(EndProof proof) {
        List<Fault> faults = new ArrayList<>();
        boolean on = false;
        for (Event event : proof.events()) {
            if (event instanceof Event.Spindle s) {
                on = s.on();
            } else if (event instanceof Event.Stop) {
                if (on) {
                    faults.add(new Fault(event.line(), "the spindle off while a strut is turned", "spindle running"));
                }
                String note = proof.notes().getOrDefault(event.line(), "");
                if (Double.isNaN(StrutHole.clockwise(note))) {
                    faults.add(new Fault(event.line(), "words that tell by how much to turn", "(" + note + ")"));
                }
            }
        }
        return faults;
    }

    private static EndProof proof(EndProgram file, BedSettings settings, List<Event> events) {
        return EndProof.of(file, settings, events, notes(file.text()));
    }

    /** The comment lines straight in front of a line, joined where a long one was broken. */
    private static Map<Integer, String> notes(String text) {
        Map<Integer, String> notes = new HashMap<>();
        StringBuilder note = new StringBuilder();
        int line = 0;
        for (String raw : text.split("\n", -1)) {
            line++;
            String code = raw.strip();
            if (code.startsWith("(") && code.endsWith(")")) {
                String words = code.substring(1, code.length() - 1);
                if (words.startsWith(".. ")) {
                    note.append(' ').append(words.substring(3));
                } else {
                    note.setLength(0);
                    note.append(words);
                }
            } else {
                notes.put(line, note.toString());
                note.setLength(0);
            }
        }
        return Map.copyOf(notes);
    }

    /** The holes that a program's text drills in a strut of a length. */
    static List<StrutHole> holes(EndProgram file, BedSettings settings, double cut) {
        List<Block> blocks = BlockReader.read(file.text()).blocks();
        List<Event> events = Interpreter.run(blocks, Pose.UNKNOWN).events();
        return StrutHole.from(proof(file, settings, events), cut);
    }

    private static List<Finding> strut(EndPlan plan, BedSettings settings, EndStops strut) {
        List<StrutHole> holes = new ArrayList<>();
        for (EndProgram file : plan.programs()) {
            if (!file.air() && file.task().stops().type().equals(strut.type())) {
                holes.addAll(holes(file, settings, strut.cut()));
            }
        }
        if (holes.size() != 2) {
            return List.of(fault(strut, "two tie holes", holes.size() + " made"));
        }
        holes.sort(Comparator.comparingDouble(StrutHole::fromA));
        List<Finding> findings = new ArrayList<>();
        StrutHole a = holes.get(0);
        StrutHole b = holes.get(1);
        double slack = settings.grid().step();
        if (!(StrictMath.abs(a.fromA() - strut.first()) <= slack)) {
            findings.add(fault(strut, "the first hole " + mm(strut.first()) + " from end E1", mm(a.fromA())));
        }
        double fromB = strut.cut() - b.fromA();
        if (!(StrictMath.abs(fromB - strut.second()) <= slack)) {
            findings.add(fault(strut, "the second hole " + mm(strut.second()) + " from end E2", mm(fromB)));
        }
        double off = a.twistTo(b) - strut.twist();
        // A quarter turn either way is the same pair of holes.
        double turn = StrictMath.abs(off - StrictMath.PI * StrictMath.rint(off / StrictMath.PI));
        if (!(turn <= TURN_SLACK)) {
            findings.add(fault(
                    strut,
                    "holes turned by " + degrees(strut.twist()) + ", clockwise looking from E1 to E2",
                    degrees(a.twistTo(b))));
        }
        return findings;
    }

    private static String mm(double length) {
        return Decimals.fixed(length, 3) + " mm";
    }

    private static String degrees(double angle) {
        return Double.isNaN(angle) ? "nobody can tell" : Decimals.fixed(Angles.degrees(angle), 2) + "°";
    }

    private static Finding fault(EndStops strut, String expected, String found) {
        return Finding.stop(
                Code.REHEARSAL_FAILED,
                new Where.Part("strut " + strut.type()),
                expected,
                found,
                "do not run these programs: together they do not make the strut",
                "report it with the job file: whatever wrote them is at fault");
    }
}
