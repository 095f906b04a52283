package thalweg.service;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import thalweg.amend.Deed;
import thalweg.amend.Since;
import thalweg.exchange.json.RecordsHash;
import thalweg.ledger.Hash;
import thalweg.ledger.LedgerPlace;
import thalweg.ledger.Uid;
import thalweg.logbook.CanyonRecord;
import thalweg.logbook.Finding;

/** What must be true of the records as they were and of what changed since, over random histories. */
class SinceLawsTest {

    private static final int STEPS = 40;

    private final Session session = Session.inMemory(new TickingClock(), "ada");

    @AfterEach
    void close() {
        session.close();
    }

    private record Moment(LedgerPlace place, Map<Uid, CanyonRecord> canyons) {}

    private Moment now() {
        Map<Uid, CanyonRecord> canyons = new HashMap<>();
        FindRecord find = new FindRecord(session);
        new ListCanyons(session)
                .found(Finding.of(""))
                .rows()
                .forEach(row -> canyons.put(row.uid(), find.byId(row.uid()).orElseThrow()));
        return new Moment(session.earlier().place(), canyons);
    }

    private List<Moment> history(long seed) {
        RandomDeeds deeds = new RandomDeeds(session, seed);
        List<Moment> moments = new ArrayList<>();
        for (int step = 0; step < STEPS; step++) {
            deeds.one();
            moments.add(now());
        }
        return moments;
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6})
    void theRecordsAreHadAgainAsTheyWereAtAnyTime(long seed) {
        List<Moment> moments = history(seed);
        Set<Uid> all = moments.stream()
                .flatMap(moment -> moment.canyons().keySet().stream())
                .collect(Collectors.toSet());

        assertThat(all).isNotEmpty();
        for (Moment moment : moments) {
            for (Uid canyon : all) {
                Optional<Hash> then =
                        session.earlier().canyon(canyon, moment.place()).map(RecordsHash::of);
                assertThat(then)
                        .isEqualTo(Optional.ofNullable(moment.canyons().get(canyon))
                                .map(RecordsHash::of));
            }
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {11, 12, 13, 14, 15, 16})
    void whatChangedIsToldBothWaysAndNothingElse(long seed) {
        List<Moment> moments = history(seed);
        Moment last = moments.get(moments.size() - 1);
        int told = 0;

        for (Moment moment : moments) {
            for (Map.Entry<Uid, CanyonRecord> one : moment.canyons().entrySet()) {
                CanyonRecord before = one.getValue();
                assertThat(Since.between(before, before).isEmpty()).isTrue();
                CanyonRecord after = last.canyons().get(one.getKey());
                if (after == null) {
                    continue;
                }
                Since there = Since.between(before, after);
                Since back = Since.between(after, before);
                told += there.deeds().size();

                assertThat(uids(there, Deed.Kind.ENTERED)).isEqualTo(uids(back, Deed.Kind.TAKEN_OUT));
                assertThat(uids(there, Deed.Kind.TAKEN_OUT)).isEqualTo(uids(back, Deed.Kind.ENTERED));
                for (Deed.Kind kind : List.of(Deed.Kind.CHANGED, Deed.Kind.MOVED, Deed.Kind.REORDERED)) {
                    assertThat(uids(there, kind)).isEqualTo(uids(back, kind));
                }
                assertThat(turned(there)).isEqualTo(straight(back));
                if (there.isEmpty()) {
                    assertThat(told(after)).isEqualTo(told(before));
                }
            }
        }
        assertThat(told).isGreaterThan(20);
    }

    private static Set<Uid> uids(Since since, Deed.Kind kind) {
        return since.deeds().stream()
                .filter(deed -> deed.kind() == kind)
                .map(Deed::uid)
                .collect(Collectors.toSet());
    }

    private static Set<List<Object>> straight(Since since) {
        return since.conditions().stream()
                .map(one -> List.<Object>of(one.part().uid(), one.before(), one.after()))
                .collect(Collectors.toCollection(HashSet::new));
    }

    private static Set<List<Object>> turned(Since since) {
        return since.conditions().stream()
                .map(one -> List.<Object>of(one.part().uid(), one.after(), one.before()))
                .collect(Collectors.toCollection(HashSet::new));
    }

    /** Everything a sheet may say of it but the keys that only order lines. */
    private static List<Object> told(CanyonRecord canyon) {
        List<Object> told = new ArrayList<>(List.of(canyon.canyon()));
        canyon.line().forEach(place -> {
            told.add(place.obstacle().uid());
            told.add(place.obstacle().note());
            place.stations().forEach(station -> {
                told.add(station.station().uid());
                told.add(station.station().name());
                station.parts().forEach(part -> {
                    told.add(part.part().uid());
                    told.add(part.part().label());
                    told.add(part.counting());
                });
                station.countingNotes().forEach(note -> told.add(note.content()));
            });
        });
        return told;
    }
}
