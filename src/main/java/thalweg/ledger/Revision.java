package thalweg.ledger;

import java.util.List;
import thalweg.json.Json;
import thalweg.json.JsonText;

/**
 * One state of a thing, as one author wrote it.
 *
 * @param thing whose state it is
 * @param type what kind of thing, a lower-case word
 * @param body the whole state; whole numbers only
 * @param deleted whether the thing was taken out of use with this revision
 * @param parents the revisions it was made from, sorted; empty for the first
 * @param gen 1 for the first, else one more than the highest of its parents
 * @param author who wrote it, not blank
 * @param at when, as RFC 3339 in UTC; for people, it decides nothing
 */
public record Revision(
        Uid thing,
        String type,
        Json.Fields body,
        boolean deleted,
        List<Hash> parents,
        long gen,
        String author,
        String at) {

    public Revision {
        parents = parents.stream().sorted().distinct().toList();
        if (type.isBlank() || author.isBlank() || at.isBlank() || gen < 1 || parents.isEmpty() != (gen == 1)) {
            throw new IllegalArgumentException("a revision has a type, an author, a time and its place in line");
        }
    }

    /** The first state of a new thing. */
    public static Revision first(Uid thing, String type, Json.Fields body, String author, String at) {
        return new Revision(thing, type, body, false, List.of(), 1, author, at);
    }

    /** The state that follows this one. */
    public Revision next(Json.Fields newBody, boolean nowDeleted, String newAuthor, String newAt) {
        return new Revision(thing, type, newBody, nowDeleted, List.of(hash()), gen + 1, newAuthor, newAt);
    }

    /** The text whose hash names this revision. */
    public String canonical() {
        return JsonText.canonical(Json.fields()
                .put("uid", thing.text())
                .put("type", type)
                .put("body", body)
                .putIfTrue("deleted", deleted)
                .put("parents", Json.texts(parents.stream().map(Hash::hex).toList()))
                .put("gen", gen)
                .put("author", author)
                .put("at", at)
                .done());
    }

    /** Its name. */
    public Hash hash() {
        return Hash.of(canonical());
    }
}
