package collarwright.pack;

import collarwright.drawing.Side;
import collarwright.drawing.WrapSettings;
import collarwright.drawing.WrapTemplate;
import collarwright.job.Job;
import collarwright.machining.ProgramUnits;
import collarwright.sheet.PdfSettings;
import collarwright.sheet.PdfWriter;
import collarwright.sheet.SoundSheet;
import collarwright.tooling.Pattern;
import collarwright.units.Paper;

/** Prints the templates of a pattern in every format. */
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
        String of = "emplate of pattern " + pattern.id() + " at full size: ";
        print(wrap(pattern, pieces, Side.OUTSIDE), "templates/" + pattern.id(), "wrap t" + of, taker);
        if (job.sheet().insideTemplates()) {
            String inside = "templates/" + pattern.id() + "-inside";
            print(wrap(pattern, pieces, Side.INSIDE), inside, "for the inside of the pipe, mirrored: t" + of, taker);
        }
    }

    private void print(WrapSettings settings, String base, String what, Taker taker) {
        SoundSheet sheet = SoundSheet.of(WrapTemplate.of(settings).sheet());
        taker.put(base + "-a4.pdf", what + "print at 100 % on A4", PdfWriter.print(sheet, onPaper(Paper.A4)));
        taker.put(
                base + "-letter.pdf", what + "print at 100 % on Letter", PdfWriter.print(sheet, onPaper(Paper.LETTER)));
        CutFiles.Purpose purpose =
                new CutFiles.Purpose(what, "for a plotter or a cutter of paper and card", ", for older programs");
        CutFiles.marked(job.sheet()).print(sheet, base, purpose, taker);
    }

    private PdfSettings onPaper(Paper paper) {
        return new PdfSettings(paper, job.sheet().correctionX(), job.sheet().correctionY());
    }

    private WrapSettings wrap(Pattern pattern, int pieces, Side side) {
        return new WrapSettings(
                pattern,
                job.hub().body(),
                job.hub().collar().odMeasured()
                        && (side == Side.OUTSIDE || job.hub().collar().wallMeasured()),
                job.sheet().paperThickness(),
                job.shop().programUnits() == ProgramUnits.INCH,
                new WrapSettings.OrderWords(job.title(), job.revision(), pieces),
                side,
                job.shop().strip().isPresent());
    }
}
