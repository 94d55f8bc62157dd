package collarwright.job;

import collarwright.dome.Cut;
import collarwright.dome.DomeSettings;
import collarwright.dome.DomeSource;
import collarwright.dome.Foot;
import collarwright.dome.Form;
import collarwright.dome.Opening;
import collarwright.dome.SphereSettings;
import collarwright.finding.Code;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads the job's table {@code [dome]}: which dome. */
final class DomeReader {

    private final TableView table;
    private final FrameFiles files;

    /**
     * Reads a table.
     *
     * @param table {@code [dome]}
     * @param files opens a frame's file
     */
    DomeReader(TableView table, FrameFiles files) {
        this.table = table;
        this.files = files;
    }

    /**
     * Reads which dome.
     *
     * @return the dome, or empty after findings
     */
    Optional<DomeSource> source() {
        if (table.key("frame").present()) {
            return new FrameTableReader(table, files).read().map(frame -> frame);
        }
        FrameTableReader.KEYS.forEach(key -> refuse(key, "frame"));
        Optional<SphereSettings> sphere = new SphereReader(table).read();
        Optional<Cut> cut = new CutReader(table).read(sphere);
        Optional<Form> form = form();
        Optional<Foot> foot = new FootReader(table).read();
        Map<String, Boolean> counts = new LinkedHashMap<>();
        counts.put("apex", false);
        counts.put("foot", true);
        KeyView from = table.key("count-tiers-from");
        Optional<Boolean> tiersFromFoot = from.word(counts);
        Optional<List<Opening>> openings = OpeningReader.all(table.key("opening"));
        boolean complete = sphere.isPresent()
                && cut.isPresent()
                && form.isPresent()
                && foot.isPresent()
                && openings.isPresent()
                && (tiersFromFoot.isPresent() || !from.present());
        if (!complete) {
            return Optional.empty();
        }
        DomeSettings settings = new DomeSettings(
                sphere.orElseThrow(),
                cut.orElseThrow(),
                form.orElseThrow(),
                foot.orElseThrow(),
                tiersFromFoot.orElse(false),
                openings.orElseThrow());
        if (settings.whole() && !(settings.foot() instanceof Foot.Natural)) {
            table.key("foot")
                    .stop(
                            Code.JOB_CONFLICT,
                            "a foot that a whole sphere has: natural",
                            table.key("foot").shown() + ", but the whole sphere is kept and has no foot",
                            "keep less of the sphere, or take foot out");
            return Optional.empty();
        }
        return Optional.of(settings);
    }

    private void refuse(String name, String with) {
        KeyView key = table.key(name);
        if (key.present()) {
            key.stop(
                    Code.JOB_CONFLICT, "this key only with " + with, key.shown(), "write " + with + ", or take it out");
        }
    }

    private Optional<Form> form() {
        KeyView factorKey = table.key("height-factor");
        KeyView axisKey = table.key("axis");
        Map<String, Form.Axis> words = new LinkedHashMap<>();
        words.put("fitted", Form.Axis.FITTED);
        words.put("even-tilts", Form.Axis.EVEN_TILTS);
        Optional<Double> factor = factorKey.number(Form.LEAST_FACTOR, Form.MOST_FACTOR);
        Optional<Form.Axis> axis = axisKey.word(words);
        boolean wrong = (factorKey.present() && factor.isEmpty()) || (axisKey.present() && axis.isEmpty());
        return wrong ? Optional.empty() : Optional.of(new Form(factor.orElse(1.0), axis.orElse(Form.Axis.FITTED)));
    }
}
