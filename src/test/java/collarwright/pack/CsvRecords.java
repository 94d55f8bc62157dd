package collarwright.pack;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A strict reader of RFC 4180, written from its grammar (Y. Shafranovich, RFC 4180, 2005, section 2). */
final class CsvRecords {

    private final String text;
    private int at;

    private CsvRecords(String text) {
        this.text = text;
    }

    static List<List<String>> read(String text) {
        CsvRecords reader = new CsvRecords(text);
        List<List<String>> records = new ArrayList<>();
        while (reader.at < text.length()) {
            records.add(reader.record());
        }
        return records;
    }

    /** Every record under the first as a map from head to field. */
    static List<Map<String, String>> rows(String text) {
        List<List<String>> records = read(text);
        List<Map<String, String>> rows = new ArrayList<>();
        for (List<String> record : records.subList(1, records.size())) {
            Map<String, String> row = new LinkedHashMap<>();
            for (int i = 0; i < record.size(); i++) {
                row.put(records.get(0).get(i), record.get(i));
            }
            rows.add(row);
        }
        return rows;
    }

    private List<String> record() {
        List<String> fields = new ArrayList<>();
        fields.add(field());
        while (text.charAt(at) == ',') {
            at++;
            fields.add(field());
        }
        if (!text.startsWith("\r\n", at)) {
            throw new AssertionError("expected CR LF or a comma at " + at + ": " + text.substring(at));
        }
        at += 2;
        return fields;
    }

    private String field() {
        return text.charAt(at) == '"' ? escaped() : plain();
    }

    private String plain() {
        int start = at;
        while (",\r\n\"".indexOf(text.charAt(at)) < 0) {
            at++;
        }
        return text.substring(start, at);
    }

    private String escaped() {
        StringBuilder field = new StringBuilder();
        at++;
        while (true) {
            int quote = text.indexOf('"', at);
            field.append(text, at, quote);
            at = quote + 1;
            if (text.charAt(at) != '"') {
                return field.toString();
            }
            field.append('"');
            at++;
        }
    }
}
