package thalweg.body;

import java.util.Optional;
import thalweg.json.Json;
import thalweg.ledger.Fact;
import thalweg.ledger.Uid;
import thalweg.logbook.Entry;
import thalweg.logbook.Inspection;
import thalweg.logbook.RigAnalysis;
import thalweg.logbook.RiggingNote;

/** Turns what people noted into facts of the ledger. */
public final class FactBody {

    private FactBody() {}

    /** An inspection as a fact about its part. */
    public static Fact of(Inspection inspection, String author, String at) {
        return fact(FactType.INSPECTION, inspection.part(), InspectionBody.write(inspection), author, at);
    }

    /** A rigging note as a fact about its station. */
    public static Fact of(RiggingNote note, String author, String at) {
        return fact(FactType.RIGGING_NOTE, note.station(), NoteBody.write(note), author, at);
    }

    /** A rig analysis as a fact about its station. */
    public static Fact of(RigAnalysis analysis, String author, String at) {
        return fact(FactType.RIG_ANALYSIS, analysis.station(), AnalysisBody.write(analysis), author, at);
    }

    /** The entry that such a fact becomes. */
    public static <T> Entry<T> entry(T content, Fact fact) {
        return new Entry<>(fact.uid(), content, fact.author(), fact.at());
    }

    private static Fact fact(FactType type, Uid about, Json.Fields body, String author, String at) {
        return new Fact(type.word(), about, body, Optional.empty(), author, at);
    }
}
