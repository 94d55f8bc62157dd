package collarwright.plan;

import collarwright.assembly.*;
import collarwright.geometry.Interval;
import collarwright.testing.Jobs;
import collarwright.dome.DomeSettings;
import org.junit.jupiter.api.Test;
import collarwright.testing.MayPrint;

@MayPrint
class AssemblyPlanTest {
    @Test
    void dump() {
        for (Jobs j : new Jobs[]{Jobs.windbreak(), Jobs.windbreak().dome(2, 3), Jobs.windbreak().dome(4, 6),
             Jobs.windbreak().collar(Plans.collar(160)).ring(Jobs.pipe("r", Interval.of(60), Interval.of(3)), 50),
             Jobs.windbreak().dome(2,3).ring(Jobs.pipe("r", Interval.of(45), Interval.of(3)), 50).strut(Jobs.pipe("s", Interval.of(20), Interval.of(2))).cutters(Jobs.saw(22), Jobs.saw(24)),
             Jobs.windbreak().dome(3,9).ring(Jobs.pipe("r", Interval.of(45), Interval.of(3)), 50).strut(Jobs.pipe("s", Interval.of(20), Interval.of(2))).cutters(Jobs.saw(22), Jobs.saw(24)),
             Jobs.windbreak().ring(Jobs.pipe("r", Interval.of(45), Interval.of(3)), 50).strut(Jobs.pipe("s", Interval.of(20), Interval.of(2))).cutters(Jobs.saw(22), Jobs.saw(24))}) {
            Plan p = Plans.plan(j);
            System.out.println("=== " + p.makeable());
            p.findings().forEach(f -> System.out.println("  " + f));
            p.checks().stream().filter(c -> c.code().name().matches("STRUT_TRAVEL|RING_LAST")).limit(4).forEach(c -> System.out.println("  " + c));
            p.assembly().ifPresent(a -> a.order().stages().forEach(s -> System.out.println("  L" + s.level() + " " + s.hubs().size() + " hubs " + s.hubs().stream().map(p.hubs().dome()::nodeId).toList().toString().substring(0, Math.min(60, s.hubs().size()*5)) + " " + s.steps().stream().collect(java.util.stream.Collectors.groupingBy(x -> x.way() + (x.held() ? "!" : ""), java.util.TreeMap::new, java.util.stream.Collectors.counting())))));
        }
        for (int i = 0; i < 3; i++) {
            var job = Jobs.windbreak().dome(22, 66).size(new collarwright.strut.SizeRule.Radius(20000)).job();
            var f = Framing.of(job);
            var b = collarwright.tooling.PatternBook.of(f.hubs(), job.hub().body(), job.strut().stock().od(), job.drilling());
            long t = System.nanoTime();
            var a = Fittings.of(job, f.hubs(), f.struts(), b).orElseThrow();
            System.out.println(f.hubs().dome().nodeCount() + " " + f.hubs().types().size() + " " + (System.nanoTime() - t) / 1e6 + " ms " + a.order().stages().size());
        }
    }
}
