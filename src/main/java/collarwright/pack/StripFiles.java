package collarwright.pack;

import collarwright.cutting.SheetPacker;
import collarwright.drawing.Sheet;
import collarwright.drawing.StripSheet;
import collarwright.job.Job;
import collarwright.job.Shop;
import collarwright.job.StripSettings;
import collarwright.machining.BenchProgram;
import collarwright.machining.FlatTask;
import collarwright.plan.Plan;
import collarwright.plan.RolledHole;
import collarwright.plan.StripWork;
import collarwright.sheet.SoundSheet;
import collarwright.tooling.FlatStrip;
import collarwright.units.Angles;
import collarwright.units.Decimals;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/** Prints the files of collars from flat strip: cut files, a table, drilling programs. */
final class StripFiles {

    /** Where the table stands in a pack. */
    static final String TABLE = "strips/strips.csv";

    /** Where the table of nested sheets stands. */
    static final String NEST_TABLE = "strips/nest.csv";

    static final String NEST_PURPOSE =
            "which strip lies where on which sheet, how often each sheet is cut, and how much of the sheets is used";

    private final Plan plan;
    private final Job job;
    private final StripSettings settings;
    private final StripWork work;

    StripFiles(Plan plan, StripWork work) {
        this.plan = plan;
        this.job = plan.job();
        this.settings = job.shop().strip().orElseThrow();
        this.work = work;
    }

    void print(TemplateFiles.Taker taker) {
        Sheet sheet = StripSheet.draw(work.strips(), drawn(job, settings));
        String what = "one flat strip of each pattern at full size, "
                + (settings.kerf() > 0 ? "kerf allowed for" : "nominal lines")
                + (settings.leadIn() > 0 ? ", lead-ins on a layer of their own: " : ": ");
        CutFiles.of(job.sheet()).print(SoundSheet.of(sheet), "strips/strips", CutFiles.Purpose.of(what), taker);
        for (BenchProgram<FlatTask> program : work.programs().programs()) {
            String purpose = "flat strip of pattern " + program.task().strip().pattern() + ", "
                    + String.join(
                            ", ", program.tasks().stream().map(StripFiles::made).toList());
            taker.put(path(program), program.air() ? "air cut of " + purpose : purpose, bytes(program.text()));
        }
    }

    private static String made(FlatTask task) {
        return task.marks()
                ? "the two dimples"
                : task.cutter().kind().title() + " " + task.cutter().marked();
    }

    private static StripSheet.Settings drawn(Job job, StripSettings settings) {
        boolean gas = job.hub().collar().material().chlorinated();
        String process = "To be cut with: " + settings.process().word() + "."
                + (gas ? " Never with a laser or a plasma torch: the gas is toxic." : "");
        return new StripSheet.Settings(job.title(), job.revision(), settings.kerf(), settings.leadIn(), process);
    }

    /** The strips of the whole order on stock sheets; empty where the job does not ask for it. */
    static Optional<NestFiles> nest(Plan plan, StripWork work) {
        Job job = plan.job();
        Optional<StripSettings> settings = job.shop().strip();
        Optional<SheetPacker.Stock> stock = settings.flatMap(StripSettings::nest);
        if (stock.isEmpty() || work.strips().isEmpty() || work.tooLarge()) {
            return Optional.empty();
        }
        StripSheet.Settings drawn = drawn(job, settings.orElseThrow());
        List<Nesting.Wanted> wanted = work.strips().stream()
                .map(s -> new Nesting.Wanted(StripSheet.part(s, drawn), s.made()))
                .toList();
        String kerf = drawn.kerf() > 0 ? "-kerf" + Decimals.trimmed(drawn.kerf(), 3) : "";
        String means = job.hub().collar().material().title() + ", to be cut with a "
                + settings.get().process().word();
        return Optional.of(new NestFiles(
                plan,
                Nesting.alike(wanted, stock.get()),
                new NestFiles.Words("strips/nest", kerf, "Flat strips, nested", means)));
    }

    static String path(BenchProgram<FlatTask> program) {
        return "strips/" + program.name();
    }

    static ProgramEntry entry(BenchProgram<FlatTask> program, Shop shop) {
        String machine =
                shop.strip().flatMap(StripSettings::machine).orElseThrow().name();
        return new ProgramEntry(
                path(program),
                machine,
                program.seconds(),
                program.tasks().stream().map(t -> t.cutter().id()).toList(),
                Optional.empty(),
                OptionalInt.of(program.air() ? 1 : program.task().strip().made()));
    }

    Table table() {
        TableBuilder table = new TableBuilder(
                "pattern",
                "to make",
                "length (mm)",
                "width (mm)",
                "thickness (mm)",
                "joint",
                "joint length (mm)",
                "joint at azimuth (deg)",
                "hole",
                "from the left end (mm)",
                "from the lower edge (mm)",
                "diameter (mm)",
                "needed lean (deg)",
                "tilt limit drilled in pipe (deg)",
                "tilt limit after rolling (deg)",
                "least after rolling (deg)",
                "slack after rolling (deg)",
                "revision",
                "job");
        int at = 0;
        for (FlatStrip strip : work.strips()) {
            for (FlatStrip.FlatHole hole : strip.holes()) {
                RolledHole rolled = work.holes().get(at);
                at++;
                table.text(strip.pattern()).whole(strip.made());
                table.number(strip.length(), 3)
                        .number(strip.body().width(), 3)
                        .number(strip.body().wall().nominal(), 3);
                table.text(strip.joint().kind().word()).number(strip.joint().length(), 3);
                degrees(table, strip.seam());
                table.whole(hole.hole().number())
                        .number(hole.x(), 3)
                        .number(hole.y(), 3)
                        .number(2 * hole.radius(), 3);
                degrees(table, hole.hole().neededLean());
                degrees(table, hole.hole().tiltLimit());
                degrees(table, rolled.limit());
                degrees(table, rolled.least());
                degrees(table, rolled.slack());
                PackTables.end(table, plan);
            }
        }
        return table.table();
    }

    private static void degrees(TableBuilder table, double angle) {
        table.number(Angles.degrees(angle), 4);
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
