package collarwright.pack;

import collarwright.plan.Variant;
import collarwright.plan.WorkTime;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** Several jobs side by side, for other programs. */
public final class ComparisonReport {

    private ComparisonReport() {}

    /**
     * A job with the name of its file.
     *
     * @param file as it was named
     * @param variant what it takes
     */
    public record Named(String file, Variant variant) {}

    /**
     * Tells of jobs in JSON.
     *
     * @param jobs in the order in which they were named
     * @return the text, with a line end
     */
    public static String json(List<Named> jobs) {
        return new String(JsonOut.text(out -> out.objects("jobs", jobs, job -> job(out, job))), StandardCharsets.UTF_8);
    }

    private static void job(JsonOut out, Named named) throws IOException {
        Variant job = named.variant();
        out.text("file", named.file());
        out.text("title", job.title());
        out.text("revision", job.revision());
        if (!job.breakdown().isEmpty()) {
            out.numbers(
                    "breakdown", job.breakdown().stream().mapToDouble(b -> b).toArray());
        }
        out.whole("patterns", job.types().patterns());
        out.whole("hubTypes", job.types().hubs());
        out.whole("strutTypes", job.types().struts());
        out.whole("collars", job.made().collars());
        out.whole("struts", job.made().struts());
        out.whole("ties", job.made().ties());
        out.whole("holes", job.stock().holes());
        out.whole("sticks", job.stock().sticks());
        out.whole("offcuts", job.stock().offcuts());
        out.whole("cuts", job.stock().cuts());
        out.flag("allPlanned", job.stock().planned());
        if (job.stock().waste().isPresent()) {
            out.number("wastePercent", 100 * job.stock().waste().getAsDouble());
        }
        out.number("madeKg", job.bill().madeKg());
        out.number("boughtKg", job.bill().boughtKg());
        out.number("longestBoughtMm", job.bill().longestBought());
        out.number("longestMadeMm", job.bill().longestMade());
        out.whole("shopMinutes", job.time().minutes(WorkTime.Place.SHOP));
        out.whole("siteMinutes", job.time().minutes(WorkTime.Place.SITE));
        if (job.time().money().given()) {
            out.number(
                    "workCost",
                    job.time().cost(WorkTime.Place.SHOP) + job.time().cost(WorkTime.Place.SITE));
        }
        if (job.bill().cost().isPresent()) {
            out.number("buyCost", job.bill().cost().get());
            out.whole("unpriced", job.bill().unpriced().size());
        }
        out.text("currency", job.bill().currency());
        out.whole("stops", job.stops());
        out.whole("warnings", job.warnings());
    }
}
