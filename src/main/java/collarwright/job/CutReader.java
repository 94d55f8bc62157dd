package collarwright.job;

import collarwright.dome.Cut;
import collarwright.dome.SphereSettings;
import collarwright.finding.Code;
import collarwright.units.Quoted;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Reads from {@code [dome]} which part of the sphere is kept. */
final class CutReader {

    private final TableView table;

    CutReader(TableView table) {
        this.table = table;
    }

    /**
     * Reads the part.
     *
     * @param sphere the sphere, if it could be read
     * @return the part, or empty after findings or without a sphere
     */
    Optional<Cut> read(Optional<SphereSettings> sphere) {
        List<KeyView> given = Stream.of("keep", "tiers", "cut-height")
                .map(table::key)
                .filter(KeyView::present)
                .toList();
        if (given.isEmpty()) {
            table.need(
                    "keep",
                    "how much of the sphere is built: a portion such as 5/9, or all; or tiers = 5; or cut-height = 0.0",
                    "keep = \"1/2\"");
            return Optional.empty();
        }
        if (given.size() > 1) {
            given.stream()
                    .skip(1)
                    .forEach(key -> key.stop(
                            Code.JOB_CONFLICT,
                            "keep, tiers or cut-height",
                            given.size() == 2 ? "both" : "all three",
                            "take all but one of them out"));
        }
        KeyView key = given.get(0);
        Optional<Cut> cut = key.path().endsWith("keep")
                ? keep(key, sphere)
                : key.path().endsWith("tiers") ? tiers(key, sphere) : height(key);
        return given.size() == 1 ? cut : Optional.empty();
    }

    private static Optional<Cut> height(KeyView key) {
        return key.number(-1, 0.999).map(Cut.Height::new);
    }

    private static Optional<Cut> tiers(KeyView key, Optional<SphereSettings> sphere) {
        int most = sphere.map(SphereSettings::tiers).orElse(3 * SphereSettings.MAX_FREQUENCY);
        return key.wholeNumber(1, most).map(Cut.Tiers::new);
    }

    private static Optional<Cut> keep(KeyView keep, Optional<SphereSettings> sphere) {
        if (!keep.isText()) {
            keep.stop(
                    Code.JOB_WRONG_TYPE,
                    "a portion in quotation marks, such as \"5/9\", or \"all\"",
                    keep.shown(),
                    "write rows kept / rows of the sphere; a sphere of frequency n has 3n rows");
            return Optional.empty();
        }
        String text = keep.text().orElse("");
        if (!Portion.readable(text)) {
            keep.stop(
                    Code.DOME_PORTION,
                    "a portion such as 5/9, or all",
                    Quoted.text(text),
                    "write rows kept / rows of the sphere; a sphere of frequency n has 3n rows");
            return Optional.empty();
        }
        if (sphere.isEmpty()) {
            return Optional.empty();
        }
        if (text.strip().equals("all")) {
            return Optional.of(new Cut.Tiers(sphere.get().tiers()));
        }
        if (!sphere.get().hasRows()) {
            keep.stop(
                    Code.DOME_PORTION,
                    "all, or tiers or cut-height instead: only a class I icosahedron with a vertex up has even rows",
                    Quoted.text(text),
                    "write tiers = k (this sphere has " + sphere.get().tiers()
                            + " below its apex) or cut-height = 0.0");
            return Optional.empty();
        }
        return rows(keep, text, sphere.get().breakdown().b());
    }

    private static Optional<Cut> rows(KeyView keep, String text, int frequency) {
        Portion portion = new Portion(frequency);
        Optional<Integer> rows = portion.rows(text);
        if (rows.isEmpty()) {
            List<String> near = portion.near(text);
            keep.stop(
                    Code.DOME_PORTION,
                    "a whole number of the " + portion.all() + " rows of frequency " + frequency,
                    Quoted.text(text),
                    (near.size() == 1 ? "the nearest is keep = " : "the nearest are keep = ")
                            + String.join(
                                    " and keep = ",
                                    near.stream().map(Quoted::text).toList()));
        }
        rows.filter(r -> frequency == 3 && Portion.tradeName(text))
                .ifPresent(r -> keep.warn(
                        Code.DOME_PORTION,
                        "rows of the 9 that a sphere of frequency 3 has",
                        Quoted.text(text) + ", the trade's name for " + portion.share(r),
                        "write keep = " + Quoted.text(portion.share(r)) + " to have it exact"));
        return rows.map(Cut.Tiers::new);
    }
}
