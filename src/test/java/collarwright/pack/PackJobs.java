package collarwright.pack;

import collarwright.collar.Fix;
import collarwright.collar.HubSettings;
import collarwright.collar.TrialPiece;
import collarwright.cutting.SawSettings;
import collarwright.cutting.StockLength;
import collarwright.dome.DomeSettings;
import collarwright.geometry.Interval;
import collarwright.job.CuttingSettings;
import collarwright.job.Job;
import collarwright.job.Limits;
import collarwright.job.Order;
import collarwright.job.Shop;
import collarwright.machining.CuttingData;
import collarwright.machining.Machine;
import collarwright.machining.ProgramUnits;
import collarwright.machining.ProgramWords;
import collarwright.machining.RotarySamples;
import collarwright.plan.Plan;
import collarwright.plan.Planner;
import collarwright.stock.Material;
import collarwright.stock.RoundStock;
import collarwright.strut.SizeBins;
import collarwright.strut.SizeRule;
import collarwright.strut.StrutSettings;
import collarwright.strut.TieHole;
import collarwright.tooling.Cutter;
import collarwright.tooling.CutterKind;
import collarwright.tooling.DrillingSettings;
import collarwright.tooling.Fit;
import collarwright.tooling.SharingLimits;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Invented jobs that the tests of this package plan. */
final class PackJobs {

    static final Material PVC = new Material("pvc", "PVC-U", true, 1400);
    static final Material STEEL = new Material("steel", "steel", false, 7850);

    private PackJobs() {}

    /** A metric 3v 5/9 dome in PVC with measured pipe, tie holes, a press, two domes and spares. */
    static Job metric() {
        RoundStock strut = stock("pvc-metric-40x3.0", PVC, Interval.between(39.9, 40.2), Interval.of(3), true);
        RoundStock collar = new RoundStock(
                "pvc-metric-160x6.2",
                "PVC-U pipe 160 × 6.2",
                PVC,
                Interval.of(160.1),
                Optional.of(new Interval(6.2, 6.35, 6.6)),
                true,
                true,
                0.6,
                List.of(6000.0, 3000.0),
                "invented");
        RoundStock ring = stock("pvc-metric-90x4.3", PVC, Interval.of(90), Interval.of(4.3), false);
        return new Job(
                "Bee-yard windbreak, east slope",
                "ABCDFGHJ",
                new Order(2, 3),
                new DomeSettings(3, 5),
                new SizeRule.Radius(2600),
                new StrutSettings(strut, Optional.of(new TieHole(6, 18))),
                new HubSettings(collar, 80, ring, 45, Fix.TIE, 2),
                new DrillingSettings(metricSaws(), Fit.REACH, StrictMath.PI / 360),
                Limits.DEFAULT,
                new Shop(machine("press", Machine.Kind.PRESS), ProgramUnits.MM, cutting("pvc")));
    }

    /** The metric job from priced sticks, too few of them, with an offcut that is of no use. */
    static Job sawn() {
        Job job = metric();
        StockLength six = new StockLength("6 m", 6000, Optional.of(12.5), Optional.of(9), false);
        CuttingSettings.Offcut offcut =
                new CuttingSettings.Offcut("R-1", job.strut().stock().name(), 320);
        return job.with(new CuttingSettings(
                new SawSettings(3.2, 10, 5, 0), 0, 300, List.of(six), List.of(), List.of(), List.of(offcut)));
    }

    /** An inch 2v half dome in steel tube from a rotary machine, without tie holes, nearest fit, no spares. */
    static Job inch() {
        RoundStock strut = stock("emt-3/4", STEEL, Interval.of(23.4188), Interval.of(1.2446), false);
        RoundStock collar = stock("steel-4in", STEEL, Interval.of(114.3), Interval.between(5.5, 6.54), false);
        RoundStock ring = stock("steel-1-1/2in", STEEL, Interval.of(48.26), Interval.of(3.7), false);
        return new Job(
                "=HYPERLINK(\"x\") Größe \"é\", Δ",
                "BCDFGHJK",
                new Order(1, 0),
                new DomeSettings(2, 3),
                new SizeRule.FloorDiameter(4876.8),
                new StrutSettings(strut, Optional.empty()),
                new HubSettings(collar, 63.5, ring, 38.1, Fix.PIN, 1.5875),
                new DrillingSettings(inchDrills(), Fit.NEAREST, StrictMath.PI / 90),
                Limits.DEFAULT,
                new Shop(machine("rotary-plain", Machine.Kind.ROTARY), ProgramUnits.INCH, cutting("steel")));
    }

    /** The same job with another dome and size. */
    static Job with(Job job, DomeSettings dome, SizeRule size) {
        return new Job(
                job.title(),
                job.revision(),
                job.order(),
                dome,
                size,
                job.strut(),
                job.hub(),
                job.drilling(),
                job.limits(),
                job.shop());
    }

    /** The same job with another title. */
    static Job titled(Job job, String title) {
        return new Job(
                title,
                job.revision(),
                job.order(),
                job.dome(),
                job.size(),
                job.strut(),
                job.hub(),
                job.drilling(),
                job.limits(),
                job.shop());
    }

