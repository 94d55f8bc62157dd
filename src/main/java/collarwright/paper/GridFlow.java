package collarwright.paper;

import collarwright.paper.PageItem.Area;
import collarwright.picture.Ink;
import java.util.ArrayList;
import java.util.List;

/** Sets one table: rows stay whole, the head comes again on every page. */
final class GridFlow {

    private static final double ABOVE = 1.1;
    private static final double TIGHT_ABOVE = 0.6;
    private static final double BELOW = 1.5;
    private static final double TIGHT_BELOW = 1;
    /** Height of a box to write in, mm: a line of squared paper; with more a pattern's checks run over their page. */
    private static final double BOX = 5;

    /** A table up to this height is not split. */
    private static final double WHOLE = 150;

    private static final double TICK = 4.6;

    private final Flow flow;
    private final Grid grid;
    private final Wrapping wrapping;
    private final double[] widths;

    private final boolean captioned;
    private final double above;
    private final double below;

    GridFlow(Flow flow, Grid grid, boolean captioned) {
        this.flow = flow;
        this.captioned = captioned;
        this.above = flow.tight() ? TIGHT_ABOVE : ABOVE;
        this.below = flow.tight() ? TIGHT_BELOW : BELOW;
        this.grid = grid;
        this.wrapping = new Wrapping(flow.letters(), Flow.BODY);
        this.widths = new ColumnWidths(wrapping).share(grid, Flow.WIDTH);
    }

    /** About what a table of rows with one line each takes on the page where it begins. */
    static double keeping(Grid grid) {
        double row = Flow.LINE + ABOVE + BELOW;
        double all = 3 * Flow.LINE + (grid.rows().size() + 1) * row;
        return all <= WHOLE ? all : 3 * Flow.LINE + 2 * row;
    }

    void run() {
        List<Cell> titles =
                grid.columns().stream().map(c -> Cell.strong(c.title())).toList();
        double headHeight = height(lines(titles), titles);
        double first = grid.rows().isEmpty()
                ? 0
                : height(lines(grid.rows().get(0)), grid.rows().get(0));
        double all = headHeight
                + grid.rows().stream().mapToDouble(r -> height(lines(r), r)).sum();
        flow.need(caption().size() * Flow.LINE + 2 + (all <= WHOLE ? all : headHeight + first));
        for (String line : caption()) {
            flow.words(line, Flow.LEFT, Flow.Look.plain());
            flow.gap(Flow.LINE);
        }
        flow.gap(1);
        head(titles);
        for (List<Cell> row : grid.rows()) {
            List<List<String>> lines = lines(row);
            double height = height(lines, row);
            double before = flow.y();
            flow.need(height);
            if (flow.y() < before) {
                head(titles);
            }
            row(row, lines, height);
            rule(Ink.RULE, 0.25);
        }
        rule(Ink.INK, 0.25);
        flow.gap(3);
    }

    private List<String> caption() {
        return captioned ? wrapping.lines(grid.caption(), Flow.WIDTH) : List.of();
    }

    private void head(List<Cell> titles) {
        List<List<String>> lines = lines(titles);
        double height = height(lines, titles);
        flow.add(new PageItem.Fill(flow.area(Flow.LEFT, Flow.WIDTH, height), Ink.PALE));
        rule(Ink.INK, 0.25);
        row(titles, lines, height);
        rule(Ink.INK, 0.25);
    }

    private void rule(Ink ink, double width) {
        flow.add(new PageItem.Rule(flow.area(Flow.LEFT, Flow.WIDTH, width), ink));
    }

    private List<List<String>> lines(List<Cell> row) {
        List<List<String>> lines = new ArrayList<>();
        for (int i = 0; i < row.size(); i++) {
            lines.add(wrapping.lines(row.get(i).text(), widths[i] - 2 * ColumnWidths.PAD));
        }
        return lines;
    }

    private double height(List<List<String>> lines, List<Cell> row) {
        double most = 0;
        for (int i = 0; i < row.size(); i++) {
            double inside =
                    row.get(i).kind() == Cell.Kind.BLANK ? BOX : lines.get(i).size() * Flow.LINE;
            most = StrictMath.max(most, inside);
        }
        return most + above + below;
    }

    private void row(List<Cell> row, List<List<String>> lines, double height) {
        double x = Flow.LEFT;
        flow.gap(above);
        for (int i = 0; i < row.size(); i++) {
            field(row.get(i), lines.get(i), grid.columns().get(i).side(), new Area(x, flow.y(), widths[i], height));
            x += widths[i];
        }
        flow.gap(height - above);
    }

    private void field(Cell cell, List<String> lines, Column.Side side, Area area) {
        double middle = area.x() + area.width() / 2;
        switch (cell.kind()) {
            case BLANK ->
                flow.add(new PageItem.Frame(
                        new Area(area.x() + ColumnWidths.PAD, area.y(), area.width() - 2 * ColumnWidths.PAD, BOX)));
            case TICK -> flow.add(new PageItem.Frame(new Area(middle - TICK / 2, area.y(), TICK, TICK)));
            default -> {
                Flow.Look look = cell.kind() == Cell.Kind.STRONG ? Flow.Look.strong() : Flow.Look.plain();
                for (String line : lines) {
                    flow.words(line, start(line, side, area), look);
                    flow.gap(Flow.LINE);
                }
                flow.gap(-lines.size() * Flow.LINE);
            }
        }
    }

    private double start(String line, Column.Side side, Area area) {
        double free = area.width() - 2 * ColumnWidths.PAD - wrapping.width(line);
        double shift = switch (side) {
            case LEFT -> 0;
            case RIGHT -> free;
            case MIDDLE -> free / 2;
        };
        return area.x() + ColumnWidths.PAD + shift;
    }
}
