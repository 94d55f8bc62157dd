package collarwright.job;

import collarwright.finding.Code;
import collarwright.finding.Finding;
import collarwright.finding.Where;
import collarwright.geometry.Interval;
import collarwright.tooling.Cutter;
import collarwright.trial.TrialRow;
import collarwright.units.Decimals;
import collarwright.units.Quoted;
import collarwright.units.Spelling;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * The rows of a trial piece, as a person filled them in: a table of comma or semicolon separated values with a line of
 * column names, one line for each reading.
 *
 * <p>Columns, in any order: {@code hole} (its number), {@code cutter} (id or stamped size), {@code as-drilled-mm} (blank if
 * the hole was not measured: the cutter's size counts), {@code strut-mm} (blank: the job's strut), {@code measured-deg}
 * (blank: not measured, the line is left out), {@code note} (free).
 *
 * @param rows the readings, in the order of the file
 * @param wider by how much holes that were measured came out wider than the size given for their cutters, by hole; of
 *     cutters whose own size was not measured
 * @param blank lines without a reading
 * @param findings what is wrong, all of it: TRIAL_ROWS, JOB_FILE_UNREADABLE
 */
public record TrialRows(List<TrialRow> rows, SortedMap<Integer, Double> wider, int blank, List<Finding> findings) {

    private static final List<String> COLUMNS =
            List.of("hole", "cutter", "as-drilled-mm", "strut-mm", "measured-deg", "note");
    private static final List<String> NEEDED = List.of("hole", "cutter", "measured-deg");
    private static final String EXAMPLE = "hole,cutter,as-drilled-mm,strut-mm,measured-deg";
    private static final int MOST_HOLES = 99;
    private static final double STEEPEST_DEGREES = 80;
    private static final int MOST_ROWS = 10_000;

    /** Keeps the lists. */
    public TrialRows {
        rows = List.copyOf(rows);
        wider = Collections.unmodifiableSortedMap(new TreeMap<>(wider));
        findings = List.copyOf(findings);
    }

    /**
     * Reads a file.
     *
     * @param name its name as the user gave it
     * @param bytes its content, UTF-8
     * @param job tells the cutters, the strut and the collar
     * @return rows and findings
     */
    public static TrialRows read(String name, byte[] bytes, Job job) {
        FindingList findings = new FindingList();
        Reader reader = new Reader(name, job, findings);
        TextFile.decode(name, bytes, findings).ifPresent(file -> reader.read(CsvText.of(file.text())));
        return new TrialRows(reader.rows, reader.wider, reader.blank, findings.sorted());
    }

    private static final class Reader {
        private final String name;
        private final Job job;
        private final FindingList findings;
        private final List<TrialRow> rows = new ArrayList<>();
        private final TreeMap<String, Integer> columns = new TreeMap<>();
        private final TreeMap<Integer, Double> wider = new TreeMap<>();
        private boolean comma;
        private int blank;

        Reader(String name, Job job, FindingList findings) {
            this.name = name;
            this.job = job;
            this.findings = findings;
        }

        void read(CsvText table) {
            comma = table.separator() == ';';
            if (table.open().isPresent()) {
                stop(
                        table.open().get(),
                        "a quotation mark at the end of the cell",
                        "none to the end of the file",
                        "add the mark, or take the first one out");
                return;
            }
            if (table.lines().isEmpty()) {
                findings.add(stop(new Where.Path(name), "a line of column names: " + EXAMPLE, "an empty file"));
                return;
            }
            heads(table.lines().get(0));
            if (findings.stopped()) {
                return;
            }
            if (table.lines().size() > MOST_ROWS) {
                findings.add(stop(
                        new Where.Path(name),
                        "at most " + MOST_ROWS + " lines",
                        table.lines().size() + " lines"));
                return;
            }
            List<List<CsvText.Cell>> body =
                    table.lines().subList(1, table.lines().size());
            Parting parting =
                    new Parting(table.separator(), table.lines().get(0).size());
            parting.wrong(body).ifPresent(w -> stop(w.first(), w.expected(), w.found(), w.hint()));
            body.stream().filter(parting::holds).forEach(this::row);
        }

