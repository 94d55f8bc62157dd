package collarwright.plan;

import static org.assertj.core.api.Assertions.assertThat;

import collarwright.dome.Dome;
import collarwright.dome.DomeSettings;
import collarwright.geometry.Vec3;
import collarwright.hub.Hubs;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The words are held against the struts in space, without an azimuth: a direction lies in the sector from one strut
 * clockwise to the next if it is a sum of their directions on the hub's plane with no negative share.
 */
class UphillTest {

    private static Vec3 across(Vec3 direction, Vec3 axis) {
        return direction.minus(axis.times(direction.dot(axis)));
    }

    /** Where the struts in the holes of a node go, on the hub's plane. */
    private static List<Vec3> struts(Hubs hubs, int node) {
        Dome dome = hubs.dome();
        int size = hubs.types().get(hubs.typeOf(node)).struts().size();
        List<Vec3> found = new ArrayList<>(java.util.Collections.nCopies(size, new Vec3(0, 0, 0)));
        for (int m = 0; m < dome.memberCount(); m++) {
            Vec3 along = dome.node(dome.memberB(m)).minus(dome.node(dome.memberA(m)));
            if (dome.memberA(m) == node) {
                found.set(hubs.holeAtA(m) - 1, across(along, dome.node(node)).unit());
            }
            if (dome.memberB(m) == node) {
                found.set(
                        hubs.holeAtB(m) - 1,
                        across(along.times(-1), dome.node(node)).unit());
            }
        }
        return found;
    }

    @ParameterizedTest
    @CsvSource({"1, 2", "2, 3", "3, 5", "4, 6", "5, 15"})
    void words_everyHub_nameTheStrutsOnBothSidesOfUp(int frequency, int rows) {
        Hubs hubs = Hubs.of(Dome.of(new DomeSettings(frequency, rows)));
        int between = 0;
        for (int node = 0; node < hubs.dome().nodeCount(); node++) {
            Vec3 axis = hubs.dome().node(node);
            boolean pole = StrictMath.abs(axis.z()) > 1 - 1e-9;
            Vec3 up = across(pole ? new Vec3(1, 0, 0) : new Vec3(0, 0, 1), axis).unit();
            List<Vec3> struts = struts(hubs, node);
            Uphill uphill = Uphill.of(hubs, node);
            Vec3 left = struts.get(uphill.hole() - 1);
            Vec3 right = struts.get(uphill.next() - 1);
            String name = hubs.dome().nodeId(node) + " " + uphill.words();
            if (uphill.at()) {
                assertThat(left.minus(up).norm()).as(name).isLessThan(1e-3);
                assertThat(uphill.words()).isEqualTo("UP at hole " + uphill.hole());
                continue;
            }
            between++;
            // Clockwise from above: left × up points into the dome; so does up × right.
            double fromLeft = -left.cross(up).dot(axis);
            double toRight = -up.cross(right).dot(axis);
            if (left.cross(right).dot(axis) < 0) {
                assertThat(fromLeft).as(name).isPositive();
                assertThat(toRight).as(name).isPositive();
            } else {
                // A sector of more than half a turn (at the foot): UP is not in the smaller one on the other side.
                assertThat(fromLeft < 0 && toRight < 0).as(name).isFalse();
            }
            assertThat(uphill.next()).as(name).isEqualTo(uphill.hole() % struts.size() + 1);
            assertThat(uphill.words()).isEqualTo("UP between hole " + uphill.hole() + " and " + uphill.next());
        }
        assertThat(between).isPositive();
    }

    @Test
    void apex_isUpTowardTheFirstHubOfTheNextTier() {
        Hubs hubs = Hubs.of(Dome.of(new DomeSettings(3, 5)));
        Uphill apex = Uphill.of(hubs, 0);
        assertThat(apex.at()).isTrue();
        Vec3 first = hubs.dome().node(1);
        assertThat(first.minus(struts(hubs, 0).get(apex.hole() - 1).times(first.x()))
                        .y())
                .isCloseTo(0, org.assertj.core.api.Assertions.within(1e-9));
        assertThat(struts(hubs, 0).get(apex.hole() - 1).x()).isPositive();
    }
}
