package collarwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import collarwright.collar.RoundHole;
import collarwright.testing.Box;
import collarwright.testing.Checker;
import collarwright.testing.Mutool;
import collarwright.testing.NeedsChecker;
import collarwright.testing.Poppler;
import collarwright.testing.ProjectFolder;
import collarwright.units.Decimals;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A trial piece from its layout to a job that counts on it, as a person types it. */
class TrialCommandTest {

    // The orchard's collar: outside 110.2 mm, wall 8.75 mm, struts of 20.05 mm.
    private static final double MIDDLE = 55.1 - 8.75 / 2;
    private static final double STRUT = 20.05;

    @TempDir
    private Path folder = Path.of("unset");

    private Path job = Path.of("unset");

    @BeforeEach
    void orchard() throws IOException {
        Path place = Files.createDirectory(folder.resolve("Größe é 1"));
        job = place.resolve("orchard.toml");
        Files.copy(ProjectFolder.top().resolve("output-samples/orchard-net/job.toml"), job);
    }

    private Path beside(String name) {
        return job.resolveSibling(name);
    }

    private Path laidOut() {
        CommandRun run = CommandRun.of("trial", job.toString());
        assertThat(run.code()).as(run.err()).isZero();
        assertThat(run.out()).contains("one collar with 8 holes", "trial.pdf", "rows.csv");
        return beside("orchard-trial");
    }

    // Three readings of each hole, 0.2° apart, for a bearing wall and an oversize.
    private Path filled(Path rows, double bearing, double oversize) throws IOException {
        List<String> lines = new ArrayList<>();
        List<Double> strays = List.of(-0.2, 0.0, 0.2);
        for (String line : Files.readAllLines(rows, StandardCharsets.UTF_8)) {
            String[] cells = line.split(",", -1);
            if (lines.isEmpty()) {
                lines.add(line);
                continue;
            }
            double size = Double.parseDouble(cells[1].replace("TW-", "")) + oversize;
            double angle = RoundHole.tiltLimit(STRUT, size, MIDDLE - bearing / 2, MIDDLE + bearing / 2);
            double read = StrictMath.toDegrees(angle) + strays.get(lines.size() % 3);
            lines.add(line + Decimals.fixed(read, 2));
        }
        return Files.write(beside("filled.csv"), lines);
    }

    @Test
    void trial_withoutRows_writesTheFolderAllOfIt() throws IOException {
        Path made = laidOut();

        assertThat(files(made))
                .containsExactly(
                        "files.sha256",
                        "rows.csv",
                        "templates/TRIAL-a4.pdf",
                        "templates/TRIAL-letter.pdf",
                        "templates/TRIAL-r12.dxf",
                        "templates/TRIAL-r2000.dxf",
                        "templates/TRIAL.svg",
                        "trial.pdf");
        assertThat(Files.readAllLines(made.resolve("rows.csv")))
                .hasSize(25)
                .startsWith("hole,cutter,as-drilled-mm,strut-mm,measured-deg", "1,TW-20.25,,20.050,");
        byte[] before = Files.readAllBytes(made.resolve("trial.pdf"));
        assertThat(CommandRun.of("trial", job.toString()).code()).isZero();
        assertThat(Files.readAllBytes(made.resolve("trial.pdf"))).isEqualTo(before);
    }

    private static List<String> files(Path made) throws IOException {
        try (Stream<Path> all = Files.walk(made)) {
            return all.filter(Files::isRegularFile)
                    .map(p -> made.relativize(p).toString().replace('\\', '/'))
                    .sorted()
                    .toList();
        }
    }

    @Test
    void trial_readingsWrittenIntoItsFolder_areNeverOverwritten() throws IOException {
        Path made = laidOut();
        Files.writeString(made.resolve("rows.csv"), "mine");

        CommandRun again = CommandRun.of("trial", job.toString());

        assertThat(again.code()).isEqualTo(5);
        assertThat(again.err()).contains("PACK_EDITED", "changed: rows.csv");
        assertThat(made.resolve("rows.csv")).hasContent("mine");
        assertThat(CommandRun.of("trial", job.toString(), "--replace").code()).isZero();
    }

