package thalweg.tui.shell;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import thalweg.text.Fold;
import thalweg.text.Width;
import thalweg.tui.core.Binding;
import thalweg.tui.core.Canvas;
import thalweg.tui.core.Key;
import thalweg.tui.core.Message;
import thalweg.tui.core.Style;
import thalweg.tui.core.Surroundings;
import thalweg.tui.widget.FieldLine;
import thalweg.tui.widget.ListState;
import thalweg.tui.widget.Lists;
import thalweg.tui.widget.TextField;

/**
 * The list of everything the keys do here: it scrolls, it can be searched by typing, and what is chosen can be done.
 *
 * @param bindings of the screen and of the whole program
 * @param words that were typed to search
 * @param state which row is chosen
 */
record KeyList(List<Binding> bindings, TextField words, ListState state) {

    private static final int LONGEST = 40;

    /** Rows above the list: the words and an empty one. */
    private static final int HEAD = 2;

    static KeyList of(List<Binding> bindings) {
        return new KeyList(List.copyOf(bindings), TextField.of("", LONGEST), ListState.START);
    }

    /** The bindings that every typed word fits. */
    List<Binding> found() {
        List<String> asked = Fold.tokens(words.text());
        return bindings.stream()
                .filter(binding -> {
                    String text = Fold.fold(binding.label() + " " + keys(binding));
                    return asked.stream().allMatch(text::contains);
                })
                .toList();
    }

    /** The list after a key. */
    KeyList after(Key key, int page) {
        int size = found().size();
        Optional<ListState> moved = Lists.moved(state, key, size, page);
        return moved.map(to -> new KeyList(bindings, words, to))
                .orElseGet(() -> new KeyList(bindings, words.after(key), ListState.START));
    }

    /** The list after something else than a key. */
    KeyList told(Message message, Surroundings around) {
        if (message instanceof Message.Pasted pasted) {
            return new KeyList(bindings, words.inserted(pasted.text()), ListState.START);
        }
        if (message instanceof Message.Wheel wheel) {
            int size = found().size();
            ListState moved = state.moved(wheel.rows(), size).shownIn(page(around), size);
            return new KeyList(bindings, words, moved);
        }
        return this;
    }

    /** How many rows of the list are shown. */
    static int page(Surroundings around) {
        return Math.max(1, around.rows() - 2 - HEAD);
    }

    static String keys(Binding binding) {
        return binding.keys().stream().map(Key::print).collect(Collectors.joining(" "));
    }

    void draw(Canvas canvas, Surroundings around) {
        List<Binding> found = found();
        int keys = Math.min(
                found.stream().mapToInt(one -> Width.of(keys(one))).max().orElse(0), Math.max(6, canvas.columns() / 3));
        int at = canvas.put(0, 0, around.say("keys.search") + " ", Style.KEY);
        Canvas list = canvas.part(HEAD, 0, canvas.rows() - HEAD, canvas.columns());
        Lists.draw(list, state, found.size(), true, around, (line, index, style) -> {
            Binding binding = found.get(index);
            line.fit(0, 0, keys, keys(binding), style == Style.SELECTED ? style : Style.KEY);
            String label = binding.label()
                    + binding.refusal().map(why -> "  (" + why + ")").orElse("");
            boolean refused = binding.refusal().isPresent();
            line.fit(
                    0,
                    keys + 2,
                    line.columns() - keys - 2,
                    label,
                    refused && style == Style.NORMAL ? Style.FAINT : style);
        });
        if (found.isEmpty()) {
            list.put(0, 0, around.say("keys.none"), Style.FAINT);
        }
        FieldLine.draw(canvas.part(0, at, 1, canvas.columns() - at), words, true, Style.FOCUS);
    }
}
