package turnheel.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.stream.Stream;

import org.eclipse.emf.common.command.BasicCommandStack;
import org.eclipse.emf.common.command.Command;
import org.eclipse.emf.edit.command.AddCommand;
import org.eclipse.emf.edit.command.ChangeCommand;
import org.eclipse.emf.edit.command.DeleteCommand;
import org.eclipse.emf.edit.command.MoveCommand;
import org.eclipse.emf.edit.command.SetCommand;
import org.eclipse.emf.edit.domain.AdapterFactoryEditingDomain;
import org.eclipse.emf.edit.domain.EditingDomain;
import org.eclipse.emf.edit.provider.ReflectiveItemProviderAdapterFactory;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

import turnheel.engine.design.Direction;
import turnheel.engine.design.Quantity;
import turnheel.model.pattern.Pattern;
import turnheel.model.pattern.PatternFactory;
import turnheel.model.pattern.PatternPackage.Literals;
import turnheel.model.pattern.SizeElement;

/** The document under EMF's editing domain, as the workbench uses it: no generated item providers are needed. */
class EditingTest {

    private final EditingDomain domain = new AdapterFactoryEditingDomain(new ReflectiveItemProviderAdapterFactory(),
            new BasicCommandStack());
    private Pattern pattern;

    @BeforeEach
    void open() throws DocumentException {
        pattern = Patterns.read(Patterns.HARBOUR_TEXT);
        domain.getResourceSet().getResources().add(pattern.eResource());
    }

    /** A name, a text that the file has after the edit and not before, and the edit. */
    static Stream<Arguments> edits() {
        return Stream.of(
                edit("set an attribute", "direction=\"cuff-down\"", (domain, pattern) -> SetCommand.create(
                        domain, pattern,
                        Literals.PATTERN__DIRECTION, Direction.CUFF_DOWN)),
                edit("change the kind of a part", "turnheel:WedgeToe", (domain, pattern) -> SetCommand.create(
                        domain, pattern,
                        Literals.PATTERN__TOE, PatternFactory.eINSTANCE.createWedgeToeElement())),
                edit("rename a size", "<size id=\"l\" label=\"Large\">", (domain, pattern) -> SetCommand.create(domain,
                        pattern.getSizes().getLast(), Literals.SIZE_ELEMENT__LABEL, "Large")),
                edit("add a size", "<size id=\"xl\"", (domain, pattern) -> {
                    SizeElement size = PatternFactory.eINSTANCE.createSizeElement();
                    size.setId("xl");
                    return AddCommand.create(domain, pattern, Literals.PATTERN__SIZES, size);
                }),
                edit("move a size", "<cuff xsi:type=\"turnheel:RibCuff\" knit=\"2\" purl=\"2\" mayAdjust=\"false\"/>\n  <size id=\"l\"",
                        (domain, pattern) -> MoveCommand.create(domain, pattern, Literals.PATTERN__SIZES,
                                pattern.getSizes().getLast(), 0)),
                edit("delete a size", "purl=\"2\" mayAdjust=\"false\"/>\n  <size id=\"l\"",
                        (domain, pattern) -> DeleteCommand.create(domain, pattern.getSizes().getFirst())),
                edit("override by recording", "<override key=\"cuff.height\" value=\"50 mm\"/>",
                        (domain, pattern) -> new ChangeCommand(pattern) {
                            @Override
                            protected void doExecute() {
                                Documents.setOverride(pattern.getSizes().getFirst(), Patterns.key("cuff.height"),
                                        Quantity.parse("50 mm"));
                            }
                        }));
    }

    private interface Maker {
        Command make(EditingDomain domain, Pattern pattern);
    }

    private static Arguments edit(String name, String shows, Maker maker) {
        return Arguments.of(name, shows, maker);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("edits")
    void everyEditCanBeUndoneAndDoneAgain(String name, String shows, Maker maker) throws DocumentException {
        assertFalse(Patterns.HARBOUR_TEXT.contains(shows));
        domain.getCommandStack().execute(maker.make(domain, pattern));
        String edited = Patterns.written(pattern);
        assertTrue(edited.contains(shows), edited);

        domain.getCommandStack().undo();
        assertEquals(Patterns.HARBOUR_TEXT, Patterns.written(pattern));

        domain.getCommandStack().redo();
        assertEquals(edited, Patterns.written(pattern));
    }
}
