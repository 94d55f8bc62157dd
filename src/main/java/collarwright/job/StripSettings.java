package collarwright.job;

import collarwright.cutting.SheetPacker;
import collarwright.machining.CutMeans;
import collarwright.machining.Machine;
import collarwright.tooling.StripJoint;
import java.util.Optional;

/**
 * How collars are made from flat strip and rolled afterwards.
 *
 * @param joint how the ends meet
 * @param process what cuts the strips out
 * @param kerf width of the cut that cut files allow for; 0 for nominal lines
 * @param leadIn length of lead-ins in cut files, 0 for none
 * @param machine a flat machine that drills the strips; empty for cut files only
 * @param nest the stock sheet that all strips are nested on; empty for one of each pattern on a sheet of its own
 */
public record StripSettings(
        StripJoint joint,
        CutMeans process,
        double kerf,
        double leadIn,
        Optional<Machine> machine,
        Optional<SheetPacker.Stock> nest) {
    /** Checks the lengths and the machine. */
    public StripSettings {
        if (!CutMeans.FLAT.contains(process)) {
            throw new IllegalArgumentException("what cuts flat sheet");
        }
        if (!(kerf >= 0 && leadIn >= 0 && Double.isFinite(kerf + leadIn))) {
            throw new IllegalArgumentException("kerf and lead-in are 0 or more");
        }
        if (machine.filter(m -> m.kind() != Machine.Kind.FLAT).isPresent()) {
            throw new IllegalArgumentException("strips are drilled on a flat machine");
        }
    }
}
