package collarwright.rehearsal;

import collarwright.testing.Seeds;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;

/**
 * One way of spoiling a program's text.
 *
 * @param rule what it breaks
 * @param name for people
 * @param change spoils the lines; the line that was changed, from 0, or empty if there is nothing of its kind
 */
record Mutation(String rule, String name, BiFunction<Seeds, List<String>, Optional<Integer>> change) {

    /** A spoilt text. */
    record Spoilt(Mutation mutation, int line, String before, String after, String text) {}

    /** Spoils a text; empty if that changes no letter of it. */
    Optional<Spoilt> apply(Seeds draw, String text) {
        List<String> lines = new ArrayList<>(text.lines().toList());
        Optional<Integer> at = change.apply(draw, lines);
        String end = text.contains("\r\n") ? "\r\n" : "\n";
        String spoilt = String.join(end, lines) + end;
        if (at.isEmpty() || spoilt.equals(text)) {
            return Optional.empty();
        }
        int line = at.orElseThrow();
        List<String> old = text.lines().toList();
        String before = line < old.size() ? old.get(line) : "";
        String after = line < lines.size() ? lines.get(line) : "";
        return Optional.of(new Spoilt(this, line + 1, before, after, spoilt));
    }

    static List<Mutation> all() {
        List<Mutation> all = new ArrayList<>();
        words(all);
        letters(all);
        lines(all);
        cutters(all);
        for (String word : List.of("G28", "G53 G0 Z0.000", "T1 M6", "G43 H1", "G91", "M8", "G2 X1.000 Y0.000 F1.0")) {
            all.add(new Mutation("words", "a forbidden " + word, (draw, lines) -> insert(draw, lines, word)));
        }
        all.addAll(RapidMutation.all());
        return all;
    }

    /** Ways of spoiling how a cutter comes in and how Z is set for it. */
    private static void cutters(List<Mutation> all) {
        String length = "^(?:N\\d+ )?G0 G43 H\\d+";
        all.add(word("cutters", "another length", "G43 H(\\d)", 1, m -> "G43 H" + (Integer.parseInt(m.group(1)) + 1)));
        all.add(word("cutters", "no length", "G43 H\\d+ ", 0, m -> ""));
        all.add(new Mutation("cutters", "a second length", (draw, lines) -> {
            Optional<Integer> at = draw(draw, lines, Pattern.compile(length));
            at.ifPresent(i -> lines.add(i + 1, after(lines.get(i)) + "G43 H" + draw.whole(1, 4)));
            return at;
        }));
        all.add(comment("cutters", "a touch stop left out", "\\(Set Z anew.*\\)", "(Go on)"));
        all.add(comment("cutters", "another height in a touch stop", "(Set Z anew.* Z )\\d", "$19"));
        all.add(comment("cutters", "another height in the head", "(Z0 .*tip on [a-z ]+ is Z )\\d", "$19"));
        all.add(comment(
                "cutters", "another cutter told", "\\(CUTTER (\\d+), .*", "(CUTTER $1, TW-1, twist drill 1 mm)"));
    }

    /** The N number between a line and the next, where lines have numbers. */
    private static String after(String line) {
        Matcher number = Pattern.compile("^N(\\d+) ").matcher(line);
        return number.find() ? "N" + (Integer.parseInt(number.group(1)) + 1) + " " : "";
    }

    private static Mutation comment(String rule, String name, String pattern, String with) {
        Pattern compiled = Pattern.compile(pattern);
        return new Mutation(rule, name, (draw, lines) -> {
            List<Integer> all = IntStream.range(0, lines.size())
                    .filter(i -> compiled.matcher(lines.get(i)).find())
                    .boxed()
                    .toList();
            Optional<Integer> at = all.isEmpty() ? Optional.empty() : Optional.of(draw.oneOf(all));
            at.ifPresent(i -> lines.set(i, compiled.matcher(lines.get(i)).replaceFirst(with)));
            return at;
        });
    }

    /** Ways of spoiling arcs. */
    static List<Mutation> arcs() {
        List<Mutation> all = new ArrayList<>();
        all.add(moved("arcs", "a centre moved a little along X", "I(-?\\d+\\.\\d+)", 3));
        all.add(moved("arcs", "a centre moved along X", "I(-?\\d+\\.\\d+)", 500));
        all.add(moved("arcs", "a centre moved across", "J(-?\\d+\\.\\d+)", 500));
        all.add(moved("arcs", "another end along X", "G3 X(-?\\d+\\.\\d+)", 50));
        all.add(moved("arcs", "another pitch", "^(?:N\\d+ )?G3 .* Z(-?\\d+\\.\\d+)", 900));
        all.add(word("arcs", "the other way round", "G3", 0, m -> "G2"));
        all.add(word("arcs", "straight for an arc", "G3", 0, m -> "G1"));
        all.add(word("arcs", "no centre", " I-?\\d+\\.\\d+ J-?\\d+\\.\\d+", 0, m -> ""));
        all.add(word("arcs", "a radius", "I-?(\\d+\\.\\d+) J-?\\d+\\.\\d+", 1, m -> "R" + m.group(1)));
        all.add(word("arcs", "no depth", " Z-?\\d+\\.\\d+ I", 0, m -> " I"));
        all.add(gone("arcs", "a turn left out", "^(?:N\\d+ )?G3 "));
        all.add(gone("arcs", "a straight cut left out", "^(?:N\\d+ )?G1 X"));
        all.add(new Mutation("arcs", "a turn twice", (draw, lines) -> {
            Optional<Integer> at = draw(draw, lines, Pattern.compile("^(?:N\\d+ )?G3 "));
            at.ifPresent(i -> lines.add(i, lines.get(i)));
            return at;
        }));
        return all;
    }

