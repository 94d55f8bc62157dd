package collarwright.plan;

import collarwright.finding.Code;
import collarwright.finding.Finding;
import collarwright.finding.Where;
import collarwright.job.Job;
import collarwright.stock.RoundStock;
import java.util.ArrayList;
import java.util.List;

/** Notes of every size that the shop has not measured: nominal figures only stand in until it does. */
final class NotMeasured {

    private NotMeasured() {}

    static List<Finding> notes(Job job) {
        List<Finding> notes = new ArrayList<>();
        stock("strut", job.strut().stock(), notes);
        stock("collar", job.hub().collar(), notes);
        boolean cutters = job.drilling().cutters().stream().noneMatch(c -> c.measured());
        if (cutters) {
            notes.add(Finding.note(
                    Code.NOT_MEASURED,
                    new Where.Part("rack"),
                    "as-drilled sizes measured on a test piece",
                    "marked sizes, nominal, not measured",
                    "drill one hole of each size in scrap, measure it, and give as-drilled in [drilling]"));
        }
        return notes;
    }

    private static void stock(String part, RoundStock stock, List<Finding> notes) {
        if (!stock.odMeasured()) {
            notes.add(note(part + " outside diameter", "measured-od"));
        }
        if (part.equals("collar") && !stock.wallMeasured()) {
            notes.add(note(part + " wall", "measured-wall"));
        }
    }

    private static Finding note(String part, String key) {
        return Finding.note(
                Code.NOT_MEASURED,
                new Where.Part(part),
                "a size measured on the pipe that will be drilled",
                "nominal, not measured",
                "measure it and give " + key + ": the angle of every hole depends on it");
    }
}
