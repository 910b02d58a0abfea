package drylap.demo;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import org.springframework.context.annotation.Import;
import org.springframework.test.context.TestPropertySource;

/** A database test that begins with the sample week, its people and what is past of it. */
@Target(ElementType.TYPE)
@Retention(RetentionPolicy.RUNTIME)
@Import({DemoFolder.class, DemoWeek.class, DemoProgress.class, DemoPeople.class})
@TestPropertySource(properties = {"drylap.demo=sample-data/harbour-week", "drylap.demo-people=allow"})
public @interface SampleForTests {}