    private static void words(List<Mutation> all) {
        all.add(moved("place", "a hole moved a little along X", "X(-?\\d+\\.\\d+)", 3));
        all.add(moved("place", "a hole moved along X", "X(-?\\d+\\.\\d+)", 500));
        all.add(moved("place", "a hole moved across", "Y(-?\\d+\\.\\d+)", 500));
        all.add(moved("place", "a hole turned a little", "A(-?\\d+\\.\\d+)", 3));
        all.add(moved("place", "a hole turned", "A(-?\\d+\\.\\d+)", 500));
        all.add(moved("depth", "a depth changed", "^(?:N\\d+ )?G(?:1|98 .*) ?Z(-?\\d+\\.\\d+)", 500));
        all.add(word("depth", "R below the crown", "R(\\d+\\.\\d+)", 1, m -> "R" + scaled(m.group(1), 0.85)));
        all.add(word("pecks", "Q doubled", "Q(\\d+\\.\\d+)", 1, m -> "Q" + scaled(m.group(1), 2)));
        all.add(word("pecks", "Q a third", "Q(\\d+\\.\\d+)", 1, m -> "Q" + scaled(m.group(1), 0.33)));
        all.add(word("units", "the other unit", "G2([01])", 1, m -> m.group(1).equals("0") ? "G21" : "G20"));
        all.add(word("cycles", "G99", "G98", 0, m -> "G99"));
        all.add(word("cycles", "G81 for G83", "G83", 0, m -> "G81"));
        all.add(word("modes", "no G90", "G90 ", 0, m -> ""));
        all.add(word("modes", "no G94", "G94 ", 0, m -> ""));
        all.add(word("modes", "no G17", " G17", 0, m -> ""));
        all.add(word("drive", "another feed", "F(\\d+\\.\\d+)", 1, m -> "F" + scaled(m.group(1), 1.3)));
        all.add(word("drive", "no feed", " F\\d+\\.\\d+", 0, m -> ""));
        all.add(word("drive", "feed 0", "F\\d+\\.\\d+", 0, m -> "F0.0"));
        all.add(word("drive", "another speed", "S(\\d+)", 1, m -> "S" + m.group(1) + "0"));
        all.add(word("drive", "a short dwell", "P\\d+\\.\\d+", 0, m -> "P0.10"));
        all.add(word(
                "motion",
                "a rapid for a cut",
                "^(N\\d+ )?G1 ",
                0,
                m -> m.group().replace("G1", "G0")));
        all.add(word(
                "motion",
                "a cut for a rapid",
                "^(N\\d+ )?G0 ",
                0,
                m -> m.group().replace("G0", "G1")));
        all.add(word("motion", "two axes", "G0 X", 0, m -> "G0 Z1.000 X"));
    }

    private static void letters(List<Mutation> all) {
        all.add(word("letters", "minus zero", "Y0\\.", 0, m -> "Y-0."));
        all.add(word("letters", "an exponent", "([XZ]\\d+\\.\\d+)", 1, m -> m.group(1) + "E0"));
        all.add(word("letters", "a comma", "([XZAF]\\d+)\\.", 1, m -> m.group(1) + ","));
        all.add(word("letters", "no point", "Y0\\.0+", 0, m -> "Y0"));
        all.add(word("letters", "two signs", "X(\\d)", 1, m -> "X--" + m.group(1)));
        all.add(word("letters", "a tab", "G0 ", 0, m -> "G0\t"));
        all.add(word("letters", "small letters", "G0 X", 0, m -> "g0 x"));
        all.add(word("letters", "two blanks", "G0 ", 0, m -> "G0  "));
        all.add(word("letters", "block delete", "^G0 ", 0, m -> "/G0 "));
        all.add(new Mutation("letters", "a byte order mark", (draw, lines) -> {
            lines.set(0, "\uFEFF" + lines.get(0));
            return Optional.of(0);
        }));
        all.add(new Mutation("comments", "nested", (draw, lines) -> insert(draw, lines, "(a (b) c)")));
        all.add(new Mutation("comments", "open", (draw, lines) -> insert(draw, lines, "(a")));
        all.add(new Mutation("comments", "a message", (draw, lines) -> insert(draw, lines, "(MSG, hello)")));
        all.add(new Mutation("layout", "a percent sign", (draw, lines) -> insert(draw, lines, "%")));
        all.add(new Mutation("layout", "a blank line", (draw, lines) -> insert(draw, lines, "")));
        all.add(new Mutation("layout", "an N number", (draw, lines) -> insert(draw, lines, "N7 G0 Y0.000")));
        all.add(new Mutation(
                "layout", "a long line", (draw, lines) -> insert(draw, lines, "(" + "X".repeat(90) + ")")));
        all.add(new Mutation("layout", "CR LF", (draw, lines) -> change(draw, lines, "$", 0, m -> "\r")));
    }

