package collarwright.pack;

import collarwright.units.Angles;
import com.fasterxml.jackson.core.JsonEncoding;
import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.StreamWriteFeature;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;

/** Writes JSON key by key: every number finite and without −0, angles in degrees, the same bytes on every machine. */
final class JsonOut {

    // The shortest digits by the library's own rule: those of Double.toString changed from one Java version to another.
    private static final JsonFactory FACTORY = JsonFactory.builder()
            .enable(StreamWriteFeature.USE_FAST_DOUBLE_WRITER)
            .build();

    private final JsonGenerator json;
    private final RowPrinter printer;

    private JsonOut(JsonGenerator json, RowPrinter printer) {
        this.json = json;
        this.printer = printer;
    }

    /** Writes what stands between two brackets. */
    @FunctionalInterface
    interface Body {
        void write() throws IOException;
    }

    /** Writes one whole text. */
    @FunctionalInterface
    interface Root {
        void write(JsonOut out) throws IOException;
    }

    /** Writes one element of an array. */
    @FunctionalInterface
    interface Element<T> {
        void write(T element) throws IOException;
    }

    /** Makes a text with one object in it, UTF-8, with a line feed at its end. */
    static byte[] text(Root root) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream(1 << 16);
        RowPrinter printer = new RowPrinter();
        try (JsonGenerator json = FACTORY.createGenerator(bytes, JsonEncoding.UTF8)) {
            json.setPrettyPrinter(printer);
            json.writeStartObject();
            root.write(new JsonOut(json, printer));
            json.writeEndObject();
            json.writeRaw('\n');
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return bytes.toByteArray();
    }

    void text(String key, String value) throws IOException {
        json.writeStringField(key, value);
    }

    void whole(String key, long value) throws IOException {
        json.writeNumberField(key, value);
    }

    void flag(String key, boolean value) throws IOException {
        json.writeBooleanField(key, value);
    }

    void number(String key, double value) throws IOException {
        json.writeNumberField(key, finite(value));
    }

    void degrees(String key, double radians) throws IOException {
        number(key, Angles.degrees(radians));
    }

    /** Leaves the key out where there is no finite value. */
    void numberIfFinite(String key, double value) throws IOException {
        if (Double.isFinite(value)) {
            number(key, value);
        }
    }

    private static double finite(double value) {
        if (!Double.isFinite(value)) {
            throw new IllegalStateException("not a finite number: " + value);
        }
        return value + 0.0;
    }

    void numbers(String key, double... values) throws IOException {
        json.writeFieldName(key);
        printer.row();
        json.writeStartArray();
        for (double value : values) {
            json.writeNumber(finite(value));
        }
        json.writeEndArray();
    }

    void wholes(String key, int... values) throws IOException {
        json.writeFieldName(key);
        printer.row();
        json.writeStartArray();
        for (int value : values) {
            json.writeNumber(value);
        }
        json.writeEndArray();
    }

    void texts(String key, Iterable<String> values) throws IOException {
        json.writeFieldName(key);
        printer.row();
        json.writeStartArray();
        for (String value : values) {
            json.writeString(value);
        }
        json.writeEndArray();
    }

    /** An object over several lines. */
    void object(String key, Body body) throws IOException {
        json.writeObjectFieldStart(key);
        body.write();
        json.writeEndObject();
    }

    /** An object on one line. */
    void row(String key, Body body) throws IOException {
        json.writeFieldName(key);
        printer.row();
        json.writeStartObject();
        body.write();
        json.writeEndObject();
    }

    /** An array of objects, each over several lines. */
    <T> void objects(String key, Iterable<T> elements, Element<T> each) throws IOException {
        array(key, elements, each, false);
    }

    /** An array of objects, each on one line. */
    <T> void rows(String key, Iterable<T> elements, Element<T> each) throws IOException {
        array(key, elements, each, true);
    }

    private <T> void array(String key, Iterable<T> elements, Element<T> each, boolean rows) throws IOException {
        json.writeArrayFieldStart(key);
        for (T element : elements) {
            if (rows) {
                printer.row();
            }
            json.writeStartObject();
            each.write(element);
            json.writeEndObject();
        }
        json.writeEndArray();
    }
}
