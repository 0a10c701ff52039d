package turnheel.exchange.html;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.WebSocket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CompletionStage;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;

/** A browser without a screen and one page in it, driven through the browser's own protocol for its developers. */
final class Chromium implements AutoCloseable {

    private static final long PATIENCE_SECONDS = 120;
    private static final ObjectMapper JSON = new ObjectMapper();

    private final Process process;
    private final BlockingQueue<JsonNode> heard = new LinkedBlockingQueue<>();
    private final List<JsonNode> events = new ArrayList<>();
    private final HttpClient client = HttpClient.newHttpClient();
    private final WebSocket line;
    private Optional<String> session = Optional.empty();
    private int calls;

    private Chromium(Process process, URI door) {
        this.process = process;
        this.line = client.newWebSocketBuilder().buildAsync(door, new Ear()).join();
    }

    /** @param scratch an empty folder for its profile */
    static Chromium start(Path scratch) throws IOException, InterruptedException {
        Path profile = Files.createDirectories(scratch.resolve("profile"));
        Path said = scratch.resolve("chromium.log");
        List<String> command = new ArrayList<>(List.of(program().toString(), "--headless", "--disable-gpu",
                "--disable-quic", "--no-first-run", "--disable-background-networking", "--disable-component-update",
                "--disable-sync", "--hide-scrollbars", "--remote-debugging-port=0", "--user-data-dir=" + profile));
        if ("root".equals(System.getProperty("user.name"))) {
            command.add("--no-sandbox"); // which does not work for root
        }
        command.add("about:blank");
        Process process = new ProcessBuilder(command).redirectErrorStream(true).redirectOutput(said.toFile()).start();
        try {
            Chromium chromium = new Chromium(process, door(profile, process, said));
            chromium.openPage();
            return chromium;
        } catch (IOException | InterruptedException | RuntimeException | AssertionError failure) {
            end(process);
            throw failure;
        }
    }

    private static URI door(Path profile, Process process, Path said) throws IOException, InterruptedException {
        Path port = profile.resolve("DevToolsActivePort");
        for (long tenths = 0; tenths < 10 * PATIENCE_SECONDS; tenths++) {
            if (Files.exists(port)) {
                List<String> lines = Files.readAllLines(port);
                if (lines.size() > 1) {
                    return URI.create("ws://127.0.0.1:%s%s".formatted(lines.get(0), lines.get(1)));
                }
            }
            if (process.waitFor(100, TimeUnit.MILLISECONDS)) {
                break;
            }
        }
        throw new AssertionError("Chromium did not start; it said: " + Files.readString(said, StandardCharsets.UTF_8));
    }

    private static Path program() {
        for (String folder : System.getenv("PATH").split(java.io.File.pathSeparator)) {
            for (String name : List.of("chromium", "chromium-browser", "google-chrome")) {
                Path program = Path.of(folder, name);
                if (Files.isExecutable(program)) {
                    return program;
                }
            }
        }
        throw new AssertionError("Chromium is not installed, so nobody has looked at the pages: there is no "
                + "\"chromium\" on the path. Run releng/verify, which installs it, or install chromium.");
    }

    private void openPage() throws InterruptedException {
        String target = call("Target.createTarget", JSON.createObjectNode().put("url", "about:blank"))
                .path("targetId").asText();
        session = Optional.of(call("Target.attachToTarget",
                JSON.createObjectNode().put("targetId", target).put("flatten", true)).path("sessionId").asText());
        for (String domain : List.of("Page", "Runtime", "Network", "Log")) {
            call(domain + ".enable");
        }
    }

    /** Loads a page and waits until all of it is there. */
    void open(Path page) throws InterruptedException {
        events.clear();
        call("Page.navigate", JSON.createObjectNode().put("url", page.toUri().toString()));
        while (events.stream().noneMatch(event -> event.path("method").asText().equals("Page.loadEventFired"))) {
            events.add(next());
        }
    }

    /** The window: its width and height in CSS pixels, of which an inch has 96. */
    void window(int width, int height) throws InterruptedException {
        call("Emulation.setDeviceMetricsOverride", JSON.createObjectNode().put("width", width).put("height", height)
                .put("deviceScaleFactor", 1).put("mobile", false));
    }

