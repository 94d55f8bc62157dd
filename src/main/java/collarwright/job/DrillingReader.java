package collarwright.job;

import collarwright.finding.Code;
import collarwright.tooling.Boring;
import collarwright.tooling.Cutter;
import collarwright.tooling.CutterKind;
import collarwright.tooling.DrillingSettings;
import collarwright.tooling.Fit;
import collarwright.tooling.SharingLimits;
import collarwright.units.Length;
import collarwright.units.Quoted;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads the job's table {@code [drilling]}: the cutters the shop has for it, and how they are chosen. */
final class DrillingReader {

    private static final Comparator<Cutter> BY_SIZE =
            Comparator.<Cutter>comparingDouble(c -> c.asDrilled().nominal()).thenComparing(Cutter::id);

    /** How much wider than the thickest strut a hole has to be. Our choice, no source. */
    private static final double LEAST_CLEARANCE = 0.3;

    /** More than anybody changes in one job. Our choice, no source. */
    private static final int MOST_CUTTERS = 99;

    private final TableView table;
    private final Profiles profiles;
    private boolean faulty;

    /**
     * Reads a table.
     *
     * @param table {@code [drilling]}
     * @param profiles know the racks
     */
    DrillingReader(TableView table, Profiles profiles) {
        this.table = table;
        this.profiles = profiles;
    }

    /**
     * Reads the cutters and the rule of choice.
     *
     * @param nearestBand how far short of its need a hole may come under {@code nearest}, an angle
     * @param shared how far hub types may differ that share a pattern, if they do
     * @return the settings, or empty after findings
     */
    Optional<DrillingSettings> read(double nearestBand, SharingLimits shared) {
        Map<String, Boolean> sharing = new LinkedHashMap<>();
        sharing.put("exact", false);
        sharing.put("shared", true);
        KeyView patternsKey = table.key("patterns");
        Optional<Boolean> patterns = patternsKey.word(sharing);
        Map<String, Fit> fits = new LinkedHashMap<>();
        fits.put("reach", Fit.REACH);
        fits.put("nearest", Fit.NEAREST);
        KeyView flipKey = table.key("flip");
        Optional<Boolean> flip = flipKey.flag();
        KeyView fitKey = table.key("fit");
        Optional<Fit> fit = fitKey.word(fits);
        Map<String, Cutter> cutters = new LinkedHashMap<>();
        KeyView clearanceKey = table.key("least-clearance");
        Optional<Double> clearance = clearanceKey.length(Length.Zero.ALLOWED).map(Length::mm);
        KeyView mostKey = table.key("most-cutters");
        Optional<Integer> most = mostKey.wholeNumber(1, MOST_CUTTERS);
        Map<String, Boring.Rule> rules = new LinkedHashMap<>();
        rules.put("no-fit", Boring.Rule.NO_FIT);
        rules.put("always", Boring.Rule.ALWAYS);
        rules.put("never", Boring.Rule.NEVER);
        KeyView boreKey = table.key("bore");
        Given<Boring.Rule> bore = new Given<>(boreKey, key -> key.word(rules), Boring.Rule.NO_FIT);
        KeyView rackKey = table.key("rack");
        KeyView addKey = table.key("add");
        KeyView removeKey = table.key("remove");
        if (!rackKey.present() && !addKey.present()) {
            table.need("rack", "the racks that the shop has", "rack = [\"metric-hole-saws\"]");
        }
        rackKey.items().forEach(item -> rack(item, cutters));
        addKey.items().forEach(item -> add(item, cutters));
        removeKey.items().forEach(item -> remove(item, cutters));
        List<Cutter> sorted = cutters.values().stream().sorted(BY_SIZE).toList();
        List<Cutter> mills =
                sorted.stream().filter(c -> c.kind() == CutterKind.END_MILL).toList();
        alwaysBored(boreKey, mills.isEmpty() && bored(bore, Boring.Rule.ALWAYS));
        boolean none = sorted.size() == mills.size() && (mills.isEmpty() || bored(bore, Boring.Rule.NEVER));
        if (none
                || faulty
                || !bore.good()
                || (mostKey.present() && most.isEmpty())
                || (fitKey.present() && fit.isEmpty())
                || (patternsKey.present() && patterns.isEmpty())
                || (flipKey.present() && flip.isEmpty())
                || (clearanceKey.present() && clearance.isEmpty())) {
            noCutter(rackKey, addKey, none);
            return Optional.empty();
        }
        return Optional.of(new DrillingSettings(
                sorted.stream().filter(c -> c.kind() != CutterKind.END_MILL).toList(),
                fit.orElse(Fit.REACH),
                nearestBand,
                clearance.orElse(LEAST_CLEARANCE),
                patterns.filter(yes -> yes).map(yes -> shared),
                most,
                flip.orElse(false),
                new Boring(bore.value(), mills)));
    }

