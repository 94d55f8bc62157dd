package collarwright.tooling;

import java.util.List;

/**
 * What sharing patterns saves and what it costs.
 *
 * @param hubTypes how many hub types there are
 * @param exact how many patterns there would be if every hub type had its own, or only shared one that drills the same
 * @param patterns how many there are
 * @param atLeast no fewer patterns than these serve all hub types within the limits, as far as was proven
 * @param extraLean the most that a hole lets a strut lean beyond its own axial angle because it serves others too
 * @param miss the most that a strut's line passes the axis of one of its hubs
 * @param limits what the job allows
 * @param joints every kind of joint with the line of its strut
 */
public record Sharing(
        int hubTypes,
        int exact,
        int patterns,
        int atLeast,
        double extraLean,
        double miss,
        SharingLimits limits,
        List<Joint> joints) {

    /** Keeps the joints. */
    public Sharing {
        joints = List.copyOf(joints);
    }
}
