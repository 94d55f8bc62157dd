package collarwright.pack;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

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

    static PackSight at(Path place) throws IOException {
        BasicFileAttributes attributes;
        try {
            attributes = Files.readAttributes(place, BasicFileAttributes.class, LinkOption.NOFOLLOW_LINKS);
        } catch (NoSuchFileException e) {
            return plain(Kind.NOTHING);
        }
        if (attributes.isSymbolicLink() || attributes.isOther()) {
            return plain(Kind.LINK);
        }
        return attributes.isDirectory() ? inside(place) : plain(Kind.FILE);
    }

    // Looks at the names on top first: a foreign folder may be a whole disk.
    private static PackSight inside(Path folder) throws IOException {
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
            return list.isPresent() ? compared(folder, list.get()) : plain(Kind.FOREIGN);
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

    private static PackSight compared(Path folder, PackList list) throws IOException {
        FolderWalk walk = FolderWalk.through(folder);
        List<String> changed = new ArrayList<>();
        List<String> missing = new ArrayList<>();
        for (Map.Entry<String, String> file : list.sums().entrySet()) {
            if (!walk.entries().containsKey(file.getKey())) {
                missing.add(file.getKey());
            } else if (!walk.isFile(file.getKey())
                    || !sum(folder.resolve(file.getKey())).equals(file.getValue())) {
                changed.add(file.getKey());
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

    private static String sum(Path file) throws IOException {
        try (InputStream bytes = Files.newInputStream(file, LinkOption.NOFOLLOW_LINKS)) {
            return PackList.sum(bytes);
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
