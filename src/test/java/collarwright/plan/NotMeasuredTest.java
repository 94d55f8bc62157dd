package collarwright.plan;

import static org.assertj.core.api.Assertions.assertThat;

import collarwright.finding.Code;
import collarwright.finding.Finding;
import collarwright.finding.Level;
import collarwright.geometry.Interval;
import collarwright.job.Job;
import collarwright.testing.Jobs;
import collarwright.tooling.Cutter;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

class NotMeasuredTest {
    private static List<Finding> notes(Job job) {
        return Planner.plan(job, List.of()).findings().stream()
                .filter(f -> f.code() == Code.NOT_MEASURED)
                .toList();
    }

    private static List<String> places(Job job) {
        List<Finding> notes = notes(job);
        assertThat(notes).allMatch(f -> f.code() == Code.NOT_MEASURED && f.level() == Level.NOTE);
        return notes.stream().map(f -> f.where().text()).toList();
    }

    @Test
    void notes_allMeasured_areNone() {
        assertThat(places(Jobs.windbreak().job())).isEmpty();
    }

    @Test
    void notes_nothingMeasured_nameEverySizeThatMatters() {
        Job measured = Jobs.windbreak().job();
        Job job = Jobs.windbreak()
                .strut(Jobs.unmeasured(measured.strut().stock()))
                .collar(Jobs.unmeasured(measured.hub().collar()))
                .cutters(Jobs.saw(43, Interval.of(43), false))
                .job();
        assertThat(places(job))
                .containsExactly("strut outside diameter", "collar outside diameter", "collar wall", "rack");
        assertThat(notes(job)).allMatch(f -> f.found().contains("not measured"));
    }

    @Test
    void notes_usedCutters_areNamedWhereNotAllWereMeasured() {
        // Every other saw is measured; the holes take some of both kinds.
        List<Cutter> saws = new ArrayList<>();
        for (int half = 84; half <= 90; half++) {
            double size = half / 2.0;
            saws.add(Jobs.saw(size, Interval.of(size), half % 2 == 0));
        }
        Job job = Jobs.windbreak().cutters(saws.toArray(new Cutter[0])).job();
        Set<String> used = Planner.plan(job, List.of()).book().holesByCutter().keySet();
        List<Cutter> nominal = saws.stream()
                .filter(c -> used.contains(c.id()) && !c.measured())
                .toList();
        assertThat(nominal).isNotEmpty().hasSizeLessThan(used.size());
        assertThat(notes(job)).singleElement().satisfies(note -> {
            nominal.forEach(c -> assertThat(note.found()).contains(c.marked()));
            saws.stream()
                    .filter(c -> !nominal.contains(c))
                    .forEach(c -> assertThat(note.found())
                            .doesNotContain(" " + c.marked() + ",")
                            .doesNotContain(" " + c.marked() + ":"));
        });
    }

    @Test
    void notes_unusedCutters_areLeftAlone() {
        Job job = Jobs.windbreak()
                .cutters(Jobs.saw(20, Interval.of(20), false), Jobs.saw(43.5), Jobs.saw(44), Jobs.saw(45))
                .job();
        assertThat(places(job)).isEmpty();
    }
}
