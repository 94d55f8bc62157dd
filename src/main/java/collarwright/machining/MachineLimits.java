package collarwright.machining;

/** What a machine that runs programs has to keep. */
final class MachineLimits {

    private MachineLimits() {}

    static void check(Machine.Post post) {
        require(
                post.lengthDecimals() >= 3
                        && post.lengthDecimals() <= 6
                        && post.angleDecimals() >= 3
                        && post.angleDecimals() <= 6,
                "decimals of millimetres and of degrees: 3 to 6");
        require(
                post.lineLength() >= 40
                        && post.lineLength() <= 255
                        && !post.extension().isEmpty(),
                "lines have 40 to 255 characters, and files an ending");
        require(
                post.endWord().equals("M2") || post.endWord().equals("M30"),
                "a program ends with M2 or M30, not with " + post.endWord());
    }

    static void check(Machine.Spindle spindle) {
        require(
                spindle.minRpm() > 0
                        && spindle.maxRpm() >= spindle.minRpm()
                        && Double.isFinite(spindle.maxRpm())
                        && spindle.startSeconds() >= 0
                        && spindle.startSeconds() <= 60,
                "spindle speeds are above 0, and its start takes 0 to 60 seconds");
    }

    static void check(Machine.Travel travel) {
        require(
                travel.minX() < travel.maxX()
                        && travel.minZ() < travel.maxZ()
                        && Double.isFinite(travel.maxX() - travel.minX())
                        && Double.isFinite(travel.maxZ() - travel.minZ()),
                "travel goes from a least to a larger value");
        require(
                travel.rapidMmPerMin() > 0
                        && travel.maxFeedMmPerMin() > 0
                        && travel.accelerationMmPerS2() > 0
                        && travel.clearGap() > 0,
                "rates, acceleration and clearance are above 0");
    }

    static void check(Machine.Rotary rotary) {
        require(
                rotary.rapidDegreesPerMin() > 0
                        && rotary.accelerationDegreesPerS2() > 0
                        && rotary.takeUpDegrees() >= 0
                        && rotary.takeUpDegrees() < 90,
                "rotary rates are above 0, and take-up is 0 to 90 degrees");
        require(
                rotary.chuckLength() >= 0
                        && rotary.jawClear() >= 0
                        && rotary.jawHeight() >= 0
                        && rotary.partingKerf() >= 0
                        && rotary.endTrim() >= 0,
                "lengths at the chuck and at the free end are 0 or more");
        require(rotary.maxStick() >= rotary.chuckLength(), "the longest stick is as long as the chuck or longer");
    }

    static void require(boolean holds, String rule) {
        if (!holds) {
            throw new IllegalArgumentException("machine: " + rule);
        }
    }
}
