package collarwright.assembly;

import collarwright.collar.CollarBody;
import collarwright.geometry.Interval;
import collarwright.strut.Setbacks;
import java.util.ArrayList;
import java.util.List;

/** Hubs written by hand: PVC pipe of 160 mm, struts of 40.2 mm, ring of 90 mm, unless a test says otherwise. */
final class Seats {

    static final double STRUT = 40.2;
    static final double GAP = 2;
    static final CollarBody BODY = new CollarBody(80, Interval.of(5), 80);
    static final HubSpace.Ring RING = new HubSpace.Ring(45, -15, 25);
    static final HubSpace SPACE = new HubSpace(BODY, STRUT, RING, 2);

    private Seats() {}

    /** A strut whose end keeps clear of the ring, in a hole on the mid-plane. */
    static SeatedStrut seat(double axialDegrees, double azimuthDegrees, HubSpace space) {
        double axial = StrictMath.toRadians(axialDegrees);
        double setback = Setbacks.clearOfRing(space.ring().radius(), GAP, space.strut(), axial);
        return new SeatedStrut(
                axial,
                StrictMath.toRadians(azimuthDegrees),
                0,
                setback,
                new SeatedStrut.Opening(space.strut() + 1.8, 0));
    }

    /** A hub of struts given as axial angle and azimuth in turn, in degrees. */
    static List<SeatedStrut> hub(HubSpace space, double... axialAndAzimuth) {
        List<SeatedStrut> seats = new ArrayList<>();
        for (int i = 0; i < axialAndAzimuth.length; i += 2) {
            seats.add(seat(axialAndAzimuth[i], axialAndAzimuth[i + 1], space));
        }
        return seats;
    }

    /** The six-way hub of a 3v icosahedron inside one of its faces' rims: gaps 55.6906 (twice) and 62.1547 (four times). */
    static List<SeatedStrut> sixWay(HubSpace space) {
        double a = 55.6906;
        double b = 62.1547;
        return hub(
                space,
                11.641,
                0,
                11.9,
                a,
                11.641,
                a + b,
                11.641,
                a + 2 * b,
                11.9,
                2 * a + 2 * b,
                11.641,
                2 * a + 3 * b);
    }

    /** The five-way hub of a 3v icosahedron. */
    static List<SeatedStrut> fiveWay(HubSpace space) {
        return hub(space, 10.038, 0, 10.038, 72, 10.038, 144, 10.038, 216, 10.038, 288);
    }

    /** The same hub with its struts turned about its axis. */
    static List<SeatedStrut> turned(List<SeatedStrut> seats, double turn) {
        return seats.stream()
                .map(s -> new SeatedStrut(s.axialAngle(), s.azimuth() + turn, s.swing(), s.setback(), s.hole()))
                .toList();
    }
}
