package collarwright.pack;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The single steps that change a disk, one call each, so that a test can stop the work between any two. No step follows a
 * link, and no file stays open.
 */
final class PackDisk {

    private final Steps steps;

    PackDisk(Steps steps) {
        this.steps = steps;
    }

    /** Is told of every step before it is taken. */
    @FunctionalInterface
    interface Steps {
        /**
         * Looks at a step.
         *
         * @param what such as {@code write} or {@code move}
         * @param path what is changed
         * @throws IOException to make the step fail
         */
        void before(String what, Path path) throws IOException;

        /**
         * Lets every step pass.
         *
         * @return steps that nobody looks at
         */
        static Steps unwatched() {
            return (what, path) -> {};
        }
    }

    void createFolder(Path folder) throws IOException {
        steps.before("create", folder);
        Files.createDirectory(folder);
    }

    /** Creates the folders above a path that are not there; returns them, the highest first. */
    List<Path> createFolders(Path folder) throws IOException {
        List<Path> missing = new ArrayList<>();
        for (Path at = folder; at != null && !Files.exists(at); at = at.getParent()) {
            missing.add(0, at);
        }
        List<Path> created = new ArrayList<>();
        try {
            for (Path at : missing) {
                createFolder(at);
                created.add(at);
            }
        } catch (IOException e) {
            removeCreated(created);
            throw e;
        }
        return created;
    }

    /** Takes created folders away again, as far as nothing is in them. */
    void removeCreated(List<Path> created) {
        for (int i = created.size() - 1; i >= 0; i--) {
            try {
                Files.deleteIfExists(created.get(i));
            } catch (IOException e) {
                // Something else was put into it since: it is no longer ours to remove.
                return;
            }
        }
    }

    /** Writes a file that is not there yet. */
    void write(Path file, byte[] bytes) throws IOException {
        steps.before("write", file);
        Files.write(file, bytes, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
    }

    /** Makes sure that a file's bytes are on the disk. */
    void sync(Path file) throws IOException {
        steps.before("sync", file);
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE, LinkOption.NOFOLLOW_LINKS)) {
            channel.force(true);
        }
    }

    /** Makes sure that the names in a folder are on the disk, where the system lets us. */
    void syncFolder(Path folder) throws IOException {
        steps.before("sync", folder);
        try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
            channel.force(true);
        } catch (IOException e) {
            // Windows and some network disks do not open folders; there the order of renames is up to them.
            return;
        }
    }

    /** Gives a file or folder another name in the same folder. */
    void move(Path from, Path to) throws IOException {
        steps.before("move", from);
        try {
            Files.move(from, to, StandardCopyOption.ATOMIC_MOVE);
        } catch (AtomicMoveNotSupportedException e) {
            Files.move(from, to);
        }
    }

    /** Removes a folder with all that is in it, one file last, so that a half-removed folder is still known for what it is. */
    void remove(Path folder, String last) throws IOException {
        Files.walkFileTree(folder, new SimpleFileVisitor<>() {
            @Override
            public FileVisitResult preVisitDirectory(Path at, BasicFileAttributes attributes) throws IOException {
                // A junction of Windows is a folder that leads elsewhere: it is removed, what it leads to stays.
                if (attributes.isOther()) {
                    delete(at);
                    return FileVisitResult.SKIP_SUBTREE;
                }
                return FileVisitResult.CONTINUE;
            }

            @Override
            public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) throws IOException {
                if (!file.equals(folder.resolve(last))) {
                    delete(file);
                }
                return FileVisitResult.CONTINUE;
            }

            @Override
            public FileVisitResult postVisitDirectory(Path at, @Nullable IOException fault) throws IOException {
                if (fault != null) {
                    throw fault;
                }
                if (at.equals(folder)) {
                    delete(folder.resolve(last));
                }
                delete(at);
                return FileVisitResult.CONTINUE;
            }
        });
    }

    private void delete(Path path) throws IOException {
        steps.before("delete", path);
        Files.deleteIfExists(path);
    }
}