    @Test
    void trial_onARotaryMachine_hasRehearsedPrograms() throws IOException {
        Path cloche = beside("cloche.toml");
        Files.copy(ProjectFolder.top().resolve("output-samples/cloche/job.toml"), cloche);

        CommandRun run =
                CommandRun.of("trial", cloche.toString(), "--out", beside("c").toString());

        assertThat(run.code()).as(run.err()).isZero();
        assertThat(files(beside("c")))
                .contains("machine/LA-1-mark.nc", "machine/LA-1-mark-air.nc", "machine/rotary-direction-test.nc");
    }

    @Test
    void rows_fittedAndWritten_areUsedByTheJob() throws IOException {
        Path rows = filled(laidOut().resolve("rows.csv"), 1.5, 0.1);
        Path profile = beside("profiles").resolve("shed-110.toml");

        CommandRun fit =
                CommandRun.of("trial", job.toString(), "--rows", rows.toString(), "--write", profile.toString());

        assertThat(fit.code()).as(fit.err()).isZero();
        assertThat(fit.out())
                .startsWith("readings            24 in 8 holes\nbearing wall        1.")
                .contains("degrees of freedom", "Bearing wall: 1.", "trial-piece = \"shed-110\"");
        assertThat(Files.readString(profile)).contains("name = \"shed-110\"", "readings = 24");
        assertThat(beside("profiles").resolve("shed-110.toml.new~")).doesNotExist();

        String text = Files.readString(job);
        Files.writeString(job, text.replace("[hub]", "[hub]\ntrial-piece = \"shed-110\""));
        CommandRun check = CommandRun.of("check", job.toString());
        assertThat(check.code()).as(check.err()).isZero();
        assertThat(check.err())
                .contains(
                        "the full wall bears, 8.75 mm", "bearing wall 1.", "from trial piece shed-110", "oversize 0.1");
        assertThat(CommandRun.of(
                                "profiles",
                                "shed-110",
                                "--profiles",
                                beside("profiles").toString())
                        .out())
                .contains("bearing wall", "24, rms 0.1");
        // What counts on a trial piece cannot be where the next one starts from.
        CommandRun again = CommandRun.of("trial", job.toString());
        assertThat(again.code()).isEqualTo(3);
        assertThat(again.err()).contains("hub.trial-piece", "put # before that line");
    }

    /** Angles a fifth of what they should be, as when they are read from the wrong side of a scale. */
    @Test
    void rows_thatNoWallExplains_areRefusedAndNothingIsWritten() throws IOException {
        Path rows = filled(laidOut().resolve("rows.csv"), 1.5, 0.1);
        List<String> lines = new ArrayList<>();
        for (String line : Files.readAllLines(rows)) {
            int last = line.lastIndexOf(',') + 1;
            lines.add(
                    lines.isEmpty()
                            ? line
                            : line.substring(0, last)
                                    + Decimals.fixed(0.2 * Double.parseDouble(line.substring(last)), 2));
        }
        Path wrong = Files.write(beside("wrong.csv"), lines);
        Path profile = beside("wrong.toml");
        CommandRun run =
                CommandRun.of("trial", job.toString(), "--rows", wrong.toString(), "--write", profile.toString());

        assertThat(run.code()).isEqualTo(3);
        assertThat(run.err()).contains("TRIAL_ROWS", "wrong.csv / hole 5", "as the other readings have it");
        assertThat(profile).doesNotExist();

        // One slip of the pen among good rows.
        List<String> slip = new ArrayList<>(Files.readAllLines(rows));
        slip.set(10, slip.get(10).substring(0, slip.get(10).lastIndexOf(',') + 1) + "31");
        Files.write(wrong, slip);
        CommandRun one = CommandRun.of("trial", job.toString(), "--rows", wrong.toString());
        assertThat(one.code()).isEqualTo(3);
        assertThat(one.err()).containsOnlyOnce("TRIAL_ROWS").contains("hole 4", "31.00°, off by ");
    }

