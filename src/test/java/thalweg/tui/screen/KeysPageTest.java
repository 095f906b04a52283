package thalweg.tui.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import thalweg.progress.Progress;
import thalweg.testing.GoldenFile;
import thalweg.tui.core.Binding;
import thalweg.tui.core.Effect;
import thalweg.tui.core.Key;
import thalweg.tui.core.Message;
import thalweg.tui.core.Screen;
import thalweg.tui.core.Step;
import thalweg.tui.core.Surroundings;
import thalweg.tui.runtime.RunAsk;
import thalweg.tui.shell.KeysEverywhere;

/** Writes the page of keys from the bindings of every screen, as each opens on the sample data. */
final class KeysPageTest {

    /** What a screen is called, where it is no form; the order is that of the page. */
    private static final Map<Class<? extends Screen>, String> NAMES = names();

    private static final String HEAD = """
            # Keys

            What each key does on each screen, as the list says that `?` opens. The screens open as they do on the sample data, with
            their first row chosen: what a key does may depend on the row, and one that can do nothing there says why.

            This page is written by a test from what the screens themselves say: `mvn -B -ntp test -Dtest=KeysPageTest` holds it,
            with `-Dgolden.update=true` it writes it anew.
            """;

    private static Map<Class<? extends Screen>, String> names() {
        Map<Class<? extends Screen>, String> names = new LinkedHashMap<>();
        names.put(CanyonsScreen.class, "Canyons");
        names.put(CanyonScreen.class, "A canyon");
        names.put(ProfileScreen.class, "The profile of a canyon");
        names.put(StationScreen.class, "A station");
        names.put(PartScreen.class, "A part");
        names.put(TimelineScreen.class, "Parts over the years");
        names.put(StationsScreen.class, "Stations of all canyons");
        names.put(PartsScreen.class, "Parts of all canyons");
        names.put(DueScreen.class, "What is due");
        names.put(RigScreen.class, "The rig of an anchor");
        names.put(CompareScreen.class, "Layouts side by side");
        names.put(WhyScreen.class, "Why a figure is what it is");
        names.put(RoundsScreen.class, "Rounds in a canyon");
        names.put(TripsScreen.class, "Trips");
        names.put(TripScreen.class, "A trip");
        names.put(GivenScreen.class, "Sheets written");
        names.put(ChangesScreen.class, "Changes");
        names.put(MoveScreen.class, "Where to move something");
        names.put(PlacingScreen.class, "Waypoints from a file");
        names.put(TakeInScreen.class, "Records to take in");
        names.put(BackUpScreen.class, "A backup copy");
        names.put(DraftsScreen.class, "Drafts");
        names.put(ReadScreen.class, "A text to read");
        return names;
    }

    @Test
    void everyScreenIsOnThePageOfKeys() {
        try (Walk walk = Walk.sample(24, 80)) {
            Map<String, List<String>> tables = new LinkedHashMap<>();
            NAMES.values().forEach(name -> tables.put("## " + name, List.of()));
            Map<List<String>, List<String>> forms = new LinkedHashMap<>();
            for (Go place : PlacesTest.places(walk)) {
                Screen screen = loaded(place, walk);
                List<String> rows = rows(screen.bindings(walk.around()));
                assertThat(rows).as("%s", place.getClass()).isNotEmpty();
                String name = NAMES.get(screen.getClass());
                if (name != null) {
                    tables.put("## " + name, rows);
                } else {
                    assertThat(screen).isInstanceOf(FormScreen.class);
                    forms.computeIfAbsent(rows, unseen -> new ArrayList<>()).add(screen.title(walk.around()));
                }
            }

            StringBuilder page = new StringBuilder(HEAD);
            Screen first = CanyonsScreen.opened();
            table(page, "## On every screen", rows(KeysEverywhere.of(first, walk.around())));
            tables.forEach((heading, rows) -> {
                assertThat(rows).as(heading).isNotEmpty();
                table(page, heading, rows);
            });
            forms.forEach((rows, titles) -> {
                page.append("\n## Forms, such as\n\n");
                titles.stream()
                        .distinct()
                        .forEach(title -> page.append("- ").append(title).append('\n'));
                table(page, rows);
            });
            GoldenFile.holdsDocument("keys.md", page.toString());
        }
    }

    private static void table(StringBuilder page, String heading, List<String> rows) {
        page.append('\n').append(heading).append('\n');
        table(page, rows);
    }

    private static void table(StringBuilder page, List<String> rows) {
        page.append("\n| key | what it does |\n| --- | --- |\n");
        rows.forEach(row -> page.append(row).append('\n'));
    }

    private static List<String> rows(List<Binding> bindings) {
        return bindings.stream()
                .map(binding -> "| "
                        + binding.keys().stream().map(KeysPageTest::shown).collect(Collectors.joining(" or "))
                        + " | " + binding.label() + " |")
                .toList();
    }

    private static String shown(Key key) {
        return "`" + key.print().replace("|", "\\|") + "`";
    }

    /** The screen of a place once everything that it asks for has come. */
    private static Screen loaded(Go place, Walk walk) {
        RunAsk runner = new RunAsk(walk.session(), "1.2.3");
        Surroundings around = walk.around();
        Screen screen = Screens.of(place);
        Deque<Message> messages = new ArrayDeque<>(List.of(new Message.Opened()));
        while (!messages.isEmpty()) {
            Step step = screen.update(messages.removeFirst(), around);
            screen = step.screen();
            for (Effect effect : step.effects()) {
                if (!(effect instanceof Keep)) {
                    messages.add(runner.run(effect, Progress.UNWATCHED));
                }
            }
        }
        return screen;
    }
}
