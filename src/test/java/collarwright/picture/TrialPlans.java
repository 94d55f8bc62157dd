package collarwright.picture;

import collarwright.collar.Fix;
import collarwright.collar.HubSettings;
import collarwright.dome.DomeSettings;
import collarwright.geometry.Interval;
import collarwright.job.Job;
import collarwright.job.Limits;
import collarwright.job.Order;
import collarwright.job.Shop;
import collarwright.machining.CuttingData;
import collarwright.machining.Machine;
import collarwright.machining.ProgramUnits;
import collarwright.plan.Plan;
import collarwright.plan.Planner;
import collarwright.stock.Material;
import collarwright.stock.RoundStock;
import collarwright.strut.SizeRule;
import collarwright.strut.StrutSettings;
import collarwright.strut.TieHole;
import collarwright.tooling.Cutter;
import collarwright.tooling.CutterKind;
import collarwright.tooling.DrillingSettings;
import collarwright.tooling.Fit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Plans of invented jobs, for pictures and papers to show. */
public final class TrialPlans {

    private static final Material PVC = new Material("pvc", "PVC-U", true, 1400);
    private static final Material STEEL = new Material("steel", "steel", false, 7850);

    private TrialPlans() {}

    /** A windbreak of 61 hubs in metric pipe, on a press. */
    public static Plan windbreak() {
        return windbreak("Bee-yard windbreak, east slope");
    }

    /** The same under another title. */
    public static Plan windbreak(String title) {
        return plan(title, new DomeSettings(3, 5), new Order(1, 3));
    }

    /** A dome of any frequency in the same pipe; hubs may come out crowded. */
    public static Plan dome(int frequency, int rows) {
        return plan("Frame of frequency " + frequency, new DomeSettings(frequency, rows), new Order(2, 5));
    }

    /** The windbreak with the rims of its holes eased. */
    public static Plan eased(double rims) {
        Job job = windbreak().job();
        HubSettings hub = job.hub();
        return Planner.plan(
                new Job(
                        job.title(),
                        job.revision(),
                        job.order(),
                        job.dome(),
                        job.size(),
                        job.strut(),
                        new HubSettings(
                                hub.collar(), hub.width(), hub.ring(), hub.ringWidth(), hub.fix(), hub.endGap(), rims),
                        job.drilling(),
                        job.limits(),
                        job.shop()),
                List.of());
    }

    /** The windbreak on a press with another spindle. */
    public static Plan turning(double minRpm, double maxRpm) {
        Job job = windbreak().job();
        Machine press = job.shop().machine();
        Machine other = new Machine(
                press.name(),
                press.title(),
                press.kind(),
                press.post(),
                press.travel(),
                new Machine.Spindle(minRpm, maxRpm, 1),
                press.rotary(),
                press.source());
        return Planner.plan(
                new Job(
                        job.title(),
                        job.revision(),
                        job.order(),
                        job.dome(),
                        job.size(),
                        job.strut(),
                        job.hub(),
                        job.drilling(),
                        job.limits(),
                        new Shop(other, job.shop().programUnits(), job.shop().cutting())),
                List.of());
    }

    /** The windbreak in a shop whose only saw is too small. */
    public static Plan withoutCutters() {
        Job job = windbreak().job();
        DrillingSettings small =
                new DrillingSettings(List.of(saw("HS-38", "38 mm", 38)), Fit.REACH, StrictMath.PI / 360);
        return Planner.plan(
                new Job(
                        job.title(),
                        job.revision(),
                        job.order(),
                        job.dome(),
                        job.size(),
                        job.strut(),
                        job.hub(),
                        small,
                        job.limits(),
                        job.shop()),
                List.of());
    }

