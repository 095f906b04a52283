package thalweg.service;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import thalweg.due.Due;
import thalweg.due.DueCount;
import thalweg.due.DuePart;
import thalweg.due.DueReason;
import thalweg.due.DueRules;
import thalweg.due.FoundDue;
import thalweg.ledger.Uid;
import thalweg.logbook.CanyonFilter;
import thalweg.logbook.PartFinding;
import thalweg.logbook.PartRow;
import thalweg.route.PartKind;
import thalweg.settings.DueFigure;
import thalweg.settings.Settings;

/** What the database hands out as perhaps due, against every part and the rules alone. */
class ListDueTest {

    private static final List<String> KINDS = List.of("bolt", "webbing", "cord", "quick_link", "sling", "chain");
    private static final List<String> FOUND = List.of("sound", "sound", "sound", "worn", "doubtful", "unsafe", "gone");
    private static final List<String> EXPOSURES =
            List.of("", "", "\"exposure\": \"wet\", ", "\"exposure\": \"marine\", ");

    private final Session session = Session.inMemory(Desk.CLOCK, "ada");
    private final Random random = new Random(17);

    @AfterEach
    void close() {
        session.close();
    }

    /** Near the days on which the rules turn: whole months ago, some days more or less; sometimes a month or year only. */
    private String date() {
        String day = session.today()
                .minusMonths(random.nextInt(50))
                .plusDays(random.nextInt(9) - 4)
                .toString();
        int shape = random.nextInt(5);
        String shown = shape == 0 ? day.substring(0, 4) : shape == 1 ? day.substring(0, 7) : day;
        return LocalDate.parse(day).isAfter(session.today()) ? session.today().toString() : shown;
    }

    private <T> T oneOf(List<T> values) {
        return values.get(random.nextInt(values.size()));
    }

    private String part(int number) {
        StringBuilder part = new StringBuilder("{\"label\": \"p" + number + "\", \"kind\": \"" + oneOf(KINDS) + "\"");
        if (random.nextInt(3) > 0) {
            part.append(", \"placed\": \"").append(date()).append('"');
        }
        List<String> inspections = new ArrayList<>();
        for (int i = random.nextInt(4); i > 0; i--) {
            String work = random.nextInt(4) == 0 ? ", \"work\": [\"replaced\"], \"left\": \"sound\"" : "";
            inspections.add("{\"on\": \"" + date() + "\", \"found\": \"" + oneOf(FOUND) + "\"" + work + "}");
        }
        return part + ", \"inspections\": [" + String.join(", ", inspections) + "]}";
    }

    private void fill(int canyons) {
        List<String> all = new ArrayList<>();
        for (int canyon = 0; canyon < canyons; canyon++) {
            List<String> parts = new ArrayList<>();
            for (int i = 0; i < 6; i++) {
                parts.add(part(i));
            }
            all.add("{\"name\": \"C" + random.nextInt(1000) + "\", \"line\": [{\"kind\": \"drop\", \"stations\": [{"
                    + oneOf(EXPOSURES) + "\"name\": \"S\", \"anchors\": [{\"role\": \"main\", \"parts\": ["
                    + String.join(", ", parts) + "]}]}]}]}");
        }
        accept(all);
    }

    private void accept(List<String> all) {
        String text =
                "{\"format\": \"thalweg records\", \"version\": 1, \"canyons\": [" + String.join(", ", all) + "]}";
        ImportRecords records = new ImportRecords(session);
        records.accept(
                records.preview("probe", text.getBytes(StandardCharsets.UTF_8)).plan());
    }

    /** Every part by the rules, in the order of the list of parts; then by urgency. */
    private List<DuePart> byTheRules(Settings settings, int days, boolean unknown) {
        DueRules rules = new DueRules(settings, session.today());
        List<DuePart> found = new ArrayList<>();
        for (PartRow row : session.parts().parts(PartFinding.ALL, Integer.MAX_VALUE)) {
            List<Due> all = rules.of(row.part(), row.state(), row.replacedSince(), row.exposure());
            List<Due> now = all.stream()
                    .filter(one -> one.isDueWithin(session.today(), days))
                    .toList();
            List<Due> undated = all.stream()
                    .filter(one -> one.reason() == DueReason.AGE_UNKNOWN)
                    .toList();
            if (!unknown && !now.isEmpty()) {
                found.add(new DuePart(row, now));
            } else if (unknown && now.isEmpty() && !undated.isEmpty()) {
                found.add(new DuePart(row, undated));
            }
        }
        found.sort((one, other) -> Due.BY_URGENCY.compare(one.first(), other.first()));
        return found;
    }

    private static List<Uid> uids(List<DuePart> parts) {
        return parts.stream().map(part -> part.row().part().uid()).toList();
    }

