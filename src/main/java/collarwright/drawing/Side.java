package collarwright.drawing;

/** On which face of the pipe's wall a template lies. */
public enum Side {
    /** Wrapped round the pipe; seen from outside with TOP up, azimuth grows to the left. */
    OUTSIDE("Wrap template ", "-wrap", "left", "wrap outside,", "this face out, TOP up"),
    /** Laid in the pipe; seen from its axis with TOP up, azimuth grows to the right. */
    INSIDE("Inside template ", "-inside", "right", "lay inside,", "this face to the axis, TOP up");

    private final String title;
    private final String suffix;
    private final String grows;
    private final String where;
    private final String face;

    Side(String title, String suffix, String grows, String where, String face) {
        this.title = title;
        this.suffix = suffix;
        this.grows = grows;
        this.where = where;
        this.face = face;
    }

    String title() {
        return title;
    }

    String suffix() {
        return suffix;
    }

    /** Which way azimuth grows on the printed face with TOP up. */
    String grows() {
        return grows;
    }

    /** +1 where azimuth grows to the right. */
    int sign() {
        return this == INSIDE ? 1 : -1;
    }

    String where() {
        return where;
    }

    String face() {
        return face;
    }
}
