package thalweg.ledger;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import thalweg.json.FieldReader;
import thalweg.json.Findings;
import thalweg.json.Json;
import thalweg.json.JsonDocument;
import thalweg.json.JsonException;
import thalweg.json.JsonText;

/** Reads revisions and facts back from their canonical texts. */
public final class LedgerText {

    private static final int LONGEST_NAME = 300;
    private static final int LONGEST_TIME = 40;

    private LedgerText() {}

    /** The revision; empty where the text is none, or not to the letter the one that is hashed. */
    public static Optional<Revision> revision(String canonical) {
        return read(canonical, LedgerText::revision)
                .filter(revision -> revision.canonical().equals(canonical));
    }

    private static Optional<Revision> revision(FieldReader in) {
        Optional<Uid> thing = Uid.parse(in.text("uid", 36));
        Optional<Json.Fields> body = in.raw("body");
        String type = in.text("type", LONGEST_NAME);
        boolean deleted = in.flag("deleted").orElse(false);
        List<Hash> parents = in.texts("parents", 64).stream()
                .map(Hash::parse)
                .flatMap(Optional::stream)
                .toList();
        long gen = in.whole("gen", 1, Long.MAX_VALUE).orElse(0);
        String author = in.text("author", LONGEST_NAME);
        String at = in.text("at", LONGEST_TIME);
        boolean inLine = gen > 0 && parents.isEmpty() == (gen == 1);
        return in.sound() && thing.isPresent() && body.isPresent() && inLine
                ? Optional.of(new Revision(thing.get(), type, body.get(), deleted, parents, gen, author, at))
                : Optional.empty();
    }

    /** The fact; empty where the text is none, or not to the letter the one that is hashed. */
    public static Optional<Fact> fact(String canonical) {
        return read(canonical, LedgerText::fact).filter(fact -> fact.canonical().equals(canonical));
    }

    private static Optional<Fact> fact(FieldReader in) {
        Optional<Uid> about = Uid.parse(in.text("about", 36));
        Optional<Json.Fields> body = in.raw("body");
        String type = in.text("type", LONGEST_NAME);
        Optional<Uid> corrects = in.optionalText("corrects", 36).flatMap(Uid::parse);
        String author = in.text("author", LONGEST_NAME);
        String at = in.text("at", LONGEST_TIME);
        return in.sound() && about.isPresent() && body.isPresent()
                ? Optional.of(new Fact(type, about.get(), body.get(), corrects, author, at))
                : Optional.empty();
    }

    /** A body with numbers that are not whole has no canonical text, so whoever asks for it must not get that far. */
    private static <T> Optional<T> read(String canonical, Function<FieldReader, Optional<T>> reader) {
        JsonDocument document;
        try {
            document = JsonDocument.read("The entry", canonical);
        } catch (JsonException e) {
            return Optional.empty();
        }
        return JsonText.isCanonical(document.root()) ? reader.apply(document.reader(new Findings())) : Optional.empty();
    }
}
