package collarwright.job;

import java.util.List;

/**
 * How a shop's cutter wants the layers of cut files to be called and coloured.
 *
 * @param name the profile's name
 * @param styles one for each kind of line, in the order of {@link Line}
 * @param cutOnly whether strips and plates are written without marks and notes
 */
public record CutLayers(String name, List<Style> styles, boolean cutOnly) {

    /** Checks that every kind of line has a style. */
    public CutLayers {
        styles = List.copyOf(styles);
        if (styles.size() != Line.values().length) {
            throw new IllegalArgumentException(name + ": every kind of line has a style");
        }
    }

    /** What a line in a cut file is for. */
    public enum Line {
        /** Edge of a hole. */
        CUT_INSIDE("cut-inside", "CUT-INSIDE", 1, "#ff0000", true),
        /** Edge of a part. */
        CUT_OUTSIDE("cut-outside", "CUT-OUTSIDE", 5, "#0000ff", true),
        /** Scribed or engraved. */
        MARK("mark", "MARK", 7, "#000000", false),
        /** For the reader only. */
        NOTE("note", "NOTE", 8, "#505050", false),
        /** From where a cutter pierces to the line that it cuts. */
        LEAD_IN("lead-in", "LEAD-IN", 3, "#008000", true);

        private final String word;
        private final String layer;
        private final int colour;
        private final String svg;
        private final boolean cut;

        Line(String word, String layer, int colour, String svg, boolean cut) {
            this.word = word;
            this.layer = layer;
            this.colour = colour;
            this.svg = svg;
            this.cut = cut;
        }

        /**
         * Returns the key in profiles.
         *
         * @return such as {@code cut-inside}
         */
        public String word() {
            return word;
        }

        Style usual() {
            return new Style(layer, colour, svg);
        }

        boolean isCut() {
            return cut;
        }
    }

    /**
     * Name and colours of a layer.
     *
     * @param layer name, good for DXF release 12 and as an id in SVG
     * @param colour AutoCAD Color Index, 1 to 255
     * @param svg colour such as {@code #ff0000}
     */
    public record Style(String layer, int colour, String svg) {}

    /**
     * Returns how a kind of line is written.
     *
     * @param line what it is for
     * @return name and colours
     */
    public Style of(Line line) {
        return styles.get(List.of(Line.values()).indexOf(line));
    }
}
