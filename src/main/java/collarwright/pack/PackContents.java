package collarwright.pack;

import collarwright.frame.FrameCsv;
import collarwright.frame.FrameDxf;
import collarwright.frame.FrameGlb;
import collarwright.frame.FrameObj;
import collarwright.frame.FrameStl;
import collarwright.hub.StrutTip;
import collarwright.job.Shop;
import collarwright.kit.SiteWork;
import collarwright.machining.BenchProgram;
import collarwright.machining.EndTask;
import collarwright.machining.ProgramFile;
import collarwright.machining.ProgramTask;
import collarwright.machining.RotarySettings;
import collarwright.paper.FrontPage;
import collarwright.paper.PackFile;
import collarwright.paper.Paperwork;
import collarwright.paper.SawPaper;
import collarwright.paper.Traveller;
import collarwright.picture.BackplotPicture;
import collarwright.picture.Figures;
import collarwright.picture.SvgPicture;
import collarwright.plan.BillOfMaterials;
import collarwright.plan.Plan;
import collarwright.plan.PlateWork;
import collarwright.plan.Production;
import collarwright.plan.WorkTime;
import collarwright.rehearsal.Replay;
import collarwright.tooling.Pattern;
import collarwright.units.Together;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Consumer;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Makes every file of a pack in memory, so that a folder is written only when all of them could be made. */
public final class PackContents {

    private static final String FRONT_PAGE = "index.html";
    private static final String TRAVELLER = "traveller.pdf";
    private static final String SAW_PAPER = "struts/saw.pdf";

    private final Production production;
    private final Plan plan;

    private PackContents(Production production) {
        this.production = production;
        this.plan = production.plan();
    }

    /**
     * Makes the files.
     *
     * @param production a plan that nothing stops, with its programs and with the findings that the pack shall tell
     * @return path in the pack → bytes, in the order in which a person meets them
     */
    public static Map<String, byte[]> of(Production production) {
        return new PackContents(production).make();
    }

    private Map<String, byte[]> make() {
        try (Together together = Together.open()) {
            // Begun in this order: what makes tables, which the workbook waits for, then what takes longest.
            var tables = begin(together, tables());
            var page = together.begin(() -> FrontPage.of(paperwork()));
            var traveller = begin(together, List.of(this::traveller));
            var templates = begin(together, templates());
            var programs = begin(together, programs());
            var model = begin(together, List.of(this::model));
            var data = begin(together, List.of(this::data));

            // Listed in the order in which a person meets them.
            Shelf shelf = new Shelf(plan.job().sheet().csv());
            List<Shelf> tabled = done(tables);
            Shelf listed = new Shelf(plan.job().sheet().csv());
            listed.add(tabled);
            List<Shelf> book = List.of(filled(own -> book(own, listed.tables())));
            shelf.add(done(traveller));
            shelf.add(done(templates));
            shelf.add(tabled.subList(0, 1));
            shelf.add(done(programs));
            shelf.add(tabled.subList(1, tabled.size()));
            shelf.add(done(model));
            shelf.add(book);
            shelf.add(done(data));
            return withPage(shelf, page.get());
        }
    }

    /** What makes tables; holes first. */
    private List<Consumer<Shelf>> tables() {
        List<Consumer<Shelf>> tables =
                new ArrayList<>(List.of(this::holes, this::machined, this::struts, this::saw, this::hubs));
        SiteWork.of(plan).ifPresent(work -> tables.add(shelf -> site(shelf, work)));
        return tables;
    }

    private List<Consumer<Shelf>> templates() {
        List<Consumer<Shelf>> templates = new ArrayList<>();
        plan.book().patterns().forEach(pattern -> templates.add(shelf -> templates(shelf, pattern)));
        return templates;
    }

    private List<Consumer<Shelf>> programs() {
        List<Consumer<Shelf>> programs = new ArrayList<>();
        production.rotary().programs().forEach(program -> programs.add(shelf -> program(shelf, program)));
        return programs;
    }

    /** Each fills a shelf of its own. */
    private List<Together.Later<Shelf>> begin(Together together, List<Consumer<Shelf>> fillers) {
        return together.beginAll(
                fillers.stream().<Supplier<Shelf>>map(f -> () -> filled(f)).toList());
    }

    private Shelf filled(Consumer<Shelf> filler) {
        return Shelf.filled(plan.job().sheet().csv(), filler);
    }

    private static List<Shelf> done(List<Together.Later<Shelf>> begun) {
        return begun.stream().map(Together.Later::get).toList();
    }

    private static Map<String, byte[]> withPage(Shelf shelf, FrontPage page) {
        List<PackFile> purposes = new ArrayList<>();
        purposes.add(new PackFile(FRONT_PAGE, "this page", 0));
        purposes.addAll(shelf.purposes());
        purposes.add(new PackFile("files.sha256", "tells whether a file was changed since", 0));
        Map<String, byte[]> files = new LinkedHashMap<>();
        files.put(FRONT_PAGE, page.bytes(purposes));
        files.putAll(shelf.files());
        return files;
    }

