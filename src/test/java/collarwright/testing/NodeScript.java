package collarwright.testing;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;

/** Runs one of our scripts on Node and reads the JSON that it prints. */
public final class NodeScript {
    private NodeScript() {}

    /** Runs a script of {@code .ci/checkers} and reads the JSON that it prints. */
    public static JsonNode run(String script, List<String> words) {
        List<String> command = new ArrayList<>();
        command.add("node");
        command.add(ProjectFolder.checkerScript(script).toString());
        command.addAll(words);
        return Json.parse(Run.of(command).orFail().out());
    }
}
