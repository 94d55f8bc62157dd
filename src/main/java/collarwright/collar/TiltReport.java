package collarwright.collar;

/**
 * One hole on the bench: where a strut binds in it, and how much each size matters.
 *
 * @param hole what was asked
 * @param tiltLimit the lean at which the strut binds
 * @param beside whether the strut touches the inner rim beside the mid-plane, where the flat-board form is too generous
 * @param perHole change of the tilt limit for {@value #STEP} mm more hole
 * @param perStrut the same for more strut
 * @param perWall the same for more wall, the outside diameter kept
 */
public record TiltReport(
        Sizes hole, double tiltLimit, boolean beside, double perHole, double perStrut, double perWall) {

    /** The step that sensitivities are given for. */
    public static final double STEP = 0.1;

    /**
     * The sizes of one hole.
     *
     * @param strut strut diameter
     * @param hole hole diameter, above the strut's
     * @param outerRadius outside radius of the collar
     * @param wall wall thickness
     */
    public record Sizes(double strut, double hole, double outerRadius, double wall) {

        /**
         * Returns where a strut binds.
         *
         * @return the tilt limit
         * @throws IllegalArgumentException if the strut does not pass or the hole is as wide as the bore
         */
        public double tiltLimit() {
            return RoundHole.tiltLimit(strut, hole, outerRadius - wall, outerRadius);
        }
    }

    /**
     * Reports on a hole.
     *
     * @param sizes its sizes
     * @return tilt limit and sensitivities; the latter over a step to the side where the strut still passes
     */
    public static TiltReport of(Sizes sizes) {
        double limit = sizes.tiltLimit();
        double inner = sizes.outerRadius() - sizes.wall();
        boolean beside =
                StrictMath.cos(limit) / (sizes.hole() / 2) + StrictMath.sin(limit) / inner > 1 / (sizes.strut() / 2);
        return new TiltReport(sizes, limit, beside, perHole(sizes), perStrut(sizes), perWall(sizes));
    }

    // Each slope is taken over as much of the step as the strut still passes and the hole still lies inside the bore.
    private static double perHole(Sizes s) {
        double bore = 2 * (s.outerRadius() - s.wall());
        double above = StrictMath.min(s.hole() + STEP / 2, (s.hole() + bore) / 2);
        double below = StrictMath.max(s.strut(), s.hole() - STEP / 2);
        return slope(
                new Sizes(s.strut(), above, s.outerRadius(), s.wall()),
                new Sizes(s.strut(), below, s.outerRadius(), s.wall()),
                above - below);
    }

    private static double perStrut(Sizes s) {
        double above = StrictMath.min(s.hole(), s.strut() + STEP / 2);
        double below = StrictMath.max(s.strut() / 2, s.strut() - STEP / 2);
        return slope(
                new Sizes(above, s.hole(), s.outerRadius(), s.wall()),
                new Sizes(below, s.hole(), s.outerRadius(), s.wall()),
                above - below);
    }

    private static double perWall(Sizes s) {
        double room = s.outerRadius() - s.hole() / 2 - s.wall();
        double above = s.wall() + StrictMath.min(STEP / 2, room / 2);
        double below = s.wall() - StrictMath.min(STEP / 2, s.wall() / 2);
        return slope(
                new Sizes(s.strut(), s.hole(), s.outerRadius(), above),
                new Sizes(s.strut(), s.hole(), s.outerRadius(), below),
                above - below);
    }

    private static double slope(Sizes above, Sizes below, double span) {
        return span > 0 ? (above.tiltLimit() - below.tiltLimit()) * STEP / span : 0;
    }
}
