package collarwright.plan;

import collarwright.collar.HubSettings;
import collarwright.finding.Code;
import collarwright.finding.Finding;
import collarwright.finding.Where;
import collarwright.hub.Hubs;
import collarwright.job.Job;
import collarwright.plan.Check.Quantity;
import collarwright.plan.Check.Sense;
import collarwright.stock.Material;
import collarwright.stock.RoundStock;
import collarwright.strut.StrutLayout;
import collarwright.strut.StrutType;
import collarwright.tooling.Pattern;
import collarwright.tooling.PatternBook;
import collarwright.units.Decimals;
import collarwright.units.Ids;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Runs the stages of a job one after another, checks what comes out, and gathers all findings. */
public final class Planner {

    private final Job job;
    private final List<RoundStock> collarStocks;

    private Planner(Job job, List<RoundStock> collarStocks) {
        this.job = job;
        this.collarStocks = List.copyOf(collarStocks);
    }

    /**
     * Plans a job.
     *
     * @param job the job
     * @param collarStocks pipes that may be offered where the job's collar is too small
     * @return the plan with all findings, also where a finding stops it
     */
    public static Plan plan(Job job, List<RoundStock> collarStocks) {
        return new Planner(job, collarStocks).run();
    }

    private Plan run() {
        Framing frame = Framing.of(job);
        Hubs hubs = frame.hubs();
        StrutLayout struts = frame.struts();
        HubSettings hub = job.hub();
        List<Finding> findings = new ArrayList<>(frame.findings());
        findings.addAll(FrameChecks.of(job, hubs));
        HubSpacing.of(frame, struts.radius(), 2 * hub.body().outerRadius()).ifPresent(findings::add);
        findings.addAll(FrameNotes.of(job, frame));
        List<Check> checks = new ArrayList<>(strutChecks(struts));
        checks.add(ringClearance());
        PatternBook book = book(hubs, hub, findings);
        checks.addAll(hubChecks(hubs, struts, book, hub));
        checks.sort(Comparator.comparing(Check::code).thenComparingDouble(Check::margin));
        checks.forEach(c -> c.finding().ifPresent(findings::add));
        offerCollar(findings, frame);
        findings.addAll(NotMeasured.notes(job, book));
        HubPlay.note(new Plan(job, hubs, struts, book, checks, findings)).ifPresent(findings::add);
        BinTable.note(job).ifPresent(findings::add);
        noLaser().ifPresent(findings::add);
        findings.sort(Comparator.comparing(Finding::level));
        return new Plan(job, hubs, struts, book, checks, findings);
    }

    private PatternBook book(Hubs hubs, HubSettings hub, List<Finding> findings) {
        double strut = job.strut().stock().od().max();
        if (strut >= 2 * hub.body().leastInnerRadius()) {
            findings.add(Finding.stop(
                    Code.HOLE_TOO_WIDE,
                    new Where.Part("collar"),
                    "a bore wider than the strut, " + Decimals.fixed(strut, 2) + " mm",
                    Decimals.fixed(2 * hub.body().leastInnerRadius(), 2) + " mm",
                    "take a wider collar pipe"));
            return new PatternBook(List.of(), List.of());
        }
        PatternBook book = PatternBook.of(hubs, hub.body(), job.strut().stock().od(), job.drilling());
        CutterNotes notes = new CutterNotes(job);
        if (job.drilling().mostCutters().isPresent()) {
            notes.limited(hubs).ifPresent(findings::add);
        }
        for (int i = 0; i < book.sizes().size(); i++) {
            boolean toldAlready =
                    i % 2 != 0 && book.sizes().get(i).equals(book.sizes().get(i - 1));
            if (book.sizes().get(i).cutter().isEmpty() && !toldAlready) {
                findings.add(notes.noCutter(i / 2, book.sizes().get(i)));
            }
        }
        return book;
    }

    private List<Check> strutChecks(StrutLayout struts) {
        // Two tie holes on one line must not run into each other; without them a strut only needs a length.
        double least =
                job.strut().tieHole().map(t -> 2 * t.fromEnd() + t.diameter()).orElse(1.0);
        String source = job.strut().tieHole().isPresent() ? "geometry" : "our choice, no source";
        List<Check> checks = new ArrayList<>();
        for (StrutType type : struts.types()) {
            checks.add(new Check(
                    Code.STRUT_TOO_SHORT,
                    new Where.Part("strut " + type.id()),
                    Quantity.LENGTH,
                    Sense.AT_LEAST,
                    type.cut(),
                    new Check.Limits(OptionalDouble.of(least), least, source),
                    List.of("make the dome larger or its frequency lower", "or take a smaller collar and ring")));
        }
        return checks;
    }

    private Check ringClearance() {
        double room = job.hub().body().leastInnerRadius()
                - job.hub().ring().od().max() / 2
                - job.hub().endGap();
        return new Check(
                Code.RING_CLEARANCE,
                new Where.Part("centre ring"),
                Quantity.LENGTH,
                Sense.AT_LEAST,
                room,
                new Check.Limits(OptionalDouble.of(0), 0, "geometry"),
                List.of("take a smaller centre ring or a wider collar pipe"));
    }

    private List<Check> hubChecks(Hubs hubs, StrutLayout struts, PatternBook book, HubSettings hub) {
        List<Check> checks = new ArrayList<>();
        for (int i = 0; i < hubs.types().size(); i++) {
            Optional<Pattern> pattern = book.patterns().isEmpty()
                    ? Optional.empty()
                    : Optional.of(book.patterns().get(i));
            HubPart part = new HubPart(hubs.types().get(i), Ids.letters('C', i), pattern, struts, hub);
            HubChecks on = new HubChecks(part, job);
            checks.addAll(pattern.isPresent() ? on.all() : on.withoutHoles());
        }
        return checks;
    }

    private Optional<Finding> noLaser() {
        Material material = job.hub().collar().material();
        return material.chlorinated()
                ? Optional.of(Finding.note(
                        Code.LASER_PVC,
                        new Where.Part("collar"),
                        "a material that a laser or a plasma torch may cut",
                        material.title() + ", whose fumes are toxic and corrosive",
                        "no laser files are made; cut templates from paper or card only, and never the pipe itself"))
                : Optional.empty();
    }

    // Where a larger collar is the cure, names the smallest pipe we know that would do.
    private void offerCollar(List<Finding> findings, Framing frame) {
        if (findings.stream().noneMatch(CollarOffer::cures)) {
            return;
        }
        new CollarOffer(job, frame.hubs(), frame.struts())
                .smallest(collarStocks)
                .ifPresent(s -> {
                    String hint = "the smallest known pipe with room for these holes and this ring is " + s.name()
                            + " (" + s.title() + ", nominal, not measured)";
                    findings.replaceAll(f -> CollarOffer.cures(f) ? withFirstHint(f, hint) : f);
                });
    }

    private static Finding withFirstHint(Finding finding, String hint) {
        List<String> hints = new ArrayList<>();
        hints.add(hint);
        hints.addAll(finding.hints());
        return new Finding(
                finding.level(), finding.code(), finding.where(), finding.expected(), finding.found(), hints);
    }
}
