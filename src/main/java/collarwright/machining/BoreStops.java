package collarwright.machining;

import collarwright.finding.Code;
import collarwright.finding.Finding;
import collarwright.finding.Where;
import collarwright.tooling.Cutter;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Tells why a machine cannot bore a hole. */
final class BoreStops {

    private BoreStops() {}

    /**
     * Checks one bored size on a machine for pipe.
     *
     * @param settings machine and pipe
     * @param cutter an end mill with the size that it bores
     * @return MACHINE_UNABLE and MACHINE_TRAVEL stops; empty if the machine bores it
     */
    static List<Finding> check(RotarySettings settings, Cutter cutter) {
        Machine machine = settings.machine();
        Optional<String> why = unable(machine);
        if (why.isPresent()) {
            return List.of(stop(cutter, why.get()));
        }
        double radius = (cutter.asDrilled().nominal() - cutter.size()) / 2;
        Machine.Reach across = machine.travel().across().orElseThrow();
        List<Finding> findings = new ArrayList<>();
        if (!across.holds(-radius, 0) || !across.holds(radius, 0)) {
            findings.add(Finding.stop(
                    Code.MACHINE_TRAVEL,
                    new Where.Part("cutter " + cutter.id()),
                    "Y between " + Sizes.both(across.least()) + " and " + Sizes.both(across.most()) + ", the travel of "
                            + machine.name(),
                    "Y " + Sizes.both(-radius) + " to " + Sizes.both(radius) + " round the hole",
                    "take a thicker end mill, which goes round nearer to the middle",
                    "or use a machine with more Y travel"));
        }
        return findings;
    }

    /** The stop for work that is not bored at all. */
    static Finding stop(Cutter cutter, String why) {
        return Finding.stop(
                Code.MACHINE_UNABLE,
                new Where.Part("cutter " + cutter.id()),
                "a rotary machine with a linear Y and arcs, to bore "
                        + Sizes.both(cutter.asDrilled().nominal()) + " with a "
                        + cutter.tool().marked() + " end mill",
                why,
                "add a drill or a saw that makes this hole, or write bore = \"never\" under [drilling] to see which is"
                        + " missing",
                "or use a machine that bores: its profile gives travel.y, and an A word turns its pipe");
    }

    private static Optional<String> unable(Machine machine) {
        if (machine.kind() == Machine.Kind.PRESS) {
            return Optional.of("a press cannot bore: it moves the cutter up and down only");
        }
        if (machine.rotary().form().byY()) {
            return Optional.of(machine.name() + " turns the pipe by its Y word, so that it has no linear Y");
        }
        if (machine.travel().across().isEmpty()) {
            return Optional.of(machine.name() + " has no travel.y in its profile: its Y stays at 0");
        }
        return machine.post().words().containsAll(ProgramWords.ARCS)
                ? Optional.empty()
                : Optional.of("the programs of " + machine.name() + " have no "
                        + String.join(", no ", ProgramWords.ARCS) + " (post.arcs, post.words)");
    }
}
