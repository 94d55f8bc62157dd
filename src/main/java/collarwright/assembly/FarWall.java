package collarwright.assembly;

import java.util.function.DoubleUnaryOperator;

/**
 * How far a strut can be pushed until it meets the inside of the collar's wall across from its hole. A point of its end
 * face that comes out above or below the collar does not meet it. Whether there is a free hole does not count: a strut
 * that is pushed in blindly does not find it.
 *
 * <p>In the vertical plane of the strut, X along the push from the hub's axis, z upward, a point y beside and p above the
 * strut's axis has {@code X = τ·cos θ − p·sin θ}, and meets the wall at {@code X = √(Ri² − Y²)}; there {@code τ = (X + p·sin
 * θ)/cos θ} and {@code z = z0 + X·tan θ + p/cos θ}. For each y the best p is at one end of what stays on the end face and
 * inside the collar's width. Accuracy 1e-6 mm.
 */
final class FarWall {

    private static final int CELLS = 64;

    private final SeatedStrut seat;
    private final HubSpace space;
    private final double sin;
    private final double cos;
    private final double miss;
    private final double height;

    FarWall(SeatedStrut seat, HubSpace space) {
        double mid = space.body().midRadius();
        this.seat = seat;
        this.space = space;
        this.sin = StrictMath.sin(seat.axialAngle());
        this.cos = StrictMath.cos(seat.axialAngle());
        this.miss = seat.miss(mid);
        this.height = seat.passing(mid).z();
    }

    double travel() {
        double radius = space.strut() / 2;
        DoubleUnaryOperator reach = this::reach;
        return StrictMath.max(0, Lowest.of(reach, -radius, radius, CELLS) + seat.setback());
    }

    private double reach(double beside) {
        double radius = space.strut() / 2;
        double inner = space.body().leastInnerRadius();
        double edge = space.body().width() / 2;
        double off = StrictMath.abs(beside + miss);
        if (off >= inner) {
            return -seat.setback();
        }
        double across = StrictMath.sqrt(inner * inner - off * off);
        double half = StrictMath.sqrt(StrictMath.max(0, radius * radius - beside * beside));
        double low = StrictMath.max(-half, (-edge - height) * cos - across * sin);
        double high = StrictMath.min(half, (edge - height) * cos - across * sin);
        if (low > high) {
            return Double.POSITIVE_INFINITY;
        }
        return (across + (sin > 0 ? low : high) * sin) / cos;
    }
}