    private static void lines(List<Mutation> all) {
        all.add(gone("retracts", "a retract left out", "^(?:N\\d+ )?G0 Z"));
        all.add(gone("retracts", "a Z line left out", "^(?:N\\d+ )?G[01] Z"));
        all.add(gone("retracts", "a cut left out", "^(?:N\\d+ )?(?:G1|G98) "));
        all.add(gone("cycles", "no G80", "^(?:N\\d+ )?G80"));
        all.add(gone("drive", "no M3", "M3$"));
        all.add(gone("drive", "no M5", "M5$"));
        all.add(gone("drive", "no dwell", "G4 "));
        all.add(gone("end", "no end", "M(2|30)$"));
        all.add(gone("lines", "a line left out", ""));
        all.add(new Mutation("turns", "turning low", (draw, lines) -> {
            Optional<Integer> at = draw(draw, lines, Pattern.compile("^(?:N\\d+ )?G0 A"));
            at.ifPresent(i -> lines.add(i, "G0 Z1.000"));
            return at;
        }));
        all.add(new Mutation("lines", "a line twice", (draw, lines) -> {
            int at = draw.whole(0, lines.size() - 1);
            lines.add(at, lines.get(at));
            return Optional.of(at);
        }));
        all.add(new Mutation("lines", "neighbours exchanged", (draw, lines) -> {
            int at = draw.whole(0, lines.size() - 2);
            lines.add(at, lines.remove(at + 1));
            return Optional.of(at);
        }));
        all.add(new Mutation("lines", "two lines exchanged", (draw, lines) -> {
            int at = draw.whole(0, lines.size() - 1);
            int other = draw.whole(0, lines.size() - 1);
            String kept = lines.get(at);
            lines.set(at, lines.get(other));
            lines.set(other, kept);
            return Optional.of(at);
        }));
    }

    /** A number moved by steps of its own last decimal, to either side. */
    private static Mutation moved(String rule, String name, String pattern, int steps) {
        return new Mutation(
                rule, name, (draw, lines) -> change(draw, lines, pattern, 1, m -> by(m, draw.coin() ? steps : -steps)));
    }

    private static String by(MatchResult match, int steps) {
        String number = match.group(1);
        int decimals = number.length() - number.indexOf('.') - 1;
        double changed = Double.parseDouble(number) + steps * StrictMath.pow(10, -decimals);
        return match.group().substring(0, match.group().length() - number.length())
                + collarwright.units.Decimals.fixed(changed, decimals);
    }

    private static String scaled(String number, double factor) {
        int decimals = number.length() - number.indexOf('.') - 1;
        return collarwright.units.Decimals.fixed(Double.parseDouble(number) * factor, decimals);
    }

    private interface Replacing extends java.util.function.Function<MatchResult, String> {}

    private static Mutation word(String rule, String name, String pattern, int group, Replacing with) {
        return new Mutation(rule, name, (draw, lines) -> change(draw, lines, pattern, group, with));
    }

    private static Mutation gone(String rule, String name, String pattern) {
        return new Mutation(rule, name, (draw, lines) -> {
            Optional<Integer> at = draw(draw, lines, Pattern.compile(pattern));
            at.ifPresent(i -> lines.remove((int) i));
            return at;
        });
    }

    private static Optional<Integer> change(Seeds draw, List<String> lines, String pattern, int group, Replacing with) {
        Pattern compiled = Pattern.compile(pattern);
        Optional<Integer> at = draw(draw, lines, compiled);
        at.ifPresent(i -> {
            Matcher matcher = compiled.matcher(lines.get(i));
            if (!matcher.find() || matcher.groupCount() < group) {
                throw new IllegalStateException(pattern);
            }
            String line = lines.get(i);
            lines.set(
                    i,
                    line.substring(0, matcher.start())
                            + with.apply(matcher.toMatchResult())
                            + line.substring(matcher.end()));
        });
        return at;
    }

    private static Optional<Integer> insert(Seeds draw, List<String> lines, String line) {
        int at = draw.whole(1, lines.size() - 1);
        lines.add(at, line);
        return Optional.of(at);
    }

    /** A drawn line of code that holds a pattern. */
    private static Optional<Integer> draw(Seeds draw, List<String> lines, Pattern pattern) {
        List<Integer> all = IntStream.range(0, lines.size())
                .filter(i -> pattern.pattern().isEmpty() || !lines.get(i).startsWith("("))
                .filter(i -> pattern.matcher(lines.get(i)).find())
                .boxed()
                .toList();
        return all.isEmpty() ? Optional.empty() : Optional.of(draw.oneOf(all));
    }
}
