package collarwright.testing;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.lang.ArchRule;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Shows each rule classes that break it, and one that breaks none. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class HouseRulesTest {
    private static final String ROOT = "collarwright.testing.house";
    private static final Arrows ARROWS = new Arrows(ROOT);
    private static final HouseRules HOUSE = new HouseRules(ROOT);

    private final JavaClasses everything = new ClassFileImporter().importPackages(ROOT);
    private final JavaClasses sound = new ClassFileImporter().importPackages(ROOT + ".collar");

    private record Case(ArchRule rule, String seen) {}

    static List<Case> cases() {
        return List.of(
                new Case(ARROWS.followed(), "units may not import dome"),
                new Case(ARROWS.followed(), "Anything stands in a package that the map of packages does not have"),
                new Case(ARROWS.free(), "Cycle detected"),
                new Case(HOUSE.noFiles().get(0), "java.nio.file.Files"),
                new Case(HOUSE.noFiles().get(1), "java.nio.file.Files"),
                new Case(HOUSE.noSurroundings(), "System.nanoTime()"),
                new Case(HOUSE.strictMath(), "Math.sin(double)"),
                new Case(HOUSE.noLocale(), "String.format(java.lang.String, [Ljava.lang.Object;)"),
                new Case(HOUSE.printsOnlyOnTheCommandLine(), "System.out"),
                new Case(HOUSE.noStaticState(), "WordsUtil.KEPT is static and can change"),
                new Case(HOUSE.namesSaySomething(), "WordsUtil"),
                new Case(HOUSE.packagesAreDescribed(), "house.dome has no package-info with @NullMarked"),
                new Case(HOUSE.librariesStayHome().get(1), "picocli.CommandLine"));
    }

    @ParameterizedTest
    @MethodSource("cases")
    void rule_broken_isSeen(Case broken) {
        assertThat(broken.rule().evaluate(everything).getFailureReport().toString())
                .contains(broken.seen());
    }

    @Test
    void rules_kept_areSilent() {
        Stream.of(
                        Stream.of(ARROWS.followed(), ARROWS.free()),
                        HOUSE.noFiles().stream(),
                        Stream.of(
                                HOUSE.noSurroundings(),
                                HOUSE.strictMath(),
                                HOUSE.noLocale(),
                                HOUSE.printsOnlyOnTheCommandLine(),
                                HOUSE.noStaticState(),
                                HOUSE.namesSaySomething(),
                                HOUSE.packagesAreDescribed()),
                        HOUSE.librariesStayHome().stream())
                .flatMap(rules -> rules)
                .forEach(rule -> rule.check(sound));
    }
}
