package collarwright.sheet;

import collarwright.units.Decimals;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Reads an SVG as a cutter would that knows groups, circles, lines and paths of absolute M, L, A and Z, and takes
 * exception to everything else: styles, transforms and curves are what cutters read differently.
 *
 * <p>Source: W3C, Scalable Vector Graphics (SVG) 1.1, Second Edition, sections 7.7 (viewBox), 8.3 (path data), 9.
 */
final class SvgScan {
    private static final Map<String, Set<String>> ALLOWED = Map.of(
            "svg", Set.of("xmlns", "version", "width", "height", "viewBox"),
            "title", Set.of(),
            "g", Set.of("id", "fill", "stroke", "stroke-width"),
            "circle", Set.of("id", "cx", "cy", "r"),
            "line", Set.of("id", "x1", "y1", "x2", "y2"),
            "path", Set.of("id", "d"));
    private static final String CURE =
            "name an SVG of templates, strips or laser as it was written; pictures are not cut files";

    private final FileFaults faults;
    private final String text;
    private final Set<String> layers = new LinkedHashSet<>();
    private final Map<String, String> colours = new LinkedHashMap<>();
    private final Set<String> ids = new HashSet<>();
    private final DrawnPieces pieces;
    private final List<String> open = new ArrayList<>();
    private String layer = "";
    private double height;
    private boolean begun;

    private SvgScan(String text, FileFaults faults) {
        this.text = text;
        this.faults = faults;
        this.pieces = new DrawnPieces(faults);
    }

    static DrawnFile read(String text, FileFaults faults) {
        SvgScan scan = new SvgScan(text, faults);
        scan.elements();
        return new DrawnFile(
                "SVG", scan.pieces.width(), scan.pieces.height(), scan.layers, scan.colours, scan.pieces.all());
    }

    private void elements() {
        int at = text.startsWith("<?xml") ? StrictMath.max(0, text.indexOf("?>") + 2) : 0;
        int line = 1 + newLines(0, at);
        while (true) {
            int next = text.indexOf('<', at);
            int end = next < 0 ? text.length() : next;
            boolean title = !open.isEmpty() && open.get(open.size() - 1).equals("title");
            if (!title && !text.substring(at, end).isBlank()) {
                faults.add(
                        line,
                        "lines only",
                        "text " + FileFaults.shown(text.substring(at, end).strip()));
            }
            line += newLines(at, end);
            if (next < 0) {
                break;
            }
            Optional<SvgTag> tag = SvgTag.at(text, next);
            if (tag.isEmpty()) {
                int shown = StrictMath.min(text.length(), next + 40);
                throw faults.unreadable(line, "an element of SVG", FileFaults.shown(text.substring(next, shown)), CURE);
            }
            element(tag.get(), line);
            at = tag.get().after();
            line += newLines(next, at);
        }
        if (!open.isEmpty()) {
            faults.add(line, "</svg> at the end: a whole file", "it breaks off in " + open.get(open.size() - 1));
        }
    }

    private int newLines(int from, int to) {
        int lines = 0;
        for (int i = from; i < to; i++) {
            lines += text.charAt(i) == '\n' ? 1 : 0;
        }
        return lines;
    }

    private void element(SvgTag tag, int line) {
        String name = tag.name();
        if (tag.start()) {
            attributes(tag, line);
            place(name, line);
            drawn(name, tag.values(), line);
            open.add(name);
        }
        if (tag.end()) {
            if (open.isEmpty() || !open.remove(open.size() - 1).equals(name)) {
                throw faults.unreadable(line, "the end of what is open", FileFaults.shown("</" + name + ">"), CURE);
            }
            layer = name.equals("g") ? "" : layer;
        }
    }

    // What is not known here may hide a line, move it or colour it.
    private void attributes(SvgTag tag, int line) {
        if (!tag.twice().isEmpty()) {
            faults.add(line, "every attribute once", FileFaults.shown(tag.twice()) + " again");
        }
        Set<String> allowed = ALLOWED.getOrDefault(tag.name(), Set.of());
        for (String name : tag.values().keySet().stream().sorted().toList()) {
            if (!allowed.contains(name) && !(tag.name().equals("svg") && name.startsWith("xmlns:"))) {
                String shown = name.length() > 60 ? name.substring(0, 60) : name;
                faults.add(line, "no " + shown, shown + " " + FileFaults.shown(value(tag.values(), name)));
            }
        }
        String id = value(tag.values(), "id");
        if (tag.values().containsKey("id") && !ids.add(id)) {
            faults.add(line, "every id once", FileFaults.shown(id) + " again");
        }
    }

