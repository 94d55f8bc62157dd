package collarwright.cli;

import collarwright.finding.Code;
import collarwright.finding.Finding;
import collarwright.finding.JobException;
import collarwright.finding.Level;
import collarwright.finding.Where;
import collarwright.units.Angles;
import collarwright.units.Decimals;
import collarwright.units.Length;
import collarwright.units.LengthUnit;
import collarwright.units.Reading;
import collarwright.units.Refusal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads the values of options, and keeps what is wrong with them. */
final class TiltValues {

    private final LengthUnit bare;
    private final List<Finding> findings = new ArrayList<>();

    /**
     * Starts with no findings but that of the unit.
     *
     * @param units what bare numbers are in
     */
    TiltValues(String units) {
        Optional<LengthUnit> unit = LengthUnit.parse(units);
        bare = unit.orElse(LengthUnit.MM);
        if (unit.isEmpty()) {
            wrong("--units", "mm, cm, m, in or ft", units, "write --units mm or in");
        }
    }

    double length(String option, String text) {
        return value(option, Length.parse(text, bare, Length.Zero.REFUSED))
                .map(Length::mm)
                .orElse(1.0);
    }

    double angle(String option, String text, double leastDegrees, double mostDegrees) {
        Optional<Double> angle = value(option, Angles.parseDegrees(text));
        if (angle.isPresent() && !(angle.get() >= leastDegrees && angle.get() <= mostDegrees)) {
            wrong(
                    option,
                    "an angle in degrees from " + Decimals.trimmed(leastDegrees, 1) + " to "
                            + Decimals.trimmed(mostDegrees, 1) + ", such as 11.64",
                    text,
                    "check the angle");
            return 0;
        }
        return Angles.radians(angle.orElse(0.0));
    }

    private <T> Optional<T> value(String option, Reading<T> reading) {
        if (reading.refusal().isEmpty()) {
            return reading.found();
        }
        Refusal why = reading.refusal().get();
        findings.add(new Finding(
                Level.STOP, Code.COMMAND_LINE, new Where.Part(option), why.expected(), why.found(), why.hints()));
        return Optional.empty();
    }

    void wrong(String option, String expected, String found, String hint) {
        findings.add(Finding.stop(Code.COMMAND_LINE, new Where.Part(option), expected, found, hint));
    }

    void wrongSize(String option, String expected, String found) {
        wrong(option, expected, found, "check the sizes and their units");
    }

    void stopIfAny() {
        if (!findings.isEmpty()) {
            throw new JobException(findings);
        }
    }
}
