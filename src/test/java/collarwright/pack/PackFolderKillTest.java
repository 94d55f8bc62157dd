package collarwright.pack;

import static collarwright.pack.PackFolders.assertPromise;
import static collarwright.pack.PackFolders.edition;
import static collarwright.pack.PackFolders.holds;
import static collarwright.pack.PackFolders.snapshot;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import collarwright.finding.Code;
import collarwright.finding.JobException;
import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.SortedMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Stops the writing of a pack at every one of its steps, by a kill and by a fault of the disk. */
class PackFolderKillTest {

    private static final Map<String, byte[]> ONE = edition("one");
    private static final Map<String, byte[]> TWO = edition("two");

    @TempDir(factory = MemoryRoom.class)
    private Path room;

    /** Not an exception that anything would catch: the program is gone. */
    private static final class Killed extends Error {
        private static final long serialVersionUID = 1;
    }

    /** Kills at one step; a file that is being written is left half written. */
    private static final class KillAt implements PackDisk.Steps {
        private final int step;
        private int taken;

        KillAt(int step) {
            this.step = step;
        }

        @Override
        public void before(String what, Path path) throws IOException {
            if (taken++ == step) {
                if (what.equals("write")) {
                    Files.writeString(path, "half");
                }
                throw new Killed();
            }
        }
    }

    /** Writes until a step, if there are so many. */
    private static boolean killed(Path place, Map<String, byte[]> files, int step) {
        try {
            new PackFolder(place, new KillAt(step)).write(files, false);
            return false;
        } catch (Killed e) {
            return true;
        }
    }

    @Test
    void write_killedAtAnyStep_leavesACompletePackAndTheNextFinishes() {
        int step = 0;
        boolean more = true;
        while (more) {
            Path place = room.resolve("s" + step).resolve("pack");
            PackFolder.write(place, ONE, false);
            more = killed(place, TWO, step);
            assertPromise(place, ONE, TWO);

            PackFolder.recover(place, false);
            assertThat(holds(place, ONE) || holds(place, TWO)).isTrue();
            assertThat(place.getParent().toFile().list()).containsExactly("pack");
            PackFolder.write(place, TWO, false);
            assertThat(holds(place, TWO)).isTrue();
            step++;
        }
        // A folder with three in it, five files and their list, each written and synced, three renames, ten removals.
        assertThat(step).isGreaterThan(35);
    }

    @Test
    void write_firstPackKilledAtAnyStep_leavesNothingOrAllUnderItsName() throws IOException {
        for (boolean emptyFolder : new boolean[] {false, true}) {
            boolean more = true;
            for (int step = 0; more; step++) {
                Path place = room.resolve(emptyFolder + "" + step).resolve("pack");
                Files.createDirectories(emptyFolder ? place : place.getParent());
                more = killed(place, ONE, step);
                boolean nothing = !Files.exists(place) || place.toFile().list().length == 0;
                assertThat(nothing || holds(place, ONE)).isTrue();

                PackFolder.write(place, TWO, false);
                assertThat(holds(place, TWO)).isTrue();
                assertThat(place.getParent().toFile().list()).containsExactly("pack");
            }
        }
    }

    // The first kill falls in the second half of the steps, where the renames are; the second within the first 20 steps
    // of
    // the next command, which are those that bring the first one to its end.
    @Test
    void recover_killedAgainAtAnyStep_stillLeavesACompletePack() {
        int steps = 0;
        while (killed(freshPack("count" + steps), TWO, steps)) {
            steps++;
        }
        for (int first = steps / 2; first < steps; first++) {
            for (int second = 0; second < 20; second++) {
                Path place = freshPack("k" + first + "-" + second);
                assertThat(killed(place, TWO, first)).isTrue();
                assertThat(killed(place, TWO, second)).isTrue();
                assertPromise(place, ONE, TWO);
                PackFolder.recover(place, false);
                assertThat(place.getParent().toFile().list()).containsExactly("pack");
                assertThat(holds(place, ONE) || holds(place, TWO)).isTrue();
            }
        }
    }

    private Path freshPack(String folder) {
        Path place = room.resolve(folder).resolve("pack");
        PackFolder.write(place, ONE, false);
        return place;
    }

