package thalweg.tui.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import thalweg.logbook.StationRecord;
import thalweg.rig.Cascade;
import thalweg.rig.CascadeOdds;
import thalweg.service.FindRecord;
import thalweg.service.LoadPhrases;
import thalweg.service.RunCascade;
import thalweg.settings.Settings;
import thalweg.tui.core.Canvas;
import thalweg.tui.core.Effect;
import thalweg.tui.core.Glyphs;
import thalweg.tui.core.Key;
import thalweg.tui.core.Message;
import thalweg.tui.core.Step;
import thalweg.tui.core.Surroundings;
import thalweg.units.UnitSystem;

/** A cascade on the rig screen: block after block until it is done, stopped, or about another rig. */
final class RigCascadeTest {

    static final Surroundings AROUND = new Surroundings(
            LoadPhrases.english(),
            UnitSystem.METRIC,
            LocalDate.parse("2026-11-25"),
            Glyphs.BRAILLE,
            false,
            "ada",
            Settings.standard(LoadPhrases.english()),
            24,
            80);

    private static RigScreen opened() {
        try (Walk walk = Walk.sample(24, 80)) {
            StationRecord porte =
                    new FindRecord(walk.session()).station("éclusaune/porte").station();
            RigScreen screen = RigScreen.of(new Go.Rig(porte, porte.anchors().get(0)));
            return (RigScreen) screen.update(new Message.Opened(), AROUND).screen();
        }
    }

    private static Step press(RigScreen screen, Key key) {
        return screen.bindings(AROUND).stream()
                .filter(binding -> binding.keys().contains(key))
                .findFirst()
                .orElseThrow()
                .action()
                .get();
    }

    /** What comes of the work that the step asks for. */
    private static Message done(Step step) {
        List<Effect> effects = step.effects();
        assertThat(effects).hasSize(1);
        Ask.NextTrials next = (Ask.NextTrials) effects.get(0);
        return new Told.CascadeRan(next.cascade(), RunCascade.next(next.cascade(), next.before()));
    }

    private static String text(Step step) {
        Canvas canvas = Canvas.of(24, 80);
        step.screen().draw(canvas, AROUND);
        return canvas.text().replaceAll("[│█\\s]+", " ");
    }

    @Test
    void itShowsHowFarItIsAndAsksForTheNextTrials() {
        Step begun = press(opened(), Key.of('c'));
        assertThat(text(begun)).contains("Cascade: 0 of 100000 trials done; c stops it.");

        Step after = begun.screen().update(done(begun), AROUND);

        assertThat(text(after)).contains("Cascade: 2000 of 100000 trials done", "never a promise");
        assertThat(after.effects()).hasSize(1);
    }

    @Test
    void whenItIsStoppedWhatWasCountedStaysAndNothingGoesOn() {
        Step begun = press(opened(), Key.of('c'));
        Step after = begun.screen().update(done(begun), AROUND);
        Message late = done(after);

        Step stopped = press((RigScreen) after.screen(), Key.of('c'));
        Step then = stopped.screen().update(late, AROUND);

        assertThat(text(then)).contains("Stopped after 2000 of 100000 trials.", "Cascade, 2000 trials, seed 1");
        assertThat(then.effects()).isEmpty();
    }

    @Test
    void aRigThatIsMovedMeanwhileIsNotTheOneThatWasTried() {
        Step begun = press(opened(), Key.of('c'));
        Step moved = press((RigScreen) begun.screen(), Key.of('l'));

        Step late = moved.screen().update(done(begun), AROUND);

        assertThat(text(late)).doesNotContain("Cascade");
        assertThat(late.effects()).isEmpty();
    }

    @Test
    void aCascadeThatRanBeforeIsNotTheOneThatRuns() {
        RigScreen screen = opened();
        Step begun = press(screen, Key.of('c'));
        Step again =
                press((RigScreen) press((RigScreen) begun.screen(), Key.of('c')).screen(), Key.of('c'));
        Cascade before = ((Ask.NextTrials) begun.effects().get(0)).cascade();

        Step late =
                again.screen().update(new Told.CascadeRan(before, before.next(CascadeOdds.begin(100_000, 1))), AROUND);

        assertThat(text(late)).contains("Cascade: 0 of 100000");
        assertThat(late.effects()).isEmpty();
    }

    @Test
    void aMistakeEndsItAndIsSaid() {
        Step begun = press(opened(), Key.of('c'));

        Step failed = begun.screen().update(new Message.Failed(begun.effects().get(0), "This did not work."), AROUND);

        assertThat(failed.notice().orElseThrow().text()).isEqualTo("This did not work.");
        assertThat(text(failed)).contains("Stopped after 0 of 100000 trials.");
    }

    @Test
    void itComesToAnEnd() {
        try (Walk walk = Walk.sample(40, 120, Glyphs.BRAILLE)) {
            walk.press(Key.Named.ENTER).press(Key.Named.DOWN, 2).press(Key.Named.ENTER);
            walk.type("r").type("c");

            assertThat(walk.screen().replaceAll("[│█\\s]+", " "))
                    .contains("Cascade, 100000 trials, seed 1")
                    .contains("0 of 100000, under 3/100000")
                    .doesNotContain("c stops it");
        }
    }
}
