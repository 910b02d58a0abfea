package drylap.platform;

/** Something that is looked up when the node's numbers are asked for; a bean of the module that knows it. */
public interface Measured {
    /** Looks it up anew. What fails here leaves the other numbers as they are. */
    void measure();
}
