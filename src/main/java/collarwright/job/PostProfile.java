package collarwright.job;

import collarwright.machining.ControlHabits;
import collarwright.machining.Machine;
import collarwright.machining.ProgramWords;
import collarwright.machining.RotaryForm;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Reads how programs are written, and finds what does not go together, each at its key. */
final class PostProfile {

    private final MachinePart part;
    private final Machine.Spindle spindle;
    private final RotaryForm form;

    PostProfile(MachinePart part, Machine.Spindle spindle, RotaryForm form) {
        this.part = part;
        this.spindle = spindle;
        this.form = form;
    }

    /** Reads the table of a tube cutter: it has no speed, and no Y but where Y turns the pipe. */
    Machine.Post cuttingTubes() {
        Machine.Post post = read(true, form.byY());
        Set<String> words = new LinkedHashSet<>(post.words());
        if (!part.has("words")) {
            words.remove("S");
            words.addAll(TubeProfile.turning(form));
        } else {
            List<String> needed = new ArrayList<>(List.of("G0", "G1", "G4", "M3", "M5", "F", "X", "Z"));
            needed.addAll(TubeProfile.turning(form));
            needs(words, "kind = tube", needed);
        }
        return new Machine.Post(
                post.cycles(),
                words,
                post.lengthDecimals(),
                post.angleDecimals(),
                post.lineLength(),
                post.endWord(),
                post.extension(),
                post.layout());
    }

    /**
     * Reads the table.
     *
     * @param turning whether an axis turns the work
     * @param across whether there is a Y word
     */
    Machine.Post read(boolean turning, boolean across) {
        return read(turning, across, false);
    }

    /**
     * Reads the table.
     *
     * @param turning whether an axis turns the work
     * @param across whether there is a Y word
     * @param bores whether the machine can bore by arcs, unless the table says that its control has none
     */
    Machine.Post read(boolean turning, boolean across, boolean bores) {
        boolean arcs = bores && part.flag("arcs", "whether G2 and G3 may be used", true);
        boolean cycles = part.flag("cycles", "whether G81, G82, G83 and G73 may be used");
        int lengthDecimals = (int) part.whole("length-decimals", "decimals of millimetres", 3, 6);
        int angleDecimals = turning ? (int) part.whole("angle-decimals", "decimals of degrees", 3, 6) : 3;
        int lineLength = (int) part.whole("line-length", "most characters on a line", 40, 255);
        String end = part.word("end-word", "the last word", List.of("M2", "M30"));
        String extension = part.text("extension", "the file name's ending", "[A-Za-z0-9]{1,8}", "ngc");
        Machine.Layout layout = layout(habits(cycles, extension));
        Set<String> words = new LinkedHashSet<>(ProgramWords.of(form, spindle.controlled(), layout.habits()));
        if (cycles) {
            words.addAll(ProgramWords.usualCycles());
        }
        if (arcs) {
            words.addAll(ProgramWords.ARCS);
        }
        words.add(end);
        if (!turning) {
            words.remove("A");
        }
        if (!across) {
            words.remove("Y");
        }
        Optional<Set<String>> own = part.words("words");
        own.ifPresent(o -> against(o, cycles, layout.habits()));
        if (arcs && part.has("arcs")) {
            own.ifPresent(o -> needs(o, "arcs = true", ProgramWords.ARCS));
        }
        return new Machine.Post(
                cycles, own.orElse(words), lengthDecimals, angleDecimals, lineLength, end, extension, layout);
    }

    /** All of it may be left out: the plainest layout then. */
    private Machine.Layout layout(ControlHabits habits) {
        int step = part.has("line-numbers")
                ? (int) part.whole("line-numbers", "step of the N numbers, 0 for none", 0, 100)
                : 0;
        boolean percent = part.flag("percent", "whether % stands first and last", false);
        boolean crlf = part.flag("crlf", "whether lines end with CR LF in place of LF", false);
        boolean milliseconds = part.wordOrFirst("dwell-unit", "what P of a dwell counts", List.of("s", "ms"))
                .equals("ms");
        if (habits.programNumber() > 0 && !percent) {
            part.conflict(
                    "program-number",
                    "percent = true, the lines between which an O number stands",
                    "percent = false",
                    "write percent = true, or take program-number out");
        }
        if (milliseconds && habits.dwellByX()) {
            part.conflict(
                    "dwell-unit",
                    "ms with dwell-word = P only: X counts seconds",
                    "dwell-word = X",
                    "write dwell-unit = \"s\", or dwell-word = \"P\"");
        }
        return new Machine.Layout(step, percent, crlf, milliseconds, habits);
    }

