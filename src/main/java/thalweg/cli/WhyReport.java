package thalweg.cli;

import java.util.List;
import java.util.Optional;
import thalweg.rig.RigStudy;
import thalweg.settings.Settings;
import thalweg.text.Phrases;
import thalweg.text.Width;
import thalweg.units.UnitSystem;
import thalweg.why.ExplainRig;
import thalweg.why.Figure;
import thalweg.why.Question;

/** Why every figure of a rig is what it is, as text for a terminal. */
final class WhyReport {

    private static final int WIDTH = 90;
    private static final int MARGIN = 3;

    private final Phrases phrases;
    private final UnitSystem units;
    private final Settings settings;

    WhyReport(Phrases phrases, UnitSystem units, Settings settings) {
        this.phrases = phrases;
        this.units = units;
        this.settings = settings;
    }

    String of(RigStudy study) {
        StringBuilder out = new StringBuilder();
        out.append(phrases.say("why.title")).append('\n');
        Optional<Figure.Topic> topic = Optional.empty();
        for (Figure figure : ExplainRig.of(Question.of(study, settings.loads()), phrases, units)) {
            if (!topic.equals(Optional.of(figure.topic()))) {
                topic = Optional.of(figure.topic());
                String title = figure.topic().title(phrases);
                out.append('\n')
                        .append(title)
                        .append('\n')
                        .append("-".repeat(Width.of(title)))
                        .append('\n');
            }
            lines(out, 0, phrases.labelled(figure.label(), figure.value()));
            figure.lines(phrases).forEach(line -> lines(out, MARGIN, line.text()));
        }
        return out.toString();
    }

    private static void lines(StringBuilder out, int margin, String text) {
        List<String> lines = Width.wrap(text, WIDTH - margin);
        lines.forEach(line -> out.append(" ".repeat(margin)).append(line).append('\n'));
    }
}
