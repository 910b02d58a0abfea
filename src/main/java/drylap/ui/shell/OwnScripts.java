package drylap.ui.shell;

import com.vaadin.flow.server.ServiceInitEvent;
import com.vaadin.flow.server.VaadinServiceInitListener;
import drylap.security.Secret;
import org.springframework.stereotype.Component;

/**
 * Marks the scripts that stand in the page itself with a word that is new for each page, and tells the browser to run no others: a script that came with
 * somebody's text has no such word (CSP level 3, nonces). Vaadin's client makes functions of text that the server sends, which is why
 * {@code 'unsafe-eval'} stays.
 */
@Component
class OwnScripts implements VaadinServiceInitListener {
    @Override
    public void serviceInit(ServiceInitEvent service) {
        boolean served = service.getSource().getDeploymentConfiguration().isProductionMode();
        service.addIndexHtmlRequestListener(page -> {
            String word = Secret.random();
            page.getDocument().getElementsByTag("script").attr("nonce", word);
            // while the page is being built, its tools bring scripts of their own
            String scripts =
                    served ? "'self' 'nonce-%s' 'unsafe-eval'".formatted(word) : "'self' 'unsafe-inline' 'unsafe-eval'";
            page.getVaadinResponse().setHeader(PageHeaders.CONTENT_POLICY, PageHeaders.policy(scripts));
        });
    }
}
