package turnheel.exchange;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

/** Who may know whom. */
@AnalyzeClasses(packages = "turnheel.exchange", importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {

    @ArchTest
    static final ArchRule ONLY_THE_TOP_KNOWS_FILES = noClasses().that().resideOutsideOfPackage("turnheel.exchange")
            .should().dependOnClassesThat().resideInAnyPackage("java.nio.file..")
            .orShould().dependOnClassesThat().haveFullyQualifiedName("java.io.File");

    @ArchTest
    static final ArchRule ONLY_THE_WORKBOOK_KNOWS_POI = noClasses().that().resideOutsideOfPackage("..workbook..")
            .should().dependOnClassesThat().resideInAnyPackage("org.apache.poi..", "org.openxmlformats..");

    @ArchTest
    static final ArchRule NOBODY_KNOWS_DOCUMENT_SCREEN_OR_COMMAND_LINE = noClasses()
            .should().dependOnClassesThat().resideInAnyPackage("turnheel.model..", "turnheel.cli..",
                    "turnheel.workbench..", "org.eclipse..");

    @ArchTest
    static final ArchRule NOBODY_HAS_A_CLOCK = noClasses().should().callMethod(System.class, "currentTimeMillis")
            .orShould().callMethod(System.class, "nanoTime")
            .orShould().callMethod(java.time.LocalDateTime.class, "now")
            .orShould().callMethod(java.time.Instant.class, "now")
            .orShould().callConstructor(java.util.Date.class);

    @ArchTest
    static final ArchRule PACKAGES_HAVE_NO_CYCLES = slices().matching("turnheel.exchange.(*)..")
            .should().beFreeOfCycles();
}
