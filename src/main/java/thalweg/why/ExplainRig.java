package thalweg.why;

import java.util.ArrayList;
import java.util.List;
import thalweg.rig.RigAnswer;
import thalweg.text.Phrases;
import thalweg.units.UnitSystem;

/** Explains every figure that is shown of a rig, in the order in which they are shown. */
public final class ExplainRig {

    private ExplainRig() {}

    /** The figures, each explained. */
    public static List<Figure> of(Question question, Phrases phrases, UnitSystem units) {
        RigAnswer answer = question.study().answer();
        Words words = new Words(phrases, units, question.loads());
        Grounds grounds = new Grounds(answer.input(), question.starts(), words);
        ExplainChecks checks = new ExplainChecks(answer, grounds, words);
        List<Figure> figures = new ArrayList<>();
        figures.addAll(new ExplainInput(answer, grounds, words).figures());
        figures.addAll(new ExplainRest(answer, question.swung(), grounds, words).figures());
        figures.addAll(new ExplainSlings(answer, grounds, words).figures());
        figures.addAll(new ExplainRedirect(answer, grounds, words).figures());
        figures.addAll(new ExplainLosses(answer, grounds, words).figures());
        figures.addAll(checks.letters());
        figures.addAll(new ExplainStrength(answer, grounds, words).figures());
        figures.add(checks.material());
        figures.addAll(new ExplainStudies(answer, grounds, words).figures(question.study()));
        return figures;
    }
}
