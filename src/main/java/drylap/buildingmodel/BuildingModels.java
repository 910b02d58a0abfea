package drylap.buildingmodel;

import drylap.buildingmodel.step.StepFault;
import drylap.buildingmodel.step.StepLimits;
import drylap.buildingmodel.step.StepReader;
import java.util.List;

/** Reads building models. */
public final class BuildingModels {
    /** The largest file that is looked at. */
    public static final int MOST_BYTES = Math.toIntExact(StepLimits.STANDARD.bytes());

    private static final String ACCEPTED = ModelSaid.SCHEMAS.with();

    private BuildingModels() {}

    /** By how it begins, whatever it is called. */
    public static boolean isModel(byte[] bytes) {
        return StepReader.begins(bytes);
    }

    /** Never throws for what the file holds. */
    public static ModelReading read(byte[] bytes) {
        return read(bytes, StepLimits.STANDARD);
    }

    static ModelReading read(byte[] bytes, StepLimits limits) {
        try {
            ModelFile file = ModelFile.of(bytes, limits);
            checkSchema(file.schemas());
            ModelReading.Read read = new ModelWindows(file).read();
            if (read.windows().isEmpty())
                throw new StepFault(0, 0, ModelSaid.NO_WINDOWS.with(), ModelSaid.WITH_WINDOWS.with());
            return read;
        } catch (StepFault fault) {
            return new ModelReading.Refused(fault.where(), fault.wrong(), fault.accepted());
        }
    }

    /** Later schemas have other places for some parameters: what was not made for is not guessed at. */
    private static void checkSchema(List<String> schemas) throws StepFault {
        boolean known = schemas.size() == 1
                && (schemas.getFirst().startsWith("IFC2X3")
                        || schemas.getFirst().matches("IFC4(_ADD\\d.*)?"));
        if (!known) throw new StepFault(0, 0, ModelSaid.SCHEMA.with(schemas.isEmpty() ? "(none)" : schemas), ACCEPTED);
    }
}
