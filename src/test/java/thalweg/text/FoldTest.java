package thalweg.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.text.Normalizer;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

final class FoldTest {

    /** Common practice of searching, from memory: how people type these names who lack the letters. */
    @ParameterizedTest
    @CsvSource({
        "Łomnica, lomnica",
        "Straße, strasse",
        "STRASSE, strasse",
        "STRAẞE, strasse",
        "Ёлка, елка",
        "Ångström, angstrom",
        "Ñandú, nandu",
        "İstanbul, istanbul",
        "ISPARTA, isparta",
        "Isparta, isparta",
        "Ilıca, ilica",
        "Ærøskøbing, aeroskobing",
        "Œuvre, oeuvre",
        "Đorđe, dorde",
        "Þórsmörk, thorsmork",
        "Seyðisfjörður, seydisfjordur",
        "Ħamrun, hamrun",
        "Ŧ, t",
        "Σχοινιά, σχοινια",
        "ΣΧΟΙΝΟΣ, σχοινοσ",
        "σχοινος, σχοινοσ",
        "ﬃ, ffi",
        "ＡＢ１, ab1",
        "m², m2",
        "½, 1/2",
        "Ⅳ, iv",
        "ſ, s",
        "Việt, viet",
        "Val d’Enfer, val d'enfer",
        "Puʻu, pu'u",
        "Nord–Süd, nord-sud",
        "שָׁלוֹם, שלום",
        "وَادِي, وادي",
        "が, が",
        "ｶﾞ, ガ",
        "계곡, 계곡",
        "沢, 沢",
        "नदी, नदी",
        "ที่, ที่"
    })
    void textIsComparedWithoutAccentsAndCase(String text, String folded) {
        assertThat(Fold.fold(text)).isEqualTo(folded);
        assertThat(Fold.fold(Normalizer.normalize(text, Normalizer.Form.NFD))).isEqualTo(folded);
        assertThat(Fold.fold(folded)).isEqualTo(folded);
    }

    /** Kana with and without voicing are different sounds, and so are Thai syllables with different vowels. */
    @ParameterizedTest
    @CsvSource({"が, か", "ガ, カ", "กิน, กน", "नदी, नद"})
    void signsThatMakeAnotherWordAreKept(String one, String other) {
        assertThat(Fold.fold(one)).isNotEqualTo(Fold.fold(other));
    }

    @Test
    void whiteSpaceAndWhatIsNotSeenDoNotCount() {
        assertThat(Fold.fold("\u3000Val \u00A0\t Grande\n")).isEqualTo("val grande");
        assertThat(Fold.fold("Val\u00ADley \u200Bof\u200D")).isEqualTo("valley of");
        assertThat(Fold.fold("")).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"tr-TR", "az-AZ", "lt-LT", "en-GB", "ar-EG"})
    void theLanguageOfThePersonMakesNoDifference(String language) {
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag(language));

            assertThat(Fold.fold("DİRİLİŞ I ı Ì Į́")).isEqualTo("dirilis i i i i");
            assertThat(Slug.of("IĞDIR İ", "7I")).isEqualTo("igdir-i-7i");
        } finally {
            Locale.setDefault(before);
        }
    }

    @Test
    void foldingTwiceIsFoldingOnce() {
        HostileText.all().forEach(text -> {
            String once = Fold.fold(text);
            assertThat(Fold.fold(once)).as(HostileText.spelled(text)).isEqualTo(once);
        });
    }

    @Test
    void everyCharacterFoldsToWhatStaysFolded() {
        for (int codePoint = 0; codePoint <= Character.MAX_CODE_POINT; codePoint++) {
            String once = Fold.fold(Character.toString(codePoint));
            if (!Fold.fold(once).equals(once)) {
                throw new AssertionError("U+" + Integer.toHexString(codePoint) + " folds to " + once);
            }
        }
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            Probe Ñandú       | probe nandu
            Val d'Enfer       | val d enfer
            R3 left/right_two | r3 left right two
            100%              | 100
            沢                | 沢
            赤沢              | 赤沢
            奥秩父            | 奥秩 秩父
            K2沢登り3         | k2 沢登 登り 3
            Gorge de 沢 Nord  | gorge de 沢 nord
            コーヒー          | コー ーヒ ヒー
            ｻﾜ              | サワ
            佐々木            | 佐々 々木
            계곡              | 계곡
            नदी घाटी          | नदी घाटी
            ที่น้ำตก           | ที่น้ําตก
            Ёлка-2            | елка 2
            ＡＢ　Ｃ           | ab c
            *) OR name:a      | or name a
            --                | ''
            ''                | ''
            """)
    void wordsAreLettersAndDigits(String text, String words) {
        assertThat(Fold.tokens(text))
                .containsExactlyElementsOf(words.isEmpty() ? List.of() : Arrays.asList(words.split(" ", -1)));
    }

    /** A run that is asked for is found inside a longer one, as its pairs are among the pairs of that. */
    @Test
    void aRunInsideALongerRunIsFound() {
        assertThat(Fold.tokens("奥秩父沢登り")).containsAll(Fold.tokens("秩父沢"));
    }

    /** As the first and the inner characters of a run begin a pair, and its last stands by itself. */
    @ParameterizedTest
    @CsvSource({
        "奥秩父, 奥",
        "奥秩父, 秩",
        "奥秩父, 父",
        "K2沢登り3, り",
        "沢, 沢",
        "コーヒー, ー",
        "계곡, 곡",
        "Val d'Enfer, enf",
        "वादी घाटी, घा",
        "Ёлка, ёл",
        "وَادِي, وا",
        "ILICA, ılı"
    })
    void everyWordThatIsAskedForBeginsAWordByWhichTheTextIsFound(String text, String words) {
        assertThat(Fold.tokens(words))
                .isNotEmpty()
                .allSatisfy(asked -> assertThat(Fold.indexed(text)).anyMatch(word -> word.startsWith(asked)));
    }

    @Test
    void aTextIsFoundByWhateverIsAskedOfItself() {
        HostileText.all()
                .forEach(text -> assertThat(Fold.indexed(text))
                        .as(HostileText.spelled(text))
                        .containsAll(Fold.tokens(text)));
        assertThat(Fold.indexed("奥秩父 x 沢")).containsExactly("奥秩", "秩父", "父", "x", "沢");
    }

    @Test
    void wordsHoldNothingThatAQueryCouldTakeForASign() {
        HostileText.all()
                .forEach(text -> assertThat(Fold.tokens(text))
                        .as(HostileText.spelled(text))
                        .allSatisfy(token -> assertThat(token.codePoints())
                                .isNotEmpty()
                                .allMatch(c -> Character.isLetterOrDigit(c) || Unwanted.isMark(c))));
    }

    @Test
    void wordsOfFoldedTextAreTheSameWords() {
        HostileText.all()
                .forEach(text -> assertThat(Fold.tokens(Fold.fold(text)))
                        .as(HostileText.spelled(text))
                        .isEqualTo(Fold.tokens(text)));
    }
}
