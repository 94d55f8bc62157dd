package collarwright.job;

import collarwright.finding.Code;
import collarwright.machining.Bed;
import collarwright.machining.Machine;
import collarwright.units.Decimals;
import collarwright.units.Length;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Reads machines from profile files. A press needs its spindle only; a rotary machine needs everything but a bed. A bed and a flat
 * machine have no chuck, so no rotary axis.
 */
final class MachineProfiles {

    private final TableView table;
    private boolean faulty;

    private MachineProfiles(TableView table) {
        this.table = table;
    }

    /**
     * Reads one machine.
     *
     * @param entry its table with name, title and source
     * @return the machine, or empty after findings
     */
    static Optional<Machine> read(ProfileFile.Entry entry) {
        MachineProfiles reader = new MachineProfiles(entry.table());
        Map<String, Machine.Kind> kinds = new LinkedHashMap<>();
        kinds.put("press", Machine.Kind.PRESS);
        kinds.put("rotary", Machine.Kind.ROTARY);
        kinds.put("bed", Machine.Kind.BED);
        kinds.put("flat", Machine.Kind.FLAT);
        Optional<Machine.Kind> kind = entry.table()
                .need("kind", "press, rotary, bed or flat", "kind = \"press\"")
                .word(kinds);
        Machine.Spindle spindle = reader.spindle();
        if (kind.isEmpty()) {
            return Optional.empty();
        }
        boolean rotary = kind.get() == Machine.Kind.ROTARY;
        boolean programmed = kind.get() != Machine.Kind.PRESS;
        Machine.Travel travel = programmed ? reader.travel(kind.get()) : new Machine.Travel(0, 0, 0, 0, 0, 0, 0, 0);
        Machine.Post post = programmed
                ? reader.post(rotary, rotary || travel.across().isPresent())
                : new Machine.Post(false, Set.of(), 3, 3, 70, "M2", "ngc");
        Machine.Rotary chuck = rotary ? reader.rotary() : new Machine.Rotary(true, true, 0, 0, 0, 0, 0, 0, 0, 0, 0);
        Optional<Bed> bed = reader.bed(kind.get());
        return reader.faulty
                ? Optional.empty()
                : Optional.of(new Machine(
                        entry.name(), entry.title(), kind.get(), post, travel, spindle, chuck, entry.source(), bed));
    }

    private Machine.Spindle spindle() {
        Part part = new Part("spindle", "the spindle's speeds");
        double least = part.number("min-rpm", "lowest speed, turns a minute", 1, 200_000);
        double most = part.number("max-rpm", "highest speed, turns a minute", 1, 200_000);
        double start = part.number("start-seconds", "wait after a start or a stop, seconds", 0, 60);
        part.ascending("min-rpm", least, "max-rpm", most);
        return new Machine.Spindle(least, most, start);
    }

    private Machine.Post post(boolean turning, boolean across) {
        Part part = new Part("post", "how programs are written");
        boolean cycles = part.flag("cycles", "whether G81, G82, G83 and G73 may be used");
        int lengthDecimals = (int) part.whole("length-decimals", "decimals of millimetres", 3, 6);
        int angleDecimals = turning ? (int) part.whole("angle-decimals", "decimals of degrees", 3, 6) : 3;
        int lineLength = (int) part.whole("line-length", "most characters on a line", 40, 255);
        String end = part.word("end-word", "the last word", List.of("M2", "M30"));
        String extension = part.text("extension", "the file name's ending", "[A-Za-z0-9]{1,8}", "ngc");
        Set<String> words = new LinkedHashSet<>(Machine.plainWords());
        if (cycles) {
            words.addAll(List.of("G73", "G80", "G81", "G82", "G83", "G98", "R", "Q"));
        }
        words.add(end);
        if (!turning) {
            words.remove("A");
        }
        if (!across) {
            words.remove("Y");
        }
        part.words("words").ifPresent(own -> {
            words.clear();
            words.addAll(own);
        });
        return new Machine.Post(cycles, words, lengthDecimals, angleDecimals, lineLength, end, extension, layout(part));
    }

    /** All of it may be left out: the plainest layout then. */
    private static Machine.Layout layout(Part part) {
        int step = part.has("line-numbers")
                ? (int) part.whole("line-numbers", "step of the N numbers, 0 for none", 0, 100)
                : 0;
        boolean percent = part.has("percent") && part.flag("percent", "whether % stands first and last");
        boolean crlf = part.has("crlf") && part.flag("crlf", "whether lines end with CR LF in place of LF");
        boolean milliseconds = part.has("dwell-unit")
                && part.word("dwell-unit", "what P of a dwell counts", List.of("s", "ms"))
                        .equals("ms");
        return new Machine.Layout(step, percent, crlf, milliseconds);
    }

