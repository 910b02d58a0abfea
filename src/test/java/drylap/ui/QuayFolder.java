package drylap.ui;

import drylap.intake.FolderReader;
import drylap.intake.FolderReading;
import drylap.intake.FolderSource;
import drylap.planning.JobFolder;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/**
 * A job folder that can be read at a glance: five openings at two sites, three crews, two days. At Quay Nine it rains on Monday
 * from noon to two, and the forecast ends on Tuesday at noon; Mill Row has no forecast.
 */
public final class QuayFolder {
    private final Map<String, String> files = new LinkedHashMap<>();

    public QuayFolder() {
        files.put("sites.csv", """
                site,name,latitude,longitude,time_zone,terrain
                Q,Quay Nine,47.2,-124.2,America/Los_Angeles,II
                M,Mill Row,47.3,-124.1,America/Los_Angeles,III
                """);
        files.put("facades.csv", """
                site,facade,azimuth_deg,handover_due
                Q,west,262,2026-04-17
                M,south,180,
                """);
        files.put("openings.csv", """
                site,facade,level,opening,width_mm,height_mm,frame,method,approach,second_layer,delivered_on,water_test,priority,done,done_at
                Q,west,1,QW1-01,1200,1500,wood,A,drainage,none,2026-04-10,,,5,2026-04-12T15:30-07:00
                Q,west,1,QW1-02,1200,1500,wood,A,drainage,none,2026-04-10,,,9,2026-04-10T15:30-07:00
                Q,west,2,QW2-01,900,1200,vinyl,A,drainage,none,2026-04-10,,,,
                M,south,1,MS1-01,900,1200,fiberglass,B1,barrier,none,2026-04-10,,,,
                M,south,1,MS1-02,900,1200,aluminum,B1,barrier,tuck,2026-04-10,,,2,
                """);
        files.put("crews.csv", """
                crew,trade,methods,latitude,longitude,time_zone
                W1,window,,47.21,-124.2,America/Los_Angeles
                P1,wrap,,47.21,-124.2,America/Los_Angeles
                C1,siding,,47.21,-124.2,America/Los_Angeles
                """);
        files.put("shifts.csv", """
                crew,date,start,end,break_start,break_end,overtime_until
                W1,2026-04-13,07:00,15:30,11:30,12:00,17:00
                W1,2026-04-14,07:00,15:30,11:30,12:00,
                P1,2026-04-14,07:00,15:30,,,
                C1,2026-04-14,08:00,15:30,,,
                """);
        files.put("forecast.csv", forecast());
        files.put("labour.csv", """
                task,method,fixed_min,per_m2_min,pan_min,setup_site_min,setup_facade_min,setup_level_min
                install,*,40,10,10,10,5,5
                wrap,*,8,2,0,15,5,5
                clad,*,20,10,0,15,10,5
                """);
    }

    /** Puts other words into one file. */
    public QuayFolder with(String file, String old, String fresh) {
        String text = files.get(file);
        if (text == null || !text.contains(old))
            throw new IllegalArgumentException("%s does not say: %s".formatted(file, old));
        files.put(file, text.replace(old, fresh));
        return this;
    }

    /** Adds a file. */
    public QuayFolder and(String file, String text) {
        files.put(file, text);
        return this;
    }

    /** Of Quay Nine the address is told, and how many they are of W1. */
    public QuayFolder told() {
        return with("sites.csv", "terrain\n", "terrain,address\n")
                .with("sites.csv", "II\n", "II,1 Invented Quay; Sample Harbour\n")
                .with("sites.csv", "III,1 Invented Quay; Sample Harbour\n", "III,\n")
                .with("crews.csv", "time_zone\n", "time_zone,people\n")
                .with("crews.csv", "Los_Angeles\n", "Los_Angeles,\n")
                .with(
                        "crews.csv",
                        "W1,window,,47.21,-124.2,America/Los_Angeles,",
                        "W1,window,,47.21,-124.2,America/Los_Angeles,3");
    }

    public JobFolder folder() {
        Map<String, byte[]> bytes = new LinkedHashMap<>();
        files.forEach((name, text) -> bytes.put(name, text.getBytes(StandardCharsets.UTF_8)));
        return switch (FolderReader.read(FolderSource.inMemory("quay", bytes))) {
            case FolderReading.Read read -> read.folder();
            case FolderReading.Refused refused -> throw new IllegalStateException(refused.text());
        };
    }

    public byte[] zip() {
        var bytes = new ByteArrayOutputStream();
        try (var zip = new ZipOutputStream(bytes)) {
            for (var file : files.entrySet()) {
                zip.putNextEntry(new ZipEntry(file.getKey()));
                zip.write(file.getValue().getBytes(StandardCharsets.UTF_8));
            }
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        return bytes.toByteArray();
    }

    private static String forecast() {
        var text = new StringBuilder("site,hour_start,rain_mm,rain_probability,wind_m_s,gust_m_s,wind_from_deg,"
                + "temperature_c,relative_humidity\n");
        for (int hour = 0; hour < 36; hour++) {
            boolean rain = hour == 12 || hour == 13;
            text.append("Q,2026-04-%02dT%02d:00-07:00,%s,%s,2,4,80,12,70%n"
                    .formatted(13 + hour / 24, hour % 24, rain ? "1.0" : "0", rain ? "0.8" : "0.05"));
        }
        return text.toString();
    }
}
