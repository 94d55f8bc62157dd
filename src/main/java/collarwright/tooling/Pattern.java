package collarwright.tooling;

import java.util.List;

/**
 * One drilling of a collar, shared by the hubs that can use it.
 *
 * @param id such as {@code CA}
 * @param count collars of this pattern in one dome
 * @param holes by number; hole 1 lies on the 0° line
 * @param fingerprint 8 letters that tell the drilling apart from any other, the same in every job
 */
public record Pattern(String id, int count, List<Hole> holes, String fingerprint) {
    /** Checks that the holes are numbered in order. */
    public Pattern {
        holes = List.copyOf(holes);
        for (int i = 0; i < holes.size(); i++) {
            if (holes.get(i).number() != i + 1) {
                throw new IllegalArgumentException(id + ": holes out of order");
            }
        }
        if (holes.isEmpty() || count < 1 || holes.get(0).azimuth() != 0) {
            throw new IllegalArgumentException(id + ": hole 1 lies on the 0° line");
        }
    }
}
