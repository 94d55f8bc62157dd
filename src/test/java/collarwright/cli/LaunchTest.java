package collarwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** The launchers that lie beside the jar, with a Java that only tells how it was called. */
class LaunchTest {

    private static final Path LAUNCH = Path.of("src", "launch");

    @TempDir
    private Path folder;

    private Path home() {
        return folder.resolve("a java");
    }

    /** The launcher in a folder of its own, and a Java; returns the folder. */
    private Path layOut() throws IOException {
        Path program = Files.createDirectories(folder.resolve("Café à deux"));
        Files.copy(LAUNCH.resolve("collarwright"), program.resolve("collarwright"));
        Path java = Files.createDirectories(home().resolve("bin")).resolve("java");
        Files.writeString(java, "#!/bin/sh\nfor a in \"$@\"; do printf '%s\\n' \"$a\"; done\nexit 3\n");
        executable(java);
        executable(program.resolve("collarwright"));
        return program;
    }

    private static void executable(Path file) throws IOException {
        Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rwxr-xr-x"));
    }

    private String called(Path script, String... words) throws IOException, InterruptedException {
        ProcessBuilder command = new ProcessBuilder(script.toString());
        command.command().addAll(List.of(words));
        command.environment().put("JAVA_HOME", home().toString());
        Process process = command.redirectErrorStream(true).start();
        String said = new String(process.getInputStream().readAllBytes(), java.nio.charset.StandardCharsets.UTF_8);
        assertThat(process.waitFor()).as("the exit code of Java").isEqualTo(3);
        return said;
    }

    @Test
    @EnabledOnOs({OS.LINUX, OS.MAC})
    void launcher_passesItsWords_asTheyAre() throws IOException, InterruptedException {
        Path program = layOut();
        String jar = program.toRealPath().resolve("collarwright.jar").toString();
        assertThat(called(program.resolve("collarwright"), "make", "my job.toml", "--out", "a*b", ""))
                .isEqualTo("-XX:TieredStopAtLevel=1\n-XX:+UseSerialGC\n-jar\n" + jar
                        + "\nmake\nmy job.toml\n--out\na*b\n\n");
    }

    @Test
    @EnabledOnOs({OS.LINUX, OS.MAC})
    void launcher_calledByALink_findsTheJar() throws IOException, InterruptedException {
        Path program = layOut();
        Path bin = Files.createDirectories(folder.resolve("bin"));
        Path link =
                Files.createSymbolicLink(bin.resolve("collarwright"), bin.relativize(program.resolve("collarwright")));
        String jar = program.toRealPath().resolve("collarwright.jar").toString();
        assertThat(called(link, "profiles")).endsWith("-jar\n" + jar + "\nprofiles\n");
    }

    @Test
    void launcherForWindows_startsJavaTheSameWay() throws IOException {
        String script = Files.readString(LAUNCH.resolve("collarwright.cmd"));
        assertThat(script.lines().toList().get(script.lines().toList().size() - 1))
                .isEqualTo("\"%collarwright_java%\" -XX:TieredStopAtLevel=1 -XX:+UseSerialGC"
                        + " -jar \"%~dp0collarwright.jar\" %*");
        assertThat(script.replace("\r\n", "")).as("each line ends in CR LF").doesNotContain("\n");
        assertThat(Files.readString(LAUNCH.resolve("collarwright")))
                .contains("-XX:TieredStopAtLevel=1 -XX:+UseSerialGC -jar \"$jar\" \"$@\"");
    }
}
