package thalweg.body;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import thalweg.json.Json;
import thalweg.ledger.Fact;
import thalweg.ledger.Uid;
import thalweg.logbook.Correction;
import thalweg.logbook.Entry;
import thalweg.logbook.Inspection;
import thalweg.logbook.RigAnalysis;
import thalweg.logbook.RiggingNote;
import thalweg.logbook.Round;
import thalweg.logbook.SheetGiven;
import thalweg.logbook.Withdrawal;

/**
 * What people noted, ready to be signed as a fact of the ledger.
 *
 * @param type what kind of fact
 * @param about the thing it is about
 * @param body what it says
 */
public record FactBody(FactType type, Uid about, Json.Fields body) {

    /** An inspection is about its part. */
    public static FactBody of(Inspection inspection) {
        return new FactBody(FactType.INSPECTION, inspection.part(), InspectionBody.write(inspection));
    }

    /** A rigging note is about its station. */
    public static FactBody of(RiggingNote note) {
        return new FactBody(FactType.RIGGING_NOTE, note.station(), NoteBody.write(note));
    }

    /** A rig analysis is about its station. */
    public static FactBody of(RigAnalysis analysis) {
        return new FactBody(FactType.RIG_ANALYSIS, analysis.station(), AnalysisBody.write(analysis));
    }

    /** A round is about its canyon. */
    public static FactBody of(Round round) {
        return new FactBody(FactType.ROUND, round.canyon(), RoundBody.write(round));
    }

    /** A sheet that was given out is about its canyon. */
    public static FactBody of(SheetGiven given) {
        return new FactBody(FactType.SHEET_GIVEN, given.canyon(), SheetGivenBody.write(given));
    }

    /** The fact that it becomes. */
    public Fact fact(String author, String at) {
        return fact(Optional.empty(), author, at);
    }

    /** The fact that it becomes, which may take the place of another. */
    public Fact fact(Optional<Correction> correction, String author, String at) {
        Json.Fields whole = correction.isEmpty()
                ? body
                : body.with(WithdrawalBody.REASON, Json.of(correction.get().reason()));
        return new Fact(type.word(), about, whole, correction.map(Correction::of), author, at);
    }

    /** The facts that make up an entry: itself, then what withdraws it. */
    public List<Fact> facts(Entry<?> entry) {
        List<Fact> facts = new ArrayList<>();
        facts.add(fact(entry.correction(), entry.author(), entry.at()));
        entry.withdrawals().forEach(withdrawal -> add(facts, facts.get(0).uid(), withdrawal));
        return facts;
    }

    private static void add(List<Fact> facts, Uid of, Withdrawal withdrawal) {
        Fact fact = WithdrawalBody.of(of, withdrawal.reason(), withdrawal.author(), withdrawal.at());
        facts.add(fact);
        withdrawal.withdrawals().forEach(again -> add(facts, fact.uid(), again));
    }
}
