package org.benchmetre.budget.entry;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Takes a text: free, a label that formulas look up, a word of a list, or keys.
 *
 * @param subject the cell
 * @param form which texts it takes
 * @param blank what a blank cell means
 */
public record TextGate(Subject subject, TextForm form, Blank blank) {

    /**
     * Takes a text as typed.
     *
     * @param typed what was typed
     * @param whenBlank the documented default of the cell
     * @return the value, or the refusal
     */
    public Accepted accept(Typed typed, Given whenBlank) {
        if (typed.isBlank()) {
            return switch (blank) {
                case REFUSED -> Accepted.refused("nothing", expected());
                case NOTHING -> Accepted.value(Given.text(""));
                case DEFAULT -> Accepted.value(whenBlank);
            };
        }
        Given given = Given.text(kept(typed.text()));
        return form.isFit(given.text())
                ? Accepted.value(given)
                : Accepted.refused(Quoted.text(typed.text()), expected() + near(given.text()));
    }

    /** The text as the cell keeps it: words and keys in lower case, a name or label as the word it stands for, a unit as it is listed. */
    private String kept(String typed) {
        String text = typed.strip().replace("\r\n", "\n").replace('\r', '\n');
        if (form.isUnit()) {
            return UnitWord.kept(text, form.words());
        }
        if (!form.isFolded()) {
            return text;
        }
        String folded = text.toLowerCase(Locale.ROOT);
        if (form.kind() == TextForm.Kind.KEYS) {
            return Arrays.stream(folded.split("[\\s\\p{Zs}]+")).distinct().collect(Collectors.joining(" "));
        }
        int named = Math.max(Folding.indexOf(form.names(), text), Folding.indexOf(form.labels(), text));
        return named >= 0 && !form.words().contains(folded) ? form.words().get(named) : folded;
    }

    /**
     * Looks at a text that is there already.
     *
     * @param given the value
     * @return the refusal, or empty when the cell takes it
     */
    public Optional<Refusal> refusal(Given given) {
        String text = given.text();
        if (given.filled() && text.isEmpty()) {
            return refused(Numbers.plain(given.typed()));
        }
        if (text.isEmpty()) {
            return blank == Blank.REFUSED ? Optional.of(new Refusal("nothing", expected())) : Optional.empty();
        }
        return form.isFit(text) ? Optional.empty() : refused(text);
    }

    private Optional<Refusal> refused(String text) {
        return Optional.of(new Refusal(Quoted.text(text), expected() + near(text)));
    }

    private String near(String text) {
        List<String> known = form.shown();
        String question = known.isEmpty()
                ? ""
                : form.isUnit() ? UnitWord.didYouMean(text, known) : NearNames.didYouMean(text, known);
        return question.isEmpty() ? "" : "; " + question;
    }

    private String expected() {
        return form.expected() + subject.name();
    }
}
