package thalweg.tui.shell;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import thalweg.draft.Draft;
import thalweg.tui.core.Screen;
import thalweg.tui.core.Surroundings;
import thalweg.tui.screen.Keep;

/**
 * What was entered on the screens and is not saved.
 *
 * @param frames the screens, the one on top last
 * @param around what every screen sees
 */
record Unsaved(List<Frame> frames, Surroundings around) {

    private Frame top() {
        return frames.get(frames.size() - 1);
    }

    private List<Screen> screens(Shell.Asking question) {
        return frames.stream()
                .filter(frame -> question == Shell.Asking.QUIT || frame.number() == top().number())
                .map(Frame::screen)
                .filter(Screen::unsaved)
                .toList();
    }

    /** Whether what the question is about would lose something. */
    boolean isLost(Shell.Asking question) {
        return !screens(question).isEmpty();
    }

    /** Whether all of that can be kept as drafts. */
    boolean keeps(Shell.Asking question) {
        return screens(question).stream()
                .allMatch(screen -> screen.draft(around).isPresent());
    }

    /** The screens on which nothing would be lost. */
    List<Frame> rest() {
        return frames.stream().filter(frame -> !frame.screen().unsaved()).toList();
    }

    /** The work that drops what was kept of the others. */
    List<Work> drops() {
        return frames.stream()
                .filter(frame -> frame.screen().unsaved())
                .flatMap(frame -> frame.screen().draft(around).stream()
                        .map(draft -> new Work(frame.number(), new Keep.Drop(draft.key()))))
                .toList();
    }

    /**
     * The work that keeps or drops what was entered on the screen on top.
     *
     * @param keeps whether it is kept
     */
    List<Work> closing(boolean keeps) {
        return draft(frames.size() - 1).stream()
                .map(draft -> new Work(top().number(), keeps ? new Keep.Hold(draft) : new Keep.Drop(draft.key())))
                .toList();
    }

    /** The work that keeps what was entered on the screen on top, as far as it can still be asked. */
    List<Work> held() {
        try {
            return top().guarded(() -> closing(true));
        } catch (ScreenFailure nothingMoreToBeHad) {
            return List.of();
        }
    }

    /** Everything that can be kept. */
    List<Draft> drafts() {
        return IntStream.range(0, frames.size())
                .boxed()
                .flatMap(at -> draft(at).stream())
                .toList();
    }

    /** The draft of the screen at that place, with where it was opened; everything is opened from the first screen. */
    private Optional<Draft> draft(int at) {
        Optional<Draft> draft = frames.get(at).screen().draft(around);
        return at < 2
                ? draft
                : draft.map(known -> known.from(frames.get(at - 1).screen().title(around)));
    }
}
