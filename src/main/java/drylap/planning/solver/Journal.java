package drylap.planning.solver;

import java.util.Arrays;

/** Every number that changes since {@link #start}, so that all can be put back: a search takes back most of what it tries. */
final class Journal {
    private int[][] arrays = new int[256][];
    private int[] places = new int[256];
    private int[] before = new int[256];
    private int size;

    void start() {
        size = 0;
    }

    void set(int[] array, int place, int value) {
        if (array[place] == value) return;
        if (size == places.length) grow();
        arrays[size] = array;
        places[size] = place;
        before[size++] = array[place];
        array[place] = value;
    }

    void undo() {
        while (size > 0) {
            size--;
            arrays[size][places[size]] = before[size];
        }
    }

    private void grow() {
        arrays = Arrays.copyOf(arrays, size * 2);
        places = Arrays.copyOf(places, size * 2);
        before = Arrays.copyOf(before, size * 2);
    }
}