    @Test
    void nothingThatIsDueIsMissedAndTheOrderIsTheSame() {
        fill(60);
        List<Settings> all = List.of(
                new Settings(List.of()),
                new Settings(List.of()).withDue(Map.of(DueFigure.EXAMINED, 1, DueFigure.TEXTILE, 7)),
                new Settings(List.of()).withDue(Map.of(DueFigure.MARINE, 40, DueFigure.WET, 2)));
        for (Settings settings : all) {
            for (int days : new int[] {0, 1, 28, 31, 92, 366}) {
                FoundDue found = new ListDue(session, settings).within(PartFinding.ALL, CanyonFilter.NONE, days);

                assertThat(uids(found.parts())).isEqualTo(uids(byTheRules(settings, days, false)));
                assertThat(uids(found.unknownAge()))
                        .containsExactlyInAnyOrderElementsOf(uids(byTheRules(settings, days, true)));
            }
        }
        assertThat(byTheRules(all.get(0), 0, false)).hasSizeBetween(50, 355);
    }

    /** The last days of January are one day of February: those seen on them are due together, along the lines. */
    @Test
    void whatTheMonthEndsBringTogetherStandsAlongTheLines() {
        List<String> all = new ArrayList<>();
        String[] days = {"2026-01-31", "2026-01-29", "2026-01-30", "2026-01-28"};
        for (int i = 0; i < days.length; i++) {
            all.add("{\"name\": \"C" + i + "\", \"line\": [{\"kind\": \"drop\", \"stations\": [{\"name\": \"S\","
                    + " \"anchors\": [{\"role\": \"main\", \"parts\": [{\"label\": \"p\", \"kind\": \"bolt\","
                    + " \"inspections\": [{\"on\": \"" + days[i] + "\", \"found\": \"doubtful\"}]}]}]}]}]}");
        }
        accept(all);

        FoundDue found = new ListDue(session, new Settings(List.of())).within(PartFinding.ALL, CanyonFilter.NONE, 0);

        assertThat(found.parts()).extracting(part -> part.row().canyonName()).containsExactly("C0", "C1", "C2", "C3");
    }

    @Test
    void oneAfterTheOtherTheyAreTheSame() {
        fill(40);
        for (int days : new int[] {0, 92}) {
            ListDue list = new ListDue(session, new Settings(List.of()));
            FoundDue whole = list.within(PartFinding.ALL, CanyonFilter.NONE, days);
            List<DuePart> due = new ArrayList<>();
            List<DuePart> unknown = new ArrayList<>();

            DueCount counted = list.each(PartFinding.ALL, CanyonFilter.NONE, days, due::add, unknown::add)
                    .orElseThrow();

            assertThat(due).isEqualTo(whole.parts());
            assertThat(unknown).isEqualTo(whole.unknownAge());
            assertThat(counted).isEqualTo(new DueCount(due.size(), unknown.size()));
            assertThat(list.count(days)).isEqualTo(counted);
            assertThat(whole.count()).contains(counted);
            List<DuePart> bolts = new ArrayList<>();
            list.each(PartFinding.of("bolt"), CanyonFilter.NONE, days, bolts::add, unknown::add);
            assertThat(uids(bolts))
                    .isEqualTo(uids(whole.parts().stream()
                            .filter(part -> part.row().part().kind() == PartKind.BOLT)
                            .toList()));
        }
    }

    @Test
    void theMostUrgentAreListedAndAllAreCounted() {
        fill(20);
        ListDue list = new ListDue(session, new Settings(List.of()));
        FoundDue whole = list.within(PartFinding.ALL, CanyonFilter.NONE, 0);
        FoundDue some = list.within(PartFinding.ALL, CanyonFilter.NONE, 0, 7);

        assertThat(uids(some.parts())).isEqualTo(uids(whole.parts()).subList(0, 7));
        assertThat(some.unknownAge()).isEmpty();
        assertThat(some.count()).isEmpty();
        assertThat(list.count(0))
                .isEqualTo(new DueCount(whole.parts().size(), whole.unknownAge().size()));
    }

    @Test
    void oneCanyonAndWordsNarrowItDownAndSayWhetherAnythingFits() {
        fill(5);
        ListDue list = new ListDue(session, new Settings(List.of()));
        DuePart one = list.within(PartFinding.ALL, CanyonFilter.NONE, 0).parts().get(0);

        assertThat(list.within(PartFinding.ALL, one.row().canyon(), 0, 100).parts())
                .isNotEmpty()
                .allMatch(part -> part.row().canyon().equals(one.row().canyon()));
        assertThat(list.within(PartFinding.of("p0"), one.row().canyon(), 0, 100).parts())
                .allMatch(part -> part.row().part().label().equals("p0"));
        assertThat(list.within(PartFinding.of("nowhere"), CanyonFilter.NONE, 0).fits())
                .isFalse();
        assertThat(list.within(PartFinding.of("p0"), CanyonFilter.NONE, 0).fits())
                .isTrue();
    }
}
