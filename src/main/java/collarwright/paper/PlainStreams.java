package collarwright.paper;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSObject;
import org.apache.pdfbox.cos.COSObjectKey;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.pdfwriter.compress.CompressParameters;
import org.apache.pdfbox.pdmodel.PDDocument;

/**
 * Unpacks the streams of a PDF file. Packed bytes depend on the packing library of the machine; unpacked ones are the same
 * everywhere.
 */
final class PlainStreams {

    private PlainStreams() {}

    static byte[] of(byte[] file, long identity) throws IOException {
        try (PDDocument document = Loader.loadPDF(file)) {
            for (COSObjectKey key : document.getDocument().getXrefTable().keySet()) {
                COSObject object = document.getDocument().getObjectFromPool(key);
                COSBase value = object.getObject();
                if (value instanceof COSStream stream && stream.containsKey(COSName.FILTER)) {
                    unpack(stream);
                }
            }
            document.setDocumentId(identity);
            ByteArrayOutputStream bytes = new ByteArrayOutputStream();
            document.save(bytes, CompressParameters.NO_COMPRESSION);
            return bytes.toByteArray();
        }
    }

    private static void unpack(COSStream stream) throws IOException {
        byte[] plain;
        try (InputStream in = stream.createInputStream()) {
            plain = in.readAllBytes();
        }
        stream.removeItem(COSName.FILTER);
        stream.removeItem(COSName.DECODE_PARMS);
        try (OutputStream out = stream.createRawOutputStream()) {
            out.write(plain);
        }
    }
}
