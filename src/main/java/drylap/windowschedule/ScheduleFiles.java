package drylap.windowschedule;

import drylap.windowschedule.files.ScheduleFile;

/** Opens files of window schedules. */
public final class ScheduleFiles {
    /** The largest file that is looked at. */
    public static final int MOST_BYTES = ScheduleFile.MOST_BYTES;

    private ScheduleFiles() {}

    /** By what is in the file, whatever it is called: XLSX, a building model, or CSV. Never throws for what the file holds. */
    public static FileReading read(String name, byte[] bytes) {
        return ScheduleFile.read(name, bytes);
    }
}