    @Test
    void holes_allMeasured_tellTheirOversize() throws IOException {
        Path rows = filled(laidOut().resolve("rows.csv"), 1.5, 0.15);
        List<String> lines = new ArrayList<>();
        for (String line : Files.readAllLines(rows)) {
            String[] cells = line.split(",", -1);
            if (!lines.isEmpty()) {
                double stray = (Integer.parseInt(cells[0]) - 4.5) * 0.01;
                cells[2] = Decimals.fixed(Double.parseDouble(cells[1].replace("TW-", "")) + 0.15 + stray, 3);
            }
            lines.add(String.join(",", cells));
        }
        Path measured = Files.write(beside("measured.csv"), lines);
        Path profile = beside("measured.toml");
        CommandRun run =
                CommandRun.of("trial", job.toString(), "--rows", measured.toString(), "--write", profile.toString());

        assertThat(run.code()).as(run.err()).isZero();
        assertThat(run.out())
                .contains("0.150 mm, as the holes showed: 0.115 mm to 0.185 mm")
                .contains("the holes came out 0.15 mm wider than their cutters");
        assertThat(Files.readString(profile))
                .contains("oversize = { value = \"0.15 mm\", low = \"0.115 mm\", high = \"0.185 mm\" }");
    }

    @Test
    void profile_thatIsThere_staysUnlessReplaced() throws IOException {
        Path rows = filled(laidOut().resolve("rows.csv"), 2, 0.1);
        Path profile = Files.writeString(beside("p.toml"), "mine");
        String[] line = {"trial", job.toString(), "--rows", rows.toString(), "--write", profile.toString()};

        CommandRun refused = CommandRun.of(line);
        assertThat(refused.code()).isEqualTo(5);
        assertThat(refused.err()).contains("a file that is not there yet");
        assertThat(profile).hasContent("mine");

        List<String> replacing = new ArrayList<>(List.of(line));
        replacing.add("--replace");
        assertThat(CommandRun.of(replacing.toArray(String[]::new)).code()).isZero();
        assertThat(Files.readString(profile)).contains("[[trial-piece]]");
        replacing.set(5, beside("orchard-trial").toString() + ".toml");
        Files.createDirectory(Path.of(replacing.get(5)));
        assertThat(CommandRun.of(replacing.toArray(String[]::new)).err()).contains("a folder");
    }

    @Test
    void knownSizes_leaveOneUnknown() throws IOException {
        Path rows = filled(laidOut().resolve("rows.csv"), 1.5, 0);
        String[] line = {"trial", job.toString(), "--rows", rows.toString(), "--oversize", "0 mm"};
        assertThat(CommandRun.of(line).out())
                .contains("oversize            0.000 mm, given")
                .doesNotContain("correlation");
        line[4] = "--bearing-wall";
        line[5] = "1.5 mm";
        assertThat(CommandRun.of(line).out()).contains("bearing wall        1.500 mm, given");
        line[5] = "9 mm";
        assertThat(CommandRun.of(line).err()).contains("at most the collar's wall, 8.75 mm");
        line[4] = "--oversize";
        line[5] = "-1 mm";
        assertThat(CommandRun.of(line).err()).contains("passes hole 1 of 20.25 mm");
        line[5] = "wide";
        assertThat(CommandRun.of(line).code()).isEqualTo(2);
    }

