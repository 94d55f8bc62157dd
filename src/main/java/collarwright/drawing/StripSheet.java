package collarwright.drawing;

import collarwright.tooling.FlatStrip;
import collarwright.units.Angles;
import collarwright.units.Decimals;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Puts the strips of all patterns on one sheet, one of each, side by side, outer face toward the reader and TOP up.
 *
 * <p>Cut lines are nominal, or moved outward from parts and inward in holes by half the kerf. Lead-ins are lines of their own
 * layer that end on a cut line, on its waste side: straight down to a hole's edge from inside, and along the lower edge to
 * the lower left corner of a strip.
 */
public final class StripSheet {

    private static final double LETTERS = 3.5;
    private static final double LEAST_LETTERS = 1.5;
    /** Between letters and edges. */
    private static final double AROUND = 1;

    private static final double PITCH = 6;
    private static final double LEAST_WIDTH = 180;

    /** Between strips, beside kerf and lead-in: our choice, no source. */
    private static final double APART = 8;

    private final Settings settings;
    private final Drawing drawing = new Drawing();

    private StripSheet(Settings settings) {
        this.settings = settings;
    }

    /**
     * How strips are drawn.
     *
     * @param title the job's title
     * @param revision its revision
     * @param kerf width of the cut that the lines allow for; 0 for nominal lines
     * @param leadIn length of lead-ins, 0 for none; shortened to a hole's radius
     * @param process what they are to be cut with, and what never, as a sentence
     */
    public record Settings(String title, String revision, double kerf, double leadIn, String process) {
        /** Checks the lengths. */
        public Settings {
            if (!(kerf >= 0 && leadIn >= 0 && Double.isFinite(kerf + leadIn))) {
                throw new IllegalArgumentException("kerf and lead-in are 0 or more");
            }
        }
    }

    /**
     * Draws strips.
     *
     * @param strips one or more, the first at the top
     * @param settings words, kerf and lead-ins
     * @return the sheet
     */
    public static Sheet draw(List<FlatStrip> strips, Settings settings) {
        return new StripSheet(settings).sheet(strips);
    }

    /**
     * Draws one strip alone, without notes.
     *
     * @param strip the strip
     * @param settings kerf, lead-ins and revision
     * @return the part, its outer face toward the reader
     */
    public static FlatPart part(FlatStrip strip, Settings settings) {
        StripSheet sheet = new StripSheet(settings);
        sheet.strip(strip, 0, 0);
        return new FlatPart("strip " + strip.pattern(), sheet.drawing.layers());
    }

    private Sheet sheet(List<FlatStrip> strips) {
        double around = settings.kerf() + settings.leadIn();
        double left = Sheet.MARGIN + around;
        // Commas hang below their line.
        double y = Sheet.MARGIN + LETTERS / 2;
        List<String> notes = notes(strips);
        for (int i = notes.size() - 1; i >= 0; i--) {
            drawing.add(Role.NOTE, Label.of(StrokeFont.say(notes.get(i)), LETTERS, left, y));
            y += PITCH;
        }
        double foot = y + 1;
        y = foot + around;
        for (int i = strips.size() - 1; i >= 0; i--) {
            strip(strips.get(i), left, y);
            y += strips.get(i).body().width() + APART + around;
        }
        List<Layer> layers = drawing.layers();
        Box ink = layers.stream()
                .flatMap(layer -> layer.shapes().stream())
                .map(Shape::bounds)
                .reduce(Box::with)
                .orElseThrow();
        double width = StrictMath.ceil(StrictMath.max(LEAST_WIDTH, ink.right()) + Sheet.MARGIN);
        double height = StrictMath.ceil(ink.top() + Sheet.MARGIN);
        Heading heading = new Heading("Flat strips", settings.title(), settings.revision(), notes, List.of());
        Box body = new Box(Sheet.MARGIN, foot - 0.5, width - Sheet.MARGIN, height - Sheet.MARGIN);
        return new Sheet("strips", heading, new Box(0, 0, width, height), body, layers);
    }

    private void strip(FlatStrip strip, double x, double y) {
        double half = settings.kerf() / 2;
        double length = strip.length();
        double width = strip.body().width();
        drawing.add(Role.CUT_OUTSIDE, Path.rectangle(new Box(x - half, y - half, x + length + half, y + width + half)));
        if (settings.leadIn() > 0) {
            drawing.add(Role.LEAD_IN, Line.of(x - half - settings.leadIn(), y - half, x - half, y - half));
        }
        for (FlatStrip.FlatHole hole : strip.holes()) {
            hole(hole, x, y, half);
            number(strip, hole, x, y);
        }
        marks(strip, x, y);
    }

    private void hole(FlatStrip.FlatHole hole, double x, double y, double half) {
        double radius = hole.radius() - half;
        Point centre = new Point(x + hole.x(), y + hole.y());
        drawing.add(Role.CUT_INSIDE, new Circle(centre, radius));
        double lead = StrictMath.min(settings.leadIn(), radius);
        if (lead > 0) {
            drawing.add(Role.LEAD_IN, Line.of(centre.x(), centre.y() - radius + lead, centre.x(), centre.y() - radius));
        }
    }

