package collarwright.pack;

import collarwright.drawing.WrapHole;
import collarwright.drawing.WrapTemplate;
import collarwright.tooling.Hole;
import collarwright.units.Angles;
import collarwright.units.Decimals;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/**
 * Prints where the holes of one pattern lie, for spreadsheets and other programs. Units stand in the heads, decimals
 * are dots, and no text can be taken for a date or a formula.
 *
 * <p>Source: RFC 4180, Common Format and MIME Type for Comma-Separated Values (CSV) Files, section 2.
 */
public final class HoleTableCsv {
    private static final String END = "\r\n";
    private static final List<String> HEADS = List.of(
            "hole",
            "azimuth_deg",
            "azimuth_dm",
            "arc_on_od_mm",
            "arc_on_template_mm",
            "from_left_end_mm",
            "height_mm",
            "cutter",
            "cutter_marked",
            "as_drilled_mm",
            "outline_width_mm",
            "outline_height_mm");

    private HoleTableCsv() {}

    /**
     * Prints the table of a template.
     *
     * @param template the pattern on its paper
     * @return one line of heads and one for each hole in the order of their numbers, ending in CR LF, for UTF-8
     */
    public static String print(WrapTemplate template) {
        StringBuilder out = new StringBuilder(line(HEADS));
        template.holes().forEach(hole -> out.append(line(row(hole))));
        return out.toString();
    }

    private static List<String> row(WrapHole on) {
        Hole hole = on.hole();
        List<String> cells = new ArrayList<>();
        cells.add(Integer.toString(hole.number()));
        cells.add(Decimals.fixed(Angles.degrees(hole.azimuth()), 4));
        // Without the degree sign: programs that take the file for another encoding would spoil it.
        cells.add(Angles.degreesMinutes(hole.azimuth()).replace("°", " deg").replace("'", " min"));
        cells.add(Decimals.fixed(on.arcOnCollar(), 3));
        cells.add(Decimals.fixed(on.arcOnPaper(), 3));
        cells.add(Decimals.fixed(on.fromLeftEnd(), 3));
        cells.add(Decimals.fixed(hole.height(), 3));
        cells.add(harmless(hole.cutter().id()));
        cells.add(harmless(hole.cutter().marked()));
        cells.add(Decimals.fixed(hole.diameter(), 3));
        cells.add(Decimals.fixed(2 * on.outline().halfWidth(), 3));
        cells.add(Decimals.fixed(hole.diameter(), 3));
        return cells;
    }

    // A spreadsheet runs what begins like a formula; an apostrophe makes it text.
    private static String harmless(String text) {
        return !text.isBlank() && "=+-@＝＋－＠\t\r".indexOf(text.strip().charAt(0)) >= 0 ? "'" + text : text;
    }

    private static String line(List<String> cells) {
        return cells.stream().map(HoleTableCsv::quoted).collect(Collectors.joining(",")) + END;
    }

    private static String quoted(String cell) {
        boolean needed = cell.chars().anyMatch(c -> c == ',' || c == '"' || c == '\n' || c == '\r');
        return needed ? '"' + cell.replace("\"", "\"\"") + '"' : cell;
    }
}
