package drylap.kernel;

public record CrewId(String value) implements Comparable<CrewId> {
    public CrewId {
        if (value.isBlank()) throw new IllegalArgumentException("a crew id is blank");
    }

    @Override
    public int compareTo(CrewId other) {
        return value.compareTo(other.value);
    }

    @Override
    public String toString() {
        return value;
    }
}
