package collarwright.sheet;

import collarwright.drawing.Role;
import collarwright.finding.Finding;
import collarwright.sheet.DrawnPiece.Spot;
import collarwright.units.Decimals;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Reads a cut file back and tells what is wrong with it, from its text alone: nothing is shared with the writers or with
 * {@link SheetLint}, which looks at the drawing before it is written.
 *
 * <p>It looks for lines that are not closed, drawn twice, crossing or lying on one another, alone, outside the sheet, of
 * no length or radius, on a layer that is not declared or not ours, for holes outside parts, for lead-ins that end on no
 * cut line, for entities that cutters read differently, and for the true size: units, sheet, scale bars.
 */
public final class FileLint {
    private final FileFaults faults;
    private final DrawnFile file;
    private final LayerMap map;
    private final Set<String> known;
    private final DrawnWork work = new DrawnWork(DrawnWork.MOST);

    private FileLint(FileFaults faults, DrawnFile file, LayerMap map) {
        this.faults = faults;
        this.file = file;
        this.map = map;
        this.known = known(map);
    }

    private static Set<String> known(LayerMap map) {
        return Arrays.stream(Role.values())
                .filter(map::shows)
                .map(role -> map.of(role).layer())
                .collect(Collectors.toUnmodifiableSet());
    }

    /**
     * What a file is, and what is wrong with it.
     *
     * @param summary what was read, in one line
     * @param findings faults, each a stop with its line, at most 100 and one that says how many more there are; empty for
     *     a sound file
     * @param faults how many faults there are, told or not
     */
    public record Report(String summary, List<Finding> findings, int faults) {
        /** Keeps the list. */
        public Report {
            findings = List.copyOf(findings);
        }
    }

    /**
     * Reads and checks a file with the usual layers.
     *
     * @param name its name, for findings
     * @param text its text
     * @return what it is, with SHEET_FAULT for every fault
     * @throws collarwright.finding.JobException DRAWING_FILE if it is no cut file at all
     */
    public static Report check(String name, String text) {
        return check(name, text, LayerMap.ROLES);
    }

    /**
     * Reads and checks a file.
     *
     * @param name its name, for findings
     * @param written its text
     * @param map names of its layers
     * @return what it is, with SHEET_FAULT for every fault
     * @throws collarwright.finding.JobException DRAWING_FILE if it is no cut file at all
     */
    public static Report check(String name, String written, LayerMap map) {
        // Some editors put a byte-order mark before the text.
        String text = written.startsWith("\uFEFF") ? written.substring(1) : written;
        FileFaults faults = new FileFaults(name);
        String start = text.stripLeading();
        DrawnFile file;
        if (start.startsWith("<")) {
            file = SvgScan.read(text, faults);
        } else if (start.startsWith("0") || start.startsWith("999")) {
            file = DxfScan.read(text, faults);
        } else {
            String first = start.lines().findFirst().orElse("");
            throw faults.unreadable(
                    1, "a DXF or an SVG", FileFaults.shown(first), "name a cut file of a pack, .dxf or .svg");
        }
        Set<String> known = known(map);
        if (file.layers().stream().noneMatch(known::contains)
                && file.pieces().stream().noneMatch(p -> known.contains(p.layer()))) {
            throw faults.unreadable(
                    1,
                    "a cut file: layers "
                            + String.join(
                                    ", ",
                                    map.of(Role.CUT_INSIDE).layer(),
                                    map.of(Role.CUT_OUTSIDE).layer()),
                    "none of them",
                    "pictures and models are not cut files: leave them out",
                    "if the job names layers of its own, name them here too: --layers");
        }
        return new FileLint(faults, file, map).report();
    }

    private Report report() {
        layers();
        file.pieces().forEach(this::piece);
        twice();
        List<List<DrawnPiece>> holes = closed(Role.CUT_INSIDE);
        List<List<DrawnPiece>> parts = closed(Role.CUT_OUTSIDE);
        List<DrawnPiece> cuts = Stream.of(Role.CUT_INSIDE, Role.CUT_OUTSIDE)
                .flatMap(role -> on(role).stream())
                .filter(DrawnPiece::inside)
                .toList();
        DrawnCrossings.of(cuts, work, FileFaults.MOST + 1)
                .forEach(m -> faults.add(
                        m.second().line(),
                        "cut lines that keep apart",
                        said(m.second()) + " meets the " + m.first().entity() + " of line "
                                + m.first().line() + " near " + place(m.at())));
        inParts(holes, parts);
        leadIns(cuts);
        DrawnBars bars = DrawnBars.of(on(Role.NOTE), work);
        bars.wrong()
                .forEach(w -> faults.add(
                        w.line(), "a bar of " + DrawnBars.mm(w.expected()) + ": true size", DrawnBars.mm(w.found())));
        if (work.isSpent()) {
            faults.add(
                    1,
                    "a drawing that is compared in " + DrawnWork.MOST + " steps",
                    "too many lines near one another: not all were compared");
        }
        return new Report(summary(holes.size(), parts.size(), bars), faults.findings(), faults.count());
    }

