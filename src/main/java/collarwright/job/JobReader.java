package collarwright.job;

import collarwright.collar.HubSettings;
import collarwright.dome.DomeSettings;
import collarwright.dome.DomeSource;
import collarwright.finding.Code;
import collarwright.stock.Material;
import collarwright.strut.SizeRule;
import collarwright.strut.StrutSettings;
import collarwright.tooling.Boring;
import collarwright.tooling.DrillingSettings;
import collarwright.tooling.SharingLimits;
import collarwright.units.PlainText;
import collarwright.units.Quoted;
import java.text.Normalizer;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

/**
 * Reads a job file: TOML with lengths in any unit, resolved against the profiles.
 *
 * <p>It is an error, each with its place in the text: JOB_FILE_UNREADABLE, JOB_SYNTAX, JOB_UNKNOWN_KEY, JOB_KEY_MISSING,
 * JOB_WRONG_TYPE, JOB_BAD_LENGTH, JOB_BAD_NUMBER, JOB_OUT_OF_RANGE, JOB_UNKNOWN_WORD, JOB_CONFLICT,
 * JOB_NOT_IN_THIS_VERSION, PROFILE_UNKNOWN, PROFILE_WRONG, TRIAL_PIECE (a warning), DOME_PORTION, OFFCUT_FILE,
 * PRICE_FILE, PRICE_UNKNOWN (a warning). All of them are reported in one run.
 */
public final class JobReader {

    private static final int TITLE_CHARACTERS = 500;
    private static final double MOST_PIECES = 1e9;

    private final TomlReader reader;
    private final Profiles profiles;
    private final FrameFiles frames;

    private JobReader(TomlReader reader, Profiles profiles, FrameFiles frames) {
        this.reader = reader;
        this.profiles = profiles;
        this.frames = frames;
    }

    /**
     * Reads a job file.
     *
     * @param name the file's name as the user gave it
     * @param bytes its content, at most {@link TextFile#MOST_BYTES}, UTF-8
     * @param profiles what the job may call by name; their findings are told too
     * @return the job and the findings
     */
    public static JobReading read(String name, byte[] bytes, Profiles profiles) {
        return read(name, bytes, profiles, FrameFiles.NONE);
    }

    /**
     * Reads a job file that may name a frame.
     *
     * @param name the file's name as the user gave it
     * @param bytes its content, at most {@link TextFile#MOST_BYTES}, UTF-8
     * @param profiles what the job may call by name; their findings are told too
     * @param frames opens the file of a frame
     * @return the job and the findings
     */
    public static JobReading read(String name, byte[] bytes, Profiles profiles, FrameFiles frames) {
        FindingList findings = new FindingList();
        findings.addAll(profiles.findings());
        Optional<Job> job = TextFile.decode(name, bytes, findings)
                .flatMap(text -> TomlReader.open(text, findings))
                .flatMap(reader -> new JobReader(reader, profiles, frames).read());
        return new JobReading(job.filter(j -> !findings.stopped()), findings.sorted());
    }

    /**
     * Reads a job from a text.
     *
     * @param name the file's name as the user gave it
     * @param text its content
     * @param profiles what the job may call by name; their findings are told too
     * @return the job and the findings
     */
    public static JobReading read(String name, String text, Profiles profiles) {
        return read(name, text.getBytes(java.nio.charset.StandardCharsets.UTF_8), profiles);
    }

