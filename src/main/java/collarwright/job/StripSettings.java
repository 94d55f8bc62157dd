package collarwright.job;

import collarwright.machining.Machine;
import collarwright.tooling.StripJoint;
import java.util.Optional;

/**
 * How collars are made from flat strip and rolled afterwards.
 *
 * @param joint how the ends meet
 * @param process what cuts the strips out
 * @param kerf width of the cut that cut files allow for; 0 for nominal lines
 * @param leadIn length of lead-ins in cut files, 0 for none
 * @param machine a flat machine that drills the strips; empty for cut files only
 */
public record StripSettings(StripJoint joint, Means process, double kerf, double leadIn, Optional<Machine> machine) {
    /** Checks the lengths and the machine. */
    public StripSettings {
        if (!(kerf >= 0 && leadIn >= 0 && Double.isFinite(kerf + leadIn))) {
            throw new IllegalArgumentException("kerf and lead-in are 0 or more");
        }
        if (machine.filter(m -> m.kind() != Machine.Kind.FLAT).isPresent()) {
            throw new IllegalArgumentException("strips are drilled on a flat machine");
        }
    }

    /** What cuts strips out. */
    public enum Means {
        /** A cutter that turns. */
        ROUTER("router", false),
        /** A laser. */
        LASER("laser", true),
        /** A plasma torch. */
        PLASMA("plasma", true);

        private final String word;
        private final boolean burns;

        Means(String word, boolean burns) {
            this.word = word;
            this.burns = burns;
        }

        /**
         * Returns its word in jobs and on papers.
         *
         * @return such as {@code laser}
         */
        public String word() {
            return word;
        }

        /**
         * Tells whether it burns what it cuts.
         *
         * @return true for laser and plasma: never for PVC, CPVC or vinyl
         */
        public boolean burns() {
            return burns;
        }
    }
}
