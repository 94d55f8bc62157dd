package collarwright.testing;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;

/** The Chromium browser, steered by playwright: what a person would see and measure on the screen or on paper. */
public final class Chromium {
    private Chromium() {}

    /**
     * An SVG file as the browser lays it out.
     *
     * @param pageWidth mm at 96 pixels an inch
     * @param pageHeight mm
     * @param boxes of every element with an id, strokes left out, mm from the page's top left corner, y down
     * @param complaints what stood in the console; empty for a sound file
     */
    public record Drawing(double pageWidth, double pageHeight, Map<String, Box> boxes, List<String> complaints) {}

    /**
     * A line of text as laid out.
     *
     * @param text its characters
     * @param box in CSS pixels from the top left corner of the page
     * @param sizePixels font size in CSS pixels (11 pt are 14.67)
     */
    public record Text(String text, Box box, double sizePixels) {}

    /**
     * A page as laid out at one width.
     *
     * @param width of all there is, CSS pixels: more than asked for means sideways scrolling
     * @param height of all there is, CSS pixels
     * @param texts every line of visible text
     * @param requests every address asked for beside the page itself; only the folder's own files are served
     * @param complaints what stood in the console, and files not found
     */
    public record Page(double width, double height, List<Text> texts, List<String> requests, List<String> complaints) {}

    /** Measures an SVG file. */
    public static Drawing measure(Path svg) {
        JsonNode told = NodeScript.run("svg-measure.mjs", List.of(svg.toString()));
        return new Drawing(
                told.get("page").get(0).asDouble(),
                told.get("page").get(1).asDouble(),
                SvgElements.boxes(told.get("boxes")),
                Json.texts(told.get("complaints")));
    }

    /**
     * Opens a page (HTML or SVG) without a network, and takes a picture of all of it.
     *
     * @param file the page
     * @param widthPixels of the window, such as 390 for a phone
     * @param picture the PNG file to write
     */
    public static Page look(Path file, int widthPixels, Path picture) {
        JsonNode told = NodeScript.run(
                "page-look.mjs", List.of(file.toAbsolutePath().toString(), widthPixels + "", picture.toString()));
        return new Page(
                told.get("width").asDouble(),
                told.get("height").asDouble(),
                Json.nodes(told.get("texts")).stream()
                        .map(text -> new Text(
                                text.get("text").asText(),
                                Box.from(text.get("box")),
                                text.get("size").asDouble()))
                        .toList(),
                Json.texts(told.get("requests")),
                Json.texts(told.get("complaints")));
    }

    /**
     * Prints a page as PDF, as a person would.
     *
     * @param file the page
     * @param format A4 or Letter
     * @param pdf the file to write
     */
    public static void print(Path file, String format, Path pdf) {
        NodeScript.run("page-print.mjs", List.of(file.toAbsolutePath().toString(), format, pdf.toString()));
    }
}
