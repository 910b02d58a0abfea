package drylap.cli;

/** How a headless command ends, for scripts; 1 is a fault of the program, or a plan that breaks a rule. */
final class ExitCodes {
    static final int DONE = 0;
    static final int FAULT = 1;
    static final int BREACHES = 1;
    static final int BAD_INPUT = 2;
    static final int NOTHING_PLANNED = 3;

    private ExitCodes() {}
}
