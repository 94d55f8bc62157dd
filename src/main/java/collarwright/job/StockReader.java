package collarwright.job;

import collarwright.cutting.StockLength;
import collarwright.finding.Code;
import collarwright.geometry.Interval;
import collarwright.stock.Material;
import collarwright.stock.RoundStock;
import collarwright.units.Decimals;
import collarwright.units.Length;
import collarwright.units.Quoted;
import collarwright.units.Spelling;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/**
 * Reads pipe, tube and bar: from profile files, and given in place in a job.
 *
 * <p>Nominal wall: the middle of its two limits where a profile or a job gives two, else the one value given. Nominal
 * outside diameter: the stated one; its limits stand beside it.
 */
final class StockReader {

    /** How thick a wall may be, in outside diameters, without a warning. Our choice: the thickest pipe shipped has 0.19. */
    private static final double THICK = 0.2;

    private StockReader() {}

    /**
     * Reads one stock from a profile file.
     *
     * @param entry its table with name, title and source
     * @param materials the known materials
     * @return the stock, or empty after findings
     */
    static Optional<RoundStock> profile(ProfileFile.Entry entry, Map<String, Profile<MaterialProfile>> materials) {
        TableView table = entry.table();
        Optional<Material> material = material(
                table,
                materials.keySet(),
                name -> Optional.ofNullable(materials.get(name)).map(Profile::value));
        Optional<Interval> od = profileOd(table);
        return build(table, od, material, new Named(entry.name(), entry.title(), entry.source()), false);
    }

    /**
     * Reads stock that a job gives in place by its sizes.
     *
     * @param table has od and material, and perhaps wall and lengths
     * @param profiles know the materials
     * @param pipe whether a wall is needed
     * @return the stock, or empty after findings
     */
    static Optional<RoundStock> inPlace(TableView table, Profiles profiles, boolean pipe) {
        Optional<Material> material = material(table, profiles.names(Profiles.Kind.MATERIAL), profiles::material);
        Optional<Interval> od =
                table.need("od", "the outside diameter", "od = \"25 mm\"").interval();
        return build(table, od, material, new Named(RoundStock.IN_PLACE, "", "given in the job"), pipe);
    }

    private record Named(String name, String title, String source) {}

    private static Optional<Interval> profileOd(TableView table) {
        Optional<Length> od =
                table.need("od", "the outside diameter", "od = \"40 mm\"").length(Length.Zero.REFUSED);
        KeyView limitsKey = table.key("od-limits");
        KeyView toleranceKey = table.key("od-tolerance");
        Optional<Interval> limits = limitsKey.interval();
        Optional<Double> tolerance = toleranceKey.size();
        if (limitsKey.present() && toleranceKey.present()) {
            toleranceKey.stop(Code.JOB_CONFLICT, "od-limits or od-tolerance", "both", "take one of the two out");
            return Optional.empty();
        }
        if (od.isEmpty()) {
            return Optional.empty();
        }
        double nominal = od.get().mm();
        if (limits.isPresent()
                && !(limits.get().min() <= nominal && nominal <= limits.get().max())) {
            limitsKey.stop(
                    Code.JOB_CONFLICT,
                    "limits on both sides of od, " + od.get().text(),
                    mm(limits.get().min()) + " to " + mm(limits.get().max()),
                    "check both keys");
            return Optional.empty();
        }
        if (tolerance.isPresent() && tolerance.get() >= nominal) {
            toleranceKey.stop(Code.JOB_CONFLICT, "less than od", mm(tolerance.get()), "check both keys");
            return Optional.empty();
        }
        double around = tolerance.orElse(0.0);
        return limits.map(l -> new Interval(l.min(), nominal, l.max()))
                .or(() -> Optional.of(new Interval(nominal - around, nominal, nominal + around)));
    }

    private static Optional<Material> material(
            TableView table, Collection<String> known, Function<String, Optional<MaterialProfile>> find) {
        KeyView key = table.need("material", "what it is made of", "material = \"pvc\"");
        Optional<String> name = key.text();
        Optional<MaterialProfile> found = name.flatMap(find);
        if (name.isPresent() && found.isEmpty()) {
            unknown(key, "a material", name.get(), known);
        }
        return found.map(MaterialProfile::material);
    }

