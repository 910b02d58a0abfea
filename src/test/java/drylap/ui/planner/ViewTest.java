package drylap.ui.planner;

import drylap.DbTest;
import drylap.Drylap;
import drylap.security.TestPeople;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import org.junit.jupiter.api.extension.AfterEachCallback;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.extension.ExtensionContext;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.test.context.ContextConfiguration;

/**
 * A test of a screen without a browser. The classes share an application and its database, since to start one takes longer than
 * to test a screen: each works on folders of its own, which are the newest while it runs. Nobody stays signed in after a test,
 * since the next one's first page would open for them, before it has a folder of its own.
 */
@Target(ElementType.TYPE)
@Retention(RetentionPolicy.RUNTIME)
@SpringBootTest(
        classes = Drylap.class,
        properties = {"vaadin.productionMode=true", "drylap.demo=", "drylap.work.regular=false"})
@ContextConfiguration(initializers = DbTest.FreshDatabase.class)
@ExtendWith(ViewTest.EverybodyGoes.class)
public @interface ViewTest {
    class EverybodyGoes implements AfterEachCallback {
        @Override
        public void afterEach(ExtensionContext context) {
            TestPeople.signOut();
        }
    }
}
