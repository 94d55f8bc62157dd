package collarwright.plan;

import collarwright.assembly.Assembly;
import collarwright.collar.HubSettings;
import collarwright.finding.Code;
import collarwright.finding.Finding;
import collarwright.finding.Level;
import collarwright.finding.Where;
import collarwright.hub.Hubs;
import collarwright.job.Job;
import collarwright.plan.Check.Quantity;
import collarwright.plan.Check.Sense;
import collarwright.stock.Material;
import collarwright.stock.RoundStock;
import collarwright.strut.StrutLayout;
import collarwright.strut.StrutType;
import collarwright.tooling.PatternBook;
import collarwright.units.Decimals;
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
        PatternBook book = book(hubs, struts, hub, findings);
        checks.addAll(hubChecks(hubs, struts, book, hub));
        book.sharing().ifPresent(sharing -> {
            checks.addAll(SharingChecks.of(sharing));
            findings.add(SharingChecks.note(sharing));
        });
        // Ends that collide, or do not reach through their holes, are told first: nothing can be said of putting them
        // in.
        boolean sound = checks.stream().noneMatch(c -> c.verdict().equals(Optional.of(Level.STOP)));
        Optional<Assembly> assembly = sound ? Fittings.of(job, hubs, struts, book) : Optional.empty();
        assembly.map(a -> new AssemblyChecks(job, hubs, struts, book, a)).ifPresent(a -> {
            checks.addAll(a.checks());
            findings.addAll(a.findings());
        });
        checks.sort(Comparator.comparing(Check::code).thenComparingDouble(Check::margin));
        checks.forEach(c -> c.finding().ifPresent(findings::add));
        offerCollar(findings, frame);
        findings.addAll(NotMeasured.notes(job, book));
        HubPlay.note(new Plan(job, hubs, struts, book, assembly, checks, findings))
                .ifPresent(findings::add);
        BinTable.note(job).ifPresent(findings::add);
        EndChecks.flat(job, book).ifPresent(findings::add);
        noLaser().ifPresent(findings::add);
        findings.sort(Comparator.comparing(Finding::level));
        return new Plan(job, hubs, struts, book, assembly, checks, findings);
    }

    private PatternBook book(Hubs hubs, StrutLayout struts, HubSettings hub, List<Finding> findings) {
        double strut = job.strut().stock().od().max();
        if (strut >= 2 * hub.body().leastInnerRadius()) {
            findings.add(Finding.stop(
                    Code.HOLE_TOO_WIDE,
                    new Where.Part("collar"),
                    "a bore wider than the strut, " + Decimals.fixed(strut, 2) + " mm",
                    Decimals.fixed(2 * hub.body().leastInnerRadius(), 2) + " mm",
                    "take a wider collar pipe"));
            return PatternBook.unsized(hubs);
        }
        PatternBook book = PatternBook.of(hubs, struts, hub, job.strut().stock().od(), job.drilling());
        CutterNotes notes = new CutterNotes(job);
        notes.limited(book).ifPresent(findings::add);
        book.sizes().stream()
                .filter(s -> s.size().cutter().isEmpty())
                .forEach(s -> findings.add(notes.noCutter(s.place(), s.size())));
        return book;
    }

    private List<Check> strutChecks(StrutLayout struts) {
        Check.Limits shortest = EndChecks.shortest(job);
        List<Check> checks = new ArrayList<>();
        for (StrutType type : struts.types()) {
            checks.add(new Check(
                    Code.STRUT_TOO_SHORT,
                    new Where.Part("strut " + type.id()),
                    Quantity.LENGTH,
                    Sense.AT_LEAST,
                    type.cut(),
                    shortest,
                    EndChecks.longer(job)));
        }
        checks.addAll(EndChecks.of(job));
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
        book.patterns().forEach(p -> checks.addAll(new PatternChecks(p, hub.body(), job).all()));
        for (HubPart part : HubPart.all(hubs, struts, book, hub)) {
            HubChecks on = new HubChecks(part, job);
            checks.addAll(part.pattern().isPresent() ? on.all() : on.withoutHoles());
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
                        job.sheet().plates().isPresent()
                                ? "index plates of another material only; cut templates from paper or card only, and"
                                        + " never the pipe itself"
                                : "no laser files are made; cut templates from paper or card only, and never the pipe"
                                        + " itself"))
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
