package collarwright.plan;

import static org.assertj.core.api.Assertions.assertThat;

import collarwright.finding.Code;
import collarwright.finding.Finding;
import collarwright.finding.Level;
import collarwright.geometry.Interval;
import collarwright.job.Job;
import collarwright.testing.Jobs;
import java.util.List;
import org.junit.jupiter.api.Test;

class NotMeasuredTest {
    private static List<String> places(Job job) {
        List<Finding> notes = NotMeasured.notes(job);
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
        assertThat(NotMeasured.notes(job)).allMatch(f -> f.found().contains("not measured"));
    }

    @Test
    void notes_someCuttersMeasured_leaveTheRackAlone() {
        Job job = Jobs.windbreak()
                .cutters(Jobs.saw(43, Interval.of(43), false), Jobs.saw(43.5))
                .job();
        assertThat(places(job)).isEmpty();
    }
}
