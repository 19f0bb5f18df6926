package laminate;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.lang.conditions.ArchConditions.dependOnClassesThat;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.codeUnits;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.GeneralCodingRules.ACCESS_STANDARD_STREAMS;
import static com.tngtech.archunit.library.GeneralCodingRules.USE_JAVA_UTIL_LOGGING;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaCodeUnit;
import com.tngtech.archunit.core.domain.JavaField;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption.Predefined;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The floors of the house: what each package may know, and what the library never does. */
class ArchitectureTest {

    /** Ground floor first: a package uses only those before it. A new package is given its floor here. */
    private static final List<String> FLOORS = List.of(
            "laminate.unit",
            "laminate.material",
            "laminate.theory",
            "laminate.theory.failure",
            "laminate.theory.sandwich",
            "laminate.theory.beam",
            "laminate.theory.panel",
            "laminate.process",
            "laminate.process.cure",
            "laminate.process.flow",
            "laminate.part.infusion",
            "laminate.part",
            "laminate.estimate",
            "laminate.check",
            "laminate.plan",
            "laminate.plan.infusion",
            "laminate.order.cut",
            "laminate.order.pieces",
            "laminate.order.packs",
            "laminate.order",
            "laminate.quote.price",
            "laminate.quote",
            "laminate.compare",
            "laminate.file");

    private static final JavaClasses CLASSES = new ClassFileImporter()
            .withImportOption(Predefined.DO_NOT_INCLUDE_TESTS)
            .importPackages("laminate");

    @Test
    void everyClassLivesOnAFloor() {
        check(classes().should().resideInAnyPackage(FLOORS.toArray(String[]::new)));
    }

    static Stream<String> floors() {
        return FLOORS.stream();
    }

    @ParameterizedTest
    @MethodSource("floors")
    void aFloorUsesOnlyTheFloorsBelowIt(String floor) {
        String[] above = FLOORS.stream().skip(FLOORS.indexOf(floor) + 1L).toArray(String[]::new);
        check(noClasses()
                .that()
                .resideInAPackage(floor)
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage(above));
    }

    @Test
    void yamlIsKnownToTheFileReaderOnly() {
        check(noClasses()
                .that()
                .resideOutsideOfPackage("laminate.file")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("com.fasterxml.jackson..", "org.yaml.."));
    }

    @Test
    void theMatrixLibraryIsKnownToTheTheoryOnly() {
        check(noClasses()
                .that()
                .resideOutsideOfPackage("laminate.theory..")
                .should(dependOnClassesThat(resideInAPackage("org.ejml.."))));
    }

    @Test
    void theMatrixLibraryStandsInNoPublicSignature() {
        check(codeUnits().that().arePublic().or().areProtected().should(notMentionTheMatrixLibrary()));
        check(fields().that().arePublic().or().areProtected().should(notBeOfTheMatrixLibrary()));
    }

    @Test
    void theLibraryPrintsNothingAndNeverEndsTheProcess() {
        check(noClasses().should(ACCESS_STANDARD_STREAMS));
        check(noClasses().should(USE_JAVA_UTIL_LOGGING));
        check(noClasses().should().callMethod(System.class, "exit", int.class));
    }

    private static ArchCondition<JavaCodeUnit> notMentionTheMatrixLibrary() {
        return new ArchCondition<>("not mention the matrix library") {
            @Override
            public void check(JavaCodeUnit unit, ConditionEvents events) {
                boolean mentioned = unit.getOwner().getModifiers().contains(JavaModifier.PUBLIC)
                        && Stream.concat(Stream.of(unit.getRawReturnType()), unit.getRawParameterTypes().stream())
                                .anyMatch(ArchitectureTest::isOfTheMatrixLibrary);
                events.add(new SimpleConditionEvent(unit, !mentioned, unit.getFullName()));
            }
        };
    }

    private static ArchCondition<JavaField> notBeOfTheMatrixLibrary() {
        return new ArchCondition<>("not be of the matrix library") {
            @Override
            public void check(JavaField field, ConditionEvents events) {
                events.add(new SimpleConditionEvent(
                        field, !isOfTheMatrixLibrary(field.getRawType()), field.getFullName()));
            }
        };
    }

    private static boolean isOfTheMatrixLibrary(JavaClass type) {
        return type.getPackageName().startsWith("org.ejml");
    }

    /** Some of the packages come later; a rule without subjects holds. */
    private static void check(ArchRule rule) {
        rule.allowEmptyShould(true).check(CLASSES);
    }
}
