package collarwright.pack;

import collarwright.finding.Finding;
import collarwright.plan.Check;
import collarwright.plan.Plan;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** What {@code check} tells of a job: for other programs as JSON, for a person the checks with the worst margins first. */
public final class CheckReport {

    private CheckReport() {}

    /**
     * Puts checks in the order in which a person wants to see them.
     *
     * @param plan a plan
     * @return its checks: those that stop, then those that warn, then the rest by margin
     */
    public static List<Check> worstFirst(Plan plan) {
        return ChecksJson.worstFirst(plan.checks());
    }

    /**
     * Tells of a plan in JSON.
     *
     * @param plan a plan with all findings of its job
     * @return the text, with a line end
     */
    public static String json(Plan plan) {
        return new String(
                JsonOut.text(out -> {
                    out.object("job", () -> {
                        out.text("title", plan.job().title());
                        out.text("revision", plan.job().revision());
                    });
                    out.flag("makeable", plan.makeable());
                    new ChecksJson(out).write(plan);
                }),
                StandardCharsets.UTF_8);
    }

    /**
     * Tells of a job that could not be read.
     *
     * @param findings why
     * @return the text, with a line end
     */
    public static String json(List<Finding> findings) {
        return new String(
                JsonOut.text(out -> {
                    out.flag("makeable", false);
                    new ChecksJson(out).findings(findings);
                }),
                StandardCharsets.UTF_8);
    }
}