    private void alwaysBored(KeyView boreKey, boolean withoutMill) {
        if (withoutMill && !faulty) {
            boreKey.stop(
                    Code.JOB_CONFLICT,
                    "an end mill in the racks, for bore = \"always\"",
                    "no end mill",
                    "name a rack with end mills, add one, or write bore = \"no-fit\"");
            faulty = true;
        }
    }

    private static boolean bored(Given<Boring.Rule> bore, Boring.Rule rule) {
        return bore.good() && bore.value() == rule;
    }

    private void noCutter(KeyView rackKey, KeyView addKey, boolean none) {
        if (none && !faulty && (rackKey.present() || addKey.present())) {
            (rackKey.present() ? rackKey : addKey)
                    .stop(Code.JOB_CONFLICT, "at least one cutter", "none", "name a rack, or add a size");
        }
    }

    private void rack(KeyView item, Map<String, Cutter> cutters) {
        Optional<String> name = item.text();
        Optional<Rack> rack = name.flatMap(profiles::rack);
        if (rack.isEmpty()) {
            faulty = true;
            name.ifPresent(
                    n -> StockReader.unknown(item, "a rack", n, new StockReader.Known(profiles, Profiles.Kind.RACK)));
            return;
        }
        // A rack named first keeps its cutter of a size, unless only the later one was measured.
        rack.get()
                .cutters()
                .forEach(cutter -> cutters.merge(
                        cutter.id(), cutter, (old, next) -> next.measured() && !old.measured() ? next : old));
    }

    private void add(KeyView item, Map<String, Cutter> cutters) {
        Optional<Cutter> cutter = item.table().flatMap(CutterReader::added);
        if (cutter.isEmpty()) {
            faulty = true;
            return;
        }
        // What the job says about a size counts more than what a rack says.
        cutters.put(cutter.get().id(), cutter.get());
    }

    private void remove(KeyView item, Map<String, Cutter> cutters) {
        if (item.isText() && item.text().filter(MarkedSize::isName).isPresent()) {
            removeNamed(item, item.text().orElseThrow(), cutters);
            return;
        }
        Optional<Length> size = item.length(Length.Zero.REFUSED);
        if (size.isEmpty()) {
            faulty = true;
            return;
        }
        double mm = size.get().mm();
        List<String> gone = new ArrayList<>();
        cutters.values().stream().filter(c -> c.size() == mm).forEach(c -> gone.add(c.id()));
        if (gone.isEmpty() && !faulty) {
            List<String> near = cutters.values().stream()
                    .sorted(Comparator.<Cutter>comparingDouble(c -> StrictMath.abs(c.size() - mm))
                            .thenComparing(Cutter::id))
                    .limit(2)
                    .map(Cutter::marked)
                    .toList();
            item.stop(
                    Code.JOB_UNKNOWN_WORD,
                    "the marked size of a cutter in the racks",
                    size.get().text(),
                    near.isEmpty() ? "take it out" : "the nearest are " + String.join(" and ", near));
            faulty = true;
        }
        gone.forEach(cutters::remove);
    }

    // What is stamped on a cutter may be a name in place of a size, such as #7 or F.
    private void removeNamed(KeyView item, String name, Map<String, Cutter> cutters) {
        boolean gone = cutters.values().removeIf(c -> c.marked().equals(name));
        if (!gone && !faulty) {
            item.stop(
                    Code.JOB_UNKNOWN_WORD,
                    "what is stamped on a cutter in the racks",
                    Quoted.text(name),
                    "name the rack that has it, such as number-letter-twist, or take it out");
        }
        faulty |= !gone;
    }
}
