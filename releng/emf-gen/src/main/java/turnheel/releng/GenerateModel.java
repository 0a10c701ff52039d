package turnheel.releng;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

import org.eclipse.emf.codegen.ecore.generator.Generator;
import org.eclipse.emf.codegen.ecore.generator.GeneratorAdapterFactory;
import org.eclipse.emf.codegen.ecore.genmodel.GenModel;
import org.eclipse.emf.codegen.ecore.genmodel.GenModelPackage;
import org.eclipse.emf.codegen.ecore.genmodel.generator.GenBaseGeneratorAdapter;
import org.eclipse.emf.codegen.ecore.genmodel.generator.GenModelGeneratorAdapterFactory;
import org.eclipse.emf.common.util.BasicMonitor;
import org.eclipse.emf.common.util.Diagnostic;
import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.ecore.plugin.EcorePlugin;
import org.eclipse.emf.ecore.resource.Resource;
import org.eclipse.emf.ecore.resource.ResourceSet;
import org.eclipse.emf.ecore.resource.impl.ResourceSetImpl;
import org.eclipse.emf.ecore.util.Diagnostician;
import org.eclipse.emf.ecore.xmi.impl.XMIResourceFactoryImpl;

/**
 * Generates the model code. In: the folder of the bundles and a .genmodel below it. Out: the model's source folder,
 * written anew. Running it twice changes nothing the second time.
 */
public final class GenerateModel {
    private GenerateModel() {
    }

    /**
     * @param arguments the folder that holds the bundles, and the path of the .genmodel from there
     * @throws Exception when the model is invalid or a file could not be written; Maven reports it and fails
     */
    public static void main(String[] arguments) throws Exception {
        Path bundles = Path.of(arguments[0]).toRealPath();
        GenModel genModel = load(bundles, arguments[1]);
        failUnlessOk("The .genmodel and .ecore", Diagnostician.INSTANCE.validate(genModel));

        // Generating over old files would merge: a class that left the model, or an edit by hand, would stay.
        delete(bundles.resolve(genModel.getModelDirectory().substring(1)));
        GeneratorAdapterFactory.Descriptor.Registry.INSTANCE.addDescriptor(
                GenModelPackage.eNS_URI, GenModelGeneratorAdapterFactory.DESCRIPTOR);
        genModel.setCanGenerate(true);
        Generator generator = new Generator();
        generator.setInput(genModel);
        Diagnostic result = generator.generate(genModel, GenBaseGeneratorAdapter.MODEL_PROJECT_TYPE,
                new BasicMonitor());
        failUnlessOk("The generated code", result);
    }

    private static GenModel load(Path bundles, String genModelPath) throws IOException {
        // Without a workspace, EMF looks up "platform:/resource/<bundle>/" here.
        try (var folders = Files.newDirectoryStream(bundles, Files::isDirectory)) {
            for (Path folder : folders) {
                EcorePlugin.getPlatformResourceMap().put(folder.getFileName().toString(),
                        URI.createURI(folder.toUri().toString()));
            }
        }
        GenModelPackage.eINSTANCE.eClass();
        ResourceSet resources = new ResourceSetImpl();
        for (String extension : List.of("ecore", "genmodel")) {
            resources.getResourceFactoryRegistry().getExtensionToFactoryMap().put(extension,
                    new XMIResourceFactoryImpl());
        }
        Resource resource = resources.getResource(URI.createPlatformResourceURI(genModelPath, true), true);
        GenModel genModel = (GenModel) resource.getContents().getFirst();
        genModel.reconcile();
        return genModel;
    }

    private static void delete(Path folder) throws IOException {
        if (Files.exists(folder)) {
            try (Stream<Path> paths = Files.walk(folder)) {
                for (Path path : paths.sorted(Comparator.reverseOrder()).toList()) {
                    Files.delete(path);
                }
            }
        }
    }

    private static void failUnlessOk(String what, Diagnostic diagnostic) {
        if (diagnostic.getSeverity() >= Diagnostic.WARNING) {
            var reasons = new StringBuilder(what).append(": ").append(diagnostic.getMessage());
            diagnostic.getChildren().forEach(child -> reasons.append("\n  ").append(child.getMessage()));
            throw new IllegalStateException(reasons.toString());
        }
    }
}
