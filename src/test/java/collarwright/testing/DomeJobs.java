package collarwright.testing;

import collarwright.job.BundledProfiles;
import collarwright.job.FrameFiles;
import collarwright.job.Job;
import collarwright.job.JobReader;
import collarwright.job.JobReading;
import collarwright.job.Profiles;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** The jobs in {@code src/test/resources/domes}: a dome of each kind, and a frame from outside. */
public final class DomeJobs {
    private DomeJobs() {}

    /** Their files. */
    public static List<Path> files() throws IOException {
        return files("domes");
    }

    /** The files of jobs whose hub types share patterns or whose holes lie at several heights. */
    public static List<Path> shared() throws IOException {
        return files("shared-jobs");
    }

    /** The file of one job. */
    public static Path named(String group, String name) {
        return ProjectFolder.top()
                .resolve("src/test/resources")
                .resolve(group)
                .resolve(name)
                .resolve("job.toml");
    }

    private static List<Path> files(String name) throws IOException {
        Path folder = ProjectFolder.top().resolve("src/test/resources").resolve(name);
        try (Stream<Path> folders = Files.list(folder)) {
            return folders.map(f -> f.resolve("job.toml"))
                    .filter(Files::exists)
                    .sorted()
                    .toList();
        }
    }

    /** The jobs themselves. */
    public static List<Job> all() throws IOException {
        List<Job> jobs = new ArrayList<>();
        for (Path file : files()) {
            jobs.add(read(file));
        }
        return jobs;
    }

    /** The job of a file. */
    public static Job read(Path file) throws IOException {
        JobReading reading = JobReader.read(
                file.toString(),
                Files.readAllBytes(file),
                Profiles.load(List.of(new BundledProfiles())),
                name -> opened(file.resolveSibling(name)));
        return reading.job().orElseThrow(() -> new AssertionError(reading.findings()));
    }

    private static FrameFiles.Opened opened(Path file) {
        try {
            return new FrameFiles.Opened(Optional.of(Files.readAllBytes(file)), List.of());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
