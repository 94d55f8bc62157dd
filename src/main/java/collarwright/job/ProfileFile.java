package collarwright.job;

import collarwright.collar.TrialPiece;
import collarwright.finding.Code;
import collarwright.finding.Finding;
import collarwright.finding.Where;
import collarwright.machining.CuttingData;
import collarwright.machining.Machine;
import collarwright.stock.RoundStock;
import collarwright.units.Quoted;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Pattern;

/**
 * One file of profiles. It may hold any number of each kind, in the lists stock, material, rack, cutting, machine,
 * trial-piece and cut-layers.
 */
final class ProfileFile {

    /** What a profile may be called. */
    static final Pattern NAME = Pattern.compile("[a-z0-9][a-z0-9._-]{0,59}");

    private final TomlReader reader;
    private final String place;
    private final Map<String, String> seen;
    private final KeyView source;
    private final Map<String, String> faulty = new HashMap<>();

    /**
     * What every profile has.
     *
     * @param table its table
     * @param name what jobs call it
     * @param title its name for people
     * @param source where its figures come from
     */
    record Entry(TableView table, String name, String title, String source) {}

    private ProfileFile(TomlReader reader, String place, Map<String, String> seen) {
        this.reader = reader;
        this.place = place;
        this.seen = seen;
        this.source = reader.root().key("source");
    }

    /**
     * Opens every file of a source.
     *
     * @param source where the files are
     * @param findings takes what is wrong
     * @return the files that could be opened
     */
    static List<ProfileFile> open(ProfileSource source, FindingList findings) {
        List<TextFile> texts = new ArrayList<>();
        String at = "";
        try {
            for (String name : source.names()) {
                at = name;
                TextFile.decode(source.place(name), source.read(name), findings).ifPresent(texts::add);
            }
        } catch (IOException e) {
            findings.add(Finding.stop(
                    Code.JOB_FILE_UNREADABLE,
                    new Where.Path(source.place(at)),
                    "profiles that can be read",
                    Quoted.bare(e.getClass().getSimpleName() + ": " + e.getMessage()),
                    "check the name of the folder and the right to read it"));
        }
        List<ProfileFile> files = new ArrayList<>();
        Map<String, String> seen = new HashMap<>();
        List<Optional<TomlReader>> readers = TomlReader.open(texts, findings);
        for (int i = 0; i < texts.size(); i++) {
            String place = texts.get(i).name();
            readers.get(i).ifPresent(reader -> files.add(new ProfileFile(reader, place, seen)));
        }
        return files;
    }

    List<Profile<MaterialProfile>> materials() {
        return all("material", entry -> MaterialReader.read(entry));
    }

    List<Profile<RoundStock>> stock(Map<String, Profile<MaterialProfile>> materials) {
        return all("stock", entry -> StockReader.profile(entry, materials));
    }

    List<Profile<Rack>> racks() {
        return all("rack", entry -> CutterReader.rack(entry));
    }

    List<Profile<CuttingData>> cutting() {
        return all("cutting", entry -> CuttingReader.read(entry));
    }

    List<Profile<Machine>> machines() {
        return all("machine", entry -> MachineProfiles.read(entry));
    }

    List<Profile<TrialPiece>> trialPieces() {
        return all("trial-piece", entry -> TrialPieces.read(entry));
    }

    List<Profile<CutLayers>> cutLayers() {
        return all("cut-layers", entry -> LayersReader.read(entry));
    }

    /** Profiles that are there but cannot be read: the file's place by kind and name, such as {@code machine mine}. */
    Map<String, String> faulty() {
        return Map.copyOf(faulty);
    }

    void finish() {
        reader.finish();
    }

    private <T> List<Profile<T>> all(String kind, Function<Entry, Optional<T>> read) {
        List<Profile<T>> profiles = new ArrayList<>();
        for (KeyView item : reader.root().key(kind).items()) {
            item.table().ifPresent(table -> {
                Entry entry = entry(kind, table);
                Optional<T> value = read.apply(entry);
                if (value.isEmpty()) {
                    faulty.put(kind + " " + entry.name(), place);
                }
                value.filter(v -> !entry.name().isEmpty())
                        .ifPresent(v ->
                                profiles.add(new Profile<>(entry.name(), entry.title(), entry.source(), place, v)));
            });
        }
        return profiles;
    }

    private Entry entry(String kind, TableView table) {
        KeyView name = table.need("name", "what jobs call it", "name = \"my-" + kind + "\"");
        String title = table.need("title", "its name for people", "title = \"…\"")
                .text()
                .orElse("");
        KeyView own = table.key("source");
        if (!own.present() && !source.present()) {
            table.need("source", "where the figures come from", "source = \"measured by us\"");
        }
        String from = (own.present() ? own : source).text().orElse("");
        return new Entry(table, name(kind, name), title, from);
    }

    private String name(String kind, KeyView key) {
        String name = key.text().orElse("");
        if (!name.isEmpty() && !NAME.matcher(name).matches()) {
            key.stop(
                    Code.PROFILE_WRONG,
                    "small letters, digits, and . _ - between them, at most 60",
                    Quoted.text(name),
                    "choose a name such as my-" + kind + "-1");
            return "";
        }
        String before = seen.putIfAbsent(kind + " " + name, key.where().text());
        if (!name.isEmpty() && before != null) {
            key.stop(
                    Code.PROFILE_WRONG,
                    "a name that no other " + kind + " here has",
                    Quoted.text(name) + ", which stands at " + before + " too",
                    "give one of the two another name, or take it out");
        }
        return name;
    }
}
