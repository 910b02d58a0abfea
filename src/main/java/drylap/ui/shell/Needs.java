package drylap.ui.shell;

import drylap.security.Operation;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** What someone must be allowed in order to open a screen; empty: to be signed in. A screen without it is opened by nobody. */
@Target(ElementType.TYPE)
@Retention(RetentionPolicy.RUNTIME)
public @interface Needs {
    Operation[] value();
}
