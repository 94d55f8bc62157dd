package collarwright.cli;

import collarwright.finding.Code;
import collarwright.finding.Finding;
import collarwright.finding.JobException;
import collarwright.finding.Where;
import collarwright.frame.FrameReader;
import collarwright.job.BundledProfiles;
import collarwright.job.FrameFiles;
import collarwright.job.Job;
import collarwright.job.JobReader;
import collarwright.job.JobReading;
import collarwright.job.ProfileSource;
import collarwright.job.Profiles;
import collarwright.job.TextFile;
import collarwright.plan.Production;
import collarwright.stock.RoundStock;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A job file on disk with the profiles that it may call: the program's own, those in the folder {@code profiles} beside
 * it, and those of a named folder; the later ones win.
 */
final class JobFiles {

    private final Path file;
    private final Profiles profiles;

    private JobFiles(Path file, Profiles profiles) {
        this.file = file;
        this.profiles = profiles;
    }

    static JobFiles open(Path file, Optional<Path> folder) {
        Path beside = file.toAbsolutePath().resolveSibling("profiles");
        return new JobFiles(file, profiles(Files.isDirectory(beside) ? Optional.of(beside) : Optional.empty(), folder));
    }

    static Profiles profiles(Optional<Path> beside, Optional<Path> folder) {
        List<ProfileSource> sources = new ArrayList<>();
        sources.add(new BundledProfiles());
        beside.ifPresent(b -> sources.add(new FolderProfiles(b, "profiles")));
        folder.ifPresent(f -> sources.add(new FolderProfiles(existing(f), f.toString())));
        return Profiles.load(sources);
    }

    private static Path existing(Path folder) {
        if (!Files.isDirectory(folder)) {
            throw stop(Code.JOB_FILE_MISSING, folder, "a folder of profiles", "no such folder", "check --profiles");
        }
        return folder;
    }

    /**
     * Reads and plans the job.
     *
     * @param progress is told each step
     * @return the plan with its programs; all findings, those of reading too
     * @throws JobException if the job cannot be read
     */
    Planned planned(Progress progress) {
        Read read = read(progress);
        progress.step("planning, writing and rehearsing programs");
        Production production = Production.of(read.job(), profiles.allStock());
        List<Finding> findings = new ArrayList<>(read.findings());
        findings.addAll(production.findings());
        return new Planned(production, findings);
    }

    /** All pipes and bars that are known. */
    List<RoundStock> allStock() {
        return profiles.allStock();
    }

    /**
     * Reads the job.
     *
     * @param progress is told
     * @return the job with the warnings and notes of reading
     * @throws JobException if the job cannot be read
     */
    Read read(Progress progress) {
        progress.step("reading the job");
        JobReading reading = JobReader.read(file.toString(), bytes(), profiles, this::frame);
        return new Read(reading.job().orElseThrow(() -> new JobException(reading.findings())), reading.findings());
    }

    /** A job that could be read, with what was found on the way. */
    record Read(Job job, List<Finding> findings) {}

    /** A folder beside a job file, named after it. */
    static Path beside(Path job, String ending) {
        String name = String.valueOf(job.getFileName());
        int dot = name.lastIndexOf('.');
        return job.resolveSibling((dot > 0 ? name.substring(0, dot) : name) + ending);
    }

    /** What came of a job, with every finding on the way. */
    record Planned(Production production, List<Finding> findings) {}

    // A frame's file lies beside the job; one that is too large is refused before a byte of it is read.
    private FrameFiles.Opened frame(String name) {
        try {
            Path path = file.toAbsolutePath().resolveSibling(name);
            if (!Files.isRegularFile(path)) {
                return new FrameFiles.Opened(Optional.empty(), List.of());
            }
            Optional<Finding> large = FrameReader.tooLarge(name, Files.size(path));
            return large.isPresent()
                    ? new FrameFiles.Opened(Optional.empty(), List.of(large.get()))
                    : new FrameFiles.Opened(Optional.of(Files.readAllBytes(path)), List.of());
        } catch (InvalidPathException e) {
            return new FrameFiles.Opened(Optional.empty(), List.of());
        } catch (IOException e) {
            return new FrameFiles.Opened(
                    Optional.empty(),
                    List.of(Finding.stop(
                            Code.FRAME_FILE,
                            new Where.Part(name),
                            "a file that can be read",
                            String.valueOf(e.getMessage()),
                            "check that you may read it")));
        }
    }

    private byte[] bytes() {
        if (!Files.exists(file)) {
            throw stop(
                    Code.JOB_FILE_MISSING,
                    file,
                    "a job file",
                    "no such file",
                    "check the name and the folder",
                    "or write a starter job: collarwright new " + file);
        }
        if (Files.isDirectory(file)) {
            throw stop(Code.JOB_FILE_UNREADABLE, file, "a job file", "a folder", "name the job file in it");
        }
        try (InputStream in = Files.newInputStream(file)) {
            // One byte more than is allowed is enough to be refused by the reader, however large the file is.
            return in.readNBytes(TextFile.MOST_BYTES + 1);
        } catch (IOException e) {
            throw stop(
                    Code.JOB_FILE_UNREADABLE,
                    file,
                    "a file that can be read",
                    String.valueOf(e.getMessage()),
                    "check that you may read it");
        }
    }

    private static JobException stop(Code code, Path path, String expected, String found, String... hints) {
        return new JobException(List.of(Finding.stop(code, new Where.Path(path.toString()), expected, found, hints)));
    }
}