        private void heads(List<CsvText.Cell> line) {
            TreeSet<String> doubled = new TreeSet<>();
            for (int i = 0; i < line.size(); i++) {
                CsvText.Cell cell = line.get(i);
                String head = cell.text().strip().toLowerCase(Locale.ROOT);
                if (head.isEmpty()) {
                    continue;
                }
                if (!COLUMNS.contains(head)) {
                    List<String> near = Spelling.nearest(head, COLUMNS, 2);
                    stop(
                            cell,
                            "one of the columns " + String.join(", ", COLUMNS),
                            Quoted.text(cell.text()),
                            near.isEmpty()
                                    ? "take the column out, or call it note"
                                    : "did you mean " + String.join(" or ", near) + "?");
                } else if (columns.putIfAbsent(head, i) != null && doubled.add(head)) {
                    stop(cell, "each column once", Quoted.text(head) + " twice", "take one of the two out");
                }
            }
            List<String> missing =
                    NEEDED.stream().filter(c -> !columns.containsKey(c)).toList();
            if (!missing.isEmpty()) {
                stop(
                        line.get(0),
                        "a first line with the columns " + EXAMPLE,
                        "no column " + String.join(", ", missing),
                        "write the column names as the first line");
            }
        }

        private Optional<CsvText.Cell> cell(List<CsvText.Cell> line, String column) {
            int at = columns.getOrDefault(column, Integer.MAX_VALUE);
            return at < line.size() && !line.get(at).text().isBlank() ? Optional.of(line.get(at)) : Optional.empty();
        }

        private void row(List<CsvText.Cell> line) {
            if (line.stream().allMatch(c -> c.text().isBlank())) {
                return;
            }
            line.stream()
                    .filter(c -> !c.text().isBlank() && !columns.containsValue(line.indexOf(c)))
                    .findFirst()
                    .ifPresent(c -> stop(
                            c,
                            "a cell under one of the column names",
                            Quoted.text(c.text()),
                            comma
                                    ? "take it out, or call its column note"
                                    : "take it out; where numbers have decimal commas, separate the cells with ;"));
            Optional<CsvText.Cell> angleCell = cell(line, "measured-deg");
            if (angleCell.isEmpty()) {
                blank++;
                return;
            }
            int before = findings.sorted().size();
            Optional<Double> angle = number(angleCell.get(), "an angle in degrees, above 0 to 80", STEEPEST_DEGREES);
            Optional<Integer> hole = hole(line);
            Optional<Cutter> cutter = cutter(line);
            Optional<CsvText.Cell> sizeCell = cell(line, "as-drilled-mm");
            double bore = 2 * job.hub().body().innerRadius();
            String below = "a size in mm, above 0 and below the bore, " + Decimals.trimmed(bore, 2);
            Optional<Double> size = sizeCell.flatMap(c -> number(c, below, bore));
            Interval od = job.strut().stock().od();
            Optional<Double> strut =
                    cell(line, "strut-mm").map(c -> number(c, below, bore)).orElse(Optional.of(od.nominal()));
            if (findings.sorted().size() > before || hole.isEmpty() || angle.isEmpty() || strut.isEmpty()) {
                return;
            }
            boolean measured = size.isPresent() || cutter.map(Cutter::measured).orElse(false);
            double given = size.orElseGet(
                    () -> cutter.map(c -> c.asDrilled().nominal()).orElse(0.0));
            if (!fits(sizeCell.orElse(line.get(0)), given, measured, strut.get())) {
                return;
            }
            cutter.filter(c -> size.isPresent() && !c.measured())
                    .ifPresent(c ->
                            wider.put(hole.get(), size.get() - c.asDrilled().nominal()));
            rows.add(new TrialRow(
                    hole.get(),
                    cutter.map(Cutter::id).orElse(""),
                    given,
                    measured,
                    strut.get(),
                    StrictMath.toRadians(angle.get())));
        }

