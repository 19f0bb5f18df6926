package laminate.cli;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.GeneralCodingRules.ACCESS_STANDARD_STREAMS;
import static com.tngtech.archunit.library.GeneralCodingRules.USE_JAVA_UTIL_LOGGING;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption.Predefined;
import com.tngtech.archunit.lang.ArchRule;
import org.junit.jupiter.api.Test;

/** The command line is thin, and the printers can be used without it. */
class ArchitectureTest {

    private static final JavaClasses CLASSES = new ClassFileImporter()
            .withImportOption(Predefined.DO_NOT_INCLUDE_TESTS)
            .importPackages("laminate.cli", "laminate.print", "laminate.library");

    @Test
    void printersNeedNoCommandLine() {
        check(noClasses()
                .that()
                .resideInAPackage("laminate.print..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("picocli..", "laminate.cli.."));
    }

    @Test
    void theLibraryKnowsNeitherCommandsNorPrinters() {
        check(noClasses()
                .that()
                .resideInAPackage("laminate.library..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("picocli..", "laminate.cli..", "laminate.print.."));
    }

    @Test
    void onlyMainEndsTheProcess() {
        check(noClasses().that().doNotBelongToAnyOf(Main.class).should().callMethod(System.class, "exit", int.class));
    }

    @Test
    void everyoneWritesToTheStreamsHanded() {
        check(noClasses().should(ACCESS_STANDARD_STREAMS));
        check(noClasses().should(USE_JAVA_UTIL_LOGGING));
    }

    /** Some of the packages come later; a rule without subjects holds. */
    private static void check(ArchRule rule) {
        rule.allowEmptyShould(true).check(CLASSES);
    }
}
