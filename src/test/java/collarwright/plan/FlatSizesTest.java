package collarwright.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import collarwright.cutting.SheetPacker.Rectangle;
import collarwright.drawing.Box;
import collarwright.drawing.Cut;
import collarwright.drawing.PlateDrawing;
import collarwright.drawing.SaddleDrawing;
import collarwright.job.PlateSettings;
import collarwright.testing.DomeJobs;
import collarwright.tooling.Cutter;
import collarwright.tooling.GuideSaddle;
import collarwright.tooling.IndexPlate;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Boxes of flat parts, held against the lines that are drawn of them. */
class FlatSizesTest {

    private static void same(Rectangle box, Box drawn, String what) {
        assertThat(box.length()).as(what).isCloseTo(drawn.width(), within(1e-9));
        assertThat(box.width()).as(what).isCloseTo(drawn.height(), within(1e-9));
    }

    @Test
    void plate_ofAnyNotches_isAsLargeAsItsLines() {
        for (long seed = 0; seed < 300; seed++) {
            Random random = new Random(seed);
            int count = 1 + random.nextInt(6);
            List<IndexPlate.Notch> notches = new ArrayList<>();
            for (int i = 0; i < count; i++) {
                double azimuth = (i + 0.8 * random.nextDouble()) * 2 * StrictMath.PI / count;
                notches.add(new IndexPlate.Notch(
                        random.nextInt(4) == 0 ? i * 2 * StrictMath.PI / count : azimuth, List.of(i + 1)));
            }
            PlateSettings.Kerf kerf = new PlateSettings.Kerf(0, 3 * random.nextDouble(), random.nextInt(2) * 6.0);
            IndexPlate plate = new IndexPlate("CA", new IndexPlate.Sizes(150 + random.nextInt(90), 20, 6), notches);

            Box drawn = PlateDrawing.draw(plate, "REV", new Cut(kerf.inside(), kerf.outside(), kerf.leadIn()))
                    .bounds();

            same(FlatSizes.plate(plate, kerf), drawn, "seed " + seed);
        }
    }

    @ParameterizedTest
    @CsvSource({"55, 0, 0", "55, 0.2, 4", "40, 6, 0", "200, 10, 5"})
    void saddle_withAKerf_isAsLargeAsItsLines(double radius, double outside, double leadIn) throws IOException {
        Cutter cutter = saddles().get(0).cutter();
        GuideSaddle saddle = new GuideSaddle(cutter, radius, 60);
        PlateSettings.Kerf kerf = new PlateSettings.Kerf(0, outside, leadIn);

        assertThat(FlatSizes.cuttable(saddle, kerf)).isTrue();
        same(
                FlatSizes.saddle(saddle, kerf),
                SaddleDrawing.draw(saddle, "REV", new Cut(0, outside, leadIn)).bounds(),
                "saddle");
    }

    // Width 48.16 mm on a radius of 30.1 mm: 24.08 + k/2 < 30.1 - k/2 for k < 6.02, by hand.
    @ParameterizedTest
    @CsvSource({"6.01, true", "6.03, false", "10, false"})
    void saddle_kerfThatTakesItsFeet_isNotCuttable(double outside, boolean good) throws IOException {
        GuideSaddle saddle = new GuideSaddle(saddles().get(0).cutter(), 30.1, 48.16);

        assertThat(FlatSizes.cuttable(saddle, new PlateSettings.Kerf(0, outside, 0)))
                .isEqualTo(good);
    }

    private static List<GuideSaddle> saddles() throws IOException {
        return PlateWork.of(Production.of(DomeJobs.read(DomeJobs.named("laser", "hen-house")), List.of())
                        .plan())
                .saddles();
    }
}
