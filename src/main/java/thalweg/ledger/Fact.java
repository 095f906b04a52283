package thalweg.ledger;

import java.util.Optional;
import thalweg.json.Json;
import thalweg.json.JsonText;

/**
 * Something that was observed, noted or worked out. It never changes; a correction is another fact.
 *
 * @param type what kind of fact, a lower-case word
 * @param about the thing it is about; for a withdrawal the fact that is withdrawn
 * @param body what it says; whole numbers only
 * @param corrects the fact whose place it takes, if any
 * @param author who wrote it down, not blank
 * @param at when it was written down, as RFC 3339 in UTC
 */
public record Fact(String type, Uid about, Json.Fields body, Optional<Uid> corrects, String author, String at) {

    public Fact {
        if (type.isBlank() || author.isBlank() || at.isBlank()) {
            throw new IllegalArgumentException("a fact has a type, an author and a time");
        }
    }

    /** The text whose hash names this fact. */
    public String canonical() {
        return JsonText.canonical(Json.fields()
                .put("type", type)
                .put("about", about.text())
                .put("body", body)
                .put("corrects", corrects.map(Uid::text).orElse(""))
                .put("author", author)
                .put("at", at)
                .done());
    }

    /** Its hash. */
    public Hash hash() {
        return Hash.of(canonical());
    }

    /** Its name, cut from the hash. */
    public Uid uid() {
        return Uid.of(hash());
    }
}
