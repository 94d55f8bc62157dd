package collarwright.picture;

/** Hole numbers in a ring, as they are written on the collar. */
final class Badges {

    static final double RADIUS = 3.1;

    private Badges() {}

    static void number(Sketch sketch, Spot at, int number) {
        var circle = Sketch.circle(at, RADIUS);
        sketch.fill(Ink.PAPER, circle);
        sketch.draw(Stroking.solid(Stroking.NARROW, Ink.INK), circle);
        sketch.write(Label.of(Integer.toString(number), at.x(), at.y(), Label.Side.MIDDLE)
                .strong());
    }
}
