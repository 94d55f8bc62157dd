package collarwright.testing;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.conditions.ArchConditions.not;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.AccessTarget;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaField;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import java.lang.reflect.Field;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.NullMarked;

/**
 * The rules of the house that a machine can hold.
 *
 * @param root the package that holds the packages
 */
public record HouseRules(String root) {
    /** They compute: nothing goes in or out but values. */
    private static final List<String> STAGES = List.of(
            "units",
            "finding",
            "geometry",
            "stock",
            "frame",
            "dome",
            "hub",
            "collar",
            "strut",
            "tooling",
            "assembly",
            "trial",
            "machining",
            "cutting",
            "rehearsal",
            "drawing",
            "sheet",
            "plan",
            "kit");

    private static final Set<String> DRAWERS_FOR_ANYTHING = Set.of("Manager", "Helper", "Util", "Utils", "Impl");

    private static final Set<String> LOCALE_BY_DEFAULT = Set.of("toLowerCase", "toUpperCase", "format", "formatted");

    private String[] inStages(List<String> without) {
        return STAGES.stream()
                .filter(stage -> !without.contains(stage))
                .map(stage -> root + "." + stage + "..")
                .toArray(String[]::new);
    }

    /** Stages don't touch files; the writers of sheets, which are handed a stream, may know streams. */
    public List<ArchRule> noFiles() {
        DescribedPredicate<JavaClass> files = resideInAnyPackage("java.nio.file..", "java.nio.channels..", "java.net..")
                .or(resideInAPackage("java.io..")
                        .and(describe(
                                "named for files",
                                type -> type.getSimpleName().startsWith("File")
                                        || type.getSimpleName().equals("RandomAccessFile"))));
        return List.of(
                noClasses()
                        .that()
                        .resideInAnyPackage(inStages(List.of("sheet", "plan")))
                        .should()
                        .dependOnClassesThat(resideInAnyPackage("java.io..").or(files))
                        .allowEmptyShould(true),
                noClasses()
                        .that()
                        .resideInAnyPackage(inStages(List.of()))
                        .should()
                        .dependOnClassesThat(files)
                        .allowEmptyShould(true));
    }

    /** Stages know no clock, no chance and no machine that they run on: same job, same result. */
    public ArchRule noSurroundings() {
        return noClasses()
                .that()
                .resideInAnyPackage(inStages(List.of()))
                .should()
                .dependOnClassesThat(resideInAnyPackage("java.time..", "java.util.random..")
                        .or(describe("chance, clock or surroundings", HouseRules::isSurroundings)))
                .orShould()
                .accessTargetWhere(describe("of System, but for arraycopy", HouseRules::isSystem))
                .allowEmptyShould(true);
    }

    private static boolean isSurroundings(JavaClass type) {
        return Set.of(
                        "java.util.Random",
                        "java.util.SplittableRandom",
                        "java.util.concurrent.ThreadLocalRandom",
                        "java.util.UUID",
                        "java.security.SecureRandom",
                        "java.util.Date",
                        "java.util.Calendar",
                        "java.util.TimeZone",
                        "java.lang.Runtime",
                        "java.lang.ProcessBuilder",
                        "java.lang.ThreadLocal")
                .contains(type.getName());
    }

    private static boolean isSystem(JavaAccess<?> access) {
        return access.getTargetOwner().isEquivalentTo(System.class)
                && !access.getTarget().getName().equals("arraycopy");
    }

    /** Stages compute with StrictMath, whose results are the same on every machine. */
    public ArchRule strictMath() {
        return noClasses()
                .that()
                .resideInAnyPackage(inStages(List.of()))
                .should()
                .dependOnClassesThat()
                .areAssignableTo(Math.class)
                .allowEmptyShould(true);
    }

    /** Nothing anywhere asks which language the machine speaks; Locale.ROOT is no language. */
    public ArchRule noLocale() {
        return noClasses()
                .that()
                .resideInAPackage(root + "..")
                .should()
                .accessTargetWhere(describe("that follows the machine's language", HouseRules::isLocal))
                .allowEmptyShould(true);
    }

    private static boolean isLocal(JavaAccess<?> access) {
        AccessTarget target = access.getTarget();
        JavaClass owner = target.getOwner();
        if (owner.isEquivalentTo(Locale.class)) {
            return !target.getName().equals("ROOT");
        }
        if (owner.isEquivalentTo(String.class) && LOCALE_BY_DEFAULT.contains(target.getName())) {
            return !(target instanceof AccessTarget.CodeUnitAccessTarget method)
                    || method.getRawParameterTypes().stream().noneMatch(type -> type.isEquivalentTo(Locale.class));
        }
        return owner.isEquivalentTo(java.util.Scanner.class)
                || owner.isEquivalentTo(java.util.Formatter.class)
                || owner.isAssignableTo(java.text.Format.class)
                || owner.isAssignableTo(java.text.Collator.class);
    }

    /** Only the command line prints, ends the program, or shows a stack. */
    public ArchRule printsOnlyOnTheCommandLine() {
        return noClasses()
                .that()
                .resideInAPackage(root + "..")
                .and()
                .resideOutsideOfPackage(root + ".cli..")
                .should()
                .accessTargetWhere(describe("that prints or exits", HouseRules::isPrinting))
                .allowEmptyShould(true);
    }

