package drylap.windowschedule.files;

import drylap.windowschedule.ScheduleSaid;
import java.io.IOException;
import java.io.InputStream;
import java.util.Collections;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.apache.commons.compress.archivers.zip.ZipFile;

/**
 * Walks through the parts of an XLSX once before they are read: well-formed XML without a document type, and no cell beyond the limits. A
 * reader of workbooks makes room for every column up to the one that a cell names, and a few bytes can name the billionth.
 */
final class SheetGuard {
    private static final String ACCEPTED = ScheduleSaid.WORKBOOK.with();
    private static final int MOST_LETTERS = 3;

    private final FileLimits limits;
    private final XMLInputFactory xml = XMLInputFactory.newDefaultFactory();

    private SheetGuard(FileLimits limits) {
        this.limits = limits;
        xml.setProperty(XMLInputFactory.SUPPORT_DTD, false);
        xml.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
    }

    static void check(byte[] bytes, FileLimits limits) throws RefusedFile {
        new SheetGuard(limits).check(bytes);
    }

    private void check(byte[] bytes) throws RefusedFile {
        try (ZipFile zip = ZipGuard.opened(bytes)) {
            for (ZipArchiveEntry part : Collections.list(zip.getEntries()))
                if (part.getName().endsWith(".xml"))
                    try (InputStream unpacked = zip.getInputStream(part)) {
                        walk(part.getName(), unpacked);
                    }
        } catch (IOException broken) {
            throw new RefusedFile("", ScheduleSaid.BROKEN.with(), ACCEPTED);
        }
    }

    private void walk(String part, InputStream zip) throws RefusedFile {
        try {
            XMLStreamReader reader = xml.createXMLStreamReader(zip);
            while (reader.hasNext()) {
                int event = reader.next();
                if (event == XMLStreamReader.DTD)
                    throw new RefusedFile(ScheduleSaid.PART.with(part), ScheduleSaid.DOCUMENT_TYPE.with(), ACCEPTED);
                if (event == XMLStreamReader.START_ELEMENT && part.contains("worksheets/")) element(part, reader);
            }
        } catch (XMLStreamException | RuntimeException broken) {
            throw new RefusedFile(ScheduleSaid.PART.with(part), ScheduleSaid.NOT_WELL_FORMED.with(), ACCEPTED);
        }
    }

    private void element(String part, XMLStreamReader reader) throws RefusedFile {
        String place = reader.getAttributeValue(null, "r");
        if (place == null) return;
        var guard = new RowGuard(part, limits);
        switch (reader.getLocalName()) {
            case "row" -> guard.checkPlace(number(place), 0);
            case "c" -> cell(guard, place);
            default -> {}
        }
    }

    /** Cells without a text, such as those with a border only, may lie as far out as they like within a sheet. */
    private static void cell(RowGuard guard, String place) throws RefusedFile {
        int letters = 0;
        while (letters < place.length() && Character.isLetter(place.charAt(letters))) letters++;
        if (letters == 0 || letters > MOST_LETTERS) guard.checkPlace(1, Integer.MAX_VALUE);
        guard.checkPlace(number(place.substring(letters)), 0);
    }

    private static int number(String digits) {
        return digits.matches("\\d{1,9}") ? Integer.parseInt(digits) : Integer.MAX_VALUE;
    }
}
