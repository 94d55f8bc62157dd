package collarwright.pack;

import collarwright.drawing.Cut;
import collarwright.drawing.FlatPart;
import collarwright.drawing.PlateDrawing;
import collarwright.drawing.SaddleDrawing;
import collarwright.job.PlateSettings;
import collarwright.plan.Plan;
import collarwright.plan.PlateWork;
import collarwright.tooling.GuideSaddle;
import collarwright.tooling.IndexPlate;
import collarwright.units.Decimals;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** Nests index plates and drill guides' saddles on stock sheets. */
final class PlateFiles {
    /** Where the table stands in a pack. */
    static final String TABLE = "laser/plates.csv";

    static final String PURPOSE = "which plate or saddle lies where on which sheet, and how much of the sheets is used";

    private PlateFiles() {}

    /** The sheets of a job's plates. */
    static NestFiles of(Plan plan, PlateWork work) {
        PlateSettings settings = plan.job().sheet().plates().orElseThrow();
        Nesting nesting = Nesting.of(parts(plan, work, settings), settings.sheet());
        String means = settings.material().title() + ", to be cut with a "
                + settings.process().word();
        String title = work.saddles().isEmpty() ? "Index plates" : "Index plates and saddles";
        return new NestFiles(plan, nesting, new NestFiles.Words("laser/plates", kerf(settings.kerf()), title, means));
    }

    private static List<FlatPart> parts(Plan plan, PlateWork work, PlateSettings settings) {
        PlateSettings.Kerf kerf = settings.kerf();
        Cut cut = new Cut(kerf.inside(), kerf.outside(), kerf.leadIn());
        List<FlatPart> parts = new ArrayList<>();
        for (IndexPlate plate : work.plates()) {
            FlatPart part = PlateDrawing.draw(plate, plan.job().revision(), cut);
            parts.addAll(Collections.nCopies(settings.counts().plates(), part));
        }
        for (GuideSaddle saddle : work.saddles()) {
            FlatPart part = SaddleDrawing.draw(saddle, plan.job().revision(), cut);
            parts.addAll(Collections.nCopies(settings.counts().saddles(), part));
        }
        return parts;
    }

    private static String kerf(PlateSettings.Kerf kerf) {
        return kerf.inside() + kerf.outside() > 0
                ? "-kerf-in-" + Decimals.trimmed(kerf.inside(), 3) + "mm-out-" + Decimals.trimmed(kerf.outside(), 3)
                        + "mm"
                : "";
    }
}
