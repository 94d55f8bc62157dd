package collarwright.machining;

import java.util.Optional;

/**
 * One way of loading the machine: a stick with some equal collars on it, run one or more times.
 *
 * @param number 1 for full sticks, 2 for the remainder
 * @param collars collars on the stick
 * @param runs sticks of this kind
 * @param firstEdge X of the first collar's edge at the chuck
 * @param pitch from collar to collar: width and parting kerf
 * @param stickLength least length of a stick, chuck end and end trim included
 * @param fromLength the stock length it is cut from, if stock lengths are known
 * @param sticksPerLength sticks that come out of one such stock length, at least 1
 */
public record Load(
        int number,
        int collars,
        int runs,
        double firstEdge,
        double pitch,
        double stickLength,
        Optional<Double> fromLength,
        int sticksPerLength) {

    /**
     * Returns where a collar starts.
     *
     * @param collar from 1, at the chuck
     * @return X of its edge at the chuck
     */
    public double edge(int collar) {
        return firstEdge + (collar - 1) * pitch;
    }
}
