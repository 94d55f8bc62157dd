package collarwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import collarwright.finding.Code;
import collarwright.finding.Finding;
import collarwright.finding.Where;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class FindingPrinterTest {

    private static final Finding STOP = Finding.stop(
            Code.JOB_BAD_LENGTH,
            new Where.Text("job.toml", 12, 3),
            "hub.width: a length above 0",
            "\"50 mm/s\"",
            "write 50 mm",
            "or 2 in");

    private static final Finding WARN =
            Finding.warn(Code.HOLE_SLACK, new Where.Part("pattern CA / hole 3"), "at most 2°", "2.4°", "add a cutter");

    private static final Finding NOTE =
            Finding.note(Code.NOT_MEASURED, new Where.Part("collar wall"), "a measured size", "nominal", "measure it");

    @Test
    void print_oneFinding_hasPlaceExpectedFoundAndHints() {
        assertThat(FindingPrinter.print(List.of(STOP))).isEqualTo("""
                        STOP  job.toml:12:3  JOB_BAD_LENGTH
                          expected  hub.width: a length above 0
                          found     "50 mm/s"
                          do        write 50 mm
                          do        or 2 in
                        """);
    }

    @Test
    void print_several_countsThem() {
        String text = FindingPrinter.print(List.of(STOP, WARN, WARN, NOTE));
        assertThat(text).endsWith("\n1 stop, 2 warnings, 1 note\n").contains("WARN  pattern CA / hole 3  HOLE_SLACK\n");
        assertThat(FindingPrinter.print(List.of())).isEmpty();
        assertThat(FindingPrinter.summary(List.of())).isEqualTo("no findings");
        assertThat(FindingPrinter.summary(List.of(STOP, STOP))).isEqualTo("2 stops");
    }

    @Test
    void print_controlCharacters_doNotReachTheTerminal() {
        Finding nasty = Finding.stop(Code.PACK_FOREIGN, new Where.Path("a\u001b[2Jb"), "x\ny", "\u0007\u202e", "do it");
        String text = FindingPrinter.print(List.of(nasty));
        assertThat(text.chars()).allMatch(c -> c == '\n' || (c >= 32 && c != 0x202e));
        assertThat(text.lines()).hasSize(4);
    }

    @Test
    void print_manyOfOneKind_tellsTheFirstInFullAndThePlacesOfTheRest() {
        List<Finding> many = new ArrayList<>();
        for (int i = 1; i <= 12; i++) {
            many.add(Finding.warn(
                    Code.HOLE_SLACK,
                    new Where.Part("pattern C" + i),
                    i == 2 ? "at most 3°" : "at most 2°",
                    i + "°",
                    "do"));
        }
        String text = FindingPrinter.print(many);
        assertThat(text).startsWith("""
                        WARN  pattern C1  HOLE_SLACK
                          expected  at most 2°
                          found     1°
                          do        do
                          also      pattern C2: 2° (expected at most 3°)
                          also      pattern C3: 3°
                        """);
        assertThat(text).endsWith("""
                          also      pattern C9: 9°
                          also      3 more; check --json lists all
                        12 warnings
                        """);
        assertThat(FindingPrinter.print(many.subList(0, 3)).lines()).hasSize(13);
    }
}
