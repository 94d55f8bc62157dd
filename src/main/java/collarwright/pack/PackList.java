package collarwright.pack;

import collarwright.units.Together;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Supplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The list of a pack's files with their SHA-256, in the form that {@code sha256sum -c} reads: 64 hex digits, two blanks, the
 * path, a line feed; sorted by path.
 *
 * @param sums hex digits by path
 */
record PackList(SortedMap<String, String> sums) {

    /** The list's own name in a pack. */
    static final String FILE = "files.sha256";

    /** Its name while the other files are being written: the first file of a pack to be written, the last to be renamed. */
    static final String UNFINISHED = "files.sha256~";

    /** The file that every pack holds; a list without it is not ours, unless it is that of a trial piece. */
    static final String MARK = PlanJson.FILE;

    /** The file that the folder of every trial piece holds. */
    static final String TRIAL_MARK = TrialContents.ROWS;

    private static final Pattern LINE = Pattern.compile("([0-9a-f]{64})  (.+)");

    PackList {
        sums = Collections.unmodifiableSortedMap(new TreeMap<>(sums));
    }

    /** The list of some files. */
    static PackList of(Map<String, byte[]> files) {
        List<String> paths = List.copyOf(files.keySet());
        List<Supplier<String>> tasks = new ArrayList<>();
        for (byte[] bytes : files.values()) {
            tasks.add(() -> sum(bytes));
        }
        List<String> found = Together.all(tasks);
        SortedMap<String, String> sums = new TreeMap<>();
        for (int i = 0; i < paths.size(); i++) {
            sums.put(paths.get(i), found.get(i));
        }
        return new PackList(sums);
    }

    /** Reads a list; empty if it is not exactly one that we could have written. */
    static Optional<PackList> parse(byte[] bytes) {
        String text = new String(bytes, StandardCharsets.UTF_8);
        SortedMap<String, String> sums = new TreeMap<>();
        for (String line : text.split("\n")) {
            Matcher match = LINE.matcher(line);
            if (match.matches()) {
                sums.put(match.group(2), match.group(1));
            }
        }
        PackList list = new PackList(sums);
        boolean ours = list.text().equals(text)
                && marked(sums.keySet())
                && PackPaths.faults(sums.keySet()).isEmpty();
        return ours ? Optional.of(list) : Optional.empty();
    }

    /** Whether these are the files of a pack or of a trial piece. */
    static boolean marked(Set<String> paths) {
        return paths.contains(MARK) || paths.contains(TRIAL_MARK);
    }

    /** The folders that the files lie in, without the pack itself. */
    Set<String> folders() {
        Set<String> folders = new TreeSet<>();
        for (String path : sums.keySet()) {
            for (int slash = path.indexOf('/'); slash >= 0; slash = path.indexOf('/', slash + 1)) {
                folders.add(path.substring(0, slash));
            }
        }
        return folders;
    }

    String text() {
        StringBuilder text = new StringBuilder();
        sums.forEach((path, sum) -> text.append(sum).append("  ").append(path).append('\n'));
        return text.toString();
    }

    byte[] bytes() {
        return text().getBytes(StandardCharsets.UTF_8);
    }

    /** The SHA-256 of some bytes in hex digits. */
    static String sum(byte[] bytes) {
        return hex(sha256().digest(bytes));
    }

    /** The SHA-256 of a file in hex digits, however large it is. */
    static String sum(InputStream file) throws IOException {
        MessageDigest digest = sha256();
        byte[] part = new byte[1 << 16];
        for (int read = file.read(part); read >= 0; read = file.read(part)) {
            digest.update(part, 0, read);
        }
        return hex(digest.digest());
    }

    private static String hex(byte[] digest) {
        StringBuilder hex = new StringBuilder(64);
        for (byte b : digest) {
            hex.append(Character.forDigit((b >> 4) & 15, 16)).append(Character.forDigit(b & 15, 16));
        }
        return hex.toString();
    }

    private static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }
}
