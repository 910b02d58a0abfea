package drylap.hooks;

import drylap.kernel.Coded;

/** How far a delivery has come; the last two are ends. */
public enum DeliveryState implements Coded {
    WAITING("waiting", "waits"),
    DELIVERED("delivered", "delivered"),
    GIVEN_UP("given-up", "given up");

    private final String code;
    private final String words;

    DeliveryState(String code, String words) {
        this.code = code;
        this.words = words;
    }

    @Override
    public String code() {
        return code;
    }

    public String words() {
        return words;
    }
}
