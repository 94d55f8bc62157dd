package collarwright.plan;

import collarwright.collar.Fix;
import collarwright.cutting.CutPlan;
import collarwright.cutting.StockLength;
import collarwright.geometry.Interval;
import collarwright.job.Job;
import collarwright.job.PriceList;
import collarwright.stock.RoundStock;
import collarwright.strut.EndWork;
import collarwright.strut.StrutType;
import collarwright.units.Decimals;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What has to be bought for an order and what is made of it, with weights and, where somebody told them, prices. Weights
 * are those of sizes and nominal densities, holes not taken off: never a load rating.
 *
 * @param rows what is bought, then what is made
 * @param currency what prices are in, for people; may be empty
 * @param longestBought longest stick that has to be fetched; 0 where none is planned
 * @param longestMade longest part of a kit
 */
public record BillOfMaterials(List<Row> rows, String currency, double longestBought, double longestMade) {

    /** Keeps the rows. */
    public BillOfMaterials {
        rows = List.copyOf(rows);
    }

    /** What a row is. */
    public enum Kind {
        /** New sticks. */
        STICK(true),
        /** Stock by its length, where no plan says which sticks. */
        LENGTH(true),
        /** Strip by its length, for collars that are rolled. */
        STRIP(true),
        /** Stock sheets that strips, or plates and saddles, are nested on. */
        SHEET(true),
        /** Offcuts that are there. */
        OFFCUT(false),
        /** Ties or pins, one for each strut end. */
        FASTENER(true),
        /** Plugs, one in each end of every strut that is made. */
        PLUG(true),
        /** Caps, one on each end of every strut that is made. */
        CAP(true),
        /** Struts that are made. */
        STRUT(false),
        /** Collars that are made. */
        COLLAR(false),
        /** Centre rings that are made. */
        RING(false);

        private final boolean bought;

        Kind(boolean bought) {
            this.bought = bought;
        }

        /**
         * Tells whether it is bought.
         *
         * @return false for what is there or is made
         */
        public boolean bought() {
            return bought;
        }

        /**
         * Tells whether it is a part that is made.
         *
         * @return true for struts, collars and rings
         */
        public boolean part() {
            return this == STRUT || this == COLLAR || this == RING;
        }
    }

    /**
     * One thing.
     *
     * @param kind what it is
     * @param name name of the stock, of the part, or one of {@link PriceList#THINGS}: what a price file calls it
     * @param title the same for people
     * @param size length of one in mm, of all together for stock and strip by length; 0 for ties, pins and caps
     * @param count how many
     * @param kg weight of all of them; empty where it is not known
     * @param unit what the price is for, such as {@code piece}; empty where there is none
     * @param cost of all of them, worked out in decimals, to a hundredth, half up; empty where nobody told a price, or where it is not bought
     */
    public record Row(
            Kind kind,
            String name,
            String title,
            double size,
            int count,
            Optional<Double> kg,
            String unit,
            Optional<Double> cost) {}

    /**
     * Lists an order.
     *
     * @param plan the plan
     * @param work which part is cut from which stick
     * @return everything, spares included
     */
    public static BillOfMaterials of(Plan plan, StockWork work) {
        List<Row> rows = new ArrayList<>();
        PriceList prices = plan.job().cutting().prices();
        for (StockNeed need : work.needs()) {
            if (need.pieces() == 0 || !(need.length() > 0)) {
                continue;
            }
            need.plan().ifPresentOrElse(cut -> sticks(need, cut, prices, rows), () -> rows.add(byLength(need, prices)));
        }
        rows.addAll(SheetRows.of(plan));
        fastener(plan, prices).ifPresent(rows::add);
        ends(plan, prices, rows);
        double longestBought = rows.stream()
                .filter(r -> r.kind == Kind.STICK)
                .mapToDouble(Row::size)
                .max()
                .orElse(0);
        List<Row> made = made(plan);
        rows.addAll(made);
        double longestMade = made.stream().mapToDouble(Row::size).max().orElse(0);
        return new BillOfMaterials(rows, plan.job().shop().times().money().currency(), longestBought, longestMade);
    }

    private static void sticks(StockNeed need, CutPlan cut, PriceList prices, List<Row> rows) {
        RoundStock stock = need.stock();
        for (StockLength one : cut.task().stocks()) {
            int taken = cut.taken(one);
            if (taken == 0) {
                continue;
            }
            double kg = stock.kg(one.length());
            Optional<Double> price = one.offcut()
                    ? Optional.empty()
                    : one.price().or(() -> prices.stick(stock.name(), one.length(), kg));
            rows.add(new Row(
                    one.offcut() ? Kind.OFFCUT : Kind.STICK,
                    stock.name(),
                    stock.title() + (one.offcut() ? ", offcut " + one.id() : ""),
                    one.length(),
                    taken,
                    Optional.of(taken * kg),
                    price.isPresent() ? "stick" : "",
                    price.map(p -> hundredths(taken, p))));
        }
    }

    private static Row byLength(StockNeed need, PriceList prices) {
        double length = need.length();
        double kg = need.stock().kg(length);
        Optional<Double> cost = prices.byLength(need.stock().name(), length, kg).map(BillOfMaterials::hundredths);
        return new Row(
                Kind.LENGTH,
                need.stock().name(),
                need.stock().title(),
                length,
                1,
                Optional.of(kg),
                cost.isPresent() ? "length" : "",
                cost);
    }

