package drylap.progress;

import drylap.kernel.Coded;

/** What an entry of the log says about its line. */
public enum MarkKind implements Coded {
    DONE("done"),
    UNDONE("undone");

    private final String code;

    MarkKind(String code) {
        this.code = code;
    }

    @Override
    public String code() {
        return code;
    }
}