    private void traveller(Shelf shelf) {
        shelf.put(
                TRAVELLER,
                "route sheets for the bench: two pages or more for each pattern with press table and first article; set-up of"
                        + " the mill; hubs, and how they are put together",
                Traveller.print(paperwork()));
    }

    private void holes(Shelf shelf) {
        shelf.put("patterns", PlanTables.patterns(plan));
        shelf.put(PackTables.HOLES, "all holes of all patterns as a table", "holes", PackTables.holes(plan));
    }

    private void machined(Shelf shelf) {
        shelf.put(BatchCsv.BOXES, "how many collars of each pattern go in which box", "boxes", BatchCsv.boxes(plan));
        PlateWork plates = PlateWork.of(plan);
        if (!plates.plates().isEmpty()) {
            NestFiles laser = PlateFiles.of(plan, plates);
            laser.print(shelf::put);
            shelf.put(PlateFiles.TABLE, PlateFiles.PURPOSE, "index plates", laser.table());
        }
        if (!production.strips().strips().isEmpty()) {
            StripFiles strips = new StripFiles(plan, production.strips());
            shelf.put(
                    StripFiles.TABLE,
                    "size of every strip, where its holes are, and what they do after rolling",
                    "strips",
                    strips.table());
            strips.print(shelf::put);
            StripFiles.nest(plan, production.strips()).ifPresent(nest -> {
                shelf.put(StripFiles.NEST_TABLE, StripFiles.NEST_PURPOSE, "nested strips", nest.table());
                nest.print(shelf::put);
            });
        }
        if (!production.rotary().setups().isEmpty()) {
            shelf.put(
                    BatchCsv.STICKS,
                    "which collar lies where on which stick, and how often each stick is run",
                    "sticks to drill",
                    BatchCsv.sticks(plan, production.rotary().setups()));
        }
    }

    private void struts(Shelf shelf) {
        shelf.put(
                PackTables.CUT_LIST,
                "what to cut and where to drill its ends, shortest first",
                "strut types",
                PackTables.cutList(plan));
        shelf.put(SticksCsv.STICKS, SticksCsv.PURPOSE, "sticks to cut", SticksCsv.sticks(plan, production.stock()));
        shelf.put(
                BuyCsv.FILE,
                BuyCsv.PURPOSE,
                "what to buy",
                BuyCsv.print(plan, BillOfMaterials.of(plan, production.stock())));
        shelf.put(SticksCsv.OFFCUTS, SticksCsv.OFFCUTS_PURPOSE, "offcuts", SticksCsv.offcuts(production.stock()));
    }

    private void saw(Shelf shelf) {
        SawPaper.print(plan, production.stock())
                .ifPresent(paper -> shelf.put(
                        SAW_PAPER,
                        "for the saw: stops long to short, checks, and every stick with its picture",
                        paper));
        StopTable.of(plan).ifPresent(table -> shelf.put(StopTable.FILE, StopTable.PURPOSE, "stops", table));
        production.ends().programs().forEach(program -> endProgram(shelf, program));
    }

    private void hubs(Shelf shelf) {
        shelf.put(
                PackTables.MEMBERS,
                "which strut goes from which hub and hole to which",
                "members",
                PackTables.members(plan));
        plan.assembly()
                .ifPresent(a -> shelf.put(
                        RaisingCsv.FILE,
                        "in which order the struts are put in: hub, hole, push or bow, and what is still empty",
                        "raising",
                        RaisingCsv.print(plan, a)));
        shelf.put("hub types", PlanTables.hubTypes(plan));
        shelf.put(
                HubTable.FILE, "which collar every hub takes, and which way up it goes", "hubs", HubTable.print(plan));
    }

    private void site(Shelf shelf, SiteWork work) {
        SiteFiles site = new SiteFiles(plan, work);
        site.print(shelf::put);
        shelf.put(
                SiteFiles.CONNECTIONS,
                "which strut end goes into which hub and hole, listed both ways",
                "connections",
                site.connections());
        shelf.put(SiteFiles.BUNDLES, "what is in which bundle, and what it weighs", "bundles", site.bundles());
    }

    private void book(Shelf shelf, List<PackBook.Part> tables) {
        List<PackBook.Part> parts = new ArrayList<>();
        parts.add(new PackBook.Part("job", PlanTables.job(plan)));
        parts.add(new PackBook.Part("findings", PlanTables.findings(plan)));
        parts.addAll(tables);
        parts.add(new PackBook.Part("stock", PlanTables.stock(production.stock())));
        parts.add(new PackBook.Part("programs", PlanTables.programs(entries())));
        parts.add(new PackBook.Part("checks", PlanTables.checks(plan)));
        shelf.put(PackBook.FILE, PackBook.PURPOSE, PackBook.print(plan, List.copyOf(parts)));
    }

