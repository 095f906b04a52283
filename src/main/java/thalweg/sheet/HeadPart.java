package thalweg.sheet;

import java.util.ArrayList;
import java.util.List;
import thalweg.logbook.CanyonRecord;
import thalweg.logbook.PartRecord;
import thalweg.logbook.StationRecord;

/** What a sheet says before anything else: what it is about, how old its news is, and what to beware of. */
final class HeadPart {

    private final Wording wording;

    HeadPart(Wording wording) {
        this.wording = wording;
    }

    /**
     * The head.
     *
     * @param record as it is shown
     * @param places of the whole line
     */
    List<Block> of(CanyonRecord record, int places) {
        List<Block> head = new ArrayList<>();
        if (record.canyon().invented()) {
            head.add(new Block.Notice(wording.say("sheet.invented"), List.of(wording.toned(Tone.CAUTION, "invented"))));
        }
        if (wording.options().contents().privateNotes()) {
            head.add(new Block.Notice(
                    wording.say("sheet.private"), List.of(wording.toned(Tone.CAUTION, "sheet.private.why"))));
        }
        List<Fact> facts = facts(record);
        new ChoiceWords(wording).facts(places).forEach(facts::add);
        head.add(new Block.Facts(facts));
        head.add(new Block.Notice(
                wording.say("sheet.cautions"),
                List.of(
                        wording.caution("caution.aid"),
                        wording.caution("caution.record"),
                        wording.caution("caution.unknown"))));
        return head;
    }

    private List<Fact> facts(CanyonRecord record) {
        List<Fact> facts = new ArrayList<>();
        if (!record.canyon().otherNames().isEmpty()) {
            facts.add(wording.fact(
                    "sheet.other_names",
                    Words.of(String.join(", ", record.canyon().otherNames()))));
        }
        facts.add(wording.fact("sheet.where", wording.orUnknown(record.canyon().whereabouts())));
        facts.add(wording.fact("sheet.as_of", Words.of(wording.options().asOf().toString())));
        wording.options()
                .number()
                .ifPresent(number ->
                        facts.add(wording.fact("sheet.number", wording.words("sheet.number.of", number.print()))));
        Words never = wording.toned(Tone.UNKNOWN, "sheet.none_on_record");
        facts.add(wording.fact("sheet.newest", wording.ago(record.newestInspection(), never)));
        facts.add(wording.fact("sheet.oldest", wording.ago(record.oldestLastSeen(), never)));
        facts.add(wording.fact("sheet.never", neverSeen(record)));
        return facts;
    }

    /** A part that was looked for in vain counts apart: nobody knows its condition, but somebody was there. */
    private List<Words> neverSeen(CanyonRecord record) {
        List<PartRecord> parts = record.stations().stream()
                .map(StationRecord::parts)
                .flatMap(List::stream)
                .toList();
        if (parts.isEmpty()) {
            return List.of(wording.toned(Tone.UNKNOWN, "sheet.never.no_parts"));
        }
        long never = parts.stream().filter(part -> part.state().entries() == 0).count();
        long sought = record.standing().neverSeen() - never;
        List<Words> lines = new ArrayList<>();
        lines.add(count("sheet.never.count", never, parts.size()));
        if (sought > 0) {
            lines.add(count("sheet.never.sought", sought, parts.size()));
        }
        return lines;
    }

    private Words count(String key, long some, long all) {
        Tone tone = some > 0 ? Tone.UNKNOWN : Tone.PLAIN;
        return wording.toned(tone, key, Long.toString(some), Long.toString(all));
    }
}
