package drylap.ui.components;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.Tag;
import com.vaadin.flow.component.dependency.JsModule;

/** By the system, light or dark; the browser remembers. */
@Tag("theme-switch")
@JsModule("./theme-switch.ts")
public final class ThemeSwitch extends Component {}
