package collarwright.pack;

import static collarwright.pack.PackFolders.edition;
import static collarwright.pack.PackFolders.holds;
import static collarwright.pack.PackFolders.snapshot;
import static org.assertj.core.api.Assertions.assertThat;

import collarwright.testing.Seeds;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Kills a program that writes packs, at moments drawn from a seed; {@code -Dkills=200} kills more often. */
class PackFolderProcessTest {

    private static final int KILLS = Integer.getInteger("kills", 6);

    @TempDir
    private Path room;

    /** Writes one pack over the other until it is killed. */
    static final class Writer {
        private Writer() {}

        public static void main(String[] arguments) throws IOException {
            Path place = Path.of(arguments[0]);
            PackFolder.write(place, edition("one"), false);
            Files.createFile(Path.of(arguments[1]));
            for (int round = 0; round < 100_000; round++) {
                PackFolder.write(place, edition(round % 2 == 0 ? "two" : "one"), false);
            }
        }
    }

    @Test
    void write_processKilledAtRandom_leavesACompletePack() throws Exception {
        Seeds seeds = Seeds.of(20_000);
        for (int kill = 0; kill < KILLS; kill++) {
            Path place = room.resolve("kill " + kill).resolve("pack é");
            killAfter(place, room.resolve("ready " + kill), seeds.between(0, 60));

            assertThat(complete(place))
                    .as("kill %d: %s", kill, snapshot(place.getParent()).keySet())
                    .isTrue();
            PackFolder.recover(place, false);
            assertThat(holds(place, edition("one")) || holds(place, edition("two")))
                    .isTrue();
            assertThat(place.getParent().toFile().list()).containsExactly("pack é");
        }
    }

    private static void killAfter(Path place, Path ready, double milliseconds) throws Exception {
        Process writer = new ProcessBuilder(List.of(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-Xshare:auto",
                        "-XX:TieredStopAtLevel=1",
                        "-cp",
                        System.getProperty("java.class.path"),
                        Writer.class.getName(),
                        place.toString(),
                        ready.toString()))
                .redirectErrorStream(true)
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .start();
        try {
            while (!Files.exists(ready)) {
                assertThat(writer.isAlive()).isTrue();
                Thread.sleep(2);
            }
            Thread.sleep((long) milliseconds);
        } finally {
            writer.destroyForcibly();
        }
        assertThat(writer.waitFor(30, TimeUnit.SECONDS)).isTrue();
    }

    private static boolean complete(Path place) {
        if (Files.exists(place)) {
            return holds(place, edition("one")) || holds(place, edition("two"));
        }
        Path fresh = place.resolveSibling(place.getFileName() + ".new~");
        Path old = place.resolveSibling(place.getFileName() + ".old~");
        return (holds(old, edition("one")) && holds(fresh, edition("two")))
                || (holds(old, edition("two")) && holds(fresh, edition("one")));
    }
}
