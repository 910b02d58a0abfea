package drylap.windowschedule.files;

import drylap.buildingmodel.BuildingModels;
import drylap.buildingmodel.ModelSaid;
import drylap.windowschedule.FileReading;
import drylap.windowschedule.ScheduleSaid;
import drylap.windowschedule.Sheet;
import java.util.List;

/** Opens a window schedule by what is in it, whatever it is called: XLSX, a building model, or CSV in UTF-8 or Windows-1252. */
public final class ScheduleFile {
    /** The largest file that is looked at. */
    public static final int MOST_BYTES = Math.max(FileLimits.STANDARD.bytes(), BuildingModels.MOST_BYTES);

    private static final String ACCEPTED = ScheduleSaid.FILES.with();

    private ScheduleFile() {}

    /** Never throws for what the file holds. */
    public static FileReading read(String name, byte[] bytes) {
        return read(name, bytes, FileLimits.STANDARD);
    }

    static FileReading read(String name, byte[] bytes, FileLimits limits) {
        try {
            if (BuildingModels.isModel(bytes)) return ModelSheet.read(name, bytes, limits);
            List<Sheet> sheets = sheets(bytes, limits);
            if (sheets.isEmpty())
                throw new RefusedFile("", ScheduleSaid.NOTHING.with(), ScheduleSaid.A_SCHEDULE.with());
            return new FileReading.Read(name, sheets, List.of());
        } catch (RefusedFile refused) {
            return new FileReading.Refused(name, refused.where(), refused.wrong(), refused.accepted());
        }
    }

    private static List<Sheet> sheets(byte[] bytes, FileLimits limits) throws RefusedFile {
        if (bytes.length > limits.bytes())
            throw new RefusedFile(
                    "", ScheduleSaid.TOO_LARGE.with(), ModelSaid.FILE_OF.with(FileLimits.mebibytes(limits.bytes())));
        if (begins(bytes, 'P', 'K')) return XlsxSheets.read(bytes, limits);
        if (begins(bytes, 0xD0, 0xCF, 0x11, 0xE0)) throw new RefusedFile("", ScheduleSaid.OLDER.with(), ACCEPTED);
        return CsvSheet.read(bytes, limits);
    }

    private static boolean begins(byte[] bytes, int... first) {
        if (bytes.length < first.length) return false;
        for (int i = 0; i < first.length; i++) if ((bytes[i] & 0xFF) != first[i]) return false;
        return true;
    }
}
