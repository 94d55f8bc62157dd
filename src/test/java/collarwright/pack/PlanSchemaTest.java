package collarwright.pack;

import static org.assertj.core.api.Assertions.assertThat;

import collarwright.dome.DomeSettings;
import collarwright.job.Job;
import collarwright.job.ShopTimes;
import collarwright.plan.Production;
import collarwright.plan.WorkTime;
import collarwright.strut.SizeRule;
import collarwright.testing.DomeJobs;
import collarwright.testing.ProjectFolder;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.Error;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;

/** Holds {@code plan.json} and its schema together, by json-schema-validator, a reader of schemas from outside. */
class PlanSchemaTest {

    private static final ObjectMapper JSON = new ObjectMapper();

    private final JsonNode schema;
    private final Schema validator;

    PlanSchemaTest() throws IOException {
        schema = JSON.readTree(
                Files.readString(ProjectFolder.top().resolve("shared").resolve("plan.schema.json")));
        validator = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(schema);
    }

    private static List<JsonNode> plans() throws IOException {
        List<Job> jobs = List.of(
                PackJobs.metric(),
                PackJobs.inch(),
                PackJobs.tried(),
                PackJobs.shared(PackJobs.metric()),
                PackJobs.inBins(PackJobs.metric()),
                PackJobs.with(PackJobs.metric(), new DomeSettings(1, 3), new SizeRule.LongestStrut(1500)),
                PackJobs.with(PackJobs.metric(), new DomeSettings(5, 8), new SizeRule.Height(2700)),
                // No cutter fits: stopped before any pattern is laid out.
                PackJobs.drilled(PackJobs.metric(), List.of(PackJobs.saw("HS-20", "20 mm", 20))),
                // Struts shorter than nothing.
                PackJobs.with(PackJobs.metric(), new DomeSettings(3, 5), new SizeRule.Radius(120)),
                // So small a ring that the frame cannot be put together.
                PackJobs.ringed(PackJobs.metric(), 20, 35));
        List<JsonNode> plans = new ArrayList<>();
        List<Job> all = new ArrayList<>(jobs);
        all.addAll(DomeJobs.all());
        all.add(DomeJobs.read(DomeJobs.named("shared-jobs", "mirrored-shared")));
        all.add(StrutEndPackTest.job("bed-plain"));
        all.add(StripPackTest.job());
        all.add(PackJobs.sawn());
        all.add(DomeJobs.read(DomeJobs.named("cut-jobs", "flat-conduit")));
        all.add(DomeJobs.read(DomeJobs.named("cut-jobs", "plugged-dowel")));
        all.add(DomeJobs.read(DomeJobs.named("bored", "hutch")));
        Job shelter = DomeJobs.read(DomeJobs.named("tubes", "shelter"));
        all.add(shelter);
        all.add(TubePackTest.marked());
        for (Job job : all) {
            ProgramEntry program = new ProgramEntry("machine/CA-HS-44.ngc", "rotary-plain", 61.5, List.of("HS-44"));
            plans.add(JSON.readTree(PlanJson.write(PackJobs.plan(job), List.of(program))));
        }
        Production sticks = Production.of(PackJobs.onSticks(), List.of());
        ProgramEntry cut = new ProgramEntry(
                "machine/LA-1-mark.ngc", "mill-plain", 61.5, List.of("MARK-3"), Optional.of("LA"), OptionalInt.of(3));
        plans.add(JSON.readTree(PlanJson.write(sticks.plan(), List.of(cut), priced(sticks))));
        Production nested = Production.of(DomeJobs.read(DomeJobs.named("laser", "hen-house")), List.of());
        plans.add(JSON.readTree(PlanJson.write(nested.plan(), List.of(), priced(nested))));
        Production strips = Production.of(StripPackTest.job(), List.of());
        plans.add(JSON.readTree(PlanJson.write(strips.plan(), List.of(), priced(strips))));
        return plans;
    }

    @Test
    void schema_itself_isValidDraft2020() throws IOException {
        Schema ofSchemas = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(JSON.readTree("{\"$ref\": \"https://json-schema.org/draft/2020-12/schema\"}"));
        assertThat(ofSchemas.validate(schema)).isEmpty();
        assertThat(ofSchemas.validate(JSON.readTree("{\"type\": \"nothing\"}"))).isNotEmpty();
    }

    @Test
    void plan_ofEveryJob_fitsTheSchema() throws IOException {
        for (JsonNode plan : plans()) {
            assertThat(validator.validate(plan)).map(Error::toString).isEmpty();
        }
    }

