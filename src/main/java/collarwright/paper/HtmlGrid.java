package collarwright.paper;

import collarwright.sheet.XmlText;
import java.util.List;

/** A table as it stands in a page; on a phone each row becomes a block with the heads beside its fields. */
final class HtmlGrid {

    private static final int NARROW = 3;

    /** Lines up to so many letters are not broken. */
    private static final int SHORT = 24;

    private HtmlGrid() {}

    /** A table with its caption. */
    static String of(Grid grid) {
        return table(grid, "", "<caption>" + XmlText.escaped(grid.caption()) + "</caption>\n");
    }

    /** A table below a heading that says as much as its caption. */
    static String bare(Grid grid) {
        return table(grid, " aria-label=\"" + XmlText.escaped(grid.caption()) + "\"", "");
    }

    private static String table(Grid grid, String label, String caption) {
        StringBuilder html = new StringBuilder();
        html.append("<table role=\"table\"")
                .append(grid.columns().size() > NARROW ? " class=\"stack\"" : "")
                .append(label)
                .append(">\n")
                .append(caption)
                .append("<thead role=\"rowgroup\">\n<tr role=\"row\">");
        for (Column column : grid.columns()) {
            html.append("<th role=\"columnheader\" scope=\"col\"")
                    .append(side(column))
                    .append('>')
                    .append(XmlText.escaped(column.title()))
                    .append("</th>");
        }
        html.append("</tr>\n</thead>\n<tbody role=\"rowgroup\">\n");
        grid.rows().forEach(row -> row(html, grid, row));
        return html.append("</tbody>\n</table>\n").toString();
    }

    private static String side(Column column) {
        return column.side() == Column.Side.RIGHT ? " class=\"number\"" : "";
    }

    // A code may be parted at its underscores; short lines stay whole.
    private static String lines(String text) {
        StringBuilder html = new StringBuilder();
        for (String line : text.split("\\R", -1)) {
            String safe = XmlText.escaped(line).replace("_", "_<wbr/>");
            boolean whole = line.length() <= SHORT && line.indexOf(' ') >= 0;
            html.append(html.isEmpty() ? "" : "<br/>")
                    .append(whole ? "<span class=\"whole\">" + safe + "</span>" : safe);
        }
        return html.toString();
    }

    private static void row(StringBuilder html, Grid grid, List<Cell> row) {
        html.append("<tr role=\"row\">");
        for (int i = 0; i < row.size(); i++) {
            Column column = grid.columns().get(i);
            String text = lines(row.get(i).text());
            String shown = row.get(i).kind() == Cell.Kind.STRONG && i > 0 ? "<strong>" + text + "</strong>" : text;
            html.append(i == 0 ? "<th role=\"rowheader\" scope=\"row\"" : "<td role=\"cell\"")
                    .append(side(column))
                    .append(" data-label=\"")
                    .append(XmlText.escaped(column.title()))
                    .append("\"><span>")
                    .append(shown)
                    .append("</span>")
                    .append(i == 0 ? "</th>" : "</td>");
        }
        html.append("</tr>\n");
    }
}
