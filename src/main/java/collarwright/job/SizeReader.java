package collarwright.job;

import collarwright.finding.Code;
import collarwright.stock.RoundStock;
import collarwright.strut.SizeRule;
import collarwright.strut.StrutSettings;
import collarwright.units.Length;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleFunction;

/** Reads from {@code [dome]} what fixes its size; for pieces per stock from {@code [strut]} too. */
final class SizeReader {

    private static final String PIECES = "pieces-per-stock";
    private static final Map<String, DoubleFunction<SizeRule>> SIZES = sizes();
    private static final int MOST_PIECES = 1000;

    private final TableView dome;
    private final Optional<TableView> strut;

    /**
     * Reads tables.
     *
     * @param dome {@code [dome]}
     * @param strut {@code [strut]}
     */
    SizeReader(TableView dome, Optional<TableView> strut) {
        this.dome = dome;
        this.strut = strut;
    }

    /**
     * Reads what fixes the size.
     *
     * @param settings the struts, if they could be read
     * @return the rule, or empty after findings
     */
    Optional<SizeRule> size(Optional<StrutSettings> settings) {
        Map<String, KeyView> given = new LinkedHashMap<>();
        for (String name : SIZES.keySet()) {
            present(given, name);
        }
        present(given, PIECES);
        Optional<Double> kerf = length("kerf");
        Optional<Double> trim = length("trim");
        if (dome.key("frame").present()) {
            given.forEach((name, key) -> key.stop(
                    Code.JOB_CONFLICT,
                    "a frame's own size",
                    name + " beside frame",
                    "take it out; scale the frame's file"));
            return given.isEmpty() ? Optional.of(new SizeRule.AsDrawn()) : Optional.empty();
        }
        if (given.isEmpty()) {
            dome.need("radius", "one of " + names(), "radius = \"2.60 m\"");
            return Optional.empty();
        }
        if (given.size() > 1) {
            List<String> names = List.copyOf(given.keySet());
            given.values().stream()
                    .skip(1)
                    .forEach(key -> key.stop(
                            Code.JOB_CONFLICT,
                            "one size for the dome",
                            "a second one beside " + names.get(0),
                            "keep one of " + String.join(", ", names)));
            return Optional.empty();
        }
        KeyView pieces = dome.key(PIECES);
        if (pieces.present()) {
            return pieces(pieces, settings, kerf, trim);
        }
        Map.Entry<String, KeyView> one = given.entrySet().iterator().next();
        DoubleFunction<SizeRule> make = SIZES.getOrDefault(one.getKey(), SizeRule.Radius::new);
        return one.getValue().size().map(make::apply);
    }

    private void present(Map<String, KeyView> given, String name) {
        KeyView key = dome.key(name);
        if (key.present()) {
            given.put(name, key);
        }
    }

    private static String names() {
        return String.join(", ", SIZES.keySet()) + ", " + PIECES;
    }

    private Optional<Double> length(String name) {
        return strut.flatMap(table -> table.key(name).length(Length.Zero.ALLOWED))
                .map(Length::mm);
    }

    private Optional<SizeRule> pieces(
            KeyView key, Optional<StrutSettings> settings, Optional<Double> kerf, Optional<Double> trim) {
        Optional<Integer> pieces = key.wholeNumber(1, MOST_PIECES);
        strut.filter(table -> !table.key("kerf").present())
                .ifPresent(
                        table -> table.need("kerf", "the width of the saw's cut, for " + PIECES, "kerf = \"2.5 mm\""));
        if (pieces.isEmpty() || settings.isEmpty() || kerf.isEmpty()) {
            return Optional.empty();
        }
        RoundStock stock = settings.get().stock();
        if (stock.lengths().isEmpty()) {
            key.stop(
                    Code.JOB_CONFLICT,
                    "strut stock with a length it is sold in",
                    stock.name() + ", whose lengths are not known",
                    "give the stock in place with lengths = [\"6 m\"], or put lengths into its profile");
            return Optional.empty();
        }
        double stick = stock.lengths().get(stock.lengths().size() - 1);
        double left = stick - trim.orElse(0.0) - (pieces.get() - 1) * kerf.get();
        if (left <= 0) {
            key.stop(
                    Code.JOB_CONFLICT,
                    "something left of a stick of " + StockReader.mm(stick),
                    "nothing after trim and " + (pieces.get() - 1) + " cuts",
                    "check pieces-per-stock, kerf and trim");
            return Optional.empty();
        }
        return Optional.of(new SizeRule.PiecesPerStock(pieces.get(), stick, trim.orElse(0.0), kerf.get()));
    }

    private static Map<String, DoubleFunction<SizeRule>> sizes() {
        Map<String, DoubleFunction<SizeRule>> sizes = new LinkedHashMap<>();
        sizes.put("radius", SizeRule.Radius::new);
        sizes.put("floor-diameter", SizeRule.FloorDiameter::new);
        sizes.put("height", SizeRule.Height::new);
        sizes.put("longest-strut", SizeRule.LongestStrut::new);
        return java.util.Collections.unmodifiableMap(sizes);
    }
}
