package collarwright.job;

import collarwright.collar.TrialPiece;
import collarwright.finding.Finding;
import collarwright.machining.CuttingData;
import collarwright.machining.Machine;
import collarwright.stock.RoundStock;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * Everything that a job can call by name: stock, materials, racks, cutting data, machines, trial pieces and layers of cut
 * files. All sizes but those of trial pieces are nominal, not measured.
 */
public final class Profiles {

    /** The kinds of profiles. */
    public enum Kind {
        /** Pipe, tube and bar. */
        STOCK,
        /** What stock is made of. */
        MATERIAL,
        /** The cutters a shop owns. */
        RACK,
        /** Speeds and feeds in one material. */
        CUTTING,
        /** A machine that drills. */
        MACHINE,
        /** What a test collar showed. */
        TRIAL_PIECE,
        /** Names and colours of layers in cut files. */
        CUT_LAYERS
    }

    private final SortedMap<String, Profile<MaterialProfile>> materials = new TreeMap<>();
    private final SortedMap<String, Profile<RoundStock>> stock = new TreeMap<>();
    private final SortedMap<String, Profile<Rack>> racks = new TreeMap<>();
    private final SortedMap<String, Profile<CuttingData>> cutting = new TreeMap<>();
    private final SortedMap<String, Profile<Machine>> machines = new TreeMap<>();
    private final SortedMap<String, Profile<TrialPiece>> trialPieces = new TreeMap<>();
    private final SortedMap<String, Profile<CutLayers>> cutLayers = new TreeMap<>();
    private final List<Finding> findings = new ArrayList<>();
    private final SortedMap<String, String> faulty = new TreeMap<>();

    private Profiles() {}

    /**
     * Reads profiles. A profile of a later source takes the place of one with the same name.
     *
     * @param sources the program's own first, then the user's folders
     * @return what could be read; {@link #findings()} tells the rest
     */
    public static Profiles load(List<ProfileSource> sources) {
        FindingList findings = new FindingList();
        List<ProfileFile> files = new ArrayList<>();
        for (ProfileSource source : sources) {
            files.addAll(ProfileFile.open(source, findings));
        }
        Profiles profiles = new Profiles();
        // Stock names its material, so materials come first, whichever file they stand in.
        files.forEach(file -> profiles.put(profiles.materials, file.materials()));
        files.forEach(file -> {
            profiles.put(profiles.stock, file.stock(profiles.materials));
            profiles.put(profiles.racks, file.racks());
            profiles.put(profiles.cutting, file.cutting());
            profiles.put(profiles.machines, file.machines());
            profiles.put(profiles.trialPieces, file.trialPieces());
            profiles.put(profiles.cutLayers, file.cutLayers());
            file.finish();
        });
        files.forEach(file -> profiles.faulty.putAll(file.faulty()));
        profiles.findings.addAll(findings.sorted());
        return profiles;
    }

    private <T> void put(Map<String, Profile<T>> map, List<Profile<T>> read) {
        read.forEach(profile -> map.put(profile.name(), profile));
    }

    /**
     * Returns what is wrong in the profile files.
     *
     * @return in the order of their places; empty if all could be read
     */
    public List<Finding> findings() {
        return List.copyOf(findings);
    }

    /**
     * Tells where a profile stands that could not be read.
     *
     * @param kind its kind
     * @param name its name
     * @return the file; empty if there is none of this name, or none with a fault
     */
    public Optional<String> faultyIn(Kind kind, String name) {
        String list = kind.name().toLowerCase(Locale.ROOT).replace('_', '-');
        return Optional.ofNullable(faulty.get(list + " " + name));
    }

    /**
     * Finds stock by name.
     *
     * @param name the profile's name
     * @return the pipe, tube or bar, nominal
     */
    public Optional<RoundStock> stock(String name) {
        return value(stock, name);
    }

    /**
     * Lists every pipe, tube and bar.
     *
     * @return in the order of their names, nominal
     */
    public List<RoundStock> allStock() {
        return stock.values().stream().map(Profile::value).toList();
    }

    /**
     * Finds a material by name.
     *
     * @param name such as {@code pvc}
     * @return the material with its cutting data's name
     */
    public Optional<MaterialProfile> material(String name) {
        return value(materials, name);
    }

    /**
     * Finds a rack by name.
     *
     * @param name such as {@code metric-hole-saws}
     * @return its cutters
     */
    public Optional<Rack> rack(String name) {
        return value(racks, name);
    }

    /**
     * Finds cutting data by name.
     *
     * @param name such as {@code pvc}
     * @return speeds and feeds
     */
    public Optional<CuttingData> cutting(String name) {
        return value(cutting, name);
    }

    /**
     * Finds a machine by name.
     *
     * @param name such as {@code press}
     * @return the machine
     */
    public Optional<Machine> machine(String name) {
        return value(machines, name);
    }

    /**
     * Finds a trial piece by name.
     *
     * @param name such as {@code our-160-trial}
     * @return what was measured on it
     */
    public Optional<TrialPiece> trialPiece(String name) {
        return value(trialPieces, name);
    }

    /**
     * Finds names and colours of layers by name.
     *
     * @param name such as {@code cut-only}
     * @return how cut files are written
     */
    public Optional<CutLayers> cutLayers(String name) {
        return value(cutLayers, name);
    }

    private static <T> Optional<T> value(Map<String, Profile<T>> map, String name) {
        return Optional.ofNullable(map.get(name)).map(Profile::value);
    }

    /**
     * Lists all profiles of a kind.
     *
     * @param kind the kind
     * @return in the order of their names
     */
    public Collection<? extends Profile<?>> all(Kind kind) {
        return switch (kind) {
            case STOCK -> Collections.unmodifiableCollection(stock.values());
            case MATERIAL -> Collections.unmodifiableCollection(materials.values());
            case RACK -> Collections.unmodifiableCollection(racks.values());
            case CUTTING -> Collections.unmodifiableCollection(cutting.values());
            case MACHINE -> Collections.unmodifiableCollection(machines.values());
            case TRIAL_PIECE -> Collections.unmodifiableCollection(trialPieces.values());
            case CUT_LAYERS -> Collections.unmodifiableCollection(cutLayers.values());
        };
    }

    /**
     * Lists the names of a kind.
     *
     * @param kind the kind
     * @return in the order of the alphabet
     */
    public List<String> names(Kind kind) {
        return all(kind).stream().map(profile -> profile.name()).toList();
    }
}
