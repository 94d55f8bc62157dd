package collarwright.job;

import collarwright.finding.Code;
import collarwright.finding.Finding;
import collarwright.finding.Where;
import collarwright.units.Length;
import collarwright.units.LengthUnit;
import collarwright.units.Quoted;
import collarwright.units.Spelling;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * A user's price file: a table of comma or semicolon separated values with the columns name, unit, price in any order;
 * others are left alone. Where semicolons part the cells, decimals may stand after a comma.
 *
 * @param prices those of good lines
 * @param findings what is wrong, all of it: PRICE_FILE, JOB_FILE_UNREADABLE, and PRICE_UNKNOWN (a warning)
 */
record PriceRows(PriceList prices, List<Finding> findings) {

    private static final List<String> COLUMNS = List.of("name", "unit", "price");
    private static final int MOST_ROWS = 5000;
    private static final double DEAREST = 1e5;
    private static final String UNITS = "piece, pack of 100, m, ft, kg, or the length of a stick such as 6 m or 10 ft";

    private static final String NAMES = String.join(", ", PriceList.THINGS);

    PriceRows {
        findings = List.copyOf(findings);
    }

    /**
     * Reads a file.
     *
     * @param name its name as the job has it
     * @param bytes its content, UTF-8
     * @param known names that may stand there
     * @return prices and findings
     */
    static PriceRows read(String name, byte[] bytes, Set<String> known) {
        FindingList findings = new FindingList();
        Reader reader = new Reader(name, known, findings);
        TextFile.decode(name, bytes, findings).ifPresent(file -> reader.read(CsvText.of(file.text())));
        return new PriceRows(new PriceList(reader.prices), findings.sorted());
    }

    private static final class Reader {
        private final String file;
        private final Set<String> known;
        private final FindingList findings;
        private final List<PriceList.Price> prices = new ArrayList<>();
        private final Map<String, Integer> columns = new HashMap<>();
        private final List<Integer> lines = new ArrayList<>();
        private boolean comma;

        Reader(String file, Set<String> known, FindingList findings) {
            this.file = file;
            this.known = known;
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
            if (table.lines().isEmpty() || table.lines().size() > MOST_ROWS) {
                findings.add(Finding.stop(
                        Code.PRICE_FILE,
                        new Where.Path(file),
                        "a line of column names, and at most " + MOST_ROWS + " lines",
                        table.lines().isEmpty()
                                ? "an empty file"
                                : table.lines().size() + " lines",
                        "write a first line: name,unit,price"));
                return;
            }
            List<CsvText.Cell> heads = table.lines().get(0);
            for (int i = 0; i < heads.size(); i++) {
                columns.putIfAbsent(heads.get(i).text().strip().toLowerCase(Locale.ROOT), i);
            }
            List<String> missing =
                    COLUMNS.stream().filter(c -> !columns.containsKey(c)).toList();
            if (!missing.isEmpty()) {
                stop(
                        heads.get(0),
                        "the columns name, unit, price",
                        "no column " + String.join(", ", missing),
                        "write a first line: name,unit,price");
                return;
            }
            List<List<CsvText.Cell>> body =
                    table.lines().subList(1, table.lines().size());
            Parting parting = new Parting(table.separator(), heads.size());
            parting.wrong(body).ifPresent(w -> stop(w.first(), w.expected(), w.found(), w.hint()));
            body.stream().filter(parting::holds).forEach(this::row);
        }

        private void row(List<CsvText.Cell> line) {
            CsvText.Cell nameCell = cell(line, "name");
            String name = nameCell.text().strip();
            boolean named = name(nameCell, name);
            Optional<PriceList.Price> unit = unit(cell(line, "unit"), name);
            Optional<Double> price = price(cell(line, "price"));
            if (!named || unit.isEmpty() || price.isEmpty()) {
                return;
            }
            PriceList.Price one = unit.get();
            if (suits(cell(line, "unit"), one) && fresh(nameCell, one)) {
                prices.add(new PriceList.Price(name, one.measure(), one.size(), one.unit(), price.get()));
                lines.add(nameCell.line());
            }
        }

        // What nothing is called has a finding of its own.
        private boolean suits(CsvText.Cell cell, PriceList.Price one) {
            Set<PriceList.Measure> measures = PriceList.measures(one.name());
            boolean unknown = !known.contains(one.name()) && !PriceList.THINGS.contains(one.name());
            if (unknown || measures.contains(one.measure())) {
                return true;
            }
            String units = measures.stream().map(Reader::words).collect(Collectors.joining(", or "));
            stop(
                    cell,
                    "a unit that " + Quoted.text(one.name()) + " is bought by: " + units,
                    Quoted.text(one.unit()),
                    "write the price for one of these units, or take the line out");
            return false;
        }

        private static String words(PriceList.Measure measure) {
            return switch (measure) {
                case PIECE -> "piece";
                case PACK -> "pack of 100";
                case LENGTH -> "m, ft";
                case STICK -> "the length of a stick such as 6 m";
                case KILOGRAM -> "kg";
            };
        }

