package collarwright.pack;

import collarwright.drawing.Sheet;
import collarwright.finding.Finding;
import collarwright.finding.JobException;
import collarwright.job.SheetSettings;
import collarwright.sheet.DxfFlavour;
import collarwright.sheet.DxfOutlines;
import collarwright.sheet.DxfWriter;
import collarwright.sheet.FileLint;
import collarwright.sheet.LayerMap;
import collarwright.sheet.SvgWriter;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** Prints a sheet as SVG and both kinds of DXF, and reads each back before it goes into a pack. */
final class CutFiles {
    private final LayerMap map;
    private final double hairline;

    private CutFiles(LayerMap map, double hairline) {
        this.map = map;
        this.hairline = hairline;
    }

    /** Files for a cutter, without marks and notes where the job's layers say so. */
    static CutFiles of(SheetSettings settings) {
        return new CutFiles(LayerMaps.of(settings.layers()), settings.hairline());
    }

    /** Templates live by their marks, so they have them always. */
    static CutFiles marked(SheetSettings settings) {
        return new CutFiles(LayerMaps.of(settings.layers()).whole(), settings.hairline());
    }

    /**
     * Prints a sheet.
     *
     * @param sheet the drawing
     * @param base path without ending
     * @param what purpose, to which the format is added
     * @param taker takes the files
     * @throws JobException SHEET_FAULT if a file read back is not sound: a fault of the program
     */
    void print(Sheet sheet, String base, Purpose what, TemplateFiles.Taker taker) {
        put(base + ".svg", what.words() + what.svg(), SvgWriter.print(sheet, hairline, map), taker);
        put(
                base + "-r2000.dxf",
                what.words() + "DXF R2000, closed polylines",
                DxfWriter.print(sheet, DxfFlavour.R2000, DxfOutlines.POLYLINES, map),
                taker);
        put(
                base + "-r12.dxf",
                what.words() + "DXF R12, lines and arcs" + what.r12(),
                DxfWriter.print(sheet, DxfFlavour.R12, DxfOutlines.LINES_AND_ARCS, map),
                taker);
    }

    /**
     * What files are for.
     *
     * @param words of all of them, such as {@code plates: }
     * @param svg added for the SVG
     * @param r12 added after the words for the older DXF
     */
    record Purpose(String words, String svg, String r12) {
        static Purpose of(String words) {
            return new Purpose(words, "SVG", "");
        }
    }

    private void put(String path, String purpose, String text, TemplateFiles.Taker taker) {
        List<Finding> findings = FileLint.check(path, text, map).findings();
        if (!findings.isEmpty()) {
            throw new JobException(findings);
        }
        taker.put(path, purpose, text.getBytes(StandardCharsets.UTF_8));
    }
}
