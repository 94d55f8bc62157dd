package collarwright.picture;

import collarwright.machining.Load;
import collarwright.machining.ProgramFile;
import collarwright.machining.RotarySettings;
import collarwright.rehearsal.Replay;
import collarwright.units.Decimals;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Optional;

/**
 * What a program's text does, drawn on the unrolled outside of the pipe: X to the right from the jaw face, A upward from 0°
 * to 360°, both to one scale. Holes stand as they were made, with the order in which they were made; thin dashes are the
 * ways at clear height.
 */
public final class BackplotPicture implements Picture {

    /** A picture for a page of A4. */
    public static final double WIDTH = 180;

    private static final double LEFT = 18;
    private static final double RIGHT = 4;
    private static final double TOP = 18;
    private static final double FOOT = 13;
    private static final double JAWS = 6;

    /** Taller than this no page shows it whole. */
    private static final double MOST_HIGH = 230;

    private final ProgramFile file;
    private final Replay replay;
    private final RotarySettings settings;
    private final Figures figures;
    private final double width;
    private final double scale;
    private final double along;

    /**
     * Prepares the picture.
     *
     * @param file the program with its plan
     * @param replay what its text does, or that of an edited one
     * @param settings machine and pipe
     * @param figures the shop's unit
     * @param width most mm on paper; narrower where the pipe is too short to fill it
     */
    public BackplotPicture(ProgramFile file, Replay replay, RotarySettings settings, Figures figures, double width) {
        this.file = file;
        this.replay = replay;
        this.settings = settings;
        this.figures = figures;
        this.along = along();
        double round = 2 * StrictMath.PI * settings.work().body().outerRadius();
        double fits = (width - LEFT - RIGHT - JAWS) / along;
        this.scale = StrictMath.min(fits, (MOST_HIGH - TOP - FOOT) / (round + 4 * radius()));
        this.width = width;
    }

    /** How far along the pipe something happens: to the end of the last collar, or to the furthest move. */
    private double along() {
        double end = load().map(
                        l -> l.edge(l.collars()) + settings.work().body().width())
                .orElse(100.0);
        for (Replay.Leg leg : replay.path()) {
            end = StrictMath.max(end, StrictMath.max(leg.fromX(), leg.toX()));
        }
        return end + 5;
    }

    private Optional<Load> load() {
        return file.task().map(t -> t.load());
    }

    @Override
    public double width() {
        return width;
    }

    @Override
    public double height() {
        return top() + around() + over() + FOOT;
    }

    /** How far a hole at 0° reaches beyond the edge of the unrolled pipe, on paper. */
    private double over() {
        double outer = settings.work().body().outerRadius();
        return outer * StrictMath.asin(StrictMath.min(1, radius() / outer)) * scale;
    }

    private double top() {
        return TOP + over();
    }

    /** Of the widest hole. */
    private double radius() {
        return replay.holes().stream()
                .mapToDouble(BackplotPicture::radius)
                .max()
                .orElse(1);
    }

    private static double radius(Replay.Made made) {
        return made.dimple() ? 1.5 : made.diameter() / 2;
    }

    private double around() {
        return 2 * StrictMath.PI * settings.work().body().outerRadius() * scale;
    }

    @Override
    public String describe() {
        return "What " + file.name() + " does, on the unrolled pipe: "
                + replay.holes().size()
                + " places cut in order, X to the right from the jaw face, A upward from 0° to 360°.";
    }

    private double x(double machineX) {
        return LEFT + JAWS + machineX * scale;
    }

    private double y(double angleDegrees) {
        return top() + around() * (1 - angleDegrees / 360);
    }

    @Override
    public void paint(Sketch sketch) {
        Rectangle2D pipe = new Rectangle2D.Double(x(0), top(), along * scale, around());
        sketch.fill(Ink.PALE, pipe);
        collars(sketch);
        Hatching.cut(sketch, new Rectangle2D.Double(LEFT, top(), JAWS, around()));
        sketch.draw(Stroking.solid(Stroking.NARROW, Ink.INK), pipe);
        holes(sketch);
        ways(sketch);
        frame(sketch);
        numbers(sketch);
    }

    private void collars(Sketch sketch) {
        if (load().isEmpty()) {
            return;
        }
        Load load = load().orElseThrow();
        Path2D.Double edges = new Path2D.Double();
        for (int i = 1; i <= load.collars(); i++) {
            double edge = load.edge(i);
            double end = edge + settings.work().body().width();
            sketch.fill(Ink.TINT, new Rectangle2D.Double(x(edge), top(), (end - edge) * scale, around()));
            for (double at : new double[] {edge, end}) {
                edges.moveTo(x(at), top());
                edges.lineTo(x(at), top() + around());
            }
        }
        sketch.draw(Stroking.thin(), edges);
    }

    private void holes(Sketch sketch) {
        for (Replay.Made made : replay.holes()) {
            if (Double.isNaN(made.x() + made.angleDegrees())
                    || settings.machine().tube().isPresent()) {
                continue; // the tracks of a tube cutter are outlines already
            }
            sketch.fill(Ink.PAPER, outline(made));
            sketch.draw(Stroking.solid(Stroking.NARROW, Ink.INK), outline(made));
        }
    }

