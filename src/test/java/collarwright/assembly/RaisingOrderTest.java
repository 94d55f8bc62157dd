package collarwright.assembly;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import collarwright.assembly.RaisingOrder.Stage;
import collarwright.assembly.RaisingStep.Way;
import collarwright.dome.Dome;
import collarwright.dome.DomeSettings;
import collarwright.hub.HubType;
import collarwright.hub.Hubs;
import collarwright.testing.Seeds;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Orders are played back strut by strut, with the hubs as they are filled by then. */
class RaisingOrderTest {

    private static final HubSpace THIN = space(45, 20);

    private static HubSpace space(double ring, double strut) {
        return new HubSpace(Seats.BODY, strut, new HubSpace.Ring(ring, -15, 25), 2);
    }

    private static List<Fitting> fittings(Hubs hubs, HubSpace space) {
        List<Fitting> fittings = new ArrayList<>();
        for (HubType type : hubs.types()) {
            fittings.add(Fitting.of(
                    type.struts().stream()
                            .map(s -> Seats.seat(
                                    StrictMath.toDegrees(s.axialAngle()), StrictMath.toDegrees(s.azimuth()), space))
                            .toList(),
                    space));
        }
        return fittings;
    }

    private static Assembly assembly(Hubs hubs, HubSpace space, double strainLimit) {
        List<Double> lengths =
                hubs.strutShapes().stream().map(s -> 2000 * s.chordFactor()).toList();
        return Assembly.of(hubs, fittings(hubs, space), new Bending(space.strut(), lengths, strainLimit));
    }

    private static Hubs dome(int frequency, int rows) {
        return Hubs.of(Dome.of(new DomeSettings(frequency, rows)));
    }

    /** Every strut goes in once, and every slide has its room. */
    private static void playBack(Hubs hubs, Assembly assembly) {
        Dome dome = hubs.dome();
        int[] seated = new int[dome.nodeCount()];
        Set<Integer> done = new HashSet<>();
        for (RaisingStep step : assembly.order().steps()) {
            int m = step.member();
            assertThat(done.add(m)).isTrue();
            int a = hubs.nodeAtA(m);
            int b = hubs.nodeAtB(m);
            boolean atA = step.hub() == a;
            assertThat(step.hub()).isIn(a, b);
            if (step.way() == Way.JOIN) {
                assertThat(seated[step.hub()])
                        .as("hub comes with its first strut")
                        .isZero();
            } else {
                int far = atA ? b : a;
                int hole = (atA ? hubs.holeAtA(m) : hubs.holeAtB(m)) - 1;
                int farHole = (atA ? hubs.holeAtB(m) : hubs.holeAtA(m)) - 1;
                double room = assembly.travels().get(hubs.typeOf(step.hub())).available(hole, seated[step.hub()]);
                double need = assembly.travels()
                        .get(hubs.typeOf(far))
                        .holes()
                        .get(farHole)
                        .needed();
                if (step.way() == Way.SLIDE) {
                    assertThat(room).isGreaterThanOrEqualTo(need - 1e-6);
                } else {
                    double length =
                            2000 * hubs.strutShapes().get(hubs.strutTypeOf(m)).chordFactor();
                    double strut = assembly.fittings().get(0).space().strut();
                    assertThat(new Bow(strut, length, StrictMath.max(0, need - room)).strain())
                            .isLessThanOrEqualTo(step.strain() + 1e-12);
                }
            }
            seated[a] |= 1 << (hubs.holeAtA(m) - 1);
            seated[b] |= 1 << (hubs.holeAtB(m) - 1);
        }
        assertThat(done).hasSize(dome.memberCount());
    }

    @Test
    void order_roomyHubs_goesTierByTierByPlace() {
        Hubs hubs = dome(3, 5);
        Assembly assembly = assembly(hubs, Seats.SPACE, 0.001);
        playBack(hubs, assembly);
        List<Stage> stages = assembly.order().stages();
        assertThat(stages).extracting(Stage::level).containsExactly(0, 1, 2, 3, 4, 5);
        List<Integer> standing = new ArrayList<>();
        stages.forEach(s -> standing.addAll(s.hubs()));
        assertThat(standing).hasSize(61).doesNotHaveDuplicates();
        for (Stage stage : stages) {
            assertThat(stage.hubs()).isSorted();
            assertThat(stage.hubs()).allMatch(node -> hubs.dome().tierOf(node) == 5 - stage.level());
            assertThat(stage.steps()).noneMatch(RaisingStep::held);
        }
        // One hub stands to begin with; each other comes with one strut.
        assertThat(assembly.order().steps(Way.JOIN)).hasSize(60);
        assertThat(assembly.order().steps(Way.SLIDE)).hasSize(105);
        assertThat(assembly.tightest()).hasSize(3).allMatch(t -> t.travel() > t.needed());
        assertThat(assembly.reports().get(0)).allMatch(HoleReport::enough);
    }

