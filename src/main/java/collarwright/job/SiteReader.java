package collarwright.job;

import collarwright.finding.Code;
import collarwright.units.Decimals;
import collarwright.units.Length;
import collarwright.units.Paper;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** Reads the job's table {@code [site]} with {@code [site.labels]}. All of their keys may be left out. */
final class SiteReader {

    private static final int MOST_LABELS = 50;
    private static final double SAME = 1e-6;

    private final TableView table;
    private boolean good = true;

    private SiteReader(TableView table) {
        this.table = table;
    }

    /**
     * Reads how a kit is packed.
     *
     * @param table {@code [site]}; empty if it is not there
     * @return the settings, or empty after findings
     */
    static Optional<SiteSettings> read(Optional<TableView> table) {
        if (table.isEmpty()) {
            return Optional.of(SiteSettings.USUAL);
        }
        Given<Double> weight = new Given<>(
                table.get().key("bundle-weight-kg"),
                key -> key.number(SiteSettings.LEAST_KG, SiteSettings.MOST_KG),
                SiteSettings.USUAL.bundleKg());
        KeyView key = table.get().key("labels");
        if (!key.present()) {
            return weight.good() ? Optional.of(new SiteSettings(weight.value(), Optional.empty())) : Optional.empty();
        }
        Optional<LabelSheet> labels = key.table().flatMap(t -> new SiteReader(t).sheet());
        return weight.good() && labels.isPresent()
                ? Optional.of(new SiteSettings(weight.value(), labels))
                : Optional.empty();
    }

    private Optional<LabelSheet> sheet() {
        Map<String, Paper> papers = new LinkedHashMap<>();
        for (Paper stock : Paper.values()) {
            papers.put(stock.title(), stock);
        }
        Paper bare = table.bareUnit().imperial() ? Paper.LETTER : Paper.A4;
        Paper paper = value("paper", key -> key.word(papers), bare);
        LabelSheet usual = LabelSheet.usual(paper);
        int columns = value("columns", key -> key.wholeNumber(1, MOST_LABELS), usual.columns());
        int rows = value("rows", key -> key.wholeNumber(1, MOST_LABELS), usual.rows());
        Side across = new Side("label-width", "pitch-x", "left", "nudge-x", LabelSheet.LEAST_WIDTH);
        Side down = new Side("label-height", "pitch-y", "top", "nudge-y", LabelSheet.LEAST_HEIGHT);
        Placed x = placed(across, columns, paper.shortSide(), usual.width());
        Placed y = placed(down, rows, paper.longSide(), usual.height());
        if (!good) {
            return Optional.empty();
        }
        return Optional.of(new LabelSheet(
                paper, columns, rows, x.size, y.size, x.start, y.start, x.pitch, y.pitch, x.nudge, y.nudge));
    }

    /** The keys of one direction. */
    private record Side(String size, String pitch, String start, String nudge, double least) {}

    /** Where labels lie in one direction. */
    private record Placed(double start, double size, double pitch, double nudge) {}

    private Placed placed(Side side, int count, double paper, double usual) {
        double size = length(side.size(), Length.Zero.REFUSED, usual);
        double pitch = length(side.pitch(), Length.Zero.REFUSED, size);
        double middle = StrictMath.max(0, (paper - (count - 1) * pitch - size) / 2);
        double start = length(side.start(), Length.Zero.ALLOWED, middle);
        double nudge = length(side.nudge(), Length.Zero.EITHER_SIDE, 0);
        if (size < side.least() - SAME) {
            stop(
                    side.size(),
                    "a label of " + mm(side.least()) + " or more, so that QR code and words stand on it",
                    mm(size),
                    "take larger labels");
        }
        if (pitch < size - SAME) {
            stop(
                    side.pitch(),
                    "at least " + side.size() + ", " + mm(size) + ", or labels would overlap",
                    mm(pitch),
                    "measure from the edge of a label to the same edge of the next");
        }
        double end = start + (count - 1) * pitch + size;
        if (end > paper + SAME) {
            stop(
                    at(side.start(), side.pitch(), side.size()),
                    count + " labels within the " + mm(paper) + " of the paper",
                    "labels up to " + mm(end),
                    "check margin, pitch and count against the sheet",
                    "or take a larger paper");
        }
        if (StrictMath.abs(nudge) > LabelSheet.MOST_NUDGE + SAME) {
            stop(
                    side.nudge(),
                    "at most " + mm(LabelSheet.MOST_NUDGE) + " to either side",
                    mm(nudge),
                    "set the margin right: the nudge is for a printer that is a little off");
        }
        boolean inside = start + nudge + LabelSheet.PAD > -SAME && end + nudge - LabelSheet.PAD < paper + SAME;
        if (end <= paper + SAME && StrictMath.abs(nudge) <= LabelSheet.MOST_NUDGE + SAME && !inside) {
            stop(
                    side.nudge(),
                    "print that stays on the paper",
                    mm(nudge) + " with labels from " + mm(start) + " to " + mm(end),
                    "take a smaller nudge");
        }
        return new Placed(start, size, pitch, nudge);
    }

    // The first of these keys that stands in the job.
    private String at(String... names) {
        for (String name : names) {
            if (table.key(name).present()) {
                return name;
            }
        }
        return names[0].equals("left") ? "columns" : "rows";
    }

    private void stop(String name, String expected, String found, String... hints) {
        good = false;
        KeyView key = table.key(name);
        if (key.present()) {
            key.stop(Code.LABEL_SHEET, expected, found, hints);
        } else {
            table.stop(Code.LABEL_SHEET, name + ": " + expected, found, hints);
        }
    }

    private static String mm(double length) {
        return Decimals.trimmed(length, 3) + " mm";
    }

    private double length(String name, Length.Zero zero, double usual) {
        return value(name, key -> key.length(zero).map(Length::mm), usual);
    }

    private <T> T value(String name, java.util.function.Function<KeyView, Optional<T>> read, T usual) {
        Given<T> given = new Given<>(table.key(name), read, usual);
        good = given.good() && good;
        return given.value();
    }
}
