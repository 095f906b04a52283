package thalweg.service;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.function.Supplier;
import java.util.stream.Stream;
import thalweg.amend.Located;
import thalweg.body.ThingBody;
import thalweg.body.ThingType;
import thalweg.exchange.Parcel;
import thalweg.exchange.json.RecordsWriter;
import thalweg.ledger.OrderKey;
import thalweg.ledger.Uid;
import thalweg.logbook.CanyonRecord;
import thalweg.logbook.Entry;
import thalweg.logbook.Finding;
import thalweg.logbook.Inspection;
import thalweg.logbook.PartRecord;
import thalweg.logbook.RiggingNote;
import thalweg.logbook.StationRecord;
import thalweg.testing.RandomRecords;
import thalweg.testing.RandomRecords.Fill;

/** Does one thing after another that a keeper could do, by chance; what cannot be done now is passed over. */
final class RandomDeeds {

    private final Session session;
    private final Random random;
    private final RandomRecords records;

    RandomDeeds(Session session, long seed) {
        this.session = session;
        this.random = new Random(seed);
        this.records = new RandomRecords(seed, Fill.SOMETHING);
    }

    /** Does something that makes a change of its own, if there is anything to do it to. */
    void one() {
        switch (random.nextInt(12)) {
            case 0 -> imported();
            case 1, 2 -> entered();
            case 3 -> renamed();
            case 4, 5 -> moved();
            case 6 -> removed();
            case 7 -> corrected();
            case 8 -> withdrawn();
            case 9 -> note();
            case 10 -> round();
            default -> visit();
        }
    }

    private <T> Optional<T> oneOf(List<T> values) {
        return values.isEmpty() ? Optional.empty() : Optional.of(values.get(random.nextInt(values.size())));
    }

    private Optional<CanyonRecord> canyon() {
        return oneOf(new ListCanyons(session).found(Finding.of("")).rows())
                .flatMap(row -> new FindRecord(session).byId(row.uid()));
    }

    private Optional<StationRecord> station() {
        return canyon().flatMap(canyon -> oneOf(canyon.stations()));
    }

    private Optional<PartRecord> part() {
        return station().flatMap(station -> oneOf(station.parts()));
    }

    private void imported() {
        List<Parcel> parcels = new ArrayList<>();
        for (int i = 1 + random.nextInt(2); i > 0; i--) {
            parcels.add(Parcel.of(random.nextBoolean() ? records.canyon() : canyon().orElseGet(records::canyon)));
        }
        byte[] file = RecordsWriter.write(parcels.stream().distinct().toList()).getBytes(StandardCharsets.UTF_8);
        ImportRecords imports = new ImportRecords(session);
        imports.accept(imports.preview("random", file).plan());
    }

    private void entered() {
        String order = OrderKey.between("", "");
        Uid uid = session.mint();
        Optional<ThingBody> thing = switch (random.nextInt(7)) {
            case 0 -> Optional.of(ThingBody.of(records.things().canyon(uid)));
            case 1 ->
                canyon().map(in ->
                        ThingBody.of(records.things().obstacle(uid, in.canyon().uid(), order)));
            case 2 ->
                canyon().flatMap(in -> oneOf(in.line()))
                        .map(in -> ThingBody.of(
                                records.things().station(uid, in.obstacle().uid(), order)));
            case 3 ->
                station()
                        .map(in -> ThingBody.of(
                                records.things().anchor(uid, in.station().uid(), order)));
            case 4 ->
                canyon().map(in ->
                        ThingBody.of(records.things().trip(uid, in.canyon().uid())));
            case 5 ->
                anything()
                        .filter(about -> about.thing().type().compareTo(ThingType.STATION) <= 0)
                        .map(about -> ThingBody.of(
                                records.things().privateNote(uid, about.thing().uid())));
            default ->
                station()
                        .flatMap(in -> oneOf(in.anchors()))
                        .map(in -> ThingBody.of(
                                records.things().part(uid, in.anchor().uid(), order)));
        };
        thing.ifPresent(new SaveThing(session)::anew);
    }