    private Optional<Job> read() {
        TableView root = reader.root();
        Optional<String> title = title(root);
        Optional<TableView> orderTable = root.table("order");
        Optional<Order> order = SettingsReader.order(orderTable);
        Optional<TableView> domeTable = root.needTable("dome", "which dome is built");
        Optional<DomeSource> settings = domeTable.flatMap(table -> new DomeReader(table, frames).source());
        order.ifPresent(o -> countable(orderTable, o, settings));
        Optional<TableView> strutTable = root.needTable("strut", "what struts are made of");
        Optional<StrutReader> strutReader = strutTable.map(table -> new StrutReader(table, profiles));
        Optional<StrutSettings> strut = strutReader.flatMap(StrutReader::read);
        Optional<SizeRule> size = domeTable.flatMap(table -> new SizeReader(table, strutTable).size(strut));
        domeTable.ifPresent(table -> floorOfSphere(table, settings, size));
        Optional<TableView> hubTable = root.needTable("hub", "what hubs are made of");
        Optional<HubReader> hubReader = hubTable.map(table -> new HubReader(table, profiles));
        Optional<HubSettings> hub = hubReader.flatMap(HubReader::read);
        Optional<TableView> drillingTable = root.needTable("drilling", "which cutters the shop has");
        Optional<SettingsReader.Bounds> bounds = SettingsReader.limits(root.table("limits"));
        // Without good limits the cutters are read all the same, for their findings.
        double band = bounds.map(SettingsReader.Bounds::nearestBand).orElse(0.0);
        SharingLimits shared = bounds.map(SettingsReader.Bounds::shared).orElse(SharingLimits.USUAL);
        Optional<DrillingSettings> drilling =
                drillingTable.flatMap(table -> new DrillingReader(table, profiles).read(band, shared));
        SettingsReader.Materials materials = materials(root, new Parts(hubTable, hub, strutTable, strut));
        Optional<TableView> shopTable = root.table("shop");
        Optional<Shop> shop = SettingsReader.shop(shopTable, profiles, materials, reader.bareUnit());
        Optional<PlateReader.Found> plates = PlateReader.read(root.table("plates"), profiles);
        Optional<SheetSettings> sheet =
                SheetReader.read(root.table("sheet"), profiles).flatMap(s -> plates.map(p -> s.with(p.plates())));
        Set<String> stocks = stocks(strut, hub);
        Optional<PriceList> prices = PriceReader.read(shopTable, frames, profiles, stocks);
        Optional<CuttingSettings> cutting =
                new SawReader(root.table("saw"), frames).read(offers(strutReader, hubReader), prices, stocks);
        Optional<SiteSettings> site = SiteReader.read(root.table("site"));
        flatOnPress(shopTable, strutTable);
        reader.finish();
        boolean complete = all(title, order, settings, size, strut, hub, drilling, bounds, shop, sheet, cutting, site);
        if (!complete) {
            return Optional.empty();
        }
        return Optional.of(Revisions.stamped(new Job(
                title.orElseThrow(),
                "",
                order.orElseThrow(),
                settings.orElseThrow(),
                size.orElseThrow(),
                strut.orElseThrow(),
                hub.orElseThrow(),
                drilled(drilling.orElseThrow(), hub.orElseThrow(), shop.orElseThrow()),
                bounds.orElseThrow().limits(),
                shop.orElseThrow(),
                sheet.orElseThrow(),
                cutting.orElseThrow(),
                site.orElseThrow())));
    }

    private static boolean all(Optional<?>... parts) {
        return Stream.of(parts).allMatch(Optional::isPresent);
    }

    private static Optional<SettingsReader.Placed> placed(
            Optional<TableView> table, String key, Optional<Material> material) {
        return table.flatMap(t -> material.map(m -> new SettingsReader.Placed(t.key(key), m)));
    }

    private static SawReader.Offers offers(Optional<StrutReader> strut, Optional<HubReader> hub) {
        return new SawReader.Offers(
                strut.map(StrutReader::offers).orElse(List.of()),
                hub.map(HubReader::collarOffers).orElse(List.of()),
                hub.map(HubReader::ringOffers).orElse(List.of()));
    }

    // Where one of them could not be read, nothing can be said of an offcut's stock.
    private static Set<String> stocks(Optional<StrutSettings> strut, Optional<HubSettings> hub) {
        Set<String> names = new TreeSet<>();
        if (strut.isPresent() && hub.isPresent()) {
            names.add(strut.get().stock().inventoryName());
            names.add(hub.get().collar().inventoryName());
            names.add(hub.get().ring().inventoryName());
        }
        return names;
    }

    private record Parts(
            Optional<TableView> hubTable,
            Optional<HubSettings> hub,
            Optional<TableView> strutTable,
            Optional<StrutSettings> strut) {}

    private static SettingsReader.Materials materials(TableView root, Parts parts) {
        return new SettingsReader.Materials(
                placed(
                        parts.hubTable(),
                        "collar",
                        parts.hub().map(h -> h.collar().material())),
                placed(
                        parts.strutTable(),
                        "stock",
                        parts.strut().map(s -> s.stock().material())),
                parts.strut().isEmpty() || parts.strut().get().tieHole().isPresent(),
                root.table("strip"));
    }