    @Test
    void plan_damaged_doesNotFit() throws IOException {
        List<Consumer<ObjectNode>> damages = List.of(
                plan -> plan.remove("counts"),
                plan -> plan.put("note", "a key that nobody described"),
                plan -> plan.put("format", 3),
                plan -> plan.withObject("/job").put("revision", "ABCDEFGH"),
                plan -> ((ObjectNode) plan.at("/nodes/3")).put("turnDeg", 360),
                plan -> ((ObjectNode) plan.at("/nodes/3")).put("id", "T3/07"),
                plan -> ((ObjectNode) plan.at("/members/0/a")).put("hole", 0),
                plan -> ((ObjectNode) plan.at("/patterns/0/holes/0")).put("azimuthDeg", -1),
                plan -> ((ObjectNode) plan.at("/patterns/0/holes/0")).put("slackDeg", "1.5"),
                plan -> ((ObjectNode) plan.at("/findings/0")).putArray("hints"));
        for (Consumer<ObjectNode> damage : damages) {
            ObjectNode plan = (ObjectNode) plans().get(0);
            damage.accept(plan);
            assertThat(validator.validate(plan)).isNotEmpty();
        }
    }

    @Test
    void schema_everyKey_isDescribedWithUnitAndRange() {
        List<String> wrong = new ArrayList<>();
        walk(schema, "", (path, key) -> {
            String type = key.path("type").asText();
            if (key.path("description").asText().isBlank()) {
                wrong.add(path + " has no description");
            }
            boolean number = type.equals("number") || type.equals("integer");
            if (number && key.path("x-unit").asText().isBlank()) {
                wrong.add(path + " has no unit");
            }
            if (path.endsWith("Mm") && number && !key.path("x-unit").asText().equals("mm")) {
                wrong.add(path + " is not in mm");
            }
            if (path.endsWith("Deg") && !key.path("x-unit").asText().equals("degree")) {
                wrong.add(path + " is not in degrees");
            }
            boolean bounded = key.has("minimum") || key.has("exclusiveMinimum") || key.has("const");
            if (number
                    && !bounded
                    && !path.matches(".*(Z|OfAnySign|Node|Middle|cut|ength|height)Mm|.*checks.*|.*xyz.*|.*maxwell")) {
                wrong.add(path + " has no least value");
            }
            if (type.equals("object") && key.path("additionalProperties").asBoolean(true)) {
                wrong.add(path + " lets in keys that nobody described");
            }
        });
        assertThat(wrong).isEmpty();
    }

    @Test
    void schema_everyKey_isWrittenForSomeJob() throws IOException {
        Set<String> described = new HashSet<>();
        walk(schema, "", (path, key) -> described.add(path));
        Set<String> written = new HashSet<>();
        for (JsonNode plan : plans()) {
            gather(plan, "", written);
        }
        Set<String> unwritten = new HashSet<>(described);
        unwritten.removeAll(written);
        assertThat(unwritten).isEmpty();
        assertThat(described).containsAll(written);
    }

    /** A reader sees what a value looks like; what has its words listed, or is yes or no, needs none. */
    @Test
    void schema_everyValue_hasAnExampleThatFits() {
        List<String> wrong = new ArrayList<>();
        walk(schema, "", (path, key) -> {
            String type = key.path("type").asText();
            boolean told = key.has("const") || key.has("enum") || type.equals("boolean");
            if (told || type.equals("object") || type.equals("array")) {
                return;
            }
            if (key.path("examples").isEmpty()) {
                wrong.add(path + " has no example");
            }
            Schema alone = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                    .getSchema(key);
            key.path("examples").forEach(example -> {
                if (!alone.validate(example).isEmpty()) {
                    wrong.add(path + ": " + example + " does not fit");
                }
            });
        });
        assertThat(wrong).isEmpty();
    }

    private interface Visit {
        void key(String path, JsonNode key);
    }

    private static void walk(JsonNode schema, String path, Visit visit) {
        visit.key(path, schema);
        Iterator<Map.Entry<String, JsonNode>> keys =
                schema.path("properties").properties().iterator();
        while (keys.hasNext()) {
            Map.Entry<String, JsonNode> key = keys.next();
            walk(key.getValue(), path + "/" + key.getKey(), visit);
        }
        if (schema.has("items")) {
            walk(schema.get("items"), path + "[]", visit);
        }
    }

    private static void gather(JsonNode value, String path, Set<String> paths) {
        paths.add(path);
        value.properties().forEach(key -> gather(key.getValue(), path + "/" + key.getKey(), paths));
        if (value.isArray()) {
            value.forEach(element -> gather(element, path + "[]", paths));
        }
    }

    private static PlanJson.Making priced(Production sticks) {
        WorkTime time = WorkTime.of(sticks.plan(), sticks.machines());
        return new PlanJson.Making(
                sticks.rotary(),
                sticks.strips(),
                new WorkTime(time.rows(), new ShopTimes.Money(30, 20, "EUR")),
                sticks.stock());
    }
}