    private static Optional<Row> fastener(Plan plan, PriceList prices) {
        Job job = plan.job();
        int count = OrderTotals.of(plan).ties();
        String name = job.hub().fix() == Fix.TIE ? "tie" : "pin";
        String title = name
                + job.strut()
                        .tieHole()
                        .map(t -> " through a hole of Ø " + Decimals.trimmed(t.diameter(), 4) + " mm")
                        .orElse("");
        return count == 0
                ? Optional.empty()
                : Optional.of(pieces(new Pieces(Kind.FASTENER, name, title, 0, count), prices));
    }

    // Spare struts have their ends, too.
    private static void ends(Plan plan, PriceList prices, List<Row> rows) {
        EndWork work = plan.job().strut().endWork();
        int ends = StrictMath.multiplyExact(2, OrderTotals.of(plan).struts());
        work.plugs().ifPresent(plug -> {
            String title = "plug Ø " + Decimals.trimmed(plug.diameter(), 2) + " mm, "
                    + Decimals.trimmed(plug.length(), 2) + " mm long";
            Optional<Double> rod = prices.byLength("plug", ends * plug.length());
            Row pieces = pieces(new Pieces(Kind.PLUG, "plug", title, plug.length(), ends), prices);
            rows.add(
                    pieces.cost.isPresent() || rod.isEmpty()
                            ? pieces
                            : new Row(
                                    Kind.PLUG,
                                    "plug",
                                    title,
                                    plug.length(),
                                    ends,
                                    Optional.empty(),
                                    "length",
                                    rod.map(BillOfMaterials::hundredths)));
        });
        if (work.caps()) {
            Interval od = plan.job().strut().stock().od();
            String sizes = od.min() < od.max()
                    ? Decimals.trimmed(od.min(), 2) + " to " + Decimals.trimmed(od.max(), 2)
                    : Decimals.trimmed(od.nominal(), 2);
            rows.add(pieces(new Pieces(Kind.CAP, "cap", "end cap for struts of Ø " + sizes + " mm", 0, ends), prices));
        }
    }

    /** What is bought by the piece. */
    record Pieces(Kind kind, String name, String title, double size, int count) {}

    /** With the price of a piece or a pack, where one is told: packs are bought whole. */
    static Row pieces(Pieces what, PriceList prices) {
        Optional<PriceList.Price> price = prices.pieces(what.name);
        Optional<Double> cost = price.map(p -> hundredths(StrictMath.ceil(what.count / p.size()), p.price()));
        return new Row(
                what.kind,
                what.name,
                what.title,
                what.size,
                what.count,
                Optional.empty(),
                price.map(PriceList.Price::unit).orElse(""),
                cost);
    }

    private static List<Row> made(Plan plan) {
        Job job = plan.job();
        OrderTotals made = OrderTotals.of(plan);
        List<Row> rows = new ArrayList<>();
        for (StrutType type : plan.struts().types()) {
            if (type.cut() > 0) {
                int count = job.order().made(type.count());
                rows.add(part(
                        Kind.STRUT,
                        type.id(),
                        "strut " + type.id(),
                        new Cut(job.strut().stock(), type.cut(), count)));
            }
        }
        Cut collar = new Cut(job.hub().collar(), job.hub().width(), 0);
        plan.book()
                .patterns()
                .forEach(p -> rows.add(part(
                        Kind.COLLAR,
                        p.id(),
                        "collar " + p.id() + ", " + p.holes().size() + " holes",
                        new Cut(collar.stock, collar.length, job.order().made(p.count())))));
        if (made.rings() > 0) {
            Cut ring = new Cut(job.hub().ring(), job.hub().ringWidth(), made.rings());
            rows.add(part(Kind.RING, "ring", "centre ring", ring));
        }
        return rows;
    }

    private record Cut(RoundStock stock, double length, int count) {}

    private static Row part(Kind kind, String id, String title, Cut cut) {
        Optional<Double> kg = Optional.of(cut.count * cut.stock.kg(cut.length));
        return new Row(kind, id, title, cut.length, cut.count, kg, "", Optional.empty());
    }

    /** A cost to a hundredth. */
    static double hundredths(double cost) {
        return hundredths(1, cost);
    }

    // In decimals, as the price was written: half a hundredth and more goes up.
    private static double hundredths(double count, double price) {
        return BigDecimal.valueOf(price)
                .multiply(BigDecimal.valueOf(count))
                .setScale(2, RoundingMode.HALF_UP)
                .doubleValue();
    }

    /**
     * Adds up what is bought.
     *
     * @return cost of all rows whose price is known; empty where none is
     */
    public Optional<Double> cost() {
        boolean known = rows.stream().anyMatch(r -> r.cost.isPresent());
        BigDecimal sum =
                rows.stream().map(r -> BigDecimal.valueOf(r.cost.orElse(0.0))).reduce(BigDecimal.ZERO, BigDecimal::add);
        return known ? Optional.of(sum.doubleValue()) : Optional.empty();
    }

    /**
     * Lists what is bought at a price that nobody told.
     *
     * @return such rows, in order
     */
    public List<Row> unpriced() {
        return rows.stream().filter(r -> r.kind.bought() && r.cost.isEmpty()).toList();
    }

    /**
     * Weighs what has to be fetched.
     *
     * @return kg of all stock that is bought; ties, pins, plugs, caps and sheets for plates are not counted
     */
    public double boughtKg() {
        return rows.stream()
                .filter(r -> r.kind.bought())
                .mapToDouble(r -> r.kg.orElse(0.0))
                .sum();
    }

    /**
     * Weighs what is made.
     *
     * @return kg of struts, collars and rings of the whole order, spares included; ties and pins are not counted
     */
    public double madeKg() {
        return rows.stream()
                .filter(r -> r.kind.part())
                .mapToDouble(r -> r.kg.orElse(0.0))
                .sum();
    }
}
