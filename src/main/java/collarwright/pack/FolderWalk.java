package collarwright.pack;

import java.io.IOException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.Collections;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * All that lies in a folder, by its path with {@code /} between names. Links are named and not followed; what desktops leave
 * in folders they show is passed over.
 *
 * @param entries what each thing is, by path
 */
record FolderWalk(SortedMap<String, Entry> entries) {

    enum Entry {
        FILE,
        FOLDER,
        LINK
    }

    /** Files of desktops for a folder's looks; nobody's work is lost with them. */
    private static final Set<String> LEFT_BY_DESKTOPS = Set.of(".DS_Store", "Thumbs.db", "desktop.ini");

    FolderWalk {
        entries = Collections.unmodifiableSortedMap(new TreeMap<>(entries));
    }

    static boolean leftByDesktop(Path path) {
        Path name = path.getFileName();
        return name != null && LEFT_BY_DESKTOPS.contains(name.toString());
    }

    static FolderWalk through(Path folder) throws IOException {
        SortedMap<String, Entry> entries = new TreeMap<>();
        Files.walkFileTree(folder, new SimpleFileVisitor<>() {
            @Override
            public FileVisitResult preVisitDirectory(Path at, BasicFileAttributes attributes) {
                if (!at.equals(folder)) {
                    // A junction of Windows is a folder that leads elsewhere.
                    note(at, attributes.isOther() ? Entry.LINK : Entry.FOLDER);
                }
                return attributes.isOther() ? FileVisitResult.SKIP_SUBTREE : FileVisitResult.CONTINUE;
            }

            @Override
            public FileVisitResult visitFile(Path at, BasicFileAttributes attributes) {
                if (!leftByDesktop(at)) {
                    note(at, attributes.isRegularFile() ? Entry.FILE : Entry.LINK);
                }
                return FileVisitResult.CONTINUE;
            }

            private void note(Path at, Entry entry) {
                entries.put(path(folder.relativize(at)), entry);
            }
        });
        return new FolderWalk(entries);
    }

    private static String path(Path relative) {
        StringBuilder path = new StringBuilder();
        for (Path name : relative) {
            path.append(path.length() == 0 ? "" : "/").append(name);
        }
        return path.toString();
    }

    boolean isFile(String path) {
        return entries.get(path) == Entry.FILE;
    }

    boolean isFolder(String path) {
        return entries.get(path) == Entry.FOLDER;
    }

    /** Whether a path is a folder in which something lies. */
    boolean isFilledFolder(String path) {
        SortedMap<String, Entry> below = entries.tailMap(path + "/");
        return isFolder(path) && !below.isEmpty() && below.firstKey().startsWith(path + "/");
    }
}