    /**
     * Adds PROFILE_UNKNOWN with the nearest names.
     *
     * @param key where the name stands
     * @param kind what kind of profile it should be, with its article
     * @param name what stands there
     * @param known what could stand there
     */
    static void unknown(KeyView key, String kind, String name, Known known) {
        Optional<String> faulty = known.profiles().faultyIn(known.kind(), name);
        if (faulty.isPresent()) {
            key.stop(
                    Code.PROFILE_UNKNOWN,
                    "the name of " + kind + " that can be read",
                    Quoted.text(name) + ", which stands in " + faulty.get() + " with faults",
                    "the name is right: mend the faults of that file, which are told too");
        } else {
            unknown(key, kind, name, known.profiles().names(known.kind()));
        }
    }

    /**
     * The profiles of one kind.
     *
     * @param profiles all profiles
     * @param kind the kind
     */
    record Known(Profiles profiles, Profiles.Kind kind) {}

    private static void unknown(KeyView key, String kind, String name, Collection<String> known) {
        List<String> hints = new ArrayList<>();
        List<String> near = Spelling.nearest(name, known, 3);
        if (!near.isEmpty()) {
            hints.add("did you mean " + String.join(" or ", near) + "?");
        }
        hints.add("collarwright profiles lists all names");
        key.stop(Code.PROFILE_UNKNOWN, "the name of " + kind, Quoted.text(name), hints.toArray(String[]::new));
    }

    private static Optional<RoundStock> build(
            TableView table, Optional<Interval> od, Optional<Material> material, Named named, boolean pipe) {
        KeyView wallKey = pipe ? table.need("wall", "the wall of the pipe", "wall = \"5 mm\"") : table.key("wall");
        Optional<Interval> wall = wallKey.interval();
        Optional<List<StockLength>> offers = OfferReader.read(table.key("lengths"));
        boolean complete = od.isPresent()
                && material.isPresent()
                && wall.isPresent() == (wallKey.present() || pipe)
                && offers.isPresent();
        if (!complete || !thinEnough(wallKey, wall, od.get())) {
            return Optional.empty();
        }
        String title = named.title().isEmpty() ? title(material.get(), od.get(), wall) : named.title();
        List<Double> lengths = offers.get().stream().map(StockLength::length).toList();
        return Optional.of(new RoundStock(
                named.name(), title, material.get(), od.get(), wall, false, false, 0, lengths, named.source()));
    }

    /**
     * Puts the lengths that a job gives on a stock.
     *
     * @param stock pipe, tube or bar
     * @param key the job's {@code lengths}; may be empty
     * @return the stock with the job's lengths, or as it was; empty after findings
     */
    static Optional<RoundStock> soldIn(RoundStock stock, KeyView key) {
        return key.present()
                ? OfferReader.read(key)
                        .map(offers -> stock.soldIn(
                                offers.stream().map(StockLength::length).toList()))
                : Optional.of(stock);
    }

    /**
     * Checks that a wall leaves a bore.
     *
     * @param key where the wall stands
     * @param wall the wall; empty for a bar
     * @param od the outside diameter
     * @return false after a finding
     */
    static boolean thinEnough(KeyView key, Optional<Interval> wall, Interval od) {
        if (wall.isEmpty() || wall.get().max() < od.min() / 2) {
            wall.filter(w -> key.present() && w.max() > THICK * od.min())
                    .ifPresent(thick -> key.warn(
                            Code.JOB_CONFLICT,
                            "a wall below a fifth of the outside diameter, " + mm(THICK * od.min()),
                            mm(thick.max()) + ", unusually thick",
                            "check that this is the wall, not the inside radius"));
            return true;
        }
        key.stop(
                Code.JOB_CONFLICT,
                "a wall below half the outside diameter, " + mm(od.min() / 2),
                mm(wall.get().max()),
                "check the wall and the outside diameter",
                "leave the wall out if it is a solid bar");
        return false;
    }

    private static String title(Material material, Interval od, Optional<Interval> wall) {
        String size = Decimals.trimmed(od.nominal(), 2);
        return wall.map(w -> material.title() + " pipe " + size + " × " + Decimals.trimmed(w.nominal(), 2) + " mm")
                .orElseGet(() -> material.title() + " bar " + size + " mm");
    }

    /**
     * Shows a size.
     *
     * @param size mm
     * @return such as {@code 49.2 mm (1.937 in)}
     */
    static String mm(double size) {
        return Decimals.trimmed(size, 4) + " mm (" + Decimals.trimmed(size / 25.4, 4) + " in)";
    }
}
