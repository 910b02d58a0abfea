package drylap.ui.shell;

import com.vaadin.flow.spring.security.NavigationAccessControlConfigurer;
import com.vaadin.flow.spring.security.RequestUtil;
import com.vaadin.flow.spring.security.VaadinSecurityConfigurer;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.security.config.annotation.web.builders.HttpSecurity;
import org.springframework.security.config.annotation.web.configuration.EnableWebSecurity;
import org.springframework.security.web.SecurityFilterChain;
import org.springframework.security.web.access.intercept.AuthorizationFilter;

/** The page's door: who is not signed in sees the sign-in page and nothing else. */
@Configuration(proxyBeanMethods = false)
@EnableWebSecurity
class WebSecurity {
    @Bean
    SecurityFilterChain page(HttpSecurity http, SessionEnd sessionEnd, RequestUtil vaadins) throws Exception {
        // the page of the steps is no view of Vaadin's, since it must open without a connection; it holds no data
        // nor are the papers, which ask for rights themselves: whatever is named nowhere is denied to all
        http.authorizeHttpRequests(
                requests -> requests.requestMatchers("/crew/**", "/papers/**").authenticated());
        http.with(
                VaadinSecurityConfigurer.vaadin(),
                page -> page.loginView(SignInView.class)
                        .defaultSuccessUrl("/", false)
                        .enableCsrfConfiguration(false));
        http.csrf(forms -> OwnForms.only(forms, vaadins));
        http.headers(PageHeaders::tell);
        http.addFilterBefore(sessionEnd, AuthorizationFilter.class);
        return http.build();
    }

    /** A static bean method, since Vaadin asks for it very early. */
    @Bean
    static NavigationAccessControlConfigurer screens(ScreenRights rights) {
        return new NavigationAccessControlConfigurer().withNavigationAccessChecker(rights);
    }
}
