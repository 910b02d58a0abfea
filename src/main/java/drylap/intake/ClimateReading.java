package drylap.intake;

import drylap.climate.MonthlyNormals;
import java.util.List;

/** What came of reading monthly normals: all of them, or nothing and every problem together. */
public sealed interface ClimateReading {
    record Read(List<MonthlyNormals> normals) implements ClimateReading {
        public Read {
            normals = List.copyOf(normals);
        }
    }

    record Refused(FolderReading.Refused problems) implements ClimateReading {
        /** One problem a line. */
        public String text() {
            return problems.text();
        }
    }
}
