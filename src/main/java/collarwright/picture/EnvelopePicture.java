package collarwright.picture;

import collarwright.collar.Direction;
import collarwright.collar.LeanEnvelope;
import collarwright.collar.StrutSection;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * How far a strut can lean in its hole, all the way round, with the lean that it needs. The hole is seen from outside, TOP
 * up: a strut that leans toward the dome's centre points down, a swing clockwise from above points to the left. Distance
 * from the middle is the lean.
 */
public final class EnvelopePicture implements Picture {

    private static final double WIDTH = 120;
    private static final double RADIUS = 38;
    private static final double CENTRE = 57;
    private static final double HEIGHT = 136;
    /** Rings that may stand in the picture, and how far apart they may be. */
    private static final int MOST_RINGS = 5;

    private static final List<Integer> RING_STEPS_DEGREES = List.of(1, 2, 5, 10);
    private static final double WIDEST_STEP = StrictMath.PI / 9;
    private static final double LEAST_LEAN = StrictMath.PI / 180;

    private final LeanEnvelope envelope;
    private final Subject subject;
    private final Figures figures;
    private final double most;

    /**
     * What it shows.
     *
     * @param hole the hole in words
     * @param strut the strut
     * @param wall the collar's wall
     * @param need where the strut has to point, if that is known
     */
    public record Subject(String hole, StrutSection strut, double wall, Optional<Direction> need) {}

    /**
     * Prepares the picture.
     *
     * @param envelope the limits
     * @param subject hole, strut and need
     * @param figures the unit of sizes
     */
    public EnvelopePicture(LeanEnvelope envelope, Subject subject, Figures figures) {
        this.envelope = envelope;
        this.subject = subject;
        this.figures = figures;
        double largest =
                envelope.limits().stream().mapToDouble(Direction::lean).max().orElse(0);
        double need = subject.need().map(Direction::lean).orElse(0.0);
        this.most = 1.06 * StrictMath.max(LEAST_LEAN, StrictMath.max(largest, need));
    }

    @Override
    public double width() {
        return WIDTH;
    }

    @Override
    public double height() {
        return HEIGHT;
    }

    @Override
    public String describe() {
        return "How far a strut of " + figures.size(subject.strut().largest()) + " leans in a hole, " + subject.hole()
                + ", all the way round, seen from outside with TOP up: at least " + Figures.degrees(least())
                + ", at most " + Figures.degrees(largest()) + "."
                + subject.need()
                        .map(n -> " It needs " + Figures.degrees(n.lean()) + ".")
                        .orElse("");
    }

    private double least() {
        return envelope.limits().stream().mapToDouble(Direction::lean).min().orElse(0);
    }

    private double largest() {
        return envelope.limits().stream().mapToDouble(Direction::lean).max().orElse(0);
    }

    // Bearing 0 is down and a quarter turn to the left, so bearings run clockwise on paper.
    private Spot at(double lean, double bearing) {
        return new Spot(WIDTH / 2, CENTRE).polar(lean / most * RADIUS, StrictMath.PI + bearing);
    }

    private Spot at(Direction direction) {
        return at(direction.lean(), direction.bearing());
    }

    @Override
    public void paint(Sketch sketch) {
        List<Spot> outline = envelope.limits().stream().map(this::at).toList();
        sketch.fill(Ink.TINT, Sketch.chain(outline, true));
        rings(sketch);
        sketch.draw(Stroking.edge(), Sketch.chain(outline, true));
        if (envelope.axis().lean() > 0) {
            Spot axis = at(envelope.axis());
            sketch.line(Stroking.thin(), axis.plus(-2, 0), axis.plus(2, 0));
            sketch.line(Stroking.thin(), axis.plus(0, -2), axis.plus(0, 2));
        }
        subject.need().ifPresent(need -> need(sketch, need));
        edges(sketch);
        text(sketch);
    }

