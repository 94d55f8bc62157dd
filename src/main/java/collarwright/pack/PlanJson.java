package collarwright.pack;

import collarwright.dome.Dome;
import collarwright.job.Job;
import collarwright.machining.RotaryPlan;
import collarwright.plan.BillOfMaterials;
import collarwright.plan.DomeMeasures;
import collarwright.plan.FrameCounts;
import collarwright.plan.OrderTotals;
import collarwright.plan.Plan;
import collarwright.plan.StockWork;
import collarwright.plan.StripWork;
import collarwright.plan.WorkTime;
import java.io.IOException;
import java.util.List;

/**
 * Writes {@code plan.json}: everything that was computed of a job, for other programs and for checks.
 *
 * <p>Lengths in millimetres (keys ending in {@code Mm}), angles in degrees ({@code Deg}), full double precision, −0 as 0.
 * Frame: origin at the sphere's centre, +z through the apex, +x the stated meridian. Azimuths are clockwise from above
 * (from outside the dome), from the pattern's 0° line, which is the axis of hole 1. Every key with its unit and range stands
 * in the schema {@code shared/plan.schema.json}. A key is left out where there is nothing to say, never null.
 *
 * <p>The same plan gives the same bytes on every machine: UTF-8, line feeds, two spaces for each level, one line for each
 * node, member, hole and check.
 */
public final class PlanJson {

    /** Where it stands in a pack. */
    public static final String FILE = "plan.json";

    /** Grows when a key changes its meaning or goes away; new keys do not change it. */
    static final int FORMAT = 2;

    private PlanJson() {}

    /**
     * Writes a plan; running times of programs are not counted.
     *
     * @param plan the plan; one that a finding stops is written as far as it goes
     * @param programs the pack's programs in their order; empty for a press
     * @return the file's bytes
     */
    public static byte[] write(Plan plan, List<ProgramEntry> programs) {
        RotaryPlan nothing = new RotaryPlan(List.of(), List.of(), List.of());
        WorkTime time = WorkTime.of(plan, WorkTime.Machines.only(nothing.summary()));
        return write(plan, programs, new Making(nothing, StripWork.NONE, time, StockWork.of(plan)));
    }

    /**
     * How the order is made.
     *
     * @param rotary the pack's programs with their sticks; nothing for a press
     * @param strips collars from flat strip; none where they are cut from pipe
     * @param time how long the order takes
     * @param stock what is cut from which stick
     */
    public record Making(RotaryPlan rotary, StripWork strips, WorkTime time, StockWork stock) {}

    /**
     * Writes a plan with the sticks of its programs.
     *
     * @param plan the plan; one that a finding stops is written as far as it goes
     * @param programs the pack's programs in their order; empty for a press
     * @param making sticks and times
     * @return the file's bytes
     */
    public static byte[] write(Plan plan, List<ProgramEntry> programs, Making making) {
        return JsonOut.text(out -> {
            out.whole("format", FORMAT);
            job(out, plan.job());
            new InputsJson(out).write(plan.job());
            dome(out, plan);
            counts(out, plan.hubs().dome());
            order(out, plan);
            new PartsJson(out, plan).write();
            if (plan.assembly().isPresent()) {
                new AssemblyJson(out, plan).write(plan.assembly().get());
            }
            new SiteJson(out, plan).write();
            new BinsJson(out).write(plan);
            new StockJson(out).write(making.stock());
            new BuyJson(out).write(BillOfMaterials.of(plan, making.stock()));
            new BatchJson(out, plan, making.rotary()).write();
            new StripsJson(out).write(making.strips());
            new NestsJson(out).write(plan, making.strips());
            out.rows("programs", programs, program -> program(out, program));
            new TimesJson(out).write(making.time());
            new ChecksJson(out).write(plan);
        });
    }

    private static void job(JsonOut out, Job job) throws IOException {
        out.object("job", () -> {
            out.text("title", job.title());
            out.text("revision", job.revision());
        });
    }

    private static void dome(JsonOut out, Plan plan) throws IOException {
        DomeMeasures dome = DomeMeasures.of(plan);
        out.object("dome", () -> {
            if (plan.hubs().dome().hasTiers()) {
                out.whole("tiers", plan.hubs().dome().tierCount() - 1L);
            }
            if (dome.radius().isPresent()) {
                out.number("radiusMm", dome.radius().getAsDouble());
            }
            if (dome.floorDiameter().isPresent()) {
                out.number("floorDiameterMm", dome.floorDiameter().getAsDouble());
            }
            out.number("heightMm", dome.height());
            out.number("apexZMm", dome.highestNodeZ());
            out.number("lowestNodeZMm", dome.lowestNodeZ());
            out.number("lowestCollarPointZMm", dome.lowestCollarPointZ());
        });
    }

    private static void counts(JsonOut out, Dome dome) throws IOException {
        out.object("counts", () -> {
            out.whole("hubs", dome.nodeCount());
            out.whole("struts", dome.memberCount());
            out.whole("strutEnds", 2L * dome.memberCount());
            out.whole("collars", dome.nodeCount());
            out.whole("rings", dome.nodeCount());
            out.whole("ties", 2L * dome.memberCount());
            out.whole("feet", dome.feet().size());
            out.whole("maxwell", FrameCounts.onFeet(dome));
        });
    }

    private static void order(JsonOut out, Plan plan) throws IOException {
        OrderTotals made = OrderTotals.of(plan);
        out.object("order", () -> {
            out.whole("domes", plan.job().order().domes());
            out.number("spares", plan.job().order().sparesPercent());
            out.whole("collars", made.collars());
            out.whole("struts", made.struts());
            out.whole("rings", made.rings());
            out.whole("ties", made.ties());
        });
    }

    private static void program(JsonOut out, ProgramEntry program) throws IOException {
        out.text("file", program.file());
        out.text("machine", program.machine());
        out.number("seconds", program.seconds());
        out.texts("tools", program.tools());
        if (program.stick().isPresent()) {
            out.text("stick", program.stick().get());
        }
        if (program.runs().isPresent()) {
            out.whole("runs", program.runs().getAsInt());
        }
    }
}
