package collarwright.plan;

import collarwright.collar.CollarBody;
import collarwright.collar.Direction;
import collarwright.collar.HoleContact;
import collarwright.collar.RolledFlat;
import collarwright.collar.StrutSection;
import collarwright.collar.SwungContact;
import collarwright.geometry.Interval;
import collarwright.job.Job;
import collarwright.tooling.Hole;
import java.util.Optional;

/**
 * What a hole lets its strut do after the strip was rolled: its walls come to lie toward the collar's axis, so inside it is
 * narrower than it was cut.
 *
 * @param pattern the pattern's id
 * @param hole the hole as it is cut
 * @param limit the lean at which a nominal strut binds in the needed direction; 0 where it does not pass at all
 * @param least the same for the thickest strut, the smallest hole and the thickest wall
 * @param enough the least hole cut flat that gives the thickest strut its lean; empty if the hole is large enough, or none is
 */
public record RolledHole(String pattern, Hole hole, double limit, double least, Optional<Double> enough) {

    /**
     * Works a hole out.
     *
     * @param job the job
     * @param pattern the pattern's id
     * @param hole one of its holes
     * @return its limits
     */
    static RolledHole of(Job job, String pattern, Hole hole) {
        Interval strut = job.strut().stock().od();
        CollarBody body = job.hub().body();
        double nominal = limit(body, body.bearing().nominal(), strut.nominal(), hole.diameter(), hole);
        double least = limit(
                body,
                body.bearing().max(),
                strut.max(),
                hole.cutter().asDrilled().min(),
                hole);
        return new RolledHole(pattern, hole, nominal, least, enough(body, strut.max(), hole));
    }

    /**
     * Returns how much further than needed the strut can lean.
     *
     * @return below 0 if it binds before it has its angle
     */
    public double slack() {
        return limit - hole.neededLean();
    }

    /**
     * Tells whether a nominal strut goes in at all.
     *
     * @return false where rolling leaves the hole narrower than the strut
     */
    public boolean passes() {
        return limit > 0;
    }

    /** The way that the hole's strut leans, round the hole's axis. */
    private static double bearing(Hole hole) {
        Direction needed = needed(hole);
        return StrictMath.atan2(
                StrictMath.cos(needed.tilt()) * StrictMath.sin(needed.swing()), StrictMath.sin(needed.tilt()));
    }

    /** Tilt and swing of the lean that is needed: cos lean = cos tilt · cos swing. */
    private static Direction needed(Hole hole) {
        double cosine = StrictMath.cos(hole.neededLean()) / StrictMath.cos(hole.swing());
        return new Direction(StrictMath.acos(StrictMath.min(1, cosine)), hole.swing());
    }

    private static double limit(CollarBody body, double bearing, double strut, double size, Hole hole) {
        SwungContact.Wall wall = new SwungContact.Wall(body.innerRim(bearing), body.outerRim(bearing));
        RolledFlat flat = new RolledFlat(size);
        if (strut >= size || !flat.goesThrough(wall)) {
            return 0;
        }
        return new HoleContact(flat, wall, StrutSection.round(strut), 0)
                .toward(bearing(hole))
                .map(HoleContact.Range::most)
                .orElse(0.0);
    }

    private static Optional<Double> enough(CollarBody body, double strut, Hole hole) {
        double bearing = body.bearing().max();
        SwungContact.Wall wall = new SwungContact.Wall(body.innerRim(bearing), body.outerRim(bearing));
        RolledFlat flat = new RolledFlat(hole.diameter());
        boolean reaches = flat.goesThrough(wall)
                && new HoleContact(flat, wall, StrutSection.round(strut), 0).thickest(needed(hole)) >= strut - 1e-9;
        if (reaches) {
            return Optional.empty();
        }
        double size = HoleContact.required(
                new RolledFlat(hole.diameter()),
                wall,
                StrutSection.round(strut),
                new HoleContact.Seat(needed(hole), 0));
        return Double.isFinite(size) ? Optional.of(size) : Optional.empty();
    }
}
