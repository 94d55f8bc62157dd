package collarwright.job;

import collarwright.dome.Base;
import collarwright.dome.Breakdown;
import collarwright.dome.SphereSettings;
import collarwright.dome.Subdivision;
import collarwright.dome.Up;
import collarwright.finding.Code;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads from {@code [dome]} which sphere the dome is cut from. */
final class SphereReader {

    private final TableView table;

    SphereReader(TableView table) {
        this.table = table;
    }

    /**
     * Reads base, breakdown, subdivision and what is up.
     *
     * @return the sphere, or empty after findings
     */
    Optional<SphereSettings> read() {
        KeyView baseKey = table.key("base");
        KeyView divisionKey = table.key("subdivision");
        KeyView upKey = table.key("up");
        Optional<Base> base = baseKey.word(bases());
        Optional<Subdivision> division = divisionKey.word(divisions());
        Optional<Up> up = upKey.word(ups());
        Optional<Breakdown> breakdown = breakdown();
        boolean wrong = (baseKey.present() && base.isEmpty())
                || (divisionKey.present() && division.isEmpty())
                || (upKey.present() && up.isEmpty())
                || breakdown.isEmpty();
        if (!wrong
                && division.filter(d -> d == Subdivision.ARCS).isPresent()
                && breakdown.get().c() > 0) {
            divisionKey.stop(
                    Code.JOB_CONFLICT,
                    "\"chords\" for breakdowns of class II and III",
                    divisionKey.shown(),
                    "write subdivision = \"chords\", or give a frequency: equal arcs are for class I");
            return Optional.empty();
        }
        return wrong
                ? Optional.empty()
                : Optional.of(new SphereSettings(
                        base.orElse(Base.ICOSAHEDRON),
                        breakdown.get(),
                        division.orElse(Subdivision.CHORDS),
                        up.orElse(Up.VERTEX)));
    }

    private static Map<String, Base> bases() {
        Map<String, Base> words = new LinkedHashMap<>();
        words.put("icosahedron", Base.ICOSAHEDRON);
        words.put("octahedron", Base.OCTAHEDRON);
        words.put("tetrahedron", Base.TETRAHEDRON);
        return words;
    }

    private static Map<String, Subdivision> divisions() {
        Map<String, Subdivision> words = new LinkedHashMap<>();
        words.put("chords", Subdivision.CHORDS);
        words.put("arcs", Subdivision.ARCS);
        return words;
    }

    private static Map<String, Up> ups() {
        Map<String, Up> words = new LinkedHashMap<>();
        words.put("vertex", Up.VERTEX);
        words.put("edge", Up.EDGE);
        words.put("face", Up.FACE);
        return words;
    }

    private Optional<Breakdown> breakdown() {
        KeyView frequency = table.key("frequency");
        KeyView breakdown = table.key("breakdown");
        if (frequency.present() && breakdown.present()) {
            breakdown.stop(
                    Code.JOB_CONFLICT,
                    "frequency or breakdown",
                    "both",
                    "take one of the two out: frequency = n is breakdown = [n, 0]");
            return Optional.empty();
        }
        if (breakdown.present()) {
            return pair(breakdown);
        }
        return table.need("frequency", "how often the face's edge is divided; or breakdown = [b, c]", "frequency = 3")
                .wholeNumber(1, SphereSettings.MAX_FREQUENCY)
                .map(n -> new Breakdown(n, 0));
    }

    private static Optional<Breakdown> pair(KeyView key) {
        List<KeyView> items = key.items();
        if (items.size() != 2) {
            key.stop(
                    Code.JOB_WRONG_TYPE,
                    "two whole numbers [b, c]",
                    items.size() + (items.size() == 1 ? " value" : " values"),
                    "write breakdown = [2, 1]: b steps along the grid, then c steps turned left by 60°");
            return Optional.empty();
        }
        Optional<Integer> b = items.get(0).wholeNumber(0, SphereSettings.MAX_FREQUENCY);
        Optional<Integer> c = items.get(1).wholeNumber(0, SphereSettings.MAX_FREQUENCY);
        if (b.isEmpty() || c.isEmpty()) {
            return Optional.empty();
        }
        if (b.get() == 0) {
            key.stop(
                    Code.JOB_OUT_OF_RANGE,
                    "b of at least 1",
                    "[0, " + c.get() + "]",
                    c.get() == 0
                            ? "write breakdown = [2, 1], or frequency = 3"
                            : "write [" + c.get() + ", 0], which is the same sphere");
            return Optional.empty();
        }
        int t = b.get() * b.get() + b.get() * c.get() + c.get() * c.get();
        if (t > Breakdown.MOST_T) {
            key.stop(
                    Code.JOB_OUT_OF_RANGE,
                    "T = b² + bc + c² of at most " + Breakdown.MOST_T,
                    "T = " + t,
                    "take smaller numbers");
            return Optional.empty();
        }
        return Optional.of(new Breakdown(b.get(), c.get()));
    }
}
