package drylap.tokens;

/**
 * A token that was just made.
 *
 * @param secret told here and never again
 */
public record NewToken(ApiToken token, String secret) {}
