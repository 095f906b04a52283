package thalweg.testing;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.WebSocket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionStage;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import thalweg.json.Json;
import thalweg.json.JsonDocument;
import thalweg.json.JsonText;

/**
 * Chromium without a window, talked to by its developer protocol: what a page asks for, says and shows. One page at a time.
 *
 * @see "Chrome DevTools Protocol; RFC 6455 for the connection"
 */
public final class Browser implements AutoCloseable {

    private static final long LONGEST_SECONDS = 60;
    private static final Pattern LISTENING = Pattern.compile("DevTools listening on (ws://\\S+)");
    private static final Pattern ANSWER = Pattern.compile("^\\{\"id\":(\\d+),");
    private static final Pattern EVENT = Pattern.compile("^\\{\"method\":\"([^\"]+)\"");
    private static final Pattern URL = Pattern.compile("\"url\":\"([^\"]*)\"");

    private final Process process;
    private final WebSocket socket;
    private final BlockingQueue<String> incoming = new LinkedBlockingQueue<>();
    private final List<String> events = new ArrayList<>();
    private String session = "";
    private String target = "";
    private int last;

    /** How a page is looked at. */
    public enum Look {
        DESK(1280, 900, "screen", "light"),
        DESK_DARK(1280, 900, "screen", "dark"),
        PHONE(360, 740, "screen", "light"),
        PHONE_DARK(360, 740, "screen", "dark"),
        PAPER(794, 1123, "print", "light");

        private final int width;
        private final int height;
        private final String media;
        private final String scheme;

        Look(int width, int height, String media, String scheme) {
            this.width = width;
            this.height = height;
            this.media = media;
            this.scheme = scheme;
        }
    }

    private Browser(Process process, URI address) {
        this.process = process;
        this.socket = HttpClient.newHttpClient()
                .newWebSocketBuilder()
                .buildAsync(address, new Listener())
                .join();
    }

    /** Whether there is one on this machine. */
    public static boolean isThere() {
        return List.of(System.getenv().getOrDefault("PATH", "").split(":", -1)).stream()
                .filter(folder -> !folder.isEmpty())
                .anyMatch(folder -> Files.isExecutable(Path.of(folder, "chromium")));
    }

    /**
     * Starts one.
     *
     * @param folder for what it writes
     */
    public static Browser start(Path folder) throws IOException {
        Process process = new ProcessBuilder(
                        "chromium",
                        "--headless",
                        "--no-sandbox",
                        "--disable-gpu",
                        "--disable-background-networking",
                        "--disable-component-update",
                        "--remote-debugging-port=0",
                        "--user-data-dir=" + folder.resolve("profile"),
                        "about:blank")
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .start();
        // It writes on after that line, into a pipe that somebody has to empty: the reader below goes with the process.
        BufferedReader errors =
                new BufferedReader(new InputStreamReader(process.getErrorStream(), StandardCharsets.UTF_8));
        String line = errors.readLine();
        while (line != null) {
            Matcher listening = LISTENING.matcher(line);
            if (listening.find()) {
                Thread empties = new Thread(() -> errors.lines().forEach(said -> {}), "browser-errors");
                empties.setDaemon(true);
                empties.start();
                return new Browser(process, URI.create(listening.group(1)));
            }
            line = errors.readLine();
        }
        process.destroyForcibly();
        throw new IOException("chromium ended before it listened");
    }

    private final class Listener implements WebSocket.Listener {

        private final StringBuilder whole = new StringBuilder();

        @Override
        public CompletionStage<?> onText(WebSocket from, CharSequence data, boolean isLast) {
            whole.append(data);
            if (isLast) {
                incoming.add(whole.toString());
                whole.setLength(0);
            }
            from.request(1);
            return CompletableFuture.completedStage(null);
        }
    }

