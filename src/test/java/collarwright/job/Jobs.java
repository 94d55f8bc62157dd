package collarwright.job;

import java.util.List;

/** A good job to start tests from. */
final class Jobs {

    static final String GOOD = """
            title = "Pea frame"
            units = "mm"

            [dome]
            frequency = 3
            keep = "5/9"
            radius = "1.40 m"

            [strut]
            stock = "pvc-metric-20x1.5"
            measured-od = ["20.0 mm", "20.2 mm"]
            tie-hole = { diameter = "4 mm", from-end = "9 mm" }

            [hub]
            collar = "pvc-metric-110x8.2"
            measured-od = "110.2 mm"
            measured-wall = ["8.65 mm", "8.85 mm"]
            width = "48 mm"
            ring = "pvc-metric-40x3.0"
            ring-width = "30 mm"

            [drilling]
            rack = ["metric-twist"]

            [shop]
            machine = "press"
            """;

    static final Profiles PROFILES = Profiles.load(List.of(new BundledProfiles()));

    private Jobs() {}

    /** The good job with pieces of its text replaced: old, new, old, new … */
    static String with(String... pieces) {
        String text = GOOD;
        for (int i = 0; i < pieces.length; i += 2) {
            if (!text.contains(pieces[i])) {
                throw new IllegalArgumentException("not in the job: " + pieces[i]);
            }
            text = text.replace(pieces[i], pieces[i + 1]);
        }
        return text;
    }

    static JobReading read(String text) {
        return JobReader.read("job.toml", text, PROFILES);
    }

    static Job job(String... pieces) {
        JobReading reading = read(with(pieces));
        return reading.job().orElseThrow(() -> new AssertionError(reading.findings()));
    }
}
