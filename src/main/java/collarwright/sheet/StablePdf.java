package collarwright.sheet;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.zip.CRC32;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDocument;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSObjectKey;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.pdfwriter.compress.CompressParameters;
import org.apache.pdfbox.pdmodel.PDDocument;

/**
 * Turns a PDF document into bytes that are the same on every machine and at every time: no date, an id that comes from
 * the document's name, and nothing compressed, because compression differs between machines.
 */
public final class StablePdf {
    private StablePdf() {}

    /**
     * Writes a document. It is used up: fonts are cut down to the letters used, and the document is closed.
     *
     * @param document a finished document without dates
     * @param name what tells this document from others, such as title, revision and paper
     * @return the file
     * @throws IOException never by the way of files; by the PDF library if the document is broken
     */
    public static byte[] bytes(PDDocument document, String name) throws IOException {
        long id = id(name);
        byte[] compressed = save(document, id);
        document.close();
        try (PDDocument again = Loader.loadPDF(compressed)) {
            unpack(again.getDocument());
            return save(again, id);
        }
    }

    private static byte[] save(PDDocument document, long id) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        document.setDocumentId(id);
        document.save(out, CompressParameters.NO_COMPRESSION);
        return out.toByteArray();
    }

    private static long id(String name) {
        CRC32 sum = new CRC32();
        sum.update(name.getBytes(StandardCharsets.UTF_8));
        return sum.getValue();
    }

    private static void unpack(COSDocument document) throws IOException {
        for (COSObjectKey key :
                document.getXrefTable().keySet().stream().sorted().toList()) {
            COSBase object = document.getObjectFromPool(key).getObject();
            if (object instanceof COSStream stream && stream.getFilters() != null) {
                byte[] plain;
                try (InputStream in = stream.createInputStream()) {
                    plain = in.readAllBytes();
                }
                // A stream packs what is written to it by the filters that it names.
                stream.removeItem(COSName.FILTER);
                stream.removeItem(COSName.DECODE_PARMS);
                try (OutputStream out = stream.createOutputStream()) {
                    out.write(plain);
                }
            }
        }
    }
}
