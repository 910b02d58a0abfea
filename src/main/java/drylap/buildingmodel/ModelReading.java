package drylap.buildingmodel;

import java.util.List;

/** What came of reading a building model. */
public sealed interface ModelReading {
    /**
     * @param windows in the order of the file's numbers
     * @param understood how the file as a whole was understood, for people to read
     */
    record Read(List<ModelWindow> windows, List<String> understood, boolean manyBuildings) implements ModelReading {
        public Read {
            windows = List.copyOf(windows);
            understood = List.copyOf(understood);
        }
    }

    /** @param where the line and the entity; blank for the file */
    record Refused(String where, String wrong, String accepted) implements ModelReading {}
}
