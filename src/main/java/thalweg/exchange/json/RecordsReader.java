package thalweg.exchange.json;

import java.time.Instant;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import thalweg.body.AnalysisBody;
import thalweg.body.AnchorBody;
import thalweg.body.CanyonBody;
import thalweg.body.FactBody;
import thalweg.body.InspectionBody;
import thalweg.body.Limits;
import thalweg.body.NoteBody;
import thalweg.body.ObstacleBody;
import thalweg.body.PartBody;
import thalweg.body.PrivateNoteBody;
import thalweg.body.RoundBody;
import thalweg.body.SheetGivenBody;
import thalweg.body.StationBody;
import thalweg.body.TripBody;
import thalweg.body.WithdrawalBody;
import thalweg.exchange.Parcel;
import thalweg.fault.Sentence;
import thalweg.json.FieldReader;
import thalweg.json.Findings;
import thalweg.json.JsonDocument;
import thalweg.ledger.Fact;
import thalweg.ledger.OrderKey;
import thalweg.ledger.Uid;
import thalweg.logbook.Amendments;
import thalweg.logbook.AnchorRecord;
import thalweg.logbook.CanyonRecord;
import thalweg.logbook.Correction;
import thalweg.logbook.Entry;
import thalweg.logbook.Inspection;
import thalweg.logbook.LineRecord;
import thalweg.logbook.LocalRecord;
import thalweg.logbook.PartRecord;
import thalweg.logbook.PrivateNote;
import thalweg.logbook.RigAnalysis;
import thalweg.logbook.RiggingNote;
import thalweg.logbook.Round;
import thalweg.logbook.SheetGiven;
import thalweg.logbook.StationRecord;
import thalweg.logbook.Trip;
import thalweg.route.Canyon;
import thalweg.route.PartialDate;

/** Reads a file of records; whatever breaks a rule is a finding with its line, and nothing is taken from the file then. */
public final class RecordsReader {

    static final String FORMAT = "thalweg records";
    static final long VERSION = 2;

    /** Where lists belong, for whom puts one a level too high or too low. */
    private static final Map<String, String> HOMES = Map.of(
            "line", "a canyon",
            "rounds", "a canyon",
            "trips", "a canyon",
            "private_notes", "a canyon",
            "sheets_given", "a canyon",
            "stations", "a place on the line",
            "anchors", "a station",
            "rigging_notes", "a station",
            "parts", "an anchor",
            "inspections", "a part");

    /** RFC 3339 in UTC. */
    private static final Pattern TIME = Pattern.compile("\\d{4}-\\d{2}-\\d{2}T\\d{2}:\\d{2}:\\d{2}(?:\\.\\d{1,9})?Z");

    private final Supplier<Uid> mint;
    private final String author;
    private final String at;
    private final LocalDate today;
    private final Set<Uid> met = new HashSet<>();
    private final Set<Uid> notable = new HashSet<>();

    /**
     * @param mint gives a new id to a thing that has none
     * @param author stands in where an entry does not say who wrote it down
     * @param at stands in where an entry does not say when it was written down
     * @param today no inspection can be later
     */
    public RecordsReader(Supplier<Uid> mint, String author, String at, LocalDate today) {
        this.mint = mint;
        this.author = author;
        this.at = at;
        this.today = today;
    }

    /**
     * The canyons in the file, or nothing where there are findings.
     *
     * @param name of the file, for messages
     * @throws thalweg.json.JsonException when it is not JSON at all
     */
    public List<Parcel> read(String name, byte[] bytes, Findings findings) {
        FieldReader in = JsonDocument.read(name, bytes).reader(findings);
        if (!findings.none()) {
            return List.of();
        }
        String format = in.textOrEmpty("format", Limits.NAME);
        if (!format.equals(FORMAT)) {
            in.refuse("format", Sentence.of("should be \"{0}\"; this is no file of records.", FORMAT));
            return List.of();
        }
        if (in.whole("version", 1, Long.MAX_VALUE).orElse(Long.MAX_VALUE) > VERSION) {
            in.refuse(
                    "version",
                    Sentence.of("should be 1 or {0}; a file of a newer version needs a newer Thalweg.", VERSION));
            return List.of();
        }
        List<Parcel> canyons = new ArrayList<>();
        in.objects("canyons").forEach(canyon -> canyon(canyon).ifPresent(canyons::add));
        in.refuseUnasked(HOMES);
        if (findings.none() && canyons.isEmpty()) {
            in.refuse("canyons", Sentence.of("is missing or empty; there is nothing to import."));
        }
        return findings.none() ? canyons : List.of();
    }