    /** A greenhouse frame in inch tube, sized by its longest strut. */
    public static Plan greenhouse() {
        RoundStock strut = tube("emt-3/4in", "EMT 3/4 in", STEEL, 23.4188, Optional.of(Interval.of(1.2446)));
        RoundStock collar = tube(
                "pvc-d1785-sch40-4in",
                "PVC pipe 4 in, Schedule 40",
                PVC,
                114.3,
                Optional.of(new Interval(6.02, 6.38, 6.74)));
        RoundStock ring =
                tube("pvc-d1785-sch40-2in", "PVC pipe 2 in, Schedule 40", PVC, 60.325, Optional.of(Interval.of(3.91)));
        return Planner.plan(
                new Job(
                        "Seedling house by the lower gate",
                        "HFKWRTPA",
                        new Order(3, 3),
                        new DomeSettings(2, 3),
                        new SizeRule.LongestStrut(1524),
                        new StrutSettings(strut, Optional.of(new TieHole(6.35, 19.05))),
                        new HubSettings(collar, 63.5, ring, 38.1, Fix.TIE, 1.5875),
                        new DrillingSettings(inchSaws(), Fit.REACH, StrictMath.PI / 360),
                        Limits.DEFAULT,
                        shop(ProgramUnits.INCH)),
                List.of());
    }

    private static Plan plan(String title, DomeSettings dome, Order order) {
        return Planner.plan(
                new Job(
                        title,
                        "BKTWRNPA",
                        order,
                        dome,
                        new SizeRule.Radius(2600),
                        new StrutSettings(
                                new RoundStock(
                                        "pvc-metric-40x3.0",
                                        "PVC-U pipe 40 × 3.0",
                                        PVC,
                                        new Interval(39.9, 40.05, 40.2),
                                        Optional.of(Interval.of(3)),
                                        true,
                                        false,
                                        0,
                                        List.of(5000.0),
                                        "ISO 4065"),
                                Optional.of(new TieHole(6, 18))),
                        hub(),
                        new DrillingSettings(metricSaws(), Fit.REACH, StrictMath.PI / 360),
                        Limits.DEFAULT,
                        shop(ProgramUnits.MM)),
                List.of());
    }

    private static HubSettings hub() {
        RoundStock collar = new RoundStock(
                "pvc-metric-160x6.2",
                "PVC-U pipe 160 × 6.2",
                PVC,
                Interval.of(160.1),
                Optional.of(new Interval(6.2, 6.4, 6.6)),
                true,
                true,
                0.6,
                List.of(3000.0, 5000.0),
                "ISO 4065");
        RoundStock ring = tube("pvc-metric-90x4.3", "PVC-U pipe 90 × 4.3", PVC, 90, Optional.of(Interval.of(4.3)));
        return new HubSettings(collar, 80, ring, 45, Fix.TIE, 2);
    }

    private static RoundStock tube(String name, String title, Material material, double od, Optional<Interval> wall) {
        return new RoundStock(
                name, title, material, Interval.of(od), wall, false, false, 0, List.of(3048.0), "invented for tests");
    }

    private static List<Cutter> metricSaws() {
        List<Cutter> cutters = new ArrayList<>();
        for (int size : new int[] {38, 40, 41, 43, 44, 46, 48, 51, 54, 57, 60, 65, 70}) {
            cutters.add(saw("HS-" + size, size + " mm", size));
        }
        return cutters;
    }

    private static List<Cutter> inchSaws() {
        List<Cutter> cutters = new ArrayList<>();
        for (int sixteenths = 14; sixteenths <= 40; sixteenths++) {
            String text = collarwright.units.InchFractions.nearest(sixteenths * 25.4 / 16, 16)
                    .text();
            cutters.add(saw("HS-" + text.replace(" ", ""), text, sixteenths * 25.4 / 16));
        }
        return cutters;
    }

    private static Cutter saw(String id, String marked, double size) {
        return new Cutter(id, CutterKind.HOLE_SAW, marked, size, Interval.of(size), false, 8, 38, 60, 600, "invented");
    }

    private static Shop shop(ProgramUnits units) {
        CuttingData cutting = new CuttingData(
                "pvc",
                "PVC-U",
                List.of(new CuttingData.Row(CutterKind.HOLE_SAW, 10, 200, 30, 0.1, 0.2, "our choice, no source")),
                "Clear the chips often: hot chips weld themselves into the cut.");
        Machine press = new Machine(
                "press",
                "Drill press",
                Machine.Kind.PRESS,
                new Machine.Post(false, Set.of("G0"), 3, 3, 70, "M2", "nc"),
                new Machine.Travel(0, 1, 0, 1, 1, 1, 1, 1),
                new Machine.Spindle(150, 3000, 1),
                new Machine.Rotary(true, true, 1, 1, 0, 0, 0, 0, 0, 0, 1),
                "our choice, no source");
        return new Shop(press, units, cutting);
    }
}
