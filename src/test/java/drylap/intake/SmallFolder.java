package drylap.intake;

import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A sound job folder of two openings, as text, to be spoilt one cell at a time. */
final class SmallFolder {
    private final Map<String, byte[]> files = new LinkedHashMap<>();

    SmallFolder() {
        text("sites.csv", """
                site,name,latitude,longitude,time_zone,terrain
                S1,Quay house,47.2,-124.2,America/Los_Angeles,II
                """);
        text("facades.csv", """
                site,facade,azimuth_deg,handover_due
                S1,W,270,2026-04-17
                """);
        text("openings.csv", """
                site,facade,level,opening,width_mm,height_mm,frame,method,approach,second_layer,delivered_on,water_test,priority,done,done_at
                S1,W,1,O1,900,1200,vinyl,A,drainage,none,2026-04-13,yes,2,4,2026-04-12T15:30-07:00
                S1,W,1,O2,900,1200,wood,B1,barrier,tuck,2026-04-13,,,,
                """);
        text("crews.csv", """
                crew,trade,methods,latitude,longitude,time_zone
                C1,window,A;B1,47.21,-124.2,America/Los_Angeles
                C2,siding,,47.21,-124.2,America/Los_Angeles
                """);
        text("shifts.csv", """
                crew,date,start,end,break_start,break_end,overtime_until
                C1,2026-04-13,07:00,15:30,11:30,12:00,17:00
                C2,2026-04-14,07:00,15:30,,,
                """);
        text("travel.csv", """
                from,to,minutes
                C1,S1,12
                S1,C1,14
                """);
        text("forecast.csv", """
                site,hour_start,rain_mm,rain_probability,wind_m_s,gust_m_s,wind_from_deg,temperature_c,relative_humidity
                S1,2026-04-13T07:00-07:00,0,0.1,3,6,250,9,80
                S1,2026-04-13T08:00-07:00,0.6,0.7,4.5,8,240,9.5,90
                """);
        text("labour.csv", """
                task,method,fixed_min,per_m2_min,pan_min,setup_site_min,setup_facade_min,setup_level_min
                install,*,60,10.50,12,20,10,5
                wrap,*,8,2,0,15,5,5
                clad,*,20,10,0,15,10,5
                """);
        text("rules.csv", """
                rule,value
                drying_h,4
                """);
        text("published.csv", """
                crew,date,sequence,site,facade,level,opening,task,start,end,pinned
                C1,2026-04-13,1,S1,W,1,O2,install,2026-04-13T08:00-07:00,2026-04-13T09:20-07:00,yes
                """);
    }

    SmallFolder text(String file, String text) {
        return bytes(file, text.getBytes(StandardCharsets.UTF_8));
    }

    SmallFolder bytes(String file, byte[] bytes) {
        files.put(file, bytes);
        return this;
    }

    SmallFolder without(String file) {
        files.remove(file);
        return this;
    }

    /** Replaces text that stands in the file. */
    SmallFolder change(String file, String from, String to) {
        String before = new String(bytes(file), StandardCharsets.UTF_8);
        if (!before.contains(from)) throw new IllegalArgumentException(file + " does not hold " + from);
        return text(file, before.replace(from, to));
    }

    SmallFolder append(String file, String line) {
        return text(file, new String(bytes(file), StandardCharsets.UTF_8) + line + "\n");
    }

    byte[] bytes(String file) {
        byte[] bytes = files.get(file);
        if (bytes == null) throw new IllegalArgumentException("no " + file);
        return bytes;
    }

    Map<String, byte[]> files() {
        return files;
    }

    FolderReading read() {
        return FolderReader.read(FolderSource.inMemory("test", files));
    }

    /** The messages of a folder that is refused. */
    List<String> problems() {
        return switch (read()) {
            case FolderReading.Read _ -> List.of("nothing is wrong");
            case FolderReading.Refused refused ->
                refused.problems().stream().map(Problem::toString).toList();
        };
    }

    FolderReading.Read sound() {
        return switch (read()) {
            case FolderReading.Read read -> read;
            case FolderReading.Refused refused -> throw new AssertionError(refused.text());
        };
    }
}
