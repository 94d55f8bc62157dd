package collarwright.hub;

import collarwright.dome.Dome;
import collarwright.dome.DomeSettings;
import java.util.stream.Stream;

/** Domes that laws are tried on: caps, portions on both sides of the equator, whole spheres. */
final class SomeDomes {

    private SomeDomes() {}

    static Hubs hubs(int frequency, int rows) {
        return Hubs.of(Dome.of(new DomeSettings(frequency, rows)));
    }

    static Stream<Hubs> all() {
        return Stream.of(
                        new DomeSettings(1, 1),
                        new DomeSettings(1, 2),
                        new DomeSettings(1, 3),
                        new DomeSettings(2, 3),
                        new DomeSettings(2, 6),
                        new DomeSettings(3, 4),
                        new DomeSettings(3, 5),
                        new DomeSettings(3, 9),
                        new DomeSettings(4, 6),
                        new DomeSettings(4, 7),
                        new DomeSettings(4, 12),
                        new DomeSettings(5, 7),
                        new DomeSettings(5, 8),
                        new DomeSettings(5, 15),
                        new DomeSettings(6, 9),
                        new DomeSettings(6, 18),
                        new DomeSettings(7, 20),
                        new DomeSettings(8, 12),
                        new DomeSettings(12, 36),
                        new DomeSettings(15, 22))
                .map(s -> Hubs.of(Dome.of(s)));
    }
}
