package collarwright.job;

/**
 * How long the work of a shop and of a site takes, for estimates of time and cost. None of it changes what is made.
 *
 * @param cutterChange putting in a cutter and setting its height, seconds
 * @param stickLoad loading one stick of pipe in the machine, seconds
 * @param pressCollar clamping one collar at the press and laying its template on, seconds
 * @param pressHole drilling one hole at the press, seconds
 * @param pieceCut sawing or parting one piece of pipe, seconds
 * @param tieHole drilling one tie hole, seconds
 * @param connection joining one strut end to its hub on site, seconds
 * @param hands what hands do beside it
 * @param money what an hour costs
 */
public record ShopTimes(
        double cutterChange,
        double stickLoad,
        double pressCollar,
        double pressHole,
        double pieceCut,
        double tieHole,
        double connection,
        Hands hands,
        Money money) {

    /**
     * One minute for each connection on site, and what {@link Hands} says: common practice, no source. All other times:
     * our choice, no source. No prices.
     */
    public static final ShopTimes USUAL = new ShopTimes(120, 300, 60, 60, 60, 45, 60, Hands.USUAL, new Money(0, 0, ""));

    /** Checks that no time is below 0. */
    public ShopTimes {
        double[] all = {cutterChange, stickLoad, pressCollar, pressHole, pieceCut, tieHole, connection};
        for (double seconds : all) {
            if (!(seconds >= 0 && Double.isFinite(seconds))) {
                throw new IllegalArgumentException("a time of " + seconds + " seconds");
            }
        }
    }

    /**
     * What hands do between the machines.
     *
     * @param roll rolling one strip and closing its ends, seconds
     * @param turn turning the pipe or a strut to its next angle by hand and locking it, seconds
     */
    public record Hands(double roll, double turn) {
        /** Two minutes for a strip, 20 seconds for a turn: common practice, no source. */
        public static final Hands USUAL = new Hands(120, 20);

        /** Checks that no time is below 0. */
        public Hands {
            if (!(roll >= 0 && turn >= 0 && Double.isFinite(roll + turn))) {
                throw new IllegalArgumentException("times of " + roll + " and " + turn + " seconds");
            }
        }
    }

    /**
     * What an hour costs.
     *
     * @param shopHour price of an hour in the shop; 0 if there is none
     * @param siteHour price of an hour on site; 0 if there is none
     * @param currency what prices are in, for people; may be empty
     */
    public record Money(double shopHour, double siteHour, String currency) {
        /** Checks that no price is below 0. */
        public Money {
            if (!(shopHour >= 0 && siteHour >= 0 && Double.isFinite(shopHour + siteHour))) {
                throw new IllegalArgumentException("prices are 0 or more");
            }
        }

        /**
         * Tells whether there are prices.
         *
         * @return true if an hour in the shop or on site costs something
         */
        public boolean given() {
            return shopHour > 0 || siteHour > 0;
        }
    }
}