    /** The same job from poles in two bins, the second of which it drills for, with one cutter. */
    static Job inBins(Job job) {
        SizeBins bins = new SizeBins(List.of(39.0, 40.0, 41.0), Optional.of(2));
        RoundStock poles = stock("poles", PVC, bins.bin(2), Interval.of(3), true);
        DrillingSettings drilling = job.drilling();
        return made(
                job,
                new StrutSettings(poles, job.strut().tieHole(), Optional.of(bins)),
                job.hub(),
                new DrillingSettings(
                        drilling.cutters(),
                        drilling.fit(),
                        drilling.nearestBand(),
                        0.3,
                        Optional.empty(),
                        Optional.of(1)));
    }

    /** The same job with patterns that hub types share. */
    static Job shared(Job job) {
        DrillingSettings drilling = job.drilling();
        return made(
                job,
                job.strut(),
                job.hub(),
                new DrillingSettings(
                        drilling.cutters(),
                        drilling.fit(),
                        drilling.nearestBand(),
                        0.3,
                        Optional.of(SharingLimits.USUAL),
                        Optional.empty()));
    }

    /** The same job with other cutters. */
    static Job drilled(Job job, List<Cutter> cutters) {
        return made(
                job,
                job.strut(),
                job.hub(),
                new DrillingSettings(
                        cutters, job.drilling().fit(), job.drilling().nearestBand()));
    }

    /** The same job with thinner struts and another ring. */
    static Job ringed(Job job, double strut, double ring) {
        HubSettings hub = job.hub();
        RoundStock thin = stock("thin", PVC, Interval.of(strut), Interval.of(1.5), true);
        RoundStock small = stock("small", PVC, Interval.of(ring), Interval.of(3), true);
        return made(
                job,
                new StrutSettings(thin, job.strut().tieHole()),
                new HubSettings(hub.collar(), hub.width(), small, hub.ringWidth(), hub.fix(), hub.endGap()),
                new DrillingSettings(List.of(saw("HS-23", "23 mm", 23)), Fit.REACH, StrictMath.PI / 360));
    }

    static Plan plan(Job job) {
        return Planner.plan(job, List.of());
    }

    static RoundStock stock(String name, Material material, Interval od, Interval wall, boolean measured) {
        return new RoundStock(
                name,
                name + " of the tests",
                material,
                od,
                Optional.of(wall),
                measured,
                measured,
                0,
                List.of(3000.0),
                "invented");
    }

    static Cutter saw(String id, String marked, double size) {
        Interval drilled = new Interval(size, size + 0.1, size + 0.2);
        return new Cutter(id, CutterKind.HOLE_SAW, marked, size, drilled, true, 7, 38, 50, 500, "metric-hole-saws");
    }

    private static List<Cutter> metricSaws() {
        return List.of(saw("HS-41", "41 mm", 41), saw("HS-43", "43 mm", 43), saw("HS-44", "44 mm", 44));
    }

    private static List<Cutter> inchDrills() {
        return List.of(
                twist("TW-15/16in", "15/16 in", 23.8125),
                twist("TW-1in", "1 in", 25.4),
                twist("TW-1-1/16in", "1-1/16 in", 26.9875));
    }

    private static Cutter twist(String id, String marked, double size) {
        return new Cutter(id, CutterKind.TWIST, marked, size, Interval.of(size), false, 8, 120, 30, 2000, "inch-twist");
    }

    private static CuttingData cutting(String material) {
        return new CuttingData(material, material, List.of(), "none");
    }

    private static Machine machine(String name, Machine.Kind kind) {
        return new Machine(
                name,
                name,
                kind,
                new Machine.Post(false, Set.copyOf(ProgramWords.PLAIN), 3, 3, 70, "M2", "ngc"),
                new Machine.Travel(0, 900, -50, 250, 5000, 3000, 300, 5),
                new Machine.Spindle(100, 3000, 3),
                new Machine.Rotary(true, true, 3600, 360, 2, 60, 10, 20, 3.2, 10, 1000),
                "invented");
    }

    /** The metric job for a rotary mill of the machining tests, whose cutting data make it possible. */
    static Job onSticks() {
        Job job = metric();
        return new Job(
                job.title(),
                job.revision(),
                job.order(),
                job.dome(),
                job.size(),
                job.strut(),
                job.hub(),
                job.drilling(),
                job.limits(),
                new Shop(RotarySamples.machine(false), ProgramUnits.MM, RotarySamples.cutting("pvc", 60)));
    }

    /** The metric job after a test collar was measured. */
    static Job tried() {
        Job job = metric();
        TrialPiece piece = new TrialPiece(
                "shed-160",
                "Trial piece from the shed",
                "pvc-metric-160x6.2",
                "pvc",
                new Interval(0.9, 1.2, 1.5),
                new Interval(0.08, 0.15, 0.22),
                18,
                StrictMath.toRadians(0.31),
                "invented");
        Job drilled = drilled(job, job.drilling().wider(piece.oversize()).cutters());
        return with(drilled, drilled.hub().with(piece));
    }

    /** The metric job with the rims of its holes eased. */
    static Job eased(double rims) {
        HubSettings hub = metric().hub();
        return with(
                metric(),
                new HubSettings(hub.collar(), hub.width(), hub.ring(), hub.ringWidth(), hub.fix(), hub.endGap(), rims));
    }

    private static Job with(Job job, HubSettings hub) {
        return made(job, job.strut(), hub, job.drilling());
    }

    // The same job of other parts.
    private static Job made(Job job, StrutSettings strut, HubSettings hub, DrillingSettings drilling) {
        return new Job(
                job.title(),
                job.revision(),
                job.order(),
                job.dome(),
                job.size(),
                strut,
                hub,
                drilling,
                job.limits(),
                job.shop());
    }
}
