package drylap.sites;

import drylap.kernel.Coded;

/** Terrain category of ISO 15927-3 and EN 1991-1-4, from open sea to town. */
public enum Terrain implements Coded {
    I("I"),
    II("II"),
    III("III"),
    IV("IV");

    private final String code;

    Terrain(String code) {
        this.code = code;
    }

    @Override
    public String code() {
        return code;
    }
}
