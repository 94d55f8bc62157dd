package collarwright.paper;

/**
 * One field of a table.
 *
 * @param text what stands in it; a line break starts a new line
 * @param kind how it is shown
 */
record Cell(String text, Kind kind) {

    /** How a field is shown. */
    enum Kind {
        /** As it is. */
        PLAIN,
        /** In bold letters. */
        STRONG,
        /** An empty box to write a measure in. */
        BLANK,
        /** An empty box to tick. */
        TICK
    }

    static Cell of(String text) {
        return new Cell(text, Kind.PLAIN);
    }

    static Cell strong(String text) {
        return new Cell(text, Kind.STRONG);
    }

    static Cell blank() {
        return new Cell("", Kind.BLANK);
    }

    static Cell tick() {
        return new Cell("", Kind.TICK);
    }
}