    private void rings(Sketch sketch) {
        Spot middle = at(0, 0);
        for (int quarter = 0; quarter < 4; quarter++) {
            Spot end = middle.polar(RADIUS, quarter * StrictMath.PI / 2);
            sketch.line(Stroking.axis(Ink.GREY), middle, end);
        }
        double step = step();
        for (int i = 1; i * step <= most; i++) {
            sketch.draw(Stroking.solid(Stroking.FINE, Ink.FAR), Sketch.circle(middle, i * step / most * RADIUS));
        }
        for (int i = 1; i * step <= most; i++) {
            // Just outside its ring, so that no line runs through it.
            Spot spot = middle.polar(i * step / most * RADIUS + 3.2, StrictMath.PI / 4);
            String angle = Figures.degrees(i * step).replace(".00", "");
            sketch.writeIfFree(
                    Label.of(angle, spot.x(), spot.y(), Label.Side.MIDDLE).in(Ink.GREY), 1);
        }
    }

    private double step() {
        for (int degrees : RING_STEPS_DEGREES) {
            double step = degrees * StrictMath.PI / 180;
            if (most / step <= MOST_RINGS) {
                return step;
            }
        }
        return WIDEST_STEP;
    }

    private void need(Sketch sketch, Direction need) {
        Spot spot = at(need);
        Spot middle = at(0, 0);
        sketch.line(new Stroking(Stroking.NARROW, List.of(2.0, 1.25), Ink.DATUM), middle, spot);
        sketch.fill(Ink.PAPER, Sketch.circle(spot, 1.3));
        sketch.draw(Stroking.solid(Stroking.WIDE, Ink.DATUM), Sketch.circle(spot, 1.3));
    }

    private void edges(Sketch sketch) {
        double middle = WIDTH / 2;
        sketch.write(Label.of("▲ TOP", middle, CENTRE - RADIUS - 9, Label.Side.MIDDLE)
                .strong());
        sketch.write(Label.of("toward the dome's centre", middle, CENTRE + RADIUS + 10, Label.Side.MIDDLE)
                .in(Ink.GREY));
        List<Direction> limits = envelope.limits();
        int quarter = limits.size() / 4;
        if (envelope.axis().lean() > 0) {
            return;
        }
        String[] values = new String[4];
        for (int i = 0; i < 4; i++) {
            values[i] = Figures.degrees(limits.get(i * quarter).lean());
        }
        sketch.write(Label.of(values[0], middle, CENTRE + RADIUS + 4, Label.Side.MIDDLE));
        sketch.write(Label.of(values[1], middle - RADIUS - 2, CENTRE, Label.Side.RIGHT));
        sketch.write(Label.of(values[2], middle, CENTRE - RADIUS - 3.4, Label.Side.MIDDLE));
        sketch.write(Label.of(values[3], middle + RADIUS + 2, CENTRE, Label.Side.LEFT));
    }

    private void text(Sketch sketch) {
        double y = CENTRE + RADIUS + 19;
        List<String> lines = new ArrayList<>();
        lines.add("hole " + subject.hole());
        lines.add("strut " + figures.size(subject.strut().largest())
                + (subject.strut().isRound()
                        ? ""
                        : " by " + figures.size(subject.strut().smallest()) + ", at any roll")
                + ", wall " + figures.size(subject.wall()));
        for (String line : lines) {
            sketch.write(Label.of(line, 2, y, Label.Side.LEFT));
            y += 5.5;
        }
        sketch.line(Stroking.edge(), new Spot(2, y), new Spot(12, y));
        String range = Figures.degrees(least()) + " to " + Figures.degrees(largest());
        sketch.write(Label.of("binds, " + range, 14, y, Label.Side.LEFT));
        double right = y;
        subject.need().ifPresent(need -> {
            sketch.fill(Ink.PAPER, Sketch.circle(new Spot(72, right), 1.3));
            sketch.draw(Stroking.solid(Stroking.WIDE, Ink.DATUM), Sketch.circle(new Spot(72, right), 1.3));
            sketch.write(Label.of("needs " + Figures.degrees(need.lean()), 76, right, Label.Side.LEFT));
        });
    }
}
