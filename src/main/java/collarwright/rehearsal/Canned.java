package collarwright.rehearsal;

import java.util.HashMap;
import java.util.Map;

/**
 * Drilling cycles, expanded into strokes.
 *
 * <p>Absolute: X, Y, Z and R are positions. Incremental (G91): X, Y and R count from where the tool stands, Z from R. With
 * G98 the tool comes back to the Z it had before the row of cycles unless that lies below R; with G99 to R. R, Z, Q and P stay in
 * force in a row of blocks of the same cycle; L does not.
 *
 * <p>Source: Kramer, Proctor, Messina, The NIST RS274NGC Interpreter - Version 3, NISTIR 6556, 2000, section 3.5.16.
 */
final class Canned {

    /** 0.010 in: how far above the last bottom a peck begins. Source: the same report's interpreter, G83 (from memory). */
    private static final double REENTRY = 0.254;

    private final Interpreter machine;
    private final Map<Character, Double> sticky = new HashMap<>();
    private double seriesZ;

    Canned(Interpreter machine) {
        this.machine = machine;
    }

    static boolean cycle(String motion) {
        return motion.equals("G73") || motion.equals("G81") || motion.equals("G82") || motion.equals("G83");
    }

    /** A row of cycles starts where the tool stands. */
    void begin() {
        seriesZ = machine.pose().z();
    }

    void drill(Block block, String motion, boolean fresh) {
        if (fresh) {
            sticky.clear();
        }
        for (char letter : "ZRQP".toCharArray()) {
            block.value(letter).ifPresent(v -> sticky.put(letter, v));
        }
        if (refused(block, motion)) {
            return;
        }
        double startZ = machine.pose().z();
        double retract = machine.length(block, sticky.getOrDefault('R', 0.0)) + (machine.absolute() ? 0 : startZ);
        double bottom = machine.length(block, sticky.getOrDefault('Z', 0.0)) + (machine.absolute() ? 0 : retract);
        if (retract < bottom) {
            machine.fault(block, "R above the bottom of the hole", "R below Z");
            return;
        }
        if (!(startZ >= retract)) {
            machine.stroke(block, Event.Kind.CYCLE_RAPID, machine.pose().withZ(retract));
        }
        double clear = machine.retractsToOldZ() && seriesZ > retract ? seriesZ : retract;
        int times = (int) StrictMath.rint(block.value('L').orElse(1.0));
        for (int i = 0; i < times; i++) {
            once(block, motion, new Depth(retract, bottom, clear));
        }
    }

    private record Depth(double retract, double bottom, double clear) {}

    private boolean refused(Block block, String motion) {
        double times = block.value('L').orElse(1.0);
        boolean pecks = motion.equals("G83") || motion.equals("G73");
        String missing = !sticky.containsKey('Z')
                ? "Z"
                : !sticky.containsKey('R') ? "R" : pecks && sticky.getOrDefault('Q', 0.0) <= 0 ? "Q above 0" : "";
        if (!missing.isEmpty()) {
            machine.fault(block, motion + " with " + missing, "none");
        } else if (block.has("A") || (machine.turnsByY() && block.has("Y"))) {
            machine.fault(block, "no turning in a cycle", "a word that turns in a block of " + motion);
        } else if (times < 1 || times != StrictMath.rint(times) || times > 1000) {
            machine.fault(block, "L of 1 or more, whole", "L " + times);
        } else if (sticky.getOrDefault('P', 0.0) < 0) {
            machine.fault(block, "P of 0 or more", "P " + sticky.get('P'));
        } else if (machine.feed() <= 0) {
            machine.fault(block, "F above 0 for a cut", "F " + machine.feed());
        } else {
            return false;
        }
        return true;
    }

    private void once(Block block, String motion, Depth depth) {
        Pose at = machine.pose();
        Pose over = new Pose(across(block, 'X', at.x()), across(block, 'Y', at.y()), at.z(), at.a());
        rapid(block, over);
        rapid(block, over.withZ(depth.retract()));
        if (motion.equals("G83") || motion.equals("G73")) {
            peck(block, depth, motion.equals("G83"));
        }
        feed(block, depth.bottom());
        if (motion.equals("G82")) {
            machine.pause(block, sticky.getOrDefault('P', 0.0));
        }
        rapid(block, over.withZ(depth.clear()));
    }

    private double across(Block block, char letter, double now) {
        return block.value(letter)
                .map(v -> machine.length(block, v) + (machine.absolute() ? 0 : now))
                .orElse(now);
    }

    private void peck(Block block, Depth depth, boolean out) {
        double peck = machine.length(block, sticky.getOrDefault('Q', 0.0));
        double reached = depth.retract() - peck;
        while (reached > depth.bottom() + 1e-7) {
            feed(block, reached);
            if (out) {
                rapid(block, machine.pose().withZ(depth.retract()));
            }
            rapid(block, machine.pose().withZ(reached + REENTRY));
            reached -= peck;
        }
    }

    private void feed(Block block, double z) {
        machine.stroke(block, Event.Kind.CYCLE_FEED, machine.pose().withZ(z));
    }

    private void rapid(Block block, Pose to) {
        if (!to.equals(machine.pose())) {
            machine.stroke(block, Event.Kind.CYCLE_RAPID, to);
        }
    }
}
