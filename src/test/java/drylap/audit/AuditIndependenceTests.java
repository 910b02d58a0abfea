package drylap.audit;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import drylap.crews.TravelTimes;
import drylap.kernel.GeoPoint;
import drylap.planning.LabourTable;
import drylap.planning.Planner;
import drylap.sites.Opening;
import drylap.weather.Forecast;
import drylap.weather.ForecastHour;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** An audit that shared its arithmetic with the planner would share its mistakes. */
class AuditIndependenceTests {
    private static final JavaClasses AUDIT = new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .importPackages("drylap.audit");

    @Test
    void the_audit_touches_no_solver_and_no_planner() {
        noClasses()
                .that()
                .resideInAPackage("drylap.audit..")
                .should()
                .dependOnClassesThat()
                .resideInAPackage("drylap.planning.solver..")
                .orShould()
                .dependOnClassesThat()
                .areAssignableTo(Planner.class)
                .orShould()
                .dependOnClassesThat()
                .resideInAPackage("net.e175.klaus..")
                .check(AUDIT);
    }

    @Test
    void the_audit_reads_of_the_weather_only_what_was_forecast() {
        Set<String> records = Set.of(Forecast.class.getName(), ForecastHour.class.getName());
        noClasses()
                .that()
                .resideInAPackage("drylap.audit..")
                .should()
                .dependOnClassesThat(new DescribedPredicate<JavaClass>("reckon with the weather") {
                    @Override
                    public boolean test(JavaClass type) {
                        return type.getPackageName().startsWith("drylap.weather") && !records.contains(type.getName());
                    }
                })
                .check(AUDIT);
    }

    @Test
    void the_audit_reckons_minutes_roads_and_tasks_itself() {
        noClasses()
                .that()
                .resideInAPackage("drylap.audit..")
                .should()
                .callMethod(LabourTable.class, "minutes", Opening.class, drylap.kernel.Task.class)
                .orShould()
                .callMethod(LabourTable.class, "row", drylap.kernel.Task.class, drylap.assembly.Method.class)
                .orShould()
                .callMethod(TravelTimes.class, "minutes", String.class, GeoPoint.class, String.class, GeoPoint.class)
                .orShould()
                .callMethod(GeoPoint.class, "kilometresTo", GeoPoint.class)
                .orShould()
                .callMethod(Opening.class, "tasks")
                .check(AUDIT);
    }
}
