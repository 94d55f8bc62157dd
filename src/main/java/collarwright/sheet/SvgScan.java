package collarwright.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads an SVG as a cutter would that knows groups, circles, lines and paths of absolute M, L, A and Z, and takes
 * exception to everything else: styles, transforms and curves are what cutters read differently.
 *
 * <p>Source: W3C, Scalable Vector Graphics (SVG) 1.1, Second Edition, sections 7.7 (viewBox), 8.3 (path data), 9.
 */
final class SvgScan {
    private static final Pattern ELEMENT =
            Pattern.compile("<(/?)([A-Za-z][\\w:-]*)((?:\\s+[\\w:-]+\\s*=\\s*\"[^\"<]*\")*)\\s*(/?)>");
    private static final Pattern ATTRIBUTE = Pattern.compile("([\\w:-]+)\\s*=\\s*\"([^\"]*)\"");
    private static final Pattern TOKEN = Pattern.compile("[A-Za-z]|[^\\sA-Za-z,]+");
    private static final Set<String> ALLOWED = Set.of("svg", "title", "g", "circle", "line", "path");
    private static final String CURE =
            "name an SVG of templates, strips or laser as it was written; pictures are not cut files";

    private final FileFaults faults;
    private final String text;
    private final Set<String> layers = new LinkedHashSet<>();
    private final List<DrawnPiece> pieces = new ArrayList<>();
    private final List<String> open = new ArrayList<>();
    private String layer = "";
    private double width;
    private double height;

    private SvgScan(String text, FileFaults faults) {
        this.text = text;
        this.faults = faults;
    }

    static DrawnFile read(String text, FileFaults faults) {
        SvgScan scan = new SvgScan(text, faults);
        scan.elements();
        return new DrawnFile("SVG", scan.width, scan.height, scan.layers, scan.pieces);
    }

    private void elements() {
        int at = text.startsWith("<?xml") ? StrictMath.max(0, text.indexOf("?>") + 2) : 0;
        int line = 1 + newLines(0, at);
        Matcher matcher = ELEMENT.matcher(text);
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
            matcher.region(next, text.length());
            if (!matcher.lookingAt()) {
                int shown = StrictMath.min(text.length(), next + 40);
                throw faults.unreadable(line, "an element of SVG", FileFaults.shown(text.substring(next, shown)), CURE);
            }
            element(matcher, line);
            line += newLines(next, matcher.end());
            at = matcher.end();
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

    private void element(Matcher matcher, int line) {
        String name = matcher.group(2);
        if (matcher.group(1).equals("/")) {
            if (open.isEmpty() || !open.remove(open.size() - 1).equals(name)) {
                throw faults.unreadable(line, "the end of what is open", "</" + name + ">", CURE);
            }
            layer = name.equals("g") ? "" : layer;
            return;
        }
        Map<String, String> values = new LinkedHashMap<>();
        Matcher attribute = ATTRIBUTE.matcher(matcher.group(3));
        while (attribute.find()) {
            values.put(attribute.group(1), attribute.group(2));
        }
        if (!ALLOWED.contains(name)) {
            faults.add(line, "svg, title, g, circle, line and path", name);
        }
        for (String banned : List.of("transform", "style", "class")) {
            if (values.containsKey(banned)) {
                faults.add(line, "no " + banned, banned + " " + FileFaults.shown(values.getOrDefault(banned, "")));
            }
        }
        drawn(name, values, line);
        if (matcher.group(4).isEmpty()) {
            open.add(name);
        }
    }

    private void drawn(String name, Map<String, String> values, int line) {
        DrawnPiece.Source source = new DrawnPiece.Source(layer, name, line);
        switch (name) {
            case "svg" -> size(values, line);
            case "g" -> {
                layer = values.getOrDefault("id", "");
                if (!layers.add(layer)) {
                    faults.add(line, "one group for each layer", "group " + FileFaults.shown(layer) + " again");
                }
            }
            case "circle" -> circle(source, values);
            case "line" -> {
                double[] n = numbers(values, line, "x1", "y1", "x2", "y2");
                if (n.length == 4) {
                    pieces.add(DrawnPiece.straight(source, n[0], height - n[1], n[2], height - n[3]));
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
        width = faults.number(wide.substring(0, wide.length() - 2), line, "width")
                .orElse(0.0);
        height = faults.number(high.substring(0, high.length() - 2), line, "height")
                .orElse(0.0);
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
            faults.add(source.line(), "a radius above 0 mm", "circle of radius " + n[2] + " mm");
        } else {
            pieces.add(DrawnPiece.circle(source, n[0], height - n[1], n[2]));
        }
    }

    private void path(DrawnPiece.Source source, String data) {
        List<String> tokens = new ArrayList<>();
        Matcher matcher = TOKEN.matcher(data);
        while (matcher.find()) {
            tokens.add(matcher.group());
        }
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

    private double[] step(DrawnPiece.Source source, String letter, double[] n, double[] pen, double[] start) {
        if (letter.equals("Z")) {
            if (!same(pen, start)) {
                pieces.add(DrawnPiece.straight(source, pen[0], pen[1], start[0], start[1]));
            }
            return start;
        }
        double[] to = {n[n.length - 2], height - n[n.length - 1]};
        if (letter.equals("L")) {
            pieces.add(DrawnPiece.straight(source, pen[0], pen[1], to[0], to[1]));
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
            faults.add(source.line(), "an arc of a circle", "radii " + n[0] + " and " + n[1] + ", turned by " + n[2]);
        } else if (radius < SheetLint.STEP || half > radius + 2 * SheetLint.STEP) {
            faults.add(source.line(), "a radius of half the chord at least, " + half + " mm", radius + " mm");
        } else if (half == 0) {
            faults.add(source.line(), "an arc with a length", "both ends in one place");
        } else {
            double rise = StrictMath.sqrt(StrictMath.max(0, radius * radius - half * half));
            double bulge = (n[3] == 1 ? radius + rise : radius - rise) / half;
            pieces.add(DrawnPiece.bent(source, from, to, n[4] == 1 ? -bulge : bulge));
        }
    }

    private static boolean same(double[] a, double[] b) {
        return DrawnPiece.Spot.of(a[0], a[1]).equals(DrawnPiece.Spot.of(b[0], b[1]));
    }
}
