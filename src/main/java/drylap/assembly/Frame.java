package drylap.assembly;

import drylap.kernel.Coded;

/** What the window's frame is made of. */
public enum Frame implements Coded {
    WOOD("wood"),
    ALUMINUM("aluminum"),
    VINYL("vinyl"),
    FIBERGLASS("fiberglass");

    private final String code;

    Frame(String code) {
        this.code = code;
    }

    @Override
    public String code() {
        return code;
    }
}
