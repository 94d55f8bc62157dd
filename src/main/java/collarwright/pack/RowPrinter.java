package collarwright.pack;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.PrettyPrinter;
import java.io.IOException;

/**
 * Lays out JSON for people and for line-by-line comparison: two spaces for every level, except that an object or array
 * announced as a row stands on one line with all that is in it. Lines end in a line feed on every machine.
 */
final class RowPrinter implements PrettyPrinter {

    private int depth;
    private int flat;
    private boolean announced;

    /** Puts the next object or array on one line. */
    void row() {
        announced = true;
    }

    @Override
    public void writeRootValueSeparator(JsonGenerator json) throws IOException {
        json.writeRaw('\n');
    }

    @Override
    public void writeStartObject(JsonGenerator json) throws IOException {
        start(json, '{');
    }

    @Override
    public void writeStartArray(JsonGenerator json) throws IOException {
        start(json, '[');
    }

    private void start(JsonGenerator json, char bracket) throws IOException {
        json.writeRaw(bracket);
        if (announced || flat > 0) {
            flat++;
        } else {
            depth++;
        }
        announced = false;
    }

    @Override
    public void beforeObjectEntries(JsonGenerator json) throws IOException {
        newLine(json);
    }

    @Override
    public void beforeArrayValues(JsonGenerator json) throws IOException {
        newLine(json);
    }

    @Override
    public void writeObjectFieldValueSeparator(JsonGenerator json) throws IOException {
        json.writeRaw(": ");
    }

    @Override
    public void writeObjectEntrySeparator(JsonGenerator json) throws IOException {
        comma(json);
    }

    @Override
    public void writeArrayValueSeparator(JsonGenerator json) throws IOException {
        comma(json);
    }

    private void comma(JsonGenerator json) throws IOException {
        json.writeRaw(flat > 0 ? ", " : ",");
        newLine(json);
    }

    @Override
    public void writeEndObject(JsonGenerator json, int entries) throws IOException {
        end(json, entries, '}');
    }

    @Override
    public void writeEndArray(JsonGenerator json, int values) throws IOException {
        end(json, values, ']');
    }

    private void end(JsonGenerator json, int inside, char bracket) throws IOException {
        if (flat > 0) {
            json.writeRaw(bracket);
            flat--;
            return;
        }
        depth--;
        if (inside > 0) {
            newLine(json);
        }
        json.writeRaw(bracket);
    }

    private void newLine(JsonGenerator json) throws IOException {
        if (flat == 0) {
            json.writeRaw('\n');
            for (int level = 0; level < depth; level++) {
                json.writeRaw("  ");
            }
        }
    }
}
