package collarwright.machining;

import java.util.List;

/**
 * Start values for speeds and feeds in one material.
 *
 * @param material the material's name, such as {@code pvc}
 * @param title for people
 * @param rows by cutter kind and size; the first row that covers a cutter is used
 * @param caution what to watch in this material, for people
 */
public record CuttingData(String material, String title, List<Row> rows, String caution) {
    /** Keeps the rows. */
    public CuttingData {
        rows = List.copyOf(rows);
    }

    /**
     * Speed and feed for a kind and a range of sizes.
     *
     * @param kind the cutter kind
     * @param fromSize least cutter size
     * @param toSize largest cutter size
     * @param surfaceSpeedMPerMin speed of the cutting edge, m/min
     * @param feedPerRevolution advance per turn, mm; of an end mill per turn and tooth
     * @param peckDepthRatio deepest single peck in cutter diameters
     * @param source author, title and table, or "our choice, no source"
     */
    public record Row(
            collarwright.tooling.CutterKind kind,
            double fromSize,
            double toSize,
            double surfaceSpeedMPerMin,
            double feedPerRevolution,
            double peckDepthRatio,
            String source) {
        /** Checks the ranges. */
        public Row {
            if (!(fromSize >= 0
                    && toSize >= fromSize
                    && surfaceSpeedMPerMin > 0
                    && feedPerRevolution > 0
                    && peckDepthRatio > 0)) {
                throw new IllegalArgumentException("cutting data out of range: " + source);
            }
        }
    }
}
