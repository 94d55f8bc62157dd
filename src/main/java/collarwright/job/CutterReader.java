package collarwright.job;

import collarwright.finding.Code;
import collarwright.geometry.Interval;
import collarwright.tooling.Cutter;
import collarwright.tooling.CutterKind;
import collarwright.units.Angles;
import collarwright.units.Length;
import collarwright.units.Ratio;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Reads cutters: whole racks from profile files, single ones from a job's {@code add}.
 *
 * <p>A twist drill's lead is its point, (D/2) / tan(A/2) for a point angle A (118° unless given); a hole saw's is how far
 * its pilot stands out. An end mill has none, but teeth, and its depth is the length of its flutes.
 */
final class CutterReader {

    /** The words for the kinds of cutters. */
    static final Map<String, CutterKind> KINDS = kinds();

    /** Most cutters in one series; a wrong step must not fill the memory. */
    private static final int MOST = 2000;

    /** More teeth than any end mill for this work has. Our choice, no source. */
    private static final int MOST_TEETH = 12;

    /**
     * What holds for a cutter unless it says otherwise. Common practice, no source: a jobber drill's flutes are longer
     * than 30 mm from 3 mm on, a hole saw's cup is 38 mm deep and its pilot stands out 8 mm; an end mill's flutes have to
     * be given.
     *
     * @param pointDegrees point angle of a twist drill
     * @param lead pilot of a hole saw
     * @param depth deepest cut
     * @param minRpm slowest
     * @param maxRpm fastest
     */
    private record Defaults(double pointDegrees, double lead, double depth, double minRpm, double maxRpm) {
        static Defaults of(CutterKind kind) {
            return switch (kind) {
                case TWIST -> new Defaults(118, 0, 30, 30, 4000);
                case HOLE_SAW -> new Defaults(118, 8, 38, 30, 1000);
                case END_MILL -> new Defaults(118, 0, 30, 100, 24_000);
                case TUBE_CUTTER -> throw new IllegalArgumentException("a tube cutter stands in no rack");
            };
        }
    }

    private CutterReader() {}

    /**
     * Reads a rack.
     *
     * @param entry its table with name, title and source
     * @return the rack, or empty after findings
     */
    static Optional<Rack> rack(ProfileFile.Entry entry) {
        TableView table = entry.table();
        Optional<CutterKind> kind = table.need("kind", "twist, hole-saw or end-mill", "kind = \"hole-saw\"")
                .word(KINDS);
        List<Cutter> cutters = new ArrayList<>();
        KeyView series = table.need("series", "the sizes in the rack", "series = [ { sizes = [\"44 mm\"] } ]");
        for (KeyView item : series.items()) {
            Optional<TableView> row = item.table();
            // Read in any case, so that its keys are known and their faults are told.
            row.ifPresent(r -> cutters.addAll(series(r, kind.orElse(CutterKind.HOLE_SAW), entry.name())));
        }
        return kind.isEmpty() || cutters.isEmpty() ? Optional.empty() : Optional.of(new Rack(kind.get(), cutters));
    }

    /**
     * Reads one cutter of a job.
     *
     * @param table its table with kind and size
     * @return the cutter, or empty after findings
     */
    static Optional<Cutter> added(TableView table) {
        Optional<CutterKind> kind = table.need("kind", "twist, hole-saw or end-mill", "kind = \"hole-saw\"")
                .word(KINDS);
        Optional<Length> size =
                table.need("size", "the size stamped on it", "size = \"44 mm\"").length(Length.Zero.REFUSED);
        // Read in any case, so that its keys are known and their faults are told.
        Optional<Form> form =
                form(table, kind.orElse(CutterKind.HOLE_SAW), size.stream().toList());
        KeyView mark = table.key("marked");
        // A size that could not be read has had its finding; its name is not held against it.
        Optional<List<MarkedSize>> marked = size.flatMap(s -> MarkedSize.of(mark, List.of(s)));
        return kind.isEmpty() || marked.isEmpty() || form.isEmpty()
                ? Optional.empty()
                : Optional.of(form.get().cutter(kind.get(), marked.get().get(0), "in the job"));
    }

