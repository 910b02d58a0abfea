package drylap.speech;

/** What somebody asked for cannot be; why not may be said to them in their language. */
public class Unfit extends IllegalArgumentException {
    private final transient Saying saying;

    public Unfit(Saying saying) {
        super(saying.words());
        this.saying = saying;
    }

    /** Why not; what was thrown without a saying is told as it is. */
    public static Saying saying(IllegalArgumentException why) {
        return why instanceof Unfit unfit ? unfit.saying : Saying.asItIs(String.valueOf(why.getMessage()));
    }
}
