package collarwright.paper;

/**
 * One column of a table.
 *
 * @param title its head
 * @param side where its fields stand
 */
record Column(String title, Side side) {

    /** Where fields stand. */
    enum Side {
        /** Words. */
        LEFT,
        /** Numbers. */
        RIGHT,
        /** Marks. */
        MIDDLE
    }

    static Column words(String title) {
        return new Column(title, Side.LEFT);
    }

    static Column numbers(String title) {
        return new Column(title, Side.RIGHT);
    }

    static Column marks(String title) {
        return new Column(title, Side.MIDDLE);
    }
}
