package drylap.planning;

/**
 * A wall as somebody describes it by hand.
 *
 * @param azimuthDeg which way it faces, degrees clockwise from true north
 */
public record WallDraft(String name, double azimuthDeg) {
    public WallDraft {
        name = name.strip();
    }
}