    @Test
    void write_diskFailsAtAnyStep_takesEverythingBack() {
        boolean more = true;
        int warned = 0;
        for (int step = 0; more; step++) {
            Path place = freshPack("f" + step);
            SortedMap<String, String> before = snapshot(place.getParent());
            FailAt steps = new FailAt(step);
            try {
                more = !new PackFolder(place, steps).write(TWO, false).isEmpty();
                warned += more ? 1 : 0;
                assertThat(holds(place, TWO)).isTrue();
                PackFolder.recover(place, false);
                assertThat(place.getParent().toFile().list()).containsExactly("pack");
            } catch (JobException e) {
                assertThat(e.findings().get(0).code()).isEqualTo(Code.PACK_NOT_WRITTEN);
                assertThat(e.findings().get(0).found()).isEqualTo("the system says: worn out");
                assertThat(snapshot(place.getParent())).isEqualTo(before);
            }
        }
        // Once the new pack stands, a fault in removing the old one is only a warning.
        assertThat(warned).isGreaterThan(5);
    }

    private static final class FailAt implements PackDisk.Steps {
        private final int step;
        private int taken;

        FailAt(int step) {
            this.step = step;
        }

        @Override
        public void before(String what, Path path) throws IOException {
            if (taken++ == step) {
                throw new IOException("worn out");
            }
        }
    }

    @Test
    void write_diskFailsForGood_leavesWhatTheNextCommandFinishes() {
        boolean more = true;
        for (int step = 0; more; step++) {
            Path place = freshPack("g" + step);
            int from = step;
            int[] taken = {0};
            try {
                more = !new PackFolder(place, (what, path) -> {
                            if (taken[0]++ >= from) {
                                throw new IOException("gone");
                            }
                        })
                        .write(TWO, false)
                        .isEmpty();
            } catch (JobException e) {
                assertThat(e.findings().get(0).code()).isEqualTo(Code.PACK_NOT_WRITTEN);
            }
            assertPromise(place, ONE, TWO);
            PackFolder.write(place, TWO, false);
            assertThat(place.getParent().toFile().list()).containsExactly("pack");
        }
    }

    @Test
    void write_foldersAboveAndAFault_areTakenBackToo() {
        Path place = room.resolve("a").resolve("b").resolve("pack");
        // 0 and 1 create a and b, 2 the new pack's folder.
        for (int step = 0; step < 8; step++) {
            PackFolder folder = new PackFolder(place, new FailAt(step));
            assertThat(catchThrowableOfType(JobException.class, () -> folder.write(ONE, false)))
                    .isNotNull();
            assertThat(room.toFile().list()).isEmpty();
        }
    }

    @Test
    void write_forbidden_saysSo() {
        Path place = freshPack("forbidden");
        PackFolder folder = new PackFolder(place, (what, path) -> {
            if (what.equals("move")) {
                throw new AccessDeniedException(path.toString());
            }
        });
        JobException e = catchThrowableOfType(JobException.class, () -> folder.write(TWO, false));
        assertThat(e.findings().get(0).expected()).isEqualTo("permission to write in " + place.getParent());
        assertThat(holds(place, ONE)).isTrue();
    }

    @Test
    void recover_workInTheOldPackLeftAside_isKeptUntilReplaceIsSaid() throws IOException {
        int step = 0;
        Path place = freshPack("w" + step);
        while (killed(place, TWO, step) && Files.exists(place)) {
            step++;
            place = freshPack("w" + step);
        }
        // Killed between the two renames.
        Path old = place.resolveSibling("pack.old~");
        Files.writeString(old.resolve("mine.txt"), "mine");

        Path left = place;
        JobException e = catchThrowableOfType(JobException.class, () -> PackFolder.recover(left, false));
        assertThat(e.findings().get(0).code()).isEqualTo(Code.PACK_EDITED);
        assertThat(e.findings().get(0).where().text()).isEqualTo(old.toString());
        assertThat(holds(place, TWO)).isTrue();
        assertThat(old.resolve("mine.txt")).hasContent("mine");

        PackFolder.recover(place, true);
        assertThat(place.getParent().toFile().list()).containsExactly("pack");
    }
}
