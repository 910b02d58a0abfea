package drylap.ui.planner;

import drylap.DbTest;
import drylap.Drylap;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.test.annotation.DirtiesContext;
import org.springframework.test.context.ContextConfiguration;

/** A test of a screen without a browser, over a database that no other class of tests sees. */
@Target(ElementType.TYPE)
@Retention(RetentionPolicy.RUNTIME)
@SpringBootTest(
        classes = Drylap.class,
        properties = {"vaadin.productionMode=true", "drylap.demo=", "drylap.forecasts.regular=false"})
@ContextConfiguration(initializers = DbTest.FreshDatabase.class)
@DirtiesContext(classMode = DirtiesContext.ClassMode.AFTER_CLASS)
public @interface ViewTest {}
