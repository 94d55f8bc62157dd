package collarwright.rehearsal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What a program tells its operator to do at a stop (M0), read from the comments right in front of it. */
sealed interface StopNote {

    /**
     * Turns the pipe by hand.
     *
     * @param degrees where to, from the 0° line
     */
    record Turn(double degrees) implements StopNote {}

    /**
     * Starts the spindle by hand.
     *
     * @param rpm how fast
     */
    record SpindleOn(double rpm) implements StopNote {}

    /** Stops the spindle by hand. */
    record SpindleOff() implements StopNote {}

    /**
     * Changes the cutter by hand.
     *
     * @param number the cutter's number in the job
     * @param title which cutter
     */
    record Cutter(int number, String title) implements StopNote {}

    /** Sets Z anew with the cutter that came in; to which value, {@link ZeroRules} holds against the plan. */
    record Touch() implements StopNote {}

    /** Takes the plugs out of a hole saw. */
    record Plugs() implements StopNote {}

    /** The one form of each. */
    Pattern TURN = Pattern.compile("TURN TO (\\d+\\.\\d+) DEG");

    /** See {@link #TURN}. */
    Pattern START = Pattern.compile("Set the spindle to (\\d+) rpm, start it, then go on");

    /** See {@link #TURN}. */
    Pattern CUTTER = Pattern.compile("CUTTER (\\d+), (.*)");

    /** See {@link #TURN}. */
    Pattern TOUCH = Pattern.compile("Set Z anew: tip on the [a-z ]+ is Z -?\\d+\\.\\d+ (mm|in)");

    /** The notes of one stop in the order in which they stand. */
    static List<StopNote> read(List<String> comments) {
        List<StopNote> notes = new ArrayList<>();
        for (String comment : comments) {
            one(comment).ifPresent(notes::add);
        }
        return notes;
    }

    private static Optional<StopNote> one(String comment) {
        Matcher turn = TURN.matcher(comment);
        if (turn.matches()) {
            return Optional.of(new Turn(Double.parseDouble(turn.group(1))));
        }
        Matcher start = START.matcher(comment);
        if (start.matches()) {
            return Optional.of(new SpindleOn(Double.parseDouble(start.group(1))));
        }
        Matcher cutter = CUTTER.matcher(comment);
        if (cutter.matches() && cutter.group(1).length() < 6) {
            return Optional.of(new Cutter(Integer.parseInt(cutter.group(1)), cutter.group(2)));
        }
        if (TOUCH.matcher(comment).matches()) {
            return Optional.of(new Touch());
        }
        if (comment.startsWith("PLUGS, ")) {
            return Optional.of(new Plugs());
        }
        return comment.equals("Stop the spindle") ? Optional.of(new SpindleOff()) : Optional.empty();
    }
}
