package drylap.platform;

/** A job in the hands of its handler. */
public interface Job {
    JobId id();

    String payload();

    /** Yes once the job should end early: someone stopped it, this node goes down, or another node has it. Cheap to ask. */
    boolean halted();

    /** Yes once this node goes down: the job is not at its end, another node goes on with it. */
    boolean leaving();

    /**
     * Makes the change in one transaction with the proof that the job is still this attempt's; otherwise does nothing and
     * answers no.
     */
    boolean write(Runnable change);

    /** Does this about four times a second until the job ends, on another thread, so that the work never waits for it. */
    void eachMoment(Runnable note);
}
