package collarwright.pack;

import collarwright.machining.ProgramFile;
import collarwright.paper.TrialSheet;
import collarwright.plan.TrialLayout;
import collarwright.tooling.Hole;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;

/** Makes every file of a trial piece in memory: record sheet, wrap template, programs, and the rows to fill in. */
public final class TrialContents {

    /** The rows to fill in. */
    static final String ROWS = "rows.csv";

    /** Readings of each hole. Our choice, no source. */
    private static final int READINGS = 3;

    private static final int MM_DECIMALS = 3;

    private TrialContents() {}

    /**
     * Makes the files.
     *
     * @param layout a trial piece that nothing stops
     * @return path in the folder → bytes, in the order in which a person meets them
     */
    public static Map<String, byte[]> of(TrialLayout layout) {
        Map<String, byte[]> files = new LinkedHashMap<>();
        files.put("trial.pdf", TrialSheet.print(layout));
        files.put(ROWS, rows(layout).csv(layout.job().sheet().csv()));
        new TemplateFiles(layout.job()).print(layout.pattern(), 1, (path, purpose, bytes) -> files.put(path, bytes));
        for (ProgramFile program : layout.rotary().programs()) {
            files.put(PackContents.path(program), program.text().getBytes(StandardCharsets.UTF_8));
        }
        return files;
    }

    private static Table rows(TrialLayout layout) {
        TableBuilder table = new TableBuilder("hole", "cutter", "as-drilled-mm", "strut-mm", "measured-deg");
        double strut = layout.job().strut().stock().od().nominal();
        for (Hole hole : layout.pattern().holes()) {
            for (int i = 0; i < READINGS; i++) {
                table.whole(hole.number())
                        .text(hole.cutter().id())
                        .empty()
                        .number(strut, MM_DECIMALS)
                        .empty()
                        .endRow();
            }
        }
        return table.table();
    }
}
