package drylap.assembly;

import drylap.kernel.Coded;

/**
 * The four installation methods of ASTM E2112 for flanged windows. The letter says where the jamb flashing lies (A: over
 * the flange, B: behind it); the 1 says that the barrier is on the wall before the window.
 */
public enum Method implements Coded {
    A(false, false),
    A1(false, true),
    B(true, false),
    B1(true, true);

    private final boolean jambFlashingBehindFlange;
    private final boolean barrierFirst;

    Method(boolean jambFlashingBehindFlange, boolean barrierFirst) {
        this.jambFlashingBehindFlange = jambFlashingBehindFlange;
        this.barrierFirst = barrierFirst;
    }

    @Override
    public String code() {
        return name();
    }

    public boolean jambFlashingBehindFlange() {
        return jambFlashingBehindFlange;
    }

    /** The barrier is cut at the opening, and a flap is held up at its head while the window goes in. */
    public boolean barrierFirst() {
        return barrierFirst;
    }
}
