package thalweg.exchange.json;

import java.util.List;
import java.util.function.Function;
import thalweg.body.AnalysisBody;
import thalweg.body.AnchorBody;
import thalweg.body.CanyonBody;
import thalweg.body.InspectionBody;
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
import thalweg.json.Json;
import thalweg.json.JsonText;
import thalweg.ledger.Uid;
import thalweg.logbook.AnchorRecord;
import thalweg.logbook.CanyonRecord;
import thalweg.logbook.Correction;
import thalweg.logbook.Entry;
import thalweg.logbook.LineRecord;
import thalweg.logbook.LocalRecord;
import thalweg.logbook.PartRecord;
import thalweg.logbook.StationRecord;

/** Writes canyons with everything in them as a file of records: the same records give the same text. */
public final class RecordsWriter {

    private RecordsWriter() {}

    /** The file's text. */
    public static String write(List<Parcel> canyons) {
        return JsonText.indented(Json.fields()
                .put("format", RecordsReader.FORMAT)
                .put("version", RecordsReader.VERSION)
                .put("canyons", each(canyons, RecordsWriter::canyon))
                .done());
    }

    private static <T> Json each(List<T> values, Function<T, Json> writer) {
        return new Json.Items(values.stream().map(writer).toList());
    }

    static Json canyon(Parcel parcel) {
        CanyonRecord record = parcel.canyon();
        LocalRecord local = parcel.local();
        Json.Fields fields = named(record.canyon().uid(), CanyonBody.write(record.canyon()), "")
                .with("line", each(record.line(), RecordsWriter::place));
        fields = withList(fields, "rounds", record.rounds(), e -> entry(e, RoundBody.write(e.content())));
        fields = withList(
                fields, "trips", local.trips(), trip -> named(trip.uid(), TripBody.write(trip), TripBody.PARENT));
        fields = withList(
                fields, "private_notes", local.notes(), note -> named(note.uid(), PrivateNoteBody.write(note), ""));
        return withList(fields, "sheets_given", local.sheets(), e -> entry(e, SheetGivenBody.write(e.content())));
    }

    private static Json place(LineRecord record) {
        Json.Fields fields = named(record.obstacle().uid(), ObstacleBody.write(record.obstacle()), ObstacleBody.PARENT);
        return withList(fields, "stations", record.stations(), RecordsWriter::station);
    }

    private static Json station(StationRecord record) {
        Json.Fields fields = named(record.station().uid(), StationBody.write(record.station()), StationBody.PARENT);
        fields = withList(fields, "anchors", record.anchors(), RecordsWriter::anchor);
        fields = withList(fields, "rigging_notes", record.notes(), e -> entry(e, NoteBody.write(e.content())));
        return withList(fields, "analyses", record.analyses(), e -> entry(e, AnalysisBody.write(e.content())));
    }

    private static Json anchor(AnchorRecord record) {
        Json.Fields fields = named(record.anchor().uid(), AnchorBody.write(record.anchor()), AnchorBody.PARENT);
        return withList(fields, "parts", record.parts(), RecordsWriter::part);
    }

    private static Json part(PartRecord record) {
        Json.Fields fields = named(record.part().uid(), PartBody.write(record.part()), PartBody.PARENT);
        return withList(fields, "inspections", record.inspections(), e -> entry(e, InspectionBody.write(e.content())));
    }

    private static Json.Fields named(Uid uid, Json.Fields body, String parentKey) {
        Json.Fields fields = Json.fields().put("uid", uid.text()).done();
        for (var field : body.values().entrySet()) {
            if (!field.getKey().equals(parentKey)) {
                fields = fields.with(field.getKey(), field.getValue());
            }
        }
        return fields;
    }

    private static <T> Json.Fields withList(Json.Fields fields, String key, List<T> values, Function<T, Json> writer) {
        return values.isEmpty() ? fields : fields.with(key, each(values, writer));
    }

    private static Json entry(Entry<?> entry, Json.Fields body) {
        Json.Fields fields = body.with("uid", Json.of(entry.uid().text()))
                .with("author", Json.of(entry.author()))
                .with("at", Json.of(entry.at()));
        if (entry.correction().isPresent()) {
            Correction correction = entry.correction().get();
            fields = fields.with("corrects", Json.of(correction.of().text()))
                    .with(WithdrawalBody.REASON, Json.of(correction.reason()));
        }
        return withList(fields, WithdrawalList.KEY, WithdrawalList.write(entry), one -> one);
    }
}