    // One svg around all, in it groups, in them lines.
    private void place(String name, int line) {
        String parent = open.isEmpty() ? "" : open.get(open.size() - 1);
        if (!ALLOWED.containsKey(name)) {
            faults.add(line, "svg, title, g, circle, line and path", FileFaults.shown(name));
            return;
        }
        boolean good = switch (name) {
            case "svg" -> parent.isEmpty() && !begun;
            case "title" -> !parent.isEmpty();
            case "g" -> parent.equals("svg");
            default -> parent.equals("svg") || parent.equals("g");
        };
        if (!good) {
            faults.add(
                    line,
                    "one svg, groups in it, lines in them",
                    name + (parent.isEmpty() ? " outside" : " in " + FileFaults.shown(parent)));
        }
    }

    private static String value(Map<String, String> values, String name) {
        return values.getOrDefault(name, "");
    }

    private void group(Map<String, String> values, int line) {
        layer = value(values, "id");
        layers.add(layer);
        colours.put(layer, value(values, "stroke"));
        if (!value(values, "fill").equals("none")) {
            faults.add(line, "fill none: lines only", "fill " + FileFaults.shown(value(values, "fill")));
        }
        String width = value(values, "stroke-width");
        if (faults.number(width, line, "stroke-width").orElse(1.0) <= 0) {
            faults.add(line, "a stroke-width above 0", FileFaults.shown(width));
        }
    }

    private void drawn(String name, Map<String, String> values, int line) {
        DrawnPiece.Source source = new DrawnPiece.Source(layer, name, line);
        switch (name) {
            case "svg" -> {
                if (!begun) {
                    begun = true;
                    size(values, line);
                }
            }
            case "g" -> group(values, line);
            case "circle" -> circle(source, values);
            case "line" -> {
                double[] n = numbers(values, line, "x1", "y1", "x2", "y2");
                if (n.length == 4) {
                    pieces.straight(source, n[0], height - n[1], n[2], height - n[3]);
                }
            }
            case "path" -> path(source, values.getOrDefault("d", ""));
            default -> {}
        }
    }

    private void size(Map<String, String> values, int line) {
        String wide = values.getOrDefault("width", "");
        String high = values.getOrDefault("height", "");
        if (!wide.endsWith("mm") || !high.endsWith("mm")) {
            faults.add(line, "width and height in mm", FileFaults.shown(wide + " x " + high));
            return;
        }
        double width = faults.number(wide.substring(0, wide.length() - 2), line, "width")
                .orElse(0.0);
        height = faults.number(high.substring(0, high.length() - 2), line, "height")
                .orElse(0.0);
        pieces.sheet(width, height);
        String box = values.getOrDefault("viewBox", "none");
        String[] parts = box.strip().split("\\s+");
        boolean same = parts.length == 4
                && parts[0].equals("0")
                && parts[1].equals("0")
                && wide.equals(parts[2] + "mm")
                && high.equals(parts[3] + "mm");
        if (!same) {
            faults.add(
                    line,
                    "viewBox 0 0 " + wide.replace("mm", "") + " " + high.replace("mm", "") + ": 1 unit is 1 mm",
                    FileFaults.shown(box));
        }
    }

    private double[] numbers(Map<String, String> values, int line, String... names) {
        double[] numbers = new double[names.length];
        boolean good = true;
        for (int i = 0; i < names.length; i++) {
            Optional<Double> value = faults.number(values.getOrDefault(names[i], ""), line, names[i]);
            numbers[i] = value.orElse(0.0);
            good &= value.isPresent();
        }
        return good ? numbers : new double[0];
    }

