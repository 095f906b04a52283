package thalweg.service;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import thalweg.body.Entered;
import thalweg.body.FactBody;
import thalweg.body.FactType;
import thalweg.body.ThingBody;
import thalweg.body.WithdrawalBody;
import thalweg.fault.ChangedMeanwhileException;
import thalweg.fault.InputException;
import thalweg.fault.Sentence;
import thalweg.ledger.Fact;
import thalweg.ledger.Revision;
import thalweg.ledger.Uid;
import thalweg.logbook.Correction;
import thalweg.logbook.Inspection;
import thalweg.logbook.RigAnalysis;
import thalweg.logbook.RiggingNote;
import thalweg.logbook.Round;
import thalweg.logbook.SheetGiven;
import thalweg.route.PartialDate;
import thalweg.storage.Batch;

/** Adds what was found, noted or worked out to the logbook; nothing that is there is changed. */
public final class AddEntries {

    private final Session session;

    public AddEntries(Session session) {
        this.session = session;
    }

    /**
     * Adds the inspections of one visit together.
     *
     * @throws InputException when the date has not come yet or is not believed, or nobody says how a part was left that was
     *     replaced or removed
     */
    public void inspections(List<Inspection> inspections) {
        inspections.forEach(this::refuseUnsound);
        append(inspections.stream()
                .map(inspection -> FactBody.of(Entered.of(inspection)))
                .toList());
    }

    /**
     * Adds that a part was replaced, and what stands in its place now.
     *
     * @param inspection on which it was replaced
     * @param before the part as the record says
     * @param after the same part as it is now
     * @throws InputException when the date has not come yet or is not believed, or nobody says how the new one was left
     * @throws ChangedMeanwhileException when the part no longer is as it was before
     */
    public void replaced(Inspection inspection, ThingBody before, ThingBody after) {
        refuseUnsound(inspection);
        String at = session.now();
        append(
                new SaveThing(session).next(before, after).stream().toList(),
                List.of(FactBody.of(Entered.of(inspection)).fact(session.keeper(), at)),
                at);
    }

    /**
     * Adds a rigging note.
     *
     * @throws InputException when the date has not come yet or is not believed
     */
    public void note(RiggingNote note) {
        refuseUnbelieved(note.on());
        append(List.of(FactBody.of(Entered.of(note))));
    }

    /**
     * Adds a round, to which inspections can then belong.
     *
     * @throws InputException when the date has not come yet or is not believed
     */
    public void round(Round round) {
        refuseUnbelieved(round.on());
        append(List.of(FactBody.of(Entered.of(round))));
    }

    /**
     * Adds a round together with everything that was found on it.
     *
     * @param found of whatever round; it becomes part of this one
     * @throws InputException when the date has not come yet or is not believed
     */
    public void round(Round round, List<Inspection> found) {
        refuseUnbelieved(round.on());
        found.forEach(this::refuseUnsound);
        String at = session.now();
        List<Fact> facts = new ArrayList<>();
        facts.add(FactBody.of(Entered.of(round)).fact(session.keeper(), at));
        Uid uid = facts.get(0).uid();
        found.forEach(inspection ->
                facts.add(FactBody.of(Entered.of(inspection.inRound(uid))).fact(session.keeper(), at)));
        append(facts, at);
    }

    /**
     * Notes that a sheet was written.
     *
     * @throws ChangedMeanwhileException when its number stands on another sheet by now
     */
    public void sheetGiven(SheetGiven given) {
        sheetsGiven(List.of(given));
    }

    /**
     * Notes that sheets were written, all or none.
     *
     * @param given not empty, with numbers that rise
     * @throws ChangedMeanwhileException when one of the numbers stands on another sheet by now
     */
    void sheetsGiven(List<SheetGiven> given) {
        String at = session.now();
        List<Fact> facts = given.stream()
                .map(one -> FactBody.of(Entered.of(one)).fact(session.keeper(), at))
                .toList();
        session.ledger()
                .appendSheet(
                        new Batch(List.of(), facts, session.keeper(), at),
                        given.get(0).number());
    }

    /** Attaches an analysis. */
    public void analysis(RigAnalysis analysis) {
        append(List.of(FactBody.of(analysis)));
    }

    /**
     * Puts another inspection in the place of one that was wrong; both stay.
     *
     * @param wrong the entry that was wrong
     * @throws InputException when the date has not come yet or is not believed, the reason is missing or nothing differs
     * @throws ChangedMeanwhileException when the entry no longer counts
     */
    public void correct(Uid wrong, Inspection right, String reason) {
        refuseUnsound(right);
        correct(wrong, FactBody.of(Entered.of(right)), reason);
    }

