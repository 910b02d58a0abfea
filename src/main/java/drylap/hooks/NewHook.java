package drylap.hooks;

/**
 * A hook that was just made.
 *
 * @param secret signs what is sent; told here and never again
 */
public record NewHook(Hook hook, String secret) {}
