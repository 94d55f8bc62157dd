package collarwright.job;

import collarwright.finding.Code;
import collarwright.geometry.Interval;
import collarwright.stock.RoundStock;
import collarwright.strut.SizeBins;
import collarwright.units.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads how a job sorts its struts by size: {@code bins} and {@code bin} in {@code [strut]}. */
final class BinReader {

    private final KeyView bins;
    private final KeyView bin;

    BinReader(TableView strut) {
        bins = strut.key("bins");
        bin = strut.key("bin");
    }

    /**
     * Reads the bins.
     *
     * @param stock the struts with their measured diameter
     * @return the bins, none if the job does not sort; empty after findings
     */
    Optional<Optional<SizeBins>> read(Optional<RoundStock> stock) {
        Optional<Integer> chosen = bin.wholeNumber(1, SizeBins.MOST);
        if (!bins.present()) {
            if (bin.present()) {
                bin.stop(Code.JOB_CONFLICT, "bins beside bin", "bin alone", "write bins = 3 too, or take bin out");
                return Optional.empty();
            }
            return Optional.of(Optional.empty());
        }
        Optional<List<Double>> limits = limits(stock);
        if (limits.isEmpty() || (bin.present() && chosen.isEmpty())) {
            return Optional.empty();
        }
        int count = limits.get().size() - 1;
        if (chosen.isPresent() && chosen.get() > count) {
            bin.stop(
                    Code.JOB_OUT_OF_RANGE,
                    "one of the " + count + " bins, 1 to " + count,
                    chosen.get() + "",
                    "bin 1 holds the thinnest struts");
            return Optional.empty();
        }
        return Optional.of(Optional.of(new SizeBins(limits.get(), chosen)));
    }

    private Optional<List<Double>> limits(Optional<RoundStock> stock) {
        List<KeyView> items = bins.items();
        boolean listed = items.size() != 1 || items.get(0) != bins;
        return listed
                ? given(items).filter(l -> stock.map(s -> holds(l, s)).orElse(true))
                : equal(bins.wholeNumber(2, SizeBins.MOST), stock);
    }

    private Optional<List<Double>> equal(Optional<Integer> count, Optional<RoundStock> stock) {
        if (count.isEmpty() || stock.isEmpty()) {
            return Optional.empty();
        }
        Interval od = stock.get().od();
        if (!stock.get().odMeasured() || !(od.max() > od.min())) {
            bins.stop(
                    Code.JOB_CONFLICT,
                    "a measured least and largest outside diameter to divide",
                    stock.get().odMeasured() ? "one diameter, " + StockReader.mm(od.nominal()) : "no measured-od",
                    "write measured-od = [\"least\", \"largest\"]",
                    "or give the limits: bins = [\"38 mm\", \"41 mm\", \"44 mm\"]");
            return Optional.empty();
        }
        return Optional.of(SizeBins.equal(od, count.get(), Optional.empty()).limits());
    }

    // Every strut belongs into a bin, and the thinnest must still have its bore.
    private boolean holds(List<Double> limits, RoundStock stock) {
        double least = limits.get(0);
        double most = limits.get(limits.size() - 1);
        Interval od = stock.odMeasured() ? stock.od() : Interval.of(stock.od().nominal());
        if (!(least <= od.min() && od.max() <= most)) {
            bins.stop(
                    Code.JOB_CONFLICT,
                    "limits that hold every strut, " + StockReader.mm(od.min()) + " to " + StockReader.mm(od.max()),
                    StockReader.mm(least) + " to " + StockReader.mm(most),
                    "begin with the least diameter there is and end with the largest");
            return false;
        }
        return StockReader.thinEnough(bins, stock.wall(), Interval.of(least));
    }

    private Optional<List<Double>> given(List<KeyView> items) {
        List<Length> limits = new ArrayList<>();
        items.forEach(item -> item.length(Length.Zero.REFUSED).ifPresent(limits::add));
        if (limits.size() < items.size()) {
            return Optional.empty();
        }
        if (limits.size() < 3 || limits.size() > SizeBins.MOST + 1) {
            bins.stop(
                    Code.JOB_OUT_OF_RANGE,
                    "3 to " + (SizeBins.MOST + 1) + " limits, for 2 to " + SizeBins.MOST + " bins",
                    limits.size() + "",
                    "write the least diameter, the limits between, and the largest");
            return Optional.empty();
        }
        for (int i = 1; i < limits.size(); i++) {
            if (limits.get(i - 1).millimetres().compareTo(limits.get(i).millimetres()) >= 0) {
                items.get(i)
                        .stop(
                                Code.JOB_CONFLICT,
                                "a limit above the one before it, "
                                        + limits.get(i - 1).text(),
                                limits.get(i).text(),
                                "write the limits from the least to the largest");
                return Optional.empty();
            }
        }
        return Optional.of(limits.stream().map(Length::mm).toList());
    }

    /** The struts that a job drills for: all of them, or those of its bin. */
    static RoundStock sorted(RoundStock stock, Optional<SizeBins> bins) {
        Optional<Interval> od = bins.map(b -> b.chosen().map(b::bin).orElseGet(b::whole));
        return od.map(size -> new RoundStock(
                        stock.name(),
                        stock.title(),
                        stock.material(),
                        size,
                        stock.wall(),
                        true,
                        stock.wallMeasured(),
                        stock.outOfRound(),
                        stock.lengths(),
                        stock.source()))
                .orElse(stock);
    }
}
