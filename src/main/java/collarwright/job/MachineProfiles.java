package collarwright.job;

import collarwright.machining.Machine;
import java.util.Optional;

/** Reads machines from profile files. */
public final class MachineProfiles {

    private MachineProfiles() {}

    static Optional<Machine> read(ProfileFile.Entry entry) {
        return Optional.empty();
    }
}
