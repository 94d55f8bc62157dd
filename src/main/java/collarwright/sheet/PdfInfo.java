package collarwright.sheet;

import collarwright.drawing.Box;
import collarwright.drawing.Heading;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

/**
 * A sheet's notes and table as text, side by side where the page is wide enough.
 *
 * @param notes the lines of each
 * @param table rows, the first one being the heads
 * @param columns widths of the table's columns
 * @param beside whether the table stands to the right of the notes
 */
record PdfInfo(List<List<String>> notes, List<List<String>> table, List<Double> columns, boolean beside) {
    private static final double POINTS = PdfText.LEAST_POINTS;
    private static final double PITCH = PdfFrame.PITCH;
    private static final double COLUMN_GAP = 4;
    private static final double GAP = 8;
    private static final double NOTE_GAP = 1;
    private static final double LEAST_NOTES = 80;

    static PdfInfo of(Heading heading, PdfText text, double room, boolean joined) {
        List<List<String>> table = heading.table().stream()
                .map(row -> row.stream()
                        .map(cell -> PdfText.inWritingOrder(text.sayable(cell)))
                        .toList())
                .toList();
        List<Double> columns = columns(table, text);
        double beside = room - GAP - tableWidth(columns);
        boolean together = !table.isEmpty() && beside >= LEAST_NOTES;
        List<String> sentences = new ArrayList<>(heading.notes());
        if (joined) {
            sentences.add("Join the pages so that crosses with the same letter meet.");
        }
        List<List<String>> notes = sentences.stream()
                .map(note -> text.lines(note, POINTS, together ? beside : room))
                .toList();
        return new PdfInfo(notes, table, columns, together);
    }

    private static List<Double> columns(List<List<String>> table, PdfText text) {
        List<Double> widths = new ArrayList<>();
        for (int i = 0; !table.isEmpty() && i < table.get(0).size(); i++) {
            int column = i;
            widths.add(table.stream()
                    .mapToDouble(row -> text.width(row.get(column), POINTS))
                    .max()
                    .orElse(0));
        }
        return List.copyOf(widths);
    }

    private static double tableWidth(List<Double> columns) {
        return columns.stream().mapToDouble(w -> w + COLUMN_GAP).sum() - COLUMN_GAP;
    }

    double height() {
        double rows = table.size() * PITCH;
        return (beside ? StrictMath.max(notesHeight(), rows) : notesHeight() + GAP / 2 + rows) + 1;
    }

    private double notesHeight() {
        return notes.stream()
                .mapToDouble(lines -> lines.size() * PITCH + NOTE_GAP)
                .sum();
    }

    /** Writes all of it from the top of a box down. */
    void draw(PdfPen pen, Box box) throws IOException {
        double y = box.top();
        for (List<String> note : notes) {
            for (String line : note) {
                y -= PITCH;
                pen.write(line, POINTS, box.left(), y);
            }
            y -= NOTE_GAP;
        }
        double left = beside ? box.right() - tableWidth(columns) : box.left();
        double top = beside ? box.top() : y - GAP / 2;
        for (int row = 0; row < table.size(); row++) {
            row(pen, table.get(row), left, top - (row + 1) * PITCH);
        }
        if (!table.isEmpty()) {
            double rule = top - PITCH - 1.3;
            pen.width(0.2);
            pen.line(left, rule, left + tableWidth(columns), rule);
        }
    }

    private void row(PdfPen pen, List<String> cells, double left, double y) throws IOException {
        double right = left;
        for (int i = 0; i < cells.size(); i++) {
            right += columns.get(i);
            pen.writeRight(cells.get(i), POINTS, right, y);
            right += COLUMN_GAP;
        }
    }
}
