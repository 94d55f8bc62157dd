package collarwright.pack;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Which paths a pack may hold, so that it can be copied to any disk: relative, with {@code /} between names, plain ASCII, at
 * most {@value #LONGEST} characters, no {@code <>:"|?*\}, no name that some system keeps for a device, no name ending in a
 * dot or a blank, and no two that differ by capitals only.
 */
final class PackPaths {

    /** Most characters of a path in a pack. */
    static final int LONGEST = 120;

    private static final String FORBIDDEN = "<>:\"|?*\\";

    // Names of devices, with any ending: Microsoft, "Naming Files, Paths, and Namespaces", section Naming Conventions.
    private static final Set<String> DEVICES = Set.of(
            "CON", "PRN", "AUX", "NUL", "COM0", "COM1", "COM2", "COM3", "COM4", "COM5", "COM6", "COM7", "COM8", "COM9",
            "LPT0", "LPT1", "LPT2", "LPT3", "LPT4", "LPT5", "LPT6", "LPT7", "LPT8", "LPT9", "CONIN$", "CONOUT$");

    private PackPaths() {}

    /** Says what is wrong with the paths of a pack, all of it; empty if nothing is. */
    static List<String> faults(Collection<String> paths) {
        List<String> faults = new ArrayList<>();
        Set<String> folders = new HashSet<>();
        Map<String, String> seen = new HashMap<>();
        for (String path : paths) {
            if (!allowed(path)) {
                faults.add("not a path for every disk: " + path);
                continue;
            }
            for (int slash = path.indexOf('/'); slash >= 0; slash = path.indexOf('/', slash + 1)) {
                String folder = path.substring(0, slash);
                folders.add(capitals(folder));
                differ(seen, folder, faults);
            }
            differ(seen, path, faults);
        }
        paths.stream()
                .filter(path -> folders.contains(capitals(path)))
                .forEach(path -> faults.add("both a file and a folder: " + path));
        return faults;
    }

    private static void differ(Map<String, String> seen, String path, List<String> faults) {
        String other = seen.putIfAbsent(capitals(path), path);
        if (other != null && !other.equals(path)) {
            faults.add("differ by capitals only: " + other + " and " + path);
        }
    }

    /** Whether a path may stand in a pack. */
    static boolean allowed(String path) {
        if (path.isEmpty() || path.length() > LONGEST || !path.chars().allMatch(PackPaths::allowed)) {
            return false;
        }
        for (String name : path.split("/", -1)) {
            if (name.isEmpty() || name.endsWith(".") || name.startsWith(" ") || name.endsWith(" ") || device(name)) {
                return false;
            }
        }
        return true;
    }

    private static boolean allowed(int c) {
        return c >= ' ' && c <= '~' && FORBIDDEN.indexOf(c) < 0;
    }

    private static boolean device(String name) {
        int dot = name.indexOf('.');
        return DEVICES.contains(capitals((dot < 0 ? name : name.substring(0, dot)).strip()));
    }

    // ASCII only, so that no language has its own rule for i.
    private static String capitals(String text) {
        StringBuilder capitals = new StringBuilder(text.length());
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            capitals.append(c >= 'a' && c <= 'z' ? (char) (c - 32) : c);
        }
        return capitals.toString();
    }
}