        // Two sticks that one length in the job could mean would leave open which price counts.
        private boolean fresh(CsvText.Cell cell, PriceList.Price one) {
            for (int i = 0; i < prices.size(); i++) {
                PriceList.Price before = prices.get(i);
                boolean alike = before.name().equals(one.name()) && before.measure() == one.measure();
                double apart = StrictMath.abs(before.size() - one.size());
                if (alike && (one.measure() != PriceList.Measure.STICK || apart < 2 * PriceList.SAME_LENGTH)) {
                    boolean same = before.unit().equals(one.unit()) || one.measure() != PriceList.Measure.STICK;
                    stop(
                            cell,
                            "one price for each name and kind of unit",
                            Quoted.text(one.name())
                                    + (same
                                            ? " a second time; line " + lines.get(i) + " has it already"
                                            : " by " + Quoted.text(one.unit()) + ", which is nearly "
                                                    + Quoted.text(before.unit()) + " of line " + lines.get(i)),
                            "take one of the two lines out");
                    return false;
                }
            }
            return true;
        }

        private boolean name(CsvText.Cell cell, String name) {
            if (name.isEmpty()) {
                stop(cell, "the name of a stock, or " + NAMES, "nothing", "write what the price is for");
                return false;
            }
            if (!known.isEmpty() && !known.contains(name)) {
                List<String> near = Spelling.nearest(name, known, 2);
                findings.add(Finding.warn(
                        Code.PRICE_UNKNOWN,
                        new Where.Text(file, cell.line(), cell.column()),
                        "the name of a stock that is known here, or " + NAMES,
                        Quoted.text(name) + ", which nothing that is bought is called",
                        near.isEmpty() ? "collarwright profiles lists the names" : "did you mean " + near.get(0) + "?",
                        "a stock given in place in the job is called \"in the job\""));
            }
            return true;
        }

        private Optional<PriceList.Price> unit(CsvText.Cell cell, String name) {
            String unit = cell.text().strip();
            Optional<PriceList.Price> one = unit(name, unit);
            if (one.isEmpty()) {
                stop(
                        cell,
                        "a unit: " + UNITS,
                        unit.isEmpty() ? "nothing" : Quoted.text(unit),
                        "write what the price is for");
            }
            return one;
        }

        private static Optional<PriceList.Price> unit(String name, String unit) {
            return switch (unit) {
                case "piece", "each" -> of(name, PriceList.Measure.PIECE, 1, unit);
                case "m" -> of(name, PriceList.Measure.LENGTH, 1000, unit);
                case "ft" -> of(name, PriceList.Measure.LENGTH, 304.8, unit);
                case "kg" -> of(name, PriceList.Measure.KILOGRAM, 1, unit);
                default ->
                    unit.matches("pack of [1-9][0-9]{0,5}")
                            ? of(name, PriceList.Measure.PACK, Integer.parseInt(unit.substring(8)), unit)
                            : stick(name, unit);
            };
        }

        private static Optional<PriceList.Price> stick(String name, String unit) {
            boolean bare = unit.isEmpty() || Character.isDigit(unit.charAt(unit.length() - 1));
            return bare
                    ? Optional.empty()
                    : Length.parse(unit, LengthUnit.MM, Length.Zero.REFUSED)
                            .found()
                            .flatMap(l -> of(name, PriceList.Measure.STICK, l.mm(), unit));
        }

        private static Optional<PriceList.Price> of(String name, PriceList.Measure measure, double size, String unit) {
            return Optional.of(new PriceList.Price(name, measure, size, unit, 0));
        }

        private Optional<Double> price(CsvText.Cell cell) {
            String text = cell.text().strip();
            String plain = comma ? text.replace(',', '.') : text;
            double price = plain.matches("[0-9]{1,9}(\\.[0-9]{1,9})?") ? Double.parseDouble(plain) : -1;
            if (price >= 0 && price <= DEAREST) {
                return Optional.of(price);
            }
            stop(
                    cell,
                    comma ? "a price from 0 to 100000, in digits" : "a price from 0 to 100000, in digits with a point",
                    text.isEmpty() ? "nothing" : Quoted.text(text),
                    "write the price without a currency; the currency stands in the job: [shop.times] currency");
            return Optional.empty();
        }

        private CsvText.Cell cell(List<CsvText.Cell> line, String column) {
            int at = columns.getOrDefault(column, 0);
            CsvText.Cell last = line.get(line.size() - 1);
            return at < line.size() ? line.get(at) : new CsvText.Cell("", last.line(), last.column());
        }

        private void stop(CsvText.Cell cell, String expected, String found, String... hints) {
            findings.add(Finding.stop(
                    Code.PRICE_FILE, new Where.Text(file, cell.line(), cell.column()), expected, found, hints));
        }
    }
}
