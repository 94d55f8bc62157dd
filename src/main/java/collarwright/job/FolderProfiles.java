package collarwright.job;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
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

    /**
     * Finds the folder {@code profiles} that stands beside a job file.
     *
     * @param job the job file
     * @return the folder, or empty if there is none
     */
    public static Optional<FolderProfiles> beside(Path job) {
        Path folder = job.resolveSibling("profiles");
        return Files.isDirectory(folder)
                ? Optional.of(new FolderProfiles(folder, folder.toString()))
                : Optional.empty();
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
