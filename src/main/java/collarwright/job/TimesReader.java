package collarwright.job;

import collarwright.finding.Code;
import collarwright.units.Quoted;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads the job's table {@code [shop.times]}. All of its keys may be left out. */
final class TimesReader {

    private static final double MOST_SECONDS = 86_400;
    private static final double MOST_MINUTES = 1440;
    private static final double DEAREST = 1e6;
    private static final int LONGEST_CURRENCY = 8;

    private final TableView table;
    private boolean good = true;

    private TimesReader(TableView table) {
        this.table = table;
    }

    /**
     * Reads the times.
     *
     * @param shop {@code [shop]}; empty if it is not there
     * @return the times, or empty after findings
     */
    static Optional<ShopTimes> read(Optional<TableView> shop) {
        Optional<KeyView> key = shop.map(t -> t.key("times")).filter(KeyView::present);
        if (key.isEmpty()) {
            return Optional.of(ShopTimes.USUAL);
        }
        return key.get().table().flatMap(t -> new TimesReader(t).times());
    }

    private Optional<ShopTimes> times() {
        ShopTimes usual = ShopTimes.USUAL;
        double cutter = seconds("cutter-change-seconds", usual.cutterChange());
        double stick = 60 * minutes("stick-load-minutes", usual.stickLoad() / 60);
        double collar = seconds("press-collar-seconds", usual.pressCollar());
        double hole = seconds("press-hole-seconds", usual.pressHole());
        double piece = seconds("piece-cut-seconds", usual.pieceCut());
        double tie = seconds("tie-hole-seconds", usual.tieHole());
        double connection = 60 * minutes("connection-minutes", usual.connection() / 60);
        double roll = seconds("roll-seconds", usual.hands().roll());
        double turn = seconds("hand-turn-seconds", usual.hands().turn());
        double shopHour = number("shop-hour", DEAREST, 0);
        double siteHour = number("site-hour", DEAREST, 0);
        String currency = currency();
        return good
                ? Optional.of(new ShopTimes(
                        cutter,
                        stick,
                        collar,
                        hole,
                        piece,
                        tie,
                        connection,
                        new ShopTimes.Hands(roll, turn),
                        new ShopTimes.Money(shopHour, siteHour, currency)))
                : Optional.empty();
    }

    private double seconds(String name, double usual) {
        return number(name, MOST_SECONDS, usual);
    }

    private double minutes(String name, double usual) {
        return number(name, MOST_MINUTES, usual);
    }

    private double number(String name, double most, double usual) {
        Given<Double> given = new Given<>(table.key(name), key -> key.number(0, most), usual);
        good = given.good() && good;
        return given.good() ? given.value() : usual;
    }

    private String currency() {
        KeyView key = table.key("currency");
        if (!key.present()) {
            return "";
        }
        Optional<String> text = key.text();
        List<String> faults = new ArrayList<>();
        text.filter(t -> t.isBlank() || t.codePointCount(0, t.length()) > LONGEST_CURRENCY)
                .ifPresent(faults::add);
        if (text.isEmpty() || !faults.isEmpty()) {
            faults.forEach(t -> key.stop(
                    Code.JOB_OUT_OF_RANGE,
                    "a currency of 1 to " + LONGEST_CURRENCY + " characters",
                    Quoted.text(t),
                    "write it short, such as \"EUR\""));
            good = false;
        }
        return text.orElse("");
    }
}
