package collarwright.job;

import collarwright.finding.Code;
import collarwright.units.Quoted;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * Reads names and colours of layers from a profile file.
 *
 * <p>Source of the names: Autodesk, DXF Reference, release 12: up to 31 characters, letters, digits, {@code $ - _}; and
 * W3C, XML 1.0, production Name, which has no {@code $} and starts with a letter. Source of the colours: the AutoCAD Color
 * Index, 1 to 255.
 */
final class LayersReader {
    private static final Pattern NAME = Pattern.compile("[A-Z][A-Z0-9_-]{0,30}");
    private static final Pattern NUMBER = Pattern.compile("[0-9]+");
    private static final Pattern COLOUR = Pattern.compile("#[0-9a-fA-F]{6}");
    private static final int MOST_COLOUR = 255;

    private final Map<CutLayers.Line, CutLayers.Style> styles = new EnumMap<>(CutLayers.Line.class);
    private final Map<CutLayers.Line, TableView> tables = new EnumMap<>(CutLayers.Line.class);
    private final TableView profile;

    private LayersReader(TableView profile) {
        this.profile = profile;
    }

    /**
     * Reads one map of layers.
     *
     * @param entry its table with name, title and source
     * @return the map, or empty after findings
     */
    static Optional<CutLayers> read(ProfileFile.Entry entry) {
        LayersReader reader = new LayersReader(entry.table());
        boolean good = true;
        for (CutLayers.Line line : CutLayers.Line.values()) {
            good &= reader.line(line);
        }
        Given<Boolean> cutOnly = new Given<>(entry.table().key("cut-only"), KeyView::flag, false);
        good &= reader.apart() && cutOnly.good() && !entry.name().isEmpty();
        return good
                ? Optional.of(new CutLayers(entry.name(), List.copyOf(reader.styles.values()), cutOnly.value()))
                : Optional.empty();
    }

    private boolean line(CutLayers.Line line) {
        CutLayers.Style usual = line.usual();
        styles.put(line, usual);
        KeyView key = profile.key(line.word());
        Optional<TableView> table = key.table();
        if (table.isEmpty()) {
            return !key.present();
        }
        tables.put(line, table.get());
        Given<String> layer = new Given<>(table.get().key("layer"), LayersReader::name, usual.layer());
        Given<Integer> colour = new Given<>(table.get().key("aci"), k -> k.wholeNumber(1, MOST_COLOUR), usual.colour());
        Given<String> svg = new Given<>(table.get().key("svg"), LayersReader::colour, usual.svg());
        styles.put(line, new CutLayers.Style(layer.value(), colour.value(), svg.value()));
        return layer.good() && colour.good() && svg.good();
    }

    private static Optional<String> name(KeyView key) {
        Optional<String> name = key.text();
        boolean good = name.filter(n -> NAME.matcher(n).matches() && !n.equals("DEFPOINTS"))
                .isPresent();
        if (name.isPresent() && !good) {
            key.stop(
                    Code.PROFILE_WRONG,
                    "a layer's name: a capital letter, then capitals, digits, - and _, at most 31 in all, not DEFPOINTS",
                    Quoted.text(name.get()),
                    "write a name that DXF release 12 and SVG both have, such as CUT-INSIDE");
        }
        return good ? name : Optional.empty();
    }

    private static Optional<String> colour(KeyView key) {
        Optional<String> colour = key.text();
        boolean good = colour.filter(c -> COLOUR.matcher(c).matches()).isPresent();
        if (colour.isPresent() && !good) {
            key.stop(
                    Code.PROFILE_WRONG,
                    "a colour: # and six digits 0 to 9, a to f",
                    Quoted.text(colour.get()),
                    "write red, green and blue, such as svg = \"#ff0000\"");
        }
        return good ? colour.map(LayersReader::small) : Optional.empty();
    }

    private static String small(String colour) {
        StringBuilder out = new StringBuilder();
        colour.chars().forEach(c -> out.append((char) (c >= 'A' && c <= 'F' ? c - 'A' + 'a' : c)));
        return out.toString();
    }

    /** One layer for each kind of line; what is cut has no colour of what is not, since cutters go by either. */
    private boolean apart() {
        boolean good = true;
        Map<String, CutLayers.Line> names = new LinkedHashMap<>();
        for (CutLayers.Line line : CutLayers.Line.values()) {
            CutLayers.Style style = style(line);
            CutLayers.Line before = names.putIfAbsent(style.layer(), line);
            if (before != null) {
                good = wrong(line, before, "layer", "a layer of its own", asOther(Quoted.text(style.layer()), before));
            }
            good &= idsApart(line);
            for (CutLayers.Line other : CutLayers.Line.values()) {
                CutLayers.Style shown = style(other);
                if (line.isCut() && !other.isCut()) {
                    if (style.colour() == shown.colour()) {
                        good = wrong(
                                other,
                                line,
                                "aci",
                                "a colour that no cut line has",
                                asOther(style.colour() + "", line));
                    }
                    if (style.svg().equals(shown.svg())) {
                        good = wrong(other, line, "svg", "a colour that no cut line has", asOther(style.svg(), line));
                    }
                }
            }
        }
        return good;
    }

    // In SVG the first line on layer C has the id C-1, which is then no layer's.
    private boolean idsApart(CutLayers.Line line) {
        String name = style(line).layer();
        boolean good = true;
        for (CutLayers.Line other : CutLayers.Line.values()) {
            String start = style(other).layer() + "-";
            if (name.startsWith(start)
                    && NUMBER.matcher(name.substring(start.length())).matches()) {
                good = wrong(
                        line,
                        other,
                        "layer",
                        "a layer's name that is not another's with - and digits, as SVG numbers its lines",
                        Quoted.text(name) + ", since " + other.word() + " is "
                                + Quoted.text(style(other).layer()));
            }
        }
        return good;
    }

    private CutLayers.Style style(CutLayers.Line line) {
        return Optional.ofNullable(styles.get(line)).orElseThrow();
    }

    private static String asOther(String found, CutLayers.Line other) {
        return found + ", as " + other.word() + " has it";
    }

    private boolean wrong(CutLayers.Line line, CutLayers.Line other, String key, String expected, String found) {
        Optional<TableView> table =
                Optional.ofNullable(tables.get(line)).or(() -> Optional.ofNullable(tables.get(other)));
        table.orElse(profile)
                .key(key)
                .stop(
                        Code.PROFILE_WRONG,
                        expected + ", for " + line.word(),
                        found,
                        "give one of the two another, or take it out");
        return false;
    }
}
