package collarwright.pack;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDateTime;
import java.util.zip.CRC32;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/**
 * Packs the parts of a workbook again so that its bytes depend on nothing but what stands in it: one time for all parts, no
 * date of making, and nothing compressed, since compressed bytes differ between the libraries that Java runs on.
 */
final class FixedZip {

    private static final String PROPERTIES = "docProps/core.xml";

    // In local time, so that no time zone enters; the year is that of no file.
    private static final LocalDateTime WHEN = LocalDateTime.of(2000, 1, 1, 0, 0);

    private FixedZip() {}

    /**
     * Packs a workbook again.
     *
     * @param workbook a whole zip file
     * @param title what the workbook is about, any signs
     * @return the same parts in the same order, but for the document's properties, which say the title only
     */
    static byte[] of(byte[] workbook, String title) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream(4 * workbook.length);
        try (ZipOutputStream to = new ZipOutputStream(bytes, StandardCharsets.UTF_8)) {
            for (ZippedParts.Part part : ZippedParts.of(workbook)) {
                put(to, part.name(), part.name().equals(PROPERTIES) ? properties(title) : part.content());
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return bytes.toByteArray();
    }

    private static void put(ZipOutputStream to, String name, byte[] content) throws IOException {
        CRC32 sum = new CRC32();
        sum.update(content);
        ZipEntry part = new ZipEntry(name);
        part.setMethod(ZipEntry.STORED);
        part.setSize(content.length);
        part.setCrc(sum.getValue());
        part.setTimeLocal(WHEN);
        to.putNextEntry(part);
        to.write(content);
        to.closeEntry();
    }

    private static byte[] properties(String title) {
        StringBuilder shown = new StringBuilder();
        title.codePoints().filter(FixedZip::allowed).forEach(sign -> {
            switch (sign) {
                case '&' -> shown.append("&amp;");
                case '<' -> shown.append("&lt;");
                case '>' -> shown.append("&gt;");
                default -> shown.appendCodePoint(sign);
            }
        });
        return ("<?xml version=\"1.0\" encoding=\"UTF-8\" standalone=\"yes\"?>"
                        + "<cp:coreProperties"
                        + " xmlns:cp=\"http://schemas.openxmlformats.org/package/2006/metadata/core-properties\""
                        + " xmlns:dc=\"http://purl.org/dc/elements/1.1/\"><dc:title>" + shown
                        + "</dc:title><dc:creator>collarwright</dc:creator></cp:coreProperties>")
                .getBytes(StandardCharsets.UTF_8);
    }

    // Extensible Markup Language (XML) 1.0, fifth edition, 2008, production 2.
    private static boolean allowed(int sign) {
        return sign == '\t'
                || sign == '\n'
                || (sign >= ' ' && sign <= 0xD7FF)
                || (sign >= 0xE000 && sign <= 0xFFFD)
                || sign >= 0x10000;
    }
}
