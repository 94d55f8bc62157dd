package collarwright.rehearsal;

import collarwright.units.Decimals;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Where a program says on what to set Z, in its head or at a change of the cutter, it says the planned height. */
final class ZeroRules {

    static final Pattern SET = Pattern.compile("tip on [a-z ]+ is Z (-?\\d+\\.\\d+) (mm|in)\\b");

    private ZeroRules() {}

    /**
     * Reads all comments in front of words.
     *
     * @param blocks the program
     * @param height Z of what the tip is set on
     */
    static List<Fault> check(List<Block> blocks, double height) {
        List<Fault> faults = new ArrayList<>();
        for (Block block : blocks) {
            for (String comment : block.comments()) {
                Matcher said = SET.matcher(comment);
                while (said.find()) {
                    held(said, height, block.line(), faults);
                }
            }
        }
        return faults;
    }

    /** To half the last digit. */
    private static void held(Matcher said, double height, int line, List<Fault> faults) {
        String number = said.group(1);
        double unit = said.group(2).equals("in") ? 25.4 : 1;
        int decimals = number.length() - number.indexOf('.') - 1;
        double slack = 0.5 * StrictMath.pow(10, -decimals) * unit + 1e-9;
        if (!(decimals >= 2 && StrictMath.abs(Double.parseDouble(number) * unit - height) <= slack)) {
            String planned = "Z " + Decimals.fixed(height / unit, unit > 1 ? 3 : 2) + " " + said.group(2);
            faults.add(new Fault(line, "Z set to " + planned + " in the comment before this line", said.group()));
        }
    }
}
