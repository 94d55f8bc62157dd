package collarwright.rehearsal;

/**
 * What F means for a block.
 *
 * <p>Under G94 F counts along the path of X, Y and Z as if the rotary axis stood still; where none of them moves, it counts
 * degrees a minute. Under G93 F is one over the minutes that the block takes. A control whose Y word turns the pipe counts
 * it as a linear axis. Source: Kramer, Proctor, Messina, The NIST RS274NGC Interpreter - Version 3, NISTIR 6556, 2000,
 * sections 2.1.2.5 and 3.5.19 (from memory).
 *
 * @param f the number of the word in force
 * @param inverseTime whether G93 is in force
 * @param unit mm in one of the program's lengths; 0 before any unit word
 * @param turnWord the word that turns the pipe
 */
record FeedRate(double f, boolean inverseTime, double unit, TurnWord turnWord) {

    /** From where to where, and how. */
    record Way(Pose from, Pose to, Swept path) {

        /** Along X, Y and Z; an axis that is unknown at the start counts nothing. */
        double length() {
            double dz = known(to.z() - from.z());
            if (path instanceof Swept.Arc arc) {
                double radius = StrictMath.hypot(from.x() - arc.centreX(), from.y() - arc.centreY());
                return StrictMath.hypot(radius * arc.turn(), dz);
            }
            return StrictMath.hypot(StrictMath.hypot(known(to.x() - from.x()), known(to.y() - from.y())), dz);
        }

        double turn() {
            return StrictMath.abs(known(to.a() - from.a()));
        }

        private static double known(double way) {
            return Double.isNaN(way) ? 0 : way;
        }
    }

    Event.Drive drive(Event.Kind kind, Way way, double rpm, boolean stated) {
        double length = way.length();
        double turn = way.turn();
        if (inverseTime) {
            double minutes = f > 0 ? 1 / f : 0;
            double along = minutes > 0 ? length / minutes : 0;
            return new Event.Drive(along, rpm, stated, rapid(kind) ? 0 : 60 * minutes);
        }
        double feed = f * unit;
        if (rapid(kind) || feed <= 0) {
            return new Event.Drive(feed, rpm, stated, 0);
        }
        if (turnWord.letter() == 'Y') {
            double y = turn / 360 * turnWord.perTurn();
            double all = StrictMath.hypot(length, y);
            double seconds = 60 * all / feed;
            return new Event.Drive(length > 0 && turn > 0 ? feed * length / all : feed, rpm, stated, seconds);
        }
        boolean degrees = length <= 0 && turn > 0;
        return new Event.Drive(degrees ? 0 : feed, rpm, stated, 60 * (length > 0 ? length / feed : turn / f));
    }

    private static boolean rapid(Event.Kind kind) {
        return kind != Event.Kind.FEED && kind != Event.Kind.CYCLE_FEED;
    }
}
