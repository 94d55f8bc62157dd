package collarwright.job;

import static org.assertj.core.api.Assertions.assertThat;

import collarwright.finding.Code;
import collarwright.finding.Finding;
import collarwright.geometry.Interval;
import collarwright.stock.RoundStock;
import collarwright.testing.ProjectFolder;
import collarwright.tooling.Cutter;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class ProfilesTest {

    private static Profiles own(String... namesAndTexts) {
        return Profiles.load(List.of(new BundledProfiles(), OwnProfiles.of(namesAndTexts)));
    }

    private static List<String> shown(Profiles profiles) {
        return profiles.findings().stream()
                .map(f -> f.code() + " " + f.where().text())
                .toList();
    }

    @Test
    void bundled_haveNoFindings() {
        assertThat(Jobs.PROFILES.findings()).isEmpty();
    }

    @Test
    void index_listsTheFolder() throws IOException {
        try (Stream<Path> files = Files.list(ProjectFolder.top().resolve("profiles"))) {
            List<String> there = files.map(f -> f.getFileName().toString())
                    .filter(name -> name.endsWith(".toml"))
                    .sorted()
                    .toList();
            assertThat(new BundledProfiles().names()).isEqualTo(there);
        }
    }

    @Test
    void bundled_allKinds_haveTitlesAndSources() {
        for (Profiles.Kind kind : Profiles.Kind.values()) {
            // A trial piece is always somebody's own.
            assertThat(Jobs.PROFILES.names(kind).isEmpty()).isEqualTo(kind == Profiles.Kind.TRIAL_PIECE);
            assertThat(Jobs.PROFILES.all(kind)).allSatisfy(profile -> {
                assertThat(profile.title()).isNotBlank();
                assertThat(profile.source()).isNotBlank();
                assertThat(profile.file()).startsWith("(program)/profiles/");
            });
        }
    }

    @Test
    void allStock_isInTheOrderOfTheNames() {
        assertThat(Jobs.PROFILES.allStock())
                .extracting(RoundStock::name)
                .isEqualTo(Jobs.PROFILES.names(Profiles.Kind.STOCK))
                .doesNotHaveDuplicates()
                .hasSizeGreaterThan(100);
    }

    @Test
    void bundledFiles_sayNominalNotMeasured() throws IOException {
        BundledProfiles bundled = new BundledProfiles();
        for (String name : bundled.names()) {
            if (name.equals("layers.toml")) {
                // Names and colours, no sizes.
                continue;
            }
            String text = new String(bundled.read(name), StandardCharsets.UTF_8).replace("\n#", "");
            assertThat(text.toLowerCase(java.util.Locale.ROOT)).as(name).contains("nominal, not measured");
        }
    }

    @Test
    void bundledMaterials_haveCuttingData() {
        for (String name : Jobs.PROFILES.names(Profiles.Kind.MATERIAL)) {
            String cutting = Jobs.PROFILES.material(name).orElseThrow().cutting();
            assertThat(Jobs.PROFILES.cutting(cutting)).as(name).isPresent();
        }
    }

    @Test
    void bundledCuttingData_coverEveryCutter() {
        for (String name : Jobs.PROFILES.names(Profiles.Kind.CUTTING)) {
            var rows = Jobs.PROFILES.cutting(name).orElseThrow().rows();
            for (String rack : Jobs.PROFILES.names(Profiles.Kind.RACK)) {
                assertThat(Jobs.PROFILES.rack(rack).orElseThrow().cutters())
                        .allSatisfy(cutter -> assertThat(rows)
                                .as(name + " " + cutter.id())
                                .anyMatch(row -> row.kind() == cutter.kind()
                                        && row.fromSize() <= cutter.size()
                                        && cutter.size() <= row.toSize()));
            }
        }
    }

    @Test
    void bundledPvc_isChlorinated_metalAndWoodAreNot() {
        assertThat(List.of("pvc", "cpvc")).allMatch(m -> chlorinated(m));
        assertThat(List.of("steel", "stainless", "aluminium", "wood", "pe", "abs"))
                .noneMatch(m -> chlorinated(m));
    }

    private static boolean chlorinated(String material) {
        return Jobs.PROFILES.material(material).orElseThrow().material().chlorinated();
    }

    @Test
    void own_sameName_takesThePlace_andOthersStay() {
        Profiles profiles = own("pipes.toml", """
                source = "measured"
                units = "in"
                [[stock]]
                name = "emt-1in"
                title = "Ours"
                material = "our-steel"
                od = 1.2
                wall = [0.06, "2 mm"]
                """, "zz-materials.toml", """
                [[material]]
                name = "our-steel"
                title = "Steel"
                chlorinated = false
                density-kg-per-m3 = 7800
                source = "weighed"
                """);
        assertThat(profiles.findings()).isEmpty();
        var stock = profiles.stock("emt-1in").orElseThrow();
        assertThat(stock.od()).isEqualTo(Interval.of(30.48));
        assertThat(stock.wall()).contains(Interval.between(1.524, 2));
        assertThat(stock.material().densityKgPerM3()).isEqualTo(7800);
        assertThat(stock.source()).isEqualTo("measured");
        assertThat(profiles.names(Profiles.Kind.STOCK)).isEqualTo(Jobs.PROFILES.names(Profiles.Kind.STOCK));
        assertThat(profiles.all(Profiles.Kind.STOCK))
                .filteredOn(p -> p.name().equals("emt-1in"))
                .allMatch(p -> p.file().equals("mine/pipes.toml"));
    }

    @Test
    void own_faults_haveTheirPlaceInTheProfileFile() {
        Profiles profiles = own("a.toml", """
                [[stock]]
                name = "My Pipe"
                title = "x"
                source = "x"
                material = "tin"
                od = "-3 mm"
                """, "b.toml", """
                source = "x"
                [[rack]]
                name = "r"
                title = "x"
                kind = "drill"
                sereis = []
                """, "c.toml", "not toml", "d.toml", """
                source = "x"
                [[rack]]
                name = "r"
                title = "x"
                kind = "twist"
                series = [ { from = "1 mm", to = "9 mm", step = "0.001 mm" } ]
                [[machine]]
                name = "m"
                title = "x"
                kind = "rotary"
                """);
        assertThat(shown(profiles))
                .containsExactly(
                        "PROFILE_WRONG mine/a.toml:2:8",
                        "PROFILE_UNKNOWN mine/a.toml:5:12",
                        "JOB_OUT_OF_RANGE mine/a.toml:6:6",
                        "JOB_UNKNOWN_WORD mine/b.toml:5:8",
                        "JOB_UNKNOWN_KEY mine/b.toml:6:1",
                        "JOB_SYNTAX mine/c.toml:1:5",
                        "PROFILE_WRONG mine/d.toml:3:8",
                        "JOB_OUT_OF_RANGE mine/d.toml:6:49",
                        "JOB_KEY_MISSING mine/d.toml:7:1",
                        "JOB_KEY_MISSING mine/d.toml:7:1",
                        "JOB_KEY_MISSING mine/d.toml:7:1",
                        "JOB_KEY_MISSING mine/d.toml:7:1");
        JobReading reading = JobReader.read("job.toml", Jobs.GOOD, profiles);
        assertThat(reading.job()).isEmpty();
        assertThat(reading.findings()).extracting(Finding::code).contains(Code.PROFILE_WRONG);
    }

    @Test
    void own_unreadableFile_isAFinding() {
        assertThat(shown(own("a.toml", "unreadable"))).containsExactly("JOB_FILE_UNREADABLE mine/a.toml");
    }

    @Test
    void own_odLimitsAndTolerance_areChecked() {
        String head = """
                source = "x"
                [[stock]]
                name = "p"
                title = "x"
                material = "pvc"
                od = "40 mm"
                """;
        assertThat(own("a.toml", head + "od-limits = [\"39.8 mm\", \"40.3 mm\"]\n")
                        .stock("p")
                        .orElseThrow()
                        .od())
                .isEqualTo(new Interval(39.8, 40, 40.3));
        assertThat(shown(own("a.toml", head + "od-limits = [\"40.1 mm\", \"40.3 mm\"]\n")))
                .containsExactly("JOB_CONFLICT mine/a.toml:7:13");
        assertThat(shown(own("a.toml", head + "od-tolerance = \"40 mm\"\n")))
                .containsExactly("JOB_CONFLICT mine/a.toml:7:16");
        assertThat(shown(own("a.toml", head + """
                od-tolerance = 1
                od-limits = [39, 41]
                """))).containsExactly("JOB_CONFLICT mine/a.toml:7:16");
        assertThat(shown(own("a.toml", head + "wall = \"20 mm\"\n"))).containsExactly("JOB_CONFLICT mine/a.toml:7:8");
    }

    @Test
    void own_rack_asDrilledSizesAreMeasured() {
        Profiles profiles = own("r.toml", """
                source = "x"
                [[rack]]
                name = "r"
                title = "x"
                kind = "hole-saw"
                series = [
                { sizes = ["44 mm"], as-drilled = ["44.2 mm", "44.4 mm"], spread = "0.1 mm", lead = 0 },
                { sizes = ["1-3/4 in", "2 in"], depth = "50 mm" } ]
                """);
        List<Cutter> cutters = profiles.rack("r").orElseThrow().cutters();
        assertThat(cutters).extracting(Cutter::id).containsExactly("HS-44", "HS-1-3/4in", "HS-2in");
        assertThat(cutters.get(0).asDrilled()).isEqualTo(new Interval(44.2 - 0.1, (44.2 + 44.4) / 2, 44.4 + 0.1));
        assertThat(cutters.get(0).lead()).isZero();
        assertThat(cutters).extracting(Cutter::measured).containsExactly(true, false, false);
        assertThat(cutters.get(1).depth()).isEqualTo(50);
        assertThat(cutters.get(1).lead()).isEqualTo(8);
    }

    @Test
    void jobWithTwoRacks_measuredCutterCounts() {
        Profiles profiles = own("r.toml", """
                source = "x"
                [[rack]]
                name = "r"
                title = "x"
                kind = "twist"
                series = [ { sizes = [21], as-drilled = 21.1 }, { sizes = [22], depth = 9 } ]
                """);
        String text = Jobs.with("\"metric-twist\"", "\"metric-twist\", \"r\"");
        List<Cutter> cutters = JobReader.read("job.toml", text, profiles)
                .job()
                .orElseThrow()
                .drilling()
                .cutters();
        assertThat(cutters)
                .filteredOn(c -> c.id().equals("TW-21"))
                .extracting(Cutter::rack)
                .containsExactly("r");
        assertThat(cutters)
                .filteredOn(c -> c.id().equals("TW-22"))
                .extracting(Cutter::rack)
                .containsExactly("metric-twist");
    }
}
