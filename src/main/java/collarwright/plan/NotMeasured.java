package collarwright.plan;

import collarwright.collar.TrialPiece;
import collarwright.finding.Code;
import collarwright.finding.Finding;
import collarwright.finding.Where;
import collarwright.job.Job;
import collarwright.stock.RoundStock;
import collarwright.tooling.Cutter;
import collarwright.tooling.CutterKind;
import collarwright.tooling.Hole;
import collarwright.tooling.PatternBook;
import collarwright.units.Decimals;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** Notes of every size that the shop has not measured: nominal figures only stand in until it does. */
final class NotMeasured {

    private NotMeasured() {}

    /**
     * Lists what was not measured.
     *
     * @param job the job
     * @param book its patterns: of the rack only the cutters that they use count, or all of them where none was laid out
     */
    static List<Finding> notes(Job job, PatternBook book) {
        List<Finding> notes = new ArrayList<>();
        stock("strut", job.strut().stock(), notes);
        stock("collar", job.hub().collar(), notes);
        List<Cutter> used = used(job, book);
        List<Cutter> drills = used.stream().filter(c -> !c.bores()).toList();
        List<Cutter> nominal = drills.stream().filter(c -> !c.measured()).toList();
        Optional<TrialPiece> piece = job.hub().trialPiece();
        if (!nominal.isEmpty()) {
            notes.add(rack(nominal, nominal.size() < used.size(), piece));
        }
        used.stream()
                .filter(c -> c.bores() && !c.measured())
                .map(Cutter::tool)
                .distinct()
                .forEach(c -> notes.add(c.kind() == CutterKind.TUBE_CUTTER ? kerf(c) : endMill(c)));
        BearingWords.of(job.hub()).ifPresent(words -> notes.add(tried(words, job)));
        return notes;
    }

    private static List<Cutter> used(Job job, PatternBook book) {
        List<Cutter> used = book.patterns().stream()
                .flatMap(p -> p.holes().stream())
                .map(Hole::cutter)
                .distinct()
                .sorted(Comparator.comparingDouble((Cutter c) -> c.asDrilled().nominal())
                        .thenComparing(Cutter::id))
                .toList();
        return used.isEmpty() ? job.drilling().cutters() : used;
    }

    // What takes the place of the full wall, so that nobody wonders why a hole is smaller than it would have been.
    private static Finding tried(String words, Job job) {
        return Finding.note(
                Code.TRIAL_PIECE,
                new Where.Part("collar wall"),
                "the full wall bears, "
                        + Decimals.trimmed(job.hub().body().wall().nominal(), 2) + " mm",
                words,
                "measure a new trial piece when the pipe, the cutters or the way rims are eased change");
    }

    private static Finding rack(List<Cutter> nominal, boolean some, Optional<TrialPiece> piece) {
        String which = some
                ? nominal.stream()
                        .map(c -> c.kind().title() + " " + c.marked())
                        .collect(Collectors.joining(", ", "", ": "))
                : "";
        return Finding.note(
                Code.NOT_MEASURED,
                new Where.Part("rack"),
                "as-drilled sizes measured on a test piece",
                which + "marked sizes, "
                        + piece.map(p -> "with " + BearingWords.oversize(p) + " from trial piece " + p.name())
                                .orElse("nominal, not measured"),
                "drill one hole of each size in scrap, measure it, and give as-drilled in [drilling]");
    }

    private static Finding endMill(Cutter tool) {
        return Finding.note(
                Code.NOT_MEASURED,
                new Where.Part("cutter " + tool.id()),
                "the end mill's own diameter, measured",
                tool.marked() + ", nominal, not measured: a hole comes out as much narrower as it is thinner",
                "measure it, and add it under [drilling] with that size and measured = true");
    }

    private static Finding kerf(Cutter tool) {
        return Finding.note(
                Code.NOT_MEASURED,
                new Where.Part("cutter " + tool.id()),
                "a kerf measured in this pipe, on the outside where it is least",
                Decimals.trimmed(tool.size(), 3)
                        + " mm by the machine's profile: a hole comes out narrower by what the cut is narrower",
                "cut one hole in scrap of this pipe, measure it with a pin, and put kerf right in the profile");
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
