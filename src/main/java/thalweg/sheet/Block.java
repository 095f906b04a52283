package thalweg.sheet;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import thalweg.drawing.Drawing;

/** One element of a section. */
public sealed interface Block {

    /** One function per kind, so that the compiler finds every place a new kind must reach (Java 17). */
    <R> R match(
            Function<Paragraph, R> onParagraph,
            Function<Notice, R> onNotice,
            Function<Facts, R> onFacts,
            Function<Table, R> onTable,
            Function<Picture, R> onPicture,
            Function<Blanks, R> onBlanks,
            Function<Code, R> onCode);

    /**
     * Running text.
     *
     * @param words what it says
     */
    record Paragraph(Words words) implements Block {

        @Override
        public <R> R match(
                Function<Paragraph, R> onParagraph,
                Function<Notice, R> onNotice,
                Function<Facts, R> onFacts,
                Function<Table, R> onTable,
                Function<Picture, R> onPicture,
                Function<Blanks, R> onBlanks,
                Function<Code, R> onCode) {
            return onParagraph.apply(this);
        }
    }

    /**
     * What must be read before what follows.
     *
     * @param heading in a word or two, one line, not blank
     * @param lines one thing each, not empty
     */
    record Notice(String heading, List<Words> lines) implements Block {

        public Notice {
            heading = Inert.line(heading);
            lines = List.copyOf(lines);
            if (heading.isBlank() || lines.isEmpty()) {
                throw new IllegalArgumentException("a notice says something");
            }
        }

        @Override
        public <R> R match(
                Function<Paragraph, R> onParagraph,
                Function<Notice, R> onNotice,
                Function<Facts, R> onFacts,
                Function<Table, R> onTable,
                Function<Picture, R> onPicture,
                Function<Blanks, R> onBlanks,
                Function<Code, R> onCode) {
            return onNotice.apply(this);
        }
    }

    /**
     * Things with their names.
     *
     * @param facts in order, not empty
     */
    record Facts(List<Fact> facts) implements Block {

        public Facts {
            facts = List.copyOf(facts);
            if (facts.isEmpty()) {
                throw new IllegalArgumentException("an empty list of facts is left out");
            }
        }

        @Override
        public <R> R match(
                Function<Paragraph, R> onParagraph,
                Function<Notice, R> onNotice,
                Function<Facts, R> onFacts,
                Function<Table, R> onTable,
                Function<Picture, R> onPicture,
                Function<Blanks, R> onBlanks,
                Function<Code, R> onCode) {
            return onFacts.apply(this);
        }
    }

    /**
     * Things of one kind, one a row.
     *
     * @param caption what they are, one line, not blank
     * @param columns their headings, one line each, not blank; the first column names the row
     * @param rows one cell a column each; not empty
     */
    record Table(String caption, List<String> columns, List<List<Cell>> rows) implements Block {

        public Table {
            caption = Inert.line(caption);
            columns = columns.stream().map(Inert::line).toList();
            rows = rows.stream().map(List::copyOf).toList();
            int width = columns.size();
            boolean unnamed = caption.isBlank() || columns.stream().anyMatch(String::isBlank);
            if (unnamed || rows.isEmpty() || width == 0 || rows.stream().anyMatch(row -> row.size() != width)) {
                throw new IllegalArgumentException("a table has a caption, columns, and rows that fit them");
            }
        }

        @Override
        public <R> R match(
                Function<Paragraph, R> onParagraph,
                Function<Notice, R> onNotice,
                Function<Facts, R> onFacts,
                Function<Table, R> onTable,
                Function<Picture, R> onPicture,
                Function<Blanks, R> onBlanks,
                Function<Code, R> onCode) {
            return onTable.apply(this);
        }
    }

    /**
     * A drawing.
     *
     * @param id a name that no other picture or section of the sheet has, of letters, digits and hyphens
     * @param caption what it shows, one line, not blank
     * @param drawing the picture, with a description in words; narrow enough for a phone
     * @param wide the same for paper and wide screens; empty where it is that one
     * @param plain the same in lines of text, for outputs without pictures; empty where the description says all
     * @param legend what whoever sees the picture has to know; empty where that is its description
     */
    record Picture(
            String id,
            String caption,
            Drawing drawing,
            Optional<Drawing> wide,
            List<String> plain,
            Optional<String> legend)
            implements Block {

        public Picture {
            Section.requireId(id);
            caption = Inert.line(caption);
            plain = plain.stream().map(Inert::line).toList();
            legend = legend.map(Inert::line);
            if (caption.isBlank()) {
                throw new IllegalArgumentException("a picture has a caption");
            }
        }

        /** One picture for every output. */
        public Picture(String id, String caption, Drawing drawing) {
            this(id, caption, drawing, Optional.empty(), List.of());
        }

        /** One whose description is for everybody. */
        public Picture(String id, String caption, Drawing drawing, Optional<Drawing> wide, List<String> plain) {
            this(id, caption, drawing, wide, plain, Optional.empty());
        }

        @Override
        public <R> R match(
                Function<Paragraph, R> onParagraph,
                Function<Notice, R> onNotice,
                Function<Facts, R> onFacts,
                Function<Table, R> onTable,
                Function<Picture, R> onPicture,
                Function<Blanks, R> onBlanks,
                Function<Code, R> onCode) {
            return onPicture.apply(this);
        }
    }

    /**
     * Lines that the reader fills in by hand.
     *
     * @param labels what goes there, one line each, not empty
     */
    record Blanks(List<String> labels) implements Block {

        public Blanks {
            labels = labels.stream().map(Inert::line).toList();
            if (labels.isEmpty()) {
                throw new IllegalArgumentException("there is something to fill in");
            }
        }

        @Override
        public <R> R match(
                Function<Paragraph, R> onParagraph,
                Function<Notice, R> onNotice,
                Function<Facts, R> onFacts,
                Function<Table, R> onTable,
                Function<Picture, R> onPicture,
                Function<Blanks, R> onBlanks,
                Function<Code, R> onCode) {
            return onBlanks.apply(this);
        }
    }

    /**
     * An address as a mark that a camera reads; where nothing can be drawn, the address itself.
     *
     * @param id a name that no other picture or section of the sheet has, of letters, digits and hyphens
     * @param caption what it leads to, one line, not blank
     * @param address of a place
     */
    record Code(String id, String caption, String address) implements Block {

        public Code {
            Section.requireId(id);
            caption = Inert.line(caption);
            if (caption.isBlank() || !address.startsWith("geo:")) {
                throw new IllegalArgumentException("a code leads to a place and says to which");
            }
        }

        @Override
        public <R> R match(
                Function<Paragraph, R> onParagraph,
                Function<Notice, R> onNotice,
                Function<Facts, R> onFacts,
                Function<Table, R> onTable,
                Function<Picture, R> onPicture,
                Function<Blanks, R> onBlanks,
                Function<Code, R> onCode) {
            return onCode.apply(this);
        }
    }
}