        private boolean fits(CsvText.Cell cell, double given, boolean measured, double strut) {
            // What a cutter may drill wider than stamped. Our choice, no source.
            double wider = measured ? 0 : 1;
            if (given + wider >= strut && given < 2 * job.hub().body().innerRadius()) {
                return true;
            }
            stop(
                    cell,
                    "a hole that the strut of " + Decimals.trimmed(strut, 3) + " mm passes",
                    Decimals.trimmed(given, 3) + " mm",
                    "check the hole's and the strut's size, and that the row has the right cutter");
            return false;
        }

        private Optional<Integer> hole(List<CsvText.Cell> line) {
            Optional<CsvText.Cell> cell = cell(line, "hole");
            if (cell.isEmpty()) {
                stop(line.get(0), "the number of the hole", "nothing", "write 1 for the first hole, and so on");
                return Optional.empty();
            }
            String text = cell.get().text().strip();
            int number = text.matches("[0-9]{1,2}") ? Integer.parseInt(text) : 0;
            if (number < 1) {
                stop(
                        cell.get(),
                        "the number of the hole, 1 to " + MOST_HOLES,
                        Quoted.text(text),
                        "write the number that stands beside the hole");
                return Optional.empty();
            }
            return Optional.of(number);
        }

        private Optional<Cutter> cutter(List<CsvText.Cell> line) {
            Optional<CsvText.Cell> cell = cell(line, "cutter");
            if (cell.isEmpty()) {
                if (cell(line, "as-drilled-mm").isEmpty()) {
                    stop(
                            line.get(0),
                            "a cutter, or the measured size of the hole",
                            "neither",
                            "write the cutter's name, such as "
                                    + job.drilling().cutters().get(0).id());
                }
                return Optional.empty();
            }
            String text = cell.get().text().strip();
            Optional<Cutter> found = job.drilling().cutters().stream()
                    .filter(c -> c.id().equalsIgnoreCase(text) || c.marked().equalsIgnoreCase(text))
                    .findFirst();
            if (found.isEmpty()) {
                List<String> near = Spelling.nearest(
                        text, job.drilling().cutters().stream().map(Cutter::id).toList(), 3);
                stop(
                        cell.get(),
                        "a cutter of the job's racks",
                        Quoted.text(text),
                        near.isEmpty()
                                ? "leave it blank and give as-drilled-mm"
                                : "did you mean " + String.join(" or ", near) + "?");
            }
            return found;
        }

        private Optional<Double> number(CsvText.Cell cell, String expected, double most) {
            String text = cell.text().strip();
            String plain = comma ? text.replace(',', '.') : text;
            if (!plain.matches("\\+?([0-9]{1,9}(\\.[0-9]{0,15})?|\\.[0-9]{1,15})")) {
                stop(cell, expected, Quoted.text(text), unreadable(text));
                return Optional.empty();
            }
            double number = Double.parseDouble(plain);
            if (number > 0 && number <= most) {
                return Optional.of(number);
            }
            stop(cell, expected, text, "check the reading, and that it is in the right column");
            return Optional.empty();
        }

        private String unreadable(String text) {
            if (text.matches("[-\u2212] ?[0-9.,]+")) {
                return "write it without the sign: both a lean and a size count from 0 up";
            }
            return text.matches(".*[0-9],[0-9].*") && !comma
                    ? "write a decimal point; a comma only where ; separates the cells"
                    : "write the bare number, without a unit";
        }

        private void stop(CsvText.Cell cell, String expected, String found, String hint) {
            findings.add(Finding.stop(
                    Code.TRIAL_ROWS, new Where.Text(name, cell.line(), cell.column()), expected, found, hint));
        }

        private static Finding stop(Where where, String expected, String found) {
            return Finding.stop(
                    Code.TRIAL_ROWS, where, expected, found, "fill in the rows.csv that the trial command wrote");
        }
    }
}
