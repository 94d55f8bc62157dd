package collarwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import collarwright.testing.Poppler;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What a person reads in {@code struts/saw.pdf}, by the text of an outside program and by nothing else.
 *
 * @param sticks every layout with its lines
 * @param stops every setting of the stop block
 */
record SawPapers(List<Stick> sticks, List<Stop> stops) {

    private static final String LENGTH = "(\\d+\\.\\d+)";
    private static final Pattern LAYOUT =
            Pattern.compile("Layout (U[A-Z]+): (?:(\\d+) sticks? of|offcut (\\S+),) \\d.*");
    private static final Pattern LINE =
            Pattern.compile("(\\S.*?)\\s+(\\d+)\\s+" + LENGTH + "\\s+" + LENGTH + "\\s+" + LENGTH);
    private static final Pattern FROM = Pattern.compile("(U[A-Z]+) (\\d+) × (\\d+) ([A-Za-z]+)");
    private static final Pattern STOP = Pattern.compile("\\d+ ([A-Za-z]+)\\b.*?\\s" + LENGTH + "\\s+.*");
    private static final Pattern FRACTION = Pattern.compile("(?<![\\d./])(\\d+(?:-\\d+/\\d+)?|\\d+/\\d+) in(?![a-z])");
    private static final Pattern ERROR = Pattern.compile("\\(([+-]\\d+\\.\\d{2}) mm\\)");
    private static final Pattern DECIMALS = Pattern.compile("(?<![\\d./+-])\\d+\\.(\\d{3}|\\d{4})(?!\\d)");

    SawPapers {
        sticks = List.copyOf(sticks);
        stops = List.copyOf(stops);
    }

    /** A line of a stick's sum; inches where the paper leads with inches. */
    record Line(String what, int count, BigDecimal each, BigDecimal mm, BigDecimal in) {}

    /** Sticks that are cut alike: lines from the first end on, the stick's own line last. */
    record Stick(String layout, int runs, String offcut, boolean inches, List<Line> lines) {
        Line whole() {
            return lines.get(lines.size() - 1);
        }

        List<Line> parts() {
            return lines.subList(0, lines.size() - 1);
        }

        List<Line> pieces() {
            return parts().stream()
                    .filter(l -> l.what.matches("[A-Za-z]+") && !l.what.equals("rest"))
                    .toList();
        }
    }

    /** Pieces that a stop gives of some sticks. */
    record From(String layout, int runs, int each, String piece) {}

    /** A setting of the stop block. */
    record Stop(
            String kind,
            BigDecimal mm,
            BigDecimal in,
            List<From> from,
            List<String> fractions,
            List<BigDecimal> errors) {}

    static SawPapers read(Path file) {
        List<String> lines = Poppler.text(file).lines().map(String::strip).toList();
        return new SawPapers(sticks(lines), stops(lines));
    }

    private static List<Stick> sticks(List<String> lines) {
        List<Stick> sticks = new ArrayList<>();
        Matcher head = LAYOUT.matcher("");
        List<Line> open = new ArrayList<>();
        boolean inches = false;
        boolean in = false;
        for (String line : lines) {
            Matcher layout = LAYOUT.matcher(line);
            Matcher row = LINE.matcher(line);
            if (layout.matches()) {
                head = layout;
                in = true;
                open = new ArrayList<>();
            } else if (line.startsWith("in this order")) {
                inches = line.contains("each, in");
            } else if (in && row.matches()) {
                BigDecimal first = new BigDecimal(row.group(4));
                BigDecimal second = new BigDecimal(row.group(5));
                open.add(new Line(
                        row.group(1),
                        Integer.parseInt(row.group(2)),
                        new BigDecimal(row.group(3)),
                        inches ? second : first,
                        inches ? first : second));
                if (row.group(1).equals("the stick")) {
                    int runs = head.group(2) == null ? 1 : Integer.parseInt(head.group(2));
                    String offcut = head.group(3) == null ? "" : head.group(3);
                    sticks.add(new Stick(head.group(1), runs, offcut, inches, List.copyOf(open)));
                    in = false;
                }
            }
        }
        return sticks;
    }

    // Rows of a table of stops go on below for as many layouts as they name.
    private static List<Stop> stops(List<String> lines) {
        List<Stop> stops = new ArrayList<>();
        String kind = "";
        List<From> from = new ArrayList<>();
        List<String> fractions = new ArrayList<>();
        List<BigDecimal> errors = new ArrayList<>();
        for (String line : lines) {
            if (line.startsWith("Stops for ")) {
                kind = line.substring(10, line.indexOf(','));
            } else if (line.startsWith("Gang check")) {
                kind = "";
            }
            Matcher row = STOP.matcher(line);
            if (!kind.isEmpty() && row.matches()) {
                from = new ArrayList<>();
                fractions = new ArrayList<>();
                errors = new ArrayList<>();
                Map<Integer, BigDecimal> shown = decimals(line);
                assertThat(shown).as(line).containsKeys(3, 4);
                stops.add(new Stop(kind, shown.get(3), shown.get(4), from, fractions, errors));
            }
            if (!kind.isEmpty() && !line.contains("nearest")) {
                List<From> into = from;
                FRACTION.matcher(line).results().map(f -> f.group(1)).forEach(fractions::add);
                ERROR.matcher(line)
                        .results()
                        .map(e -> new BigDecimal(e.group(1)))
                        .forEach(errors::add);
                FROM.matcher(line)
                        .results()
                        .forEach(f -> into.add(new From(
                                f.group(1), Integer.parseInt(f.group(2)), Integer.parseInt(f.group(3)), f.group(4))));
            }
        }
        return stops;
    }

    // Millimetres have three decimals, inches four.
    private static Map<Integer, BigDecimal> decimals(String line) {
        Map<Integer, BigDecimal> found = new LinkedHashMap<>();
        DECIMALS.matcher(line).results().forEach(d -> found.put(d.group(1).length(), new BigDecimal(d.group())));
        return found;
    }
}
