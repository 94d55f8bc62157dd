package collarwright.testing;

import collarwright.collar.Fix;
import collarwright.collar.Heights;
import collarwright.collar.HubSettings;
import collarwright.dome.DomeSettings;
import collarwright.dome.DomeSource;
import collarwright.geometry.Interval;
import collarwright.job.Job;
import collarwright.job.Limits;
import collarwright.job.Order;
import collarwright.job.Shop;
import collarwright.machining.CuttingData;
import collarwright.machining.Machine;
import collarwright.machining.ProgramUnits;
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
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * Jobs written by hand, without a job file: an invented bee-yard windbreak of PVC pipe, all sizes measured, in which
 * nothing stops and nothing warns. A test changes what it is about.
 */
public final class Jobs {
    private static final String OURS = "invented for tests";
    private static final Material PVC = new Material("pvc", "PVC-U", true, 1400);

    private DomeSource dome = new DomeSettings(3, 5);
    private SizeRule size = new SizeRule.Radius(2600);
    private RoundStock strut = pipe("pvc 40", new Interval(39.9, 40.05, 40.2), Interval.between(3.0, 3.4));
    private double rims;
    private Optional<TieHole> tieHole = Optional.of(new TieHole(6, 12));
    private RoundStock collar = pipe("pvc 200", Interval.of(200.2), Interval.between(7.7, 8.1));
    private double width = 90;
    private RoundStock ring = pipe("pvc 90", Interval.of(90), Interval.of(4.3));
    private double ringWidth = 50;
    private double endGap = 2;
    private List<Cutter> cutters =
            IntStream.rangeClosed(76, 120).mapToObj(half -> saw(half / 2.0)).toList();
    private Fit fit = Fit.REACH;
    private double nearestBand = StrictMath.toRadians(0.5);
    private Limits limits = Limits.DEFAULT;
    private Optional<SharingLimits> shared = Optional.empty();
    private Heights heights = Heights.MIDPLANE;
    private Optional<Integer> mostCutters = Optional.empty();
    private Optional<SizeBins> bins = Optional.empty();
    private boolean flip;

    /** The windbreak as described. */
    public static Jobs windbreak() {
        return new Jobs();
    }

    /** A measured PVC pipe. */
    public static RoundStock pipe(String name, Interval od, Interval wall) {
        return new RoundStock(name, name + " pipe", PVC, od, Optional.of(wall), true, true, 0, List.of(3000.0), OURS);
    }

    /** The same pipe before anybody has measured it. */
    public static RoundStock unmeasured(RoundStock s) {
        return new RoundStock(
                s.name(), s.title(), s.material(), s.od(), s.wall(), false, false, 0, s.lengths(), s.source());
    }

    /** The same pipe of another material. */
    public static RoundStock of(Material material, RoundStock s) {
        return new RoundStock(
                s.name(),
                s.title(),
                material,
                s.od(),
                s.wall(),
                s.odMeasured(),
                s.wallMeasured(),
                s.outOfRound(),
                s.lengths(),
                s.source());
    }

    /** A measured hole saw that cuts what is stamped on it. */
    public static Cutter saw(double mm) {
        return saw(mm, Interval.of(mm), true);
    }

    /** A hole saw. */
    public static Cutter saw(double mm, Interval asDrilled, boolean measured) {
        String marked = mm == StrictMath.rint(mm) ? Long.toString(StrictMath.round(mm)) : Double.toString(mm);
        return new Cutter(
                "HS-" + marked,
                CutterKind.HOLE_SAW,
                marked + " mm",
                mm,
                asDrilled,
                measured,
                12,
                38,
                80,
                600,
                "metric-hole-saws");
    }

    /** Another dome. */
    public Jobs dome(DomeSource another) {
        dome = another;
        return this;
    }

    /** With another frequency and rows. */
    public Jobs dome(int frequency, int rows) {
        dome = new DomeSettings(frequency, rows);
        return this;
    }