    // A cutter that was not measured drills as the trial piece showed; a tube cutter makes just the size that is
    // needed.
    private static DrillingSettings drilled(DrillingSettings drilling, HubSettings hub, Shop shop) {
        DrillingSettings wider =
                hub.trialPiece().map(piece -> drilling.wider(piece.oversize())).orElse(drilling);
        boolean exact = drilling.boring().rule() != Boring.Rule.NEVER;
        return shop.machine()
                .tube()
                .filter(tube -> exact)
                .map(tube -> wider.with(new Boring(Boring.Rule.ALWAYS, List.of(tube.cutter()))))
                .orElse(wider);
    }

    // A bed's programs lay a round strut down; a flat end lies lower, and on its face.
    private static void flatOnPress(Optional<TableView> shop, Optional<TableView> strut) {
        Optional<KeyView> machine = shop.map(t -> t.key("strut-machine"))
                .filter(KeyView::isText)
                .filter(k -> k.text().filter(m -> !m.equals("press")).isPresent());
        if (machine.isPresent() && strut.filter(EndWorkReader::flattened).isPresent()) {
            machine.get()
                    .stop(
                            Code.JOB_CONFLICT,
                            "a press for flattened ends",
                            "a bed, whose programs are for round struts",
                            "take strut-machine out and drill by the stops",
                            "or take ends = \"flattened\" out of [strut]");
        }
    }

    private static void floorOfSphere(TableView dome, Optional<DomeSource> settings, Optional<SizeRule> size) {
        boolean whole =
                settings.filter(d -> d instanceof DomeSettings s && s.whole()).isPresent();
        if (whole && size.filter(s -> s instanceof SizeRule.FloorDiameter).isPresent()) {
            dome.key("floor-diameter")
                    .stop(
                            Code.JOB_CONFLICT,
                            "a size that a whole sphere has",
                            "floor-diameter, but the whole sphere is kept and has no floor",
                            "give radius, height or longest-strut",
                            "or keep fewer rows");
        }
    }

    // Every strut end is counted, with spares; beyond this the counts themselves would be wrong.
    private static void countable(Optional<TableView> table, Order order, Optional<DomeSource> settings) {
        if (!(settings.orElse(null) instanceof DomeSettings dome) || order.domes() == 1) {
            return;
        }
        double endsOfSphere = 2.0 * dome.sphere().members();
        double made = endsOfSphere * order.domes() * (1 + order.sparesPercent() / 100);
        if (made > MOST_PIECES) {
            long most = (long) (MOST_PIECES / (endsOfSphere * (1 + order.sparesPercent() / 100)));
            table.ifPresent(t -> t.key("domes")
                    .stop(
                            Code.JOB_OUT_OF_RANGE,
                            "at most " + most + " domes of this frequency in one job",
                            Integer.toString(order.domes()),
                            "split the order over several jobs"));
        }
    }

    private static Optional<String> title(TableView root) {
        KeyView key = root.need("title", "the job's name for people", "title = \"Garden dome\"");
        Optional<String> title = key.text().map(String::strip);
        if (title.isEmpty()) {
            return title;
        }
        int characters = title.get().codePointCount(0, title.get().length());
        if (characters == 0 || characters > TITLE_CHARACTERS) {
            key.stop(
                    Code.JOB_OUT_OF_RANGE,
                    "1 to " + TITLE_CHARACTERS + " characters",
                    characters + " characters",
                    "write a short name; any script will do");
            return Optional.empty();
        }
        if (!title.get().codePoints().allMatch(Quoted::printable)) {
            key.stop(
                    Code.JOB_OUT_OF_RANGE,
                    "one line of letters and signs that print",
                    Quoted.text(title.get()),
                    "take line breaks and control characters out");
            return Optional.empty();
        }
        String plain = PlainText.ascii(title.get());
        if (marks(plain) > marks(Normalizer.normalize(title.get(), Normalizer.Form.NFKD))) {
            key.note(
                    Code.JOB_TITLE_LETTERS,
                    "Latin, Greek or Cyrillic letters",
                    Quoted.text(title.get()) + ", which templates and programs show as " + Quoted.text(plain)
                            + ", and papers with boxes where their typeface lacks a letter",
                    "write a name in Latin letters beside it",
                    "or leave it: sizes and holes are the same, and the revision is on everything");
        }
        return title;
    }

    private static long marks(String text) {
        return text.chars().filter(c -> c == '?').count();
    }
}
