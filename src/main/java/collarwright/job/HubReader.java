package collarwright.job;

import collarwright.collar.Fix;
import collarwright.collar.Heights;
import collarwright.collar.HubSettings;
import collarwright.collar.TrialPiece;
import collarwright.cutting.StockLength;
import collarwright.finding.Code;
import collarwright.stock.RoundStock;
import collarwright.units.Decimals;
import collarwright.units.Length;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads the job's table {@code [hub]}: collar, centre ring and how struts are held to it. */
final class HubReader {

    /** Least distance of a strut's end from the ring where the job does not say. Our choice, no source. */
    private static final double END_GAP = 2;

    private final TableView table;
    private final Profiles profiles;
    private List<StockLength> collarOffers = List.of();
    private List<StockLength> ringOffers = List.of();

    /**
     * Reads a table.
     *
     * @param table {@code [hub]}
     * @param profiles know stock and materials
     */
    HubReader(TableView table, Profiles profiles) {
        this.table = table;
        this.profiles = profiles;
    }

    /**
     * Reads the hub.
     *
     * @return what every hub is made of, or empty after findings
     */
    Optional<HubSettings> read() {
        later();
        Map<String, Heights> lines = new LinkedHashMap<>();
        lines.put("midplane", Heights.MIDPLANE);
        lines.put("converging", Heights.CONVERGING);
        KeyView heightsKey = table.key("heights");
        Optional<Heights> heights = heightsKey.word(lines);
        KeyView collarKey =
                table.need("collar", "the pipe that collars are cut from", "collar = \"pvc-metric-160x6.2\"");
        KeyView ringKey = table.need("ring", "the pipe or bar of the centre ring", "ring = \"pvc-metric-90x4.3\"");
        Optional<RoundStock> collar = pipe(collarKey, MeasuredStock.in(table).on(collar(collarKey)));
        Optional<RoundStock> ring = ring(ringKey);
        Optional<Double> width = table.need("width", "the length of a collar along its axis", "width = \"80 mm\"")
                .size();
        Optional<Double> ringWidth = table.need(
                        "ring-width", "the length of a centre ring along its axis", "ring-width = \"40 mm\"")
                .size();
        KeyView gapKey = table.key("end-gap");
        Optional<Double> gap = gapKey.length(Length.Zero.ALLOWED).map(Length::mm);
        if (collar.isEmpty() || ring.isEmpty() || width.isEmpty() || ringWidth.isEmpty()) {
            return Optional.empty();
        }
        Optional<Double> rims = rims(collar.get());
        KeyView pieceKey = table.key("trial-piece");
        Optional<TrialPiece> piece = trialPiece(pieceKey, collar.get(), rims.orElse(0.0));
        if ((pieceKey.present() && piece.isEmpty())
                || (gapKey.present() && gap.isEmpty())
                || (heightsKey.present() && heights.isEmpty())
                || rims.isEmpty()
                || !ringFits(ringKey, ring.get(), collar.get())) {
            return Optional.empty();
        }
        return Optional.of(new HubSettings(
                collar.get(),
                width.get(),
                ring.get(),
                ringWidth.get(),
                Fix.TIE,
                gap.orElse(END_GAP),
                rims.get(),
                heights.orElse(Heights.MIDPLANE),
                piece));
    }

    private Optional<TrialPiece> trialPiece(KeyView key, RoundStock collar, double rims) {
        Optional<String> name = key.text();
        Optional<TrialPiece> piece = name.flatMap(profiles::trialPiece);
        if (name.isPresent() && piece.isEmpty()) {
            StockReader.unknown(
                    key, "a trial piece", name.get(), new StockReader.Known(profiles, Profiles.Kind.TRIAL_PIECE));
        }
        if (piece.isPresent() && rims > 0) {
            key.stop(
                    Code.JOB_CONFLICT,
                    "trial-piece or rims",
                    "both",
                    "take rims out: the trial piece has measured what the rims do");
            return Optional.empty();
        }
        piece.ifPresent(p -> warnOfOther(key, p, collar));
        return piece;
    }

