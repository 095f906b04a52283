package thalweg.body;

import java.util.Optional;
import java.util.function.Function;
import thalweg.fault.InputException;
import thalweg.fault.Sentence;
import thalweg.json.FieldReader;
import thalweg.json.Findings;
import thalweg.json.Json;
import thalweg.ledger.Uid;
import thalweg.logbook.Inspection;
import thalweg.logbook.PrivateNote;
import thalweg.logbook.RiggingNote;
import thalweg.logbook.Round;
import thalweg.logbook.SheetGiven;
import thalweg.logbook.Trip;
import thalweg.route.Anchor;
import thalweg.route.Canyon;
import thalweg.route.Obstacle;
import thalweg.route.Part;
import thalweg.route.Station;

/**
 * The door for what people type: it is read as a file would be, so that its text is cleaned and its limits are kept before
 * it is hashed. What comes out is written and read back without a change.
 */
public final class Entered {

    private Entered() {}

    /**
     * The inspection as it can be kept.
     *
     * @throws InputException when a rule is broken, naming it
     */
    public static Inspection of(Inspection inspection) {
        return read(InspectionBody.write(inspection), in -> InspectionBody.read(inspection.part(), in));
    }

    /**
     * The rigging note as it can be kept.
     *
     * @throws InputException when a rule is broken, naming it
     */
    public static RiggingNote of(RiggingNote note) {
        return read(NoteBody.write(note), in -> NoteBody.read(note.station(), in));
    }

    /**
     * The round as it can be kept.
     *
     * @throws InputException when a rule is broken, naming it
     */
    public static Round of(Round round) {
        return read(RoundBody.write(round), in -> RoundBody.read(round.canyon(), in));
    }

    /**
     * The sheet given out as it can be kept.
     *
     * @throws InputException when a rule is broken, naming it
     */
    public static SheetGiven of(SheetGiven given) {
        return read(SheetGivenBody.write(given), in -> SheetGivenBody.read(given.canyon(), in));
    }

    /**
     * The reason as it can be kept.
     *
     * @throws InputException when it is missing or too long
     */
    public static String reason(String reason) {
        if (reason.isBlank()) {
            throw new InputException(Sentence.of("A word of reason is needed; it is kept with what was changed."));
        }
        return read(Json.fields().put(WithdrawalBody.REASON, reason).done(), WithdrawalBody::read);
    }

    /**
     * The thing as it can be kept.
     *
     * @throws InputException when a rule is broken, naming it
     */
    public static ThingBody of(ThingBody thing) {
        Uid uid = thing.uid();
        Json.Fields body = thing.body();
        return switch (thing.type()) {
            case CANYON -> ThingBody.of(Entered.<Canyon>read(body, in -> CanyonBody.read(uid, in)));
            case OBSTACLE -> {
                Uid canyon = parent(body, ObstacleBody.PARENT);
                yield ThingBody.of(Entered.<Obstacle>read(body, in -> ObstacleBody.read(uid, canyon, "", in)));
            }
            case STATION -> {
                Uid obstacle = parent(body, StationBody.PARENT);
                yield ThingBody.of(Entered.<Station>read(body, in -> StationBody.read(uid, obstacle, "", in)));
            }
            case ANCHOR -> {
                Uid station = parent(body, AnchorBody.PARENT);
                yield ThingBody.of(Entered.<Anchor>read(body, in -> AnchorBody.read(uid, station, "", in)));
            }
            case PART -> {
                Uid anchor = parent(body, PartBody.PARENT);
                yield ThingBody.of(Entered.<Part>read(body, in -> PartBody.read(uid, anchor, "", in)));
            }
            case TRIP -> {
                Uid canyon = parent(body, TripBody.PARENT);
                yield ThingBody.of(Entered.<Trip>read(body, in -> TripBody.read(uid, canyon, in)));
            }
            case PRIVATE_NOTE -> {
                Uid about = parent(body, PrivateNoteBody.PARENT);
                yield ThingBody.of(Entered.<PrivateNote>read(body, in -> PrivateNoteBody.read(uid, about, in)));
            }
        };
    }

    private static Uid parent(Json.Fields body, String key) {
        return Uid.parse(FieldReader.of(body, new Findings()).text(key, 36))
                .orElseThrow(() -> new IllegalArgumentException("the body names no " + key));
    }

    private static <T> T read(Json.Fields body, Function<FieldReader, Optional<T>> reader) {
        Findings findings = new Findings();
        return reader.apply(FieldReader.of(body, findings))
                .orElseThrow(() -> new InputException(Sentence.of(
                        "This cannot be kept: {0}", findings.all().get(0).saying())));
    }
}
