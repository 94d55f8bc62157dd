package collarwright.sheet;

import collarwright.finding.Code;
import collarwright.finding.Finding;
import collarwright.finding.JobException;
import collarwright.finding.Where;
import collarwright.units.Decimals;
import collarwright.units.Quoted;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Gathers what is wrong with a cut file. A builder's tool: it grows as faults are found. */
final class FileFaults {
    /** How many faults of one file are told one by one: our choice. */
    static final int MOST = 100;

    private static final String AGAIN = "make the pack again and use its file as it is";
    private static final String REPORT = "if the fresh file has it too, report it with the job file";

    private final String name;
    private final List<Finding> findings = new ArrayList<>();
    private int count;

    FileFaults(String name) {
        this.name = name;
    }

    /** A fault of the drawing. */
    void add(int line, String expected, String found) {
        count++;
        if (count <= MOST) {
            findings.add(fault(line, expected, found));
        }
    }

    private Finding fault(int line, String expected, String found) {
        return Finding.stop(Code.SHEET_FAULT, new Where.Text(name, line, 1), expected, found, AGAIN, REPORT);
    }

    /** Ends the reading of a file that is no cut file of ours; nothing else of it is worth telling. */
    JobException unreadable(int line, String expected, String found, String... cures) {
        return new JobException(
                List.of(Finding.stop(Code.DRAWING_FILE, new Where.Text(name, line, 1), expected, found, cures)));
    }

    /** How many faults there are, told or not. */
    int count() {
        return count;
    }

    /** The first {@link #MOST} faults, and one that says how many more there are. */
    List<Finding> findings() {
        List<Finding> told = new ArrayList<>(findings);
        if (count > MOST) {
            told.add(fault(1, "a sound file; the first " + MOST + " faults are told", (count - MOST) + " faults more"));
        }
        return List.copyOf(told);
    }

    /** Reads a plain number: digits, a point, digits; nothing that only some readers take. */
    Optional<Double> number(String text, int line, String what) {
        String digits = text.strip();
        if (digits.length() <= 30 && plain(digits)) {
            double value = Double.parseDouble(digits);
            if (StrictMath.abs(value) <= DrawnPiece.FARTHEST) {
                return Optional.of(value);
            }
        }
        add(line, what + " as plain digits, at most " + Decimals.trimmed(DrawnPiece.FARTHEST, 0), shown(digits));
        return Optional.empty();
    }

    // A sign, digits, and a point with digits after it; read by hand, since there are thousands of numbers in a file.
    private static boolean plain(String text) {
        int at = !text.isEmpty() && (text.charAt(0) == '+' || text.charAt(0) == '-') ? 1 : 0;
        int whole = digits(text, at);
        if (whole == at) {
            return false;
        }
        return whole == text.length()
                || (text.charAt(whole) == '.' && whole + 1 < text.length() && digits(text, whole + 1) == text.length());
    }

    /** Where the digits end that start at a place. */
    static int digits(String text, int from) {
        int at = from;
        while (at < text.length() && text.charAt(at) >= '0' && text.charAt(at) <= '9') {
            at++;
        }
        return at;
    }

    static String shown(String text) {
        return Quoted.text(text.length() > 60 ? text.substring(0, 60) + "…" : text);
    }
}