    /** A round hole through a round wall, opened out: true along X, wider in arc. */
    private Path2D outline(Replay.Made made) {
        double outer = settings.work().body().outerRadius();
        double radius = StrictMath.min(radius(made), outer);
        Path2D.Double path = new Path2D.Double();
        for (int i = 0; i < 72; i++) {
            double turn = i * StrictMath.PI / 36;
            double across = StrictMath.toDegrees(StrictMath.asin(radius * StrictMath.sin(turn) / outer));
            double px = x(made.x() + radius * StrictMath.cos(turn));
            double py = y(made.angleDegrees() + across);
            if (i == 0) {
                path.moveTo(px, py);
            } else {
                path.lineTo(px, py);
            }
        }
        path.closePath();
        return path;
    }

    private void ways(Sketch sketch) {
        Path2D.Double rapids = new Path2D.Double();
        Path2D.Double cuts = new Path2D.Double();
        for (Replay.Leg leg : replay.path()) {
            if (leg.fromX() != leg.toX() || leg.fromAngleDegrees() != leg.toAngleDegrees()) {
                Path2D.Double way = leg.cut() ? cuts : rapids;
                lay(way, leg);
            }
        }
        if (rapids.getCurrentPoint() != null) {
            sketch.draw(new Stroking(Stroking.FINE, List.of(1.2, 0.9), Ink.DATUM), rapids);
        }
        if (cuts.getCurrentPoint() != null) {
            sketch.draw(Stroking.edge(), cuts);
        }
    }

    /** What reaches beyond 0° or 360° comes in again at the other side. */
    private void lay(Path2D.Double way, Replay.Leg leg) {
        for (int turns = -1; turns <= 1; turns++) {
            double from = leg.fromAngleDegrees() + 360 * turns;
            double to = leg.toAngleDegrees() + 360 * turns;
            double rise = to - from;
            double enter = StrictMath.abs(rise) > 0 ? share((0 - from) / rise, (360 - from) / rise, false) : 0;
            double leave = StrictMath.abs(rise) > 0 ? share((0 - from) / rise, (360 - from) / rise, true) : 1;
            boolean level = rise == 0 && from >= 0 && from <= 360;
            if (level || (rise != 0 && leave > enter)) {
                double along = leg.toX() - leg.fromX();
                way.moveTo(x(leg.fromX() + along * enter), y(from + rise * enter));
                way.lineTo(x(leg.fromX() + along * leave), y(from + rise * leave));
            }
        }
    }

    private static double share(double one, double other, boolean later) {
        double share = later ? StrictMath.max(one, other) : StrictMath.min(one, other);
        return StrictMath.max(0, StrictMath.min(1, share));
    }

    private void numbers(Sketch sketch) {
        int last = replay.holes().size();
        for (Replay.Made made : replay.holes()) {
            if (Double.isNaN(made.x() + made.angleDegrees())) {
                continue;
            }
            Label label =
                    Label.of(Integer.toString(made.order()), x(made.x()), y(made.angleDegrees()), Label.Side.MIDDLE);
            Label beside = Label.of(
                    Integer.toString(made.order()), x(made.x()) + 1.8, y(made.angleDegrees()) - 2.6, Label.Side.LEFT);
            Label wanted = (made.dimple() ? beside : label).strong().onPaper();
            boolean always = made.order() == 1 || made.order() == last;
            if (inside(sketch, wanted) && (always || last <= 200 || made.order() % 10 == 0)) {
                sketch.writeIfFree(wanted, 0.6);
            }
        }
    }

    private boolean inside(Sketch sketch, Label label) {
        double half = sketch.widthOf(label.text());
        return label.x() - half > 0 && label.x() + half < width && label.y() > top() - 3;
    }

    private void frame(Sketch sketch) {
        for (int angle = 0; angle <= 360; angle += 90) {
            sketch.line(Stroking.thin(), new Spot(LEFT - 1.5, y(angle)), new Spot(LEFT, y(angle)));
            sketch.write(Label.of(
                    angle + "°",
                    LEFT - 2.2,
                    StrictMath.min(top() + around() - 1.5, StrictMath.max(top() + 1.5, y(angle))),
                    Label.Side.RIGHT));
        }
        sketch.write(Label.of(file.name(), 1, 3.5, Label.Side.LEFT).strong());
        String time = Decimals.fixed(StrictMath.ceil(replay.seconds()), 0) + " s";
        sketch.write(
                Label.of(replay.holes().size() + " places cut in order, running time " + time, 1, 9, Label.Side.LEFT)
                        .in(Ink.GREY));
        sketch.write(Label.of("A", 1, TOP - 3, Label.Side.LEFT).in(Ink.DATUM).strong());
        sketch.write(Label.of("jaws", LEFT, TOP - 3, Label.Side.LEFT).in(Ink.GREY));
        double foot = top() + around() + over();
        sketch.line(
                Stroking.solid(Stroking.NARROW, Ink.DATUM), new Spot(x(0), top() + around()), new Spot(x(0), foot + 4));
        sketch.write(
                Label.of("X0 jaw face, X+ to the right; one scale both ways", x(0) + 1.5, foot + 5, Label.Side.LEFT)
                        .in(Ink.DATUM));
        sketch.write(Label.of(
                        "X to " + figures.span(along - 5) + ", round "
                                + figures.span(2
                                        * StrictMath.PI
                                        * settings.work().body().outerRadius()) + "; dashes: ways at clear height",
                        x(0) + 1.5,
                        foot + 10.4,
                        Label.Side.LEFT)
                .in(Ink.GREY));
    }
}
