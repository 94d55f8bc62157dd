package collarwright.machining;

import collarwright.finding.Code;
import collarwright.finding.Finding;
import collarwright.finding.Where;
import collarwright.units.Decimals;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * How far a stick may stand out of the jaws before its free end has to be supported. A rule of the shop, no load rating:
 * nobody works out here what a pipe bears.
 */
public final class FreeEnd {

    /**
     * Outside diameters that a stick may stand out without a support, where the profile says nothing else: common practice,
     * no source.
     */
    static final int DIAMETERS = 4;

    private FreeEnd() {}

    /**
     * Returns how far a stick may stand out.
     *
     * @param settings machine and pipe
     * @return the profile's {@code rotary.longest-free}, mm; else a multiple of the outside diameter; empty for a tube cutter
     *     whose profile says nothing, since nothing presses on the pipe there
     */
    public static Optional<Double> limit(RotarySettings settings) {
        Optional<Double> own = settings.machine().rotary().longestFree();
        return own.isPresent() || settings.machine().tube().isPresent()
                ? own
                : Optional.of(DIAMETERS * 2 * settings.work().body().outerRadius());
    }

    /**
     * Looks for sticks that stand out further.
     *
     * @return one warning for all of them, about the longest
     */
    static List<Finding> check(RotarySettings settings, List<Load> loads) {
        Optional<Double> limit = limit(settings);
        double chuck = settings.machine().rotary().chuckLength();
        List<Load> longer = loads.stream()
                .filter(load ->
                        limit.filter(l -> beyond(load.stickLength() - chuck, l)).isPresent())
                .toList();
        if (longer.isEmpty()) {
            return List.of();
        }
        Load worst = longer.stream()
                .max(Comparator.comparingDouble(Load::stickLength))
                .orElseThrow();
        return List.of(Finding.warn(
                Code.FREE_END,
                new Where.Part(
                        "stick " + worst.id() + (longer.size() > 1 ? " and " + (longer.size() - 1) + " more" : "")),
                "a stick that stands out of the jaws by " + Sizes.both(limit.orElseThrow()) + " or less, "
                        + rule(settings),
                "it stands out " + Sizes.both(worst.stickLength() - chuck),
                "support the free end (steady), clear of the holes, so that it neither bends nor chatters",
                "or make sticks shorter: rotary.longest-stick in the machine's profile",
                "or write rotary.longest-free in it, if you know how far your pipe may stand out"));
    }

    /** A note for the setup sheet of one stick; empty where it stands out little. */
    static Optional<String> note(RotarySettings settings, Load load) {
        double out = load.stickLength() - settings.machine().rotary().chuckLength();
        return limit(settings)
                .filter(l -> beyond(out, l))
                .map(l -> "Support the free end (steady): the stick stands out " + Sizes.in(settings.units(), out)
                        + ", more than " + Sizes.in(settings.units(), l) + ", " + rule(settings)
                        + ". The steady stays clear of the holes and of the cutter, and lets the pipe turn.");
    }

    private static boolean beyond(double out, double limit) {
        return out > limit + 1e-6;
    }

    private static String rule(RotarySettings settings) {
        return settings.machine().rotary().longestFree().isPresent()
                ? "by the machine's profile (rotary.longest-free)"
                : Decimals.fixed(DIAMETERS, 0) + " times the outside diameter (common practice, no source)";
    }
}
