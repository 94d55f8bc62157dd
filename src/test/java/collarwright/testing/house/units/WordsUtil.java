package collarwright.testing.house.units;

import collarwright.testing.house.dome.Clocks;
import java.util.ArrayList;
import java.util.List;

/** Imports downstream, keeps state, prints, follows the machine's language, has an empty name and no package-info. */
public final class WordsUtil {
    static final List<String> KEPT = new ArrayList<>();

    private WordsUtil() {}

    /** Breaks what the class says. */
    public static String word(double value) {
        System.out.print(Clocks.now());
        return String.format("%.3f", value);
    }
}