    private Machine.Travel travel(Machine.Kind kind) {
        Part part = new Part("travel", "how far and how fast the machine moves");
        double[] x = part.span("x");
        double[] z = part.span("z");
        double rapid = part.number("rapid-mm-per-min", "rapid rate, mm a minute", 1, 1e6);
        double feed = part.number("max-feed-mm-per-min", "highest feed, mm a minute", 1, 1e6);
        double acceleration = part.number("acceleration-mm-per-s2", "acceleration, mm/s²", 1, 1e6);
        double gap = part.length("clear-gap", "room above everything when the pipe turns", Length.Zero.REFUSED);
        Optional<Machine.Reach> across = kind == Machine.Kind.FLAT || (kind == Machine.Kind.BED && part.has("y"))
                ? Optional.of(part.span("y")).filter(y -> y[0] < y[1]).map(y -> new Machine.Reach(y[0], y[1]))
                : Optional.empty();
        return new Machine.Travel(x[0], x[1], z[0], z[1], rapid, feed, acceleration, gap, across);
    }

    private Optional<Bed> bed(Machine.Kind kind) {
        return switch (kind) {
            case BED -> Optional.of(bed());
            case FLAT -> Optional.of(flatTable());
            default -> Optional.empty();
        };
    }

    private Bed flatTable() {
        Part part = new Part("table", "the flat table");
        double height = part.length("clamp-height", "how far clamps stand out above a sheet", Length.Zero.ALLOWED);
        double board = part.length("board", "how deep the board below a sheet may be cut", Length.Zero.ALLOWED);
        return new Bed(height, 0, board);
    }

    private Bed bed() {
        Part part = new Part("bed", "the stop and the seat of the struts");
        double height = part.length("clamp-height", "how far clamps stand out above a strut", Length.Zero.ALLOWED);
        double clear = part.length("stop-clear", "from the drill's side to the stop", Length.Zero.ALLOWED);
        double under = part.length("under", "room below a strut for the drill", Length.Zero.ALLOWED);
        return new Bed(height, clear, under);
    }

    private Machine.Rotary rotary() {
        Part part = new Part("rotary", "the rotary axis and its chuck");
        boolean positive = part.word("sign", "which way A turns", List.of("rs274", "reversed"))
                .equals("rs274");
        boolean chuck = part.word("top", "where TOP of the collars faces", List.of("chuck", "free-end"))
                .equals("chuck");
        double rapid = part.number("rapid-deg-per-min", "rapid rate of A, degrees a minute", 1, 1e6);
        double acceleration = part.number("acceleration-deg-per-s2", "acceleration of A, degrees/s²", 1, 1e6);
        double takeUp = part.number("take-up-deg", "how far below its angle A comes from, degrees", 0, 89);
        double held = part.length("chuck-length", "pipe held inside the chuck", Length.Zero.ALLOWED);
        double clear = part.length("jaw-clear", "from the jaws to the first collar", Length.Zero.ALLOWED);
        double height = part.length("jaw-height", "how far the jaws stand out beyond the pipe", Length.Zero.ALLOWED);
        double kerf = part.length("parting-kerf", "width of the cut between collars", Length.Zero.ALLOWED);
        double trim = part.length("end-trim", "lost at the free end", Length.Zero.ALLOWED);
        double stick = part.length("longest-stick", "the longest pipe it can take", Length.Zero.REFUSED);
        part.ascending("chuck-length", held, "longest-stick", stick);
        return new Machine.Rotary(positive, chuck, rapid, acceleration, takeUp, held, clear, height, kerf, trim, stick);
    }

    /** One table inside a machine. Every value that cannot be read marks the machine as faulty and counts as 1 meanwhile. */
    private final class Part {
        private final Optional<TableView> part;

        Part(String name, String expected) {
            part = table.needTable(name, expected);
            faulty |= part.isEmpty();
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

        double number(String key, String expected, double least, double most) {
            return good(
                    need(key, expected, Decimals.trimmed(StrictMath.min(100, most), 0))
                            .flatMap(k -> k.number(least, most)),
                    least);
        }

        double whole(String key, String expected, int least, int most) {
            return good(need(key, expected, least + "").flatMap(k -> k.wholeNumber(least, most)), least);
        }

        double length(String key, String expected, Length.Zero zero) {
            return good(
                    need(key, expected, "\"5 mm\"").flatMap(k -> k.length(zero)).map(Length::mm), 1.0);
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
                }
                words.add(word);
            }
            return Optional.of(words);
        }

        double[] span(String key) {
            Optional<KeyView> list = need(key, "from the least to the largest position", "[\"0 mm\", \"500 mm\"]");
            List<KeyView> ends = list.map(KeyView::items).orElse(List.of());
            if (ends.size() != 2) {
                faulty = true;
                list.filter(KeyView::present)
                        .ifPresent(k -> k.stop(
                                Code.JOB_WRONG_TYPE,
                                "two positions",
                                ends.size() + "",
                                "write [\"least\", \"largest\"]"));
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

        void ascending(String lower, double least, String upper, double most) {
            if (least > most && !faulty) {
                faulty = true;
                part.ifPresent(p -> p.key(lower)
                        .stop(Code.JOB_CONFLICT, "at most " + upper, least + " against " + most, "check both keys"));
            }
        }
    }
}