    /** Opens a page in a tab of its own and waits until it is there. */
    public void open(URI page, Look look) throws InterruptedException {
        session = "";
        if (!target.isEmpty()) {
            send("Target.closeTarget", Json.fields().put("targetId", target).done());
        }
        events.clear();
        target = value(
                send(
                        "Target.createTarget",
                        Json.fields().put("url", "about:blank").done()),
                "targetId");
        session = value(
                send(
                        "Target.attachToTarget",
                        Json.fields()
                                .put("targetId", target)
                                .put("flatten", Json.of(true))
                                .done()),
                "sessionId");
        for (String domain : List.of("Page", "Network", "Runtime", "Log")) {
            send(domain + ".enable", Json.fields().done());
        }
        send(
                "Emulation.setDeviceMetricsOverride",
                Json.fields()
                        .put("width", look.width)
                        .put("height", look.height)
                        .put("deviceScaleFactor", 1)
                        .put("mobile", Json.of(look.width < 500))
                        .done());
        Json scheme = Json.fields()
                .put("name", "prefers-color-scheme")
                .put("value", look.scheme)
                .done();
        send(
                "Emulation.setEmulatedMedia",
                Json.fields()
                        .put("media", look.media)
                        .put("features", new Json.Items(List.of(scheme)))
                        .done());
        send("Page.navigate", Json.fields().put("url", page.toString()).done());
        while (events.stream().noneMatch(event -> isOf(event, "Page.loadEventFired"))) {
            take();
        }
    }

    /** What an expression comes to in the page, as text; a promise is waited for. */
    public String evaluate(String expression) throws InterruptedException {
        String answer = send(
                "Runtime.evaluate",
                Json.fields()
                        .put("expression", expression)
                        .put("awaitPromise", Json.of(true))
                        .put("returnByValue", Json.of(true))
                        .done());
        Json root = JsonDocument.read("the answer", answer).root();
        Optional<Json> value = in(in(in(root, "result"), "result"), "value");
        assertThat(in(in(root, "result"), "exceptionDetails")).as(answer).isEmpty();
        return value.map(known -> known instanceof Json.Text text ? text.value() : JsonText.canonical(known))
                .orElse("");
    }

    private static Optional<Json> in(Object from, String key) {
        Object plain = from instanceof Optional<?> optional ? optional.orElse(null) : from;
        return plain instanceof Json.Fields fields ? fields.field(key) : Optional.empty();
    }

    /** Addresses that the page asked for, itself first. */
    public List<String> requests() {
        return events.stream()
                .filter(event -> isOf(event, "Network.requestWillBeSent"))
                .map(event -> URL.matcher(event.substring(event.indexOf("\"request\":")))
                        .results()
                        .findFirst()
                        .map(found -> found.group(1))
                        .orElse(event))
                .toList();
    }

    /** What the page said or tried: messages, exceptions, dialogs, other windows, what its policy refused. */
    public List<String> complaints() {
        return events.stream()
                .filter(event -> isOf(event, "Runtime.consoleAPICalled")
                        || isOf(event, "Runtime.exceptionThrown")
                        || isOf(event, "Log.entryAdded")
                        || isOf(event, "Page.javascriptDialogOpening")
                        || isOf(event, "Page.windowOpen"))
                .toList();
    }

    private static boolean isOf(String event, String method) {
        Matcher name = EVENT.matcher(event);
        return name.find() && name.group(1).equals(method);
    }

    private static String value(String answer, String key) {
        Matcher found = Pattern.compile("\"" + key + "\":\"([^\"]+)\"").matcher(answer);
        assertThat(found.find()).as(answer).isTrue();
        return found.group(1);
    }

    private String send(String method, Json.Fields parameters) throws InterruptedException {
        last++;
        Json.Fields message = Json.fields()
                .put("id", last)
                .put("method", method)
                .put("params", parameters)
                .put("sessionId", session)
                .done();
        socket.sendText(JsonText.canonical(message), true).join();
        while (true) {
            String answer = take();
            Matcher id = ANSWER.matcher(answer);
            if (id.find() && Integer.parseInt(id.group(1)) == last) {
                assertThat(answer).as(method).doesNotContain("\"error\":{\"code\"");
                return answer;
            }
        }
    }

    private String take() throws InterruptedException {
        String message = incoming.poll(LONGEST_SECONDS, TimeUnit.SECONDS);
        assertThat(message).as("the browser answers").isNotNull();
        if (message.startsWith("{\"method\"")) {
            events.add(message);
            if (isOf(message, "Page.javascriptDialogOpening")) {
                socket.sendText(
                                JsonText.canonical(Json.fields()
                                        .put("id", 1_000_000)
                                        .put("method", "Page.handleJavaScriptDialog")
                                        .put(
                                                "params",
                                                Json.fields()
                                                        .put("accept", Json.of(true))
                                                        .done())
                                        .put("sessionId", session)
                                        .done()),
                                true)
                        .join();
            }
        }
        return message;
    }

    @Override
    public void close() {
        socket.abort();
        process.descendants().forEach(ProcessHandle::destroyForcibly);
        process.destroyForcibly();
        try {
            process.waitFor(LONGEST_SECONDS, TimeUnit.SECONDS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