    /** Whether the person prefers light letters on dark ground. */
    void prefersDark(boolean dark) throws InterruptedException {
        ObjectNode media = JSON.createObjectNode();
        media.putArray("features").addObject().put("name", "prefers-color-scheme").put("value", dark ? "dark" : "light");
        call("Emulation.setEmulatedMedia", media);
    }

    /** What an expression gives, promises kept. It runs beside the page, so that the page's own policy cannot stop it. */
    JsonNode evaluate(String expression) throws InterruptedException {
        JsonNode answer = call("Runtime.evaluate", JSON.createObjectNode().put("expression", expression)
                .put("awaitPromise", true).put("returnByValue", true));
        if (answer.has("exceptionDetails")) {
            throw new AssertionError("the browser could not evaluate it: " + answer.path("exceptionDetails"));
        }
        return answer.path("result").path("value");
    }

    byte[] screenshot() throws InterruptedException {
        return decoded(call("Page.captureScreenshot", JSON.createObjectNode().put("captureBeyondViewport", true)));
    }

    /** The page as it comes out of a printer, on A4. */
    byte[] printed() throws InterruptedException {
        return decoded(call("Page.printToPDF", JSON.createObjectNode().put("printBackground", false)
                .put("preferCSSPageSize", true).put("paperWidth", 210 / 25.4).put("paperHeight", 297 / 25.4)));
    }

    private static byte[] decoded(JsonNode answer) {
        return Base64.getDecoder().decode(answer.path("data").asText());
    }

    /** What the page asked for since it was opened, itself included. */
    List<String> requests() {
        return events("Network.requestWillBeSent").map(event -> event.path("request").path("url").asText()).toList();
    }

    /** What the browser complained of since the page was opened. */
    List<String> complaints() {
        return Stream.of("Runtime.exceptionThrown", "Runtime.consoleAPICalled", "Log.entryAdded").flatMap(this::events)
                .map(JsonNode::toString).toList();
    }

    private Stream<JsonNode> events(String method) {
        return events.stream().filter(event -> event.path("method").asText().equals(method))
                .map(event -> event.path("params"));
    }

    private JsonNode call(String method) throws InterruptedException {
        return call(method, JSON.createObjectNode());
    }

    private JsonNode call(String method, ObjectNode parameters) throws InterruptedException {
        int id = ++calls;
        ObjectNode message = JSON.createObjectNode().put("id", id).put("method", method);
        message.set("params", parameters);
        session.ifPresent(open -> message.put("sessionId", open));
        line.sendText(message.toString(), true).join();
        while (true) {
            JsonNode answer = next();
            if (answer.path("id").asInt() != id) {
                events.add(answer);
            } else if (answer.has("error")) {
                throw new AssertionError("the browser refused %s: %s".formatted(method, answer.path("error")));
            } else {
                return answer.path("result");
            }
        }
    }

    private JsonNode next() throws InterruptedException {
        JsonNode message = heard.poll(PATIENCE_SECONDS, TimeUnit.SECONDS);
        if (message == null) {
            throw new AssertionError("the browser said nothing for %d s".formatted(PATIENCE_SECONDS));
        }
        return message;
    }

    @Override
    public void close() {
        line.abort();
        client.close();
        end(process);
    }

    private static void end(Process process) {
        process.descendants().forEach(ProcessHandle::destroyForcibly);
        process.destroyForcibly();
        process.onExit().join();
    }

    /** Puts messages together that come in pieces. */
    private final class Ear implements WebSocket.Listener {

        private final StringBuilder message = new StringBuilder();

        @Override
        public CompletionStage<?> onText(WebSocket socket, CharSequence piece, boolean last) {
            message.append(piece);
            if (last) {
                heard.add(read(message.toString()));
                message.setLength(0);
            }
            socket.request(1);
            return null;
        }

        private static JsonNode read(String text) {
            try {
                return JSON.readTree(text);
            } catch (IOException unreadable) {
                throw new AssertionError("the browser speaks another language", unreadable);
            }
        }
    }
}
