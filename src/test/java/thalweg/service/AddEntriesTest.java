package thalweg.service;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

final class AddEntriesTest {

    private static String note(String at, String words) {
        return """
                {"on": "2026-06-14", "technique": "%s", "author": "ada", "at": "%s"}""".formatted(words, at);
    }

    @Test
    void ofOneDayTheEntryThatWasWrittenLastComesFirst() {
        try (Desk desk = new Desk()) {
            String records = """
                    {"format": "thalweg records", "version": 1, "canyons": [
                     {"uid": "%s", "name": "Probe", "invented": true,
                     "line": [{"uid": "%s", "kind": "drop", "height_cm": 1800, "stations": [
                      {"uid": "%s", "name": "first", "rigging_notes": [%s, %s, %s]}]}]}]}
                    """.formatted(
                            desk.canyon().canyon().uid().text(),
                            desk.canyon().line().get(0).obstacle().uid().text(),
                            desk.station().station().uid().text(),
                            note("2026-06-14T10:00:00Z", "first"),
                            note("2026-06-14T18:00:00Z", "third"),
                            note("2026-06-14T12:00:00Z", "second"));
            ImportRecords imports = new ImportRecords(desk.session());
            imports.accept(imports.preview("notes", records.getBytes(StandardCharsets.UTF_8))
                    .plan());

            assertThat(desk.station().notes())
                    .extracting(entry ->
                            String.join("", entry.content().prose().texts().values()))
                    .containsExactly("third", "second", "first");
        }
    }
}
