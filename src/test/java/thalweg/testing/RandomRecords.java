package thalweg.testing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Stream;
import thalweg.body.FactBody;
import thalweg.body.WithdrawalBody;
import thalweg.ledger.Fact;
import thalweg.ledger.OrderKey;
import thalweg.ledger.Uid;
import thalweg.logbook.Amendments;
import thalweg.logbook.AnchorRecord;
import thalweg.logbook.CanyonRecord;
import thalweg.logbook.Correction;
import thalweg.logbook.Entry;
import thalweg.logbook.Inspection;
import thalweg.logbook.InventoryFingerprint;
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
import thalweg.logbook.Withdrawal;
import thalweg.route.PartialDate;

/** Whole canyons from a seed, as they are once they were stored: whole centimetres, lists in their order. */
public final class RandomRecords {

    private final Random random;
    private final RandomThings things;

    /**
     * @param seed the same seed gives the same records
     * @param fill how much is known
     */
    public RandomRecords(long seed, Fill fill) {
        this.random = new Random(seed);
        this.things = new RandomThings(random, fill);
    }

    /** How many of the facts that may be unknown are known. */
    public enum Fill {
        NOTHING,
        SOMETHING,
        EVERYTHING
    }

    /** A generator of single things and facts, on the same seed. */
    public RandomThings things() {
        return things;
    }

    /** A new name. */
    public Uid uid() {
        return Uid.minted(1_700_000_000_000L + random.nextInt(), new UUID(random.nextLong(), random.nextLong()));
    }

    /** A canyon with a line of up to five places and everything below. */
    public CanyonRecord canyon() {
        Uid uid = uid();
        List<LineRecord> line = new ArrayList<>();
        for (LineRecord place : children(5, order -> place(uid, order))) {
            line.add(new LineRecord(line.size() + 1, place.obstacle(), place.stations()));
        }
        return new CanyonRecord(things.canyon(uid), line, entries(2, () -> things.round(uid), Round::on, FactBody::of));
    }

    /** What a database might keep to itself around a canyon. */
    public LocalRecord local(CanyonRecord canyon) {
        Uid uid = canyon.canyon().uid();
        List<Trip> trips = List.of(things.trip(uid(), uid), things.trip(uid(), uid));
        List<PrivateNote> notes = Stream.concat(
                        Stream.of(uid),
                        canyon.stations().stream()
                                .map(station -> station.station().uid()))
                .map(about -> things.privateNote(uid(), about))
                .toList();
        return new LocalRecord(trips, entries(2, () -> things.sheetGiven(uid), SheetGiven::on, FactBody::of), notes);
    }

    private LineRecord place(Uid canyon, String order) {
        Uid uid = uid();
        return new LineRecord(1, things.obstacle(uid, canyon, order), children(2, key -> station(uid, key)));
    }

    private StationRecord station(Uid obstacle, String order) {
        Uid uid = uid();
        List<AnchorRecord> anchors = children(2, key -> anchor(uid, key));
        InventoryFingerprint inventory = InventoryFingerprint.of(
                anchors.stream().flatMap(anchor -> anchor.parts().stream()).toList());
        return new StationRecord(
                things.station(uid, obstacle, order),
                anchors,
                entries(2, () -> things.note(uid), RiggingNote::on, FactBody::of),
                entries(2, () -> things.analysis(uid, inventory), RigAnalysis::on, FactBody::of));
    }

    private AnchorRecord anchor(Uid station, String order) {
        Uid uid = uid();
        return new AnchorRecord(things.anchor(uid, station, order), children(4, key -> part(uid, key)));
    }

    private PartRecord part(Uid anchor, String order) {
        Uid uid = uid();
        return PartRecord.of(
                things.part(uid, anchor, order),
                entries(4, () -> things.inspection(uid), Inspection::on, FactBody::of));
    }

    private <T> List<T> children(int most, Function<String, T> maker) {
        List<T> children = new ArrayList<>();
        String order = "";
        for (int i = random.nextInt(most + 1); i > 0; i--) {
            order = OrderKey.between(order, "");
            children.add(maker.apply(order));
        }
        return children;
    }

    private interface Maker<T> {
        T make();
    }

    private <T> List<Entry<T>> entries(
            int most, Maker<T> maker, Function<T, PartialDate> date, Function<T, FactBody> toFact) {
        List<Entry<T>> entries = new ArrayList<>();
        for (int i = random.nextInt(most + 1); i > 0; i--) {
            T content = maker.make();
            Optional<Correction> correction = entries.isEmpty() || random.nextInt(3) > 0
                    ? Optional.empty()
                    : Optional.of(new Correction(
                            entries.get(random.nextInt(entries.size())).uid(), things.name()));
            Fact fact = toFact.apply(content).fact(correction, author(), at());
            entries.add(new Entry<>(
                    fact.uid(), content, fact.author(), fact.at(), correction, withdrawals(fact.uid(), 4), false));
        }
        entries.sort(
                Comparator.comparing((Entry<T> one) -> date.apply(one.content()).latest())
                        .reversed()
                        .thenComparing(one -> one.uid()));
        return Amendments.settle(entries);
    }

    private List<Withdrawal> withdrawals(Uid of, int oneIn) {
        if (random.nextInt(oneIn) > 0) {
            return List.of();
        }
        Fact fact = WithdrawalBody.of(of, things.name(), author(), at());
        return List.of(WithdrawalBody.withdrawal(fact, withdrawals(fact.uid(), 2)));
    }

    private String author() {
        return things.name();
    }

    private String at() {
        return "20" + (10 + random.nextInt(16)) + "-0" + (1 + random.nextInt(9)) + "-14T08:30:0" + random.nextInt(10)
                + "Z";
    }
}
