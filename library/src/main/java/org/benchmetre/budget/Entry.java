package org.benchmetre.budget;

import java.io.Serializable;
import java.util.List;
import java.util.Optional;
import org.benchmetre.budget.entry.Accepted;
import org.benchmetre.budget.entry.Blank;
import org.benchmetre.budget.entry.Bounds;
import org.benchmetre.budget.entry.EvidenceKind;
import org.benchmetre.budget.entry.Given;
import org.benchmetre.budget.entry.Home;
import org.benchmetre.budget.entry.Meaning;
import org.benchmetre.budget.entry.NumberGate;
import org.benchmetre.budget.entry.Origin;
import org.benchmetre.budget.entry.Plausible;
import org.benchmetre.budget.entry.Refusal;
import org.benchmetre.budget.entry.Subject;
import org.benchmetre.budget.entry.TextForm;
import org.benchmetre.budget.entry.TextGate;
import org.benchmetre.budget.entry.Typed;
import org.benchmetre.budget.entry.Usual;

/**
 * What may stand in an entry's cells, what it is, and where files keep it. {@link #accept} is the only way in.
 *
 * @param bounds hard bounds of a number
 * @param usual documented default and usual range
 * @param form which texts it takes
 * @param home where files keep it
 * @param blank what a blank cell means
 * @param meaning what it is
 */
public record Entry(Bounds bounds, Usual usual, TextForm form, Home home, Blank blank, Meaning meaning)
        implements Serializable {

    /** An entry that takes anything. */
    static final Entry ANY =
            new Entry(Bounds.ANY, Usual.UNKNOWN, TextForm.FREE, Home.NONE, Blank.NOTHING, Meaning.PLAIN);

    Entry within(Bounds other) {
        return new Entry(other, usual, form, home, blank, meaning);
    }

    Entry usually(Usual other) {
        return new Entry(bounds, other, form, home, blank, meaning);
    }

    Entry among(TextForm other) {
        return new Entry(bounds, usual, other, home, blank, meaning);
    }

    Entry keptAt(Home other) {
        return new Entry(bounds, usual, form, other, blank, meaning);
    }

    Entry whenBlank(Blank other) {
        return new Entry(bounds, usual, form, home, other, meaning);
    }

    Entry meaning(Meaning other) {
        return new Entry(bounds, usual, form, home, blank, other);
    }

    /**
     * The usual range and default of a number.
     *
     * @return unknown when nothing is documented
     */
    public Plausible plausible() {
        return usual.range();
    }

    /**
     * The documented default of a text.
     *
     * @return empty when there is none
     */
    public String usualText() {
        return usual.text();
    }

    /**
     * Where range and default come from.
     *
     * @return a published source, or the words <i>common practice, no source</i>
     */
    public String source() {
        return usual.source();
    }

    /**
     * Where the value of a cell comes from: its own source, else that of the documented default.
     *
     * @param given the value
     * @return the words, empty where an entry of one's own has none
     */
    public String sourceOf(Given given) {
        boolean isDefault = given.origin().equals(Origin.DEFAULT);
        return given.source().isEmpty() && isDefault ? source() : given.source();
    }

    /**
     * How far the value of a cell can be trusted. A change for this run says nothing of where it comes from.
     *
     * @param given the value
     * @return the kind of its source
     */
    public EvidenceKind evidence(Given given) {
        boolean isChange = given.origin() instanceof Origin.Setting;
        return isChange ? EvidenceKind.UNSAID : EvidenceKind.of(sourceOf(given));
    }

    /**
     * The words a text may be.
     *
     * @return empty when any text is allowed, or keys of a table
     */
    public List<String> allowed() {
        return form.words();
    }

    /**
     * Takes what somebody typed, or says why not. Whoever comes is heard alike: files, settings, price lists, calls from Java. Keys of
     * another table are compared with that table when all is known, by {@link Gate#lay}.
     *
     * @param subject the cell it is meant for
     * @param kind number or text
     * @param typed what was typed
     * @param whenBlank the documented default of the cell
     * @return the value, or the refusal
     */
    public Accepted accept(Subject subject, Kind kind, Typed typed, Given whenBlank) {
        if (kind == Kind.TEXT) {
            return new TextGate(subject, form, blank).accept(typed, whenBlank);
        }
        return new NumberGate(subject, bounds, blank).accept(typed, whenBlank);
    }

    /**
     * Looks at a value that was made in Java.
     *
     * @param subject the cell it is meant for
     * @param kind number or text
     * @param given the value
     * @return the refusal, or empty when the cell takes it
     */
    public Optional<Refusal> refusal(Subject subject, Kind kind, Given given) {
        if (kind == Kind.TEXT) {
            return new TextGate(subject, form, blank).refusal(given);
        }
        return new NumberGate(subject, bounds, blank).refusal(given);
    }
}
