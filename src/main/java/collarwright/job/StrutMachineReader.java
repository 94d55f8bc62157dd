package collarwright.job;

import collarwright.finding.Code;
import collarwright.machining.CuttingData;
import collarwright.machining.Machine;
import collarwright.units.Quoted;
import java.util.Optional;

/** Reads which machine drills the ends of struts. */
final class StrutMachineReader {

    private static final Found PRESS = new Found(Optional.empty());

    private final Profiles profiles;

    StrutMachineReader(Profiles profiles) {
        this.profiles = profiles;
    }

    /**
     * What was named.
     *
     * @param bed a bed; empty for a press
     */
    record Found(Optional<Shop.StrutBed> bed) {}

    /**
     * Reads {@code strut-machine}.
     *
     * @param shop {@code [shop]}; empty if it is not there
     * @param materials the struts' material with the key that brought it, and whether there is anything to drill
     * @return what was named, a press if nothing was; empty after findings
     */
    Optional<Found> read(Optional<TableView> shop, SettingsReader.Materials materials) {
        Optional<KeyView> key = shop.map(t -> t.key("strut-machine")).filter(KeyView::present);
        if (key.isEmpty()) {
            return Optional.of(PRESS);
        }
        Optional<Machine> machine = SettingsReader.machine(key.get(), profiles);
        if (machine.isEmpty()) {
            return Optional.empty();
        }
        return switch (machine.get().kind()) {
            case PRESS -> Optional.of(PRESS);
            case BED -> {
                if (!materials.tied()) {
                    key.get()
                            .stop(
                                    Code.JOB_CONFLICT,
                                    "struts with tie holes to drill",
                                    "no tie-hole under [strut]",
                                    "write tie-hole = { diameter = …, from-end = … } under [strut]",
                                    "or take the line out");
                }
                Optional<CuttingData> cutting = materials.strut().flatMap(m -> SettingsReader.cutting(m, profiles));
                yield cutting.map(c -> new Found(Optional.of(new Shop.StrutBed(machine.get(), c))));
            }
            default -> {
                key.get()
                        .stop(
                                Code.JOB_CONFLICT,
                                "a press, or a bed with a stop for the ends of struts",
                                Quoted.text(machine.get().name()) + ", which drills collars",
                                "name a machine of the kind press or bed",
                                "or take the line out: a press is usual");
                yield Optional.empty();
            }
        };
    }
}
