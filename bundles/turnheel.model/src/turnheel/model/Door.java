package turnheel.model;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.Supplier;

import org.eclipse.emf.common.util.TreeIterator;
import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;

import turnheel.engine.design.AfterthoughtHeel;
import turnheel.engine.design.AsymmetricToe;
import turnheel.engine.design.CalfLeg;
import turnheel.engine.design.Catalogue;
import turnheel.engine.design.ColourPlace;
import turnheel.engine.design.Cuff;
import turnheel.engine.design.Design;
import turnheel.engine.design.FlapHeel;
import turnheel.engine.design.Heel;
import turnheel.engine.design.HemCuff;
import turnheel.engine.design.Leg;
import turnheel.engine.design.Lengths;
import turnheel.engine.design.Materials;
import turnheel.engine.design.OwnRow;
import turnheel.engine.design.Quantity;
import turnheel.engine.design.RibCuff;
import turnheel.engine.design.Role;
import turnheel.engine.design.RolledCuff;
import turnheel.engine.design.RoundToe;
import turnheel.engine.design.ShortRowHeel;
import turnheel.engine.design.ShortRowToe;
import turnheel.engine.design.Share;
import turnheel.engine.design.Size;
import turnheel.engine.design.StarToe;
import turnheel.engine.design.StitchPattern;
import turnheel.engine.design.StraightLeg;
import turnheel.engine.design.Stranding;
import turnheel.engine.design.Swatch;
import turnheel.engine.design.Toe;
import turnheel.engine.design.WedgeToe;
import turnheel.engine.design.Yarn;
import turnheel.engine.design.YarnLine;
import turnheel.engine.term.Key;
import turnheel.model.DocumentProblem.Kind;
import turnheel.model.pattern.AfterthoughtHeelElement;
import turnheel.model.pattern.AsymmetricToeElement;
import turnheel.model.pattern.CalfLegElement;
import turnheel.model.pattern.ColourElement;
import turnheel.model.pattern.CuffElement;
import turnheel.model.pattern.EntryElement;
import turnheel.model.pattern.FlapHeelElement;
import turnheel.model.pattern.HeelElement;
import turnheel.model.pattern.HemCuffElement;
import turnheel.model.pattern.LegElement;
import turnheel.model.pattern.LengthsElement;
import turnheel.model.pattern.MaterialsElement;
import turnheel.model.pattern.OwnRowElement;
import turnheel.model.pattern.Pattern;
import turnheel.model.pattern.PatternPackage;
import turnheel.model.pattern.RibCuffElement;
import turnheel.model.pattern.RolledCuffElement;
import turnheel.model.pattern.RoundToeElement;
import turnheel.model.pattern.ShortRowHeelElement;
import turnheel.model.pattern.ShortRowToeElement;
import turnheel.model.pattern.SizeElement;
import turnheel.model.pattern.StarToeElement;
import turnheel.model.pattern.StitchPatternElement;
import turnheel.model.pattern.StraightLegElement;
import turnheel.model.pattern.SwatchElement;
import turnheel.model.pattern.ToeElement;
import turnheel.model.pattern.WedgeToeElement;
import turnheel.model.pattern.YarnElement;

/**
 * The one way from the editable document to a design. What the engine refuses comes out as a problem with its place; an
 * exception of the engine never does.
 */
public final class Door {

    private final List<DocumentProblem> problems = new ArrayList<>();

    private Door() {
    }

    /**
     * The design that the document describes at this moment. Later edits do not show in it.
     *
     * @throws DocumentException when it is not a design yet; with everything that is missing, or else everything that
     *     is wrong
     */
    public static Design design(Pattern pattern) throws DocumentException {
        Door door = new Door();
        door.requireNothingMissing(pattern);
        door.throwProblems(pattern);
        Optional<Design> design = door.open(pattern);
        door.throwProblems(pattern);
        return design.orElseThrow();
    }

    private Optional<Design> open(Pattern pattern) {
        Optional<Toe> toe = accepted(pattern.getToe(), () -> toe(pattern.getToe()));
        Optional<Heel> heel = accepted(pattern.getHeel(), () -> heel(pattern.getHeel()));
        Optional<Leg> leg = accepted(pattern.getLeg(), () -> leg(pattern.getLeg()));
        Optional<Cuff> cuff = accepted(pattern.getCuff(), () -> cuff(pattern.getCuff()));
        List<StitchPattern> stitchPatterns = pattern.getStitchPatterns().stream()
                .flatMap(element -> accepted(element, () -> stitchPattern(element)).stream()).toList();
        MaterialsElement stuff = pattern.getMaterials();
        Optional<Materials> materials = accepted(stuff == null ? pattern : stuff, () -> materials(stuff));
        LengthsElement said = pattern.getLengths();
        Optional<Lengths> lengths = accepted(said == null ? pattern : said, () -> lengths(said));
        List<Size> sizes = sizes(pattern.getSizes());
        List<OwnRow> ownRows = ownRows(pattern.getOwnRows());
        if (!problems.isEmpty()) {
            return Optional.empty();
        }
        String title = pattern.getTitle() == null ? "" : pattern.getTitle();
        return accepted(pattern, () -> new Design(title, pattern.getDirection(), pattern.getStitchGauge(),
                pattern.getRoundGauge(), toe.orElseThrow(), heel.orElseThrow(), leg.orElseThrow(), cuff.orElseThrow(),
                stitchPatterns, materials.orElseThrow(), lengths.orElseThrow(), sizes, ownRows));
    }

