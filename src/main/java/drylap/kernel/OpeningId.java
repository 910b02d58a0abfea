package drylap.kernel;

public record OpeningId(String value) implements Comparable<OpeningId> {
    public OpeningId {
        if (value.isBlank()) throw new IllegalArgumentException("a opening id is blank");
    }

    @Override
    public int compareTo(OpeningId other) {
        return value.compareTo(other.value);
    }

    @Override
    public String toString() {
        return value;
    }
}
