package collarwright.rehearsal;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/**
 * The comments by which an operator sets up (cutter, speed, zero, pipe, clear height, which way TOP faces), held against the
 * planned ones: a control reads past them, a man does not.
 *
 * <p>Kinds are told by their first word. What was added under another word, or left out, is no difference; the revision has
 * a rule of its own.
 */
final class SetupComments {

    private static final Set<String> OTHERS = Set.of("JOB", "REVISION", "TIME", "CAUTION");

    /** What is told at a pause for a cutter. */
    private static final List<String> AT_PAUSES = List.of("CUTTER", "SET Z");

    private SetupComments() {}

    private record Comment(int line, String text) {
        String kind() {
            String words = text.toUpperCase(Locale.ROOT);
            return words.startsWith("SET Z ") ? "SET Z" : words.split("[ :,;]", 2)[0];
        }

        boolean like(Comment other) {
            return evened().equals(other.evened());
        }

        /** Without the height that {@link ZeroRules} holds, which is a stop. */
        private String evened() {
            String even = text.strip().replaceAll("\\s+", " ");
            return ZeroRules.SET.matcher(even).replaceAll("tip set").toUpperCase(Locale.ROOT);
        }
    }

    /**
     * Compares.
     *
     * @param planned lines of the planned program
     * @param edited lines of the file
     * @return what differs, at its line in the file
     */
    static List<Fault> check(List<String> planned, List<String> edited) {
        List<Comment> ours = comments(planned);
        int code = firstCode(planned);
        List<String> kinds = Stream.concat(
                        ours.stream().filter(c -> c.line() < code).map(Comment::kind), AT_PAUSES.stream())
                .filter(k -> !OTHERS.contains(k))
                .distinct()
                .toList();
        Map<String, List<Comment>> theirs = new LinkedHashMap<>();
        comments(edited)
                .forEach(c ->
                        theirs.computeIfAbsent(c.kind(), k -> new ArrayList<>()).add(c));
        List<Fault> faults = new ArrayList<>();
        for (String kind : kinds) {
            List<Comment> wanted =
                    ours.stream().filter(c -> c.kind().equals(kind)).toList();
            faults.addAll(differences(wanted, theirs.getOrDefault(kind, List.of())));
        }
        return List.copyOf(faults);
    }

    private static List<Fault> differences(List<Comment> wanted, List<Comment> found) {
        List<Fault> faults = new ArrayList<>();
        boolean paired = wanted.size() == found.size();
        for (int i = 0; i < found.size() && !wanted.isEmpty(); i++) {
            Comment there = found.get(i);
            Comment pair = wanted.get(StrictMath.min(i, wanted.size() - 1));
            boolean alike = paired ? there.like(pair) : wanted.stream().anyMatch(there::like);
            if (!alike) {
                faults.add(new Fault(there.line(), "(" + pair.text() + ")", "(" + there.text() + ")"));
            }
        }
        return faults;
    }

    /** Lines from 1; a comment that was broken into several lines is one. */
    private static List<Comment> comments(List<String> lines) {
        List<Comment> comments = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            String line = lines.get(i).strip();
            if (!line.startsWith("(") || !line.endsWith(")")) {
                continue;
            }
            String text = line.substring(1, line.length() - 1).strip();
            Comment last = comments.isEmpty() ? new Comment(0, "") : comments.get(comments.size() - 1);
            if (text.startsWith(".. ") && !comments.isEmpty()) {
                comments.set(comments.size() - 1, new Comment(last.line(), last.text() + text.substring(2)));
            } else {
                comments.add(new Comment(i + 1, text));
            }
        }
        return comments;
    }

    /** The first line that a control acts on. */
    private static int firstCode(List<String> lines) {
        for (int i = 0; i < lines.size(); i++) {
            String line = lines.get(i).strip();
            if (!line.isEmpty() && !line.startsWith("(") && !line.startsWith("%") && !line.startsWith("O")) {
                return i + 1;
            }
        }
        return lines.size() + 1;
    }
}
