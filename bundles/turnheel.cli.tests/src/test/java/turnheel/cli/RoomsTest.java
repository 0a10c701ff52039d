package turnheel.cli;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

@AnalyzeClasses(packages = "turnheel.cli", importOptions = ImportOption.DoNotIncludeTests.class)
class RoomsTest {

    /** Lists of the generated model are EMF's; nothing else of it, and nothing of workbench or POI, is known here. */
    @ArchTest
    static final ArchRule THE_COMMAND_LINE_KNOWS_ENGINE_MODEL_AND_EXCHANGE = classes().should()
            .onlyDependOnClassesThat().resideInAnyPackage("java..", "turnheel.cli..", "turnheel.engine..",
                    "turnheel.model..", "turnheel.exchange..", "picocli..", "com.fasterxml.jackson.core..",
                    "org.eclipse.emf.common.util..");
}