    private void circle(DrawnPiece.Source source, Map<String, String> values) {
        double[] n = numbers(values, source.line(), "cx", "cy", "r");
        if (n.length != 3) {
            return;
        }
        if (n[2] < SheetLint.STEP) {
            faults.add(source.line(), "a radius above 0 mm", "circle of radius " + DrawnBars.mm(n[2]));
        } else {
            pieces.circle(source, n[0], height - n[1], n[2]);
        }
    }

    private void path(DrawnPiece.Source source, String data) {
        List<String> tokens = tokens(data);
        double[] start = new double[0];
        double[] pen = start;
        int at = 0;
        while (at < tokens.size()) {
            String letter = tokens.get(at);
            int count = switch (letter) {
                case "M", "L" -> 2;
                case "A" -> 7;
                case "Z" -> 0;
                default -> -1;
            };
            if (count < 0 || at + count >= tokens.size() || (pen.length == 0 && !letter.equals("M"))) {
                faults.add(source.line(), "a path of M, L, A and Z", FileFaults.shown(letter));
                return;
            }
            double[] n = new double[count];
            for (int i = 0; i < count; i++) {
                Optional<Double> value = faults.number(tokens.get(at + 1 + i), source.line(), "path data");
                if (value.isEmpty()) {
                    return;
                }
                n[i] = value.get();
            }
            at += count + 1;
            pen = step(source, letter, n, pen, start);
            start = letter.equals("M") ? pen : start;
        }
    }

    /** Letters one by one, and what stands between them, blanks and commas. */
    private static List<String> tokens(String data) {
        List<String> tokens = new ArrayList<>();
        int at = 0;
        while (at < data.length()) {
            int end = at;
            while (end < data.length() && !SvgTag.isLetter(data.charAt(end)) && !parts(data.charAt(end))) {
                end++;
            }
            if (end > at) {
                tokens.add(data.substring(at, end));
            } else if (SvgTag.isLetter(data.charAt(at))) {
                tokens.add(data.substring(at, ++end));
            } else {
                end++;
            }
            at = end;
        }
        return tokens;
    }

    private static boolean parts(char c) {
        return c == ',' || c == ' ' || (c >= '\t' && c <= '\r');
    }

    private double[] step(DrawnPiece.Source source, String letter, double[] n, double[] pen, double[] start) {
        if (letter.equals("Z")) {
            if (!same(pen, start)) {
                pieces.straight(source, pen[0], pen[1], start[0], start[1]);
            }
            return start;
        }
        double[] to = {n[n.length - 2], height - n[n.length - 1]};
        if (letter.equals("L")) {
            pieces.straight(source, pen[0], pen[1], to[0], to[1]);
        } else if (letter.equals("A")) {
            arc(source, n, pen, to);
        }
        return to;
    }

    // y counts down in the file, so what it calls positive runs clockwise here.
    private void arc(DrawnPiece.Source source, double[] n, double[] from, double[] to) {
        double radius = n[0];
        double half = StrictMath.hypot(to[0] - from[0], to[1] - from[1]) / 2;
        if (radius != n[1] || n[2] != 0 || (n[3] != 0 && n[3] != 1) || (n[4] != 0 && n[4] != 1)) {
            faults.add(
                    source.line(),
                    "an arc of a circle",
                    "radii " + Decimals.trimmed(n[0], 4) + " and " + DrawnBars.mm(n[1]) + ", turned by "
                            + Decimals.trimmed(n[2], 4) + ", flags " + Decimals.trimmed(n[3], 4) + " and "
                            + Decimals.trimmed(n[4], 4));
        } else if (radius < SheetLint.STEP || half > radius + 2 * SheetLint.STEP) {
            faults.add(
                    source.line(), "a radius of half the chord at least, " + DrawnBars.mm(half), DrawnBars.mm(radius));
        } else if (half == 0) {
            faults.add(source.line(), "an arc with a length", "both ends in one place");
        } else {
            double rise = StrictMath.sqrt(StrictMath.max(0, radius * radius - half * half));
            double bulge = (n[3] == 1 ? radius + rise : radius - rise) / half;
            pieces.bent(source, from, to, n[4] == 1 ? -bulge : bulge);
        }
    }

    private static boolean same(double[] a, double[] b) {
        return DrawnPiece.Spot.of(a[0], a[1]).equals(DrawnPiece.Spot.of(b[0], b[1]));
    }
}
