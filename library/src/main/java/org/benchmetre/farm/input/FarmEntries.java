package org.benchmetre.farm.input;

import org.benchmetre.budget.Entry;
import org.benchmetre.budget.EntryBuilder;
import org.benchmetre.budget.FormulaException;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.entry.Blank;
import org.benchmetre.budget.entry.Given;
import org.benchmetre.budget.entry.Home;
import org.benchmetre.budget.entry.Plausible;
import org.benchmetre.budget.entry.TextForm;
import org.benchmetre.farm.profile.CropProfile;
import org.benchmetre.farm.profile.Documented;

/** Single-valued entries: kept as rows of {@code farm.csv}, with the documented default where a scenario says nothing. */
public final class FarmEntries {

    private final CropProfile profile;

    /**
     * Takes defaults from a profile.
     *
     * @param profile what is documented of the crop
     */
    public FarmEntries(CropProfile profile) {
        this.profile = profile;
    }

    /**
     * What is documented of the crop.
     *
     * @return the profile that defaults come from
     */
    public CropProfile profile() {
        return profile;
    }

    /**
     * Adds an entry.
     *
     * @param builder the entry, all but its home
     * @return the line
     * @throws FormulaException when it must be filled and has no documented default
     */
    public Line add(EntryBuilder builder) {
        profile.entry(builder.id()).ifPresent(known -> document(builder, known));
        Entry entry = builder.entry();
        boolean mayBeBlank = builder.isText() && entry.form().equals(TextForm.FREE);
        builder.keptAt(Home.single(builder.id(), "value")).whenBlank(mayBeBlank ? Blank.NOTHING : Blank.REFUSED);
        double usual = entry.plausible().typical();
        if (builder.unit().hasMoney() && !profile.moneyHolds()) {
            builder.usually(new Plausible(Double.NaN, usual, Double.NaN), entry.source());
        }
        boolean isKnown = builder.isText() ? mayBeBlank || !entry.source().isEmpty() : !Double.isNaN(usual);
        if (!isKnown) {
            throw new FormulaException(
                    "Entry " + builder.id() + " has no documented default in the profile of " + profile.name() + ".");
        }
        Given value = builder.isText() ? Given.text(entry.usualText()) : Given.number(usual, builder.unit());
        return builder.given(value.from(entry.source()));
    }

    private static void document(EntryBuilder builder, Documented known) {
        if (builder.isText()) {
            builder.usually(known.typical(), known.source());
        } else {
            builder.usually(known.in(builder.unit()), known.source());
        }
    }
}
