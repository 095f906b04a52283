package thalweg.exchange.table;

import java.time.Instant;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import thalweg.body.FactBody;
import thalweg.body.InspectionBody;
import thalweg.body.Limits;
import thalweg.body.WithdrawalBody;
import thalweg.fault.Sentence;
import thalweg.json.FieldReader;
import thalweg.json.FieldWriter;
import thalweg.json.Findings;
import thalweg.json.Json;
import thalweg.ledger.Fact;
import thalweg.ledger.Uid;
import thalweg.logbook.Correction;
import thalweg.logbook.Entry;
import thalweg.logbook.Inspection;
import thalweg.logbook.Withdrawal;
import thalweg.text.Clean;

/** Makes an inspection of a row. It is the entry that was exported where the row says all of it, else a new one. */
final class RowEntry {

    private static final Set<Field> BODY = EnumSet.of(
            Field.ON,
            Field.BY,
            Field.FOUND,
            Field.LEFT,
            Field.NOT_SEEN,
            Field.WATER,
            Field.WORK,
            Field.NOTE,
            Field.ROUND_UID);

    private final String author;
    private final String at;
    private final LocalDate today;

    /**
     * @param author stands in where a row does not say who wrote it down
     * @param at stands in where a row does not say when it was written down
     * @param today no inspection can be later
     */
    RowEntry(String author, String at, LocalDate today) {
        this.author = author;
        this.at = at;
        this.today = today;
    }

    /** The entry; empty where the row cannot be one, and then it says why. */
    Optional<Entry<Inspection>> of(Node part, RowCells row) {
        Optional<Inspection> inspection = inspection(part, row);
        Optional<Correction> correction = correction(row);
        String by = signed(row, Field.WRITTEN_BY);
        Optional<String> when = time(row, Field.WRITTEN_AT);
        if (inspection.isEmpty() || !row.wrong().isEmpty()) {
            return Optional.empty();
        }
        Fact fact = FactBody.of(inspection.get()).fact(correction, by, when.orElse(at));
        Optional<Uid> stated = row.uid(Field.ENTRY_UID);
        if (stated.isPresent() && !stated.get().equals(fact.uid())) {
            row.refuse(
                    Field.ENTRY_UID,
                    Sentence.of(
                            "does not match what the row says: an inspection is never edited. Correct it in the"
                                    + " program, or empty the cells entry_uid, written_by and written_at to enter another look."));
        }
        List<Withdrawal> withdrawals = withdrawal(row, fact.uid());
        return row.wrong().isEmpty()
                ? Optional.of(
                        new Entry<>(fact.uid(), inspection.get(), by, when.orElse(at), correction, withdrawals, false))
                : Optional.empty();
    }

    private Optional<Inspection> inspection(Node part, RowCells row) {
        Set<Field> fields = EnumSet.copyOf(BODY);
        boolean notSeen = row.text(Field.FOUND)
                .filter(text -> row.cells().isNotSeen(text))
                .isPresent();
        if (notSeen) {
            fields.remove(Field.FOUND);
        }
        FieldWriter body = Json.fields();
        for (Map.Entry<Field, Json> value : row.values(fields).entrySet()) {
            body.put(value.getKey().key(), value.getValue());
        }
        body.putIfTrue(Field.NOT_SEEN.key(), notSeen);
        photos(row).ifPresent(photos -> body.put("photos", photos));
        if (!row.wrong().isEmpty()) {
            return Optional.empty();
        }
        Findings findings = new Findings();
        FieldReader in = FieldReader.of(body.done(), findings);
        Optional<Inspection> read = InspectionBody.read(part.uid(), in);
        findings.all().forEach(finding -> row.refuse(finding.saying()));
        read.filter(inspection -> !inspection.on().hasBegunBy(today))
                .ifPresent(inspection -> row.refuse(
                        Field.ON,
                        Sentence.of(
                                "is {0}, which has not come yet.",
                                inspection.on().print())));
        return read;
    }

    /** Names, hashes and captions stand in three cells, those of a photo on the same line of each. */
    private static Optional<Json> photos(RowCells row) {
        if (!row.has(Field.PHOTOS)) {
            return Optional.empty();
        }
        List<String> files = lines(row, Field.PHOTOS);
        List<String> hashes = lines(row, Field.PHOTO_HASHES);
        List<String> captions = lines(row, Field.PHOTO_CAPTIONS);
        if (files.size() != hashes.size()) {
            row.refuse(
                    Field.PHOTOS,
                    Sentence.of(
                            "are {0}, and {1} hashes stand beside them; a photo is known by its hash, so that each needs"
                                    + " its own on the same line.",
                            files.size(), hashes.size()));
            return Optional.empty();
        }
        List<Json> photos = new ArrayList<>();
        for (int i = 0; i < files.size(); i++) {
            photos.add(Json.fields()
                    .put("file", files.get(i))
                    .put("sha256", hashes.get(i))
                    .put("caption", i < captions.size() ? captions.get(i) : "")
                    .done());
        }
        return Optional.of(new Json.Items(photos));
    }

    private static List<String> lines(RowCells row, Field field) {
        return row.exact(field).map(text -> List.of(text.split("\\r?\\n", -1))).orElse(List.of());
    }

    private static Optional<Correction> correction(RowCells row) {
        Optional<Uid> of = row.uid(Field.CORRECTS_UID);
        Optional<String> reason = reason(row, Field.CORRECTION_REASON);
        if (of.isPresent() != reason.isPresent() && row.wrong().isEmpty()) {
            row.refuse(Sentence.of("corrects_uid and correction_reason belong together: a correction has a reason."));
        }
        return of.flatMap(uid -> reason.map(why -> new Correction(uid, why)));
    }

    private static Optional<String> reason(RowCells row, Field field) {
        Optional<String> reason =
                row.text(field).map(text -> Clean.line(text, Integer.MAX_VALUE)).filter(text -> !text.isEmpty());
        if (reason.filter(text -> text.codePointCount(0, text.length()) > Limits.REASON)
                .isPresent()) {
            row.refuse(field, Sentence.of("is longer than {0} characters.", Limits.REASON));
        }
        return reason;
    }

    private List<Withdrawal> withdrawal(RowCells row, Uid entry) {
        Optional<String> reason = reason(row, Field.WITHDRAWN_BECAUSE);
        if (reason.isEmpty()) {
            return List.of();
        }
        String by = signed(row, Field.WITHDRAWN_BY);
        String when = time(row, Field.WITHDRAWN_AT).orElse(at);
        Fact fact = WithdrawalBody.of(entry, reason.get(), by, when);
        return List.of(new Withdrawal(fact.uid(), reason.get(), by, when, List.of()));
    }

    private String signed(RowCells row, Field field) {
        return row.text(field)
                .map(text -> Clean.line(text, Limits.NAME))
                .filter(text -> !text.isEmpty())
                .orElse(author);
    }

    private static Optional<String> time(RowCells row, Field field) {
        Optional<String> text = row.text(field);
        if (text.isPresent() && !isTime(text.get())) {
            row.refuse(
                    field,
                    Sentence.of("is \"{0}\"; it should be a time in UTC such as 2026-11-25T10:00:00Z.", text.get()));
        }
        return text;
    }

    private static boolean isTime(String text) {
        try {
            return text.endsWith("Z") && Instant.parse(text).isAfter(Instant.EPOCH);
        } catch (DateTimeParseException e) {
            return false;
        }
    }
}
