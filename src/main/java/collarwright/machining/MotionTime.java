package collarwright.machining;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * How long a program runs, and how far it turns and travels.
 *
 * <p>Every move starts and ends at rest, speeds up at the axis's acceleration, runs at its rate, and slows down the same
 * way (a trapezoid, or a triangle where the way is short). Dwells count; pauses, tool changes and the stretch to the
 * first stated position do not, nor does the turn of a pipe that a hand turns.
 *
 * @param seconds running time
 * @param rotationDegrees how far A turns in all
 * @param travel how far X goes in all
 * @param handTurns how often a hand turns the pipe, to the first angle too
 */
record MotionTime(double seconds, double rotationDegrees, double travel, int handTurns) {

    /** Times moves without cycles. */
    static MotionTime of(List<Move> moves, Machine machine) {
        Counter counter = new Counter(machine);
        moves.forEach(counter::add);
        return new MotionTime(counter.seconds, counter.rotation, counter.travel, counter.handTurns);
    }

    /** Seconds for one move from rest to rest. */
    static double seconds(double way, double ratePerMin, double accelerationPerS2) {
        double rate = ratePerMin / 60;
        if (way >= rate * rate / accelerationPerS2) {
            return way / rate + rate / accelerationPerS2;
        }
        return 2 * StrictMath.sqrt(way / accelerationPerS2);
    }

    /**
     * The least turn that visits all angles one way round: a full turn less the widest gap between neighbours.
     *
     * @param rising angles in degrees, rising in [0, 360), one or more
     */
    static double leastRotation(List<Double> rising) {
        double widest = rising.get(0) + 360 - rising.get(rising.size() - 1);
        for (int i = 1; i < rising.size(); i++) {
            widest = StrictMath.max(widest, rising.get(i) - rising.get(i - 1));
        }
        return 360 - widest;
    }

    /** The least travel of X: each turn's stretch from its first to its last hole. */
    static double leastTravel(List<List<Operation>> byAngle) {
        List<Double> stretches = new ArrayList<>();
        for (List<Operation> group : byAngle) {
            double least = Double.POSITIVE_INFINITY;
            double most = Double.NEGATIVE_INFINITY;
            for (Operation o : group) {
                least = StrictMath.min(least, o.place().x());
                most = StrictMath.max(most, o.place().x());
            }
            stretches.add(most - least);
        }
        return stretches.stream().mapToDouble(d -> d).sum();
    }

    private static final class Counter {
        private final Machine machine;
        private final Map<Axis, Double> at = new EnumMap<>(Axis.class);
        private double seconds;
        private double rotation;
        private double travel;
        private int handTurns;

        Counter(Machine machine) {
            this.machine = machine;
        }

        void add(Move move) {
            if (move instanceof Move.Rapid rapid) {
                rapid(rapid);
            } else if (move instanceof Move.Feed feed) {
                seconds += linear(go(Axis.Z, feed.z()), feed.feedMmPerMin());
            } else if (move instanceof Move.Line line) {
                double way = StrictMath.hypot(along(line.x()), go(Axis.Y, line.y()));
                seconds += linear(way, line.feedMmPerMin());
            } else if (move instanceof Move.Arc arc) {
                arc(arc);
            } else if (move instanceof Move.Sweep sweep) {
                along(sweep.x());
                rotation += go(Axis.A, sweep.angleDegrees());
                seconds += sweep.seconds();
            } else if (move instanceof Move.Dwell dwell) {
                seconds += dwell.seconds();
            }
        }

        private void rapid(Move.Rapid rapid) {
            double way = go(rapid.axis(), rapid.to());
            if (rapid.axis() == Axis.A) {
                Machine.Rotary rotary = machine.rotary();
                rotation += way;
                if (rotary.form().byHand()) {
                    handTurns++;
                    return;
                }
                seconds += MotionTime.seconds(way, rotary.rapidDegreesPerMin(), rotary.accelerationDegreesPerS2());
            } else {
                travel += rapid.axis() == Axis.X ? way : 0;
                seconds += linear(way, machine.travel().rapidMmPerMin());
            }
        }

        /** The length of a helix: its arc in the plane, and its rise. */
        private void arc(Move.Arc arc) {
            double startX = -arc.centreX();
            double startY = -arc.centreY();
            double endX = startX + arc.x() - at.getOrDefault(Axis.X, arc.x());
            double endY = startY + arc.y() - at.getOrDefault(Axis.Y, arc.y());
            double turned = StrictMath.atan2(startX * endY - startY * endX, startX * endX + startY * endY);
            double forward = arc.clockwise() ? -turned : turned;
            double turn = forward > 1e-9 ? forward : forward + 2 * StrictMath.PI;
            along(arc.x());
            go(Axis.Y, arc.y());
            double way = StrictMath.hypot(turn * StrictMath.hypot(startX, startY), go(Axis.Z, arc.z()));
            seconds += linear(way, arc.feedMmPerMin());
        }

        private double along(double x) {
            double way = go(Axis.X, x);
            travel += way;
            return way;
        }

        private double linear(double way, double ratePerMin) {
            return MotionTime.seconds(way, ratePerMin, machine.travel().accelerationMmPerS2());
        }

        private double go(Axis axis, double to) {
            Double from = at.put(axis, to);
            return from == null ? 0 : StrictMath.abs(to - from);
        }
    }
}
