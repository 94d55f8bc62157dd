package collarwright.frame;

import collarwright.finding.Code;
import collarwright.units.LengthUnit;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads a table of nodes and members: rows {@code node,ID,x,y,z} and {@code member,ID,ID}, in any order as long as a node
 * stands before its members; columns are parted by commas or semicolons, and a head such as {@code x (mm)} names the unit.
 *
 * <p>Source of the quoting: IETF RFC 4180, Common Format and MIME Type for CSV Files, 2005.
 */
final class CsvFrameReader {

    private static final Pattern UNIT = Pattern.compile("\\bx\\s*\\(([a-z]+)\\)");

    private final RawFrame raw;
    private final Lines lines;
    private final Map<String, Integer> nodes = new HashMap<>();
    private int columns;

    CsvFrameReader(String file, byte[] bytes) {
        this.raw = new RawFrame(file, true);
        this.lines = new Lines(bytes, StandardCharsets.UTF_8);
    }

    RawFrame read() {
        raw.nodesAreDeclared();
        while (lines.next()) {
            String line = lines.line();
            if (!line.isBlank()) {
                row(filled(cells(line)), line);
            }
        }
        return raw;
    }

    private void row(List<String> cells, String line) {
        switch (cells.get(0).toLowerCase(Locale.ROOT)) {
            case "node" -> node(cells, line);
            case "member" -> member(cells, line);
            default -> head(cells, line);
        }
    }

    // Spreadsheets fill rows up with empty cells.
    private static List<String> filled(List<String> cells) {
        int size = cells.size();
        while (size > 1 && cells.get(size - 1).isEmpty()) {
            size--;
        }
        return cells.subList(0, size);
    }

    // Columns that the head names, such as remarks, may hold anything; a number with a comma makes columns of its own.
    private boolean fits(List<String> cells, int least) {
        return cells.size() >= least && cells.size() <= StrictMath.max(least, columns);
    }

    private void head(List<String> cells, String line) {
        columns = StrictMath.max(columns, cells.size());
        Matcher unit = UNIT.matcher(line.toLowerCase(Locale.ROOT));
        if (raw.points() > 0) {
            raw.stop(
                    Code.FRAME_SYNTAX,
                    raw.at(lines.number()),
                    "a row node,ID,x,y,z or member,ID,ID",
                    line,
                    "write node or member in its first column");
        } else if (unit.find()) {
            LengthUnit.parse(unit.group(1)).ifPresent(raw::unit);
        }
    }

    private void node(List<String> cells, String line) {
        double[] at = new double[3];
        boolean fits = fits(cells, 5) && !cells.get(1).isEmpty();
        for (int i = 0; i < 3 && fits; i++) {
            OptionalDouble number = Numbers.real(cells.get(i + 2));
            fits = number.isPresent();
            at[i] = number.orElse(0);
        }
        if (!fits) {
            raw.stop(
                    Code.FRAME_SYNTAX,
                    raw.at(lines.number()),
                    "node, a name and three numbers",
                    line,
                    "write the row again; a decimal point, no comma",
                    "columns of your own need a name in the head");
        } else if (nodes.containsKey(cells.get(1))) {
            raw.stop(
                    Code.FRAME_SYNTAX,
                    raw.at(lines.number()),
                    "a name that no other node has",
                    cells.get(1) + ", which stands in line " + raw.pointPlace(nodes.getOrDefault(cells.get(1), 0))
                            + " too",
                    "give it another name");
        } else {
            nodes.put(cells.get(1), raw.point(at[0], at[1], at[2], lines.number()));
        }
    }

    private void member(List<String> cells, String line) {
        boolean fits = fits(cells, 3);
        Optional<Integer> a = fits ? Optional.ofNullable(nodes.get(cells.get(1))) : Optional.empty();
        Optional<Integer> b = fits ? Optional.ofNullable(nodes.get(cells.get(2))) : Optional.empty();
        if (a.isEmpty() || b.isEmpty()) {
            raw.stop(
                    Code.FRAME_SYNTAX,
                    raw.at(lines.number()),
                    "member and the names of two nodes that stand above",
                    line,
                    "check the names; nodes have to stand before their members");
        } else {
            raw.line(a.get(), b.get(), lines.number());
        }
    }

    private static List<String> cells(String line) {
        char parting = line.indexOf(';') >= 0 ? ';' : ',';
        List<String> cells = new ArrayList<>();
        StringBuilder cell = new StringBuilder();
        boolean quoted = false;
        for (int i = 0; i < line.length(); i++) {
            char c = line.charAt(i);
            if (c == '"') {
                boolean twice = quoted && i + 1 < line.length() && line.charAt(i + 1) == '"';
                if (twice) {
                    cell.append(c);
                    i++;
                } else {
                    quoted = !quoted;
                }
            } else if (c == parting && !quoted) {
                cells.add(cell.toString().strip());
                cell.setLength(0);
            } else {
                cell.append(c);
            }
        }
        cells.add(cell.toString().strip());
        return cells;
    }
}
