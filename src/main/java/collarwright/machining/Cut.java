package collarwright.machining;

import java.util.List;

/**
 * How a cutter turns and feeds.
 *
 * @param rpm spindle speed, whole turns a minute; 0 for what does not turn
 * @param feedMmPerMin advance, mm/min, on the program's grid
 * @param peck deepest single peck to aim for
 * @param formulas how speed and feed come about, for the setup sheet
 * @param source where the cutting data come from
 */
public record Cut(int rpm, double feedMmPerMin, double peck, List<String> formulas, String source) {
    /** Checks the values. */
    public Cut {
        formulas = List.copyOf(formulas);
        if (!(rpm >= 0 && feedMmPerMin > 0 && peck > 0)) {
            throw new IllegalArgumentException("feed and peck are above 0, and no speed is below");
        }
    }
}