    /**
     * Puts another rigging note in the place of one that was wrong; both stay.
     *
     * @param wrong the entry that was wrong
     * @throws InputException when the date has not come yet or is not believed, the reason is missing or nothing differs
     * @throws ChangedMeanwhileException when the entry no longer counts
     */
    public void correct(Uid wrong, RiggingNote right, String reason) {
        refuseUnbelieved(right.on());
        correct(wrong, FactBody.of(Entered.of(right)), reason);
    }

    /**
     * Puts another round in the place of one that was wrong; both stay.
     *
     * @param wrong the entry that was wrong
     * @throws InputException when the date has not come yet or is not believed, the reason is missing or nothing differs
     * @throws ChangedMeanwhileException when the entry no longer counts
     */
    public void correct(Uid wrong, Round right, String reason) {
        refuseUnbelieved(right.on());
        correct(wrong, FactBody.of(Entered.of(right)), reason);
    }

    private void correct(Uid wrong, FactBody right, String reason) {
        Fact before = counting(wrong);
        if (!before.type().equals(right.type().word()) || !before.about().equals(right.about())) {
            throw new InputException(
                    Sentence.of("A correction is about the same thing as what it corrects; withdraw the entry and add"
                            + " another instead."));
        }
        if (right.body().equals(before.body().without(WithdrawalBody.REASON))) {
            throw new InputException(Sentence.of("Nothing differs from the entry as it is; say what was wrong in it."));
        }
        Correction correction = new Correction(wrong, Entered.reason(reason));
        append(right.fact(Optional.of(correction), session.keeper(), session.now()));
    }

    /**
     * Withdraws an entry; it stays, but counts no longer.
     *
     * @throws InputException when the reason is missing or there is no such entry
     * @throws ChangedMeanwhileException when the entry no longer counts
     */
    public void withdraw(Uid wrong, String reason) {
        counting(wrong);
        append(WithdrawalBody.of(wrong, Entered.reason(reason), session.keeper(), session.now()));
    }

    private Fact counting(Uid entry) {
        Fact fact = session.ledger()
                .fact(entry)
                .filter(known -> FactType.of(known.type()).isPresent())
                .orElseThrow(() -> new InputException(
                        Sentence.of("There is no entry with the id {0}; `show` lists them with --ids.", entry.text())));
        if (!session.ledger().counts(fact)) {
            throw new ChangedMeanwhileException(
                    Sentence.of("This entry was corrected or withdrawn before; nothing was changed. The entry that took"
                            + " its place can be corrected instead."));
        }
        return fact;
    }

    private void refuseUnsound(Inspection inspection) {
        refuseUnbelieved(inspection.on());
        inspection.unsaid().ifPresent(why -> {
            throw new InputException(why);
        });
    }

    private void refuseUnbelieved(PartialDate on) {
        on.tooEarlyToBeSeen().ifPresent(why -> {
            throw new InputException(Sentence.of("The date {0} {1}; was another year meant?", on.print(), why));
        });
        if (!on.hasBegunBy(session.today())) {
            throw new InputException(
                    Sentence.of("The date {0} has not come yet; today is {1}.", on.print(), session.today()));
        }
    }

    private void append(List<FactBody> bodies) {
        String at = session.now();
        append(bodies.stream().map(body -> body.fact(session.keeper(), at)).toList(), at);
    }

    private void append(Fact fact) {
        append(List.of(fact), fact.at());
    }

    private void append(List<Fact> facts, String at) {
        append(List.of(), facts, at);
    }

    private void append(List<Revision> revisions, List<Fact> facts, String at) {
        for (Fact fact : facts) {
            if (FactType.of(fact.type()).isPresent() && !session.things().isInUse(fact.about())) {
                throw new ChangedMeanwhileException(Sentence.of(
                        "What this entry is about was taken out of use in the meantime; nothing was saved. The"
                                + " list of changes brings it back."));
            }
            if (session.ledger().fact(fact.uid()).isPresent()
                    && !session.ledger().counts(fact)) {
                throw new InputException(Sentence.of(
                        "The very same entry was made and taken back within this second; wait a moment and add it"
                                + " again."));
            }
        }
        session.ledger().append(new Batch(revisions, facts, session.keeper(), at));
    }
}
