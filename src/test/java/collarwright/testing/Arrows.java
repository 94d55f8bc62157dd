package collarwright.testing;

import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import com.tngtech.archunit.lang.syntax.ArchRuleDefinition;
import com.tngtech.archunit.library.dependencies.SlicesRuleDefinition;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Which package may import which: the direction that data flow in, as rules.
 *
 * @param root the package that holds the packages
 */
public record Arrows(String root) {
    /** From the model of the dome to the program that drills it; each may import what stands before it. */
    private static final List<String> LINE =
            List.of("dome", "hub", "collar", "strut", "tooling", "assembly", "trial", "machining", "rehearsal");

    private static final Map<String, Set<String>> MAY_IMPORT = mayImport();

    /** Every package there may be. */
    public static Set<String> packages() {
        return MAY_IMPORT.keySet();
    }

    private static Map<String, Set<String>> mayImport() {
        Map<String, Set<String>> arrows = new LinkedHashMap<>();
        arrows.put("finding", Set.of());
        arrows.put("geometry", Set.of());
        arrows.put("units", Set.of("finding"));
        arrows.put("stock", Set.of("finding", "geometry", "units"));
        Set<String> ground = Set.copyOf(arrows.keySet());
        arrows.put("frame", Set.of("finding", "geometry", "units"));
        Set<String> upstream = new LinkedHashSet<>(ground);
        upstream.add("frame");
        for (String stage : LINE) {
            arrows.put(stage, Set.copyOf(upstream));
            upstream.add(stage);
        }
        Set<String> stages = Set.copyOf(upstream);
        arrows.put("cutting", ground);
        arrows.put("drawing", and(arrows.get("tooling"), "tooling"));
        arrows.put("sheet", and(ground, "drawing"));
        arrows.put("job", and(stages, "cutting"));
        arrows.put("plan", and(stages, "cutting", "job"));
        arrows.put("kit", and(stages, "cutting", "job", "plan"));
        arrows.put("picture", and(stages, "cutting", "job", "plan", "kit", "sheet"));
        arrows.put("paper", and(stages, "cutting", "job", "plan", "kit", "picture", "sheet"));
        arrows.put("pack", and(stages, "cutting", "drawing", "sheet", "job", "plan", "kit", "picture", "paper"));
        arrows.put("cli", Set.copyOf(arrows.keySet()));
        return arrows;
    }

    private static Set<String> and(Set<String> some, String... more) {
        List<String> all = new ArrayList<>(some);
        all.addAll(List.of(more));
        return Set.copyOf(all);
    }

    /** Classes import along the arrows only, and stand in a package of the map. */
    public ArchRule followed() {
        return ArchRuleDefinition.classes()
                .that()
                .resideInAPackage(root + "..")
                .should(importOnlyUpstream())
                .allowEmptyShould(true)
                .because("data flow one way");
    }

    /** No two packages need each other, also not by way of a third. */
    public ArchRule free() {
        return SlicesRuleDefinition.slices()
                .matching(root + ".(*)..")
                .should()
                .beFreeOfCycles()
                .allowEmptyShould(true);
    }

    private ArchCondition<JavaClass> importOnlyUpstream() {
        return new ArchCondition<>("import only what is upstream of their package") {
            @Override
            public void check(JavaClass from, ConditionEvents events) {
                String home = packageOf(from);
                if (!MAY_IMPORT.containsKey(home)) {
                    events.add(SimpleConditionEvent.violated(
                            from, from.getName() + " stands in a package that the map of packages does not have"));
                    return;
                }
                for (Dependency arrow : from.getDirectDependenciesFromSelf()) {
                    String there = packageOf(arrow.getTargetClass());
                    if (!there.isEmpty()
                            && !there.equals(home)
                            && !MAY_IMPORT.get(home).contains(there)) {
                        events.add(SimpleConditionEvent.violated(
                                from, home + " may not import " + there + ": " + arrow.getDescription()));
                    }
                }
            }
        };
    }

    /** The part of a class's package right below the root; empty for classes from elsewhere. */
    private String packageOf(JavaClass type) {
        String name = type.getBaseComponentType().getPackageName();
        return name.startsWith(root + ".") ? name.substring(root.length() + 1).split("\\.")[0] : "";
    }
}
