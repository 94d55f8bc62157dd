package collarwright.sheet;

import collarwright.drawing.Arc;
import collarwright.drawing.Box;
import collarwright.drawing.Circle;
import collarwright.drawing.Label;
import collarwright.drawing.Layer;
import collarwright.drawing.Line;
import collarwright.drawing.Path;
import collarwright.drawing.Point;
import collarwright.drawing.Role;
import collarwright.drawing.Shape;
import collarwright.drawing.Sheet;
import collarwright.finding.Code;
import collarwright.finding.Finding;
import collarwright.finding.JobException;
import collarwright.finding.Where;
import collarwright.units.Decimals;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Proves a sheet before any file is written from it. What it finds is a fault of the program, not of the job.
 *
 * <p>It looks at the numbers as they are printed, to {@link #STEP}: two corners that print alike are the same corner,
 * and a radius that prints as 0 is none. It finds lines outside the sheet or in its margin, lines partly in and partly
 * out of the body, points where there should be a line, the same line drawn twice, letters on a cut layer, cut lines
 * that are not closed, that touch or cross one another or themselves, and holes outside any part.
 */
public final class SheetLint {
    /** Finest step that writers print. */
    public static final double STEP = 1e-4;

    private static final double SLACK = 1e-6;
    private static final String CURE = "this is a fault of the program: please report it with the job file";

    private final Sheet sheet;
    private final List<Finding> findings = new ArrayList<>();

    private SheetLint(Sheet sheet) {
        this.sheet = sheet;
    }

    /**
     * Looks for faults.
     *
     * @param sheet the drawing
     * @return every fault found, each a stop of kind SHEET_FAULT; empty for a sound sheet
     */
    public static List<Finding> check(Sheet sheet) {
        SheetLint lint = new SheetLint(sheet);
        sheet.layers().forEach(lint::layer);
        lint.cuts();
        return List.copyOf(lint.findings);
    }

    /**
     * Lets only a sound sheet pass.
     *
     * @param sheet the drawing
     * @throws JobException SHEET_FAULT with every fault found
     */
    public static void require(Sheet sheet) {
        List<Finding> findings = check(sheet);
        if (!findings.isEmpty()) {
            throw new JobException(findings);
        }
    }

    private void layer(Layer layer) {
        Map<String, Integer> seen = new HashMap<>();
        for (int i = 0; i < layer.shapes().size(); i++) {
            Shape shape = layer.shapes().get(i);
            String name = layer.role().layer() + " " + (i + 1);
            inFrame(shape, name);
            notAPoint(shape, name);
            if (layer.role().isCut() && shape instanceof Label label) {
                fault(name, "lines to cut along", "letters \"" + label.text() + "\"");
            }
            Integer before = seen.putIfAbsent(ShapeKey.of(shape), i + 1);
            if (before != null) {
                fault(
                        name,
                        "every line once",
                        "the same line as " + layer.role().layer() + " " + before);
            }
        }
    }

    private void inFrame(Shape shape, String name) {
        Box box = shape.bounds();
        Box room = sheet.size().grown(SLACK - Sheet.MARGIN);
        if (!room.holds(box)) {
            fault(name, "all inside the margin, " + text(room), text(box));
        }
        Box body = sheet.body().grown(SLACK);
        if (!body.holds(box) && sheet.body().grown(-SLACK).meets(box)) {
            fault(name, "wholly inside or wholly outside the body, " + text(body), text(box));
        }
    }

    private void notAPoint(Shape shape, String name) {
        if (shape instanceof Circle circle) {
            radius(circle.radius(), name);
        } else if (shape instanceof Arc arc) {
            radius(arc.radius(), name);
            length(arc.at(arc.start()), arc.at(arc.end()), name);
        } else if (shape instanceof Line line) {
            length(line.from(), line.to(), name);
        } else if (shape instanceof Path path) {
            path(path, name);
        } else if (shape instanceof Label label) {
            label.strokes().forEach(stroke -> path(stroke, name));
        }
    }

    private void path(Path path, String name) {
        for (int i = 0; i < path.pieceCount(); i++) {
            length(path.from(i).point(), path.to(i), name + " piece " + (i + 1));
        }
    }

    private void radius(double radius, String name) {
        if (radius < STEP) {
            fault(name, "a radius above 0 mm", Decimals.trimmed(radius, 6) + " mm");
        }
    }

    private void length(Point from, Point to, String name) {
        if (ShapeKey.of(from).equals(ShapeKey.of(to))) {
            fault(name, "a line with a length", "both ends at " + text(from));
        }
    }

    private void cuts() {
        for (Role role : List.of(Role.CUT_INSIDE, Role.CUT_OUTSIDE)) {
            closed(role);
        }
        List<Shape> all = new ArrayList<>(sheet.shapes(Role.CUT_INSIDE));
        all.addAll(sheet.shapes(Role.CUT_OUTSIDE));
        for (CutLines.Meeting meeting : new CutLines(all).meetings()) {
            fault(
                    cutName(meeting.first()) + " and " + cutName(meeting.second()),
                    "cut lines that keep apart",
                    "they meet near " + text(meeting.at()));
        }
        nested();
    }

    // Loose lines and arcs are allowed if they chain: then exactly two ends meet wherever one ends.
    private void closed(Role role) {
        Map<String, Integer> ends = new LinkedHashMap<>();
        for (Shape shape : sheet.shapes(role)) {
            List<Point> corners = Contours.isClosed(shape) ? List.of() : Contours.corners(shape);
            if (!corners.isEmpty()) {
                ends.merge(ShapeKey.of(corners.get(0)), 1, Integer::sum);
                ends.merge(ShapeKey.of(corners.get(corners.size() - 1)), 1, Integer::sum);
            }
        }
        ends.forEach((point, count) -> {
            if (count != 2) {
                fault(role.layer() + " at " + point, "two lines that end here", count + " that do");
            }
        });
    }

    private String cutName(int index) {
        int inside = sheet.shapes(Role.CUT_INSIDE).size();
        return index < inside
                ? Role.CUT_INSIDE.layer() + " " + (index + 1)
                : Role.CUT_OUTSIDE.layer() + " " + (index - inside + 1);
    }

    // Holes lie in a part and not in one another; parts lie in one another only where a hole is between them.
    private void nested() {
        List<Shape> holes = closedContours(Role.CUT_INSIDE);
        List<Shape> parts = closedContours(Role.CUT_OUTSIDE);
        CutLines holeLines = new CutLines(holes);
        CutLines partLines = new CutLines(parts);
        for (int i = 0; i < holes.size(); i++) {
            Point p = Contours.start(holes.get(i));
            long inParts = partLines.around(p);
            if (!parts.isEmpty() && inParts == 0) {
                fault(Role.CUT_INSIDE.layer() + " " + (i + 1), "a hole inside a part", "one outside at " + text(p));
            }
            if (holeLines.around(p) > StrictMath.max(0, inParts - 1)) {
                fault(Role.CUT_INSIDE.layer() + " " + (i + 1), "holes apart", "one inside another at " + text(p));
            }
        }
        for (int i = 0; i < parts.size(); i++) {
            Point p = Contours.start(parts.get(i));
            if (partLines.around(p) > holeLines.around(p)) {
                fault(Role.CUT_OUTSIDE.layer() + " " + (i + 1), "parts apart", "one inside another at " + text(p));
            }
        }
    }

    private List<Shape> closedContours(Role role) {
        return sheet.shapes(role).stream().filter(Contours::isClosed).toList();
    }

    private void fault(String where, String expected, String found) {
        Where place = new Where.Part("sheet " + sheet.name() + " / " + where);
        findings.add(Finding.stop(Code.SHEET_FAULT, place, expected, found, CURE));
    }

    private static String text(Point p) {
        return "x " + Decimals.trimmed(p.x(), 4) + ", y " + Decimals.trimmed(p.y(), 4) + " mm";
    }

    private static String text(Box box) {
        return "x " + Decimals.trimmed(box.left(), 2) + " to " + Decimals.trimmed(box.right(), 2) + ", y "
                + Decimals.trimmed(box.bottom(), 2) + " to " + Decimals.trimmed(box.top(), 2) + " mm";
    }
}
