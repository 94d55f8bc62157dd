package collarwright.drawing;

import collarwright.units.Angles;
import collarwright.units.Decimals;
import java.util.ArrayList;
import java.util.List;

/** Puts a wrap on a sheet: the wrap above, scale bars on its left and below, notes beneath. */
final class WrapSheet {
    private static final double INCH = 25.4;
    private static final double GAP = 6;
    private static final double LETTERS = 3.5;
    private static final double TITLE = 5;
    private static final double PITCH = 6;
    private static final double BARS = 2 * ScaleBars.BREADTH;
    private static final double LEAST_TEXT_WIDTH = 150;

    private WrapSheet() {}

    static Sheet draw(WrapTemplate template) {
        WrapMarks.Marked marked = WrapMarks.draw(template);
        Heading heading = heading(template, marked);
        double left = Sheet.MARGIN + BARS + GAP;
        double room = StrictMath.max(template.length(), LEAST_TEXT_WIDTH);
        Drawing all = new Drawing();
        double y = Sheet.MARGIN;
        all.addAll(Role.NOTE, ScaleBars.standing(Sheet.MARGIN, y));
        all.addAll(Role.NOTE, ScaleBars.lying(left, y));
        y += BARS + GAP / 2;
        y = words(all, heading, new Point(left, y), room);
        y = StrictMath.max(y + GAP, Sheet.MARGIN);
        Box body = new Box(
                left,
                y,
                left + template.length(),
                y + template.settings().body().width());
        all.addMoved(marked.drawing(), body.left(), body.bottom());
        String name =
                template.settings().pattern().id() + template.settings().side().suffix();
        return framed(name, heading, body, all.layers());
    }

    private static Sheet framed(String name, Heading heading, Box body, List<Layer> layers) {
        Box ink = layers.stream()
                .flatMap(layer -> layer.shapes().stream())
                .map(Shape::bounds)
                .reduce(Box::with)
                .orElse(body);
        // Whole millimetres are easier to set on a printer or a laser bed.
        double width = StrictMath.ceil(ink.right() + Sheet.MARGIN);
        double height = StrictMath.ceil(ink.top() + Sheet.MARGIN);
        return new Sheet(name, heading, new Box(0, 0, width, height), body, layers);
    }

    // Returns the upper end.
    private static double words(Drawing all, Heading heading, Point from, double room) {
        List<String> notes = new ArrayList<>(heading.notes());
        notes.add(1, ScaleBars.ADVICE);
        List<String> lines = wrapped(notes, room);
        double top = from.y() + lines.size() * PITCH;
        double y = top;
        for (String line : lines) {
            y -= PITCH;
            all.add(Role.NOTE, Label.of(line, LETTERS, from.x(), y));
        }
        return title(all, heading, from.x(), top, room);
    }

    private static double title(Drawing all, Heading heading, double x, double y, double room) {
        String drawing = StrokeFont.say(heading.drawing() + "   rev " + heading.revision());
        double base = y + GAP / 2;
        List<String> lines = new ArrayList<>(wrapped(List.of(StrokeFont.say(heading.job())), room));
        for (int i = lines.size() - 1; i >= 0; i--) {
            if (!lines.get(i).isBlank()) {
                all.add(Role.NOTE, Label.of(lines.get(i), LETTERS, x, base));
                base += PITCH;
            }
        }
        all.add(Role.NOTE, Label.of(drawing, TITLE, x, base + 1));
        return base + 1 + TITLE;
    }

    private static List<String> wrapped(List<String> notes, double room) {
        List<String> lines = new ArrayList<>();
        for (String note : notes) {
            String line = "";
            for (String word : LineBreaks.words(StrokeFont.say(note))) {
                String longer = line.isEmpty() ? word : line + " " + word;
                if (!line.isEmpty() && StrokeFont.width(longer, LETTERS) > room) {
                    lines.add(line);
                    longer = word;
                }
                line = longer;
            }
            lines.add(line);
        }
        return lines;
    }

    private static Heading heading(WrapTemplate template, WrapMarks.Marked marked) {
        WrapSettings settings = template.settings();
        WrapSettings.OrderWords order = settings.order();
        String drawing = settings.side().title() + settings.pattern().id();
        return new Heading(drawing, order.title(), order.revision(), notes(template, marked), table(template));
    }

