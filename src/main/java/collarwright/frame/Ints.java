package collarwright.frame;

import java.util.Arrays;

/** Whole numbers as they come, in one array. */
final class Ints {

    private int[] values = new int[256];
    private int size;

    void add(int value) {
        if (size == values.length) {
            values = Arrays.copyOf(values, StrictMath.max(16, 2 * size));
        }
        values[size++] = value;
    }

    void set(int[] all) {
        values = all;
        size = all.length;
    }

    int size() {
        return size;
    }

    int get(int index) {
        return values[index];
    }

    int[] toArray() {
        return Arrays.copyOf(values, size);
    }
}
