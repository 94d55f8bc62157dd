package collarwright.plan;

import collarwright.collar.CollarBody;
import collarwright.geometry.Interval;
import collarwright.hub.HubStrut;
import collarwright.hub.HubType;
import collarwright.hub.StrutTip;
import collarwright.strut.StrutType;
import collarwright.tooling.HoleNeed;
import collarwright.tooling.HoleSize;
import collarwright.tooling.Pattern;
import collarwright.tooling.PatternBook;
import collarwright.tooling.Placement;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A hole that an end of a strut type goes into. Holes are told by slots: where each hub type has its own pattern, one for each
 * end of each strut type, since all its holes are alike; where patterns are shared, one for each hole of each pattern.
 *
 * @param strutEnd such as {@code SA} or {@code SB-a}
 * @param slot index of the hole
 */
record StrutHole(String strutEnd, int slot) {

    /** All of a plan: strut types shortest first, end a before end b, patterns in their order. */
    static List<StrutHole> all(Plan plan) {
        List<StrutHole> all = new ArrayList<>();
        for (int type = 0; type < plan.struts().types().size(); type++) {
            StrutType strut = plan.struts().types().get(type);
            for (StrutTip tip : StrutTip.values()) {
                if (tip == StrutTip.A || !strut.alike() || plan.book().sharing().isPresent()) {
                    for (int slot : slots(plan, type, tip)) {
                        all.add(new StrutHole(strut.idAt(tip), slot));
                    }
                }
            }
        }
        return all;
    }

    private static List<Integer> slots(Plan plan, int type, StrutTip tip) {
        if (plan.book().sharing().isEmpty() || plan.book().patterns().isEmpty()) {
            return List.of(2 * type + tip.index());
        }
        List<Integer> slots = new ArrayList<>();
        for (int hub = 0; hub < plan.hubs().types().size(); hub++) {
            HubType hubType = plan.hubs().types().get(hub);
            Placement placement = plan.placement(hub);
            int first = first(plan.book().patterns(), placement.pattern());
            for (int i = 0; i < hubType.struts().size(); i++) {
                HubStrut strut = hubType.struts().get(i);
                int slot = first + placement.holes().get(i);
                if (strut.strutType() == type && strut.tip() == tip && !slots.contains(slot)) {
                    slots.add(slot);
                }
            }
        }
        return slots.stream().sorted().toList();
    }

    private static int first(List<Pattern> patterns, int pattern) {
        return patterns.subList(0, pattern).stream()
                .mapToInt(p -> p.holes().size())
                .sum();
    }

    /** The size of every slot in a book of the same patterns, for struts of a size of their own. */
    static List<HoleSize> sizes(Plan plan, PatternBook book, Interval od) {
        if (book.sharing().isPresent() && !plan.book().patterns().isEmpty()) {
            return book.sizes().stream().map(PatternBook.Sized::size).toList();
        }
        // A book tells ends that need the same once; a limit on the number of cutters has been kept in it.
        return needs(plan, od).stream()
                .map(need -> book.sizes().stream()
                        .map(PatternBook.Sized::size)
                        .filter(size -> size.need().equals(need))
                        .findFirst()
                        .orElseGet(() -> new HoleSize(need, need.required(), Optional.empty())))
                .toList();
    }

    /** What every slot needs. */
    static List<HoleNeed> needs(Plan plan, Interval od) {
        CollarBody body = plan.job().hub().body();
        if (plan.book().sharing().isPresent() && !plan.book().patterns().isEmpty()) {
            return plan.book().sizes().stream()
                    .map(sized -> new HoleNeed(body, od, sized.size().need().toward()))
                    .toList();
        }
        List<HoleNeed> needs = new ArrayList<>();
        for (var shape : plan.hubs().strutShapes()) {
            for (StrutTip tip : StrutTip.values()) {
                needs.add(new HoleNeed(body, od, StrictMath.abs(shape.axialAngle(tip))));
            }
        }
        return needs;
    }
}
