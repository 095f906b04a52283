package thalweg.timeline;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import java.util.UUID;
import thalweg.ledger.Uid;
import thalweg.logbook.Condition;
import thalweg.logbook.Entry;
import thalweg.logbook.Inspection;
import thalweg.logbook.PartRecord;
import thalweg.logbook.Work;
import thalweg.route.Part;
import thalweg.route.PartKind;
import thalweg.route.PartialDate;

/** Invented parts written down as lines of text. */
final class PartsOverYears {

    private static int counter;

    private PartsOverYears() {}

    /**
     * A part with what was found on it.
     *
     * @param placed a date, or empty text where it is unknown
     * @param looks each a date and what was found, and perhaps how it was left, with spaces between: {@code 2019 worn sound};
     *     "unseen" stands for a part that was not seen, "replaced" as the last word for work
     */
    static PartRecord of(String label, String placed, String... looks) {
        Part part = new Part(
                uid(),
                uid(),
                "V",
                label,
                PartKind.BOLT,
                Part.Hardware.UNKNOWN,
                Optional.of(placed).filter(date -> !date.isEmpty()).map(PartialDate::parse),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                "");
        List<Entry<Inspection>> entries =
                Arrays.stream(looks).map(look -> entry(part.uid(), look)).toList();
        return PartRecord.of(part, entries);
    }

    private static Entry<Inspection> entry(Uid part, String look) {
        List<String> words = new ArrayList<>(List.of(look.split(" ")));
        boolean replaced = words.remove("replaced");
        PartialDate on = PartialDate.parse(words.get(0));
        Inspection inspection = new Inspection(
                part,
                on,
                "",
                condition(words.get(1)),
                words.size() > 2 ? condition(words.get(2)) : Optional.empty(),
                Optional.empty(),
                replaced ? List.of(Work.REPLACED) : List.of(),
                "");
        return new Entry<>(uid(), inspection, "keeper", "2026-06-01T10:00:00Z");
    }

    private static Optional<Condition> condition(String word) {
        return word.equals("unseen") ? Optional.empty() : Optional.of(Condition.valueOf(word.toUpperCase(Locale.ROOT)));
    }

    /** Any part, looked at up to 20 times between 1990 and 2026, on days, in months, in years. */
    static PartRecord random(long seed) {
        Random random = new Random(seed);
        List<String> looks = new ArrayList<>();
        for (int look = random.nextInt(20); look > 0; look--) {
            String date = Integer.toString(1990 + random.nextInt(37));
            date += random.nextInt(5) == 0 ? "" : String.format(Locale.ROOT, "-%02d", 1 + random.nextInt(12));
            date += date.length() < 5 || random.nextInt(4) == 0
                    ? ""
                    : String.format(Locale.ROOT, "-%02d", 1 + random.nextInt(28));
            String found = word(random);
            boolean worked = random.nextInt(4) == 0 && !found.equals("unseen");
            looks.add(date + " " + found + (worked ? " sound" : "")
                    + (worked && random.nextBoolean() ? " replaced" : ""));
        }
        String placed = random.nextBoolean() ? "" : Integer.toString(1960 + random.nextInt(60));
        return of("part " + seed, placed, looks.toArray(new String[0]));
    }

    private static String word(Random random) {
        List<String> words = List.of("sound", "sound", "worn", "doubtful", "unsafe", "gone", "unseen");
        return words.get(random.nextInt(words.size()));
    }

    private static Uid uid() {
        counter++;
        return Uid.minted(counter, new UUID(0, counter));
    }
}