    private Optional<Parcel> canyon(FieldReader in) {
        Uid uid = notable(in);
        Optional<Canyon> canyon = CanyonBody.read(uid, in);
        List<LineRecord> line = children(
                in,
                "line",
                (order, child) -> place(uid, order, child),
                r -> r.obstacle().order(),
                r -> r.obstacle().uid());
        List<Entry<Round>> rounds = entries(in, "rounds", child -> RoundBody.read(uid, child), Round::on, FactBody::of);
        LocalRecord local = local(uid, in);
        in.refuseUnasked(HOMES);
        List<LineRecord> numbered = new ArrayList<>();
        line.forEach(place -> numbered.add(new LineRecord(numbered.size() + 1, place.obstacle(), place.stations())));
        return canyon.map(known -> new Parcel(new CanyonRecord(known, numbered, rounds), local));
    }

    private LocalRecord local(Uid canyon, FieldReader in) {
        List<Trip> trips = new ArrayList<>();
        for (FieldReader child : in.objects("trips")) {
            Optional<Trip> trip = TripBody.read(uid(child), canyon, child);
            child.refuseUnasked();
            trip.flatMap(known -> known.on().flatMap(day -> Trip.doubt(known.state(), day, today)))
                    .ifPresent(why -> child.refuse("on", Sentence.of("is a day that {0}.", why)));
            trip.ifPresent(trips::add);
        }
        List<PrivateNote> notes = new ArrayList<>();
        for (FieldReader child : in.objects("private_notes")) {
            Uid uid = uid(child);
            Optional<Uid> about = Uid.parse(child.text(PrivateNoteBody.PARENT, 36));
            if (child.sound() && about.filter(notable::contains).isEmpty()) {
                child.refuse(
                        PrivateNoteBody.PARENT,
                        Sentence.of("names no canyon, place or station that stands in the file before it."));
            }
            about.flatMap(known -> PrivateNoteBody.read(uid, known, child)).ifPresent(notes::add);
            child.refuseUnasked();
        }
        List<Entry<SheetGiven>> sheets =
                entries(in, "sheets_given", child -> SheetGivenBody.read(canyon, child), SheetGiven::on, FactBody::of);
        return new LocalRecord(trips, sheets, notes);
    }

    private Optional<LineRecord> place(Uid canyon, String order, FieldReader in) {
        Uid uid = notable(in);
        var obstacle = ObstacleBody.read(uid, canyon, order, in);
        List<StationRecord> stations = children(
                in,
                "stations",
                (place, child) -> station(uid, place, child),
                r -> r.station().order(),
                r -> r.station().uid());
        in.refuseUnasked(HOMES);
        return obstacle.map(known -> new LineRecord(1, known, stations));
    }

    private Optional<StationRecord> station(Uid obstacle, String order, FieldReader in) {
        Uid uid = notable(in);
        var station = StationBody.read(uid, obstacle, order, in);
        List<AnchorRecord> anchors = children(
                in,
                "anchors",
                (place, child) -> anchor(uid, place, child),
                r -> r.anchor().order(),
                r -> r.anchor().uid());
        List<Entry<RiggingNote>> notes =
                entries(in, "rigging_notes", child -> NoteBody.read(uid, child), RiggingNote::on, FactBody::of);
        List<Entry<RigAnalysis>> analyses =
                entries(in, "analyses", child -> AnalysisBody.read(uid, child), RigAnalysis::on, FactBody::of);
        in.refuseUnasked(HOMES);
        return station.map(known -> new StationRecord(known, anchors, notes, analyses));
    }

    private Optional<AnchorRecord> anchor(Uid station, String order, FieldReader in) {
        Uid uid = uid(in);
        var anchor = AnchorBody.read(uid, station, order, in);
        List<PartRecord> parts = children(
                in,
                "parts",
                (place, child) -> part(uid, place, child),
                r -> r.part().order(),
                r -> r.part().uid());
        in.refuseUnasked(HOMES);
        return anchor.map(known -> new AnchorRecord(known, parts));
    }

    private Optional<PartRecord> part(Uid anchor, String order, FieldReader in) {
        Uid uid = uid(in);
        var part = PartBody.read(uid, anchor, order, in);
        List<Entry<Inspection>> inspections =
                entries(in, "inspections", child -> InspectionBody.read(uid, child), Inspection::on, FactBody::of);
        in.refuseUnasked(HOMES);
        part.flatMap(known -> known.placed())
                .filter(date -> !date.hasBegunBy(today))
                .ifPresent(date -> in.refuse("placed", Sentence.of("is {0}, which has not come yet.", date.print())));
        return part.map(known -> PartRecord.of(known, inspections));
    }

    /**
     * The children of a list in the order of their places in line. One that states no place has its own after all that
     * stand before it in the list.
     */
    private static <T> List<T> children(
            FieldReader in,
            String key,
            BiFunction<String, FieldReader, Optional<T>> reader,
            Function<T, String> order,
            Function<T, Uid> uid) {
        List<T> children = new ArrayList<>();
        String last = "";
        for (FieldReader child : in.objects(key)) {
            String next = OrderKey.between(last, "");
            if (!OrderKey.isKey(next)) {
                in.refuse(key, Sentence.of("has no room for all its entries; leave out their orders, or give fewer."));
                break;
            }
            Optional<T> read = reader.apply(next, child);
            if (read.isPresent()) {
                String place = order.apply(read.get());
                last = place.compareTo(last) > 0 ? place : last;
                children.add(read.get());
            }
        }
        children.sort(Comparator.comparing(order).thenComparing(uid));
        return children;
    }

