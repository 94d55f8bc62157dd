package collarwright.plan;

import collarwright.cutting.CutPiece;
import collarwright.cutting.CutPlan;
import collarwright.cutting.CuttingTask;
import collarwright.cutting.StockLength;
import collarwright.finding.Code;
import collarwright.finding.Finding;
import collarwright.finding.Where;
import collarwright.stock.RoundStock;
import collarwright.units.Decimals;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** What is wrong or doubtful about cutting one kind of part. */
final class StockFindings {

    private final StockNeed.Role role;
    private final RoundStock stock;
    private final CuttingTask task;

    StockFindings(StockNeed.Role role, RoundStock stock, CuttingTask task) {
        this.role = role;
        this.stock = stock;
        this.task = task;
    }

    private Where where() {
        return new Where.Part(
                switch (role) {
                    case STRUT -> "struts";
                    case COLLAR -> "collars";
                    case RING -> "centre rings";
                });
    }

    /** Looks for a cut that is wider than a piece is long; true after a finding. */
    boolean kerf(List<Finding> findings) {
        CutPiece shortest = task.pieces().stream()
                .min(Comparator.comparingDouble(CutPiece::length))
                .orElseThrow();
        if (shortest.length() > task.saw().kerf()) {
            return false;
        }
        findings.add(Finding.stop(
                Code.SAW_KERF,
                where(),
                "pieces longer than a cut is wide, " + mm(task.saw().kerf()),
                shortest.id() + ", " + mm(shortest.length()),
                "check kerf in [saw] and its unit",
                "check the length of the piece"));
        return true;
    }

    /** Says what could not be cut, or what was not proven. */
    void of(CutPlan plan, List<Finding> findings) {
        double longest = task.longestPiece();
        beyond(longest, findings);
        List<String> left = new ArrayList<>();
        for (int i = 0; i < plan.uncut().size(); i++) {
            CutPiece piece = task.pieces().get(i);
            if (plan.uncut().get(i) > 0 && piece.length() <= longest) {
                left.add(plan.uncut().get(i) + " × " + piece.id() + " (" + mm(piece.length()) + ")");
            }
        }
        if (!left.isEmpty()) {
            findings.add(Finding.stop(
                    Code.STOCK_USED_UP,
                    where(),
                    "enough of " + stock.inventoryName() + " for all pieces",
                    "nothing left for " + listed(left) + ", after " + listed(atHand()),
                    "raise at-hand, or take it out where more can be bought",
                    "or add another length, or offcuts"));
        } else if (!plan.proof().proven()) {
            findings.add(Finding.note(
                    Code.STOCK_PLAN_GAP,
                    where(),
                    "a cutting plan that is proven to be the best",
                    plan.proof().gap() > 0
                            ? "one that costs at most "
                                    + Decimals.fixed(100 * plan.proof().gap(), 2) + " % more than the best"
                            : plan.proof().sticks() + " sticks, where at least "
                                    + plan.proof().sticksBound() + " are needed at that cost",
                    "the plan can be cut as it is; fewer different lengths (merge) make a proof easier"));
        }
    }

    // Struts are warned of by themselves: see StockLengths.
    private void beyond(double longest, List<Finding> findings) {
        List<CutPiece> beyond = task.pieces().stream()
                .filter(p -> p.length() > longest)
                .sorted(Comparator.comparingDouble(CutPiece::length).reversed())
                .toList();
        if (role != StockNeed.Role.STRUT && !beyond.isEmpty()) {
            findings.add(Finding.stop(
                    Code.PIECE_BEYOND_STOCK,
                    where(),
                    "pieces no longer than the longest stick of " + stock.inventoryName() + " gives, "
                            + mm(StrictMath.max(0, longest)) + " without trim and grip",
                    mm(beyond.get(0).length()),
                    "give the lengths that the stock is sold in",
                    "or correct trim and grip in [saw]"));
        }
    }

    private List<String> atHand() {
        return task.stocks().stream()
                .filter(s -> s.atHand().isPresent())
                .map(StockFindings::counted)
                .toList();
    }

    private static String counted(StockLength stock) {
        return stock.offcut() ? "offcut " + stock.id() : stock.atHand().orElse(0) + " × " + stock.id();
    }

    private static String listed(List<String> names) {
        int shown = StrictMath.min(4, names.size());
        String list = String.join(", ", names.subList(0, shown));
        return names.size() > shown ? list + " and " + (names.size() - shown) + " more" : list;
    }

    private static String mm(double length) {
        return Decimals.trimmed(length, 3) + " mm";
    }
}
