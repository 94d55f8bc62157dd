package collarwright.rehearsal;

import collarwright.machining.BedSettings;
import collarwright.machining.BenchProgram;
import collarwright.machining.EndTask;
import java.util.List;
import java.util.Map;

/**
 * A printed program for the end of a strut beside what it is held against.
 *
 * @param file the program with its plan
 * @param bench what its text does
 * @param notes the comment that stands in front of a line, by line
 */
record EndProof(BenchProgram<EndTask> file, BenchProof bench, Map<Integer, String> notes) {

    EndProof {
        notes = Map.copyOf(notes);
    }

    /** Heights are worked out anew from the thinnest and the thickest strut in every seat. */
    static EndProof of(
            BenchProgram<EndTask> file, BedSettings settings, List<Event> events, Map<Integer, String> notes) {
        List<SeatedStrut> struts = SeatedStrut.all(settings.bar().stock());
        double top = struts.stream().mapToDouble(SeatedStrut::crown).max().orElseThrow();
        double low = struts.stream().mapToDouble(SeatedStrut::lowest).min().orElseThrow();
        double floor =
                -settings.bar().stock().od().nominal() / 2 - settings.bed().under();
        double clear = top
                + settings.bed().clampHeight()
                + settings.machine().travel().clearGap()
                + settings.drill().lead();
        return new EndProof(
                file,
                new BenchProof(
                        settings.machine(),
                        settings.cuts().units(),
                        new BenchProof.Tool(settings.drill(), file.task().cut(), false),
                        new BenchProof.Levels(top, low, floor, clear, file.lift()),
                        events),
                notes);
    }

    List<Event> events() {
        return bench.events();
    }

    List<DrilledHole> holes() {
        return bench.holes();
    }
}