    // Generated interfaces cannot be sealed: each "default" is met by a test that sends every class of the .ecore
    // through.

    private static Toe toe(ToeElement element) {
        return switch (element) {
            case RoundToeElement round ->
                new RoundToe(round.getLines(), round.getIncrease(), round.getCastOn(), round.getLean());
            case WedgeToeElement wedge -> new WedgeToe(wedge.getIncrease(), wedge.getCastOn());
            case StarToeElement star -> new StarToe(star.getIncrease(), star.getCastOn(), star.getLean());
            case ShortRowToeElement shortRow -> new ShortRowToe(shortRow.getTurn());
            case AsymmetricToeElement asymmetric ->
                new AsymmetricToe(asymmetric.getIncrease(), asymmetric.getCastOn());
            default -> throw unknown(element);
        };
    }

    private static Heel heel(HeelElement element) {
        return switch (element) {
            case ShortRowHeelElement shortRow -> new ShortRowHeel(shortRow.getTurn());
            case FlapHeelElement flap -> new FlapHeel(flap.getTurn(), flap.getFlapLength(), flap.getFabric(),
                    flap.getEdge(), flap.getPickUp());
            case AfterthoughtHeelElement afterthought ->
                new AfterthoughtHeel(afterthought.getCap(), afterthought.getLean());
            default -> throw unknown(element);
        };
    }

    private static Leg leg(LegElement element) {
        return switch (element) {
            case StraightLegElement straight -> new StraightLeg(straight.getLength(), straight.getCount());
            case CalfLegElement calf -> new CalfLeg(calf.getLength(), calf.getCount());
            default -> throw unknown(element);
        };
    }

    private static Cuff cuff(CuffElement element) {
        return switch (element) {
            case RibCuffElement rib -> new RibCuff(rib.getKnit(), rib.getPurl(), rib.isMayAdjust());
            case HemCuffElement hem -> new HemCuff();
            case RolledCuffElement rolled -> new RolledCuff();
            default -> throw unknown(element);
        };
    }

    private static StitchPattern stitchPattern(StitchPatternElement element) {
        StitchPattern pattern = new StitchPattern(element.getZone(), element.getRepeat(), element.getEdge(),
                element.getRows(), element.getFit(), element.getFewestFiller())
                .withInstructions(element.getInstructions());
        if (element.isStranded()) {
            return pattern.with(new Stranding(optional(element.getLongestFloat())));
        }
        if (element.getLongestFloat() != null) {
            throw new IllegalArgumentException("a longest float belongs to a stranded pattern only");
        }
        return pattern;
    }

    /**
     * The materials that the document describes.
     *
     * @throws IllegalArgumentException when a number of theirs is refused
     */
    public static Materials materials(Pattern pattern) {
        return materials(pattern.getMaterials());
    }

    private static Materials materials(MaterialsElement element) {
        if (element == null) {
            return Materials.UNDECIDED;
        }
        List<YarnLine> yarns = element.getYarns().stream().map(Door::yarn).toList();
        Map<ColourPlace, Integer> colours = new EnumMap<>(ColourPlace.class);
        for (ColourElement colour : element.getColours()) {
            if (colours.put(colour.getPlace(), colour.getYarn()) != null) {
                throw new IllegalArgumentException("the %s has two colours".formatted(Literals.text(colour.getPlace())));
            }
        }
        List<String> notions = element.getNotions() == null ? List.of()
                : element.getNotions().lines().filter(line -> !line.isBlank()).toList();
        return new Materials(yarns, colours, notions, Optional.ofNullable(element.getNeedle()),
                Optional.ofNullable(element.getSwatch()).map(Door::swatch), new Share(element.getMarginPercent()));
    }

    private static YarnLine yarn(YarnElement label) {
        Yarn yarn = new Yarn(Objects.requireNonNullElse(label.getName(), ""), label.getMetresPerBall(),
                label.getGramsPerBall(), optional(label.getCategory()));
        return new YarnLine(yarn, Objects.requireNonNullElse(label.getColour(), ""), optional(label.getBalls()));
    }

    private static Swatch swatch(SwatchElement piece) {
        if ((piece.getWidth() == null) != (piece.getHeight() == null)) {
            throw new IllegalArgumentException("a swatch is measured both ways or not at all");
        }
        Optional<Swatch.Measured> measured = piece.getWidth() == null ? Optional.empty()
                : Optional.of(new Swatch.Measured(piece.getWidth(), piece.getHeight()));
        OptionalDouble grams = piece.getGrams() == null ? OptionalDouble.empty() : OptionalDouble.of(piece.getGrams());
        return new Swatch(piece.getStitches(), piece.getRounds(), grams, measured, piece.getWorked(), piece.isWashed());
    }

