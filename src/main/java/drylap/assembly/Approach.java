package drylap.assembly;

import drylap.kernel.Coded;

/** How the sill deals with water: a pan that drains, or a barrier sealed on all four sides. */
public enum Approach implements Coded {
    DRAINAGE("drainage"),
    BARRIER("barrier");

    private final String code;

    Approach(String code) {
        this.code = code;
    }

    @Override
    public String code() {
        return code;
    }
}
