package drylap.security;

import java.util.List;
import org.springframework.security.authentication.AuthenticationProvider;
import org.springframework.security.authentication.BadCredentialsException;
import org.springframework.security.authentication.CredentialsExpiredException;
import org.springframework.security.authentication.LockedException;
import org.springframework.security.authentication.UsernamePasswordAuthenticationToken;
import org.springframework.security.core.Authentication;
import org.springframework.security.web.authentication.WebAuthenticationDetails;
import org.springframework.stereotype.Component;

/** Spring Security's door to {@link SignIns}. */
@Component
final class SignInProvider implements AuthenticationProvider {
    private final SignIns signIns;

    SignInProvider(SignIns signIns) {
        this.signIns = signIns;
    }

    @Override
    public Authentication authenticate(Authentication asked) {
        return switch (signIns.enter(asked.getName(), String.valueOf(asked.getCredentials()), address(asked))) {
            case SignIns.Outcome.In(var id, var name) ->
                UsernamePasswordAuthenticationToken.authenticated(
                        new SessionPrincipal(id.value(), name, signIns.now()), null, List.of());
            case SignIns.Outcome.WrongNameOrPassword _ -> throw new BadCredentialsException("wrong name or password");
            case SignIns.Outcome.RanOut _ -> throw new CredentialsExpiredException("set by somebody else too long ago");
            case SignIns.Outcome.Wait _ -> throw new LockedException("too many failures");
        };
    }

    @Override
    public boolean supports(Class<?> type) {
        return UsernamePasswordAuthenticationToken.class.isAssignableFrom(type);
    }

    private static String address(Authentication asked) {
        return asked.getDetails() instanceof WebAuthenticationDetails details
                ? String.valueOf(details.getRemoteAddress())
                : "";
    }
}
