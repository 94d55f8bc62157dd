package collarwright.collar;

import collarwright.geometry.Interval;

/**
 * What a shop measured on a test collar: how much of the wall bears when a strut leans in its hole, and how much wider than
 * stamped its cutters drill. Plastic edges give and get eased, so less than the full wall bears as a rule.
 *
 * @param name what jobs call it
 * @param title its name for people
 * @param stock name of the pipe that the test collar was cut from
 * @param material name of what that pipe is made of
 * @param bearingWall thickness that bears, in the middle of the wall, with its 95 % limits; 0 for a single edge
 * @param oversize what a hole is wider than the size given for its cutter, with its 95 % limits; below 0 if narrower
 * @param readings how many angles were measured
 * @param rms root of the mean square of what the readings are off, an angle
 * @param source when, where and by whom, or anything else that tells where the figures come from
 */
public record TrialPiece(
        String name,
        String title,
        String stock,
        String material,
        Interval bearingWall,
        Interval oversize,
        int readings,
        double rms,
        String source) {
    /** Checks the values. */
    public TrialPiece {
        if (name.isBlank() || !(bearingWall.min() >= 0) || readings < 1 || !(rms >= 0)) {
            throw new IllegalArgumentException(
                    "a trial piece has a name, a bearing wall of 0 or more, and readings: " + name);
        }
    }

    /**
     * Returns what bears in a wall of its own or another thickness.
     *
     * @param wall the wall with its limits
     * @return the bearing wall, nowhere thicker than the wall itself
     */
    public Interval bearingIn(Interval wall) {
        double most = StrictMath.min(bearingWall.max(), wall.max());
        double nominal = StrictMath.min(bearingWall.nominal(), StrictMath.min(wall.nominal(), most));
        return new Interval(StrictMath.min(bearingWall.min(), nominal), nominal, most);
    }
}
