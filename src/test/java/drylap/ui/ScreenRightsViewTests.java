package drylap.ui;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.vaadin.browserless.SpringBrowserlessTest;
import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.UI;
import com.vaadin.flow.router.Route;
import com.vaadin.flow.server.auth.AnonymousAllowed;
import drylap.kernel.Reach;
import drylap.security.Operation;
import drylap.security.Role;
import drylap.security.TestPeople;
import drylap.ui.planner.ViewTest;
import drylap.ui.shell.Needs;
import java.util.Arrays;
import java.util.List;
import org.assertj.core.api.InstanceOfAssertFactories;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.system.CapturedOutput;
import org.springframework.boot.test.system.OutputCaptureExtension;

/** Every role at the door of every screen. */
@ViewTest
class ScreenRightsViewTests extends SpringBrowserlessTest {
    private static final List<Class<? extends Component>> SCREENS = read();

    @Autowired
    private TestPeople people;

    @Test
    void every_screen_says_what_it_needs() {
        assertThat(SCREENS)
                .hasSizeGreaterThan(5)
                .allMatch(screen ->
                        screen.isAnnotationPresent(Needs.class) || screen.isAnnotationPresent(AnonymousAllowed.class));
        assertThat(SCREENS.stream().filter(screen -> screen.isAnnotationPresent(AnonymousAllowed.class)))
                .extracting(Class::getSimpleName)
                .containsExactlyInAnyOrder("SignInView", "FirstUseView");
    }

    @ParameterizedTest
    @EnumSource(Role.class)
    void a_role_opens_its_screens_and_no_other(Role role) {
        var who = people.signIn(people.add(role, Reach.EVERYWHERE, role.inCrew() ? "window-1" : null));
        for (var screen : SCREENS) {
            if (screen.getSimpleName().equals("LandingView") || screen.isAnnotationPresent(AnonymousAllowed.class))
                continue;
            boolean theirs = Arrays.stream(screen.getAnnotation(Needs.class).value())
                    .allMatch((Operation operation) -> who.may(operation));

            assertThat(opens(screen))
                    .as("%s opens %s", role, screen.getSimpleName())
                    .isEqualTo(theirs);
        }
    }

    /** [ASVS 7.2.2] Neither is what a menu asks of every screen. */
    @Test
    @ExtendWith(OutputCaptureExtension.class)
    void whoever_goes_where_they_may_not_is_logged_once_and_by_number(CapturedOutput said) {
        var who = people.signIn(people.add(Role.WINDOW_CREW, Reach.EVERYWHERE, "window-1"));

        assertThat(opens(screen("MyDayView"))).isTrue();
        assertThat(said).doesNotContain("may not open");

        assertThat(opens(screen("PeopleView"))).isFalse();
        assertThat(said.toString().lines().filter(line -> line.contains("may not open")))
                .singleElement(InstanceOfAssertFactories.STRING)
                .endsWith("Refused: person %d (window crew) may not open PeopleView"
                        .formatted(who.id().value()));
    }

    private static Class<? extends Component> screen(String name) {
        return SCREENS.stream()
                .filter(one -> one.getSimpleName().equals(name))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void nobody_opens_anything_without_signing_in() {
        TestPeople.signOut();
        for (var screen : SCREENS)
            if (!screen.isAnnotationPresent(AnonymousAllowed.class))
                assertThat(opens(screen)).as(screen.getSimpleName()).isFalse();
    }

    private static boolean opens(Class<? extends Component> screen) {
        try {
            UI.getCurrent().navigate(screen);
        } catch (RuntimeException refused) {
            // a screen that is not theirs is answered as one that does not exist
        }
        return UI.getCurrent().getInternals().getActiveRouterTargetsChain().stream()
                .anyMatch(screen::isInstance);
    }

    private static List<Class<? extends Component>> read() {
        return new ClassFileImporter()
                .withImportOption(new ImportOption.DoNotIncludeTests()).importPackages("drylap.ui").stream()
                        .filter(type -> type.isAnnotatedWith(Route.class))
                        .map(JavaClass::reflect)
                        .<Class<? extends Component>>map(type -> type.asSubclass(Component.class))
                        .toList();
    }
}
