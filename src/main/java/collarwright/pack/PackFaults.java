package collarwright.pack;

import collarwright.finding.Code;
import collarwright.finding.Finding;
import collarwright.finding.Where;
import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileStore;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Says in shop words why a pack was not written. */
final class PackFaults {

    private static final int NAMED = 20;
    private static final int LONGEST_NAME = 255;

    private PackFaults() {}

    private static Where at(Path place) {
        return new Where.Path(printable(place.toString()));
    }

    // A file's name may hold anything; a message holds one line.
    private static String printable(String name) {
        StringBuilder shown = new StringBuilder(name.length());
        name.chars().forEach(c -> shown.append(Character.isISOControl(c) ? '?' : (char) c));
        return shown.toString();
    }

    static Finding foreign(Path place, PackSight sight) {
        String found = switch (sight.kind()) {
            case FILE -> "a file";
            case LINK -> "a link to another place";
            default -> "a folder with other things in it";
        };
        return Finding.stop(
                Code.PACK_FOREIGN,
                at(place),
                "a pack made before, an empty folder, or nothing",
                found,
                "name another folder with --out; what is there is left as it is",
                "or move or rename it first");
    }

    static Finding edited(Path place, PackSight sight) {
        List<String> all = new ArrayList<>();
        sight.changed().forEach(path -> all.add("changed: " + printable(path)));
        sight.added().forEach(path -> all.add("added: " + printable(path)));
        sight.missing().forEach(path -> all.add("missing: " + printable(path)));
        String more = all.size() > NAMED ? "; and " + (all.size() - NAMED) + " more" : "";
        return Finding.stop(
                Code.PACK_EDITED,
                at(place),
                "the files as they were made (" + PackList.FILE + " in the folder lists them)",
                String.join("; ", all.subList(0, StrictMath.min(NAMED, all.size()))) + more,
                "rename the folder or move those files elsewhere to keep them",
                "or run the command again with --replace: the changes are then lost");
    }

    static Finding noName(Path place) {
        return Finding.stop(
                Code.PACK_NOT_WRITTEN,
                at(place),
                "a folder that can be renamed",
                "the top of a disk",
                "name a folder inside it with --out");
    }

    /** What a pack takes on a disk. */
    record Need(List<Long> sizes, int folders) {

        static Need of(Map<String, byte[]> files, PackList list) {
            List<Long> sizes = new ArrayList<>();
            files.values().forEach(bytes -> sizes.add((long) bytes.length));
            sizes.add((long) list.bytes().length);
            return new Need(sizes, list.folders().size() + 1);
        }

        // Disks hand out whole blocks.
        long bytes(long block) {
            long sum = folders * block;
            for (long size : sizes) {
                sum += (size + block - 1) / block * block;
            }
            return sum;
        }
    }

    /** Why a step failed; asked after everything that was begun is taken back, so that the free space is what is left. */
    static Finding notWritten(Path place, Need need, IOException fault) {
        Path ground = ground(place);
        return notAFolder(place, ground)
                .or(() -> readOnly(place, ground))
                .or(() -> nameTooLong(place))
                .or(() -> diskFull(place, ground, need))
                .or(() -> forbidden(place, ground, fault))
                .orElseGet(() -> unknown(place, fault));
    }

    // The nearest thing above the place that is there.
    private static Path ground(Path place) {
        Path at = place.toAbsolutePath().normalize().getParent();
        while (at != null && at.getParent() != null && !Files.exists(at)) {
            at = at.getParent();
        }
        return at == null ? place.toAbsolutePath() : at;
    }

    private static Finding stop(Path place, String expected, String found, String... hints) {
        return Finding.stop(Code.PACK_NOT_WRITTEN, at(place), expected, found, hints);
    }

    private static Optional<Finding> notAFolder(Path place, Path ground) {
        return Files.isDirectory(ground)
                ? Optional.empty()
                : Optional.of(stop(
                        place,
                        "a folder above the pack's",
                        printable(ground.toString()) + " is a file",
                        "name another folder with --out"));
    }

    private static Optional<Finding> readOnly(Path place, Path ground) {
        return store(ground)
                .filter(FileStore::isReadOnly)
                .map(store -> stop(
                        place,
                        "a disk that can be written",
                        printable(ground.toString()) + " is read-only",
                        "name a folder on another disk with --out"));
    }

    private static Optional<Finding> nameTooLong(Path place) {
        String name = String.valueOf(place.toAbsolutePath().normalize().getFileName());
        int length = File.separatorChar == '\\' ? name.length() : name.getBytes(StandardCharsets.UTF_8).length;
        int longest = LONGEST_NAME - PackFolder.NEW.length();
        return length <= longest
                ? Optional.empty()
                : Optional.of(stop(
                        place,
                        "a folder name of at most " + longest + " bytes",
                        length + " bytes",
                        "give the pack a shorter name with --out"));
    }

    private static Optional<Finding> diskFull(Path place, Path ground, Need need) {
        Optional<FileStore> store = store(ground);
        if (store.isEmpty()) {
            return Optional.empty();
        }
        try {
            long needed = need.bytes(StrictMath.max(1, store.get().getBlockSize()));
            long free = store.get().getUsableSpace();
            return free >= needed
                    ? Optional.empty()
                    : Optional.of(stop(
                            place,
                            "at least " + needed + " bytes free, for the whole pack",
                            free + " bytes free",
                            "free some space, or name a folder on another disk with --out"));
        } catch (IOException | UnsupportedOperationException e) {
            return Optional.empty();
        }
    }

    private static Optional<FileStore> store(Path ground) {
        try {
            return Optional.of(Files.getFileStore(ground));
        } catch (IOException e) {
            return Optional.empty();
        }
    }

    private static Optional<Finding> forbidden(Path place, Path ground, IOException fault) {
        return fault instanceof AccessDeniedException
                ? Optional.of(stop(
                        place,
                        "permission to write in " + printable(ground.toString()),
                        "the system forbids it",
                        "name another folder with --out",
                        "or, where a program has a file of the old pack open, close it first"))
                : Optional.empty();
    }

    private static Finding unknown(Path place, IOException fault) {
        return stop(
                place,
                "a folder that can be written",
                "the system says: " + printable(reason(fault)),
                "name another folder with --out, such as one inside this or on another disk");
    }

    private static String reason(IOException fault) {
        String reason = fault instanceof FileSystemException f ? f.getReason() : fault.getMessage();
        return reason == null || reason.isBlank() ? fault.getClass().getSimpleName() : reason;
    }

    static Finding notRemoved(Path old, IOException fault) {
        return Finding.warn(
                Code.PACK_NOT_WRITTEN,
                at(old),
                "the old pack removed",
                "it could not be: " + printable(reason(fault)),
                "the new pack is complete; close every program that has a file of the old one open, and delete this folder");
    }
}
