package thalweg.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import thalweg.route.AmericanGrade;
import thalweg.route.FrenchGrade;

/** Both gradings in their notation and in words; what a grade leaves out is said to be left out. */
final class GradeWords {

    private final Wording wording;

    GradeWords(Wording wording) {
        this.wording = wording;
    }

    List<Words> french(Optional<FrenchGrade> grade) {
        return grade.map(this::french).orElseGet(() -> List.of(wording.unknown()));
    }

    private List<Words> french(FrenchGrade grade) {
        List<String> meaning = new ArrayList<>();
        List<Words> missing = new ArrayList<>();
        meaning.add(wording.say("grade.french.v." + grade.vertical()));
        meaning.add(wording.say("grade.french.a." + grade.aquatic()));
        grade.commitment()
                .ifPresentOrElse(
                        level -> meaning.add(wording.say("grade.french.commitment." + level)),
                        () -> missing.add(wording.toned(Tone.UNKNOWN, "sheet.commitment.unknown")));
        return lines(grade.print(), meaning, missing);
    }

    List<Words> american(Optional<AmericanGrade> grade) {
        return grade.map(this::american).orElseGet(() -> List.of(wording.unknown()));
    }

    private List<Words> american(AmericanGrade grade) {
        List<String> meaning = new ArrayList<>();
        List<Words> missing = new ArrayList<>();
        meaning.add(wording.say("grade.american.class." + grade.technical()));
        meaning.add(wording.of("grade.american.water", grade.water()));
        grade.time()
                .ifPresentOrElse(
                        level -> meaning.add(wording.say("grade.american.time." + level)),
                        () -> missing.add(wording.toned(Tone.UNKNOWN, "sheet.time.unknown")));
        grade.risk()
                .ifPresentOrElse(
                        risk -> meaning.add(wording.of("grade.american.risk", risk)),
                        () -> missing.add(wording.toned(Tone.UNKNOWN, "sheet.risk.unknown")));
        return lines(grade.print(), meaning, missing);
    }

    private static List<Words> lines(String notation, List<String> meaning, List<Words> missing) {
        List<Words> lines = new ArrayList<>();
        lines.add(Words.of(notation));
        lines.add(Words.of(String.join("; ", meaning)));
        lines.addAll(missing);
        return lines;
    }
}
