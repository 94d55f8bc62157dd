package collarwright.testing;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.List;
import java.util.stream.StreamSupport;

/** Reads what the scripts between us and the outside programs print. */
final class Json {
    private Json() {}

    static JsonNode parse(String text) {
        try {
            return new ObjectMapper().readTree(text);
        } catch (JsonProcessingException e) {
            throw new AssertionError("not JSON: " + text, e);
        }
    }

    static List<String> texts(JsonNode list) {
        return nodes(list).stream().map(JsonNode::asText).toList();
    }

    static List<JsonNode> nodes(JsonNode list) {
        return StreamSupport.stream(list.spliterator(), false).toList();
    }
}
