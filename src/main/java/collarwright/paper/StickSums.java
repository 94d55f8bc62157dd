package collarwright.paper;

import collarwright.cutting.CutPiece;
import collarwright.cutting.CuttingTask;
import collarwright.cutting.SawnLength;
import collarwright.cutting.StickLayout;
import collarwright.units.Decimals;
import java.util.ArrayList;
import java.util.List;

/**
 * Where the length of one stick goes, line by line. Millimetres add up to the last digit as they are; inches are rounded
 * up or down to a ten-thousandth so that they do, too.
 */
final class StickSums {

    private record Line(String what, int count, double each, double together) {}

    private StickSums() {}

    static Grid grid(CuttingTask task, StickLayout layout, boolean inches) {
        StickLayout.Sums sums = layout.sums();
        List<Line> lines = new ArrayList<>();
        if (sums.trim() > 0) {
            lines.add(new Line("trim of the first end", 1, sums.trim(), sums.trim()));
        }
        for (StickLayout.Portion portion : layout.portions()) {
            CutPiece piece = task.pieces().get(portion.piece());
            double each = SawnLength.of(piece.length());
            lines.add(new Line(piece.id(), portion.count(), each, portion.count() * each));
        }
        double cut = SawnLength.of(task.saw().kerf());
        if (layout.wholeCuts() > 0) {
            lines.add(new Line("saw cuts", layout.wholeCuts(), cut, layout.wholeCuts() * cut));
        }
        if (layout.sums().lastCut() > 0) {
            lines.add(new Line(
                    "last cut, with the stick's end",
                    1,
                    layout.sums().lastCut(),
                    layout.sums().lastCut()));
        }
        lines.add(new Line("rest", 1, sums.remainder(), sums.remainder()));
        int ticked = (sums.trim() > 0 ? 1 : 0) + layout.portions().size();
        long[] parts = shared(lines, sums.length());
        List<List<Cell>> rows = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            Line line = lines.get(i);
            rows.add(row(line, Decimals.fixed(parts[i] / 1e4, 4), inches, i < ticked));
        }
        Line all = new Line("the stick", 1, sums.length(), sums.length());
        rows.add(row(all, Decimals.fixed(sums.length() / 25.4, 4), inches, false));
        return new Grid(
                "",
                List.of(
                        Column.words("in this order"),
                        Column.numbers("how many"),
                        Column.numbers(inches ? "each, in" : "each, mm"),
                        Column.numbers(inches ? "together, in" : "together, mm"),
                        Column.numbers(inches ? "together, mm" : "together, in"),
                        Column.marks("done")),
                rows);
    }

    private static List<Cell> row(Line line, String together, boolean inches, boolean ticked) {
        String mm = Decimals.fixed(line.together, 3);
        String each = inches ? Decimals.fixed(line.each / 25.4, 4) : Decimals.fixed(line.each, 3);
        return List.of(
                Cell.strong(line.what),
                Cell.of(Integer.toString(line.count)),
                Cell.of(each),
                Cell.strong(inches ? together : mm),
                Cell.of(inches ? mm : together),
                ticked ? Cell.tick() : Cell.of(""));
    }

    // Ten-thousandths of an inch, rounded down, and one more for those that lose most, until they add up.
    private static long[] shared(List<Line> lines, double whole) {
        long[] parts = new long[lines.size()];
        double[] lost = new double[lines.size()];
        long missing = StrictMath.round(whole / 25.4 * 1e4);
        for (int i = 0; i < parts.length; i++) {
            double exact = lines.get(i).together / 25.4 * 1e4;
            parts[i] = (long) StrictMath.floor(exact);
            lost[i] = exact - parts[i];
            missing -= parts[i];
        }
        while (missing > 0) {
            int most = 0;
            for (int i = 1; i < parts.length; i++) {
                most = lost[i] > lost[most] ? i : most;
            }
            parts[most]++;
            lost[most] = 0;
            missing--;
        }
        return parts;
    }
}
