package drylap.buildingmodel.step;

import drylap.buildingmodel.ModelSaid;

/** A file, or a place of it, that is not read further. */
public final class StepFault extends Exception {
    private final int line;
    private final int entity;
    private final String accepted;

    /**
     * @param line from 1; 0 for the file
     * @param entity 0 outside of entities
     */
    public StepFault(int line, int entity, String wrong, String accepted) {
        super(wrong);
        this.line = line;
        this.entity = entity;
        this.accepted = accepted;
    }

    /** The line and the entity; blank for the file. */
    public String where() {
        if (line == 0) return entity == 0 ? "" : ModelSaid.ENTITY.with(entity);
        return entity == 0 ? ModelSaid.LINE.with(line) : ModelSaid.LINE_AND_ENTITY.with(line, entity);
    }

    public String wrong() {
        return String.valueOf(getMessage());
    }

    public String accepted() {
        return accepted;
    }
}
