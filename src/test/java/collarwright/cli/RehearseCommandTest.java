package collarwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import collarwright.job.Job;
import collarwright.machining.ProgramFile;
import collarwright.plan.Production;
import collarwright.testing.DomeJobs;
import collarwright.testing.ProjectFolder;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Programs of the samples as they are, as editors leave them, and as nobody should run them. */
class RehearseCommandTest {

    private static final Path SAMPLES = ProjectFolder.top().resolve("output-samples");
    private static final String CLOCHE = SAMPLES.resolve("cloche/job.toml").toString();
    private static final Path MACHINE = ProjectFolder.target().resolve("rehearse");
    private static final Path HOLES = MACHINE.resolve("cloche/LB-2-TW-23.nc");

    /** Programs of the samples as the jobs give them now. */
    @BeforeAll
    static void programs() throws IOException {
        for (String sample : List.of("cloche", "seedling-house")) {
            Path folder = Files.createDirectories(MACHINE.resolve(sample));
            Job job = DomeJobs.read(SAMPLES.resolve(sample).resolve("job.toml"));
            for (ProgramFile file : Production.of(job, List.of()).rotary().programs()) {
                Files.writeString(folder.resolve(file.name()), file.text());
            }
        }
    }

    @TempDir
    private Path folder = Path.of("unset");

    private Path edited(Path original, UnaryOperator<String> edit) throws IOException {
        String text = Files.readString(original);
        String changed = edit.apply(text);
        assertThat(changed).as("the text to change is there").isNotEqualTo(text);
        return Files.writeString(folder.resolve(String.valueOf(original.getFileName())), changed);
    }

    private static UnaryOperator<String> first(String from, String to) {
        return text -> text.replaceFirst(from, to);
    }

    private static CommandRun rehearse(Path file, String... more) {
        List<String> words = new ArrayList<>(List.of("rehearse", file.toString(), "--job", CLOCHE));
        words.addAll(List.of(more));
        return CommandRun.of(words.toArray(String[]::new));
    }

    @ParameterizedTest
    @CsvSource({"cloche", "seedling-house"})
    void rehearse_everyProgramOfAPack_isTheSame(String sample) throws IOException {
        List<String> words = new ArrayList<>(List.of(
                "rehearse", "--job", SAMPLES.resolve(sample).resolve("job.toml").toString()));
        try (Stream<Path> all = Files.list(MACHINE.resolve(sample))) {
            all.filter(p -> p.toString().matches(".*\\.(nc|ngc)"))
                    .sorted()
                    .map(Path::toString)
                    .forEach(words::add);
        }
        CommandRun run = CommandRun.of(words.toArray(String[]::new));

        assertThat(run.err()).isEmpty();
        assertThat(run.code()).isZero();
        assertThat(run.out().lines())
                .hasSize(words.size() - 3)
                .allMatch(l -> l.contains("as planned") && l.contains(", running time "))
                .allMatch(l -> l.contains("same as the program"));
        assertThat(run.out()).contains("0 holes and ", " dimples as planned", " in the air as planned");
        assertThat(run.out()).contains("turns as planned, cuts nothing");
    }

    static Stream<Arguments> harmless() {
        return Stream.of(
                edit("CR LF", t -> t.replace("\n", "\r\n")),
                edit("both line ends", t -> t.replaceFirst("\n", "\r\n")),
                edit("small letters", t -> t.replace("G0 X", "g0 x").replace("M3", "m3")),
                edit("no blanks", t -> t.replace("G0 X", "G0X").replace("G90 G94", "G90G94")),
                edit("more blanks", t -> t.replace("G0 X", "  G0   X")),
                edit("blank lines", t -> t.replace("G0 X", "\n\n  \nG0 X")),
                edit("N numbers", RehearseCommandTest::numbered),
                edit("another comment", t -> t.replaceFirst("\\(JOB [^)]*\\)", "(mended by the night shift)")));
    }

    private static Arguments edit(String name, UnaryOperator<String> edit) {
        return Arguments.of(name, edit);
    }