    /** Another size. */
    public Jobs size(SizeRule rule) {
        size = rule;
        return this;
    }

    /** Other struts. */
    public Jobs strut(RoundStock stock) {
        strut = stock;
        return this;
    }

    /** Another tie hole. */
    public Jobs tieHole(TieHole hole) {
        tieHole = Optional.of(hole);
        return this;
    }

    /** Eased rims. */
    public Jobs rims(double size) {
        rims = size;
        return this;
    }

    /** No tie hole. */
    public Jobs noTieHole() {
        tieHole = Optional.empty();
        return this;
    }

    /** Another collar pipe. */
    public Jobs collar(RoundStock stock) {
        collar = stock;
        return this;
    }

    /** Another width of the collar. */
    public Jobs width(double mm) {
        width = mm;
        return this;
    }

    /** Another centre ring. */
    public Jobs ring(RoundStock stock, double mm) {
        ring = stock;
        ringWidth = mm;
        return this;
    }

    /** Another gap between strut ends and ring. */
    public Jobs endGap(double mm) {
        endGap = mm;
        return this;
    }

    /** Other cutters. */
    public Jobs cutters(Cutter... owned) {
        cutters = List.of(owned);
        return this;
    }

    /** Nearest in place of reach. */
    public Jobs nearest(double band) {
        fit = Fit.NEAREST;
        nearestBand = band;
        return this;
    }

    /** Patterns that hub types share. */
    public Jobs shared(SharingLimits limits) {
        shared = Optional.of(limits);
        return this;
    }

    /** Holes at heights where all struts of a hub meet. */
    public Jobs converging() {
        heights = Heights.CONVERGING;
        return this;
    }

    /** Collars that may be put on upside down. */
    public Jobs flip() {
        flip = true;
        return this;
    }

    /** At most so many cutters. */
    public Jobs mostCutters(int most) {
        mostCutters = Optional.of(most);
        return this;
    }

    /** Struts sorted by size: the stock has the diameter of the chosen bin, or of all. */
    public Jobs bins(SizeBins sorted) {
        bins = Optional.of(sorted);
        strut = pipe("poles", sorted.chosen().map(sorted::bin).orElseGet(sorted::whole), Interval.of(3));
        return this;
    }

    /** Other limits. */
    public Jobs limits(Limits other) {
        limits = other;
        return this;
    }

    /** The job. */
    public Job job() {
        List<Cutter> sorted = cutters.stream()
                .sorted(Comparator.comparingDouble((Cutter c) -> c.asDrilled().nominal())
                        .thenComparing(Cutter::id))
                .toList();
        return new Job(
                "Bee-yard windbreak",
                "BCDFGHJK",
                new Order(1, 3),
                dome,
                size,
                new StrutSettings(strut, tieHole, bins),
                new HubSettings(collar, width, ring, ringWidth, Fix.TIE, endGap, rims, heights),
                new DrillingSettings(sorted, fit, nearestBand, 0, shared, mostCutters, flip),
                limits,
                new Shop(press(), ProgramUnits.MM, cutting()));
    }

    public static Machine press() {
        return new Machine(
                "press",
                "drill press",
                Machine.Kind.PRESS,
                new Machine.Post(false, Set.of(), 3, 3, 70, "M2", "ngc"),
                new Machine.Travel(0, 1, 0, 1, 1, 1, 1, 1),
                new Machine.Spindle(100, 3000, 0),
                new Machine.Rotary(true, true, 1, 1, 0, 0, 0, 0, 0, 0, 1),
                OURS);
    }

    private static CuttingData cutting() {
        CuttingData.Row row = new CuttingData.Row(CutterKind.HOLE_SAW, 0, 200, 30, 0.1, 0.2, OURS);
        return new CuttingData("pvc", "PVC-U", List.of(row), "chips pack in the saw");
    }
}
