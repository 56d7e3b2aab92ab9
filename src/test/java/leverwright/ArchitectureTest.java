package leverwright;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.AccessTarget;
import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaPackage;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.lang.ArchRule;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.jspecify.annotations.NullMarked;
import org.junit.jupiter.api.Test;

/** Holds the arrows between the rooms of the house and the purity of the mechanics. */
class ArchitectureTest {

    /** Fewer classes than this means that the import looked in the wrong place and every rule below passed emptily. */
    private static final int FEWEST_CLASSES = 350;

    private static final String MECHANICS = "leverwright.mechanics..";
    private static final String NUMERIC = "leverwright.mechanics.numeric..";

    private static final JavaClasses CLASSES = new ClassFileImporter()
            .withImportOption(location -> !location.contains("test-classes/"))
            .importPackages("leverwright");

    @Test
    void enoughClassesAreSeen() {
        assertTrue(
                CLASSES.size() >= FEWEST_CLASSES,
                () -> "only " + CLASSES.size() + " classes were imported, expected at least " + FEWEST_CLASSES);
    }

    @Test
    void everyClassLivesInARoomOfTheHouse() {
        List<String> homeless = CLASSES.stream()
                .filter(type -> Room.of(type).isEmpty())
                .map(JavaClass::getName)
                .sorted()
                .toList();
        assertEquals(List.of(), homeless, "classes outside every room");
    }

    @Test
    void everyArrowBetweenRoomsIsAllowed() {
        Set<String> wrong = new TreeSet<>();
        for (JavaClass type : CLASSES) {
            Room.of(type).ifPresent(room -> wrong.addAll(forbiddenArrows(type, room)));
        }
        assertEquals(List.of(), List.copyOf(wrong), "arrows that the plan of the house does not have");
    }

    private static List<String> forbiddenArrows(JavaClass type, Room room) {
        List<String> wrong = new ArrayList<>();
        for (Dependency arrow : type.getDirectDependenciesFromSelf()) {
            Room.of(arrow.getTargetClass().getBaseComponentType())
                    .filter(target -> !room.mayUse(target))
                    .ifPresent(target -> wrong.add(room + " may not use " + target + ": " + arrow.getDescription()));
        }
        return wrong;
    }

    @Test
    void everyPackageIsNullMarked() {
        List<String> unmarked = CLASSES.stream()
                .map(JavaClass::getPackage)
                .distinct()
                .filter(room -> !room.isAnnotatedWith(NullMarked.class))
                .map(JavaPackage::getName)
                .sorted()
                .toList();
        assertEquals(List.of(), unmarked, "packages without a @NullMarked package-info");
    }

    @Test
    void mechanicsStandsOnPlainJavaAlone() {
        check(noClasses()
                .that()
                .resideInAPackage(MECHANICS)
                .should()
                .dependOnClassesThat(DescribedPredicate.not(resideInAnyPackage(
                        MECHANICS,
                        "java.lang",
                        "java.lang.annotation",
                        "java.lang.invoke",
                        "java.lang.runtime",
                        "java.util",
                        "java.util.concurrent",
                        "java.util.function",
                        "java.util.regex",
                        "java.util.stream",
                        "java.math",
                        "java.io",
                        "java.nio.charset",
                        "org.hipparchus..",
                        "org.jspecify.annotations",
                        "")))
                .because("mechanics is pure: no screen, no clock, no JSON, no network, no file system"));
    }

    @Test
    void hipparchusIsReachedThroughTheNumericRoomOnly() {
        check(noClasses()
                .that(resideInAPackage(MECHANICS).and(DescribedPredicate.not(resideInAPackage(NUMERIC))))
                .should()
                .dependOnClassesThat()
                .resideInAPackage("org.hipparchus.."));
    }

    @Test
    void mechanicsReadsItsDataThroughOneReader() {
        Set<String> readers = CLASSES.stream()
                .filter(resideInAPackage(MECHANICS))
                .filter(type -> type.getDirectDependenciesFromSelf().stream()
                        .anyMatch(
                                arrow -> arrow.getTargetClass().getPackageName().equals("java.io")))
                .map(type -> type.getName().replaceAll("\\$.*", ""))
                .collect(Collectors.toCollection(TreeSet::new));
        assertTrue(readers.size() <= 1, () -> "more than one class of mechanics uses java.io: " + readers);
        check(noClasses()
                .that()
                .resideInAPackage(MECHANICS)
                .should()
                .dependOnClassesThat(DescribedPredicate.describe(
                        "open files",
                        type -> type.getName().startsWith("java.io.File")
                                || type.getName().equals("java.io.RandomAccessFile"))));
    }

    @Test
    void mechanicsUsesOrderedCollectionsOnly() {
        Set<String> unordered = Set.of(
                "java.util.HashMap",
                "java.util.HashSet",
                "java.util.Hashtable",
                "java.util.Properties",
                "java.util.IdentityHashMap",
                "java.util.WeakHashMap",
                "java.util.concurrent.ConcurrentHashMap");
        check(noClasses()
                .that()
                .resideInAPackage(MECHANICS)
                .should()
                .dependOnClassesThat(DescribedPredicate.describe(
                        "are collections without an order", type -> unordered.contains(type.getName()))));
        check(noMechanicsAccess("a factory of collections without an order", target -> switch (owner(target)) {
            case "java.util.Map" -> Set.of("of", "ofEntries", "copyOf").contains(target.getName());
            case "java.util.Set" -> Set.of("of", "copyOf").contains(target.getName());
            case "java.util.stream.Collectors" -> unorderedCollector(target);
            default -> false;
        }));
    }

