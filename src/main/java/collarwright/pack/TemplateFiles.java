package collarwright.pack;

import collarwright.drawing.Sheet;
import collarwright.drawing.WrapSettings;
import collarwright.drawing.WrapTemplate;
import collarwright.job.Job;
import collarwright.machining.ProgramUnits;
import collarwright.sheet.DxfFlavour;
import collarwright.sheet.DxfOutlines;
import collarwright.sheet.DxfWriter;
import collarwright.sheet.PdfSettings;
import collarwright.sheet.PdfWriter;
import collarwright.sheet.SvgWriter;
import collarwright.tooling.Pattern;
import collarwright.units.Paper;
import java.nio.charset.StandardCharsets;

/** Prints the wrap template of a pattern in every format. */
final class TemplateFiles {

    private final Job job;

    TemplateFiles(Job job) {
        this.job = job;
    }

    /** Takes a file of a folder. */
    interface Taker {
        void put(String path, String purpose, byte[] bytes);
    }

    void print(Pattern pattern, int pieces, Taker taker) {
        Sheet sheet = WrapTemplate.of(wrap(pattern, pieces)).sheet();
        String base = "templates/" + pattern.id();
        String what = "wrap template of pattern " + pattern.id() + " at full size: ";
        taker.put(base + "-a4.pdf", what + "print at 100 % on A4", PdfWriter.print(sheet, onPaper(Paper.A4)));
        taker.put(
                base + "-letter.pdf", what + "print at 100 % on Letter", PdfWriter.print(sheet, onPaper(Paper.LETTER)));
        taker.put(
                base + ".svg",
                what + "for a plotter or a cutter of paper and card",
                bytes(SvgWriter.print(sheet, job.sheet().hairline())));
        taker.put(
                base + "-r2000.dxf",
                what + "DXF R2000, closed polylines",
                bytes(DxfWriter.print(sheet, DxfFlavour.R2000, DxfOutlines.POLYLINES)));
        taker.put(
                base + "-r12.dxf",
                what + "DXF R12, lines and arcs, for older programs",
                bytes(DxfWriter.print(sheet, DxfFlavour.R12)));
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    private PdfSettings onPaper(Paper paper) {
        return new PdfSettings(paper, job.sheet().correctionX(), job.sheet().correctionY());
    }

    private WrapSettings wrap(Pattern pattern, int pieces) {
        return new WrapSettings(
                pattern,
                job.hub().body(),
                job.hub().collar().odMeasured(),
                job.sheet().paperThickness(),
                job.shop().programUnits() == ProgramUnits.INCH,
                new WrapSettings.OrderWords(job.title(), job.revision(), pieces));
    }
}
