package collarwright.cli;

import collarwright.finding.Code;
import collarwright.finding.Finding;
import collarwright.finding.JobException;
import collarwright.finding.Where;
import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.List;

/** Writes one file, all of it or nothing, and never over another unless told to. */
final class NewFile {

    private NewFile() {}

    /**
     * Writes a file: beside its place first, then it gets its name.
     *
     * @param file its place; folders above it are created
     * @param bytes its content
     * @param replace whether a file that stands there may be replaced
     * @throws JobException PACK_NOT_WRITTEN if something stands there or the disk refuses; nothing is changed then
     */
    static void write(Path file, byte[] bytes, boolean replace) {
        Path place = file.toAbsolutePath().normalize();
        Path fresh = place.resolveSibling(place.getFileName() + ".new~");
        try {
            if (Files.isDirectory(place)) {
                throw refused(file, "a file", "a folder", "name a file in it");
            }
            if (Files.exists(place, LinkOption.NOFOLLOW_LINKS) && !replace) {
                throw refused(
                        file,
                        "a file that is not there yet",
                        "it is there already",
                        "name another file, or run the command again with --replace");
            }
            Path above = place.getParent();
            if (above != null) {
                Files.createDirectories(above);
            }
            Files.write(
                    fresh,
                    bytes,
                    StandardOpenOption.CREATE,
                    StandardOpenOption.TRUNCATE_EXISTING,
                    StandardOpenOption.WRITE,
                    StandardOpenOption.SYNC);
            if (replace) {
                Files.move(fresh, place, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
            } else {
                Files.move(fresh, place);
            }
        } catch (FileAlreadyExistsException e) {
            takeBack(fresh, e);
            throw refused(
                    file, "a file that can be written", "something of this name is in the way", "name another file");
        } catch (IOException e) {
            takeBack(fresh, e);
            throw refused(
                    file,
                    "a file that can be written",
                    String.valueOf(e.getMessage()),
                    "choose a folder you may write to");
        }
    }

    private static void takeBack(Path fresh, IOException fault) {
        try {
            Files.deleteIfExists(fresh);
        } catch (IOException e) {
            fault.addSuppressed(e);
        }
    }

    private static JobException refused(Path file, String expected, String found, String hint) {
        return new JobException(
                List.of(Finding.stop(Code.PACK_NOT_WRITTEN, new Where.Path(file.toString()), expected, found, hint)));
    }
}
