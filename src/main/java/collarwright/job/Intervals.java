package collarwright.job;

import collarwright.finding.Code;
import collarwright.geometry.Interval;
import collarwright.units.Length;
import java.util.List;
import java.util.Optional;

/** Reads sizes that are given by their two limits. */
final class Intervals {

    private Intervals() {}

    /**
     * Reads a list of two lengths, the least and the most.
     *
     * @param key holds a list
     * @return the interval with its middle as the nominal value, or empty after findings
     */
    static Optional<Interval> between(KeyView key) {
        List<KeyView> ends = key.items();
        if (ends.size() != 2) {
            key.stop(
                    Code.JOB_WRONG_TYPE,
                    "one length, or two: the least and the most",
                    "a list of " + ends.size(),
                    "write [\"least\", \"most\"]");
            return Optional.empty();
        }
        Optional<Length> least = ends.get(0).length(Length.Zero.REFUSED);
        Optional<Length> most = ends.get(1).length(Length.Zero.REFUSED);
        if (least.isEmpty() || most.isEmpty()) {
            return Optional.empty();
        }
        if (least.get().millimetres().compareTo(most.get().millimetres()) > 0) {
            key.stop(
                    Code.JOB_CONFLICT,
                    "the least first, then the most",
                    least.get().text() + ", then " + most.get().text(),
                    "change the two round");
            return Optional.empty();
        }
        return Optional.of(Interval.between(least.get().mm(), most.get().mm()));
    }
}
