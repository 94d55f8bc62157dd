package collarwright.pack;

import static collarwright.pack.PackFolders.edition;
import static collarwright.pack.PackFolders.holds;
import static collarwright.pack.PackFolders.snapshot;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import collarwright.finding.Code;
import collarwright.finding.Finding;
import collarwright.finding.JobException;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PackFolderTest {

    @TempDir
    private Path room;

    private Path place;

    @BeforeEach
    void name() {
        place = room.resolve("Größe é x");
    }

    private static Finding refused(Path place, Map<String, byte[]> files, boolean replace) {
        JobException e = catchThrowableOfType(JobException.class, () -> PackFolder.write(place, files, replace));
        assertThat(e).isNotNull();
        assertThat(e.findings()).hasSize(1);
        return e.findings().get(0);
    }

    // SHA-256 of "abc" and of the 56-letter message: NIST, FIPS 180-2, appendix B.1 and B.2.
    @Test
    void write_files_listsThemWithTheirSums() throws IOException {
        SortedMap<String, byte[]> files = new TreeMap<>();
        files.put("plan.json", "abc".getBytes(StandardCharsets.UTF_8));
        files.put(
                "a/b.txt", "abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq".getBytes(StandardCharsets.UTF_8));

        assertThat(PackFolder.write(place, files, false)).isEmpty();

        assertThat(place.resolve("files.sha256")).hasContent("""
                        248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1  a/b.txt
                        ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad  plan.json
                        """);
        assertThat(place.resolve("plan.json")).hasContent("abc");
        assertThat(snapshot(room)).doesNotContainKeys("Größe é x.new~/", "Größe é x.old~/");
    }

    // The last step before the new pack is read back is to give its list its name.
    @Test
    void write_readsBackEveryFileAndTheList() {
        for (String spoilt : List.of("plan.json", "machine/a/one.ngc", "files.sha256")) {
            PackDisk.Steps spoil = (what, path) -> {
                Path fresh = room.resolve("Größe é x.new~");
                boolean listed = Files.exists(fresh.resolve("files.sha256"));
                if (listed && what.equals("sync") && path.equals(fresh)) {
                    Path file = fresh.resolve(spoilt);
                    byte[] bytes = Files.readAllBytes(file);
                    bytes[0] = (byte) (bytes[0] == '0' ? '1' : '0');
                    Files.write(file, bytes);
                }
            };
            assertThatThrownBy(() -> new PackFolder(place, spoil).write(edition("one"), false))
                    .as(spoilt)
                    .isInstanceOfSatisfying(
                            JobException.class,
                            e -> assertThat(e.findings().get(0).found()).contains("could not be read back"));
            assertThat(place).doesNotExist();
        }
    }

    @Test
    void write_overAPackWithAFolderThatBecameALink_readsNothingBehindIt() throws IOException {
        PackFolder.write(place, edition("one"), false);
        Path elsewhere = Files.createDirectories(room.resolve("elsewhere"));
        Files.createDirectory(elsewhere.resolve("cut-list.csv"));
        Files.delete(place.resolve("struts/cut-list.csv"));
        Files.delete(place.resolve("struts"));
        Files.createSymbolicLink(place.resolve("struts"), elsewhere);

        Finding finding = refused(place, edition("two"), false);

        assertThat(finding.code()).isEqualTo(Code.PACK_EDITED);
        assertThat(elsewhere.resolve("cut-list.csv")).isDirectory();
    }

    @Test
    void write_overAnUntouchedPack_replacesItWhole() {
        PackFolder.write(place, edition("one"), false);
        PackFolder.write(place, edition("two"), false);

        assertThat(holds(place, edition("two"))).isTrue();
        assertThat(room.toFile().list()).containsExactly("Größe é x");
    }

    @Test
    void write_twice_givesTheSameBytes() {
        PackFolder.write(place, edition("one"), false);
        PackFolder.write(room.resolve("other"), edition("one"), false);
        assertThat(snapshot(place)).isEqualTo(snapshot(room.resolve("other")));
    }

    @Test
    void write_emptyFolder_isUsed() throws IOException {
        Files.createDirectory(place);
        PackFolder.write(place, edition("one"), false);
        assertThat(holds(place, edition("one"))).isTrue();
        assertThat(room.toFile().list()).hasSize(1);
    }

    @Test
    void write_foldersAbove_areCreated() {
        Path deep = room.resolve("a").resolve("b").resolve("pack");
        PackFolder.write(deep, edition("one"), false);
        assertThat(holds(deep, edition("one"))).isTrue();
    }

    @Test
    void write_relativePlaceWithDots_isTheSamePlace() {
        Path winding = place.resolve("..").resolve("x").resolve("..").resolve("pack");
        PackFolder.write(winding, edition("one"), false);
        assertThat(holds(room.resolve("pack"), edition("one"))).isTrue();
    }

    @Test
    void write_foreignFolder_isLeftAlone() throws IOException {
        Files.createDirectory(place);
        Files.writeString(place.resolve("letter.txt"), "dear");
        // Somebody's own list of sums does not make a pack of it.
        for (String list : new String[] {null, "", "nonsense", PackList.sum(new byte[0]) + "  letter.txt\n"}) {
            if (list != null) {
                Files.writeString(place.resolve("files.sha256"), list);
            }
            SortedMap<String, String> before = snapshot(room);
            for (boolean replace : new boolean[] {false, true}) {
                Finding finding = refused(place, edition("one"), replace);
                assertThat(finding.code()).isEqualTo(Code.PACK_FOREIGN);
                assertThat(finding.where().text()).isEqualTo(place.toString());
            }
            assertThat(snapshot(room)).isEqualTo(before);
        }
    }

    @Test
    void write_listThatLeadsOutOfTheFolder_isForeign() throws IOException {
        PackFolder.write(place, edition("one"), false);
        Path list = place.resolve("files.sha256");
        Files.writeString(list, PackList.sum(new byte[0]) + "  ../secret\n" + Files.readString(list));
        assertThat(refused(place, edition("two"), true).code()).isEqualTo(Code.PACK_FOREIGN);
    }

    @Test
    void write_fileOrLinkInPlace_isLeftAlone() throws IOException {
        Files.writeString(place, "a file");
        assertThat(refused(place, edition("one"), true).found()).isEqualTo("a file");
        Files.delete(place);

        Path elsewhere = room.resolve("elsewhere");
        PackFolder.write(elsewhere, edition("one"), false);
        Files.createSymbolicLink(place, elsewhere);
        assertThat(refused(place, edition("two"), true).found()).isEqualTo("a link to another place");
        assertThat(holds(elsewhere, edition("one"))).isTrue();
    }

    @Test
    void write_editedPack_isRefusedWithEveryName() throws IOException {
        PackFolder.write(place, edition("one"), false);
        Files.writeString(place.resolve("plan.json"), "changed");
        Files.delete(place.resolve("struts").resolve("cut-list.csv"));
        Files.createDirectories(place.resolve("notes").resolve("deep"));
        Files.writeString(place.resolve("notes").resolve("mine.txt"), "mine");
        SortedMap<String, String> before = snapshot(room);

        Finding finding = refused(place, edition("two"), false);

        assertThat(finding.code()).isEqualTo(Code.PACK_EDITED);
        assertThat(finding.found())
                .isEqualTo(
                        "changed: plan.json; added: notes/deep; added: notes/mine.txt; missing: struts/cut-list.csv");
        assertThat(finding.hints()).anyMatch(hint -> hint.contains("--replace"));
        assertThat(snapshot(room)).isEqualTo(before);

        PackFolder.write(place, edition("two"), true);
        assertThat(holds(place, edition("two"))).isTrue();
        assertThat(room.toFile().list()).hasSize(1);
    }

    @Test
    void write_manyEdits_namesTwentyAndCountsTheRest() throws IOException {
        PackFolder.write(place, edition("one"), false);
        for (int i = 10; i < 33; i++) {
            Files.writeString(place.resolve("mine-" + i), "mine");
        }
        assertThat(refused(place, edition("two"), false).found())
                .contains("added: mine-10; ", "added: mine-29; and 3 more")
                .doesNotContain("mine-30");
    }

    @Test
    void write_linksInsideAPack_areNotFollowed() throws IOException {
        PackFolder.write(place, edition("one"), false);
        Path outside = Files.createDirectory(room.resolve("outside"));
        Files.copy(place.resolve("struts").resolve("cut-list.csv"), outside.resolve("cut-list.csv"));
        Files.copy(place.resolve("plan.json"), outside.resolve("plan.json"));
        // A folder and a file replaced by links to the same bytes, and a link that nobody knows.
        Files.delete(place.resolve("struts").resolve("cut-list.csv"));
        Files.delete(place.resolve("struts"));
        Files.createSymbolicLink(place.resolve("struts"), outside);
        Files.delete(place.resolve("plan.json"));
        Files.createSymbolicLink(place.resolve("plan.json"), outside.resolve("plan.json"));
        Files.createSymbolicLink(place.resolve("all"), room.getRoot());
        SortedMap<String, String> kept = snapshot(outside);

        assertThat(refused(place, edition("two"), false).found())
                .isEqualTo("changed: plan.json; added: all; added: struts; missing: struts/cut-list.csv");
        PackFolder.write(place, edition("two"), true);

        assertThat(holds(place, edition("two"))).isTrue();
        assertThat(snapshot(outside)).isEqualTo(kept);
    }

    @Test
    void write_whatDesktopsLeaveInAPack_isNoEdit() throws IOException {
        PackFolder.write(place, edition("one"), false);
        Files.writeString(place.resolve(".DS_Store"), "x");
        Files.writeString(place.resolve("struts").resolve("Thumbs.db"), "x");
        PackFolder.write(place, edition("two"), false);
        assertThat(holds(place, edition("two"))).isTrue();
    }

    @Test
    void write_nameTooLong_saysHowLongItMayBe() {
        Path longest = room.resolve("p".repeat(250));
        PackFolder.write(longest, edition("one"), false);
        assertThat(holds(longest, edition("one"))).isTrue();

        Finding finding = refused(room.resolve("é".repeat(126)), edition("one"), false);
        assertThat(finding.code()).isEqualTo(Code.PACK_NOT_WRITTEN);
        assertThat(finding.expected()).isEqualTo("a folder name of at most 250 bytes");
        assertThat(finding.found()).isEqualTo("252 bytes");
    }

    @Test
    void write_belowAFile_namesTheFile() throws IOException {
        Path file = Files.writeString(room.resolve("file"), "x");
        for (Path below : new Path[] {file.resolve("pack"), file.resolve("a").resolve("pack")}) {
            Finding finding = refused(below, edition("one"), false);
            assertThat(finding.code()).isEqualTo(Code.PACK_NOT_WRITTEN);
            assertThat(finding.found()).isEqualTo(file + " is a file");
        }
        assertThat(snapshot(room)).containsOnlyKeys("/", "file");
    }

    // No disk has an exabyte; the sizes are rounded up to whole blocks, so the figure is a multiple of 512 bytes.
    @Test
    void notWritten_diskTooSmall_saysWhatIsNeededAndWhatIsFree() {
        PackFaults.Need need = new PackFaults.Need(List.of(1L << 60, 1L), 2);
        Finding finding = PackFaults.notWritten(place, need, new IOException("in the words of some system"));
        assertThat(finding.code()).isEqualTo(Code.PACK_NOT_WRITTEN);
        assertThat(finding.found()).matches("\\d+ bytes free");
        long needed = Long.parseLong(finding.expected().replaceAll("\\D", ""));
        assertThat(needed).isGreaterThan(1L << 60);
        assertThat(needed % 512).isZero();
    }

    @Test
    void write_topOfADisk_isRefused() {
        assertThat(refused(room.getRoot(), edition("one"), false).code()).isEqualTo(Code.PACK_NOT_WRITTEN);
    }

    @Test
    void write_pathsNotForEveryDisk_areAFaultOfOurs() {
        for (String path : new String[] {"files.sha256", "files.sha256~", "../x", "a\\b", "PLAN.json", "plan.json/x"}) {
            Map<String, byte[]> files = edition("one");
            files.put(path, new byte[0]);
            assertThatThrownBy(() -> PackFolder.write(place, files, false))
                    .isInstanceOf(IllegalArgumentException.class);
        }
        assertThatThrownBy(() -> PackFolder.write(place, Map.of("a", new byte[0]), false))
                .hasMessage("a pack without plan.json");
        assertThat(room.toFile().list()).isEmpty();
    }

    @Test
    void recover_nothingLeft_changesNothing() {
        PackFolder.recover(place, false);
        assertThat(room.toFile().list()).isEmpty();
        PackFolder.write(place, edition("one"), false);
        PackFolder.recover(place, false);
        assertThat(holds(place, edition("one"))).isTrue();
    }

    @Test
    void recover_somebodysFolderWithOurName_isLeftAlone() throws IOException {
        PackFolder.write(place, edition("one"), false);
        for (String ending : new String[] {".new~", ".old~"}) {
            Path theirs = Files.createDirectory(room.resolve("Größe é x" + ending));
            Files.writeString(theirs.resolve("letter.txt"), "dear");
            // Also beside an unfinished list of ours.
            for (boolean listed : new boolean[] {false, true}) {
                if (listed) {
                    Files.write(
                            theirs.resolve("files.sha256~"),
                            PackList.of(edition("one")).bytes());
                }
                SortedMap<String, String> before = snapshot(room);
                Finding finding = refused(place, edition("two"), true);
                assertThat(finding.code()).isEqualTo(Code.PACK_FOREIGN);
                assertThat(finding.where().text()).isEqualTo(theirs.toString());
                assertThat(snapshot(room)).isEqualTo(before);
            }
            Files.delete(theirs.resolve("files.sha256~"));
            Files.delete(theirs.resolve("letter.txt"));
            Files.delete(theirs);
        }
    }
}
