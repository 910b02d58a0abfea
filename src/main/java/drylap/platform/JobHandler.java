package drylap.platform;

/** Does the jobs of one kind; a bean of the module whose work it is. */
public interface JobHandler {
    /** Names the kind in the database, so it never changes. */
    String kind();

    /**
     * Does the job. It may have been begun before, by this node or one that died: whatever it writes, it writes through
     * {@link Job#write}, and it may be asked to do it all again. An exception fails the job, with its message as the reason.
     */
    void run(Job job) throws Exception;
}
