package collarwright.plan;

import collarwright.dome.FrameSettings;
import collarwright.finding.Code;
import collarwright.finding.Finding;
import collarwright.finding.Where;
import collarwright.job.Job;
import collarwright.strut.StrutLayout;
import collarwright.strut.StrutType;
import collarwright.units.Decimals;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Compares struts with the lengths that their stock is sold in. */
final class StockLengths {

    private StockLengths() {}

    /**
     * Looks for struts that no stick gives.
     *
     * @param job the job
     * @param struts its struts
     * @return a stop; empty where all fit, or where the stock's lengths are not known
     */
    static Optional<Finding> of(Job job, StrutLayout struts) {
        double stick = StockWork.stocks(job, StockNeed.Role.STRUT).stream()
                .mapToDouble(s -> StockWork.saw(job).longestPiece(s.length()))
                .max()
                .orElse(Double.POSITIVE_INFINITY);
        List<StrutType> longer =
                struts.types().stream().filter(type -> type.cut() > stick).toList();
        return longer.stream()
                .max(Comparator.comparingDouble(StrutType::cut))
                .map(worst -> Finding.stop(
                        Code.STRUT_BEYOND_STOCK,
                        new Where.Part("strut " + worst.id()
                                + (longer.size() > 1 ? " and " + (longer.size() - 1) + " more" : "")),
                        "struts no longer than the longest stick of their stock gives, " + Decimals.trimmed(stick, 1)
                                + " mm",
                        Decimals.fixed(worst.cut(), 1) + " mm",
                        job.dome() instanceof FrameSettings
                                ? "check the unit that the file was read in: frame-unit"
                                : "make the dome smaller or its frequency higher",
                        "or take stock that is sold longer; joints within a strut are not planned here",
                        "or write the lengths that you really get it in: lengths = [\"6 m\"] under [strut]"));
    }
}
