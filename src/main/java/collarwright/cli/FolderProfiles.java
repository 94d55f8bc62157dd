package collarwright.cli;

import collarwright.job.ProfileSource;
import collarwright.job.TextFile;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** A user's own folder of profiles: every {@code .toml} file that stands in it, not in folders below. */
final class FolderProfiles implements ProfileSource {

    private final Path folder;
    private final String shown;

    FolderProfiles(Path folder, String shown) {
        this.folder = folder;
        this.shown = shown;
    }

    @Override
    public List<String> names() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(Files::isRegularFile)
                    .map(file -> folder.relativize(file).toString())
                    .filter(name -> name.endsWith(".toml") && !name.startsWith("."))
                    .sorted()
                    .toList();
        }
    }

    @Override
    public byte[] read(String name) throws IOException {
        // One byte more than is allowed is enough to be refused, however large the file is.
        try (InputStream in = Files.newInputStream(folder.resolve(name))) {
            return in.readNBytes(TextFile.MOST_BYTES + 1);
        }
    }

    @Override
    public String place(String name) {
        return name.isEmpty() ? shown : shown + "/" + name;
    }
}
