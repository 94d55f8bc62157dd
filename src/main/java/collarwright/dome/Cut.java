package collarwright.dome;

/** Which part of the sphere is kept. */
public sealed interface Cut {

    /**
     * Tiers from the apex.
     *
     * @param last the last tier that is kept, 1 or more
     */
    record Tiers(int last) implements Cut {
        /** Checks the number. */
        public Tiers {
            if (last < 1) {
                throw new IllegalArgumentException("a dome has a tier beside its apex, not " + last);
            }
        }
    }

    /**
     * Everything above a plane.
     *
     * @param above the sphere's centre, in radii, from −1 to below 1
     */
    record Height(double above) implements Cut {
        /** Checks the height. */
        public Height {
            if (!(above >= -1 && above < 1)) {
                throw new IllegalArgumentException("a sphere has no plane at " + above);
            }
        }
    }
}
