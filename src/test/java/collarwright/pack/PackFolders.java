package collarwright.pack;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;

/** Packs of a few small files, and what lies in a folder. */
final class PackFolders {

    private PackFolders() {}

    /** A pack whose every file says which edition it is. */
    static Map<String, byte[]> edition(String name) {
        SortedMap<String, byte[]> files = new TreeMap<>();
        for (String path : new String[] {"plan.json", "index.html", "struts/cut-list.csv", "machine/a/one.ngc"}) {
            files.put(path, (path + " of edition " + name + "\n").repeat(40).getBytes(StandardCharsets.UTF_8));
        }
        files.put("only-in-" + name + ".txt", name.getBytes(StandardCharsets.UTF_8));
        return files;
    }

    /** Everything in a folder: files with their text, folders with nothing, links with where they lead. */
    static SortedMap<String, String> snapshot(Path folder) {
        SortedMap<String, String> all = new TreeMap<>();
        try (Stream<Path> paths = Files.walk(folder)) {
            for (Path path : (Iterable<Path>) paths::iterator) {
                String name = folder.relativize(path).toString().replace('\\', '/');
                if (Files.isSymbolicLink(path)) {
                    all.put(name, "link to " + Files.readSymbolicLink(path));
                } else if (Files.isDirectory(path)) {
                    all.put(name + "/", "");
                } else {
                    all.put(name, new String(Files.readAllBytes(path), StandardCharsets.UTF_8));
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return all;
    }

    /** Whether a folder holds exactly an edition, file by file, and its list. */
    static boolean holds(Path folder, Map<String, byte[]> edition) {
        if (!Files.isDirectory(folder)) {
            return false;
        }
        SortedMap<String, String> files = snapshot(folder);
        files.keySet().removeIf(name -> name.endsWith("/"));
        String list = files.remove("files.sha256");
        SortedMap<String, String> expected = new TreeMap<>();
        edition.forEach((path, bytes) -> expected.put(path, new String(bytes, StandardCharsets.UTF_8)));
        return list != null && list.lines().count() == expected.size() && files.equals(expected);
    }

    /** What a kill may leave: a complete pack under its name, or both complete beside it. */
    static void assertPromise(Path place, Map<String, byte[]> before, Map<String, byte[]> after) {
        Path fresh = place.resolveSibling(place.getFileName() + ".new~");
        Path old = place.resolveSibling(place.getFileName() + ".old~");
        boolean underItsName = holds(place, before) || holds(place, after);
        boolean beside = !Files.exists(place) && holds(old, before) && holds(fresh, after);
        assertThat(underItsName || beside)
                .as("%s", snapshot(place.getParent()).keySet())
                .isTrue();
    }
}