    private static Lengths lengths(LengthsElement element) {
        return element == null ? Lengths.USUAL
                : new Lengths(element.getFoot(), element.getLeg(), element.getCuff(), element.getSnap());
    }

    private static OptionalInt optional(Integer number) {
        return number == null ? OptionalInt.empty() : OptionalInt.of(number);
    }

    private static IllegalStateException unknown(EObject element) {
        return new IllegalStateException("the door does not know %s".formatted(element.eClass().getName()));
    }

    /** The row that the element describes; its formula may be wrong. */
    public static OwnRow ownRow(OwnRowElement element) {
        return new OwnRow(element.getKey(), Objects.requireNonNullElse(element.getLabel(), ""), element.getFormula());
    }

    private List<OwnRow> ownRows(List<OwnRowElement> elements) {
        List<OwnRow> rows = new ArrayList<>();
        for (OwnRowElement element : elements) {
            Optional<OwnRow> row = accepted(element, () -> ownRow(element));
            if (rows.stream().anyMatch(other -> other.sharesNameWith(element.getKey()))) {
                report(element, PatternPackage.Literals.OWN_ROW_ELEMENT__KEY, Kind.SAME_ROW, element.getKey().name());
            }
            row.ifPresent(rows::add);
        }
        return rows;
    }

    private List<Size> sizes(List<SizeElement> elements) {
        Set<String> ids = new HashSet<>();
        Set<String> labels = new HashSet<>();
        List<Size> sizes = new ArrayList<>();
        for (SizeElement element : elements) {
            if (!ids.add(element.getId())) {
                report(element, PatternPackage.Literals.SIZE_ELEMENT__ID, Kind.SAME_ID, element.getId());
            }
            if (!labels.add(element.getLabel())) {
                report(element, PatternPackage.Literals.SIZE_ELEMENT__LABEL, Kind.SAME_LABEL, element.getLabel());
            }
            Map<Key, Quantity> inputs = quantities(element, element.getInputs(), Role.INPUT);
            Map<Key, Quantity> overrides = quantities(element, element.getOverrides(), Role.RULE);
            accepted(element, () -> new Size(element.getId(), element.getLabel(), inputs, overrides))
                    .ifPresent(sizes::add);
        }
        return sizes;
    }

    private Map<Key, Quantity> quantities(SizeElement size, List<? extends EntryElement> entries, Role role) {
        Map<Key, Quantity> quantities = new LinkedHashMap<>();
        for (EntryElement entry : entries) {
            Key key = entry.getKey();
            // Asked here, entry by entry, for its place; the size would refuse them all at the first.
            Optional<Quantity> quantity = accepted(entry, () -> {
                Catalogue.parameter(key).require(role, entry.getValue());
                return entry.getValue();
            });
            if (quantity.isPresent() && quantities.put(key, quantity.get()) != null) {
                report(entry, PatternPackage.Literals.ENTRY_ELEMENT__KEY, Kind.SAME_KEY, size.getLabel(), key.name());
            }
        }
        return quantities;
    }

    private <T> Optional<T> accepted(EObject element, Supplier<T> made) {
        try {
            return Optional.of(made.get());
        } catch (IllegalArgumentException refused) {
            problems.add(DocumentProblem.at(Origin.of(element), Kind.REFUSED, name(element), refused.getMessage()));
            return Optional.empty();
        }
    }

    /** What a person would call the element: a size's entries by the size. */
    private static String name(EObject element) {
        return switch (element) {
            case SizeElement size -> size.getLabel();
            case EntryElement entry when entry.eContainer() instanceof SizeElement size -> size.getLabel();
            case OwnRowElement row -> row.getKey().name();
            default -> FileNames.of(element.eClass());
        };
    }

    /** An editor may have named the resource by its place in the workspace, or not at all. */
    private static String name(URI uri) {
        if (uri == null) {
            return "";
        }
        if (uri.isPlatformResource()) {
            return uri.toPlatformString(true);
        }
        return uri.isFile() ? uri.toFileString() : uri.toString();
    }

    private void requireNothingMissing(Pattern pattern) {
        requireNothingMissing((EObject) pattern);
        TreeIterator<EObject> inside = pattern.eAllContents();
        while (inside.hasNext()) {
            requireNothingMissing(inside.next());
        }
    }

    private void requireNothingMissing(EObject element) {
        for (EStructuralFeature feature : element.eClass().getEAllStructuralFeatures()) {
            Object value = element.eGet(feature);
            if (feature.isRequired() && (value == null || value instanceof List<?> list && list.isEmpty())) {
                report(element, feature, Kind.MISSING, FileNames.of(feature), FileNames.of(element.eClass()));
            }
        }
    }

    private void report(EObject element, EStructuralFeature feature, Kind kind, String... values) {
        problems.add(DocumentProblem.at(Origin.of(element, feature), kind, values));
    }

    private void throwProblems(Pattern pattern) throws DocumentException {
        if (!problems.isEmpty()) {
            String source = pattern.eResource() == null ? "" : name(pattern.eResource().getURI());
            throw new DocumentException(source, problems);
        }
    }
}
