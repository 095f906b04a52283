package thalweg.tui.shell;

import java.util.List;
import java.util.Optional;
import thalweg.tui.core.Binding;
import thalweg.tui.core.Key;
import thalweg.tui.core.Message;
import thalweg.tui.core.Screen;

/**
 * What keys do, whether they go to the whole interface, to a question, to the list of keys, or to the screen on top.
 *
 * @param shell as it is when the key is pressed
 */
record Pressed(Shell shell) {

    /** What the interface does upon the key. */
    Reaction by(Key key) {
        if (key.equals(Key.ctrl('c'))) {
            return new Reaction(shell, List.of(), Reaction.Order.QUIT);
        }
        if (key.equals(Key.ctrl('l'))) {
            return new Reaction(shell, List.of(), Reaction.Order.REPAINT);
        }
        if (key.equals(Key.ctrl('z'))) {
            return new Reaction(shell, List.of(), Reaction.Order.SUSPEND);
        }
        if (shell.tooSmall()) {
            return Shell.stay(shell);
        }
        if (shell.asking().isPresent()) {
            return answered(shell.asking().get(), key);
        }
        if (shell.keys().isPresent()) {
            return inKeyList(shell.keys().get(), key);
        }
        return onScreen(key);
    }

    private Reaction onScreen(Key key) {
        Screen screen = shell.top().screen();
        if (screen.writing() && key.writes()) {
            return screen.waiting() ? later(key) : shell.tell(shell.top(), new Message.KeyPressed(key));
        }
        for (Binding binding : shell.bindings()) {
            if (binding.keys().contains(key)) {
                return screen.waiting() && binding.refusal().isPresent() ? later(key) : shell.run(binding);
            }
        }
        Optional<Reaction> global = global(key);
        if (global.isPresent()) {
            return global.get();
        }
        return screen.waiting() ? later(key) : shell.tell(shell.top(), new Message.KeyPressed(key));
    }

    private Reaction later(Key key) {
        return Shell.stay(shell.cameAhead(new Message.KeyPressed(key)));
    }

    private Optional<Reaction> global(Key key) {
        return Globals.of(key).map(this::global);
    }

    private Reaction global(Globals global) {
        return switch (global) {
            case HELP -> {
                List<Binding> all = Globals.all(shell.top().screen(), shell.around());
                yield Shell.stay(shell.keys(Optional.of(KeyList.of(all))));
            }
            case UNITS ->
                Shell.stay(
                        shell.around(shell.around().with(shell.around().units().other())));
            case QUIT ->
                shell.unsaved().isLost(Shell.Asking.QUIT)
                        ? Shell.stay(shell.asking(Optional.of(Shell.Asking.QUIT)))
                        : new Reaction(shell, List.of(), Reaction.Order.QUIT);
        };
    }

    private Reaction answered(Shell.Asking question, Key key) {
        Shell silent = shell.asking(Optional.empty());
        boolean keeps = key.equals(Key.of('k')) && shell.unsaved().keeps(question);
        if (!key.equals(Key.of('d')) && !keeps) {
            return Shell.stay(silent);
        }
        if (question == Shell.Asking.BACK) {
            return silent.closed(keeps);
        }
        return keeps ? new Reaction(silent, List.of(), Reaction.Order.QUIT) : emptyHanded(silent);
    }

    /** Ends without the screens that have something unsaved, and drops what was kept of them. */
    private static Reaction emptyHanded(Shell shell) {
        List<Frame> rest = shell.unsaved().rest();
        Shell left = rest.isEmpty() ? shell : shell.frames(rest, shell.next());
        return new Reaction(left, shell.unsaved().drops(), Reaction.Order.QUIT);
    }

    private Reaction inKeyList(KeyList list, Key key) {
        Shell closed = shell.keys(Optional.empty());
        if (key.named() == Key.Named.ESCAPE || key.named() == Key.Named.F1) {
            return Shell.stay(closed);
        }
        if (key.named() == Key.Named.ENTER) {
            List<Binding> found = list.found();
            return found.isEmpty()
                    ? Shell.stay(closed)
                    : new Pressed(closed).chosen(found.get(Math.min(list.state().chosen(), found.size() - 1)));
        }
        return Shell.stay(shell.keys(Optional.of(list.after(key, KeyList.page(shell.around())))));
    }

    /** Does what was chosen from the list of keys, as it is now: the screen may have changed since the list opened. */
    private Reaction chosen(Binding listed) {
        Optional<Binding> own = shell.bindings().stream()
                .filter(binding -> binding.keys().equals(listed.keys()))
                .findFirst();
        return own.map(shell::run).or(() -> global(listed.keys().get(0))).orElseGet(() -> Shell.stay(shell));
    }
}
