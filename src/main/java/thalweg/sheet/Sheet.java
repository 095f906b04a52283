package thalweg.sheet;

import java.util.List;

/**
 * What a group takes along about one canyon; every output renders this and nothing else, so that they cannot disagree.
 *
 * @param language of its words, as a BCP 47 tag
 * @param title the name of the canyon, one line, not blank
 * @param head what comes before the first section: what this is, how old, and what to beware of
 * @param sections in order, their ids unique
 * @param colon what stands between a name and what is said of it, with its spaces
 * @param footer by which every page can be told from those of another sheet, one line, not blank
 */
public record Sheet(
        String language, String title, List<Block> head, List<Section> sections, String colon, String footer) {

    public Sheet {
        title = Inert.line(title);
        footer = Inert.line(footer);
        head = List.copyOf(head);
        sections = List.copyOf(sections);
        if (title.isBlank() || footer.isBlank()) {
            throw new IllegalArgumentException("a sheet says what it is about");
        }
        List<String> ids = sections.stream().flatMap(Section::ids).toList();
        if (ids.stream().distinct().count() < ids.size()) {
            throw new IllegalArgumentException("two sections or pictures have the same id");
        }
    }
}