    private void data(Shelf shelf) {
        shelf.put(
                PlanJson.FILE,
                "everything that was computed, for other programs",
                PlanJson.write(
                        plan,
                        entries(),
                        new PlanJson.Making(production.rotary(), production.strips(), time(), production.stock())));
    }

    private void model(Shelf shelf) {
        ModelFiles model = new ModelFiles(plan);
        shelf.put("model/frame.obj", "nodes and members for other programs, mm", FrameObj.write(model.net()));
        shelf.put(
                "model/frame.csv", "the same as a table, with the hubs' ids", FrameCsv.write(model.net(), model.ids()));
        shelf.put(
                "model/frame.dxf", "struts as lines in space, from cut end to cut end", FrameDxf.write(model.model()));
        if (model.solid()) {
            shelf.put("model/solid.stl", "struts and collars as solids, mm", FrameStl.write(model.model()));
            shelf.put("model/solid.glb", "the same for pictures, in metres", FrameGlb.write(model.model()));
        }
    }

    private Paperwork paperwork() {
        Paperwork.Lying lying = new Paperwork.Lying(production.ends(), production.strips(), production.stock());
        return new Paperwork(
                plan, production.rotary().setups(), production.rotary().count(), lying, List.of(), time());
    }

    private WorkTime time() {
        return WorkTime.of(plan, production.machines());
    }

    private void templates(Shelf shelf, Pattern pattern) {
        int made = plan.job().order().made(pattern.count());
        new TemplateFiles(plan.job()).print(pattern, made, shelf::put);
    }

    private void program(Shelf shelf, ProgramFile program) {
        shelf.put(path(program), purpose(program), program.text());
        if (program.purpose() == ProgramFile.Purpose.CUT) {
            shelf.put(backplotPath(program), "picture of what " + program.name() + " does", backplot(program));
        }
    }

    private String backplot(ProgramFile program) {
        RotarySettings settings = Production.settings(plan.job());
        Replay replay = Replay.of(program, settings);
        return SvgPicture.document(
                new BackplotPicture(program, replay, settings, new Figures(settings.units()), BackplotPicture.WIDTH),
                "backplot");
    }

    static String backplotPath(ProgramFile program) {
        return "machine/" + program.name().substring(0, program.name().lastIndexOf('.')) + ".svg";
    }

    private void endProgram(Shelf shelf, BenchProgram<EndTask> program) {
        EndTask task = program.task();
        String ends =
                task.inLine() ? "both tie holes" : task.atStop() == StrutTip.A ? "tie hole at E1" : "tie hole at E2";
        String what = "strut " + task.stops().type() + ", " + ends + ", on the bed";
        shelf.put(path(program), program.air() ? "air cut of " + what : what, program.text());
    }

    static String path(BenchProgram<EndTask> program) {
        return "struts/" + program.name();
    }

    static String path(ProgramFile program) {
        return "machine/" + program.name();
    }

    static String purpose(ProgramFile program) {
        String cutters = tasks(program)
                .map(t -> t.marks()
                        ? "the two dimples"
                        : t.cutter().kind().title() + " " + t.cutter().marked())
                .collect(Collectors.joining(", then "));
        String what = program.task()
                .map(t -> "stick " + t.load().id() + ", " + cutters)
                .orElse("turns the rotary axis by 30° and asks which way it went");
        return switch (program.purpose()) {
            case CUT -> what;
            case AIR_CUT -> "air cut of " + what;
            case DIRECTION_TEST -> "run this first: " + what;
        };
    }

    private static Stream<ProgramTask> tasks(ProgramFile program) {
        return program.byTask().stream().flatMap(view -> view.task().stream());
    }

    private List<ProgramEntry> entries() {
        List<ProgramEntry> entries = new ArrayList<>(
                production.rotary().programs().stream().map(this::entry).toList());
        production.ends().programs().forEach(p -> entries.add(entry(p)));
        production
                .strips()
                .programs()
                .programs()
                .forEach(p -> entries.add(StripFiles.entry(p, plan.job().shop())));
        return List.copyOf(entries);
    }

    private ProgramEntry entry(BenchProgram<EndTask> program) {
        Shop.StrutBed bed = plan.job().shop().strutBed().orElseThrow();
        String drill = Production.bed(plan.job()).orElseThrow().drill().id();
        return new ProgramEntry(
                path(program),
                bed.machine().name(),
                program.seconds(),
                List.of(drill),
                Optional.empty(),
                OptionalInt.of(program.air() ? 1 : program.task().stops().made()));
    }

    private ProgramEntry entry(ProgramFile program) {
        List<String> tools = tasks(program).map(t -> t.cutter().id()).distinct().toList();
        boolean cuts = program.purpose() == ProgramFile.Purpose.CUT;
        return new ProgramEntry(
                path(program),
                plan.job().shop().machine().name(),
                program.seconds(),
                tools,
                program.task().map(t -> t.load().id()),
                program.task().stream()
                        .mapToInt(t -> cuts ? t.load().runs() : 1)
                        .findFirst());
    }
}
