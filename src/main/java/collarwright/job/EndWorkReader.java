package collarwright.job;

import collarwright.finding.Code;
import collarwright.stock.RoundStock;
import collarwright.strut.EndPlugs;
import collarwright.strut.EndWork;
import collarwright.strut.FlatEnds;
import collarwright.strut.TieHole;
import java.util.Map;
import java.util.Optional;

/** Reads what is done to the ends of struts: {@code ends}, {@code flat-length}, {@code plugs}, {@code caps}. */
final class EndWorkReader {

    private static final Map<String, Boolean> ENDS = Map.of("square", false, "flattened", true);

    private final TableView table;
    private final Optional<RoundStock> stock;
    private final Optional<TieHole> tie;
    private boolean good = true;

    /**
     * Reads a table.
     *
     * @param table {@code [strut]}
     * @param stock the struts' stock, if it could be read
     * @param tie the tie hole, if there is one that could be read
     */
    EndWorkReader(TableView table, Optional<RoundStock> stock, Optional<TieHole> tie) {
        this.table = table;
        this.stock = stock;
        this.tie = tie;
    }

    /**
     * Reads the ends.
     *
     * @return what is done to them, or empty after findings
     */
    Optional<EndWork> read() {
        Optional<FlatEnds> flat = flat();
        Optional<EndPlugs> plugs = plugs();
        KeyView capsKey = table.key("caps");
        Optional<Boolean> caps = capsKey.present() ? capsKey.flag() : Optional.of(false);
        if (flattened(table)) {
            alone(table.key("plugs"), table.key("plugs").present());
            alone(capsKey, caps.orElse(false));
        }
        return good && caps.isPresent() ? Optional.of(new EndWork(flat, plugs, caps.get())) : Optional.empty();
    }

    /**
     * Tells whether a table asks for flattened ends, as far as its words go.
     *
     * @param table {@code [strut]}
     * @return true where it does
     */
    static boolean flattened(TableView table) {
        KeyView ends = table.key("ends");
        return ends.isText() && ends.text().filter("flattened"::equals).isPresent();
    }

    private void alone(KeyView key, boolean asked) {
        if (asked) {
            stop(key, "ends that stay round", key.path() + " on flattened ends", "take one of the two out");
        }
    }

    private void stop(KeyView key, String expected, String found, String... hints) {
        key.stop(Code.JOB_CONFLICT, expected, found, hints);
        good = false;
    }

    private Optional<FlatEnds> flat() {
        KeyView ends = table.key("ends");
        KeyView length = table.key("flat-length");
        Optional<Boolean> flattened = ends.present() ? ends.word(ENDS) : Optional.of(false);
        good = flattened.isPresent() && good;
        if (!flattened.orElse(false)) {
            if (length.present() && flattened.isPresent()) {
                stop(length, "ends = \"flattened\" beside it", "ends that stay round", "add it, or take the key out");
            }
            return Optional.empty();
        }
        if (stock.filter(s -> s.wall().isEmpty()).isPresent()) {
            stop(ends, "flattened ends on a tube", "a solid bar", "take ends out: a bar's ends stay as they are");
        }
        if (!table.key("tie-hole").present()) {
            stop(
                    ends,
                    "a tie-hole that goes through the flat",
                    "no tie-hole",
                    "tie-hole = { diameter = \"8 mm\", from-end = \"16 mm\" }",
                    "from-end is the distance of the bolt from the flat's end");
        }
        Optional<Double> flat = table.need(
                        "flat-length", "from the cut end to where the tube is round again", "flat-length = \"40 mm\"")
                .size();
        good = flat.isPresent() && good;
        flat.ifPresent(f -> holds(length, f));
        return good ? flat.map(FlatEnds::new) : Optional.empty();
    }

    private void holds(KeyView key, double flat) {
        double least = tie.map(t -> t.fromEnd() + t.diameter() / 2).orElse(0.0);
        if (flat < least) {
            stop(
                    key,
                    "a flat as long as the tie hole's far edge, " + StockReader.mm(least) + ", or longer",
                    StockReader.mm(flat),
                    "make the flat longer",
                    "or the tie hole nearer to the end");
        }
    }

    private Optional<EndPlugs> plugs() {
        KeyView key = table.key("plugs");
        if (!key.present()) {
            return Optional.empty();
        }
        Optional<TableView> plug = key.table();
        if (plug.isEmpty()) {
            good = false;
            return Optional.empty();
        }
        KeyView lengthKey = plug.get().need("length", "of one plug", "plugs = { length = \"60 mm\", … }");
        KeyView diameterKey = plug.get().need("diameter", "of one plug", "plugs = { …, diameter = \"16 mm\" }");
        Optional<Double> length = lengthKey.size();
        Optional<Double> diameter = diameterKey.size();
        good = length.isPresent() && diameter.isPresent() && good;
        diameter.ifPresent(d -> fits(diameterKey, d));
        length.ifPresent(l -> backs(lengthKey, l));
        return good ? Optional.of(new EndPlugs(length.orElseThrow(), diameter.orElseThrow())) : Optional.empty();
    }

    private void fits(KeyView key, double diameter) {
        if (stock.isEmpty()) {
            return;
        }
        double room = stock.get().od().max()
                - 2 * stock.get().wall().map(w -> w.min()).orElse(0.0);
        if (diameter > room || (stock.get().wall().isEmpty() && diameter >= room)) {
            stop(
                    key,
                    stock.get().wall().isPresent()
                            ? "a plug that goes into the widest bore, " + StockReader.mm(room)
                            : "a plug thinner than the strut, " + StockReader.mm(room),
                    StockReader.mm(diameter),
                    "check the diameter and the unit");
        }
    }

    private void backs(KeyView key, double length) {
        double least = tie.map(t -> t.fromEnd() + t.diameter() / 2).orElse(0.0);
        if (length < least) {
            key.warn(
                    Code.JOB_CONFLICT,
                    "a plug that reaches past the tie hole, " + StockReader.mm(least) + " or longer",
                    StockReader.mm(length),
                    "take a longer plug: this one does not back the hole");
        }
    }
}
