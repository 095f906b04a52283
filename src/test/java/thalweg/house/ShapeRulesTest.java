package thalweg.house;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The rules for the shape of a file, tried on sources that break them on purpose. */
class ShapeRulesTest {

    private static final String FILE = "src/main/java/thalweg/route/Sample.java";

    @ParameterizedTest
    @ValueSource(
            strings = {
                "class Sample {}\nclass Second {}",
                "class Sample {\n class RouteManager {} }",
                "class Sample {\n interface RouteUtil {} }",
                "class Sample {\n record RouteUtils() {} }",
                "class Sample {\n enum LengthHelper { A } }",
                "class Sample {\n class RouteImpl {} }",
                "class Sample {\n int getHeight() { return 1; } }",
                "class Sample {\n @Disabled void claim() {} }",
                "class Sample {\n @org.junit.jupiter.api.Disabled void claim() {} }",
                "class Sample {\n @SuppressWarnings(\"unused\") int i; }",
                "class Sample {\n String s = \"select id from canyon\"; }",
                "class Sample {\n String s = \"\"\"\n  select id\n    from canyon\n  \"\"\"; }",
                "class Sample {\n String s = \"INSERT OR REPLACE INTO canyon values (1)\"; }",
                "class Sample {\n String s = \"pragma user_version\"; }",
                "class Sample {\n String s = \"create table canyon (id)\"; }",
            })
    void aBreachIsFoundOnItsLine(String text) {
        assertThat(ShapeRules.findings(JavaSource.of(FILE, text)))
                .singleElement()
                .asString()
                .startsWith(FILE + ":2: ");
    }

    @ParameterizedTest
    @ValueSource(strings = {"TO_DO", "FIX_ME", "XX_X"})
    void unfinishedWorkIsFoundInComments(String mark) {
        String text = "class Sample {\n // " + mark.replace("_", "") + " later\n}";

        assertThat(ShapeRules.findings(JavaSource.of(FILE, text)))
                .singleElement()
                .asString()
                .startsWith(FILE + ":2: ");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "class Sample { @Override public String getText() { return \"\"; } }",
                "class Sample { int gettingThere() { return 1; } }",
                "class Sample {\n // The library gives no type here.\n @SuppressWarnings(\"unchecked\") int i; }",
                "class Sample { String s = \"Select a canyon from the list\"; }",
                "class Sample { String s = \"update the list\"; }",
                "class Sample { Runnable r = new Runnable() { public void run() {} }; }",
                "class Sample { class Manager {} }",
            })
    void goodFilesPass(String text) {
        assertThat(ShapeRules.findings(JavaSource.of(FILE, text))).isEmpty();
    }

    @Test
    void storageMaySaySql() {
        String text = "class Sample { String s = \"select id from canyon\"; }";

        assertThat(ShapeRules.findings(JavaSource.of("src/main/java/thalweg/storage/Sample.java", text)))
                .isEmpty();
    }

    @Test
    void oneLineTooManyIsFound() {
        String longest = "class Sample {\n" + "\n".repeat(ShapeRules.LONGEST_FILE - 2) + "}\n";

        assertThat(ShapeRules.findings(JavaSource.of(FILE, longest))).isEmpty();
        assertThat(ShapeRules.findings(JavaSource.of(FILE, longest + "\n")))
                .singleElement()
                .asString()
                .startsWith(FILE + ":401: ");
    }
}