    private Optional<Located> anything() {
        return canyon().flatMap(canyon -> {
            List<Uid> uids = new ArrayList<>(List.of(canyon.canyon().uid()));
            canyon.line().forEach(place -> uids.add(place.obstacle().uid()));
            canyon.stations().forEach(station -> {
                uids.add(station.station().uid());
                station.anchors().forEach(anchor -> uids.add(anchor.anchor().uid()));
                station.parts().forEach(part -> uids.add(part.part().uid()));
            });
            return oneOf(uids).flatMap(uid -> Located.in(canyon, uid));
        });
    }

    private void renamed() {
        station()
                .ifPresent(record -> new SaveThing(session)
                        .changed(
                                ThingBody.of(record.station()),
                                ThingBody.of(records.things()
                                        .station(
                                                record.station().uid(),
                                                record.station().obstacle(),
                                                record.station().order()))));
    }

    private void moved() {
        MoveThing move = new MoveThing(session);
        Optional<Located> thing = anything();
        Supplier<Optional<Located>> other = () -> anything()
                .filter(one -> thing.isPresent()
                        && !one.thing().uid().equals(thing.get().thing().uid()));
        if (random.nextBoolean()) {
            other.get()
                    .filter(one ->
                            one.thing().type() == thing.orElseThrow().thing().type()
                                    && one.thing().parent().isPresent())
                    .ifPresent(one -> move.beside(thing.orElseThrow(), one, random.nextBoolean()));
        } else {
            other.get()
                    .filter(one -> one.thing()
                            .type()
                            .word()
                            .equals(thing.orElseThrow().thing().type().parentKey()))
                    .ifPresent(one -> move.into(thing.orElseThrow(), one));
        }
    }

    private void removed() {
        anything()
                .ifPresent(at -> new SaveThing(session)
                        .removed(at.thing(), records.things().name()));
    }

    private void visit() {
        station().ifPresent(station -> {
            List<Inspection> inspections = station.parts().stream()
                    .filter(part -> random.nextBoolean())
                    .map(part -> inspection(part.part().uid()))
                    .toList();
            new AddEntries(session).inspections(inspections);
        });
    }

    /** One that may be entered: files hold some that may not. */
    private Inspection inspection(Uid part) {
        return Stream.generate(() -> records.things().inspection(part))
                .filter(one -> one.unsaid().isEmpty())
                .findFirst()
                .orElseThrow();
    }

    private void note() {
        station()
                .ifPresent(station -> new AddEntries(session)
                        .note(records.things().note(station.station().uid())));
    }

    private void round() {
        canyon().ifPresent(canyon -> new AddEntries(session)
                .round(records.things().round(canyon.canyon().uid())));
    }

    private void corrected() {
        AddEntries entries = new AddEntries(session);
        if (random.nextBoolean()) {
            part().ifPresent(part -> oneOf(counting(part.inspections()))
                    .ifPresent(wrong ->
                            entries.correct(wrong.uid(), inspection(part.part().uid()), "wrong")));
        } else {
            station()
                    .ifPresent(station -> oneOf(counting(station.notes())).ifPresent(wrong -> {
                        RiggingNote right =
                                records.things().note(station.station().uid());
                        entries.correct(wrong.uid(), right, "wrong");
                    }));
        }
    }

    private static <T> List<Entry<T>> counting(List<Entry<T>> entries) {
        return entries.stream().filter(Entry::counts).toList();
    }

    private void withdrawn() {
        List<Uid> entries = new ArrayList<>();
        part().ifPresent(part -> counting(part.inspections()).forEach(entry -> entries.add(entry.uid())));
        station().ifPresent(station -> {
            counting(station.notes()).forEach(entry -> entries.add(entry.uid()));
            counting(station.analyses()).forEach(entry -> entries.add(entry.uid()));
        });
        oneOf(entries)
                .ifPresent(uid ->
                        new AddEntries(session).withdraw(uid, records.things().name()));
    }
}