    private static boolean isPrinting(JavaAccess<?> access) {
        String name = access.getTarget().getName();
        boolean system = access.getTargetOwner().isEquivalentTo(System.class)
                && Set.of("out", "err", "in", "exit", "setOut", "setErr", "console")
                        .contains(name);
        boolean stack = access.getTargetOwner().isAssignableTo(Throwable.class) && name.equals("printStackTrace");
        return system || stack;
    }

    /** Nothing is kept between two calls: static fields are final and hold what can't change. */
    public ArchRule noStaticState() {
        return fields().that()
                .areStatic()
                .and()
                .areDeclaredInClassesThat()
                .resideInAPackage(root + "..")
                .should(holdWhatCannotChange())
                .allowEmptyShould(true);
    }

    private static ArchCondition<JavaField> holdWhatCannotChange() {
        return new ArchCondition<>("be final and hold what cannot change") {
            @Override
            public void check(JavaField field, ConditionEvents events) {
                Set<JavaModifier> words = field.getModifiers();
                if (words.contains(JavaModifier.SYNTHETIC)) {
                    return;
                }
                if (!words.contains(JavaModifier.FINAL) || canChange(field)) {
                    events.add(SimpleConditionEvent.violated(field, field.getFullName() + " is static and can change"));
                }
            }
        };
    }

    /** Looks at the value itself: a field of type List says nothing about the list. */
    private static boolean canChange(JavaField field) {
        try {
            Field mirror = field.reflect();
            mirror.setAccessible(true);
            Object value = mirror.get(null);
            return value != null && canChange(value);
        } catch (IllegalAccessException e) {
            throw new AssertionError(e);
        }
    }

    private static boolean canChange(Object value) {
        if (value instanceof Collection<?> || value instanceof Map<?, ?>) {
            String name = value.getClass().getName();
            return !name.startsWith("java.util.ImmutableCollections")
                    && !name.startsWith("java.util.Collections$Unmodifiable")
                    && !name.startsWith("java.util.Collections$Empty")
                    && !name.startsWith("java.util.Collections$Singleton");
        }
        return value.getClass().isArray()
                || (value instanceof CharSequence && !(value instanceof String))
                || value instanceof java.util.Random
                || value instanceof java.util.Date
                || value instanceof java.util.BitSet
                || value instanceof java.text.Format
                || value instanceof ThreadLocal
                || value.getClass().getName().startsWith("java.util.concurrent.");
    }

    /** No class is named for a drawer that everything fits into. */
    public ArchRule namesSaySomething() {
        return classes()
                .that()
                .resideInAPackage(root + "..")
                .should(not(new ArchCondition<JavaClass>("be named " + DRAWERS_FOR_ANYTHING) {
                    @Override
                    public void check(JavaClass type, ConditionEvents events) {
                        boolean drawer = DRAWERS_FOR_ANYTHING.stream().anyMatch(type.getSimpleName()::endsWith);
                        events.add(new SimpleConditionEvent(type, drawer, type.getName()));
                    }
                }))
                .allowEmptyShould(true);
    }

    /** Every package says in its package-info what it is, and has no nulls at its border. */
    public ArchRule packagesAreDescribed() {
        return classes()
                .that()
                .resideInAPackage(root + "..")
                .should(new ArchCondition<>("stand in a package whose package-info is @NullMarked") {
                    @Override
                    public void check(JavaClass type, ConditionEvents events) {
                        boolean marked = Stream.ofNullable(type.getPackage())
                                .anyMatch(home ->
                                        home.tryGetPackageInfo().isPresent() && home.isAnnotatedWith(NullMarked.class));
                        events.add(new SimpleConditionEvent(
                                type, marked, type.getPackageName() + " has no package-info with @NullMarked"));
                    }
                })
                .allowEmptyShould(true);
    }

    /** Each library is known where it is used, and nowhere else. */
    public List<ArchRule> librariesStayHome() {
        return List.of(
                only("org.tomlj..", "job"),
                only("picocli..", "cli"),
                only("com.fasterxml.jackson..", "plan", "pack", "cli"),
                only("org.apache.pdfbox..", "sheet", "pack", "picture", "paper"),
                only("de.rototor.pdfbox..", "sheet", "pack", "paper"),
                only("org.jfree..", "sheet", "pack", "picture"),
                only("org.locationtech.jts..", "collar", "sheet"),
                only("com.google.zxing..", "paper"),
                only("org.dhatim..", "pack"),
                only("java.awt..", "drawing", "sheet", "pack", "picture", "paper"));
    }

    private ArchRule only(String library, String... homes) {
        String[] packages =
                Stream.of(homes).map(home -> root + "." + home + "..").toArray(String[]::new);
        return noClasses()
                .that()
                .resideInAPackage(root + "..")
                .and()
                .resideOutsideOfPackages(packages)
                .should()
                .dependOnClassesThat()
                .resideInAPackage(library)
                .allowEmptyShould(true);
    }
}
