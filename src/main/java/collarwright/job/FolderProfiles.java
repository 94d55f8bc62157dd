package collarwright.job;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** A user's own folder of profiles: every {@code .toml} file that stands in it, not in folders below. */
public final class FolderProfiles implements ProfileSource {

    private final Path folder;
    private final String shown;

    /**
     * A folder.
     *
     * @param folder the folder
     * @param shown what findings call it, as the user gave it
     */
    public FolderProfiles(Path folder, String shown) {
        this.folder = folder;
        this.shown = shown;
    }

    @Override
    public List<String> names() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(Files::isRegularFile)
                    .map(file -> file.getFileName().toString())
                    .filter(name -> name.endsWith(".toml") && !name.startsWith("."))
                    .sorted()
                    .toList();
        }
    }

    @Override
    public byte[] read(String name) throws IOException {
        return Files.readAllBytes(folder.resolve(name));
    }

    @Override
    public String place(String name) {
        return name.isEmpty() ? shown : shown + "/" + name;
    }
}
