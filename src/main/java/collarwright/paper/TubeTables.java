package collarwright.paper;

import collarwright.machining.SetupSheet;
import collarwright.machining.TubeCutter;
import collarwright.picture.Figures;
import collarwright.units.Decimals;
import java.util.ArrayList;
import java.util.List;

/** The programs of a tube cutter on its setup sheet. */
final class TubeTables {

    private TubeTables() {}

    static Grid steps(SetupSheet setup, TubeCutter tube, Figures figures) {
        List<List<Cell>> rows = new ArrayList<>();
        for (SetupSheet.Step step : setup.steps()) {
            rows.add(List.of(
                    Cell.strong(step.file() + (step.airFile().isPresent() ? "" : "\nno air cut: too little Z travel")),
                    Cell.of(tube.process().word() + "\nkerf " + figures.size(tube.kerf())),
                    Cell.of(figures.length(step.cut().feedMmPerMin()) + "/min"),
                    Cell.of(figures.size(tube.heights().pierce()) + "\n"
                            + Decimals.fixed(tube.start().pierceSeconds(), 2) + " s"),
                    Cell.of(figures.size(tube.heights().cut())),
                    Cell.of(figures.size(step.clear())),
                    Cell.of(step.operations() + "\n"
                            + SetupPages.time(step.effort().seconds())),
                    Cell.tick()));
        }
        return new Grid(
                "Speed over the pipe's outside; pierce and cut: the tip above the crown; clear Z from the rotary axis; time for"
                        + " one stick; in the air first: the file of the same name with -air",
                List.of(
                        Column.words("program"),
                        Column.words("cutter"),
                        Column.numbers("speed"),
                        Column.numbers("pierce"),
                        Column.numbers("cut"),
                        Column.numbers("clear Z"),
                        Column.numbers("cuts, time"),
                        Column.marks("done")),
                rows);
    }
}
