package collarwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import collarwright.job.BundledProfiles;
import collarwright.job.Profiles;
import collarwright.machining.Machine;
import collarwright.testing.ProjectFolder;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** What a pack has been written with must be the same when it is read again, on every machine that is shipped. */
class RehearsePacksTest {

    private static final String STRIP = """
            [strip]
            joint = "lap"
            joint-length = "12 mm"
            cut = "router"
            kerf = "0.2 mm"
            machine = "MACHINE"
            """;

    @TempDir
    private Path folder = Path.of("unset");

    /** The cloches, but two of them, on the machine that is wanted. */
    private static String job(Machine machine) throws IOException {
        String text = Files.readString(ProjectFolder.top().resolve("output-samples/cloche/job.toml"))
                .replace("domes = 20", "domes = 2");
        String own = "machine = \"" + machine.name() + "\"";
        String shop = "machine = \"rotary-plain\"";
        return switch (machine.kind()) {
            case ROTARY -> text.replace(shop, own);
            case BED -> text.replace(shop, "machine = \"press\"\nstrut-" + own);
            case FLAT -> text.replace(shop, "machine = \"press\"") + STRIP.replace("MACHINE", machine.name());
            case TUBE ->
                Files.readString(ProjectFolder.top().resolve("src/test/resources/tubes/shelter/job.toml"))
                        .replace("machine = \"tube-plain\"", own);
            default -> throw new AssertionError(machine.kind() + " runs no programs that drill");
        };
    }

    private Path pack(String job) throws IOException {
        Path file = Files.writeString(folder.resolve("job.toml"), job);
        Path pack = folder.resolve("pack");
        CommandRun run = CommandRun.of("make", file.toString(), "--out", pack.toString());
        assertThat(run.code()).as(run.err()).isZero();
        return pack;
    }

    private CommandRun rehearse(List<Path> files, String... more) {
        List<String> words = new ArrayList<>(
                List.of("rehearse", "--job", folder.resolve("job.toml").toString()));
        files.forEach(f -> words.add(f.toString()));
        words.addAll(List.of(more));
        return CommandRun.of(words.toArray(String[]::new));
    }

    private static List<Path> programs(Path pack) throws IOException {
        try (Stream<Path> all = Files.walk(pack)) {
            return all.filter(p -> p.toString().matches("(?i).*\\.(nc|ngc)"))
                    .sorted()
                    .toList();
        }
    }

    static Stream<Machine> machines() {
        return Profiles.load(List.of(new BundledProfiles())).all(Profiles.Kind.MACHINE).stream()
                .map(p -> (Machine) p.value())
                .filter(Machine::programmed);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("machines")
    void everyProgramOfAPack_isTheSame(Machine machine) throws IOException {
        List<Path> programs = programs(pack(job(machine)));
        assertThat(programs).isNotEmpty();
        CommandRun run = rehearse(programs);

        assertThat(run.err()).isEmpty();
        assertThat(run.code()).isZero();
        assertThat(run.out().lines()).hasSize(programs.size()).allMatch(l -> l.contains(", same as the program "));
    }

    /** As many as the plan has patterns on the stick's places; two dimples a collar. */
    @ParameterizedTest
    @CsvSource({"rotary-no-spindle", "rotary-industrial"})
    void fileWithAllCutters_countsHolesAndDimples(String name) throws IOException {
        Machine machine =
                machines().filter(m -> m.name().equals(name)).findFirst().orElseThrow();
        Path pack = pack(job(machine));
        JsonNode plan = new ObjectMapper().readTree(Files.readAllBytes(pack.resolve("plan.json")));
        Map<String, Integer> holes = new HashMap<>();
        plan.get("patterns")
                .forEach(p -> holes.put(p.get("id").asText(), p.get("holes").size()));
        JsonNode stick = plan.at("/sticks/0");
        int planned = 0;
        for (JsonNode place : stick.get("places")) {
            planned += Objects.requireNonNull(holes.get(place.get("pattern").asText()));
        }
        Path cut = pack.resolve(stick.at("/programs/0/file").asText());

        assertThat(rehearse(List.of(cut)).out())
                .contains(
                        ": " + planned + " holes and " + 2 * stick.get("places").size() + " dimples as planned");
    }

    @Test
    void struts_editedPrograms_areToldInShopWords() throws IOException {
        Machine bed =
                machines().filter(m -> m.kind() == Machine.Kind.BED).findFirst().orElseThrow();
        Path pack = pack(job(bed));
        Path program = pack.resolve("struts/SA-ends.nc");

        told(program, t -> t.replaceFirst("G0 X(\\d+)\\.\\d+\\nS", "G0 X$1.999\nS"), "hole at E1: X ", " the stop");
        told(program, t -> t.replaceAll("G1 Z-(\\d+)\\.(\\d)", "G1 Z-9$1.$2"), " too deep");
        told(program, t -> t.replaceAll("(?s)\\(hole at E2\\).*", ""), "strut SA, hole at E2: missing");
        String slower = edit(program, t -> t.replaceAll(" F[\\d.]+", " F20.0"));
        CommandRun run = rehearse(List.of(Files.writeString(folder.resolve("SA-ends.nc"), slower)));
        assertThat(run.code()).as(run.err()).isZero();
        assertThat(run.err()).contains("WARN", "F 20.000 mm a minute in ");
        CommandRun picture =
                rehearse(List.of(program), "--picture", folder.resolve("x.svg").toString());
        assertThat(picture.code()).isEqualTo(2);
        assertThat(picture.err()).contains("a program of a machine that turns the pipe");
        assertThat(folder.resolve("x.svg")).doesNotExist();
    }

    @Test
    void strips_editedPrograms_areToldInShopWords() throws IOException {
        Machine flat = machines()
                .filter(m -> m.kind() == Machine.Kind.FLAT)
                .findFirst()
                .orElseThrow();
        Path pack = pack(job(flat));
        Path program = programs(pack).stream()
                .filter(p ->
                        p.toString().matches(".*CA-flat-2.*") && !p.toString().contains("-air"))
                .findFirst()
                .orElseThrow();

        told(program, t -> t.replaceFirst("G0 Y(\\d+)\\.\\d+", "G0 Y$1.500"), "strip CA, hole ", "toward TOP");
        told(program, t -> t.replaceFirst("(?s)M5.*", "M8\nM5\nM2\n"), "only words that the profile allows");
        told(program, t -> t.replaceAll("G0 X", "G0 Z0.500\nG0 X"), "X and Y move only at Z ");
    }

    private String edit(Path program, UnaryOperator<String> edit) throws IOException {
        String text = Files.readString(program);
        String changed = edit.apply(text);
        assertThat(changed).as("the text to change is there:\n" + text).isNotEqualTo(text);
        return changed;
    }

    private void told(Path program, UnaryOperator<String> edit, String... words) throws IOException {
        Path file = Files.writeString(folder.resolve(String.valueOf(program.getFileName())), edit(program, edit));
        CommandRun run = rehearse(List.of(file));
        assertThat(run.code()).as(run.err()).isEqualTo(4);
        assertThat(run.out()).contains("must not be run");
        assertThat(run.err()).contains("STOP  " + file + ":").contains(words);
    }
}
