package collarwright.job;

import collarwright.dome.Form;
import collarwright.dome.FrameSettings;
import collarwright.dome.Opening;
import collarwright.finding.Code;
import collarwright.frame.FrameNet;
import collarwright.frame.FrameOptions;
import collarwright.frame.FrameReader;
import collarwright.frame.FrameReading;
import collarwright.geometry.Vec3;
import collarwright.units.Length;
import collarwright.units.LengthUnit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** Reads from {@code [dome]} a frame from outside. */
final class FrameTableReader {

    /** Keys that belong to a frame only. */
    static final List<String> KEYS = List.of("frame-unit", "merge", "alike", "feet-within", "axes");

    private static final List<String> OTHERS = List.of(
            "base",
            "frequency",
            "breakdown",
            "subdivision",
            "keep",
            "tiers",
            "cut-height",
            "height-factor",
            "foot",
            "foot-plane",
            "riser-height",
            "riser-diagonals",
            "count-tiers-from");

    private final TableView table;
    private final FrameFiles files;
    private boolean faulty;

    FrameTableReader(TableView table, FrameFiles files) {
        this.table = table;
        this.files = files;
    }

    /**
     * Reads the frame and its file.
     *
     * @return the frame, or empty after findings
     */
    Optional<FrameSettings> read() {
        OTHERS.forEach(this::refuse);
        Map<String, LengthUnit> units = new LinkedHashMap<>();
        Stream.of(LengthUnit.values()).forEach(unit -> units.put(unit.symbol(), unit));
        Optional<LengthUnit> unit = word("frame-unit", units);
        Map<String, Boolean> ups = new LinkedHashMap<>();
        ups.put("z", false);
        ups.put("y", true);
        boolean upY = word("up", ups).orElse(false);
        double merge = length("merge", FrameOptions.USUAL_MERGE);
        double alike = length("alike", FrameSettings.USUAL_ALIKE);
        double feetWithin = length("feet-within", FrameSettings.USUAL_FEET_WITHIN);
        Map<String, Form.Axis> kinds = new LinkedHashMap<>();
        kinds.put("fitted", Form.Axis.FITTED);
        kinds.put("even-tilts", Form.Axis.EVEN_TILTS);
        Form.Axis axis = word("axis", kinds).orElse(Form.Axis.FITTED);
        Optional<List<Opening>> openings = OpeningReader.all(table.key("opening"));
        KeyView axesKey = table.key("axes");
        Optional<FrameReading> reading = file(new FrameOptions(unit, merge, upY));
        Optional<FrameNet> net = reading.flatMap(FrameReading::frame);
        Optional<TableView> given = axesKey.present() ? axesKey.table() : Optional.empty();
        if (net.isEmpty()) {
            // Without the frame nothing can be said of its hubs' names.
            given.ifPresent(t -> t.names().forEach(t::key));
            return Optional.empty();
        }
        List<FrameSettings.NodeAxis> axes = given.map(t -> axes(t, net.get())).orElse(List.of());
        faulty |= (axesKey.present() && given.isEmpty()) || openings.isEmpty();
        return faulty
                ? Optional.empty()
                : Optional.of(new FrameSettings(
                        net.get(), reading.get().unit(), merge, alike, feetWithin, axis, axes, openings.orElseThrow()));
    }

    private void refuse(String name) {
        KeyView key = table.key(name);
        if (key.present()) {
            key.stop(Code.JOB_CONFLICT, "a frame, or a dome that is computed", name + " beside frame", "take it out");
            faulty = true;
        }
    }

    private <T> Optional<T> word(String name, Map<String, T> words) {
        KeyView key = table.key(name);
        Optional<T> word = key.word(words);
        faulty |= key.present() && word.isEmpty();
        return word;
    }

    private double length(String name, double usual) {
        KeyView key = table.key(name);
        Optional<Length> length = key.length(Length.Zero.ALLOWED);
        faulty |= key.present() && length.isEmpty();
        return length.map(Length::mm).orElse(usual);
    }

    private Optional<FrameReading> file(FrameOptions options) {
        KeyView key = table.key("frame");
        Optional<String> name = key.text().map(String::strip);
        if (name.isEmpty()) {
            return Optional.empty();
        }
        FrameFiles.Opened opened = files.open(name.get());
        opened.findings().forEach(table::add);
        if (opened.bytes().isEmpty()) {
            if (opened.findings().isEmpty()) {
                key.stop(
                        Code.FRAME_FILE,
                        "a file beside the job",
                        name.get() + ", which is not there",
                        "check the name; it is taken from the job's own folder");
            }
            return Optional.empty();
        }
        if (faulty) {
            return Optional.empty();
        }
        FrameReading reading = FrameReader.read(name.get(), opened.bytes().get(), options);
        reading.findings().forEach(table::add);
        return Optional.of(reading);
    }

    private List<FrameSettings.NodeAxis> axes(TableView given, FrameNet net) {
        List<FrameSettings.NodeAxis> axes = new ArrayList<>();
        int digits = StrictMath.max(3, Integer.toString(net.nodeCount()).length());
        for (String id : given.names()) {
            KeyView key = given.key(id);
            int node = id.matches("N\\d{" + digits + "}") ? Integer.parseInt(id.substring(1)) - 1 : -1;
            if (node < 0 || node >= net.nodeCount()) {
                key.stop(
                        Code.JOB_UNKNOWN_WORD,
                        "the id of a hub, N" + "0".repeat(digits - 1) + "1 to N"
                                + "0"
                                        .repeat(digits
                                                - Integer.toString(net.nodeCount())
                                                        .length()) + net.nodeCount(),
                        id,
                        "hubs are numbered in the order of the frame's file");
                faulty = true;
                continue;
            }
            axis(key).ifPresent(axis -> axes.add(new FrameSettings.NodeAxis(node, axis)));
        }
        return axes;
    }

    private Optional<Vec3> axis(KeyView key) {
        List<Double> at = key.items().stream()
                .flatMap(item -> item.number(-1e9, 1e9).stream())
                .toList();
        Vec3 axis = at.size() == 3 ? new Vec3(at.get(0), at.get(1), at.get(2)) : new Vec3(0, 0, 0);
        if (!(axis.norm() > 1e-9)) {
            key.stop(
                    Code.JOB_WRONG_TYPE,
                    "a direction of three numbers, outward, such as [0, 0, 1]",
                    at.size() == 3 ? key.shown() + ", which has no length" : key.shown(),
                    "write the direction that the collar's TOP faces");
            faulty = true;
            return Optional.empty();
        }
        return Optional.of(axis.unit());
    }
}
