package thalweg.service;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import thalweg.fault.InputException;
import thalweg.fault.Sentence;
import thalweg.ledger.Uid;
import thalweg.logbook.CanyonRecord;
import thalweg.logbook.CanyonRow;
import thalweg.logbook.LocalRecord;
import thalweg.logbook.PartRecord;
import thalweg.logbook.StationRecord;
import thalweg.logbook.StationRow;
import thalweg.route.Canyon;
import thalweg.text.Fold;

/** Finds the one record that a name, part of a name or id stands for; where several fit, they are listed. */
public final class FindRecord {

    private static final int MOST_LISTED = 12;

    private final Session session;

    public FindRecord(Session session) {
        this.session = session;
    }

    /** A station together with the canyon around it. */
    public record StationInCanyon(CanyonRecord canyon, StationRecord station) {}

    /**
     * The canyon of that name or id, with everything in it.
     *
     * @throws InputException when none or several fit, with what would do
     */
    public CanyonRecord canyon(String nameOrId) {
        Optional<Uid> uid = Uid.parse(nameOrId);
        if (uid.isPresent()) {
            return byId(uid.get())
                    .orElseThrow(() -> new InputException(Sentence.of(
                            "There is no canyon with the id {0}; `list` shows what there is.",
                            uid.get().text())));
        }
        List<CanyonRow> fitting = session.canyons().search(nameOrId);
        List<CanyonRow> exact = fitting.stream()
                .filter(row -> Fold.fold(row.name()).equals(Fold.fold(nameOrId.strip())))
                .toList();
        List<CanyonRow> best = exact.isEmpty() ? fitting : exact;
        if (nameOrId.isBlank() || best.isEmpty()) {
            throw new InputException(
                    Sentence.of("There is no canyon named \"{0}\"; `list` shows what there is.", nameOrId.strip()));
        }
        if (best.size() > 1) {
            throw new InputException(Sentence.of(
                    "\"{0}\" fits several canyons; name one by its id: {1}",
                    nameOrId.strip(),
                    listed(best.stream().map(FindRecord::toldApart).toList())));
        }
        return byId(best.get(0).uid()).orElseThrow();
    }

    /** Two canyons may share a name, and then the region says which is which. */
    private static String toldApart(CanyonRow row) {
        return row.name() + (row.whereabouts().isEmpty() ? "" : ", " + row.whereabouts()) + " ("
                + row.uid().text() + ")";
    }

    /** The canyon of that id, if there is one. */
    public Optional<CanyonRecord> byId(Uid uid) {
        return session.records().canyon(uid);
    }

    /** What this database keeps to itself around a canyon. */
    public LocalRecord local(Uid canyon) {
        return session.records().local(canyon);
    }

    /**
     * The station that words of its canyon's and its own name find, or that has that id.
     *
     * @throws InputException when none or several fit, with what would do
     */
    public StationInCanyon station(String nameOrId) {
        Optional<Uid> uid = Uid.parse(nameOrId);
        if (uid.isPresent()) {
            StationRow found = session.canyons()
                    .station(uid.get())
                    .orElseThrow(() -> new InputException(Sentence.of(
                            "There is no station with the id {0}; `show CANYON` lists its stations.",
                            uid.get().text())));
            return in(found);
        }
        String words = nameOrId.replace('/', ' ');
        List<StationRow> fitting =
                words.isBlank() ? List.of() : session.canyons().stations(words);
        List<StationRow> exact = fitting.stream()
                .filter(found -> endsWith(Fold.tokens(words), Fold.tokens(found.stationName())))
                .toList();
        List<StationRow> best = exact.isEmpty() ? fitting : exact;
        if (best.isEmpty()) {
            throw new InputException(Sentence.of(
                    "There is no station named \"{0}\"; name it as CANYON/STATION, and `show CANYON` lists its"
                            + " stations.",
                    nameOrId.strip()));
        }
        if (best.size() > 1) {
            throw new InputException(Sentence.of(
                    "\"{0}\" fits several stations; name one by its id: {1}",
                    nameOrId.strip(),
                    listed(best.stream()
                            .map(this::in)
                            .map(FindRecord::toldApart)
                            .toList())));
        }
        return in(best.get(0));
    }

    /** Stations of one name are told apart by the number of their place, those of canyons of one name by the region. */
    private static String toldApart(StationInCanyon one) {
        Canyon canyon = one.canyon().canyon();
        Uid station = one.station().station().uid();
        String place = one.canyon()
                .placeOf(station)
                .map(at -> ", place " + at.number())
                .orElse("");
        String where = canyon.whereabouts().isEmpty() ? "" : ", " + canyon.whereabouts();
        return canyon.name() + "/" + one.station().station().name() + place + where + " (" + station.text() + ")";
    }

    /** Whether the last words asked for are the whole name of the station; those before it found the canyon. */
    private static boolean endsWith(List<String> asked, List<String> name) {
        return !name.isEmpty()
                && asked.size() >= name.size()
                && asked.subList(asked.size() - name.size(), asked.size()).equals(name);
    }

    private StationInCanyon in(StationRow found) {
        CanyonRecord canyon = byId(found.canyon()).orElseThrow();
        return new StationInCanyon(canyon, canyon.station(found.station()).orElseThrow());
    }

    /**
     * The part of a station that a label, part of a label or id stands for.
     *
     * @throws InputException when none or several fit, with what would do
     */
    public static PartRecord part(StationRecord station, String labelOrId) {
        Optional<Uid> uid = Uid.parse(labelOrId);
        List<PartRecord> fitting = station.parts().stream()
                .filter(part -> uid.isPresent()
                        ? part.part().uid().equals(uid.get())
                        : begins(part.part().label(), labelOrId))
                .toList();
        List<PartRecord> exact = fitting.stream()
                .filter(part -> Fold.fold(part.part().label()).equals(Fold.fold(labelOrId.strip())))
                .toList();
        List<PartRecord> best = exact.isEmpty() ? fitting : exact;
        if (best.size() == 1) {
            return best.get(0);
        }
        String name = station.station().name();
        if (best.isEmpty()) {
            List<String> labels =
                    station.parts().stream().map(part -> part.part().label()).toList();
            throw new InputException(
                    labels.isEmpty()
                            ? Sentence.of(
                                    "The station {0} has no part \"{1}\"; it has none at all yet.",
                                    name, labelOrId.strip())
                            : Sentence.of(
                                    "The station {0} has no part \"{1}\"; it has: {2}",
                                    name, labelOrId.strip(), listed(labels)));
        }
        throw new InputException(Sentence.of(
                "\"{0}\" fits several parts of the station {1}; name one by its id: {2}",
                labelOrId.strip(),
                name,
                listed(best.stream()
                        .map(part ->
                                part.part().label() + " (" + part.part().uid().text() + ")")
                        .toList())));
    }

    /** Whether every word begins a word of the label. */
    private static boolean begins(String label, String words) {
        List<String> inLabel = Fold.tokens(label);
        List<String> asked = Fold.tokens(words);
        return !asked.isEmpty()
                && asked.stream().allMatch(word -> inLabel.stream().anyMatch(token -> token.startsWith(word)));
    }

    private static Sentence listed(List<String> names) {
        String shown = names.stream().limit(MOST_LISTED).collect(Collectors.joining(", "));
        return names.size() > MOST_LISTED
                ? Sentence.of("{0} and {1} more.", shown, names.size() - MOST_LISTED)
                : Sentence.of("{0}.", shown);
    }
}
