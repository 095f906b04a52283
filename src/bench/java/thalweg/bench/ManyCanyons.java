package thalweg.bench;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import thalweg.json.Json;
import thalweg.json.JsonDocument;
import thalweg.json.JsonText;
import thalweg.service.ImportRecords;
import thalweg.service.Session;

/**
 * A database with the sample data many times over, each time under other ids. The one canyon with corrections is left
 * out: a correction names what it corrects by a hash over everything in it.
 */
final class ManyCanyons {

    private static final Pattern ID =
            Pattern.compile("\"([0-9a-f]{8})(-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{12}\")");

    private ManyCanyons() {}

    /**
     * Fills a new database.
     *
     * @param times how often the canyons of the sample are taken in, at least 1
     */
    static void fill(Path file, int times, Clock clock) throws IOException {
        String sample = sample();
        try (Session session = Session.creating(file, clock, "bench")) {
            ImportRecords records = new ImportRecords(session);
            for (int i = 0; i < times; i++) {
                ImportRecords.Preview preview =
                        records.preview("copy " + i, withOtherIds(sample, i).getBytes(StandardCharsets.UTF_8));
                if (!preview.findings().isEmpty()) {
                    throw new AssertionError("a copy of the sample is sound, but: " + preview.findings());
                }
                records.accept(preview.plan());
            }
        }
    }

    /** The first part of an id is a time, and any will do. */
    private static String withOtherIds(String sample, int number) {
        return ID.matcher(sample).replaceAll(found -> {
            long part = Long.parseLong(found.group(1), 16) + number;
            return Matcher.quoteReplacement("\"" + String.format(Locale.ROOT, "%08x", part) + found.group(2));
        });
    }

    private static String sample() throws IOException {
        try (InputStream in = ManyCanyons.class.getResourceAsStream("/thalweg/sample-data/records.json")) {
            if (in == null) {
                throw new AssertionError("the sample data is part of the program");
            }
            Json.Fields file = (Json.Fields)
                    JsonDocument.read("the sample", in.readAllBytes()).root();
            Json.Items canyons = (Json.Items) file.field("canyons").orElseThrow();
            List<Json> plain = canyons.values().stream()
                    .filter(canyon -> !JsonText.line(canyon).contains("\"corrects\""))
                    .toList();
            return JsonText.line(file.with("canyons", new Json.Items(plain)));
        }
    }
}