    private ControlHabits habits(boolean cycles, String extension) {
        List<String> changes = List.of("file", "pause", "m6");
        String change = part.wordOrFirst("tool-change", "how the next cutter comes in", changes);
        boolean table = part.wordOrFirst("tool-length", "how Z is set for a cutter", List.of("touch", "g43"))
                .equals("g43");
        if (table && !change.equals("m6")) {
            part.conflict(
                    "tool-length",
                    "g43 with tool-change = m6 only",
                    "tool-change = " + change,
                    "write tool-change = \"m6\", or tool-length = \"touch\"");
            table = false;
        }
        boolean byX = part.wordOrFirst("dwell-word", "the word with a dwell's time", List.of("P", "X"))
                .equals("X");
        int number = part.has("program-number")
                ? (int) part.whole("program-number", "the first O number", 1, ControlHabits.LARGEST_PROGRAM)
                : 0;
        boolean chipBreak = part.flag("chip-break", "whether pecks are G73 in place of G83", false);
        if (chipBreak && !cycles) {
            part.conflict("chip-break", "only with cycles = true", "cycles = false", "G73 is a cycle: turn cycles on");
        }
        boolean shortNames = part.wordOrFirst("file-names", "how files are named", List.of("long", "8.3"))
                .equals("8.3");
        if (shortNames && extension.length() > 3) {
            part.conflict(
                    "extension",
                    "three letters or fewer with file-names = 8.3",
                    extension,
                    "such as extension = \"nc\"");
        }
        ControlHabits.ToolChange way = switch (change) {
            case "pause" -> ControlHabits.ToolChange.PAUSE;
            case "m6" -> ControlHabits.ToolChange.M6;
            default -> ControlHabits.ToolChange.FILE;
        };
        boolean plugStop = part.flag("plug-stop", "whether programs stop before a hole saw is full", true);
        return new ControlHabits(way, table, byX, number, chipBreak, shortNames, !plugStop);
    }

    /** A list of one's own holds what the rest of the profile needs, and nothing that it says the machine has not. */
    private void against(Set<String> words, boolean cycles, ControlHabits habits) {
        if (cycles) {
            needs(words, "cycles = true", ProgramWords.cycles(habits.chipBreak()));
        }
        if (habits.toolChange() == ControlHabits.ToolChange.M6) {
            needs(words, "tool-change = m6", List.of("T", "M6"));
        }
        if (habits.lengthTable()) {
            needs(words, "tool-length = g43", List.of("G43", "H"));
        }
        if (form.word() != RotaryForm.Word.A && words.contains("A")) {
            part.conflict(
                    "words",
                    "no A word with rotary.form = " + RotaryProfile.name(form),
                    "A",
                    "take A out of the words, or write rotary.form = \"A\"");
        }
        if (!spindle.controlled() && (words.contains("M3") || words.contains("S"))) {
            part.conflict(
                    "words",
                    "no M3 and no S with spindle.control = false",
                    words.contains("M3") ? "M3" : "S",
                    "take M3, M5 and S out of the words, or write control = true");
        }
    }

    private void needs(Set<String> words, String why, List<String> needed) {
        List<String> lacking = new ArrayList<>(needed);
        lacking.removeAll(words);
        if (!lacking.isEmpty()) {
            part.conflict(
                    "words",
                    String.join(", ", needed) + ", for " + why,
                    "no " + String.join(", no ", lacking),
                    "add them to the words, or change " + why.substring(0, why.indexOf(' ')));
        }
    }
}
