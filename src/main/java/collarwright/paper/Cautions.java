package collarwright.paper;

import java.util.List;

/** The cautions that every pack carries. */
final class Cautions {

    private Cautions() {}

    static List<String> all() {
        return List.of(
                "Geometry only: no load rating. Do not climb on the frame or hang anything from it.",
                "Local codes, permits, anchoring and wind rules apply: ask the authority or a licensed engineer.",
                "Run every program in the air first, single step, hand on stop.",
                "Clamp the work. Wear eye protection. No gloves at a drill. Back up the exit side.",
                "Never laser-cut PVC or vinyl: it gives off toxic, corrosive gas. A PVC collar or template is refused for"
                        + " laser output.",
                "Drilled-collar hubs may be covered by patents where you are: check before you make or sell.");
    }

    static String atTheDrill() {
        return "Clamp the work, back up the exit side, eye protection, no gloves at the drill.";
    }
}
