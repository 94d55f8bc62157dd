package collarwright.job;

import collarwright.cutting.SheetPacker;
import collarwright.finding.Code;
import collarwright.machining.CutMeans;
import collarwright.machining.Machine;
import collarwright.stock.Material;
import collarwright.tooling.StripJoint;
import collarwright.units.Quoted;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** Reads the job's table {@code [strip]}: collars that are cut from flat strip and rolled. */
final class StripReader {

    /** Wider cuts and longer lead-ins than any torch makes: our choice, no source. */
    private static final double MOST_KERF = 10;

    private static final double MOST_LEAD_IN = 50;

    private static final Found PIPE = new Found(Optional.empty());

    private final TableView table;
    private final Profiles profiles;

    private StripReader(TableView table, Profiles profiles) {
        this.table = table;
        this.profiles = profiles;
    }

    /**
     * How collars are made.
     *
     * @param strip from strip; empty if from pipe
     */
    record Found(Optional<StripSettings> strip) {}

    /**
     * Reads the table.
     *
     * @param table {@code [strip]}; empty if it is not there
     * @param profiles know machines
     * @param material the collar's material; empty if it could not be read
     * @param collars the machine that drills collars; empty if it could not be read
     * @return how collars are made; empty after findings
     */
    static Optional<Found> read(
            Optional<TableView> table, Profiles profiles, Optional<Material> material, Optional<Machine> collars) {
        if (table.isEmpty()) {
            return Optional.of(PIPE);
        }
        StripReader reader = new StripReader(table.get(), profiles);
        return reader.read(material, collars).map(s -> new Found(Optional.of(s)));
    }

    private Optional<StripSettings> read(Optional<Material> material, Optional<Machine> collars) {
        Map<String, CutMeans> processes = new LinkedHashMap<>();
        for (CutMeans process : CutMeans.FLAT) {
            processes.put(process.word(), process);
        }
        Given<CutMeans> process = new Given<>(table.key("cut"), k -> k.word(processes), CutMeans.ROUTER);
        Given<Double> kerf = new Given<>(table.key("kerf"), k -> NestReader.upTo(k, MOST_KERF), 0.0);
        Given<Double> leadIn = new Given<>(table.key("lead-in"), k -> NestReader.upTo(k, MOST_LEAD_IN), 0.0);
        Optional<StripJoint> joint = joint();
        KeyView machineKey = table.key("machine");
        Optional<Machine> machine = machineKey.present() ? machine(machineKey) : Optional.empty();
        boolean good = !machineKey.present() || machine.isPresent();
        if (process.good() && burnt(process.value(), material)) {
            good = false;
        }
        if (collars.filter(m -> m.kind() == Machine.Kind.ROTARY || m.kind() == Machine.Kind.TUBE)
                .isPresent()) {
            process.key()
                    .stop(
                            Code.JOB_CONFLICT,
                            "collars from flat strip, or drilled on the stick",
                            collars.get().kind() == Machine.Kind.TUBE
                                    ? "[strip], and a tube cutter under [shop]"
                                    : "[strip], and a rotary machine under [shop]",
                            "take one of the two out");
            good = false;
        }
        KeyView nestKey = table.key("nest");
        Optional<SheetPacker.Stock> nest = nestKey.table().flatMap(t -> NestReader.read(t, kerf.value()));
        good &= nest.isPresent() || !nestKey.present();
        if (!good || !process.good() || !kerf.good() || !leadIn.good() || joint.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(
                new StripSettings(joint.get(), process.value(), kerf.value(), leadIn.value(), machine, nest));
    }

    private boolean burnt(CutMeans process, Optional<Material> material) {
        boolean refused =
                process.burns() && material.filter(Material::chlorinated).isPresent();
        if (refused) {
            table.key("cut")
                    .stop(
                            Code.LASER_PVC,
                            "a material that a laser or a plasma torch may cut",
                            material.get().title() + ", whose fumes are toxic and corrosive",
                            "cut it with a router: cut = \"router\"",
                            "or take another material");
        }
        return refused;
    }

    private Optional<StripJoint> joint() {
        Map<String, StripJoint.Kind> words = new LinkedHashMap<>();
        for (StripJoint.Kind kind : StripJoint.Kind.values()) {
            words.put(kind.word(), kind);
        }
        Given<StripJoint.Kind> kind = new Given<>(table.key("joint"), k -> k.word(words), StripJoint.Kind.BUTT);
        KeyView lengthKey = table.key("joint-length");
        if (!kind.good()) {
            return Optional.empty();
        }
        if (kind.value() == StripJoint.Kind.BUTT) {
            if (lengthKey.present()) {
                lengthKey.stop(
                        Code.JOB_CONFLICT,
                        "no length for ends that just meet",
                        lengthKey.shown(),
                        "write joint = \"gap\" or joint = \"lap\", or take the length out");
                return Optional.empty();
            }
            return Optional.of(new StripJoint(StripJoint.Kind.BUTT, 0));
        }
        return table.need("joint-length", "what stays open or overlaps", "joint-length = \"20 mm\"")
                .size()
                .map(length -> new StripJoint(kind.value(), length));
    }

    private Optional<Machine> machine(KeyView key) {
        Optional<Machine> machine = SettingsReader.machine(key, profiles);
        if (machine.filter(m -> m.kind() != Machine.Kind.FLAT).isPresent()) {
            key.stop(
                    Code.JOB_CONFLICT,
                    "a machine with a flat table",
                    Quoted.text(machine.get().name()) + ", which has none",
                    "name a machine of the kind flat",
                    "or take the line out: cut files only");
            return Optional.empty();
        }
        return machine;
    }
}
