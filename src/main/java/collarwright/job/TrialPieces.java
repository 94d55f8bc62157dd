package collarwright.job;

import collarwright.collar.TrialPiece;
import collarwright.finding.Code;
import collarwright.geometry.Interval;
import collarwright.units.Angles;
import collarwright.units.Decimals;
import collarwright.units.Length;
import java.util.Optional;

/** Trial pieces as profiles: read from the list {@code trial-piece} of a profile file, and written as such a file. */
public final class TrialPieces {

    /** No cutter drills further from its size. Our choice, no source. */
    public static final double MOST_OVERSIZE = 3;

    private static final double MOST_RMS_DEGREES = 45;

    private TrialPieces() {}

    /**
     * Reads a trial piece.
     *
     * @param entry its table with name, title and source
     * @return the trial piece, or empty after findings
     */
    static Optional<TrialPiece> read(ProfileFile.Entry entry) {
        TableView table = entry.table();
        String stock = table.need("stock", "the pipe that was tried", "stock = \"pvc-metric-160x6.2\"")
                .text()
                .orElse("");
        String material = table.need("material", "what that pipe is made of", "material = \"pvc\"")
                .text()
                .orElse("");
        Optional<Interval> wall = limits(
                table.need(
                        "bearing-wall",
                        "the wall that bears, with its limits",
                        "bearing-wall = { value = \"1.2 mm\", low = \"0.9 mm\", high = \"1.5 mm\" }"),
                Length.Zero.ALLOWED);
        KeyView oversizeKey = table.need(
                "oversize",
                "what holes are wider than their cutters, with its limits",
                "oversize = { value = \"0.15 mm\", low = \"0.1 mm\", high = \"0.2 mm\" }");
        Optional<Interval> oversize =
                limits(oversizeKey, Length.Zero.EITHER_SIDE).filter(o -> small(oversizeKey, o));
        Optional<Integer> readings = table.need("readings", "how many angles were measured", "readings = 18")
                .wholeNumber(1, 100_000);
        Optional<Double> rms = table.need(
                        "rms", "what the readings are off, root of the mean square", "rms = \"0.3 deg\"")
                .angle(0, MOST_RMS_DEGREES);
        if (wall.isEmpty()
                || oversize.isEmpty()
                || readings.isEmpty()
                || rms.isEmpty()
                || entry.name().isBlank()) {
            return Optional.empty();
        }
        return Optional.of(new TrialPiece(
                entry.name(),
                entry.title(),
                stock,
                material,
                wall.get(),
                oversize.get(),
                readings.get(),
                rms.get(),
                entry.source()));
    }

    private static Optional<Interval> limits(KeyView key, Length.Zero zero) {
        Optional<TableView> table = key.table();
        if (table.isEmpty()) {
            return Optional.empty();
        }
        Optional<Length> low =
                table.get().need("low", "the lower limit", "low = \"0.9 mm\"").length(zero);
        Optional<Length> value = table.get()
                .need("value", "the fitted value", "value = \"1.2 mm\"")
                .length(zero);
        Optional<Length> high =
                table.get().need("high", "the upper limit", "high = \"1.5 mm\"").length(zero);
        if (low.isEmpty() || value.isEmpty() || high.isEmpty()) {
            return Optional.empty();
        }
        double min = low.get().mm();
        double nominal = value.get().mm();
        double max = high.get().mm();
        if (min <= nominal && nominal <= max) {
            return Optional.of(new Interval(min, nominal, max));
        }
        key.stop(
                Code.JOB_CONFLICT,
                "low, value and high in this order of size",
                StockReader.mm(min) + ", " + StockReader.mm(nominal) + ", " + StockReader.mm(max),
                "put the three in order");
        return Optional.empty();
    }

    private static boolean small(KeyView key, Interval oversize) {
        if (oversize.min() >= -MOST_OVERSIZE && oversize.max() <= MOST_OVERSIZE) {
            return true;
        }
        key.stop(
                Code.JOB_OUT_OF_RANGE,
                "at most " + StockReader.mm(MOST_OVERSIZE) + " either way",
                StockReader.mm(oversize.min()) + " to " + StockReader.mm(oversize.max()),
                "check the unit; if the rows cannot tell the oversize, fit with --oversize \"0 mm\"");
        return false;
    }

    /**
     * Tells whether a profile may have a name.
     *
     * @param name any text
     * @return true for small letters, digits, and {@code . _ -} between them, at most 60
     */
    public static boolean named(String name) {
        return ProfileFile.NAME.matcher(name).matches();
    }

    /**
     * Writes a trial piece as a profile file.
     *
     * @param piece the trial piece
     * @return TOML, lines ending in {@code \n}; reading it gives the same to a micrometre and a thousandth of a degree
     */
    public static String toml(TrialPiece piece) {
        return "# Measured on a test collar; [hub] trial-piece = " + quoted(piece.name())
                + " in a job makes use of it.\n"
                + "[[trial-piece]]\n"
                + "name = " + quoted(piece.name()) + "\n"
                + "title = " + quoted(piece.title()) + "\n"
                + "source = " + quoted(piece.source()) + "\n"
                + "stock = " + quoted(piece.stock()) + "\n"
                + "material = " + quoted(piece.material()) + "\n"
                + "# what bears in the middle of the wall, and what holes are wider than their cutters: 95 % limits\n"
                + "bearing-wall = " + limits(piece.bearingWall()) + "\n"
                + "oversize = " + limits(piece.oversize()) + "\n"
                + "readings = " + piece.readings() + "\n"
                + "rms = \"" + Decimals.trimmed(Angles.degrees(piece.rms()), 3) + " deg\"\n";
    }

    private static String limits(Interval size) {
        return "{ value = " + mm(size.nominal()) + ", low = " + mm(size.min()) + ", high = " + mm(size.max()) + " }";
    }

    private static String mm(double length) {
        return "\"" + Decimals.trimmed(length, 3) + " mm\"";
    }

    // A basic string of TOML 1.0: quotation mark, backslash and control characters are escaped.
    private static String quoted(String text) {
        StringBuilder quoted = new StringBuilder("\"");
        text.codePoints().forEach(sign -> {
            if (sign == '"' || sign == '\\') {
                quoted.append('\\').appendCodePoint(sign);
            } else if (sign < ' ' || sign == 0x7f) {
                String digits = Integer.toHexString(sign);
                quoted.append("\\u").append("0".repeat(4 - digits.length())).append(digits);
            } else {
                quoted.appendCodePoint(sign);
            }
        });
        return quoted.append('"').toString();
    }
}
