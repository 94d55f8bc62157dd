package collarwright.machining;

import collarwright.geometry.Interval;
import collarwright.tooling.Cutter;
import collarwright.tooling.CutterKind;
import collarwright.units.Decimals;
import java.util.List;

/**
 * What a tube cutter cuts with: a jet or a blade that points at the pipe's axis and follows a hole's outline while X and
 * the pipe move together.
 *
 * @param process what cuts
 * @param kerf width of the cut, on the pipe's outside, where it is least; above 0
 * @param start how a cut begins and ends
 * @param speed how fast it goes over the pipe's outside
 * @param heights of the tip over the pipe
 * @param limits what the machine takes and does
 */
public record TubeCutter(CutMeans process, double kerf, Start start, Speed speed, Heights heights, Limits limits) {

    /** Checks the kerf, and that a jet stays above the pipe while a blade goes into it. */
    public TubeCutter {
        MachineLimits.require(kerf > 0 && Double.isFinite(kerf), "a cut has a width above 0");
        MachineLimits.require(CutMeans.TUBE.contains(process), "what cuts pipe");
        MachineLimits.require(
                (heights.cut() > 0) == (process != CutMeans.KNIFE), "a jet cuts from above the pipe, a blade in it");
        MachineLimits.require(start.markSeconds() == 0 || process != CutMeans.KNIFE, "only a jet marks by a spot");
    }

    /**
     * How a cut begins and ends.
     *
     * @param pierceSeconds how long it stands after it was switched on, until it is through
     * @param leadIn from where it pierces to the outline, in the waste; shortened in a small hole
     * @param overcut how far it goes on after once round
     * @param markSeconds how long a spot takes that marks the pipe and does not pierce it; 0 for no marks
     */
    public record Start(double pierceSeconds, double leadIn, double overcut, double markSeconds) {
        /** Checks the values. */
        public Start {
            MachineLimits.require(
                    pierceSeconds >= 0 && leadIn > 0 && overcut >= 0 && markSeconds >= 0,
                    "a lead-in is above 0; pierce, overcut and spot are 0 or more");
        }
    }

    /**
     * How fast it cuts, along the pipe's outside.
     *
     * @param mmPerMin for every material without a speed of its own
     * @param own speeds of materials that have one, each material once
     */
    public record Speed(double mmPerMin, List<Own> own) {
        /** Checks and keeps the speeds. */
        public Speed {
            own = List.copyOf(own);
            MachineLimits.require(mmPerMin > 0, "speeds are above 0");
        }

        /**
         * A material's own speed.
         *
         * @param material its name
         * @param mmPerMin the speed, mm/min
         */
        public record Own(String material, double mmPerMin) {
            /** Checks the speed. */
            public Own {
                MachineLimits.require(mmPerMin > 0, "speeds are above 0");
            }
        }

        /**
         * Returns the speed in a material.
         *
         * @param material its name
         * @return mm/min, above 0
         */
        public double of(String material) {
            return own.stream()
                    .filter(o -> o.material().equals(material))
                    .mapToDouble(Own::mmPerMin)
                    .findFirst()
                    .orElse(mmPerMin);
        }

        /**
         * Returns the highest speed of all.
         *
         * @return mm/min
         */
        public double fastest() {
            return StrictMath.max(
                    mmPerMin, own.stream().mapToDouble(Own::mmPerMin).max().orElse(0));
        }
    }

    /**
     * Where the tip stands over the crown of the pipe.
     *
     * @param pierce while it pierces, above 0
     * @param cut while it cuts; below 0 for a blade, that goes so deep
     */
    public record Heights(double pierce, double cut) {
        /** Checks the order. */
        public Heights {
            MachineLimits.require(pierce > 0 && cut <= pierce, "it pierces from above the pipe, no lower than it cuts");
        }
    }

    /**
     * What the machine takes and does.
     *
     * @param largestOd the largest pipe that its chuck holds, outside diameter
     * @param parts whether it parts collars off
     * @param lines most lines of a program
     */
    public record Limits(double largestOd, boolean parts, int lines) {
        /** Checks the values. */
        public Limits {
            MachineLimits.require(
                    largestOd > 0 && lines >= 100, "a chuck holds a pipe, a program has 100 lines or more");
        }
    }

    /**
     * Returns it as what stands in the machine: its size is the width of its cut.
     *
     * @return a cutter of the kind TUBE_CUTTER, that does not turn
     */
    public Cutter cutter() {
        return new Cutter(
                "TC-" + process.name(),
                CutterKind.TUBE_CUTTER,
                process.word() + ", kerf " + Decimals.trimmed(kerf, 3) + " mm",
                kerf,
                Interval.of(kerf),
                false,
                0,
                StrictMath.max(kerf, -heights.cut()),
                1,
                1,
                "of the machine");
    }
}
