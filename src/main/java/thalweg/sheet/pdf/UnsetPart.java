package thalweg.sheet.pdf;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.stream.Collectors;
import thalweg.sheet.Block;
import thalweg.sheet.Section;
import thalweg.sheet.Sheet;
import thalweg.sheet.Tone;
import thalweg.sheet.Words;
import thalweg.text.Phrases;

/** The end of a sheet that says what could not be set, so that nobody takes an empty box for what was written. */
final class UnsetPart {

    private static final String ID = "not-set";

    private UnsetPart() {}

    /**
     * The sheet with that end.
     *
     * @param missing how often each code point was replaced, not empty
     */
    static Sheet added(Sheet sheet, SortedMap<Integer, Integer> missing, Phrases phrases) {
        String all = missing.entrySet().stream().map(one -> named(one, phrases)).collect(Collectors.joining("; "));
        List<Block> blocks = List.of(
                new Block.Paragraph(Words.of(phrases.say("sheet.unset.why", Setting.STAND_IN), Tone.CAUTION)),
                new Block.Paragraph(Words.of(all)));
        List<Section> sections = new ArrayList<>(sheet.sections());
        sections.add(Section.of(ID, phrases.say("sheet.unset"), blocks));
        return new Sheet(sheet.language(), sheet.title(), sheet.head(), sections, sheet.colon(), sheet.footer());
    }

    private static String named(Map.Entry<Integer, Integer> one, Phrases phrases) {
        String code = String.format(Locale.ROOT, "U+%04X", one.getKey());
        String name = Optional.ofNullable(Character.getName(one.getKey())).orElse("?");
        return phrases.say("sheet.unset.one", code, name, one.getValue());
    }
}
