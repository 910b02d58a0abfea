package drylap.ui.drawn;

import drylap.handoff.HandoffRequest;
import drylap.kernel.FacadeId;
import drylap.kernel.FolderId;
import drylap.kernel.OpeningId;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;

/** Which aprons wait for the trade that follows: facades of the folder, each with its courses from the ground up. */
public record Aprons(FolderId folder, List<Face> faces) {
    public record Face(FacadeId id, String title, int toAccept, Wall wall, List<CourseSheet> courses) {}

    /**
     * One course.
     *
     * @param laps how the next layer goes to the apron, and where that drains; one line for each design in the course
     * @param sun days of sun left of each layer that lies bare, the least of the course
     * @param sunShort one of them has a week or less
     * @param coming what becomes ready, on which day
     * @param acceptable what this person may accept now, as it was seen
     * @param toMark the lines of this person's trade that are not done everywhere yet
     */
    public record CourseSheet(
            int level,
            String ready,
            List<String> laps,
            List<String> sun,
            boolean sunShort,
            List<String> returns,
            List<String> coming,
            Seen acceptable,
            List<LineToMark> toMark) {}

    /** Openings with the version of the state that the person looked at. */
    public record Seen(Map<OpeningId, Long> versions) {
        public Seen {
            versions = Map.copyOf(versions);
        }

        public boolean isEmpty() {
            return versions.isEmpty();
        }

        public int size() {
            return versions.size();
        }

        public HandoffRequest request(FolderId folder, UUID key, String note, List<UUID> photos) {
            return new HandoffRequest(key, folder, versions, note, photos);
        }
    }

    /**
     * A line of the work list at some openings.
     *
     * @param open those where it is not done
     * @param allowed at how many of them the laps allow it now
     */
    public record LineToMark(String code, String text, List<OpeningId> open, int allowed) {}

    public Optional<Face> face(FacadeId id) {
        return faces.stream().filter(face -> face.id().equals(id)).findFirst();
    }

    public Optional<Face> faceOf(OpeningId opening) {
        return faces.stream()
                .filter(face -> face.wall().courses().stream()
                        .flatMap(course -> course.openings().stream())
                        .anyMatch(glyph -> glyph.opening().equals(opening.value())))
                .findFirst();
    }
}
