package collarwright.pack;

import collarwright.units.Together;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;

/**
 * What stands at a place where a pack is, or is to be. Links are seen as links and never followed.
 *
 * @param kind what it is
 * @param changed files of a pack that are not as they were made, sorted
 * @param added files, links and empty folders that the pack's list does not have, sorted
 * @param missing files of the list that are not there, sorted
 */
record PackSight(Kind kind, List<String> changed, List<String> added, List<String> missing) {

    enum Kind {
        /** Nothing is there. */
        NOTHING,
        /** A folder with nothing in it. */
        EMPTY,
        /** A folder with a list of ours. */
        PACK,
        /** A pack that was being written. */
        UNFINISHED,
        /** A folder with something else in it. */
        FOREIGN,
        /** A file. */
        FILE,
        /** A link to somewhere else. */
        LINK
    }

    /** Larger than any list we write: 100,000 files of 120 characters. */
    private static final long LARGEST_LIST = 20_000_000;

    PackSight {
        changed = List.copyOf(changed);
        added = List.copyOf(added);
        missing = List.copyOf(missing);
    }

    private static PackSight plain(Kind kind) {
        return new PackSight(kind, List.of(), List.of(), List.of());
    }

    boolean is(Kind other) {
        return kind == other;
    }

    /** Whether it is a pack just as it was made. */
    boolean complete() {
        return kind == Kind.PACK && changed.isEmpty() && added.isEmpty() && missing.isEmpty();
    }

    /** Whether something of a person's would be lost with it; files that are only missing were lost before. */
    boolean holdsWork() {
        return !changed.isEmpty() || !added.isEmpty();
    }

    /** Whether there is no pack and nothing else either. */
    boolean free() {
        return kind == Kind.NOTHING || kind == Kind.EMPTY;
    }

    /** Whether it is none of ours. */
    boolean foreign() {
        return kind == Kind.FOREIGN || kind == Kind.FILE || kind == Kind.LINK;
    }

    /** Looks at a folder with a list of ours. */
    @FunctionalInterface
    private interface Inside {
        PackSight look(Path folder, PackList list) throws IOException;
    }

    /** Tells whether a file is as it was made. */
    @FunctionalInterface
    private interface Sameness {
        boolean holds(String path, Path file) throws IOException;
    }

    /** Looks at a place, and at every file of a pack there. */
    static PackSight at(Path place) throws IOException {
        return at(place, PackSight::summed);
    }

    /** Looks at a place where files and their list were just written, and reads them all back. */
    static PackSight at(Path place, Map<String, byte[]> written, PackList listed) throws IOException {
        Sameness same = (path, file) -> Arrays.equals(written.get(path), Files.readAllBytes(file));
        return at(place, (folder, list) -> {
            PackSight sight = compared(folder, list, same);
            return list.equals(listed)
                    ? sight
                    : new PackSight(Kind.PACK, List.of(PackList.FILE), sight.added, sight.missing);
        });
    }

    /** Looks at a place only so far that it is known what it is; its names are walked, but no file is read. */
    static PackSight glance(Path place) throws IOException {
        return at(place, (folder, list) -> compared(folder, list, (path, file) -> true));
    }

    private static PackSight at(Path place, Inside pack) throws IOException {
        BasicFileAttributes attributes;
        try {
            attributes = Files.readAttributes(place, BasicFileAttributes.class, LinkOption.NOFOLLOW_LINKS);
        } catch (NoSuchFileException e) {
            return plain(Kind.NOTHING);
        }
        if (attributes.isSymbolicLink() || attributes.isOther()) {
            return plain(Kind.LINK);
        }
        return attributes.isDirectory() ? inside(place, pack) : plain(Kind.FILE);
    }

    // Looks at the names on top first: a foreign folder may be a whole disk.
    private static PackSight inside(Path folder, Inside pack) throws IOException {
        Set<String> top = new HashSet<>();
        try (DirectoryStream<Path> entries = Files.newDirectoryStream(folder)) {
            for (Path entry : entries) {
                if (!FolderWalk.leftByDesktop(entry)) {
                    top.add(folder.relativize(entry).toString());
                }
            }
        } catch (DirectoryIteratorException e) {
            throw e.getCause();
        }
        if (top.isEmpty()) {
            return plain(Kind.EMPTY);
        }
        if (top.contains(PackList.FILE)) {
            Optional<PackList> list = list(folder.resolve(PackList.FILE));
            return list.isPresent() ? pack.look(folder, list.get()) : plain(Kind.FOREIGN);
        }
        return top.contains(PackList.UNFINISHED) ? unfinished(folder) : plain(Kind.FOREIGN);
    }

    private static Optional<PackList> list(Path file) throws IOException {
        BasicFileAttributes attributes =
                Files.readAttributes(file, BasicFileAttributes.class, LinkOption.NOFOLLOW_LINKS);
        return attributes.isRegularFile() && attributes.size() <= LARGEST_LIST
                ? PackList.parse(Files.readAllBytes(file))
                : Optional.empty();
    }

    /** By the sums of the list. */
    private static PackSight summed(Path folder, PackList list) throws IOException {
        FolderWalk walk = FolderWalk.through(folder);
        List<String> paths = list.sums().keySet().stream().filter(walk::isFile).toList();
        List<Supplier<Boolean>> tasks = new ArrayList<>();
        for (String path : paths) {
            tasks.add(() -> sum(folder.resolve(path)).equals(list.sums().get(path)));
        }
        Set<String> unchanged = new HashSet<>();
        try {
            List<Boolean> found = Together.all(tasks);
            for (int i = 0; i < paths.size(); i++) {
                if (found.get(i)) {
                    unchanged.add(paths.get(i));
                }
            }
        } catch (UncheckedIOException e) {
            throw e.getCause();
        }
        return compared(folder, list, (path, file) -> unchanged.contains(path));
    }

    private static PackSight compared(Path folder, PackList list, Sameness same) throws IOException {
        FolderWalk walk = FolderWalk.through(folder);
        List<String> changed = new ArrayList<>();
        List<String> missing = new ArrayList<>();
        for (String path : list.sums().keySet()) {
            if (!walk.entries().containsKey(path)) {
                missing.add(path);
            } else if (!walk.isFile(path) || !same.holds(path, folder.resolve(path))) {
                changed.add(path);
            }
        }
        Set<String> folders = list.folders();
        List<String> added = new ArrayList<>();
        for (String path : walk.entries().keySet()) {
            boolean ours = list.sums().containsKey(path)
                    || path.equals(PackList.FILE)
                    || (folders.contains(path) && walk.isFolder(path));
            // A folder of somebody else's is named by what lies in it.
            if (!ours && !walk.isFilledFolder(path)) {
                added.add(path);
            }
        }
        return new PackSight(Kind.PACK, changed, added, missing);
    }

    private static String sum(Path file) {
        try (InputStream bytes = Files.newInputStream(file, LinkOption.NOFOLLOW_LINKS)) {
            return PackList.sum(bytes);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    // Its list was on the disk before any other file, so whatever the list does not name is somebody else's.
    private static PackSight unfinished(Path folder) throws IOException {
        Optional<PackList> list = list(folder.resolve(PackList.UNFINISHED));
        Set<String> ours = new HashSet<>(Set.of(PackList.UNFINISHED));
        list.ifPresent(l -> ours.addAll(l.sums().keySet()));
        list.ifPresent(l -> ours.addAll(l.folders()));
        boolean onlyOurs = ours.containsAll(FolderWalk.through(folder).entries().keySet());
        return plain(onlyOurs ? Kind.UNFINISHED : Kind.FOREIGN);
    }
}
