package collarwright.frame;

import java.util.Arrays;

/** Numbers as they come, in one array. */
final class Doubles {

    private double[] values = new double[256];
    private int size;

    void add(double value) {
        if (size == values.length) {
            values = Arrays.copyOf(values, 2 * size);
        }
        values[size++] = value;
    }

    int size() {
        return size;
    }

    double get(int index) {
        return values[index];
    }
}
