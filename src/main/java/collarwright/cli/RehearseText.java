package collarwright.cli;

import collarwright.finding.Finding;
import collarwright.finding.Level;
import collarwright.rehearsal.Comparison;
import collarwright.rehearsal.Replay;
import java.util.List;

/** Says in one line what came of a rehearsed program. */
final class RehearseText {

    private RehearseText() {}

    static String line(String name, PackProgram planned, Comparison comparison) {
        String what = comparison.findings().stream().anyMatch(f -> f.level() == Level.STOP)
                ? "must not be run, " + FindingPrinter.summary(comparison.findings())
                : made(planned, comparison) + ", running time "
                        + time(comparison.replay().seconds()) + ", " + rest(planned, comparison);
        return name + ": " + what + "\n";
    }

    private static String made(PackProgram planned, Comparison comparison) {
        List<Replay.Made> made = comparison.replay().holes();
        int dimples = (int) made.stream().filter(Replay.Made::dimple).count();
        String holes = count(made.size() - dimples, "hole") + " and " + count(dimples, "dimple");
        return switch (planned.purpose()) {
            case CUT -> holes + " as planned";
            case AIR_CUT -> holes + " in the air as planned";
            case DIRECTION_TEST -> "turns as planned, cuts nothing";
        };
    }

    private static String rest(PackProgram planned, Comparison comparison) {
        boolean same = comparison.findings().stream().noneMatch(f -> f.level() == Level.WARN);
        return same
                ? "same as the program " + planned.name() + " of the pack"
                : FindingPrinter.summary(comparison.findings().stream()
                                .filter(RehearseText::warns)
                                .toList()) + " against " + planned.name() + " of the pack";
    }

    private static boolean warns(Finding finding) {
        return finding.level() == Level.WARN;
    }

    private static String count(int count, String thing) {
        return count + " " + thing + (count == 1 ? "" : "s");
    }

    /** Whole seconds, rounded up. */
    static String time(double seconds) {
        long whole = (long) StrictMath.ceil(seconds - 1e-9);
        String minutes = whole % 3600 / 60 + " min " + whole % 60 + " s";
        return whole < 60 ? whole + " s" : whole < 3600 ? minutes : whole / 3600 + " h " + minutes;
    }
}
