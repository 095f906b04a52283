package thalweg.service;

import java.time.DateTimeException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import thalweg.draft.Draft;
import thalweg.draft.DraftEntry;
import thalweg.draft.DraftKey;
import thalweg.draft.DraftKind;
import thalweg.draft.DraftRig;
import thalweg.exchange.json.RigFile;
import thalweg.fault.InputException;
import thalweg.fault.Sentence;
import thalweg.json.FieldWriter;
import thalweg.json.Json;
import thalweg.json.JsonDocument;
import thalweg.ledger.Uid;
import thalweg.units.UnitSystem;

/** A draft as the content of its file. Values stand as they were typed, empty ones too. */
final class DraftFile {

    /** Of this form of the file. */
    private static final long VERSION = 1;

    private DraftFile() {}

    /** What a file says. */
    record Content(Draft draft, Instant at) {}

    /** The draft, the database that it is about, and when it is kept. */
    static Json.Fields write(Draft draft, String database, Instant at) {
        DraftKey key = draft.key();
        FieldWriter file = Json.fields()
                .put("draft", VERSION)
                .put("database", database)
                .put("at", at.toString())
                .put("kind", key.kind())
                .put("new", Json.of(key.isNew()))
                .putKnown("about", key.about().map(Uid::text).map(Json::of))
                .put("title", Json.of(draft.title()))
                .put("where", Json.of(draft.where()))
                .put("units", draft.units())
                .put("focus", Json.of(draft.focus()));
        List<Json> fields = new ArrayList<>();
        draft.fields().forEach((name, entry) -> fields.add(field(name, entry)));
        file.put("fields", new Json.Items(fields));
        draft.rig()
                .ifPresent(rig -> file.put("rig", RigFile.write(rig.rig()))
                        .put(
                                "unstated",
                                Json.texts(rig.unstated().stream().sorted().toList())));
        return file.done();
    }

    private static Json field(String name, DraftEntry entry) {
        return Json.fields()
                .put("key", Json.of(name))
                .put("label", Json.of(entry.label()))
                .put("was", Json.of(entry.was()))
                .put("is", Json.of(entry.is()))
                .put("shown", Json.of(entry.shown()))
                .done();
    }

    /**
     * The draft in a file.
     *
     * @throws InputException when it is none, or one of another version
     */
    static Content read(String name, byte[] bytes) {
        try {
            Json.Fields file = fields(JsonDocument.read(name, bytes).root());
            if (!Json.of(VERSION).equals(file.values().get("draft"))) {
                throw new InputException(Sentence.of("it is no draft of version {0}.", VERSION));
            }
            Optional<Uid> about = file.field("about")
                    .map(DraftFile::text)
                    .map(text -> Uid.parse(text)
                            .orElseThrow(
                                    () -> new InputException(Sentence.of("it names nothing that could be edited."))));
            DraftKind kind = DraftKind.valueOf(word(file, "kind"));
            DraftKey key = new DraftKey(kind, Json.of(true).equals(file.values().get("new")), about);
            Draft draft = new Draft(
                    key,
                    text(file, "title"),
                    text(file, "where"),
                    UnitSystem.valueOf(word(file, "units")),
                    text(file, "focus"),
                    entries(file),
                    rig(file));
            return new Content(draft, Instant.parse(text(file, "at")));
        } catch (IllegalArgumentException | DateTimeException e) {
            throw new InputException(Sentence.of("it is no draft: {0}", String.valueOf(e.getMessage())), e);
        }
    }

    private static Map<String, DraftEntry> entries(Json.Fields file) {
        Map<String, DraftEntry> entries = new LinkedHashMap<>();
        for (Json one : items(file, "fields")) {
            Json.Fields field = fields(one);
            entries.put(
                    text(field, "key"),
                    new DraftEntry(text(field, "label"), text(field, "was"), text(field, "is"), text(field, "shown")));
        }
        return entries;
    }

    private static Optional<DraftRig> rig(Json.Fields file) {
        return file.field("rig")
                .map(DraftFile::fields)
                .map(written -> RigFile.draft(written)
                        .orElseThrow(() -> new InputException(Sentence.of("its rig cannot be read."))))
                .map(rig -> new DraftRig(
                        rig,
                        Set.copyOf(items(file, "unstated").stream()
                                .map(DraftFile::text)
                                .toList())));
    }

    private static String word(Json.Fields file, String key) {
        return text(file, key).toUpperCase(Locale.ROOT);
    }

    private static String text(Json.Fields file, String key) {
        return file.field(key)
                .map(DraftFile::text)
                .orElseThrow(() -> new InputException(Sentence.of("it has no {0}.", key)));
    }

    private static String text(Json value) {
        if (value instanceof Json.Text text) {
            return text.value();
        }
        throw new InputException(Sentence.of("something in it is no text."));
    }

    private static Json.Fields fields(Json value) {
        if (value instanceof Json.Fields fields) {
            return fields;
        }
        throw new InputException(Sentence.of("something in it is no object."));
    }

    private static List<Json> items(Json.Fields file, String key) {
        if (file.field(key).orElse(Json.NOTHING) instanceof Json.Items items) {
            return items.values();
        }
        throw new InputException(Sentence.of("it has no {0}.", key));
    }
}
