package collarwright.drawing;

import collarwright.tooling.IndexPlate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/**
 * Draws an index plate, the face that looks the way TOP looks toward the reader, the 0° line upward; azimuth, clockwise
 * from above, grows clockwise on the sheet. A small hole lies clockwise of the 0° line, so that a plate that was turned
 * over can be told even where nothing was engraved.
 */
public final class PlateDrawing {
    private static final List<Double> HEIGHTS = List.of(5.0, 4.0, 3.5, 3.0, 2.5, 2.0);
    private static final double FLAG_RADIUS = 1.5;
    private static final double APART = 1.5;

    private final IndexPlate plate;
    private final Cut cut;
    private final Drawing drawing = new Drawing();

    private PlateDrawing(IndexPlate plate, Cut cut) {
        this.plate = plate;
        this.cut = cut;
    }

    /**
     * Draws a plate.
     *
     * @param plate the plate, its notches apart
     * @param revision the job's revision
     * @param cut kerf and lead-ins; the kerf of edges is narrower than the pin
     * @return the part about the bore's middle
     */
    public static FlatPart draw(IndexPlate plate, String revision, Cut cut) {
        PlateDrawing it = new PlateDrawing(plate, cut);
        it.rim();
        double bore = plate.sizes().bore() / 2;
        it.hole(new Point(0, 0), bore);
        double letters = it.numbers();
        double inner = plate.sizes().pinRadius() - plate.sizes().pin() / 2 - 2 * APART - letters;
        double tick = StrictMath.min(inner, bore + 12);
        it.drawing.add(Role.MARK, Line.of(0, bore + 1, 0, tick));
        it.drawing.add(Role.MARK, Label.of("0°", 2.5, -StrictMath.max(6, StrokeFont.width("0°", 2.5) + 1), tick - 3));
        it.hole(new Point(2 * FLAG_RADIUS + 1, (bore + tick) / 2), FLAG_RADIUS);
        it.names(List.of("TOP", plate.pattern(), revision), bore + APART, inner);
        return new FlatPart("plate " + plate.pattern(), it.drawing.layers());
    }

    private static double angle(double azimuth) {
        return StrictMath.PI / 2 - azimuth;
    }

    private static Point polar(double radius, double angle) {
        return new Point(radius * StrictMath.cos(angle), radius * StrictMath.sin(angle));
    }

    // Counter-clockwise, so from the last notch to the first.
    private void rim() {
        double half = cut.kerfOutside() / 2;
        double radius = plate.sizes().diameter() / 2 + half;
        double side = plate.sizes().pin() / 2 - half;
        double opening = StrictMath.asin(side / radius);
        List<Vertex> path = new ArrayList<>();
        List<IndexPlate.Notch> notches = plate.notches();
        double widest = 0;
        double lead = 0;
        for (int i = notches.size() - 1; i >= 0; i--) {
            double at = angle(notches.get(i).azimuth());
            Point middle = polar(plate.sizes().pinRadius(), at);
            double nx = -StrictMath.sin(at) * side;
            double ny = StrictMath.cos(at) * side;
            double sweep = plate.gap((i + notches.size() - 1) % notches.size()) - 2 * opening;
            path.add(new Vertex(polar(radius, at - opening), 0));
            path.add(new Vertex(middle.moved(-nx, -ny), -1));
            path.add(new Vertex(middle.moved(nx, ny), 0));
            path.add(new Vertex(polar(radius, at + opening), StrictMath.tan(sweep / 4)));
            if (sweep > widest + 1e-9) {
                widest = sweep;
                lead = at + opening + sweep / 2;
            }
        }
        drawing.add(Role.CUT_OUTSIDE, new Path(path, true));
        if (cut.leadIn() > 0) {
            drawing.add(Role.LEAD_IN, new Line(polar(radius + cut.leadIn(), lead), polar(radius, lead)));
        }
    }

    private void hole(Point centre, double nominal) {
        double radius = nominal - cut.kerfInside() / 2;
        drawing.add(Role.CUT_INSIDE, new Circle(centre, radius));
        double lead = StrictMath.min(cut.leadIn(), radius);
        if (lead > 0) {
            double edge = centre.y() - radius;
            drawing.add(Role.LEAD_IN, Line.of(centre.x(), edge + lead, centre.x(), edge));
        }
    }

    // Upright numbers, each inside its notch; as large as the narrowest pair leaves room for.
    private double numbers() {
        List<String> texts = plate.notches().stream()
                .map(n -> n.holes().stream().map(String::valueOf).collect(Collectors.joining("+")))
                .toList();
        double bottom = plate.sizes().pinRadius() - plate.sizes().pin() / 2;
        double best = HEIGHTS.get(HEIGHTS.size() - 1);
        for (int i = HEIGHTS.size() - 1; i >= 0; i--) {
            double height = HEIGHTS.get(i);
            double wide = texts.stream()
                    .mapToDouble(t -> StrokeFont.width(t, height))
                    .max()
                    .orElse(0);
            double reach = StrictMath.hypot(wide, height);
            boolean apart = true;
            for (int k = 0; k < texts.size(); k++) {
                double gap = StrictMath.min(plate.gap(k), StrictMath.PI);
                apart &= 2 * (bottom - APART - reach / 2) * StrictMath.sin(gap / 2) > reach + APART;
            }
            if (apart && reach < plate.sizes().room() / 2) {
                best = height;
            }
        }
        double deepest = 0;
        for (int i = 0; i < texts.size(); i++) {
            double wide = StrokeFont.width(texts.get(i), best);
            double reach = StrictMath.hypot(wide, best);
            deepest = StrictMath.max(deepest, reach);
            Point p = polar(
                    bottom - APART - reach / 2, angle(plate.notches().get(i).azimuth()));
            drawing.add(Role.MARK, Label.centred(texts.get(i), best, p.x(), p.y() - best / 2));
        }
        return deepest;
    }

    private void names(List<String> texts, double from, double to) {
        for (double height : HEIGHTS) {
            boolean last = height <= 2;
            boolean fits = true;
            for (int i = 0; i < texts.size(); i++) {
                double low = from + height + i * 1.7 * height;
                fits &= StrictMath.hypot(low, StrokeFont.width(texts.get(i), height) / 2) < to;
            }
            if (fits || last) {
                for (int i = 0; i < texts.size(); i++) {
                    drawing.add(Role.MARK, Label.centred(texts.get(i), height, 0, -from - height - i * 1.7 * height));
                }
                return;
            }
        }
    }
}