    private static List<String> notes(WrapTemplate template, WrapMarks.Marked marked) {
        WrapSettings settings = template.settings();
        boolean outside = settings.side() == Side.OUTSIDE;
        String diameter = outside ? "OD" : "ID";
        String od = mm(2 * settings.pipeRadius());
        String seam = Decimals.trimmed(Angles.degrees(template.seam().azimuth()), 1) + "°";
        List<String> notes = new ArrayList<>();
        notes.add(
                outside
                        ? "Wrap outside, this face out, TOP up."
                        : "Inside, seen from the axis: lay it in the pipe, this face to the axis, TOP up. Mirrored against"
                                + " the outside template; never wrap it outside.");
        if (settings.rolled() && !outside) {
            notes.add(
                    "Holes as drilled in pipe. Those of rolled strip come out narrower inside: check places by it, not"
                            + " sizes.");
        }
        int pieces = settings.order().pieces();
        notes.add(pieces + (pieces == 1 ? " collar, " : " collars, ")
                + mm(settings.body().width()) + " mm"
                + inches(settings, settings.body().width()) + " wide, " + diameter + " " + od
                + " mm" + inches(settings, 2 * settings.pipeRadius())
                + (settings.measured() ? ", measured." : ", nominal, not measured: measure the pipe first."));
        notes.add("Length " + Decimals.fixed(template.length(), 2) + " mm" + inches(settings, template.length())
                + " for paper of " + mm(settings.paper())
                + " mm" + inches(settings, settings.paper()) + ". Ends just meet at " + seam + ": seam gap 0.0 mm. "
                + (settings.inches()
                        ? "1/32 in of gap or overlap: " + diameter + " is off by 0.01 in"
                        : "1 mm of gap or overlap: " + diameter + " is off by 0.32 mm")
                + ".");
        notes.add("The flag points the way azimuth grows, clockwise from above" + (outside ? "." : ": to the right."));
        if (Likeness.looksTheSameTurned(settings.pattern())) {
            notes.add("Looks alike when turned: copy TOP, 0° line and flag onto the collar first.");
        }
        notes.add((settings.inches() ? "Lengths in mm where no in stands. " : "Lengths in mm. ")
                + "Outlines are nominal, no kerf taken off.");
        if (!marked.top()) {
            notes.add(
                    "No room on the wrap for TOP: the upper edge is TOP. Write it on the collar before the paper comes off.");
        }
        if (!marked.missing().isEmpty()) {
            notes.add("No room on the wrap for: " + String.join("; ", marked.missing()) + ".");
        }
        return notes;
    }

    private static List<List<String>> table(WrapTemplate template) {
        List<List<String>> rows = new ArrayList<>();
        boolean inches = template.settings().inches();
        String beside = template.settings().side().grows() + " of 0°";
        rows.add(
                inches
                        ? List.of("hole", "azimuth", beside, "in", "from left", "in", "height", "cutter", "drills")
                        : List.of("hole", "azimuth", beside + " line", "from left end", "height", "cutter", "drills"));
        for (WrapHole hole : template.holes()) {
            List<String> row = new ArrayList<>(List.of(
                    Integer.toString(hole.hole().number()),
                    Decimals.fixed(Angles.degrees(hole.hole().azimuth()), 2) + "°",
                    Decimals.fixed(hole.arcOnPaper(), 2),
                    Decimals.fixed(hole.fromLeftEnd(), 2),
                    Decimals.fixed(hole.hole().height(), 2),
                    StrokeFont.say(hole.hole().cutter().marked()),
                    Decimals.fixed(hole.hole().diameter(), 2)));
            if (inches) {
                row.add(4, Decimals.fixed(hole.fromLeftEnd() / INCH, 3));
                row.add(3, Decimals.fixed(hole.arcOnPaper() / INCH, 3));
            }
            rows.add(List.copyOf(row));
        }
        return rows;
    }

    // In brackets after the millimetres; nothing for a shop that measures in them alone.
    private static String inches(WrapSettings settings, double length) {
        return settings.inches() ? " (" + Decimals.trimmed(length / INCH, 3) + " in)" : "";
    }

    private static String mm(double length) {
        return Decimals.trimmed(length, 2);
    }
}
