package collarwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import collarwright.job.Profiles;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FolderProfilesTest {

    @TempDir
    private Path folder = Path.of("unset");

    @Test
    void folder_isReadInTheOrderOfItsNames() throws IOException {
        Path own = Files.createDirectory(folder.resolve("Größe é x"));
        Files.writeString(own.resolve("b.toml"), "x = 1\n");
        Files.writeString(own.resolve("a.toml"), "y = 1\n");
        Files.writeString(own.resolve("notes.txt"), "not a profile");
        Files.writeString(own.resolve(".hidden.toml"), "z = 1\n");
        Files.createDirectory(own.resolve("folder.toml"));
        FolderProfiles source = new FolderProfiles(own, "profiles");

        assertThat(source.names()).containsExactly("a.toml", "b.toml");
        assertThat(shown(source))
                .containsExactly("JOB_UNKNOWN_KEY profiles/a.toml:1:1", "JOB_UNKNOWN_KEY profiles/b.toml:1:1");
    }

    @Test
    void folder_notThere_isAFinding() {
        assertThat(shown(new FolderProfiles(folder.resolve("none"), "none")))
                .containsExactly("JOB_FILE_UNREADABLE none");
    }

    private static List<String> shown(FolderProfiles source) {
        return Profiles.load(List.of(source)).findings().stream()
                .map(f -> f.code() + " " + f.where().text())
                .toList();
    }
}
