package drylap.ui;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.core.importer.ClassFileImporter;
import org.junit.jupiter.api.Test;

class PresentersTests {
    @Test
    void presenters_and_their_records_know_nothing_of_vaadin() {
        noClasses()
                .that()
                .resideInAPackage("drylap.ui.drawn")
                .should()
                .dependOnClassesThat()
                .resideInAPackage("com.vaadin..")
                .check(new ClassFileImporter().importPackages("drylap.ui"));
    }
}
