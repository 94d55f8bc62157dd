package collarwright.job;

import collarwright.dome.DomeSettings;
import collarwright.finding.Code;
import collarwright.strut.SizeRule;
import collarwright.units.Quoted;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.DoubleFunction;

/** Reads the job's table {@code [dome]}: which dome, and what fixes its size. */
final class DomeReader {

    private static final Map<String, DoubleFunction<SizeRule>> SIZES = sizes();

    private final TableView table;

    /**
     * Reads a table.
     *
     * @param table {@code [dome]}
     */
    DomeReader(TableView table) {
        this.table = table;
    }

    /**
     * Reads which dome.
     *
     * @return the dome, or empty after findings
     */
    Optional<DomeSettings> settings() {
        later();
        Optional<Integer> frequency = table.need("frequency", "how often the face's edge is divided", "frequency = 3")
                .wholeNumber(1, DomeSettings.MAX_FREQUENCY);
        KeyView keep = table.key("keep");
        KeyView tiers = table.key("tiers");
        if (keep.present() && tiers.present()) {
            tiers.stop(Code.JOB_CONFLICT, "keep or tiers", "both", "take one of the two out");
        } else if (!keep.present() && !tiers.present()) {
            table.need(
                    "keep",
                    "how much of the sphere is built: a portion such as 5/9, or all; or tiers = 5",
                    "keep = \"1/2\"");
        }
        OptionalInt rows = keep.present() ? keep(keep, frequency) : tiers(tiers, frequency);
        return frequency.isPresent() && rows.isPresent() && !(keep.present() && tiers.present())
                ? Optional.of(new DomeSettings(frequency.get(), rows.getAsInt()))
                : Optional.empty();
    }

    private void later() {
        KeyView base = table.key("base");
        Map<String, Boolean> bases = new LinkedHashMap<>();
        bases.put("icosahedron", true);
        bases.put("octahedron", false);
        bases.put("tetrahedron", false);
        base.builtWord(bases);
        KeyView foot = table.key("foot");
        Map<String, Boolean> feet = new LinkedHashMap<>();
        feet.put("natural", true);
        feet.put("level", false);
        feet.put("riser", false);
        foot.builtWord(feet);
        table.later("breakdown", "write frequency = n, which is the breakdown [n, 0]");
        table.later("frame", "describe the dome with base, frequency and keep");
        table.later("riser-height", "take it out; the foot is natural");
        table.later("openings", "take it out; the whole dome is built");
        table.later("axis", "take it out; hub axes point away from the sphere's centre");
        table.later("up", "take it out; a vertex is up");
    }

    private OptionalInt keep(KeyView keep, Optional<Integer> frequency) {
        if (!keep.isText()) {
            keep.stop(
                    Code.JOB_WRONG_TYPE,
                    "a portion in quotation marks, such as \"5/9\", or \"all\"",
                    keep.shown(),
                    "write rows kept / rows of the sphere; a sphere of frequency n has 3n rows");
            return OptionalInt.empty();
        }
        String text = keep.text().orElse("");
        if (!Portion.readable(text)) {
            keep.stop(
                    Code.DOME_PORTION,
                    "a portion such as 5/9, or all",
                    Quoted.text(text),
                    "write rows kept / rows of the sphere; a sphere of frequency n has 3n rows");
            return OptionalInt.empty();
        }
        if (frequency.isEmpty()) {
            return OptionalInt.empty();
        }
        Portion portion = new Portion(frequency.get());
        Optional<Integer> rows = portion.rows(text);
        if (rows.isEmpty()) {
            List<String> near = portion.near(text);
            keep.stop(
                    Code.DOME_PORTION,
                    "a whole number of the " + portion.all() + " rows of frequency " + frequency.get(),
                    Quoted.text(text),
                    (near.size() == 1 ? "the nearest is keep = " : "the nearest are keep = ")
                            + String.join(
                                    " and keep = ",
                                    near.stream().map(Quoted::text).toList()));
        }
        rows.filter(r -> frequency.get() == 3 && Portion.tradeName(text))
                .ifPresent(r -> keep.warn(
                        Code.DOME_PORTION,
                        "rows of the 9 that a sphere of frequency 3 has",
                        Quoted.text(text) + ", the trade's name for " + portion.share(r),
                        "write keep = " + Quoted.text(portion.share(r)) + " to have it exact"));
        return rows.map(OptionalInt::of).orElse(OptionalInt.empty());
    }

    private OptionalInt tiers(KeyView tiers, Optional<Integer> frequency) {
        int most = new Portion(frequency.orElse(DomeSettings.MAX_FREQUENCY)).all();
        return tiers.wholeNumber(1, most).map(OptionalInt::of).orElse(OptionalInt.empty());
    }

    /**
     * Reads what fixes the size.
     *
     * @return the rule, or empty after findings
     */
    Optional<SizeRule> size() {
        table.later("pieces-per-stock", "give radius, floor-diameter, height or longest-strut");
        Map<String, KeyView> given = new LinkedHashMap<>();
        SIZES.keySet().forEach(name -> {
            KeyView key = table.key(name);
            if (key.present()) {
                given.put(name, key);
            }
        });
        Optional<SizeRule> rule = Optional.empty();
        for (Map.Entry<String, KeyView> one : given.entrySet()) {
            DoubleFunction<SizeRule> make = SIZES.getOrDefault(one.getKey(), SizeRule.Radius::new);
            rule = one.getValue().size().map(make::apply);
        }
        if (given.isEmpty() && !table.key("pieces-per-stock").present()) {
            table.need("radius", "one of " + String.join(", ", SIZES.keySet()), "radius = \"2.60 m\"");
        }
        if (given.size() > 1) {
            List<String> names = List.copyOf(given.keySet());
            given.values().stream()
                    .skip(1)
                    .forEach(key -> key.stop(
                            Code.JOB_CONFLICT,
                            "one size for the dome",
                            "a second one beside " + names.get(0),
                            "keep one of " + String.join(", ", names)));
            return Optional.empty();
        }
        return rule;
    }

    private static Map<String, DoubleFunction<SizeRule>> sizes() {
        Map<String, DoubleFunction<SizeRule>> sizes = new LinkedHashMap<>();
        sizes.put("radius", SizeRule.Radius::new);
        sizes.put("floor-diameter", SizeRule.FloorDiameter::new);
        sizes.put("height", SizeRule.Height::new);
        sizes.put("longest-strut", SizeRule.LongestStrut::new);
        return java.util.Collections.unmodifiableMap(sizes);
    }
}