    @Test
    void rows_tooFewOrNone_areRefused() throws IOException {
        Path made = laidOut();
        CommandRun blank = CommandRun.of(
                "trial", job.toString(), "--rows", made.resolve("rows.csv").toString());
        assertThat(blank.code()).isEqualTo(3);
        assertThat(blank.err())
                .contains(
                        "TRIAL_ROWS",
                        "3 readings or more for bearing wall and oversize",
                        "0 readings, 24 lines without measured-deg");
        CommandRun missing = CommandRun.of(
                "trial", job.toString(), "--rows", beside("none.csv").toString());
        assertThat(missing.code()).isEqualTo(3);
        assertThat(missing.err()).contains("JOB_FILE_MISSING", "the file with the measured angles");
        Path measured = Files.writeString(
                beside("measured.csv"),
                "hole,cutter,as-drilled-mm,measured-deg\n1,TW-20.5,20.6,11\n2,TW-21,21.1,14\n3,TW-22,22.1,20\n");
        CommandRun nothing =
                CommandRun.of("trial", job.toString(), "--rows", measured.toString(), "--bearing-wall", "2");
        assertThat(nothing.err()).contains("the bearing wall is given, and every hole was measured");
        CommandRun one = CommandRun.of("trial", job.toString(), "--rows", measured.toString());
        assertThat(one.out())
                .contains("21.10*", "* measured: no oversize is added", "Oversize: every hole was measured");
        Path same = Files.writeString(
                beside("same.csv"), "hole,cutter,measured-deg\n" + "1,TW-20.5,11\n1,TW-20.5,12\n".repeat(2));
        CommandRun wide = CommandRun.of(
                "trial",
                job.toString(),
                "--rows",
                same.toString(),
                "--write",
                beside("w.toml").toString());
        assertThat(wide.out()).contains("not to be told from the other");
    }

    @ParameterizedTest
    @CsvSource({
        "--rows r.csv --out o, --out or --rows",
        "--write p.toml, --rows beside --write",
        "--oversize 0, --rows beside --oversize",
        "--bearing-wall 1, --rows beside --bearing-wall",
        "--rows r.csv --name n, --write beside --name",
        "--rows r.csv --write p.txt, a file whose name ends in .toml",
        "--rows r.csv --write P.toml, 'small letters, digits'",
        "--rows r.csv --write p.toml --name Ä, 'small letters, digits'",
        "--rows {job} --bearing-wall 1 --oversize 0, something to look for"
    })
    void options_thatContradictEachOther_areRefused(String options, String expected) {
        List<String> line = new ArrayList<>(List.of("trial", job.toString()));
        line.addAll(
                List.of(options.replace("{job}", job.getFileName().toString()).split(" ")));
        line.replaceAll(word -> word.equals(job.getFileName().toString()) ? job.toString() : word);
        CommandRun run = CommandRun.of(line.toArray(String[]::new));
        assertThat(run.code()).isIn(2, 3);
        assertThat(run.err()).contains(expected);
    }

    @Test
    void rack_withTooFewSizes_isRefusedWithTheReason() throws IOException {
        Files.writeString(
                job,
                Files.readString(job)
                        .replace(
                                "rack = [\"metric-twist\"]",
                                "add = [{ kind = \"twist\", size = 21 }, { kind = \"twist\", size = 22, depth = 4 }]"));
        CommandRun run = CommandRun.of("trial", job.toString());
        assertThat(run.code()).isEqualTo(4);
        assertThat(run.err())
                .contains(
                        "TRIAL_LADDER",
                        "at least 3 sizes of cutters",
                        "1: 21 mm",
                        "CUTTER_REACH",
                        "add sizes from 20.5 mm");
        assertThat(beside("orchard-trial")).doesNotExist();
    }

    @Test
    @NeedsChecker(Checker.MUTOOL)
    void recordSheet_everyPage_isReadableAndInsideThePaper() throws IOException {
        Path pdf = laidOut().resolve("trial.pdf");
        List<Poppler.PageSize> sizes = Poppler.pages(pdf);
        assertThat(sizes).hasSize(2);
        for (int page = 1; page <= sizes.size(); page++) {
            Poppler.PageSize size = sizes.get(page - 1);
            assertThat(new Box(0, 0, size.width(), size.height()).holds(Mutool.ink(pdf, page), 0.05))
                    .isTrue();
            assertThat(Mutool.lines(pdf, page)).allMatch(line -> line.sizePoints() > 10.99);
        }
    }
}
