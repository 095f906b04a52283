package thalweg.tui.screen;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import thalweg.rig.BestFocus;
import thalweg.rig.Cascade;
import thalweg.rig.CascadeOdds;
import thalweg.rig.RigAnswer;
import thalweg.rig.RigInput;
import thalweg.rig.RigStudy;
import thalweg.tui.core.Binding;
import thalweg.tui.core.Key;
import thalweg.tui.core.Message;
import thalweg.tui.core.Step;
import thalweg.tui.core.Surroundings;
import thalweg.why.Question;

/** What of the rig screen asks for studies, which take longer than a key may wait, and takes in what comes of them. */
final class StudyKeys {

    private final RigScreen screen;

    /**
     * @param screen as it is now
     */
    StudyKeys(RigScreen screen) {
        this.screen = screen;
    }

    private RigStudies studies() {
        return screen.answer().studies();
    }

    private RigAnswer answer() {
        return screen.answer().figures().orElseThrow();
    }

    List<Binding> bindings(Surroundings around) {
        boolean none = screen.answer().figures().isEmpty();
        String nothing = around.say("rig.no_answer");
        Optional<BestFocus.Found> best = studies().best().flatMap(BestFocus::found);
        return List.of(
                Binding.of(Key.of('b'), around.say("key.best_focus"), this::bestFocus)
                        .unless(none, nothing),
                Binding.of(
                                Key.of('c'),
                                around.say(studies().running().isPresent() ? "key.cascade_stop" : "key.cascade"),
                                this::cascade)
                        .unless(none, nothing),
                Binding.of(
                                Key.of('m'),
                                around.say("key.move_to_best"),
                                () -> screen.movedTo(best.orElseThrow().focus()))
                        .unless(best.isEmpty(), around.say("rig.best.first"))
                        .quiet());
    }

    /** The key that holds the layouts against each other. */
    Binding compare(Surroundings around) {
        return Binding.of(Key.of('s'), around.say("key.compare"), this::compare)
                .unless(screen.answer().figures().isEmpty(), around.say("rig.no_answer"));
    }

    /** The key that explains the figures. */
    Binding why(Surroundings around) {
        return Binding.of(Key.of('w'), around.say("key.why"), () -> explained(around))
                .unless(screen.answer().figures().isEmpty(), around.say("why.no_answer"));
    }

    private Step explained(Surroundings around) {
        RigStudy study = new RigStudy(
                answer(), studies().best(), studies().odds(), studies().peaks(), Optional.empty());
        return Step.open(
                screen,
                new Go.Why(new Question(
                        study,
                        screen.starts().stream().map(StartValue::ground).collect(Collectors.toSet()),
                        screen.view().state(answer()),
                        around.settings().loads())));
    }

    private Step compare() {
        return Step.open(screen, new Go.Compare(answer().input(), screen.stated()));
    }

    private Step bestFocus() {
        return Step.stay(screen).doing(new Ask.FindBestFocus(answer().input()));
    }

    /** Begins one, or stops the one that runs. */
    private Step cascade() {
        if (studies().running().isPresent()) {
            return stopped();
        }
        Cascade cascade = new Cascade(answer().input());
        CascadeOdds first = CascadeOdds.begin(CascadeOdds.TRIALS, CascadeOdds.SEED);
        return Step.stay(screen.studied(studies().beginning(cascade, first))).doing(new Ask.NextTrials(cascade, first));
    }

    private Step stopped() {
        return Step.stay(screen.with(screen.answer().with(studies().stopped())));
    }

    /** What follows a message, if it is about a study. */
    Optional<Step> after(Message message) {
        if (message instanceof Told.BestFocusFound found) {
            return Optional.of(shown(found.input(), studies().with(found.best())));
        }
        if (message instanceof Told.PeakRangeFound found) {
            return Optional.of(ranged(found));
        }
        if (message instanceof Told.CascadeRan ran) {
            return Optional.of(ran(ran));
        }
        if (message instanceof Message.Failed failed && failed.effect() instanceof Ask.NextTrials) {
            return Optional.of(stopped().refusing(failed.sentence()));
        }
        if (message instanceof Message.Failed failed && failed.effect() instanceof Ask.FindPeakRange) {
            return Optional.of(Step.stay(screen.ranging(false)).refusing(failed.sentence()));
        }
        return Optional.empty();
    }

    /** Where the rig has changed meanwhile, the range is asked for anew. */
    private Step ranged(Told.PeakRangeFound found) {
        RigScreen idle = screen.ranging(false);
        return screen.answer().isOf(found.answer().input())
                ? Step.stay(idle.with(screen.answer().with(studies().with(found.range()))))
                : idle.ranged();
    }

    /** A study of a rig that has changed meanwhile is not shown. */
    private Step shown(RigInput input, RigStudies now) {
        return Step.stay(screen.answer().isOf(input) ? screen.studied(now) : screen);
    }

    /** Goes on with the next trials, unless it was stopped or the rig has changed meanwhile. */
    private Step ran(Told.CascadeRan ran) {
        if (!studies().runs(ran.cascade())) {
            return Step.stay(screen);
        }
        RigStudies now = studies().with(ran.odds());
        Step step = Step.stay(screen.with(screen.answer().with(now)));
        return now.running().isEmpty() ? step : step.doing(new Ask.NextTrials(ran.cascade(), ran.odds()));
    }
}
