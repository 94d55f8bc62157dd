package collarwright.cutting;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Lays rectangles on sheets, by the skyline: each goes where its upper edge comes lowest on what lies there already, of
 * alike places the leftmost; the highest rectangles go first, and a sheet before is filled before a new one is begun.
 *
 * <p>It is a rule, not a proof: {@link Nest#leastSheets()} is the bound that areas give.
 */
public final class SheetPacker {
    private static final double SLACK = 1e-9;
    /** So many parts on one sheet are counted no further: our choice, no source. */
    private static final int MOST_ON_A_SHEET = 5000;

    private final Stock stock;
    private final List<List<Step>> skylines = new ArrayList<>();
    private final List<Spot> spots = new ArrayList<>();

    private SheetPacker(Stock stock) {
        this.stock = stock;
    }

    /**
     * A sheet to cut from.
     *
     * @param length its extent in x
     * @param width its extent in y
     * @param gap least distance between parts, 0 or more
     * @param margin least distance from the sheet's edges, 0 or more
     * @param turn whether parts may be turned by a quarter
     */
    public record Stock(double length, double width, double gap, double margin, boolean turn) {
        /** Checks the lengths. */
        public Stock {
            boolean finite = Double.isFinite(length + width + gap + margin);
            if (!finite || !(gap >= 0 && margin >= 0 && length > 2 * margin && width > 2 * margin)) {
                throw new IllegalArgumentException("no sheet: " + length + " x " + width + ", margin " + margin);
            }
        }

        /**
         * Tells whether a part goes on an empty sheet.
         *
         * @param part its size
         * @return true if it fits within the margin, turned if that is allowed
         */
        public boolean holds(Rectangle part) {
            return fits(part.length(), part.width()) || (turn && fits(part.width(), part.length()));
        }

        private boolean fits(double along, double across) {
            return along <= length - 2 * margin + SLACK && across <= width - 2 * margin + SLACK;
        }
    }

    /**
     * The size of a part.
     *
     * @param length in x, above 0
     * @param width in y, above 0
     */
    public record Rectangle(double length, double width) {
        /** Checks the lengths. */
        public Rectangle {
            if (!(length > 0 && width > 0 && length + width < Double.POSITIVE_INFINITY)) {
                throw new IllegalArgumentException("no part: " + length + " x " + width);
            }
        }
    }

    /**
     * Where a part lies.
     *
     * @param part its place in the list of parts, from 0
     * @param sheet which sheet, from 0
     * @param x its lower left corner
     * @param y its lower left corner
     * @param turned whether it is turned by a quarter
     */
    public record Spot(int part, int sheet, double x, double y, boolean turned) {}

    /**
     * Where all parts lie.
     *
     * @param spots in the order of the parts
     * @param sheets how many sheets are used
     * @param leastSheets the fewest that the area of all parts allows
     * @param used area of all parts' boxes by the area of the sheets used, 0 to 1
     */
    public record Nest(List<Spot> spots, int sheets, int leastSheets, double used) {
        /** Keeps the list. */
        public Nest {
            spots = List.copyOf(spots);
        }
    }

    /** A level stretch of the skyline. */
    private record Step(double x, double y, double width) {}

    private record Seat(double x, double y, double top, boolean turned) {}

    /**
     * Lays parts.
     *
     * @param parts their sizes; each goes on an empty sheet
     * @param stock the sheet
     * @return where they lie; the same for the same parts in the same order
     * @throws IllegalArgumentException if a part is larger than the sheet
     */
    public static Nest pack(List<Rectangle> parts, Stock stock) {
        SheetPacker packer = new SheetPacker(stock);
        List<Integer> order = new ArrayList<>();
        for (int i = 0; i < parts.size(); i++) {
            if (!stock.holds(parts.get(i))) {
                throw new IllegalArgumentException("part " + i + " is larger than the sheet");
            }
            order.add(i);
        }
        order.sort(Comparator.comparingDouble((Integer i) -> -high(parts.get(i), stock))
                .thenComparingDouble(i -> -parts.get(i).length())
                .thenComparingInt(i -> i));
        order.forEach(i -> packer.lay(i, parts.get(i)));
        packer.spots.sort(Comparator.comparingInt(Spot::part));
        double area = parts.stream().mapToDouble(p -> p.length() * p.width()).sum();
        double grown = parts.stream().mapToDouble(p -> grown(p, stock)).sum();
        int sheets = packer.skylines.size();
        double used = sheets == 0 ? 0 : area / (sheets * stock.length() * stock.width());
        return new Nest(packer.spots, sheets, least(grown, stock), used);
    }

    /**
     * Fills one sheet with parts that are all alike: the best of this rule, of rows of parts as they are, and of rows of
     * turned ones.
     *
     * @param part its size; it goes on an empty sheet
     * @param stock the sheet
     * @return where parts lie on the sheet, as many as were found room for
     */
    public static List<Spot> fill(Rectangle part, Stock stock) {
        List<Spot> best = List.of();
        for (boolean turned : stock.turn() ? List.of(false, true) : List.of(false)) {
            Stock rows = new Stock(stock.length(), stock.width(), stock.gap(), stock.margin(), false);
            double along = turned ? part.width() : part.length();
            double across = turned ? part.length() : part.width();
            Rectangle lying = new Rectangle(along, across);
            List<Spot> row = rows.holds(lying) ? first(lying, rows) : List.of();
            List<Spot> mixed = stock.turn() ? first(lying, stock) : List.of();
            for (List<Spot> spots : List.of(row, mixed)) {
                if (spots.size() > best.size()) {
                    best = spots.stream()
                            .map(s -> new Spot(s.part(), 0, s.x(), s.y(), s.turned() != turned))
                            .toList();
                }
            }
        }
        return best;
    }

    private static List<Spot> first(Rectangle part, Stock stock) {
        int most = (int) StrictMath.min(MOST_ON_A_SHEET, room(stock) / grown(part, stock) + 1);
        return pack(Collections.nCopies(most, part), stock).spots().stream()
                .filter(s -> s.sheet() == 0)
                .toList();
    }

    /**
     * Returns the fewest sheets that areas allow.
     *
     * @param parts how many parts, all alike
     * @param part their size
     * @param stock the sheet
     * @return a bound that no nesting goes below
     */
    public static int leastSheets(long parts, Rectangle part, Stock stock) {
        return least(parts * grown(part, stock), stock);
    }

    private static int least(double grown, Stock stock) {
        return (int) StrictMath.ceil(grown / room(stock) - SLACK);
    }

    // A gap is cut away on two sides of each part, but for the last in a row and column.
    private static double grown(Rectangle part, Stock stock) {
        return (part.length() + stock.gap()) * (part.width() + stock.gap());
    }

    private static double room(Stock stock) {
        return (stock.length() - 2 * stock.margin() + stock.gap()) * (stock.width() - 2 * stock.margin() + stock.gap());
    }

    private static double high(Rectangle part, Stock stock) {
        return stock.turn() ? StrictMath.min(part.length(), part.width()) : part.width();
    }

    private void lay(int index, Rectangle part) {
        for (int sheet = 0; sheet <= skylines.size(); sheet++) {
            if (sheet == skylines.size()) {
                double room = stock.length() - 2 * stock.margin() + stock.gap();
                skylines.add(new ArrayList<>(List.of(new Step(0, 0, room))));
            }
            Optional<Seat> seat = best(skylines.get(sheet), part);
            if (seat.isPresent()) {
                Seat s = seat.get();
                double along = (s.turned() ? part.width() : part.length()) + stock.gap();
                raise(skylines.get(sheet), s, along);
                spots.add(new Spot(index, sheet, s.x() + stock.margin(), s.y() + stock.margin(), s.turned()));
                return;
            }
        }
    }

    private Optional<Seat> best(List<Step> skyline, Rectangle part) {
        Optional<Seat> best = Optional.empty();
        for (boolean turned : stock.turn() ? List.of(false, true) : List.of(false)) {
            double along = (turned ? part.width() : part.length()) + stock.gap();
            double across = (turned ? part.length() : part.width()) + stock.gap();
            for (int i = 0; i < skyline.size(); i++) {
                Optional<Seat> seat = seat(skyline, i, along, across).map(s -> new Seat(s.x(), s.y(), s.top(), turned));
                if (seat.isPresent()
                        && (best.isEmpty() || seat.get().top() < best.get().top() - SLACK)) {
                    best = seat;
                }
            }
        }
        return best;
    }

    private Optional<Seat> seat(List<Step> skyline, int from, double along, double across) {
        double x = skyline.get(from).x();
        double right = stock.length() - 2 * stock.margin() + stock.gap();
        double top = stock.width() - 2 * stock.margin() + stock.gap();
        if (x + along > right + SLACK) {
            return Optional.empty();
        }
        double y = 0;
        for (int i = from; i < skyline.size() && skyline.get(i).x() < x + along - SLACK; i++) {
            y = StrictMath.max(y, skyline.get(i).y());
        }
        return y + across > top + SLACK ? Optional.empty() : Optional.of(new Seat(x, y, y + across, false));
    }

    private static void raise(List<Step> skyline, Seat seat, double along) {
        List<Step> next = new ArrayList<>();
        double end = seat.x() + along;
        for (Step step : skyline) {
            double right = step.x() + step.width();
            if (right <= seat.x() + SLACK || step.x() >= end - SLACK) {
                next.add(step);
            } else {
                if (step.x() >= seat.x() - SLACK && step.x() <= seat.x() + SLACK) {
                    next.add(new Step(seat.x(), seat.top(), along));
                }
                if (right > end + SLACK) {
                    next.add(new Step(end, step.y(), right - end));
                }
            }
        }
        skyline.clear();
        skyline.addAll(next);
    }
}
