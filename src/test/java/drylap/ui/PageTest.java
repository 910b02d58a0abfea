package drylap.ui;

import drylap.DbTest;
import drylap.Drylap;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.test.context.ContextConfiguration;

/** A test of the whole application over a database of its own. */
@Target(ElementType.TYPE)
@Retention(RetentionPolicy.RUNTIME)
@SpringBootTest(
        classes = Drylap.class,
        webEnvironment = SpringBootTest.WebEnvironment.RANDOM_PORT,
        properties = {
            "vaadin.productionMode=true",
            "drylap.demo=",
            "drylap.work.regular=false",
            "drylap.metrics.token=" + PageTest.METRICS_TOKEN
        })
@ContextConfiguration(initializers = DbTest.FreshDatabase.class)
public @interface PageTest {
    String METRICS_TOKEN = "shown-by-whoever-scrapes";
}
