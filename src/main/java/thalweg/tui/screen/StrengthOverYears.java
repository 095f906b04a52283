package thalweg.tui.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import thalweg.due.ExpectedStrength;
import thalweg.logbook.PartRecord;
import thalweg.rig.AgeShare;
import thalweg.rig.StrengthFactor;
import thalweg.tui.core.Glyphs;
import thalweg.tui.core.Style;
import thalweg.tui.core.Surroundings;
import thalweg.tui.widget.Paragraph;
import thalweg.units.Force;

/** What may be expected of the strength of a textile part, now and over the years: a bar a year, and words. */
final class StrengthOverYears {

    /** So long is the strength of a new one [cells]. */
    private static final int FULL = 20;

    private StrengthOverYears() {}

    /** Nothing for a part that is not textile. */
    static List<Paragraph> of(PartRecord part, Surroundings around) {
        List<Paragraph> text = new ArrayList<>();
        ExpectedStrength.of(part.part(), part.replacedSince(), around.today()).ifPresent(expected -> {
            text.add(Paragraph.gap());
            text.add(Paragraph.of(around.say("strength.title"), Style.STRONG));
            text.add(Paragraph.of(now(expected, part, around), Style.MIND));
            expected.later().forEach(year -> text.add(bar(year, expected, around)));
            text.add(Paragraph.of(around.caution("strength.note"), Style.CAUTION));
        });
        return text;
    }

    private static String now(ExpectedStrength expected, PartRecord part, Surroundings around) {
        if (expected.fibre().isEmpty()) {
            return around.say("strength.no_fibre");
        }
        if (expected.now().isEmpty()) {
            return around.say("strength.no_age");
        }
        AgeShare share = expected.now().get();
        Optional<StrengthFactor> factor = share.factor();
        if (factor.isEmpty()) {
            return around.say("strength.unknown_now", share.saying());
        }
        String band = band(factor.get(), around);
        return part.part()
                .strength()
                .map(rated -> around.say(
                        "strength.now_of",
                        band,
                        times(rated, factor.get().low()).print(around.units()),
                        times(rated, factor.get().high()).print(around.units()),
                        share.saying()))
                .orElseGet(() -> around.say("strength.now", band, share.saying()));
    }

    private static Force times(Force rated, double share) {
        return Force.kilonewtons(rated.inKilonewtons() * share);
    }

    private static String band(StrengthFactor factor, Surroundings around) {
        return around.say("strength.band", percent(factor.low()), percent(factor.high()));
    }

    private static String percent(double share) {
        return String.format(Locale.ROOT, "%.0f %%", 100 * share);
    }

    /** The sure part whole, the uncertain part broken; the year that is running is marked. */
    private static Paragraph bar(ExpectedStrength.AfterYears year, ExpectedStrength expected, Surroundings around) {
        boolean running = expected.years().isPresent() && (int) expected.years().getAsDouble() == year.years();
        String mark = running ? ">" : " ";
        String years = mark + String.format(Locale.ROOT, "%2d ", year.years());
        String bar = year.share()
                .factor()
                .map(factor -> cells(factor, around) + " " + band(factor, around))
                .orElse(around.say("unknown"));
        return Paragraph.of(years + bar, running ? Style.STRONG : Style.NORMAL);
    }

    private static String cells(StrengthFactor factor, Surroundings around) {
        boolean ascii = around.glyphs() == Glyphs.ASCII;
        int sure = (int) Math.floor(FULL * factor.low());
        int perhaps = (int) Math.ceil(FULL * factor.high()) - sure;
        int rest = FULL - sure - perhaps;
        return (ascii ? "#" : "\u2588").repeat(sure)
                + (ascii ? ":" : "\u2592").repeat(perhaps)
                + (ascii ? "." : "\u00b7").repeat(rest);
    }
}
