package drylap.ui;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/** A workbook of one sheet with nothing but text and whole numbers in it: the least that ECMA-376 asks for. */
final class SmallWorkbook {
    private static final String MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
    private static final String RELATIONS = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
    private static final String PACKAGE = "http://schemas.openxmlformats.org/package/2006";

    private SmallWorkbook() {}

    static byte[] of(List<List<String>> rows) {
        Map<String, String> parts = new LinkedHashMap<>();
        parts.put("[Content_Types].xml", """
                <Types xmlns="%s/content-types"><Default Extension="rels" \
                ContentType="application/vnd.openxmlformats-package.relationships+xml"/>\
                <Override PartName="/xl/workbook.xml" \
                ContentType="application/vnd.openxmlformats-officedocument.spreadsheetml.sheet.main+xml"/>\
                <Override PartName="/xl/worksheets/sheet1.xml" \
                ContentType="application/vnd.openxmlformats-officedocument.spreadsheetml.worksheet+xml"/></Types>""".formatted(PACKAGE));
        parts.put("_rels/.rels", relation("officeDocument", "xl/workbook.xml"));
        parts.put(
                "xl/workbook.xml",
                "<workbook xmlns=\"%s\" xmlns:r=\"%s\"><sheets><sheet name=\"Windows\" sheetId=\"1\" r:id=\"r1\"/></sheets></workbook>"
                        .formatted(MAIN, RELATIONS));
        parts.put("xl/_rels/workbook.xml.rels", relation("worksheet", "worksheets/sheet1.xml"));
        parts.put("xl/worksheets/sheet1.xml", sheet(rows));
        return zip(parts);
    }

    private static String relation(String type, String target) {
        return "<Relationships xmlns=\"%s/relationships\"><Relationship Id=\"r1\" Type=\"%s/%s\" Target=\"%s\"/></Relationships>"
                .formatted(PACKAGE, RELATIONS, type, target);
    }

    private static String sheet(List<List<String>> rows) {
        var xml = new StringBuilder("<worksheet xmlns=\"%s\"><sheetData>".formatted(MAIN));
        for (int row = 0; row < rows.size(); row++) {
            xml.append("<row r=\"%d\">".formatted(row + 1));
            List<String> cells = rows.get(row);
            for (int column = 0; column < cells.size(); column++)
                xml.append(cell("%c%d".formatted('A' + column, row + 1), cells.get(column)));
            xml.append("</row>");
        }
        return xml.append("</sheetData></worksheet>").toString();
    }

    private static String cell(String at, String value) {
        return value.matches("\\d+")
                ? "<c r=\"%s\"><v>%s</v></c>".formatted(at, value)
                : "<c r=\"%s\" t=\"inlineStr\"><is><t>%s</t></is></c>".formatted(at, value);
    }

    private static byte[] zip(Map<String, String> parts) {
        var bytes = new ByteArrayOutputStream();
        try (var zip = new ZipOutputStream(bytes)) {
            for (var part : parts.entrySet()) {
                zip.putNextEntry(new ZipEntry(part.getKey()));
                String xml = "<?xml version=\"1.0\" encoding=\"UTF-8\" standalone=\"yes\"?>" + part.getValue();
                zip.write(xml.getBytes(StandardCharsets.UTF_8));
            }
        } catch (IOException never) {
            throw new UncheckedIOException(never);
        }
        return bytes.toByteArray();
    }
}