    @Test
    void order_drawnSizes_canBePlayedBack() {
        Seeds.each(25, draw -> {
            Hubs hubs = draw.oneOf(List.of(dome(2, 3), dome(3, 5), dome(2, 6), dome(4, 7), dome(1, 3), dome(3, 9)));
            HubSpace space = space(draw.between(18, 60), draw.between(8, 20));
            Assembly assembly = assembly(hubs, space, draw.between(0.001, 0.02));
            playBack(hubs, assembly);
            boolean stuck = !assembly.order().steps(Way.STUCK).isEmpty();
            boolean all = assembly.tightest().stream().allMatch(t -> t.travel() >= t.needed());
            assertThat(all && stuck).isFalse();
        });
    }

    // Struts in line round the foot of a 2v half: with so small a ring the last of them finds both its neighbours in
    // line
    // seated, whatever the order; there is no order.
    @Test
    void order_closedLineOfStruts_sticksOnce() {
        Hubs hubs = dome(2, 3);
        HubSpace space = space(18, 20);
        Assembly assembly = assembly(hubs, space, 1e-6);
        playBack(hubs, assembly);
        assertThat(assembly.order().steps(Way.STUCK)).hasSize(1);
        Assembly bowed = assembly(hubs, space, 0.5);
        playBack(hubs, bowed);
        assertThat(bowed.order().steps(Way.STUCK)).isEmpty();
        assertThat(bowed.order().steps(Way.BOW)).hasSize(1);
        assertThat(bowed.order().steps()).noneMatch(RaisingStep::held);
        HoleReport tight = bowed.reports().stream()
                .flatMap(List::stream)
                .filter(r -> !r.enough())
                .findFirst()
                .orElseThrow();
        assertThat(tight.waiting()).isNotEmpty();
        assertThat(tight.bow().orElseThrow().shortening())
                .isCloseTo(tight.toEnter() - tight.ringOut().travel(), within(1e-12));
        RoomFor stuck = RoomFor.of(
                hubs,
                assembly.order().steps(Way.STUCK).stream()
                        .map(RaisingStep::member)
                        .toList());
        assertThat(stuck.enough(assembly.fittings())).isFalse();
        assertThat(stuck.enough(
                        assembly.fittings().stream().map(f -> f.withRing(20)).toList()))
                .isTrue();
        assertThat(stuck.enough(
                        assembly.fittings().stream().map(f -> f.withCollar(-40)).toList()))
                .isTrue();
    }

    // Whether there is an order at all, by trying: a small frame with drawn rooms, every set of its struts.
    @Test
    void order_drawnRooms_isStuckOnlyIfEveryOrderIs() {
        Hubs hubs = dome(1, 1);
        int[] stuck = new int[1];
        Seeds.each(400, draw -> {
            List<HubTravel> travels = hubs.types().stream()
                    .map(t -> DrawnRooms.drawn(draw, t.struts().size()))
                    .toList();
            List<Double> lengths = hubs.strutShapes().stream().map(s -> 1000.0).toList();
            RaisingOrder order = RaisingOrder.of(hubs, travels, new Bending(20, lengths, 1e-9));
            boolean any = possible(hubs, travels);
            assertThat(order.steps(Way.STUCK).isEmpty()).isEqualTo(any);
            stuck[0] += any ? 0 : 1;
        });
        assertThat(stuck[0]).isBetween(50, 350);
    }

    // Forward, over all sets of struts that can be reached.
    private static boolean possible(Hubs hubs, List<HubTravel> travels) {
        int members = hubs.dome().memberCount();
        boolean[] reached = new boolean[1 << members];
        reached[0] = true;
        for (int set = 0; set < reached.length; set++) {
            for (int m = 0; reached[set] && m < members; m++) {
                if ((set & 1 << m) == 0 && goesIn(hubs, travels, set, m)) {
                    reached[set | 1 << m] = true;
                }
            }
        }
        return reached[reached.length - 1];
    }

    private static boolean goesIn(Hubs hubs, List<HubTravel> travels, int set, int member) {
        int a = hubs.nodeAtA(member);
        int b = hubs.nodeAtB(member);
        int atA = filled(hubs, set, a);
        int atB = filled(hubs, set, b);
        HubTravel travelA = travels.get(hubs.typeOf(a));
        HubTravel travelB = travels.get(hubs.typeOf(b));
        int holeA = hubs.holeAtA(member) - 1;
        int holeB = hubs.holeAtB(member) - 1;
        return atA == 0
                || atB == 0
                || travelA.available(holeA, atA) >= travelB.holes().get(holeB).needed()
                || travelB.available(holeB, atB) >= travelA.holes().get(holeA).needed();
    }

    private static int filled(Hubs hubs, int set, int node) {
        int mask = 0;
        for (int m = 0; m < hubs.dome().memberCount(); m++) {
            if ((set & 1 << m) != 0) {
                mask |= hubs.nodeAtA(m) == node ? 1 << (hubs.holeAtA(m) - 1) : 0;
                mask |= hubs.nodeAtB(m) == node ? 1 << (hubs.holeAtB(m) - 1) : 0;
            }
        }
        return mask;
    }

    @Test
    void order_fiveThousandHubs_isFoundWhole() {
        Hubs hubs = dome(22, 66);
        Assembly assembly = assembly(hubs, THIN, 0.001);
        assertThat(hubs.dome().nodeCount()).isEqualTo(4842);
        assertThat(assembly.order().steps()).hasSize(hubs.dome().memberCount());
    }
}
