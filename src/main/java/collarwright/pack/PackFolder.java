package collarwright.pack;

import collarwright.finding.Finding;
import collarwright.finding.JobException;
import collarwright.pack.PackSight.Kind;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * Writes a pack as a folder, all of it or none of it, and never over somebody's work.
 *
 * <p>Steps, for a folder NAME: 1. what an earlier, killed command left behind is brought to its end. 2. What stands under NAME
 * is looked at: nothing, an empty folder and a pack just as it was made may be replaced. 3. The whole pack is written to
 * {@code NAME.new~} beside it: first the list of its files under the name {@code files.sha256~}, then the files; all is
 * synced to the disk, the list gets its name, and everything is read back and compared. 4. {@code NAME} is renamed to {@code
 * NAME.old~}, then {@code NAME.new~} to {@code NAME}; then {@code NAME.old~} is removed.
 *
 * <p>What is promised. No system renames two folders at once, so there are two renames with a moment between them. Whenever
 * the program is killed, the old or the new pack stands complete under NAME, or, in that moment, the old one stands complete
 * as {@code NAME.old~} and the new one as {@code NAME.new~}; the next {@link #write} or {@link #recover} finishes the move.
 * Beside NAME there may be an unfinished {@code NAME.new~} or a half-removed {@code NAME.old~}, which it removes. After a
 * power cut the same holds on disks that keep the order of synced writes and renames; other disks may lose the new pack,
 * which is then found incomplete, not taken for a pack. Where a step fails (disk full, no permission), everything that was
 * begun is taken back. One command at a time may write to one NAME: two at once make each other fail.
 *
 * <p>Links are never followed: a link in place of NAME is refused, a link inside a pack counts as a changed or added file.
 */
public final class PackFolder {

    /** What the name of a pack that is being written ends in. */
    static final String NEW = ".new~";

    /** What the name of a pack that is being replaced ends in. */
    static final String OLD = ".old~";

    private final Path shown;
    private final Path place;
    private final Path parent;
    private final Path fresh;
    private final Path old;
    private final PackDisk disk;

    PackFolder(Path shown, PackDisk.Steps steps) {
        this.shown = shown;
        this.place = shown.toAbsolutePath().normalize();
        Path name = place.getFileName();
        Path above = place.getParent();
        if (name == null || above == null) {
            throw new JobException(List.of(PackFaults.noName(shown)));
        }
        this.parent = above;
        this.fresh = place.resolveSibling(name + NEW);
        this.old = place.resolveSibling(name + OLD);
        this.disk = new PackDisk(steps);
    }

    /**
     * Writes a pack.
     *
     * @param place the pack's folder; folders above it are created
     * @param files the pack's files by path, with {@code /} between names; {@code plan.json} is one of them
     *     ({@code rows.csv} for a trial piece), {@code files.sha256} is added
     * @param replace whether a pack may be replaced although files of it were changed, added or removed since it was made;
     *     those changes are then lost
     * @return what a person should know, though the new pack stands: empty, or a warning that the old one is still beside it
     * @throws JobException PACK_FOREIGN if something else stands there; PACK_EDITED if the pack was changed since and {@code
     *     replace} is false; PACK_NOT_WRITTEN if the disk refuses. Nothing is changed then.
     * @throws IllegalArgumentException if a path is not one for every disk, or {@code plan.json} is not there
     */
    public static List<Finding> write(Path place, Map<String, byte[]> files, boolean replace) {
        return new PackFolder(place, PackDisk.Steps.unwatched()).write(files, replace);
    }

    /**
     * Brings what a killed command left behind to its end; does nothing where nothing was left.
     *
     * @param place the pack's folder
     * @param replace whether a left {@code NAME.old~} or {@code NAME.new~} may go although somebody changed files in it since
     * @throws JobException PACK_FOREIGN if a folder with one of our names is not ours; PACK_EDITED if it was changed since
     *     and {@code replace} is false; PACK_NOT_WRITTEN if the disk refuses
     */
    public static void recover(Path place, boolean replace) {
        PackFolder folder = new PackFolder(place, PackDisk.Steps.unwatched());
        try {
            folder.settle(replace);
        } catch (IOException e) {
            throw folder.notWritten(Map.of(), e);
        }
    }

    List<Finding> write(Map<String, byte[]> files, boolean replace) {
        SortedMap<String, byte[]> sorted = new TreeMap<>(files);
        check(sorted);
        try {
            settle(replace);
            refuse(replace);
            return replaceWith(sorted);
        } catch (IOException e) {
            throw notWritten(sorted, e);
        }
    }

    private static void check(SortedMap<String, byte[]> files) {
        List<String> faults = new ArrayList<>(PackPaths.faults(files.keySet()));
        for (String own : List.of(PackList.FILE, PackList.UNFINISHED)) {
            if (files.containsKey(own)) {
                faults.add("a name that the list itself takes: " + own);
            }
        }
        if (!PackList.marked(files.keySet())) {
            faults.add("a pack without " + PackList.MARK);
        }
        if (!faults.isEmpty()) {
            throw new IllegalArgumentException(String.join("; ", faults));
        }
    }

    private JobException notWritten(Map<String, byte[]> files, IOException fault) {
        PackFaults.Need need = PackFaults.Need.of(files, PackList.of(files));
        return new JobException(List.of(PackFaults.notWritten(shown, need, fault)));
    }

    // What stands under NAME may be replaced, or the command stops.
    private void refuse(boolean replace) throws IOException {
        PackSight here = replace ? PackSight.glance(place) : PackSight.at(place);
        if (here.foreign() || here.is(Kind.UNFINISHED)) {
            throw new JobException(List.of(PackFaults.foreign(shown, here)));
        }
        if (here.is(Kind.PACK) && !here.complete() && !replace) {
            throw new JobException(List.of(PackFaults.edited(shown, here)));
        }
    }

    // Which of the three folders there are tells how far a killed command came.
    private void settle(boolean replace) throws IOException {
        PackSight left = PackSight.at(fresh);
        PackSight aside = PackSight.at(old);
        if (left.is(Kind.NOTHING) && aside.is(Kind.NOTHING)) {
            return;
        }
        PackSight here = PackSight.at(place);
        refuseForeign(here, left, aside);
        boolean vacant = here.free();
        if (vacant && left.complete()) {
            vacate(here);
            disk.move(fresh, place);
            vacant = false;
        } else if (vacant && !aside.is(Kind.NOTHING)) {
            vacate(here);
            disk.move(old, place);
            vacant = false;
            aside = PackSight.at(old);
        }
        disk.syncFolder(parent);
        discard(fresh, PackSight.at(fresh), replace);
        discard(old, aside, replace);
    }

    private void refuseForeign(PackSight here, PackSight left, PackSight aside) {
        List<Finding> foreign = new ArrayList<>();
        if (here.foreign() || here.is(Kind.UNFINISHED)) {
            foreign.add(PackFaults.foreign(shown, here));
        }
        if (left.foreign()) {
            foreign.add(PackFaults.foreign(fresh, left));
        }
        if (aside.foreign() || aside.is(Kind.UNFINISHED)) {
            foreign.add(PackFaults.foreign(old, aside));
        }
        if (!foreign.isEmpty()) {
            throw new JobException(foreign);
        }
    }

    private void vacate(PackSight here) throws IOException {
        if (here.is(Kind.EMPTY)) {
            disk.remove(place, PackList.FILE);
        }
    }

    private void discard(Path folder, PackSight sight, boolean replace) throws IOException {
        if (sight.is(Kind.NOTHING)) {
            return;
        }
        if (sight.holdsWork() && !replace) {
            throw new JobException(List.of(PackFaults.edited(folder, sight)));
        }
        disk.remove(folder, sight.is(Kind.UNFINISHED) ? PackList.UNFINISHED : PackList.FILE);
    }

    private List<Finding> replaceWith(SortedMap<String, byte[]> files) throws IOException {
        List<Path> created = disk.createFolders(parent);
        boolean begun = false;
        boolean aside = false;
        try {
            disk.createFolder(fresh);
            begun = true;
            writeFresh(files);
            if (!PackSight.glance(place).is(Kind.NOTHING)) {
                disk.move(place, old);
                aside = true;
            }
            disk.move(fresh, place);
        } catch (IOException | RuntimeException e) {
            takeBack(begun, aside, e);
            disk.removeCreated(created);
            throw e;
        }
        return removeOld(aside);
    }

    private void writeFresh(SortedMap<String, byte[]> files) throws IOException {
        PackList list = PackList.of(files);
        Path unfinished = fresh.resolve(PackList.UNFINISHED);
        disk.write(unfinished, list.bytes());
        disk.sync(unfinished);
        disk.syncFolder(fresh);
        for (String folder : list.folders()) {
            disk.createFolder(fresh.resolve(folder));
        }
        for (Map.Entry<String, byte[]> file : files.entrySet()) {
            disk.write(fresh.resolve(file.getKey()), file.getValue());
        }
        // In a second round: the disk has written most of it by itself by then.
        for (String path : files.keySet()) {
            disk.sync(fresh.resolve(path));
        }
        for (String folder : list.folders()) {
            disk.syncFolder(fresh.resolve(folder));
        }
        disk.syncFolder(fresh);
        disk.move(unfinished, fresh.resolve(PackList.FILE));
        disk.syncFolder(fresh);
        if (!PackSight.at(fresh, files, list).complete()) {
            throw new IOException("what was written could not be read back");
        }
    }

    // If even that fails, the three folders stand as after a kill, and the next command finishes the move.
    private void takeBack(boolean begun, boolean aside, Exception fault) {
        try {
            if (aside) {
                disk.move(old, place);
            }
            if (begun) {
                boolean listed = Files.exists(fresh.resolve(PackList.FILE), LinkOption.NOFOLLOW_LINKS);
                disk.remove(fresh, listed ? PackList.FILE : PackList.UNFINISHED);
            }
        } catch (IOException e) {
            fault.addSuppressed(e);
        }
    }

    private List<Finding> removeOld(boolean aside) {
        try {
            disk.syncFolder(parent);
            if (aside) {
                disk.remove(old, PackList.FILE);
            }
            return List.of();
        } catch (IOException e) {
            return List.of(PackFaults.notRemoved(old, e));
        }
    }
}
