package collarwright.testing;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import java.util.List;

/**
 * Whether people can use a page who see, hear or move otherwise: the rules of axe-core, run in Chromium.
 *
 * <p>Source of the rules: W3C, Web Content Accessibility Guidelines 2.2, 2023, levels A and AA, and what axe-core adds as
 * best practices.
 */
public final class Axe {
    private Axe() {}

    /**
     * What was found.
     *
     * @param width of the page as laid out, CSS pixels: more than the window's means sideways scrolling
     * @param passed how many rules had something to look at and found nothing
     * @param violations rule, weight and place of everything that is wrong
     * @param incomplete the same of what the program could not decide
     */
    public record Reading(double width, int passed, List<String> violations, List<String> incomplete) {
        /** Copies the lists. */
        public Reading {
            violations = List.copyOf(violations);
            incomplete = List.copyOf(incomplete);
        }
    }

    /**
     * Looks at a page.
     *
     * @param file the page
     * @param widthPixels of the window
     */
    public static Reading read(Path file, int widthPixels) {
        JsonNode told = NodeScript.run(
                "page-axe.mjs", List.of(file.toAbsolutePath().toString(), Integer.toString(widthPixels)));
        return new Reading(
                told.get("width").asDouble(),
                told.get("passed").asInt(),
                rules(told.get("violations")),
                rules(told.get("incomplete")));
    }

    private static List<String> rules(JsonNode rules) {
        return Json.nodes(rules).stream()
                .flatMap(rule -> Json.texts(rule.get("nodes")).stream()
                        .map(place -> rule.get("id").asText() + " ("
                                + rule.get("impact").asText() + "): " + place))
                .toList();
    }
}
