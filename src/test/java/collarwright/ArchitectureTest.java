package collarwright;

import collarwright.testing.Arrows;
import collarwright.testing.HouseRules;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.ArchRule;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;

/** Holds the map of packages and the rules of the house on everything that ships. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class ArchitectureTest {
    private final JavaClasses shipped = new ClassFileImporter()
            .withImportOption(new ImportOption.DoNotIncludeTests())
            .importPackages("collarwright");

    private final Arrows arrows = new Arrows("collarwright");
    private final HouseRules house = new HouseRules("collarwright");

    private void hold(List<ArchRule> rules) {
        rules.forEach(rule -> rule.check(shipped));
    }

    @Test
    void imports_followTheArrows() {
        arrows.followed().check(shipped);
    }

    @Test
    void packages_haveNoCycles() {
        arrows.free().check(shipped);
    }

    @Test
    void stages_touchNoFiles() {
        hold(house.noFiles());
    }

    @Test
    void stages_knowNoClockChanceOrMachine() {
        house.noSurroundings().check(shipped);
    }

    @Test
    void stages_computeWithStrictMath() {
        house.strictMath().check(shipped);
    }

    @Test
    void everything_isTheSameInEveryLanguage() {
        house.noLocale().check(shipped);
    }

    @Test
    void onlyTheCommandLine_prints() {
        house.printsOnlyOnTheCommandLine().check(shipped);
    }

    @Test
    void staticFields_cannotChange() {
        house.noStaticState().check(shipped);
    }

    @Test
    void names_saySomething() {
        house.namesSaySomething().check(shipped);
    }

    @Test
    void packages_areDescribed() {
        house.packagesAreDescribed().check(shipped);
    }

    @Test
    void libraries_stayWhereTheyAreUsed() {
        hold(house.librariesStayHome());
    }
}
