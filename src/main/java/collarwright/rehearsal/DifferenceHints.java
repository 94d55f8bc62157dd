package collarwright.rehearsal;

import collarwright.finding.Level;
import java.util.List;

/** What to do about a difference between a program and its plan. */
final class DifferenceHints {

    private static final String DO_NOT_RUN = "do not run it before this is put right";

    private DifferenceHints() {}

    static List<String> of(Level level, Fault fault) {
        return switch (level) {
            case STOP -> List.of(DO_NOT_RUN, instead(fault));
            case WARN -> warned(fault);
            case NOTE -> List.of("nothing to do");
        };
    }

    private static String instead(Fault fault) {
        String expected = fault.expected();
        if (expected.startsWith("only words that the profile allows")) {
            boolean known = Interpreter.words().contains(key(fault.found()));
            return known
                    ? "or, if the control has it and the word is meant, add it to post.words of the machine's profile"
                    : "take it out: what it does cannot be proved here; coolant and the like are switched by hand";
        }
        if (expected.startsWith("F up to ") || expected.matches("S \\d.* rpm, planned .*")) {
            return "or, if it is meant, change [[cutting]] or the cutter's max-rpm in a profile and make the pack anew";
        }
        return "or, if the change is meant, change the job and make the pack anew";
    }

    /** G and M words count by their number, others by their letter. */
    private static String key(String word) {
        return word.matches("[GM].*") || word.isEmpty() ? word : word.substring(0, 1);
    }

    private static List<String> warned(Fault fault) {
        if (fault.expected().startsWith("(REVISION")) {
            return List.of("compare the job with the one the program was made from", "or make the pack anew");
        }
        if (fault.expected().startsWith("(")) {
            return List.of("set up by the plan, not by this line: put it right before somebody does");
        }
        if (fault.found().startsWith("G4")) {
            return List.of("put the dwell right: the spindle turns over the work all that time");
        }
        return List.of("run it only if the change is meant; watch heat and chips on the first hole");
    }
}
