package collarwright.paper;

import collarwright.cutting.CutPiece;
import collarwright.cutting.CutPlan;
import collarwright.cutting.SawnLength;
import collarwright.cutting.StickLayout;
import collarwright.units.Decimals;
import collarwright.units.InchFractions;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The settings of a stop block for one kind of part, long to short, each set once: all sticks that have pieces of a length
 * pass the saw at its setting before the stop is moved.
 */
final class StopBlocks {

    /** How much is laid end to end to be measured. Our choice, no source: a tape of 5 m. */
    private static final double TAPE = 5000;

    private static final int MOST_IN_A_ROW = 10;

    private final List<Stop> stops;
    private final boolean inches;

    private record Stop(int number, double length, List<String> types, int made, List<String> from) {}

    StopBlocks(CutPlan plan, List<String> names, boolean inches) {
        this.inches = inches;
        List<CutPiece> pieces = plan.task().pieces();
        List<Double> lengths = pieces.stream()
                .map(p -> rounded(p.length()))
                .distinct()
                .sorted(Comparator.reverseOrder())
                .toList();
        List<Stop> all = new ArrayList<>();
        for (double length : lengths) {
            List<String> types = new ArrayList<>();
            List<String> from = new ArrayList<>();
            int made = 0;
            for (int piece = 0; piece < pieces.size(); piece++) {
                if (!Objects.equals(rounded(pieces.get(piece).length()), length)) {
                    continue;
                }
                types.add(pieces.get(piece).id());
                for (int i = 0; i < names.size(); i++) {
                    int each = count(plan.layouts().get(i), piece);
                    made += each * plan.layouts().get(i).runs();
                    if (each > 0) {
                        from.add(names.get(i) + " " + plan.layouts().get(i).runs() + " × " + each + " "
                                + pieces.get(piece).id());
                    }
                }
            }
            if (made > 0) {
                all.add(new Stop(all.size() + 1, length, types, made, from));
            }
        }
        stops = List.copyOf(all);
    }

    private static double rounded(double length) {
        return SawnLength.of(length);
    }

    private static int count(StickLayout layout, int piece) {
        return layout.portions().stream()
                .filter(p -> p.piece() == piece)
                .mapToInt(StickLayout.Portion::count)
                .sum();
    }

    Grid settings(String what) {
        List<Column> millimetres = List.of(Column.numbers("mm"));
        List<Column> inch = List.of(
                Column.numbers("in"), Column.words("nearest 1/16 in (error)"), Column.words("nearest 1/32 in (error)"));
        List<Column> columns = joined(
                List.of(Column.numbers("stop"), Column.words("type")),
                ordered(inch, millimetres),
                List.of(Column.words("from layout, sticks × each"), Column.numbers("pieces"), Column.marks("cut")));
        List<List<Cell>> rows = new ArrayList<>();
        for (Stop stop : stops) {
            List<Cell> mm = List.of(Cell.strong(Decimals.fixed(stop.length, 3)));
            List<Cell> in = List.of(
                    Cell.strong(Decimals.fixed(stop.length / 25.4, 4)),
                    Cell.of(InchFractions.nearest(stop.length, 16).withError()),
                    Cell.of(InchFractions.nearest(stop.length, 32).withError()));
            rows.add(joined(
                    List.of(Cell.of(Integer.toString(stop.number)), Cell.strong(String.join(", ", stop.types))),
                    ordered(in, mm),
                    List.of(
                            Cell.of(String.join("\n", stop.from)),
                            Cell.strong(Integer.toString(stop.made)),
                            Cell.tick())));
        }
        return new Grid("Stops for " + what + ", long to short, each set once", columns, rows);
    }

    /**
     * Pieces laid end to end: what a stop is off counts once for each of them. Nothing is compared where a stop makes one
     * piece; empty where every stop does.
     */
    Optional<Grid> gang(String what) {
        List<List<Cell>> rows = new ArrayList<>();
        for (int i = 0; i < stops.size(); i++) {
            Stop stop = stops.get(i);
            if (stop.made == 1) {
                continue;
            }
            int row = inARow(stop);
            String next = i + 1 < stops.size() ? both(stop.length - stops.get(i + 1).length) : "";
            rows.add(List.of(
                    Cell.of(Integer.toString(stop.number)),
                    Cell.strong(String.join(", ", stop.types)),
                    Cell.of(row == 1 ? "one alone" : Integer.toString(row)),
                    Cell.strong(both(row * stop.length)),
                    Cell.blank(),
                    Cell.of(next),
                    Cell.tick()));
        }
        Grid grid = new Grid(
                "Gang check of " + what,
                List.of(
                        Column.numbers("stop"),
                        Column.words("type"),
                        Column.numbers("end to end"),
                        Column.numbers("come to"),
                        Column.words("measured"),
                        Column.numbers("longer than the next stop by"),
                        Column.marks("level")),
                rows);
        return rows.isEmpty() ? Optional.empty() : Optional.of(grid);
    }

    private static int inARow(Stop stop) {
        int fit = (int) StrictMath.floor(StrictMath.min(MOST_IN_A_ROW, TAPE / stop.length));
        return StrictMath.max(1, StrictMath.min(stop.made, fit));
    }

    private String both(double length) {
        String mm = Decimals.fixed(length, 2) + " mm";
        String in = Decimals.fixed(length / 25.4, 3) + " in";
        return inches ? in + "\n" + mm : mm + "\n" + in;
    }

    private <T> List<T> ordered(List<T> inch, List<T> millimetres) {
        return inches ? joined(inch, millimetres, List.of()) : joined(millimetres, inch, List.of());
    }

    private static <T> List<T> joined(List<T> first, List<T> second, List<T> third) {
        return Stream.of(first, second, third).flatMap(List::stream).toList();
    }
}
