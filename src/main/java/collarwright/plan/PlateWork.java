package collarwright.plan;

import collarwright.cutting.SheetPacker;
import collarwright.finding.Code;
import collarwright.finding.Finding;
import collarwright.finding.Where;
import collarwright.job.Job;
import collarwright.job.PlateSettings;
import collarwright.tooling.GuideSaddle;
import collarwright.tooling.IndexPlate;
import collarwright.tooling.Pattern;
import collarwright.units.Decimals;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/**
 * The index plates and saddles of a job.
 *
 * @param plates one for each pattern; none where the job asks for none
 * @param saddles one for each drill and hole saw; none where the job asks for none
 * @param findings INDEX_PLATE and SHEET_TOO_SMALL
 */
public record PlateWork(List<IndexPlate> plates, List<GuideSaddle> saddles, List<Finding> findings) {
    private static final PlateWork NONE = new PlateWork(List.of(), List.of(), List.of());
    private static final double LEAST_WEB = 2;
    private static final double LEAST_ROOM = 20;
    private static final double PINS_MORE = 6;

    /** Keeps the lists. */
    public PlateWork {
        plates = List.copyOf(plates);
        saddles = List.copyOf(saddles);
        findings = List.copyOf(findings);
    }

    /**
     * Returns the boxes of all plates and saddles that are cut.
     *
     * @param settings kerf and counts
     * @return one for each piece, plates first
     */
    List<SheetPacker.Rectangle> boxes(PlateSettings settings) {
        List<SheetPacker.Rectangle> boxes = new ArrayList<>();
        PlateSettings.Kerf kerf = settings.kerf();
        plates.forEach(p -> boxes.addAll(Collections.nCopies(settings.counts().plates(), FlatSizes.plate(p, kerf))));
        saddles.forEach(s -> boxes.addAll(Collections.nCopies(settings.counts().saddles(), FlatSizes.saddle(s, kerf))));
        return boxes;
    }

    /**
     * Plans the plates of a job.
     *
     * @param plan the plan
     * @return plates and what stands against them
     */
    public static PlateWork of(Plan plan) {
        Job job = plan.job();
        Optional<PlateSettings> settings = job.sheet().plates();
        if (settings.isEmpty()) {
            return NONE;
        }
        PlateSettings.Sizes asked = settings.get().sizes();
        double diameter = asked.diameter().orElse(2 * job.hub().body().outerRadius() + PINS_MORE * asked.pin());
        List<Finding> findings = new ArrayList<>();
        double room = diameter / 2 - 1.5 * asked.pin() - asked.bore() / 2;
        if (room < LEAST_ROOM) {
            findings.add(Finding.stop(
                    Code.INDEX_PLATE,
                    new Where.Part("index plates"),
                    mm(LEAST_ROOM) + " from the bore to the bottom of a notch, for the numbers",
                    mm(room) + " in a plate of " + mm(diameter),
                    "take a larger diameter under [plates]",
                    "or a smaller bore, or a thinner pin"));
        }
        List<GuideSaddle> saddles = settings.get().counts().saddles() == 0
                ? List.of()
                : GuideSaddle.of(plan.book().patterns(), job.hub().body().outerRadius());
        tooLarge(settings.get(), diameter).ifPresent(findings::add);
        saddles.forEach(s -> fault(settings.get(), s).ifPresent(findings::add));
        if (!findings.isEmpty()) {
            return new PlateWork(List.of(), List.of(), findings);
        }
        IndexPlate.Sizes sizes = new IndexPlate.Sizes(diameter, asked.bore(), asked.pin());
        List<IndexPlate> plates = new ArrayList<>();
        for (Pattern pattern : plan.book().patterns()) {
            IndexPlate plate = IndexPlate.of(pattern, sizes);
            plates.add(plate);
            if (plate.leastWeb() < LEAST_WEB) {
                findings.add(Finding.stop(
                        Code.INDEX_PLATE,
                        new Where.Part("pattern " + pattern.id() + " / index plate"),
                        mm(LEAST_WEB) + " between notches",
                        mm(plate.leastWeb()),
                        "take a larger diameter under [plates]",
                        "or a thinner pin"));
            }
        }
        return new PlateWork(plates, saddles, findings);
    }

    private static Optional<Finding> tooLarge(PlateSettings settings, double diameter) {
        PlateSettings.Kerf kerf = settings.kerf();
        // The lead-in may stand out on any side.
        double size = diameter + kerf.outside() + kerf.leadIn();
        SheetPacker.Stock sheet = settings.sheet();
        if (sheet.holds(new SheetPacker.Rectangle(size, size))) {
            return Optional.empty();
        }
        return Optional.of(Finding.stop(
                Code.SHEET_TOO_SMALL,
                new Where.Part("index plates"),
                "a sheet of " + mm(size + 2 * sheet.margin()) + " or more both ways: plate, lead-in, two margins",
                mm(sheet.length()) + " x " + mm(sheet.width()),
                "take a larger sheet: sheet-length, sheet-width under [plates]",
                "or smaller plates: diameter"));
    }

    private static Optional<Finding> fault(PlateSettings settings, GuideSaddle saddle) {
        PlateSettings.Kerf kerf = settings.kerf();
        Where where = new Where.Part("saddle of " + saddle.cutter().id());
        if (!FlatSizes.cuttable(saddle, kerf)) {
            return Optional.of(Finding.stop(
                    Code.INDEX_PLATE,
                    where,
                    "a kerf of edges below " + mm(saddle.radius() - saddle.width() / 2)
                            + ", so that the feet stand on the pipe",
                    mm(kerf.outside()),
                    "check kerf-outside under [plates] and its unit",
                    "or leave saddles out"));
        }
        SheetPacker.Rectangle box = FlatSizes.saddle(saddle, kerf);
        double width = box.length();
        double height = box.width();
        SheetPacker.Stock sheet = settings.sheet();
        if (sheet.holds(box)) {
            return Optional.empty();
        }
        return Optional.of(Finding.stop(
                Code.SHEET_TOO_SMALL,
                where,
                "a sheet that holds " + mm(width + 2 * sheet.margin()) + " x " + mm(height + 2 * sheet.margin())
                        + ": saddle, lead-in, two margins",
                mm(sheet.length()) + " x " + mm(sheet.width()),
                "take a larger sheet: sheet-length, sheet-width under [plates]",
                "or leave saddles out"));
    }

    private static String mm(double length) {
        return Decimals.fixed(length, 2) + " mm";
    }
}
