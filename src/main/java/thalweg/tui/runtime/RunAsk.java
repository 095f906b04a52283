package thalweg.tui.runtime;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicLong;
import thalweg.logbook.CanyonRecord;
import thalweg.logbook.Inspection;
import thalweg.logbook.Trip;
import thalweg.logbook.TripInCanyon;
import thalweg.progress.Progress;
import thalweg.service.AddEntries;
import thalweg.service.AnalyzeRig;
import thalweg.service.FindRecord;
import thalweg.service.KeepLocal;
import thalweg.service.ListGiven;
import thalweg.service.ListTrips;
import thalweg.service.NoteTimes;
import thalweg.service.PlaceWaypoints;
import thalweg.service.PlanTrip;
import thalweg.service.ReadFile;
import thalweg.service.ReadPhotos;
import thalweg.service.ReadWaypoints;
import thalweg.service.Remarks;
import thalweg.service.RunCascade;
import thalweg.service.SaveThing;
import thalweg.service.Session;
import thalweg.tui.core.Effect;
import thalweg.tui.core.Message;
import thalweg.tui.screen.Amend;
import thalweg.tui.screen.Ask;
import thalweg.tui.screen.Told;

/** Does the work that screens ask for, with the services. */
public final class RunAsk implements EffectRunner {

    private final Session session;
    private final String program;
    private final AtomicLong seen;

    /**
     * @param session the open database
     * @param program version of this program
     */
    public RunAsk(Session session, String program) {
        this.session = session;
        this.program = program;
        this.seen = new AtomicLong(session.changedElsewhere());
    }

    @Override
    public boolean watches() {
        return true;
    }

    @Override
    public void onWaiting(Runnable waiting) {
        session.onWaiting(waiting);
    }

    @Override
    public Message run(Effect effect, Progress progress) {
        Optional<Message> answer = new RunLong(session, program, progress).answer(effect);
        if (answer.filter(Told.TakenIn.class::isInstance).isPresent()) {
            // It came over another connection, but from this window.
            seen.set(session.changedElsewhere());
        }
        return answer.orElseGet(() -> run(effect));
    }

    @Override
    public Message run(Effect effect) {
        if (effect instanceof Effect.Look) {
            long now = session.changedElsewhere();
            return seen.getAndSet(now) == now ? new Message.Unchanged() : new Message.ChangedElsewhere();
        }
        if (effect instanceof Amend amend) {
            return new RunAmend(session).run(amend);
        }
        Optional<Message> found = new RunFinding(session).answer(effect);
        if (found.isPresent()) {
            return found.get();
        }
        if (effect instanceof Ask.LoadCanyon load) {
            return new RunFinding(session)
                    .loaded(load.canyon())
                    .<Message>map(loaded -> loaded)
                    .orElseGet(() -> new Told.CanyonGone(load.canyon()));
        }
        if (effect instanceof Ask.LoadTrips load) {
            return new Told.TripsLoaded(new ListTrips(session).of(load.canyon()), session.mint());
        }
        if (effect instanceof Ask.LoadTrip load) {
            return trip(load);
        }
        if (effect instanceof Ask.LoadGiven load) {
            return new Told.GivenLoaded(new ListGiven(session).of(load.canyon()));
        }
        if (effect instanceof Ask.FindBestFocus find) {
            return new Told.BestFocusFound(find.input(), AnalyzeRig.bestFocus(find.input()));
        }
        if (effect instanceof Ask.Compare compare) {
            return new Told.Compared(AnalyzeRig.compare(compare.input(), compare.priority()));
        }
        if (effect instanceof Ask.FindPeakRange find) {
            return new Told.PeakRangeFound(find.answer(), AnalyzeRig.peakRange(find.answer()));
        }
        if (effect instanceof Ask.NextTrials next) {
            return new Told.CascadeRan(next.cascade(), RunCascade.next(next.cascade(), next.before()));
        }
        if (effect instanceof Ask.ReadWaypoints read) {
            ReadWaypoints.Answer answer = ReadWaypoints.typed(read.path());
            return new Told.WaypointsRead(answer.name(), answer.findings(), answer.file());
        }
        if (effect instanceof Ask.SetKeeper set) {
            session.setKeeper(set.name());
            return new Told.KeeperSet(set.name());
        }
        Optional<Remarks> remarks = remarks(effect);
        saved(effect);
        return new Told.Saved(remarks.map(Remarks::since).orElse(List.of()));
    }

