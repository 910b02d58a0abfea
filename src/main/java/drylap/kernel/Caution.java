package drylap.kernel;

/** What every screen, paper and calendar says that sends people to a wall. */
public final class Caution {
    public static final String WORDS = "A dry hour is never a statement that work at height is safe. "
            + "The competent person on site decides; local codes and the manufacturer's instructions come first.";

    private Caution() {}
}
