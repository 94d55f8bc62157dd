package collarwright.sheet;

/**
 * Counts comparisons, so that no file keeps its reader busy for long, however it was made. A counter: it runs down. Its
 * limit is our choice: a second or two of work, and many times what the largest nest takes.
 */
final class DrawnWork {
    /** How many comparisons are made for one file. */
    static final long MOST = 300_000_000;

    private long left;

    /**
     * Starts to count.
     *
     * @param most how many comparisons may be made
     */
    DrawnWork(long most) {
        this.left = most;
    }

    /** Whether so many comparisons more may be made; once they may not, none may. */
    boolean allows(long count) {
        left = left < count ? -1 : left - count;
        return left >= 0;
    }

    /** Whether something was left uncompared. */
    boolean isSpent() {
        return left < 0;
    }

    /** How many are left, 0 or more. */
    long left() {
        return StrictMath.max(0, left);
    }
}
