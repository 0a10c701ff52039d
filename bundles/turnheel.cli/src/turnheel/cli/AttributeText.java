package turnheel.cli;

import java.util.Arrays;
import java.util.List;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.util.EcoreUtil;

import turnheel.model.Literals;

/** A choice of a part, as it is written on the command line: the same words as in the pattern file. */
final class AttributeText {

    private static final List<String> YES_OR_NO = List.of("no", "yes");

    private AttributeText() {
    }

    static String of(EAttribute attribute, Object value) {
        return value instanceof Boolean yes ? YES_OR_NO.get(yes ? 1 : 0)
                : EcoreUtil.convertToString(attribute.getEAttributeType(), value);
    }

    static Object parse(String given, EAttribute attribute, String value) throws Refusal {
        Class<?> type = attribute.getEAttributeType().getInstanceClass();
        if (type.isEnum()) {
            List<?> constants = Arrays.asList(type.getEnumConstants());
            return constants.get(Choice.position(given, value,
                    constants.stream().map(constant -> Literals.text((Enum<?>) constant)).toList()));
        }
        if (type == boolean.class) {
            return Choice.position(given, value, YES_OR_NO) == 1;
        }
        try {
            return EcoreUtil.createFromString(attribute.getEAttributeType(), value);
        } catch (IllegalArgumentException refused) {
            throw new Refusal(Words.VALUE_REFUSED.with(given, refused.getMessage()));
        }
    }
}
