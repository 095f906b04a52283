package thalweg.cli;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import thalweg.fault.InputException;
import thalweg.fault.Sentence;
import thalweg.ledger.Uid;
import thalweg.logbook.Condition;
import thalweg.logbook.Entry;
import thalweg.logbook.Inspection;
import thalweg.logbook.NoteText;
import thalweg.logbook.Photo;
import thalweg.logbook.RiggingNote;
import thalweg.logbook.Round;
import thalweg.logbook.Work;
import thalweg.route.Prose;
import thalweg.service.AddEntries;
import thalweg.service.FindThing;
import thalweg.service.Remarks;
import thalweg.service.Session;

/** Puts another entry in the place of one that was wrong. */
@Command(
        name = "correct",
        description = {
            "Puts another entry in the place of an inspection, rigging note or round that was wrong.",
            "What is not said stays as it was; both stay to be seen, with the reason. CONDITION is that of"
                    + " an inspection: sound, worn, doubtful, unsafe, gone, or not-seen."
        })
final class CorrectAction extends Action {

    @Parameters(index = "0", paramLabel = "ENTRY-ID", description = "as `show --ids` lists it")
    private String entry = "";

    @Parameters(index = "1", paramLabel = "CONDITION", arity = "0..1", description = "as found")
    private @Nullable String condition;

    @Option(names = "--reason", paramLabel = "TEXT", required = true, description = "why; it stays with both")
    private @Nullable String reason;

    @Mixin
    private EntryOptions options = new EntryOptions();

    @Option(names = "--drop-photos", description = "leave out the photos that the inspection had")
    private boolean dropPhotos;

    @Option(
            names = "--text",
            paramLabel = "HEADING=TEXT",
            description = "what a rigging note says under a heading, such as landing=...; nothing after the sign"
                    + " leaves the heading out")
    private Map<String, String> texts = new LinkedHashMap<>();

    CorrectAction(Surrounds surrounds) {
        super(surrounds);
    }

    @Override
    public Integer call() {
        try (Session session = shared().writing()) {
            FindThing.EntryInCanyon found = new FindThing(session).entry(entry);
            AddEntries entries = new AddEntries(session);
            Remarks remarks = Remarks.before(session, found.canyon().canyon().uid());
            Uid wrong = found.entry().uid();
            String why = reason == null ? "" : reason;
            if (found.entry().content() instanceof Inspection inspection) {
                refuse(texts.isEmpty() ? Optional.empty() : Optional.of("--text"), "an inspection");
                entries.correct(wrong, corrected(inspection, found), why);
            } else if (found.entry().content() instanceof RiggingNote note) {
                refuse(ofNoNote(), "a rigging note");
                entries.correct(wrong, corrected(note), why);
            } else if (found.entry().content() instanceof Round round) {
                refuse(texts.isEmpty() ? ofInspections() : Optional.of("--text"), "a round");
                entries.correct(wrong, corrected(round), why);
            } else {
                throw new InputException(
                        Sentence.of("A rig analysis is never corrected; withdraw it and attach another."));
            }
            tell(new Amended(phrases(), shared().units()).latest(session));
            remark(remarks);
        }
        return ExitCodes.DONE;
    }

    private Optional<String> ofInspections() {
        return dropPhotos
                ? Optional.of("--drop-photos")
                : options.ofInspections()
                        .or(() -> Optional.ofNullable(condition).map(word -> "the condition"));
    }

    private Optional<String> ofNoNote() {
        return ofInspections()
                .or(() -> options.visit().water().map(level -> "--water"))
                .or(() -> options.visit().note().map(text -> "--note"));
    }

    private static void refuse(Optional<String> option, String type) {
        option.ifPresent(name -> {
            throw new InputException(Sentence.of(
                    "This entry is {0}, about which {1} says nothing; leave it out, or check the id.",
                    Sentence.word(type), Sentence.word(name)));
        });
    }

    private Inspection corrected(Inspection wrong, FindThing.EntryInCanyon found) {
        boolean said = condition != null;
        Optional<Condition> asFound = condition == null ? wrong.found() : EntryOptions.condition(condition);
        boolean notSeen = said && asFound.isEmpty();
        Optional<Condition> asLeft = options.left().orElse(notSeen ? Optional.empty() : wrong.left());
        List<Work> work = options.work().orElse(notSeen ? List.of() : wrong.work());
        if ((asFound.isEmpty() && asLeft.isEmpty() && !work.isEmpty()) || (notSeen && asLeft.isPresent())) {
            throw new InputException(
                    Sentence.of("A part that was not seen has no condition as left and no work done on it."));
        }
        Optional<Uid> round = options.round(found.canyon())
                .map(chosen -> chosen.map(Entry::uid))
                .orElse(wrong.round());
        List<Photo> photos = Stream.concat(
                        dropPhotos ? Stream.of() : wrong.photos().stream(), options.photos().stream())
                .toList();
        return new Inspection(
                wrong.part(),
                options.visit().on().orElse(wrong.on()),
                options.visit().by().orElse(wrong.by()),
                asFound,
                asLeft,
                options.visit().water().orElse(wrong.water()),
                work,
                options.visit().note().orElse(wrong.note()),
                round,
                photos);
    }

    private RiggingNote corrected(RiggingNote wrong) {
        Prose<NoteText> prose = wrong.prose();
        for (Map.Entry<String, String> text : texts.entrySet()) {
            NoteText heading = VisitOptions.oneOf(
                    VisitOptions.plain(text.getKey()),
                    NoteText.class,
                    Sentence.of(
                            "The heading \"{0}\" is not known; it is one of {1}.",
                            text.getKey(), VisitOptions.known(NoteText.class)));
            prose = prose.with(heading, text.getValue());
        }
        if (prose.texts().isEmpty()) {
            throw new InputException(Sentence.of("The note would say nothing any more; `withdraw` it instead."));
        }
        return new RiggingNote(
                wrong.station(),
                options.visit().on().orElse(wrong.on()),
                options.visit().by().orElse(wrong.by()),
                prose);
    }

    private Round corrected(Round wrong) {
        return new Round(
                wrong.canyon(),
                options.visit().on().orElse(wrong.on()),
                options.visit().by().orElse(wrong.by()),
                options.visit().water().orElse(wrong.water()),
                options.visit().note().orElse(wrong.note()));
    }
}