    private static void warnOfOther(KeyView key, TrialPiece piece, RoundStock collar) {
        boolean sameMaterial = piece.material().equals(collar.material().name());
        if (!sameMaterial || !piece.stock().equals(collar.name())) {
            key.warn(
                    Code.TRIAL_PIECE,
                    "a trial piece of the collar's own " + (sameMaterial ? "pipe, " : "material, ")
                            + (sameMaterial ? collar.name() : collar.material().name()),
                    piece.name() + " was cut from " + piece.stock() + " (" + piece.material() + ")",
                    "make a trial piece of this pipe: collarwright trial; another wall and another material bear otherwise");
        }
    }

    // Beyond half the wall the two chamfers would meet.
    private Optional<Double> rims(RoundStock collar) {
        KeyView key = table.key("rims");
        if (!key.present()) {
            return Optional.of(0.0);
        }
        Optional<Double> rims = key.length(Length.Zero.ALLOWED).map(Length::mm);
        double most = collar.wall().map(w -> w.min() / 2).orElse(0.0);
        if (rims.isPresent() && rims.get() >= most) {
            key.stop(
                    Code.JOB_OUT_OF_RANGE,
                    "a chamfer below half the thinnest wall, " + Decimals.trimmed(most, 3) + " mm",
                    Decimals.trimmed(rims.get(), 3) + " mm",
                    "give the chamfer that is cut on both rims, or take it out for sharp rims");
            return Optional.empty();
        }
        return rims;
    }

    private void later() {
        KeyView fix = table.key("fix");
        Map<String, Boolean> fixes = new LinkedHashMap<>();
        fixes.put("tie", true);
        fixes.put("pin", false);
        fix.builtWord(fixes);
    }

    private Optional<RoundStock> collar(KeyView key) {
        return key.isTable() ? key.table().flatMap(this::collar) : named(key, profiles);
    }

    private Optional<RoundStock> ring(KeyView key) {
        return key.isTable() ? key.table().flatMap(this::ring) : named(key, profiles);
    }

    private Optional<RoundStock> collar(TableView given) {
        Optional<RoundStock> stock = placed(given, true);
        collarOffers = OfferReader.read(given.key("lengths")).orElse(List.of());
        return stock;
    }

    private Optional<RoundStock> ring(TableView given) {
        Optional<RoundStock> stock = MeasuredStock.in(given).on(placed(given, false));
        ringOffers = OfferReader.read(given.key("lengths")).orElse(List.of());
        return stock;
    }

    /**
     * Returns the lengths that the job gives for the collars' pipe, once it was read.
     *
     * @return with prices and numbers; none where it gives none
     */
    List<StockLength> collarOffers() {
        return collarOffers;
    }

    /**
     * Returns the lengths that the job gives for the centre rings' stock, once it was read.
     *
     * @return with prices and numbers; none where it gives none
     */
    List<StockLength> ringOffers() {
        return ringOffers;
    }

    private Optional<RoundStock> placed(TableView given, boolean pipe) {
        KeyView stock = given.key("stock");
        return stock.present()
                ? named(stock, profiles).flatMap(s -> StockReader.soldIn(s, given.key("lengths")))
                : StockReader.inPlace(given, profiles, pipe);
    }

    /**
     * Finds stock by its name.
     *
     * @param key where the name stands; may be empty
     * @param profiles know the names
     * @return the stock, or empty after a finding
     */
    static Optional<RoundStock> named(KeyView key, Profiles profiles) {
        Optional<String> name = key.text();
        Optional<RoundStock> stock = name.flatMap(profiles::stock);
        if (name.isPresent() && stock.isEmpty()) {
            StockReader.unknown(key, "stock", name.get(), new StockReader.Known(profiles, Profiles.Kind.STOCK));
        }
        return stock;
    }

    private static Optional<RoundStock> pipe(KeyView key, Optional<RoundStock> collar) {
        if (collar.isPresent() && collar.get().wall().isEmpty()) {
            key.stop(
                    Code.JOB_CONFLICT,
                    "a pipe with a wall",
                    collar.get().title() + ", a solid bar",
                    "name a pipe, or give measured-wall");
            return Optional.empty();
        }
        return collar;
    }

    private static boolean ringFits(KeyView key, RoundStock ring, RoundStock collar) {
        double bore = collar.od().nominal() - 2 * collar.wall().orElseThrow().max();
        if (ring.od().max() < bore) {
            return true;
        }
        key.stop(
                Code.JOB_CONFLICT,
                "a centre ring below the collar's inside diameter, " + StockReader.mm(bore),
                StockReader.mm(ring.od().max()),
                "take a smaller ring or a larger collar");
        return false;
    }
}
