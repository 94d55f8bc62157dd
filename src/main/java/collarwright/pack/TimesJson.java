package collarwright.pack;

import collarwright.plan.WorkTime;
import java.io.IOException;
import java.util.Locale;

/** Writes the estimate of time and cost of {@code plan.json}. */
final class TimesJson {

    private final JsonOut out;

    TimesJson(JsonOut out) {
        this.out = out;
    }

    void write(WorkTime time) throws IOException {
        out.object("times", () -> {
            out.rows("work", time.rows(), this::row);
            out.whole("shopMinutes", time.minutes(WorkTime.Place.SHOP));
            out.whole("siteMinutes", time.minutes(WorkTime.Place.SITE));
            if (time.money().given()) {
                out.number("shopCost", time.cost(WorkTime.Place.SHOP));
                out.number("siteCost", time.cost(WorkTime.Place.SITE));
                out.text("currency", time.money().currency());
            }
        });
    }

    private void row(WorkTime.Row row) throws IOException {
        out.text("work", row.work().name().toLowerCase(Locale.ROOT).replace('_', '-'));
        out.text("place", row.work().place().name().toLowerCase(Locale.ROOT));
        out.whole("count", row.count());
        out.number("seconds", row.seconds());
        out.whole("minutes", row.minutes());
    }
}
