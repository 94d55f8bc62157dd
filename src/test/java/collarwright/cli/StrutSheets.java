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
    private static final Pattern RUN = Pattern.compile("(U[A-Z]+)\\s+(\\d+)\\s.*");
    private static final Pattern PIECES = Pattern.compile("(\\d+) × (S[A-Z]+) (\\d+\\.\\d{3})(?!\\d)");

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
        boolean struts = false;
        for (String line : Poppler.text(file).lines().map(String::strip).toList()) {
            Matcher cut = CUT.matcher(line);
            if (cut.matches()) {
                cuts.add(new Cut(
                        cut.group(1),
                        new BigDecimal(cut.group(2)),
                        new BigDecimal(cut.group(3)),
                        cut.group(4),
                        new BigDecimal(cut.group(5)),
                        Optional.ofNullable(cut.group(6)).map(BigDecimal::new),
                        Integer.parseInt(cut.group(7)),
                        Integer.parseInt(cut.group(8))));
            }
            Matcher holes = HOLES.matcher(line);
            if (holes.matches()) {
                stops.add(new Holes(
                        holes.group(1),
                        Integer.parseInt(holes.group(2)),
                        new BigDecimal(holes.group(3)),
                        new BigDecimal(holes.group(4)),
                        new BigDecimal(holes.group(5))));
            }
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
            }
        }
        return new StrutSheets(cuts, stops, sticks);
    }
}
