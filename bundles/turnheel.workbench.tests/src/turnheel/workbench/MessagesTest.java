package turnheel.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;

import java.io.InputStream;
import java.io.InputStreamReader;
import java.lang.reflect.Field;
import java.lang.reflect.Modifier;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Collections;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.eclipse.core.runtime.Platform;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class MessagesTest {

    private static final Pattern PLACEHOLDER = Pattern.compile("\\{(\\d)}");
    private static final Pattern NUMBERS = Pattern.compile("_(\\d)(?=_\\d|$)");

    @ParameterizedTest
    @ValueSource(strings = { "document", "editor", "grid", "markers", "view" })
    void everyFieldHasItsWordsAndEveryWordItsField(String name) throws Exception {
        Class<?> messages = Class.forName("turnheel.workbench." + name + ".Messages");
        Properties words = new Properties();
        try (InputStream file = messages.getResourceAsStream("messages.properties")) {
            assertNotNull(file, "messages.properties");
            words.load(new InputStreamReader(file, StandardCharsets.UTF_8));
        }
        Set<String> fields = new TreeSet<>();
        for (Field field : messages.getDeclaredFields()) {
            if (Modifier.isPublic(field.getModifiers())) {
                field.setAccessible(true);
                String text = (String) field.get(null);
                assertFalse(text.startsWith("NLS missing message"), text);
                assertEquals(words.getProperty(field.getName()), text, field.getName());
                assertEquals(numbers(NUMBERS, field.getName()), numbers(PLACEHOLDER, text), field.getName());
                fields.add(field.getName());
            }
        }
        assertEquals(new TreeSet<>(words.stringPropertyNames()), fields);
    }

    private static Set<String> numbers(Pattern pattern, String text) {
        Matcher matcher = pattern.matcher(text);
        Set<String> numbers = new TreeSet<>();
        while (matcher.find()) {
            numbers.add(matcher.group(1));
        }
        return numbers;
    }

    /** A package that gets words must be in the list above. */
    @ParameterizedTest
    @ValueSource(strings = "turnheel.workbench")
    void everyPackageThatTalksIsTested(String bundle) {
        Set<String> talking = Stream.of(Platform.getBundle(bundle).findEntries("/", "Messages.class", true))
                .flatMap(entries -> Collections.list(entries).stream())
                .map(url -> url.getPath().replaceAll(".*/([a-z]+)/Messages\\.class", "$1")).collect(Collectors.toSet());
        assertEquals(new TreeSet<>(Arrays.asList("document", "editor", "grid", "markers", "view")), new TreeSet<>(talking));
    }
}
