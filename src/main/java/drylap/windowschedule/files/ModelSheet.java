package drylap.windowschedule.files;

import drylap.buildingmodel.BuildingModels;
import drylap.buildingmodel.ModelReading;
import drylap.buildingmodel.ModelSaid;
import drylap.buildingmodel.ModelWindow;
import drylap.buildingmodel.ModelWindow.Facing;
import drylap.windowschedule.FileReading;
import drylap.windowschedule.ScheduleSaid;
import drylap.windowschedule.Sheet;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * The windows of a building model as one sheet, so that they are looked at, put right and taken in as those of any schedule. A row has the number of
 * its window in the file; a cell that the model does not tell is blank, or says why.
 */
final class ModelSheet {
    private static final List<String> TITLES = List.of(
            "Entity",
            "Mark",
            "Marked by",
            "Tag",
            "Name",
            "Made as",
            "Level",
            "Storey elevation (mm)",
            "Building",
            "Elevation",
            "Standing in",
            "Position (mm)",
            "Frame width (mm)",
            "Frame height (mm)",
            "Sill height (mm)",
            "Material",
            "Remarks",
            "Left open");

    private final FileLimits limits;
    private final boolean manyBuildings;

    private ModelSheet(FileLimits limits, boolean manyBuildings) {
        this.limits = limits;
        this.manyBuildings = manyBuildings;
    }

    static FileReading read(String name, byte[] bytes, FileLimits limits) throws RefusedFile {
        return switch (BuildingModels.read(bytes)) {
            case ModelReading.Refused(var where, var wrong, var accepted) ->
                throw new RefusedFile(where, wrong, accepted);
            case ModelReading.Read(var windows, var understood, boolean manyBuildings) ->
                new FileReading.Read(name, List.of(new ModelSheet(limits, manyBuildings).sheet(windows)), understood);
        };
    }

    private Sheet sheet(List<ModelWindow> windows) throws RefusedFile {
        if (windows.size() > limits.rows())
            throw new RefusedFile("", ScheduleSaid.MANY_WINDOWS.with(), ScheduleSaid.MOST_WINDOWS.with(limits.rows()));
        List<Sheet.Row> rows = new ArrayList<>();
        rows.add(new Sheet.Row(0, TITLES));
        for (ModelWindow one : windows) rows.add(new Sheet.Row(one.entity(), checked(one)));
        return new Sheet("windows", rows);
    }

    private List<String> checked(ModelWindow window) throws RefusedFile {
        List<String> cells = cells(window).stream()
                .map(cell -> cell.replaceAll("\\p{Cntrl}+", " ").strip())
                .toList();
        if (cells.stream().anyMatch(cell -> cell.length() > limits.cellCharacters()))
            throw new RefusedFile(
                    ModelSaid.ENTITY.with(window.entity()),
                    ScheduleSaid.LONG_NAME.with(),
                    ModelSaid.MOST_CHARACTERS.with(limits.cellCharacters()));
        return cells;
    }

    private List<String> cells(ModelWindow one) {
        return List.of(
                "#" + one.entity(),
                one.mark(),
                one.markedBy(),
                one.tag(),
                one.name(),
                one.type(),
                one.storey().name(),
                millimetres(one.storey().elevationMm()),
                one.storey().building(),
                elevation(one),
                one.facing().wall(),
                millimetres(one.alongMm()),
                millimetres(one.widthMm()),
                millimetres(one.heightMm()),
                millimetres(one.sillMm()),
                one.material(),
                one.globalId().isEmpty() ? "" : ScheduleSaid.IN_THE_MODEL.with(one.globalId()),
                String.join("; ", one.leftOpen()));
    }

    /** What is the same for all windows of a plane of walls, so that a person says its facade once. */
    private String elevation(ModelWindow one) {
        String building = manyBuildings ? one.storey().building() + ", " : "";
        return building
                + switch (one.facing()) {
                    case Facing.Told told -> faces(told);
                    case Facing.NotTold(var wall, var why) -> wall.isEmpty() ? ScheduleSaid.NOT_TOLD.with(why) : wall;
                };
    }

    private static String faces(Facing.Told told) {
        String azimuth = String.format(Locale.ROOT, "%.1f", told.azimuthDeg());
        return told.planes() == 1
                ? ScheduleSaid.FACES.with(azimuth)
                : ScheduleSaid.FACES_IN_PLANE.with(azimuth, told.plane(), told.planes());
    }

    /** To a tenth, halves up; blank where there is none. */
    private static String millimetres(@Nullable Double length) {
        if (length == null || !Double.isFinite(length)) return "";
        BigDecimal shown =
                BigDecimal.valueOf(length).setScale(1, RoundingMode.HALF_UP).stripTrailingZeros();
        return shown.toPlainString();
    }
}
