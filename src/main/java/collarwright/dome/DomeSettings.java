package collarwright.dome;

/**
 * Which dome to build: a class I icosahedron, vertex up, equal chords on the flat face, cut off after a row.
 *
 * @param frequency 1 to 64
 * @param rows rows of triangles kept from the apex, 1 to 3 · frequency; the dome then has tiers 0 to rows
 */
public record DomeSettings(int frequency, int rows) {

    /** The highest frequency. */
    public static final int MAX_FREQUENCY = 64;

    /** Checks the ranges. */
    public DomeSettings {
        if (frequency < 1 || frequency > MAX_FREQUENCY || rows < 1 || rows > 3 * frequency) {
            throw new IllegalArgumentException("no such dome: frequency " + frequency + ", rows " + rows);
        }
    }
}
