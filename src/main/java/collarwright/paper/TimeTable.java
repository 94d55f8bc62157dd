package collarwright.paper;

import collarwright.plan.WorkTime;
import collarwright.units.Decimals;
import java.util.ArrayList;
import java.util.List;

/** How long an order takes, for traveller and index page. */
final class TimeTable {

    private TimeTable() {}

    static Grid grid(WorkTime time) {
        List<List<Cell>> rows = new ArrayList<>();
        for (WorkTime.Place place : WorkTime.Place.values()) {
            time.rows().stream().filter(r -> r.work().place() == place).forEach(r -> rows.add(row(r)));
            if (time.minutes(place) > 0) {
                rows.add(sum(time, place));
            }
        }
        return new Grid(
                "How long it takes, about",
                List.of(
                        Column.words("work"),
                        Column.numbers("how many"),
                        Column.numbers("each"),
                        Column.numbers("in all, h:min")),
                rows);
    }

    static String rule() {
        return "Estimates. Every row is rounded up to a minute. Programs are timed by their moves, with the machine's rates"
                + " and accelerations; the other times stand in the job under [shop.times]: one minute for each connection,"
                + " two for rolling a strip and 20 s for a turn by hand are common practice, no source, the rest our choice, no"
                + " source. Spare parts are counted in the shop, not"
                + " on site.";
    }

    private static List<Cell> row(WorkTime.Row row) {
        String each = row.work().byProgram() ? "by program" : each(row.seconds() / row.count());
        return List.of(
                Cell.of(row.work().title()),
                Cell.of(Long.toString(row.count())),
                Cell.of(each),
                Cell.of(clock(row.minutes())));
    }

    private static List<Cell> sum(WorkTime time, WorkTime.Place place) {
        double cost = time.cost(place);
        String price = cost > 0
                ? ", " + Decimals.fixed(cost, 2) + (time.money().currency().isEmpty() ? "" : " ")
                        + time.money().currency()
                : "";
        return List.of(
                Cell.strong((place == WorkTime.Place.SHOP ? "in the shop" : "on site") + price),
                Cell.of(""),
                Cell.of(""),
                Cell.strong(clock(time.minutes(place))));
    }

    private static String each(double seconds) {
        return seconds < 120 ? Decimals.trimmed(seconds, 1) + " s" : Decimals.trimmed(seconds / 60, 1) + " min";
    }

    /** Hours and minutes, such as {@code 8:20}. */
    static String clock(long minutes) {
        long rest = minutes % 60;
        return minutes / 60 + (rest < 10 ? ":0" : ":") + rest;
    }
}