    /** What has to be known before the work, where it may make the records contradict themselves. */
    private Optional<Remarks> remarks(Effect effect) {
        if (effect instanceof Ask.SaveNew save) {
            return Optional.of(Remarks.beforeNew(session, save.thing()));
        }
        if (effect instanceof Ask.SaveChanged save) {
            return Optional.of(Remarks.beforeChanged(session, save.before(), save.after()));
        }
        if (effect instanceof Ask.ReplacePart replace) {
            return Optional.of(
                    Remarks.before(session, replace.found().inspection().part()));
        }
        List<Ask.Found> found = effect instanceof Ask.AddInspections add
                ? add.found()
                : effect instanceof Ask.AddRoundDown down ? down.found() : List.of();
        return found.stream()
                .findFirst()
                .map(first -> Remarks.before(session, first.inspection().part()));
    }

    private void saved(Effect effect) {
        if (effect instanceof Ask.SaveNew save) {
            new SaveThing(session).anew(save.thing());
        } else if (effect instanceof Ask.SaveChanged save) {
            new SaveThing(session).changed(save.before(), save.after());
        } else if (effect instanceof Ask.AddInspections add) {
            new AddEntries(session).inspections(withPhotos(add.found()));
        } else if (effect instanceof Ask.ReplacePart replace) {
            Inspection inspection = withPhotos(List.of(replace.found())).get(0);
            new AddEntries(session).replaced(inspection, replace.before(), replace.after());
        } else if (effect instanceof Ask.AddRoundDown down) {
            new AddEntries(session).round(down.round(), withPhotos(down.found()));
        } else if (effect instanceof Ask.AddRound add) {
            new AddEntries(session).round(add.round());
        } else if (effect instanceof Ask.AddNote add) {
            new AddEntries(session).note(add.note());
        } else if (effect instanceof Ask.AttachAnalysis attach) {
            AnalyzeRig.attach(session, attach.station(), attach.input(), program);
        } else if (effect instanceof Ask.PlaceWaypoints place) {
            new PlaceWaypoints(session).write(place.placing());
        } else if (effect instanceof Ask.SaveTrip save) {
            new KeepLocal(session).trip(save.before(), save.after());
        } else if (effect instanceof Ask.NoteTimes note) {
            Trip after = new NoteTimes(session).noted(note.before(), note.place(), note.reached(), note.left());
            new KeepLocal(session).trip(Optional.of(note.before()), after);
        } else if (effect instanceof Ask.TakeOutTrip out) {
            new KeepLocal(session).remove(out.trip(), out.reason());
        } else if (effect instanceof Ask.SavePrivateNote save) {
            new KeepLocal(session).note(save.about(), save.before(), save.text());
        } else {
            throw new AssertionError("nobody does " + effect);
        }
    }

    private static List<Inspection> withPhotos(List<Ask.Found> found) {
        return found.stream()
                .map(one -> one.inspection().withPhotos(ReadPhotos.of(one.photos())))
                .toList();
    }

    private Told trip(Ask.LoadTrip load) {
        Optional<TripInCanyon> shown = new ListTrips(session).byId(load.trip());
        Optional<CanyonRecord> canyon =
                shown.flatMap(trip -> new FindRecord(session).byId(trip.trip().canyon()));
        PlanTrip plan = new PlanTrip(session, load.settings());
        return shown.isPresent() && canyon.isPresent()
                ? new Told.TripLoaded(
                        shown.get(),
                        canyon.get(),
                        plan.times(shown.get().trip(), canyon.get()),
                        plan.paced(shown.get().trip(), canyon.get()),
                        new FindRecord(session).local(shown.get().canyon().uid()))
                : new Told.TripGone(load.trip());
    }

    /** The file that somebody named. */
    static Path target(String typed) {
        return ReadFile.typed(typed, System.getenv()).toAbsolutePath();
    }
}
