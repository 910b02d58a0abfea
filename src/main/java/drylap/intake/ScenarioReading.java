package drylap.intake;

import drylap.whatif.Scenario;
import java.util.List;

/** What came of reading a file of scenarios: all of them, or nothing and every problem together. */
public sealed interface ScenarioReading {
    record Read(List<Scenario> scenarios) implements ScenarioReading {
        public Read {
            scenarios = List.copyOf(scenarios);
        }
    }

    record Refused(FolderReading.Refused problems) implements ScenarioReading {
        /** One problem a line. */
        public String text() {
            return problems.text();
        }
    }
}