    private <T> List<Entry<T>> entries(
            FieldReader in,
            String key,
            Function<FieldReader, Optional<T>> reader,
            Function<T, PartialDate> date,
            Function<T, FactBody> toFact) {
        List<Entry<T>> entries = new ArrayList<>();
        for (FieldReader child : in.objects(key)) {
            Optional<String> uid = child.optionalText("uid", 36);
            WithdrawalList.Signed signed = signed(child);
            Optional<Correction> correction = correction(child);
            List<FieldReader> withdrawn = child.objects(WithdrawalList.KEY);
            Optional<T> content = reader.apply(child);
            child.refuseUnasked();
            if (content.isEmpty()) {
                continue;
            }
            if (!date.apply(content.get()).hasBegunBy(today)) {
                child.refuse(
                        "on",
                        Sentence.of(
                                "is {0}, which has not come yet.",
                                date.apply(content.get()).print()));
            }
            Fact fact = toFact.apply(content.get()).fact(correction, signed.author(), signed.at());
            if (uid.filter(stated -> !Uid.parse(stated).equals(Optional.of(fact.uid())))
                    .isPresent()) {
                child.refuse(
                        "uid", Sentence.of("does not match what the entry says: it was altered after it was written."));
            }
            entries.add(new Entry<>(
                    fact.uid(),
                    content.get(),
                    signed.author(),
                    signed.at(),
                    correction,
                    WithdrawalList.read(fact.uid(), withdrawn, this::signed),
                    false));
        }
        refuseUnknownCorrections(in, key, entries);
        entries.sort(Comparator.comparing(
                        (Entry<T> entry) -> date.apply(entry.content()).latest())
                .reversed()
                .thenComparing(entry -> entry.uid()));
        return Amendments.settle(entries);
    }

    private static Optional<Correction> correction(FieldReader in) {
        Optional<String> of = in.optionalText("corrects", 36);
        Optional<String> reason = in.optionalText(WithdrawalBody.REASON, Limits.REASON);
        Optional<Uid> uid = of.flatMap(Uid::parse);
        if (of.isPresent() && uid.isEmpty()) {
            in.refuse("corrects", Sentence.of("is no id; it should be the uid of the entry whose place this takes."));
        }
        if (of.isPresent() != reason.isPresent()) {
            in.refuse(WithdrawalBody.REASON, Sentence.of("and corrects belong together: a correction has a reason."));
        }
        return in.sound() ? uid.flatMap(known -> reason.map(why -> new Correction(known, why))) : Optional.empty();
    }

    private static <T> void refuseUnknownCorrections(FieldReader in, String key, List<Entry<T>> entries) {
        Set<Uid> known = entries.stream().map(Entry::uid).collect(Collectors.toSet());
        entries.stream()
                .flatMap(entry -> entry.correction().stream())
                .filter(correction -> !known.contains(correction.of()))
                .forEach(correction -> in.refuse(
                        key,
                        Sentence.of(
                                "has a correction of {0}, which is not in the list, or was altered after it was written.",
                                correction.of().text())));
    }

    private WithdrawalList.Signed signed(FieldReader in) {
        return new WithdrawalList.Signed(in.optionalText("author", Limits.NAME).orElse(author), time(in).orElse(at));
    }

    private static Optional<String> time(FieldReader in) {
        Optional<String> text = in.optionalText("at", 40);
        if (text.filter(at -> !isTime(at)).isPresent()) {
            in.refuse(
                    "at",
                    Sentence.of("is \"{0}\"; it should be a time in UTC such as 2026-11-25T10:00:00Z.", text.get()));
            return Optional.empty();
        }
        return text;
    }

    private static boolean isTime(String text) {
        try {
            return TIME.matcher(text).matches() && Instant.parse(text).isAfter(Instant.EPOCH);
        } catch (DateTimeParseException e) {
            return false;
        }
    }

    /** The id of something about which there may be a private note. */
    private Uid notable(FieldReader in) {
        Uid uid = uid(in);
        notable.add(uid);
        return uid;
    }

    private Uid uid(FieldReader in) {
        Optional<String> text = in.optionalText("uid", 36);
        Optional<Uid> uid = text.flatMap(Uid::parse);
        if (text.isPresent() && uid.isEmpty()) {
            in.refuse("uid", Sentence.of("is no id; it should be 32 hexadecimal digits in five groups."));
        }
        Uid known = uid.orElseGet(mint);
        if (!met.add(known)) {
            in.refuse("uid", Sentence.of("stands twice in the file; every thing has its own."));
        }
        return known;
    }
}
