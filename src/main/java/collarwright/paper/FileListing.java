package collarwright.paper;

import collarwright.sheet.XmlText;
import collarwright.units.Decimals;
import java.util.List;

/** The front page's list of the pack's files, each with its size and what it is for. */
final class FileListing {

    private FileListing() {}

    static String html(List<PackFile> files) {
        StringBuilder html = new StringBuilder("<ul class=\"files\">\n");
        for (PackFile file : files) {
            html.append("<li><a href=\"")
                    .append(Links.to(file.path()))
                    .append("\">")
                    .append(XmlText.escaped(file.path()).replace("/", "/<wbr/>"))
                    .append("</a>")
                    .append(file.bytes() > 0 ? " <small>" + size(file.bytes()) + "</small>" : "")
                    .append("<br/>")
                    .append(XmlText.escaped(file.purpose()))
                    .append("</li>\n");
        }
        return html.append("</ul>\n").toString();
    }

    private static String size(long bytes) {
        if (bytes < 1000) {
            return bytes + " bytes";
        }
        return bytes < 1_000_000
                ? Decimals.fixed(bytes / 1000.0, 0) + " kB"
                : Decimals.fixed(bytes / 1_000_000.0, 1) + " MB";
    }
}