    private String summary(int holes, int parts, DrawnBars bars) {
        return file.format() + ", sheet " + Decimals.trimmed(file.width(), 2) + " x "
                + Decimals.trimmed(file.height(), 2) + " mm, " + (holes + parts) + " closed contours (" + holes
                + " inside, " + parts + " outside), " + file.pieces().size() + " lines and arcs, "
                + bars.words();
    }

    private void layers() {
        for (Role role : Role.values()) {
            String name = map.of(role).layer();
            if (role != Role.LEAD_IN && map.shows(role) && !file.layers().contains(name)) {
                faults.add(1, "layer " + name, "the layers " + String.join(", ", sorted(file.layers())));
            }
        }
        for (Role role : Role.values()) {
            LayerMap.Style style = map.of(role);
            String colour = file.format().equals("SVG") ? style.svg() : String.valueOf(style.colour());
            String found = file.colours().getOrDefault(style.layer(), colour);
            if (!found.equals(colour)) {
                faults.add(1, "layer " + style.layer() + " in its colour, " + colour, FileFaults.shown(found));
            }
        }
        if (file.width() <= 0 || file.height() <= 0) {
            faults.add(1, "the sheet's width and height", "none");
        }
    }

    private static List<String> sorted(Set<String> names) {
        return names.stream().sorted().toList();
    }

    private void piece(DrawnPiece piece) {
        if (!known.contains(piece.layer()) || !file.layers().contains(piece.layer())) {
            faults.add(piece.line(), "one of our layers, declared in the file", said(piece));
        }
        if (!piece.isClosed() && piece.first().equals(piece.last())) {
            faults.add(piece.line(), "a line with a length", said(piece) + " at " + place(piece.first()));
        }
    }

    private void twice() {
        Map<DrawnPiece.Likeness, DrawnPiece> seen = new HashMap<>();
        for (DrawnPiece piece : file.pieces()) {
            boolean cut = piece.layer().equals(map.of(Role.CUT_INSIDE).layer())
                    || piece.layer().equals(map.of(Role.CUT_OUTSIDE).layer());
            DrawnPiece before = seen.putIfAbsent(piece.likeness(cut ? "cut " : piece.layer()), piece);
            if (before != null) {
                faults.add(piece.line(), "every line once", said(piece) + ", the same as in line " + before.line());
            }
        }
    }

    private List<DrawnPiece> on(Role role) {
        return file.on(map.of(role).layer());
    }

    private List<List<DrawnPiece>> closed(Role role) {
        DrawnContours contours = DrawnContours.of(on(role));
        contours.strays()
                .forEach(p -> faults.add(p.line(), "a line of a contour", said(p) + " alone at " + place(p.first())));
        contours.open()
                .forEach((spot, pieces) -> faults.add(
                        pieces.get(0).line(),
                        "a closed contour: two ends meet",
                        pieces.size() + (pieces.size() == 1 ? " end" : " ends") + " on "
                                + map.of(role).layer() + " at " + place(spot)));
        return contours.closed();
    }

    private void inParts(List<List<DrawnPiece>> holes, List<List<DrawnPiece>> parts) {
        DrawnPlaces places = new DrawnPlaces(parts, work);
        for (List<DrawnPiece> hole : holes) {
            Spot p = hole.get(0).first();
            if (!parts.isEmpty() && !places.hold(p)) {
                faults.add(hole.get(0).line(), "a hole inside a part", said(hole.get(0)) + " outside, " + place(p));
            }
        }
    }

    private void leadIns(List<DrawnPiece> cuts) {
        DrawnPlaces places = new DrawnPlaces(cuts.stream().map(List::of).toList(), work);
        for (DrawnPiece lead : on(Role.LEAD_IN)) {
            if (lead.inside() && !places.touch(lead.last()) && !places.touch(lead.first())) {
                faults.add(lead.line(), "a lead-in that ends on a cut line", said(lead) + " to " + place(lead.last()));
            }
        }
    }

    private static String said(DrawnPiece piece) {
        return piece.entity() + " on " + (piece.layer().isEmpty() ? "no layer" : FileFaults.shown(piece.layer()));
    }

    private static String place(Spot spot) {
        return DrawnPieces.place(spot.mmX(), spot.mmY());
    }
}
