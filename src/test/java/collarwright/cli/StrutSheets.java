package collarwright.cli;

import collarwright.testing.Poppler;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What a person reads of struts in {@code traveller.pdf}, by the text of an outside program and by nothing else.
 *
 * @param cuts the cut list
 * @param stops the stops of the tie holes
 * @param sticks the sticks of the struts: layout to sticks and pieces
 */
record StrutSheets(List<Cut> cuts, List<Holes> stops, Map<String, Run> sticks) {

    private static final String MM = "(\\d+\\.\\d{2})";
    private static final Pattern CUT = Pattern.compile("\\d+ (S[A-Z]+)\\s+" + MM + "\\s+(\\d+\\.\\d{3})"
            + "\\s+(\\d[^(]*) in \\(([+-]\\d+\\.\\d{2}) mm\\)(?:\\s+" + MM + ")?\\s+(\\d+)\\s+(\\d+)");
    private static final Pattern HOLES =
            Pattern.compile("(S[A-Z]+)\\s+(\\d+)\\s+" + MM + " mm\\s+" + MM + " mm\\s+" + MM + "\\s+\\S.*");
    // In inches first: what stands in a row, and the millimetres below it.
    private static final Pattern CUT_INCHES = Pattern.compile("\\d+ (S[A-Z]+)\\s+(\\d+\\.\\d{3})\\s+" + MM
            + "\\s+(\\d[^(]*) in \\(([+-]\\d+\\.\\d{2}) mm\\)(?:\\s+(\\d+\\.\\d{3}) in)?\\s+(\\d+)\\s+(\\d+)");
    private static final Pattern HOLES_INCHES =
            Pattern.compile("(S[A-Z]+)\\s+(\\d+)\\s+\\d+\\.\\d{3} in\\s+\\d+\\.\\d{3} in\\s+\\d+\\.\\d{3} in\\s+\\S.*");
    private static final Pattern THREE = Pattern.compile(MM + " mm\\s+" + MM + " mm\\s+" + MM + " mm");
    private static final Pattern ONE = Pattern.compile(MM + " mm");
    private static final Pattern PIECE_INCHES = Pattern.compile("(\\d+) × (S[A-Z]+) \\d+\\.\\d{3} in");
    private static final Pattern BELOW = Pattern.compile("\\((\\d+\\.\\d{3}) mm\\)");
    private static final Pattern RUN = Pattern.compile("(U[A-Z]+)\\s+(\\d+)\\s.*");
    private static final Pattern PIECES = Pattern.compile("(\\d+) × (S[A-Z]+) (\\d+\\.\\d{3})(?!\\d| in)");

    StrutSheets {
        cuts = List.copyOf(cuts);
        stops = List.copyOf(stops);
        sticks = Map.copyOf(sticks);
    }

    /** A row of the cut list. */
    record Cut(
            String type,
            BigDecimal mm,
            BigDecimal in,
            String fraction,
            BigDecimal error,
            Optional<BigDecimal> holeToHole,
            int perDome,
            int made) {}

    /** A row of the stops: both holes from end E1, and the second from E2. */
    record Holes(String type, int made, BigDecimal first, BigDecimal second, BigDecimal fromOther) {}

    /** Pieces of one stick, by name and length, and how many such sticks. */
    record Run(int sticks, List<Piece> pieces) {}

    /** Equal pieces of a stick. */
    record Piece(int count, String type, BigDecimal length) {}

    static StrutSheets read(Path file) {
        List<Cut> cuts = new ArrayList<>();
        List<Holes> stops = new ArrayList<>();
        Map<String, Run> sticks = new LinkedHashMap<>();
        List<Piece> pieces = new ArrayList<>();
        Optional<Matcher> open = Optional.empty();
        boolean struts = false;
        List<String> lines = Poppler.text(file).lines().map(String::strip).toList();
        for (int i = 0; i < lines.size(); i++) {
            String line = lines.get(i);
            String below = i + 1 < lines.size() ? lines.get(i + 1) : "";
            cut(line, below).ifPresent(cuts::add);
            holes(line, below).ifPresent(stops::add);
            struts = line.contains("from sticks: cut") ? line.startsWith("Struts") : struts;
            Matcher run = RUN.matcher(line);
            if (struts && run.matches()) {
                pieces = new ArrayList<>();
                sticks.put(run.group(1), new Run(Integer.parseInt(run.group(2)), pieces));
            }
            if (struts) {
                List<Piece> into = pieces;
                PIECES.matcher(line)
                        .results()
                        .forEach(p -> into.add(
                                new Piece(Integer.parseInt(p.group(1)), p.group(2), new BigDecimal(p.group(3)))));
                Matcher mm = BELOW.matcher(line);
                if (open.isPresent() && mm.find()) {
                    Matcher piece = open.get();
                    into.add(new Piece(Integer.parseInt(piece.group(1)), piece.group(2), new BigDecimal(mm.group(1))));
                    open = Optional.empty();
                }
                Optional<Matcher> waits = open;
                open = Optional.of(PIECE_INCHES.matcher(line))
                        .filter(Matcher::find)
                        .or(() -> waits);
            }
        }
        return new StrutSheets(cuts, stops, sticks);
    }

    private static Optional<Cut> cut(String line, String below) {
        Matcher mm = CUT.matcher(line);
        Matcher in = CUT_INCHES.matcher(line);
        boolean inches = in.matches();
        if (!inches && !mm.matches()) {
            return Optional.empty();
        }
        Matcher cut = inches ? in : mm;
        Optional<String> apart = Optional.ofNullable(cut.group(6));
        if (inches && apart.isPresent()) {
            Matcher one = ONE.matcher(below);
            apart = one.matches() ? Optional.of(one.group(1)) : Optional.empty();
        }
        return Optional.of(new Cut(
                cut.group(1),
                new BigDecimal(cut.group(inches ? 3 : 2)),
                new BigDecimal(cut.group(inches ? 2 : 3)),
                cut.group(4),
                new BigDecimal(cut.group(5)),
                apart.map(BigDecimal::new),
                Integer.parseInt(cut.group(7)),
                Integer.parseInt(cut.group(8))));
    }

    private static Optional<Holes> holes(String line, String below) {
        Matcher mm = HOLES.matcher(line);
        if (mm.matches()) {
            return Optional.of(new Holes(
                    mm.group(1),
                    Integer.parseInt(mm.group(2)),
                    new BigDecimal(mm.group(3)),
                    new BigDecimal(mm.group(4)),
                    new BigDecimal(mm.group(5))));
        }
        Matcher in = HOLES_INCHES.matcher(line);
        Matcher three = THREE.matcher(below);
        return in.matches() && three.lookingAt()
                ? Optional.of(new Holes(
                        in.group(1),
                        Integer.parseInt(in.group(2)),
                        new BigDecimal(three.group(1)),
                        new BigDecimal(three.group(2)),
                        new BigDecimal(three.group(3))))
                : Optional.empty();
    }
}