    private static List<Cutter> series(TableView row, CutterKind kind, String rack) {
        List<Length> sizes = new ArrayList<>();
        KeyView listed = row.key("sizes");
        for (KeyView size : listed.items()) {
            size.length(Length.Zero.REFUSED).ifPresent(sizes::add);
        }
        sizes.addAll(steps(row, !listed.present()));
        Optional<Form> form = form(row, kind, sizes);
        Optional<List<MarkedSize>> marked = MarkedSize.of(row.key("marked"), sizes);
        return form.isEmpty() || marked.isEmpty()
                ? List.of()
                : marked.get().stream()
                        .map(size -> form.get().cutter(kind, size, rack))
                        .toList();
    }

    private static List<Length> steps(TableView row, boolean needed) {
        KeyView first = needed ? row.need("from", "the least size of the series", "from = \"6 mm\"") : row.key("from");
        boolean more = first.present();
        KeyView last = more ? row.need("to", "the largest size of the series", "to = \"10 mm\"") : row.key("to");
        KeyView by = more ? row.need("step", "from one size to the next", "step = \"0.5 mm\"") : row.key("step");
        Optional<Length> from = first.length(Length.Zero.REFUSED);
        Optional<Length> to = last.length(Length.Zero.REFUSED);
        Optional<Length> step = by.length(Length.Zero.REFUSED);
        if (from.isEmpty() || to.isEmpty() || step.isEmpty()) {
            return List.of();
        }
        List<Length> sizes = new ArrayList<>();
        Ratio size = from.get().millimetres();
        while (size.compareTo(to.get().millimetres()) <= 0) {
            if (sizes.size() == MOST) {
                by.stop(
                        Code.JOB_OUT_OF_RANGE,
                        "a step that gives at most " + MOST + " sizes",
                        "more",
                        "check from, to and step");
                return List.of();
            }
            sizes.add(new Length(size, from.get().unit()));
            size = size.plus(step.get().millimetres());
        }
        return sizes;
    }

    private static Optional<Form> form(TableView row, CutterKind kind, List<Length> sizes) {
        return kind == CutterKind.END_MILL ? endMill(row) : drill(row, kind, sizes);
    }

    /** Flutes and teeth; it has no point, and what it makes is as wide as it is told to. */
    private static Optional<Form> endMill(TableView row) {
        Defaults usual = Defaults.of(CutterKind.END_MILL);
        Optional<Double> depth = row.need("depth", "the length of its flutes", "depth = \"22 mm\"")
                .size();
        Optional<Integer> teeth =
                row.need("teeth", "how many cutting edges it has", "teeth = 2").wholeNumber(1, MOST_TEETH);
        Optional<Double> minRpm = or(row.key("min-rpm").number(1, 100_000), row, "min-rpm", usual.minRpm);
        Optional<Double> maxRpm = or(row.key("max-rpm").number(1, 100_000), row, "max-rpm", usual.maxRpm);
        Optional<Boolean> measured = or(row.key("measured").flag(), row, "measured", false);
        if (depth.isEmpty() || teeth.isEmpty() || measured.isEmpty() || !ordered(row, minRpm, maxRpm)) {
            return Optional.empty();
        }
        Range range = new Range(minRpm.orElse(usual.minRpm), maxRpm.orElse(usual.maxRpm));
        return Optional.of(new Form(
                Optional.empty(),
                measured.get(),
                Angles.radians(usual.pointDegrees),
                Optional.of(0.0),
                depth.get(),
                range,
                teeth.get()));
    }

    private static boolean ordered(TableView row, Optional<Double> minRpm, Optional<Double> maxRpm) {
        if (minRpm.isEmpty() || maxRpm.isEmpty()) {
            return false;
        }
        if (minRpm.get() > maxRpm.get()) {
            row.key("min-rpm").stop(Code.JOB_CONFLICT, "at most max-rpm", minRpm.get() + "", "change the two round");
            return false;
        }
        return true;
    }

