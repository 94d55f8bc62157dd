package collarwright.paper;

import collarwright.machining.SetupSheet;
import collarwright.picture.TrialPlans;
import collarwright.plan.Plan;
import java.util.List;

/** Papers of invented jobs. */
final class TrialPapers {

    private TrialPapers() {}

    static Paperwork of(Plan plan) {
        return new Paperwork(plan, List.of(), files());
    }

    static Paperwork windbreak() {
        return of(TrialPlans.windbreak());
    }

    static Paperwork withSetups(Plan plan) {
        List<SetupSheet> setups = TrialSetups.of(plan);
        return new Paperwork(plan, setups, files());
    }

    private static List<PackFile> files() {
        return List.of(
                new PackFile("index.html", "this page", 0),
                new PackFile("plan.json", "everything computed, for other programs", 148_204),
                new PackFile("traveller.pdf", "route sheets to print, A4", 402_117),
                new PackFile("templates/CA-wrap-a4.pdf", "wrap template of pattern CA, 1:1, A4", 22_480),
                new PackFile("templates/CA-wrap.svg", "the same as a drawing", 9_210),
                new PackFile("struts/cut-list.csv", "cut list for a spreadsheet", 812),
                new PackFile("files.sha256", "check sums of all files", 1_130));
    }
}
