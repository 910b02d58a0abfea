package drylap.platform;

import drylap.kernel.Coded;

/** Where a job is in its life; the last three are ends. */
public enum JobStatus implements Coded {
    QUEUED("queued"),
    RUNNING("running"),
    DONE("done"),
    FAILED("failed"),
    STOPPED("stopped");

    private final String code;

    JobStatus(String code) {
        this.code = code;
    }

    @Override
    public String code() {
        return code;
    }
}
