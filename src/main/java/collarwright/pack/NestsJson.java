package collarwright.pack;

import collarwright.drawing.NestedSheet;
import collarwright.plan.Plan;
import collarwright.plan.PlateWork;
import collarwright.plan.StripWork;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

/** Writes the nested sheets of {@code plan.json}: how many, how full, how few could do, and what lies where. */
final class NestsJson {
    private final JsonOut out;

    NestsJson(JsonOut out) {
        this.out = out;
    }

    /** A nesting and what lies on it. */
    private record Named(String of, Nesting nesting) {}

    /** Writes nothing where nothing is nested. */
    void write(Plan plan, StripWork strips) throws IOException {
        List<Named> nests = new ArrayList<>();
        PlateWork plates = PlateWork.of(plan);
        if (!plates.plates().isEmpty()) {
            nests.add(new Named("plates", PlateFiles.of(plan, plates).nesting()));
        }
        StripFiles.nest(plan, strips).ifPresent(n -> nests.add(new Named("strips", n.nesting())));
        if (!nests.isEmpty()) {
            out.objects("nests", nests, this::nest);
        }
    }

    private void nest(Named named) throws IOException {
        Nesting nesting = named.nesting();
        out.text("of", named.of());
        out.whole("parts", nesting.parts());
        out.whole("sheets", nesting.sheets());
        out.whole("leastSheets", nesting.leastSheets());
        out.number("usedPercent", 100 * nesting.used());
        out.objects("layouts", nesting.layouts(), layout -> {
            out.whole("sheets", layout.sheets());
            out.rows("parts", layout.places(), this::place);
        });
    }

    private void place(NestedSheet.Place place) throws IOException {
        out.text("part", place.part().name());
        out.number("xMm", place.x());
        out.number("yMm", place.y());
        out.flag("turned", place.turned());
    }
}
