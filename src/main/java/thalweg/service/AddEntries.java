package thalweg.service;

import java.util.List;
import thalweg.body.Entered;
import thalweg.body.FactBody;
import thalweg.fault.InputException;
import thalweg.ledger.Fact;
import thalweg.logbook.Inspection;
import thalweg.logbook.RigAnalysis;
import thalweg.logbook.RiggingNote;
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
     * @throws InputException when the date has not come yet
     */
    public void inspections(List<Inspection> inspections) {
        inspections.forEach(inspection -> refuseFuture(inspection.on()));
        String at = session.now();
        append(inspections.stream()
                .map(inspection -> FactBody.of(Entered.of(inspection), session.keeper(), at))
                .toList());
    }

    /**
     * Adds a rigging note.
     *
     * @throws InputException when the date has not come yet
     */
    public void note(RiggingNote note) {
        refuseFuture(note.on());
        append(List.of(FactBody.of(Entered.of(note), session.keeper(), session.now())));
    }

    /** Attaches an analysis. */
    public void analysis(RigAnalysis analysis) {
        append(List.of(FactBody.of(analysis, session.keeper(), session.now())));
    }

    private void refuseFuture(PartialDate on) {
        if (!on.hasBegunBy(session.today())) {
            throw new InputException("The date " + on.print() + " has not come yet; today is " + session.today() + ".");
        }
    }

    private void append(List<Fact> facts) {
        session.ledger().append(new Batch(List.of(), facts));
    }
}