    private static Optional<Form> drill(TableView row, CutterKind kind, List<Length> sizes) {
        Defaults usual = Defaults.of(kind);
        Optional<Double> point =
                or(row.key("point-angle").angle(30, 179), row, "point-angle", Angles.radians(usual.pointDegrees));
        Optional<Double> lead = row.key("lead").length(Length.Zero.ALLOWED).map(Length::mm);
        Optional<Double> depth = or(row.key("depth").size(), row, "depth", usual.depth);
        Optional<Double> minRpm = or(row.key("min-rpm").number(1, 100_000), row, "min-rpm", usual.minRpm);
        Optional<Double> maxRpm = or(row.key("max-rpm").number(1, 100_000), row, "max-rpm", usual.maxRpm);
        Optional<Optional<Interval>> drilled = asDrilled(row, sizes);
        if (point.isEmpty() || depth.isEmpty() || drilled.isEmpty() || !ordered(row, minRpm, maxRpm)) {
            return Optional.empty();
        }
        Optional<Double> out = kind == CutterKind.TWIST ? lead : lead.or(() -> Optional.of(usual.lead));
        Range range = new Range(minRpm.orElse(usual.minRpm), maxRpm.orElse(usual.maxRpm));
        return Optional.of(new Form(drilled.get(), drilled.get().isPresent(), point.get(), out, depth.get(), range, 1));
    }

    // A value that is there but wrong stays empty; only one that is not there becomes the usual one.
    private static <T> Optional<T> or(Optional<T> read, TableView row, String key, T usual) {
        return row.key(key).present() ? read : Optional.of(usual);
    }

    /** The measured size of a single cutter; present but empty if it was not measured. */
    private static Optional<Optional<Interval>> asDrilled(TableView row, List<Length> sizes) {
        KeyView key = row.key("as-drilled");
        KeyView spreadKey = row.key("spread");
        Optional<Interval> drilled = key.interval();
        Optional<Double> spread = spreadKey.length(Length.Zero.ALLOWED).map(Length::mm);
        if (!key.present()) {
            if (spreadKey.present()) {
                spreadKey.stop(
                        Code.JOB_CONFLICT, "as-drilled beside spread", "spread alone", "write as-drilled = \"…\" too");
            }
            return spreadKey.present() ? Optional.empty() : Optional.of(Optional.empty());
        }
        if (drilled.isEmpty() || (spreadKey.present() && spread.isEmpty())) {
            return Optional.empty();
        }
        if (sizes.size() > 1) {
            key.stop(
                    Code.JOB_CONFLICT,
                    "one size for one as-drilled size",
                    sizes.size() + " sizes",
                    "give each size its own");
            return Optional.empty();
        }
        double around = spread.orElse(0.0);
        Interval size = drilled.get();
        if (!(size.min() - around > 0)) {
            spreadKey.stop(Code.JOB_CONFLICT, "less than the as-drilled size", around + " mm", "check the spread");
            return Optional.empty();
        }
        return Optional.of(Optional.of(new Interval(size.min() - around, size.nominal(), size.max() + around)));
    }

    private record Range(double minRpm, double maxRpm) {}

    /** Of a series; without a lead it is that of the point. */
    private record Form(
            Optional<Interval> asDrilled,
            boolean measured,
            double pointAngle,
            Optional<Double> givenLead,
            double depth,
            Range range,
            int teeth) {

        Cutter cutter(CutterKind kind, MarkedSize size, String rack) {
            double mm = size.size().mm();
            double lead = givenLead.orElse(mm / 2 / StrictMath.tan(pointAngle / 2));
            Interval drilled = asDrilled.orElse(Interval.of(mm));
            return new Cutter(
                    size.id(kind),
                    kind,
                    size.marked(),
                    mm,
                    drilled,
                    measured,
                    lead,
                    depth,
                    range.minRpm,
                    range.maxRpm,
                    rack,
                    teeth,
                    Optional.empty());
        }
    }

    private static Map<String, CutterKind> kinds() {
        Map<String, CutterKind> kinds = new LinkedHashMap<>();
        kinds.put("twist", CutterKind.TWIST);
        kinds.put("hole-saw", CutterKind.HOLE_SAW);
        kinds.put("end-mill", CutterKind.END_MILL);
        return java.util.Collections.unmodifiableMap(kinds);
    }
}
