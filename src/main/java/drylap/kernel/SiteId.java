package drylap.kernel;

public record SiteId(String value) implements Comparable<SiteId> {
    public SiteId {
        if (value.isBlank()) throw new IllegalArgumentException("a site id is blank");
    }

    @Override
    public int compareTo(SiteId other) {
        return value.compareTo(other.value);
    }

    @Override
    public String toString() {
        return value;
    }
}
