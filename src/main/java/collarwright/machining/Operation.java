package collarwright.machining;

import collarwright.tooling.Cutter;

/** One thing that is done to the pipe at one place. */
public sealed interface Operation {

    /**
     * Returns where it is done.
     *
     * @return collar, X, azimuth and A
     */
    Place place();

    /**
     * Returns what it is done with.
     *
     * @return the cutter
     */
    Cutter cutter();

    /**
     * Returns how deep the cutter's lowest point goes.
     *
     * @return Z of the lowest point, above the rotary axis if positive
     */
    double bottom();

    /**
     * Returns its name for the machine's operator.
     *
     * @return such as {@code hole 3}
     */
    String title();

    /**
     * A place on the stick.
     *
     * @param collar from 1, at the chuck
     * @param x X of the tool
     * @param azimuth of the place on its collar, clockwise from above TOP, from the 0° line, in [0, 2π)
     * @param angleDegrees the A word that brings it under the tool, in [0, 360)
     */
    record Place(int collar, double x, double azimuth, double angleDegrees) {}

    /**
     * A hole through the wall, drilled radially.
     *
     * @param place where
     * @param hole its number in the pattern
     * @param cutter what with
     * @param bottom Z of the cutter's lowest point at full depth
     */
    record Drill(Place place, int hole, Cutter cutter, double bottom) implements Operation {
        @Override
        public String title() {
            return "hole " + hole;
        }
    }

    /**
     * A hole through the wall, bored by an end mill that goes round in it.
     *
     * @param place where
     * @param hole its number in the pattern
     * @param cutter the end mill, as it stands in the rack
     * @param diameter of the hole, larger than the end mill
     * @param bottom Z of the cutter's lowest point at full depth
     */
    record Bore(Place place, int hole, Cutter cutter, double diameter, double bottom) implements Operation {
        /** Checks the sizes. */
        public Bore {
            if (!(diameter > cutter.size())) {
                throw new IllegalArgumentException("an end mill bores what is wider than itself");
            }
        }

        @Override
        public String title() {
            return "hole " + hole;
        }
    }

    /**
     * A dimple.
     *
     * @param place where
     * @param meaning what it tells
     * @param cutter what with
     * @param bottom Z of its deepest point
     */
    record Mark(Place place, Meaning meaning, Cutter cutter, double bottom) implements Operation {
        @Override
        public String title() {
            return meaning.title();
        }
    }

    /**
     * A hole that is cut along its outline while the pipe turns.
     *
     * @param place of the hole's axis
     * @param hole its number in the pattern
     * @param cutter what cuts, its size the width of its cut
     * @param diameter of the round cylinder that has to pass the hole
     * @param bottom Z of the tip while it cuts
     */
    record Contour(Place place, int hole, Cutter cutter, double diameter, double bottom) implements Operation {
        /** Checks the sizes. */
        public Contour {
            if (!(diameter > cutter.size())) {
                throw new IllegalArgumentException("a hole is wider than the cut round it");
            }
        }

        @Override
        public String title() {
            return "hole " + hole;
        }
    }

    /**
     * A cut all round that parts a collar off, or trims the free end of the stick.
     *
     * @param place the collar that comes off, with X of the middle of the cut
     * @param trim whether it only trims the free end
     * @param cutter what cuts
     * @param bottom Z of the tip while it cuts
     */
    record PartOff(Place place, boolean trim, Cutter cutter, double bottom) implements Operation {
        @Override
        public String title() {
            return trim ? "trim the free end" : "part collar " + place.collar() + " off";
        }
    }

    /** What a dimple tells. */
    enum Meaning {
        /** The 0° line: between hole 1 and the TOP edge. */
        ZERO_LINE("0 line dimple"),
        /** TOP and the clockwise sense: beside the dimple of the 0° line, clockwise from above. */
        TOP("TOP dimple");

        private final String title;

        Meaning(String title) {
            this.title = title;
        }

        /**
         * Returns its name for people.
         *
         * @return such as {@code TOP dimple}
         */
        public String title() {
            return title;
        }
    }
}
