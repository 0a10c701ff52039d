package turnheel.cli;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;

import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;

import org.junit.jupiter.api.Test;

class RoomsTest {

    /** Lists of the generated model are EMF's; nothing else of it, and nothing of workbench or POI, is known here. */
    @Test
    void theCommandLineKnowsEngineModelAndExchange() {
        classes().should().onlyDependOnClassesThat().resideInAnyPackage("java..", "turnheel.cli..", "turnheel.engine..",
                "turnheel.model..", "turnheel.exchange..", "picocli..", "com.fasterxml.jackson.core..",
                "org.eclipse.emf.common.util..", "org.eclipse.emf.ecore..")
                .check(new ClassFileImporter().withImportOption(new ImportOption.DoNotIncludeTests())
                        .importPackages("turnheel.cli"));
    }
}
