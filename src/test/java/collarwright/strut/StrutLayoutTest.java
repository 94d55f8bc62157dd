package collarwright.strut;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import collarwright.dome.Dome;
import collarwright.dome.DomeSettings;
import collarwright.geometry.Interval;
import collarwright.geometry.Vec3;
import collarwright.hub.Hubs;
import collarwright.stock.Material;
import collarwright.stock.RoundStock;
import collarwright.testing.Seeds;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class StrutLayoutTest {
    private static final StrutLayout.Clearance RING = new StrutLayout.Clearance(45, 2);

    private static StrutSettings strut(Optional<TieHole> tieHole) {
        Material pvc = new Material("pvc", "PVC-U", true, 1400);
        RoundStock pipe = new RoundStock(
                "p",
                "pipe",
                pvc,
                new Interval(39.9, 40, 40.2),
                Optional.of(Interval.of(3)),
                true,
                true,
                0,
                List.of(),
                "our choice, no source");
        return new StrutSettings(pipe, tieHole);
    }

    private static Hubs hubs(int frequency, int rows) {
        return Hubs.of(Dome.of(new DomeSettings(frequency, rows)));
    }

    private static StrutLayout layout(Hubs hubs, SizeRule rule) {
        return StrutLayout.of(hubs, rule, strut(Optional.of(new TieHole(6, 18))), RING);
    }

    @Test
    void of_radius_cutsChordsLessTheirSetbacks() {
        StrutLayout layout = layout(hubs(3, 5), new SizeRule.Radius(2600));
        assertThat(layout.radius()).isEqualTo(2600);
        assertThat(layout.types()).extracting(StrutType::id).containsExactly("SA", "SB", "SC");
        assertThat(layout.types()).extracting(StrutType::count).containsExactly(30, 55, 80);
        // By hand for SB: chord factor .4035482, arcsin(.2017741) = 11.6407°, setback 52.13.
        StrutType b = layout.types().get(1);
        assertThat(b.chord()).isCloseTo(0.4035482 * 2600, within(2e-4));
        assertThat(b.a().setback()).isCloseTo(52.13, within(0.5e-2));
        assertThat(b.cut()).isCloseTo(b.chord() - 2 * b.a().setback(), within(1e-9));
        assertThat(b.a()).isEqualTo(b.b());
        assertThat(b.a().drill()).contains(18.0);
        assertThat(b.twist()).isZero();
    }

    @Test
    void of_noTieHole_drillsNone() {
        StrutLayout layout = StrutLayout.of(hubs(2, 3), new SizeRule.Radius(2600), strut(Optional.empty()), RING);
        assertThat(layout.types()).allMatch(t -> t.a().drill().isEmpty());
    }

    @Test
    void of_eachRule_meetsItsSize() {
        Seeds.each(40, draw -> {
            int frequency = draw.whole(1, 6);
            Hubs hubs = hubs(frequency, draw.whole(1, 3 * frequency - 1));
            Dome dome = hubs.dome();
            double size = draw.between(2000, 20_000);
            int foot = dome.firstOfTier(dome.tierCount() - 1);

            double floor = layout(hubs, new SizeRule.FloorDiameter(size)).radius();
            double widest = 0;
            double lowest = 1;
            for (int node = foot; node < dome.nodeCount(); node++) {
                Vec3 v = dome.node(node);
                widest = StrictMath.max(widest, StrictMath.hypot(v.x(), v.y()));
                lowest = StrictMath.min(lowest, v.z());
            }
            assertThat(2 * floor * widest).isCloseTo(size, within(1e-9 * size));

            double high = layout(hubs, new SizeRule.Height(size)).radius();
            assertThat(high - high * lowest).isCloseTo(size, within(1e-9 * size));

            StrutLayout longest = layout(hubs, new SizeRule.LongestStrut(size));
            assertThat(longest.types().stream()
                            .mapToDouble(StrutType::cut)
                            .max()
                            .orElseThrow())
                    .isCloseTo(size, within(1e-9 * size));
        });
    }

    // Setbacks differ from type to type, so in a small dome the longest chord need not be cut longest by the same much.
    @Test
    void of_longestStrut_countsTheCutAndNotTheChord() {
        Hubs hubs = hubs(3, 5);
        StrutLayout layout = layout(hubs, new SizeRule.LongestStrut(1000));
        assertThat(layout.types()).allMatch(t -> t.cut() <= 1000 + 1e-9).anyMatch(t -> t.cut() > 1000 - 1e-9);
        assertThat(layout.types().get(2).chord()).isGreaterThan(1100);
    }

    @Test
    void of_wholeSphere_hasAHeightAndNoFloor() {
        Hubs hubs = hubs(2, 6);
        assertThat(layout(hubs, new SizeRule.Height(5000)).radius()).isEqualTo(2500);
        assertThatIllegalArgumentException().isThrownBy(() -> layout(hubs, new SizeRule.FloorDiameter(5000)));
    }

    @Test
    void of_tooSmallADome_givesCutsOfNothingForACheckToFind() {
        assertThat(layout(hubs(3, 5), new SizeRule.Radius(100)).types()).allMatch(t -> t.cut() < 0);
    }

    @Test
    void of_tinyAndHugeSizes_stayFinite() {
        assertThat(layout(hubs(3, 5), new SizeRule.Radius(1e-300)).types()).allMatch(t -> t.cut() < -90);
        assertThat(layout(hubs(3, 5), new SizeRule.Radius(1e300)).types())
                .allMatch(t -> Double.isFinite(t.cut()) && t.cut() > 1e299);
    }
}
