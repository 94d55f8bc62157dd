package collarwright.sheet;

import collarwright.sheet.DxfPairs.Tag;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Takes exception to groups of layers and entities that hide a line, turn it over or make it something else than a thin
 * line on the plane, and to every group it does not know.
 *
 * <p>Source: Autodesk, DXF Reference, "Common Group Codes for Entities", "LAYER", "LINE", "CIRCLE", "ARC", "LWPOLYLINE",
 * "POLYLINE", "VERTEX", from memory: 6 line type, 39 thickness, 60 and 67 invisible and in paper space where 1, 62
 * colour, 70 bits, 210 to 230 which way is up.
 */
final class DxfGroups {
    /** Handles, owners, layers, remarks, printed widths, layout: no matter to a machine; from 1000 on, other programs' own. */
    private static final Set<Integer> PASSED = Set.of(0, 5, 8, 100, 102, 330, 360, 370, 390, 410, 999);

    private static final int FIRST_OWN = 1000;
    private static final Set<Integer> COMMON = Set.of(6, 30, 31, 38, 39, 48, 60, 62, 67, 210, 220, 230);
    private static final Map<Integer, String> NONE = Map.of(
            39, "no thickness",
            40, "no width",
            41, "no width",
            43, "no width",
            60, "a line that is shown",
            67, "a line on the sheet, not in paper space",
            210, "seen from above",
            220, "seen from above");
    private static final int CLOSED = 1;
    private static final int PATTERN_THROUGH = 128;
    private static final String BY_LAYER = "256";
    private static final Map<String, Set<Integer>> KNOWN = Map.of(
            "LINE", Set.of(10, 20, 11, 21),
            "CIRCLE", Set.of(10, 20, 40),
            "ARC", Set.of(10, 20, 40, 50, 51),
            "LWPOLYLINE", Set.of(10, 20, 40, 41, 42, 43, 70, 90),
            "POLYLINE", Set.of(10, 20, 40, 41, 66, 70),
            "VERTEX", Set.of(10, 20, 40, 41, 42, 70),
            "SEQEND", Set.of());

    private final FileFaults faults;
    private final Map<String, String> colours;

    DxfGroups(FileFaults faults, Map<String, String> colours) {
        this.faults = faults;
        this.colours = colours;
    }

    /** Looks at a layer as the table declares it. */
    static void layer(List<Tag> record, FileFaults faults) {
        String name = FileFaults.shown(DxfPairs.text(record, 2).orElse(""));
        for (Tag tag : record) {
            if (tag.code() == 62 && tag.value().startsWith("-")) {
                faults.add(tag.line(), "layers that are on: a colour above 0", "layer " + name + " is off");
            } else if (tag.code() == 70 && DxfPairs.whole(List.of(tag), 70) % 2 != 0) {
                faults.add(tag.line(), "layers that are not frozen", "layer " + name + " is frozen");
            }
        }
    }

    /**
     * Looks at an entity.
     *
     * @param record its groups
     * @param layer its layer's name
     */
    void entity(List<Tag> record, String layer) {
        String name = record.get(0).value();
        Set<Integer> known = KNOWN.getOrDefault(name, Set.of());
        boolean many = name.equals("LWPOLYLINE");
        Set<Integer> seen = new HashSet<>();
        for (Tag tag : record) {
            int code = tag.code();
            if (PASSED.contains(code) || code >= FIRST_OWN) {
                continue;
            }
            if (!known.contains(code) && !COMMON.contains(code)) {
                wrong(tag, name + " without group " + code);
            } else if (!many && !seen.add(code)) {
                wrong(tag, "group " + code + " once in a " + name);
            }
            value(tag, name, layer);
        }
    }

    private void value(Tag tag, String name, String layer) {
        int code = tag.code();
        boolean round = code == 40 && (name.equals("CIRCLE") || name.equals("ARC"));
        if (NONE.containsKey(code) && !round && number(tag) != 0) {
            wrong(tag, "0 in group " + code + ": " + NONE.getOrDefault(code, ""));
        } else if (code == 230 && number(tag) != 1) {
            wrong(tag, "1 in group 230: seen from above");
        } else if (code == 6
                && !tag.value().equalsIgnoreCase("CONTINUOUS")
                && !tag.value().equalsIgnoreCase("BYLAYER")) {
            wrong(tag, "an unbroken line, CONTINUOUS");
        } else if (code == 62 && !tag.value().equals(BY_LAYER)) {
            String colour = colours.getOrDefault(layer, tag.value());
            if (!tag.value().equals(colour)) {
                wrong(tag, "the colour of its layer, " + colour);
            }
        } else if (code == 70) {
            bits(tag, name);
        }
    }

    // Of a polyline 2 to 64 mean fitted curves, space and meshes; of a corner, what curves and meshes need.
    private void bits(Tag tag, String name) {
        int allowed = name.equals("VERTEX") ? 0 : CLOSED | PATTERN_THROUGH;
        int bits = DxfPairs.whole(List.of(tag), 70);
        if ((bits & ~allowed) != 0 || number(tag) != bits) {
            wrong(
                    tag,
                    allowed == 0 ? "a plain corner, 0 in group 70" : "a flat polyline, 0, 1, 128 or 129 in group 70");
        }
    }

    private double number(Tag tag) {
        return faults.number(tag.value(), tag.line(), "group " + tag.code()).orElse(0.0);
    }

    private void wrong(Tag tag, String expected) {
        faults.add(tag.line(), expected, "group " + tag.code() + " " + FileFaults.shown(tag.value()));
    }
}