    private static String numbered(String text) {
        StringBuilder out = new StringBuilder();
        int number = 0;
        for (String line : text.split("\n", -1)) {
            out.append(line.isEmpty() || line.startsWith("(") ? line : "n" + (number += 10) + " " + line)
                    .append(line.isEmpty() ? "" : "\n");
        }
        return out.toString();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("harmless")
    void rehearse_whatEveryControlReadsAlike_isTheSame(String name, UnaryOperator<String> edit) throws IOException {
        CommandRun run = rehearse(edited(HOLES, edit));

        assertThat(run.err()).as(name).isEmpty();
        assertThat(run.code()).isZero();
        assertThat(run.out()).contains("same as the program LB-2-TW-23.nc of the pack");
    }

    static Stream<Arguments> wrong() {
        return Stream.of(
                change("deeper", "Z28\\.098", "Z27.698", "0.4 mm too deep"),
                change("shallower", "Z28\\.098", "Z28.198", "0.1 mm too shallow"),
                change("along", "G0 X(\\d+)\\.\\d+", "G0 X$1.999", " toward the "),
                change("turned", "G0 A72\\.000", "G0 A72.500", "turned 0.5° too far clockwise as seen from above TOP"),
                change("turning low", "G0 A72\\.000", "G0 Z60.000\nG0 A72.000", "the pipe turns only at Z "),
                change("twice as fast", " F([\\d.]+)", " F9$1", "F up to 105.500 mm a minute"),
                change("another word", "M5", "M8\nM5", "only words that the profile allows"),
                change("no spindle", "S\\d+ M3\n", "", "the spindle running before a cut"),
                change("home", "M5", "G28\nM5", "only words that the profile allows"),
                change("half", "(?s)\\(hole 3.*", "", "missing"),
                change("no point", "Y0\\.000", "Y0", "a digit before and after a point"),
                change("open bracket", "G0 Y0\\.000", "G0 Y0.000 (", "one comment"));
    }

    private static Arguments change(String name, String from, String to, String told) {
        return Arguments.of(name, from, to, told);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("wrong")
    void rehearse_whatMustNotBeRun_isToldInShopWordsWithItsPlace(String name, String from, String to, String told)
            throws IOException {
        Path file = edited(HOLES, first(from, to));

        CommandRun run = rehearse(file);

        assertThat(run.code()).as(name + ": " + run.err()).isEqualTo(4);
        assertThat(run.err()).contains(told).contains("STOP  " + file + ":").contains("  PROGRAM_DIFFERS");
        assertThat(run.out()).contains("must not be run");
    }

    @Test
    void rehearse_deeperHole_namesLineColumnCollarAndHole() throws IOException {
        Path file = edited(HOLES, first("Z28\\.098", "Z27.698"));
        List<String> lines = Files.readAllLines(file);
        int line = 1
                + lines.indexOf(lines.stream()
                        .filter(l -> l.contains("Z27.698"))
                        .findFirst()
                        .orElseThrow());

        assertThat(rehearse(file).err())
                .contains(file + ":" + line + ":4  PROGRAM_DIFFERS")
                .contains("expected  collar 1, hole 1 to Z 28.098 mm")
                .contains("found     collar 1, hole 1: 0.4 mm too deep");
    }

    @Test
    void rehearse_slower_isAWarningAndMayRun() throws IOException {
        CommandRun run = rehearse(edited(HOLES, t -> t.replaceAll(" F[\\d.]+", " F20.0")));

        assertThat(run.code()).isZero();
        assertThat(run.err()).contains("WARN", "F 20.000 mm a minute in ");
        assertThat(run.out()).contains("as planned", "1 warning against LB-2-TW-23.nc of the pack");
    }

    @Test
    void rehearse_programOfAnotherRevision_isAWarning() throws IOException {
        CommandRun run = rehearse(edited(HOLES, first("\\(REVISION \\w+\\)", "(REVISION AAAAAAAA)")));

        assertThat(run.code()).isZero();
        assertThat(run.err()).contains("WARN", "(REVISION AAAAAAAA)");
    }

    @Test
    void rehearse_anotherOrderOfHoles_isANote() throws IOException {
        // A whole row at one angle, the other way round.
        CommandRun run =
                rehearse(edited(MACHINE.resolve("cloche/LB-1-mark.nc"), RehearseCommandTest::firstTwoStaysExchanged));

        assertThat(run.code()).as(run.err()).isZero();
        assertThat(run.err()).contains("NOTE").contains("the same in another order");
    }

    private static String firstTwoStaysExchanged(String text) {
        List<String> lines = new ArrayList<>(text.lines().toList());
        List<Integer> ways = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            if (lines.get(i).startsWith("G0 X")) {
                ways.add(i);
            }
        }
        String kept = lines.get(ways.get(0));
        lines.set(ways.get(0), lines.get(ways.get(1)));
        lines.set(ways.get(1), kept);
        return String.join("\n", lines) + "\n";
    }

    @Test
    void rehearse_underAnotherName_isFoundByItsHead() throws IOException {
        Path file = Files.copy(HOLES, folder.resolve("night shift é.tap"));

        assertThat(rehearse(file).out()).contains("same as the program LB-2-TW-23.nc of the pack");
        String bare = Files.readString(HOLES).replaceAll("\\([^)]*\\)\n", "").replaceAll(" *\\([^)]*\\)", "");
        Path headless = Files.writeString(folder.resolve("headless.nc"), bare);
        assertThat(rehearse(headless).code()).isEqualTo(3);
        assertThat(rehearse(headless).err()).contains("PROGRAM_FILE", "say which it is: --as ");
        assertThat(rehearse(headless, "--as", "lb-2-tw-23.nc").code()).isZero();
        assertThat(rehearse(headless, "--as", "none.nc").code()).isEqualTo(2);
    }

    @Test
    void rehearse_filesThatAreNoPrograms_areAllTold() throws IOException {
        Path marked = Files.write(
                folder.resolve(HOLES.getFileName()),
                ("\uFEFF" + Files.readString(HOLES)).getBytes(StandardCharsets.UTF_8));
        Path wide =
                Files.write(folder.resolve("wide.nc"), Files.readString(HOLES).getBytes(StandardCharsets.UTF_16));
        Path empty = Files.writeString(folder.resolve("empty.nc"), " \n");
        Path endless = Files.writeString(folder.resolve("endless.nc"), "G21\n" + "G".repeat(3_000_000));
        Path brackets = Files.writeString(folder.resolve("brackets.nc"), "(a)".repeat(400_000));
        CommandRun run = CommandRun.of(
                "rehearse",
                "--job",
                CLOCHE,
                folder.resolve("gone.nc").toString(),
                folder.toString(),
                marked.toString(),
                wide.toString(),
                empty.toString(),
                endless.toString(),
                brackets.toString());

        assertThat(run.code()).isEqualTo(3);
        assertThat(run.err())
                .contains("no such file", "a folder", "a byte order mark", "UTF-16", "an empty file")
                .contains("endless.nc:2:1", "a line of 3000000 characters", "a line of 1200000 characters")
                .doesNotContain("PROGRAM_FAULT");
    }

    @Test
    void rehearse_wrongCommandLines_areRefused() {
        String press = SAMPLES.resolve("orchard-net/job.toml").toString();
        CommandRun none = CommandRun.of("rehearse", HOLES.toString(), "--job", press);
        assertThat(none.code()).isEqualTo(2);
        assertThat(none.err()).contains("a job whose machine runs programs");
        assertThat(CommandRun.of("rehearse", HOLES.toString()).code()).isEqualTo(2);
        assertThat(CommandRun.of("rehearse", "--job", CLOCHE).code()).isEqualTo(2);
        CommandRun two = rehearse(HOLES, HOLES.toString(), "--as", "x", "--picture", "y.svg");
        assertThat(two.code()).isEqualTo(2);
        assertThat(two.err()).contains("one program file beside --as", "one program file beside --picture");
        assertThat(CommandRun.of("rehearse", HOLES.toString(), "--job", "gone.toml")
                        .code())
                .isEqualTo(3);
    }

    @Test
    void rehearse_withPicture_drawsEveryHoleThatWasMade() throws IOException {
        Path svg = folder.resolve("pictures/what.svg");
        CommandRun run = rehearse(HOLES, "--picture", svg.toString());

        assertThat(run.code()).as(run.err()).isZero();
        assertThat(run.out()).contains("Wrote " + svg);
        assertThat(Files.readString(svg)).startsWith("<?xml").contains("What LB-2-TW-23.nc does");
        assertThat(rehearse(HOLES, "--picture", svg.toString()).code()).isEqualTo(5);
        assertThat(rehearse(HOLES, "--picture", svg.toString(), "--replace").code())
                .isZero();
    }
}