    /**
     * A hole's number stands on what stays: below the hole, where there is no room for it there to its right, and in the
     * hole only as a last resort.
     */
    private void number(FlatStrip strip, FlatStrip.FlatHole hole, double x, double y) {
        String number = Integer.toString(hole.hole().number());
        double below = hole.y() - hole.radius();
        double right = strip.length() - hole.x();
        for (FlatStrip.FlatHole other : strip.holes()) {
            double web = other.x() - other.radius() - hole.x();
            right = web > 0 ? StrictMath.min(right, web) : right;
        }
        double room = right - hole.radius();
        double beside = LETTERS * (room - 2 * AROUND) / StrokeFont.width(number, LETTERS);
        double under = StrictMath.min(LETTERS, below - 2 * AROUND);
        if (under >= LEAST_LETTERS) {
            drawing.add(Role.MARK, Label.centred(number, under, x + hole.x(), y + (below - under) / 2));
        } else if (beside >= LEAST_LETTERS) {
            double letters = StrictMath.min(LETTERS, beside);
            double middle = x + hole.x() + hole.radius() + room / 2;
            drawing.add(Role.MARK, Label.centred(number, letters, middle, y + hole.y() - letters / 2));
        } else if (hole.radius() / 2 >= LEAST_LETTERS) {
            double letters = StrictMath.min(LETTERS, hole.radius() / 2);
            drawing.add(Role.MARK, Label.centred(number, letters, x + hole.x(), y + hole.y() + hole.radius() / 8));
        }
    }

    /** The 0° line as a stroke at the TOP edge, and what the strip is. */
    private void marks(FlatStrip strip, double x, double y) {
        double top = y + strip.body().width();
        FlatStrip.FlatHole first = strip.holes().get(0);
        double web = strip.body().width() - first.y() - first.radius();
        double stroke = StrictMath.min(5, web / 2);
        if (stroke > 0.5) {
            drawing.add(Role.MARK, Line.of(x + first.x(), top - stroke, x + first.x(), top - 0.25));
        }
        name(strip, x, top);
    }

    /** TOP and the strip's name at the TOP edge of its widest web, as large as fits; at least TOP. */
    private void name(FlatStrip strip, double x, double top) {
        List<FlatStrip.FlatHole> holes = strip.holes().stream()
                .sorted(Comparator.comparingDouble(FlatStrip.FlatHole::x))
                .toList();
        double at = strip.joint().covered();
        double room = holes.get(0).x() - holes.get(0).radius() - at;
        for (int i = 0; i + 1 < holes.size(); i++) {
            double low = holes.get(i).x() + holes.get(i).radius();
            double web = holes.get(i + 1).x() - holes.get(i + 1).radius() - low;
            if (web > room + 1e-6) {
                at = low;
                room = web;
            }
        }
        for (String name : List.of(strip.pattern() + " " + settings.revision(), strip.pattern(), "")) {
            double widest = StrictMath.max(StrokeFont.width("TOP", LETTERS), StrokeFont.width(name, LETTERS));
            double letters = StrictMath.min(LETTERS, LETTERS * (room - 4) / widest);
            if (letters >= LEAST_LETTERS) {
                drawing.add(Role.MARK, Label.of("TOP", letters, x + at + 2, top - 2 - letters));
                if (!name.isEmpty()) {
                    drawing.add(Role.MARK, Label.of(name, letters, x + at + 2, top - 2 - 2.7 * letters));
                }
                return;
            }
        }
    }

    private List<String> notes(List<FlatStrip> strips) {
        List<String> notes = new ArrayList<>();
        notes.add("Flat strips, rev " + settings.revision() + ". Full size, mm. Outer face toward you, TOP up.");
        notes.add(
                settings.kerf() > 0
                        ? "A kerf of " + mm(settings.kerf()) + " mm is allowed for: do not allow for it again."
                        : "Nominal lines: no kerf is allowed for.");
        notes.add(settings.process());
        for (FlatStrip strip : strips) {
            StringBuilder line = new StringBuilder();
            line.append(strip.pattern())
                    .append(": make ")
                    .append(strip.made())
                    .append(", ")
                    .append(mm(strip.length()))
                    .append(" x ")
                    .append(mm(strip.body().width()))
                    .append(" x ")
                    .append(mm(strip.body().wall().nominal()))
                    .append(" mm; ")
                    .append(strip.joint().kind().word());
            if (strip.joint().length() > 0) {
                line.append(' ').append(mm(strip.joint().length())).append(" mm");
            }
            line.append(" at ")
                    .append(Decimals.fixed(Angles.degrees(strip.seam()), 2))
                    .append("°.");
            notes.add(line.toString());
        }
        return notes;
    }

    private static String mm(double length) {
        return Decimals.trimmed(length, 2);
    }
}