    private static boolean unorderedCollector(AccessTarget target) {
        String name = target.getName();
        boolean suppliesItsMap = target instanceof AccessTarget.CodeUnitAccessTarget call
                && call.getRawParameterTypes().stream().anyMatch(type -> type.isEquivalentTo(Supplier.class));
        return Set.of("toSet", "toUnmodifiableSet", "toUnmodifiableMap").contains(name)
                || (Set.of("toMap", "groupingBy").contains(name) && !suppliesItsMap)
                || name.contains("Concurrent");
    }

    @Test
    void mechanicsAsksNoClockNoSystemAndNoChance() {
        check(noMechanicsAccess("the system, a clock or an unseeded random stream", target -> switch (owner(target)) {
            case "java.lang.System" -> !target.getName().equals("arraycopy");
            case "java.lang.Math", "java.lang.StrictMath" -> target.getName().equals("random");
            case "java.util.Date", "java.util.Calendar", "java.util.UUID", "java.util.TimeZone", "java.lang.Runtime" ->
                true;
            case "java.util.concurrent.ThreadLocalRandom" -> true;
            case "java.util.Random", "java.util.SplittableRandom" -> isConstructorWithoutSeed(target);
            case "java.util.Locale" -> target.getName().equals("getDefault");
            default -> false;
        }));
    }

    private static boolean isConstructorWithoutSeed(AccessTarget target) {
        return target instanceof AccessTarget.CodeUnitAccessTarget call
                && call.getName().equals("<init>")
                && call.getRawParameterTypes().isEmpty();
    }

    @Test
    void mechanicsStartsNoThread() {
        Set<String> starters = Set.of(
                "java.lang.Thread",
                "java.lang.ThreadLocal",
                "java.lang.Process",
                "java.lang.ProcessBuilder",
                "java.util.Timer",
                "java.util.concurrent.Executors",
                "java.util.concurrent.ForkJoinPool",
                "java.util.concurrent.ThreadPoolExecutor",
                "java.util.concurrent.CompletableFuture");
        check(noClasses()
                .that()
                .resideInAPackage(MECHANICS)
                .should()
                .dependOnClassesThat(DescribedPredicate.describe(
                        "make threads (an executor comes from the caller)",
                        type -> starters.contains(type.getName()))));
        check(noMechanicsAccess(
                "a parallel stream",
                target -> owner(target).startsWith("java.util")
                        && target.getName().startsWith("parallel")));
    }

    @Test
    void mechanicsTakesNoTranscendentalFunctionFromTheJdk() {
        Set<String> functions = Set.of(
                "sin", "cos", "tan", "asin", "acos", "atan", "atan2", "sinh", "cosh", "tanh", "exp", "expm1", "log",
                "log10", "log1p", "pow", "cbrt", "hypot", "fma");
        check(noMechanicsAccess(
                "a function whose last bit depends on the JDK",
                target -> owner(target).equals("java.lang.Math") && functions.contains(target.getName())));
        check(noClasses()
                .that(resideInAPackage(MECHANICS).and(DescribedPredicate.not(resideInAPackage(NUMERIC))))
                .should()
                .accessTargetWhere(accessTo(
                        "a function that the numeric room offers",
                        target ->
                                owner(target).equals("java.lang.StrictMath") && functions.contains(target.getName()))));
    }

    @Test
    void standardStreamsBelongToTheCommandAndTheWorker() {
        check(noClasses()
                .that(DescribedPredicate.not(
                        resideInAnyPackage("leverwright.face.command..", "leverwright.run.worker..")))
                .should()
                .accessTargetWhere(accessTo(
                        "a standard stream",
                        target -> (owner(target).equals("java.lang.System")
                                        && Set.of("in", "out", "err", "setIn", "setOut", "setErr", "console")
                                                .contains(target.getName()))
                                || (target.getName().equals("printStackTrace")
                                        && target instanceof AccessTarget.CodeUnitAccessTarget call
                                        && call.getRawParameterTypes().isEmpty()))));
    }

    @Test
    void jsonIsReadAndWrittenByTheWorkbookAndTheFacesOnly() {
        check(noClasses()
                .that()
                .resideInAPackage("leverwright.run..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("tools.jackson..", "com.fasterxml.."));
    }

    private static ArchRule noMechanicsAccess(String what, Predicate<AccessTarget> isForbidden) {
        return noClasses().that().resideInAPackage(MECHANICS).should().accessTargetWhere(accessTo(what, isForbidden));
    }

    private static DescribedPredicate<JavaAccess<?>> accessTo(String what, Predicate<AccessTarget> isForbidden) {
        return DescribedPredicate.describe(what, access -> isForbidden.test(access.getTarget()));
    }

    private static String owner(AccessTarget target) {
        return target.getOwner().getName();
    }

    /** A rule over rooms that are still empty passes; {@link #enoughClassesAreSeen} guards against seeing none at all. */
    private static void check(ArchRule rule) {
        rule.allowEmptyShould(true).check(CLASSES);
    }
}
