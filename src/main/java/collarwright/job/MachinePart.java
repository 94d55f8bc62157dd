package collarwright.job;

import collarwright.finding.Code;
import collarwright.machining.ProgramWords;
import collarwright.units.Decimals;
import collarwright.units.Length;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** One table inside a machine. Every value that cannot be read marks the machine as faulty and counts as 1 meanwhile. */
final class MachinePart {

    private final Optional<TableView> part;
    private boolean faulty;

    MachinePart(TableView table, String name, String expected) {
        part = table.needTable(name, expected);
        faulty |= part.isEmpty();
    }

    boolean faulty() {
        return faulty;
    }

    /** A value that does not go with another one. */
    void conflict(String key, String expected, String found, String... hints) {
        faulty = true;
        part.ifPresent(p -> p.key(key).stop(Code.JOB_CONFLICT, expected, found, hints));
    }

    boolean flag(String key, String expected, boolean otherwise) {
        return has(key) ? flag(key, expected) : otherwise;
    }

    /** The first word if the key is left out. */
    String wordOrFirst(String key, String expected, List<String> allowed) {
        return has(key) ? word(key, expected, allowed) : allowed.get(0);
    }

    boolean has(String key) {
        return part.filter(p -> p.key(key).present()).isPresent();
    }

    private Optional<KeyView> need(String key, String expected, String example) {
        return part.map(p -> p.need(key, expected, key + " = " + example));
    }

    private <T> T good(Optional<T> value, T meanwhile) {
        faulty |= value.isEmpty();
        return value.orElse(meanwhile);
    }

    /** A number in a range, with one that a usual machine has. */
    double number(String key, String expected, double least, double most, int usual) {
        return good(need(key, expected, Integer.toString(usual)).flatMap(k -> k.number(least, most)), least);
    }

    double whole(String key, String expected, int least, int most) {
        return good(need(key, expected, least + "").flatMap(k -> k.wholeNumber(least, most)), least);
    }

    double length(String key, String expected, Length.Zero zero) {
        return good(need(key, expected, "\"5 mm\"").flatMap(k -> k.length(zero)).map(Length::mm), 1.0);
    }

    boolean flag(String key, String expected) {
        return good(need(key, expected, "false").flatMap(KeyView::flag), false);
    }

    String word(String key, String expected, List<String> allowed) {
        Map<String, String> words = new LinkedHashMap<>();
        allowed.forEach(word -> words.put(word, word));
        String example = '"' + allowed.get(0) + '"';
        return good(need(key, expected, example).flatMap(k -> k.word(words)), allowed.get(0));
    }

    String text(String key, String expected, String form, String example) {
        Optional<KeyView> at = need(key, expected, '"' + example + '"');
        Optional<String> text = at.flatMap(KeyView::text);
        if (text.isPresent() && !text.get().matches(form)) {
            at.get().stop(Code.PROFILE_WRONG, expected + ", letters and digits", text.get(), "such as " + example);
            faulty = true;
        }
        return good(text, example);
    }

    Optional<Set<String>> words(String key) {
        Optional<KeyView> list = part.map(p -> p.key(key)).filter(KeyView::present);
        if (list.isEmpty()) {
            return Optional.empty();
        }
        Set<String> words = new LinkedHashSet<>();
        for (KeyView item : list.get().items()) {
            String word = good(item.text(), "G0");
            if (!word.matches("[A-Z](\\d{1,3}(\\.\\d)?)?")) {
                item.stop(Code.PROFILE_WRONG, "a word such as G0 or X", word, "write the letter and its number");
                faulty = true;
            } else if (!ProgramWords.KNOWN.contains(word)) {
                item.stop(
                        Code.PROFILE_WRONG,
                        "a word that the rehearsal can prove: " + String.join(", ", ProgramWords.KNOWN),
                        word,
                        "take it out: no program of ours uses it");
                faulty = true;
            }
            if (!words.add(word)) {
                item.stop(Code.JOB_CONFLICT, "every word once", word + " a second time", "take one of them out");
                faulty = true;
            }
        }
        return Optional.of(words);
    }

    /** A list of tables, each with a name and a number above 0; none if it is left out. */
    Map<String, Double> numbers(String key, String nameKey, String numberKey, double most) {
        Map<String, Double> numbers = new LinkedHashMap<>();
        Optional<KeyView> list = part.map(p -> p.key(key)).filter(KeyView::present);
        for (KeyView item : list.map(KeyView::items).orElse(List.of())) {
            Optional<TableView> row = item.table();
            Optional<String> name = row.flatMap(
                    r -> r.need(nameKey, "a name", nameKey + " = \"steel\"").text());
            Optional<Double> number = row.flatMap(
                    r -> r.need(numberKey, "a number", numberKey + " = 1000").number(10, most));
            faulty |= name.isEmpty() || number.isEmpty();
            if (name.isPresent() && number.isPresent() && numbers.put(name.get(), number.get()) != null) {
                item.stop(
                        Code.JOB_CONFLICT, "every " + nameKey + " once", name.get() + " a second time", "take one out");
                faulty = true;
            }
        }
        return numbers;
    }

    double[] span(String key) {
        Optional<KeyView> list = need(key, "from the least to the largest position", "[\"0 mm\", \"500 mm\"]");
        List<KeyView> ends = list.map(KeyView::items).orElse(List.of());
        if (ends.size() != 2) {
            faulty = true;
            list.filter(KeyView::present)
                    .ifPresent(k -> k.stop(
                            Code.JOB_WRONG_TYPE, "two positions", ends.size() + "", "write [\"least\", \"largest\"]"));
            return new double[] {0, 1};
        }
        double least = good(ends.get(0).length(Length.Zero.EITHER_SIDE).map(Length::mm), 0.0);
        double most = good(ends.get(1).length(Length.Zero.EITHER_SIDE).map(Length::mm), least + 1);
        if (least >= most) {
            faulty = true;
            list.get()
                    .stop(
                            Code.JOB_CONFLICT,
                            "the least position first, then the largest",
                            StockReader.mm(least) + ", then " + StockReader.mm(most),
                            "change the two round");
        }
        return new double[] {least, most};
    }

    void ascending(String lower, double least, String upper, double most, String unit) {
        if (least > most && !faulty) {
            faulty = true;
            String found =
                    Decimals.trimmed(least, 3) + " " + unit + " against " + Decimals.trimmed(most, 3) + " " + unit;
            part.ifPresent(p -> p.key(lower).stop(Code.JOB_CONFLICT, "at most " + upper, found, "check both keys"));
        }
    }
}
