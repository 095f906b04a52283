package thalweg.sheet;

import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * A part of a sheet under a heading.
 *
 * @param id a name that no other section or picture of the sheet has, of letters, digits and hyphens
 * @param heading one line, not blank
 * @param blocks in order, before the inner sections; may be empty
 * @param sections inside this one, in order; may be empty
 */
public record Section(String id, String heading, List<Block> blocks, List<Section> sections) {

    private static final Pattern ID = Pattern.compile("[a-z][a-z0-9-]*");

    public Section {
        requireId(id);
        heading = Inert.line(heading);
        blocks = List.copyOf(blocks);
        sections = List.copyOf(sections);
        if (heading.isBlank()) {
            throw new IllegalArgumentException("a section has a heading");
        }
    }

    static void requireId(String id) {
        if (!ID.matcher(id).matches()) {
            throw new IllegalArgumentException("an id is made of letters, digits and hyphens: " + id);
        }
    }

    /** A section without inner ones. */
    public static Section of(String id, String heading, List<Block> blocks) {
        return new Section(id, heading, blocks, List.of());
    }

    /** The ids of this section, its pictures and everything inside. */
    Stream<String> ids() {
        Stream<String> pictures = blocks.stream()
                .flatMap(block -> block instanceof Block.Picture picture
                        ? Stream.of(picture.id())
                        : block instanceof Block.Code code ? Stream.of(code.id()) : Stream.empty());
        return Stream.of(Stream.of(id), pictures, sections.stream().flatMap(Section::ids))
                .flatMap(ids -> ids);
    }
}
