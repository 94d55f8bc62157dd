package collarwright.bench;

import collarwright.collar.Fix;
import collarwright.collar.HubSettings;
import collarwright.dome.Base;
import collarwright.dome.Breakdown;
import collarwright.dome.Cut;
import collarwright.dome.DomeSettings;
import collarwright.dome.SphereSettings;
import collarwright.dome.Subdivision;
import collarwright.dome.Up;
import collarwright.geometry.Interval;
import collarwright.hub.Hubs;
import collarwright.job.Job;
import collarwright.job.Limits;
import collarwright.job.Order;
import collarwright.job.Shop;
import collarwright.machining.CuttingData;
import collarwright.machining.Machine;
import collarwright.machining.ProgramUnits;
import collarwright.stock.Material;
import collarwright.stock.RoundStock;
import collarwright.strut.SizeRule;
import collarwright.strut.StrutSettings;
import collarwright.strut.TieHole;
import collarwright.tooling.Cutter;
import collarwright.tooling.CutterKind;
import collarwright.tooling.DrillingSettings;
import collarwright.tooling.Fit;
import collarwright.tooling.PatternBook;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * The job that is timed: a whole sphere of the highest frequency, invented, 120 m across so that its struts can be cut.
 *
 * <p>The rack has a saw every millimetre. So far apart the slack of every hub type is more than what warns, and each
 * brings findings with their words: the plan is a laborious one.
 */
final class SphereJob {

    static final int FREQUENCY = 64;
    static final DomeSettings WHOLE_SPHERE = new DomeSettings(FREQUENCY, 3 * FREQUENCY);

    private static final Material PVC = new Material("pvc", "PVC-U", true, 1400);

    private SphereJob() {}

    static Job job() {
        return job(pipe("collar", 160.0, 160.3, 6.2, 6.6));
    }

    /** The same with a collar whose holes run into each other. */
    static Job withTooSmallACollar() {
        return job(pipe("small collar", 104.0, 104.4, 6.2, 6.6));
    }

    static PatternBook patterns(Hubs hubs, Job job) {
        return PatternBook.of(hubs, job.hub().body(), job.strut().stock().od(), job.drilling());
    }

    /** A whole sphere of another breakdown, with struts about as long. */
    static Job whole(Breakdown breakdown) {
        SphereSettings sphere = new SphereSettings(Base.ICOSAHEDRON, breakdown, Subdivision.CHORDS, Up.VERTEX);
        Cut all = breakdown.c() == 0 ? new Cut.Tiers(sphere.tiers()) : new Cut.Height(-1);
        double radius = 60_000 * StrictMath.sqrt(breakdown.t()) / FREQUENCY;
        return job(pipe("collar", 160.0, 160.3, 6.2, 6.6), new DomeSettings(sphere, all), radius);
    }

    private static Job job(RoundStock collar) {
        return job(collar, WHOLE_SPHERE, 60_000);
    }

    private static Job job(RoundStock collar, DomeSettings dome, double radius) {
        return new Job(
                "Sixty-four",
                "ABCDFGHJ",
                new Order(1, 3),
                dome,
                new SizeRule.Radius(radius),
                new StrutSettings(pipe("strut", 40.0, 40.2, 3.0, 3.3), Optional.of(new TieHole(6, 18))),
                new HubSettings(collar, 80, pipe("ring", 90.0, 90.2, 4.3, 4.8), 60, Fix.TIE, 2),
                new DrillingSettings(saws(), Fit.REACH, StrictMath.PI / 360),
                Limits.DEFAULT,
                press());
    }

    private static RoundStock pipe(String name, double leastOd, double mostOd, double leastWall, double mostWall) {
        return new RoundStock(
                name,
                "PVC-U pipe " + leastOd + " × " + leastWall,
                PVC,
                Interval.between(leastOd, mostOd),
                Optional.of(Interval.between(leastWall, mostWall)),
                true,
                true,
                0,
                List.of(6000.0),
                "our choice, no source");
    }

    private static List<Cutter> saws() {
        List<Cutter> saws = new ArrayList<>();
        for (int size = 20; size <= 80; size++) {
            saws.add(new Cutter(
                    "HS-" + size,
                    CutterKind.HOLE_SAW,
                    size + " mm",
                    size,
                    Interval.of(size),
                    true,
                    6,
                    38,
                    100,
                    800,
                    "metric-hole-saws"));
        }
        return saws;
    }

    private static Shop press() {
        Machine machine = new Machine(
                "press",
                "drill press",
                Machine.Kind.PRESS,
                new Machine.Post(false, Set.of(), 3, 3, 70, "M2", "ngc"),
                new Machine.Travel(0, 600, 0, 200, 2000, 1000, 200, 10),
                new Machine.Spindle(150, 3000, 2),
                new Machine.Rotary(true, true, 3600, 1000, 2, 60, 10, 20, 3, 5, 3000),
                "our choice, no source");
        return new Shop(machine, ProgramUnits.MM, new CuttingData("pvc", "PVC-U", List.of(), "long chips"));
    }
}
