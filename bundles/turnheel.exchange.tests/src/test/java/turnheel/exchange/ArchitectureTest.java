package turnheel.exchange;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import java.time.Instant;
import java.time.LocalDateTime;
import java.util.Date;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;

import org.junit.jupiter.api.Test;

/** Who may know whom. Plain tests, since the build does not count rules that are fields. */
class ArchitectureTest {

    private static final JavaClasses CLASSES = new ClassFileImporter()
            .withImportOption(new ImportOption.DoNotIncludeTests()).importPackages("turnheel.exchange");

    @Test
    void onlyTheTopKnowsFiles() {
        noClasses().that().resideOutsideOfPackage("turnheel.exchange")
                .should().dependOnClassesThat().resideInAnyPackage("java.nio.file..")
                .orShould().dependOnClassesThat().haveFullyQualifiedName("java.io.File").check(CLASSES);
    }

    @Test
    void onlyTheWritersOfAFormatKnowItsLibraries() {
        noClasses().that().resideOutsideOfPackages("..workbook..", "..manuscript..", "..word..")
                .should().dependOnClassesThat().resideInAnyPackage("org.apache.poi..", "org.openxmlformats..")
                .check(CLASSES);
        noClasses().that().resideOutsideOfPackages("..pdf..", "..manuscript..")
                .should().dependOnClassesThat().resideInAnyPackage("org.apache.pdfbox..").check(CLASSES);
        noClasses().that().resideOutsideOfPackage("..pdf..")
                .should().dependOnClassesThat().resideInAnyPackage("com.openhtmltopdf..").check(CLASSES);
        noClasses().that().resideInAPackage("..manuscript..")
                .should().dependOnClassesThat().resideInAnyPackage("org.apache.poi.ss..", "org.apache.poi.xssf..",
                        "org.openxmlformats..").check(CLASSES);
        noClasses().that().resideInAPackage("..word..")
                .should().dependOnClassesThat().resideInAnyPackage("org.apache.poi.ss..", "org.apache.poi.xssf..",
                        "org.openxmlformats.schemas.spreadsheetml..", "org.apache.pdfbox..").check(CLASSES);
        noClasses().that().resideOutsideOfPackage("..typeface..")
                .should().dependOnClassesThat().resideInAPackage("org.apache.fontbox..").check(CLASSES);
    }

    @Test
    void nobodyAsksTheMachineForItsFonts() {
        noClasses().should().dependOnClassesThat().haveFullyQualifiedName("java.awt.Font")
                .orShould().dependOnClassesThat().haveFullyQualifiedName("java.awt.GraphicsEnvironment").check(CLASSES);
    }

    @Test
    void nobodyKnowsDocumentScreenOrCommandLine() {
        noClasses().should().dependOnClassesThat().resideInAnyPackage("turnheel.model..", "turnheel.cli..",
                "turnheel.workbench..", "org.eclipse..").check(CLASSES);
    }

    @Test
    void nobodyHasAClock() {
        noClasses().should().callMethod(System.class, "currentTimeMillis")
                .orShould().callMethod(System.class, "nanoTime")
                .orShould().callMethod(LocalDateTime.class, "now")
                .orShould().callMethod(Instant.class, "now")
                .orShould().callConstructor(Date.class).check(CLASSES);
    }

    @Test
    void packagesHaveNoCycles() {
        slices().matching("turnheel.exchange.(*)..").should().beFreeOfCycles().check(CLASSES);
    }
}
