package org.benchmetre.farm.feed;

import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.number;
import static org.benchmetre.budget.Formulas.or;
import static org.benchmetre.budget.Formulas.text;
import static org.benchmetre.budget.Formulas.when;
import static org.benchmetre.farm.feed.FeedUnits.CHARGE;
import static org.benchmetre.farm.feed.FeedUnits.MEQ_PER_LITRE;
import static org.benchmetre.farm.feed.FeedUnits.MG_PER_LITRE;
import static org.benchmetre.farm.feed.FeedUnits.MMOL_PER_LITRE;
import static org.benchmetre.farm.feed.FeedUnits.MOLAR_MASS;

import java.util.Optional;
import java.util.function.Function;
import org.benchmetre.budget.Axis;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Element;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.Rows;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.farm.input.Sheets;

/**
 * Every ion of the feed: what is asked for, what water, acid and salts bring, and the difference. Sodium, chloride and the
 * bicarbonate that is left are not asked for, so that what the water leaves of them stands in place of a target.
 */
final class IonTable {

    /** Tag of ions with positive charge. */
    static final String CATION = "cation";
    /** Tag of ions with negative charge. */
    static final String ANION = "anion";

    /** One row for each ion. */
    final Axis axis;
    /** Cation or anion. */
    final Line kind;
    /** Charge of what is asked for, meq/L, without sign. */
    final Line targetCharge;
    /** Charge of what is supplied, meq/L, without sign. */
    final Line suppliedCharge;

    /** The table, for those who add to it. */
    final ScheduleBuilder schedule;
    /** What is supplied, mmol/L. */
    final Line supplied;
    /** Charges of an ion, meq/mmol, without sign. */
    final Line charge;

    private final FeedTables tables;
    private final Line difference;

    IonTable(BudgetBuilder b, FeedTables tables, Recipe recipe, RawWater water, Acid acid, SaltAmounts salts) {
        this.tables = tables;
        axis = Axis.rows("ion", "Ion", tables.ionKeys(), 0);
        ScheduleBuilder s = b.schedule(Sheets.OPERATIONS, "Ions of the nutrient solution");
        schedule = s;
        s.note("Nitrate and ammonium weigh as nitrogen, phosphate as phosphorus, sulphate as sulphur.");
        Line label =
                s.textLine("ion_label", "Ion", rows(ion -> text(tables.of(ion).label())));
        b.nameRows(axis, label);
        kind = s.textLine("ion_kind", "Kind", rows(ion -> text(tables.of(ion).charge() > 0 ? CATION : ANION)));
        Line fromWater = concentration(s, "ion_from_water", "From raw water", rows(ion -> orNone(water.brings(ion))));
        Line fromAcid = concentration(s, "ion_from_acid", "From acid", rows(ion -> byAcid(acid, ion)));
        Line fromSalts = concentration(
                s,
                "ion_from_salts",
                "From salts",
                rows(ion -> orNone(salts.brings(ion))),
                "ions in a formula unit of each salt: its chemical formula");
        Line target = concentration(s, "ion_target", "Asked for", rows(ion -> asked(recipe, fromWater, fromAcid, ion)));
        supplied = concentration(
                s, "ion_supplied", "Supplied", fromWater.plus(fromAcid).plus(fromSalts));
        difference = concentration(
                s,
                "ion_difference",
                "Supplied less asked for",
                beyondRounding(target),
                "less than a millionth counts as none");
        Line mass = s.line(
                "ion_molar_mass",
                "Molar mass",
                MOLAR_MASS,
                rows(ion -> number(tables.of(ion).molarMass(), MOLAR_MASS)),
                ChemicalElement.SOURCE);
        s.line(
                "ion_mass",
                "Supplied, by mass",
                MG_PER_LITRE,
                supplied.times(mass).in(MG_PER_LITRE));
        charge = s.line(
                "ion_charge",
                "Charge",
                CHARGE,
                rows(ion -> number(Math.abs(tables.of(ion).charge()), CHARGE)),
                "at pH 5 to 6.5, where phosphate is H2PO4: plain chemistry, from memory");
        targetCharge = s.line("ion_target_charge", "Charge asked for", MEQ_PER_LITRE, target.times(charge));
        suppliedCharge = s.line("ion_supplied_charge", "Charge supplied", MEQ_PER_LITRE, supplied.times(charge));
    }

    /** What is supplied of an ion beyond what is asked for, mmol/L; negative when it falls short. */
    Formula difference(Ion ion) {
        return new Element(difference, axis, axis.indexOf(ion.key()));
    }

    /** What is supplied of an ion, mmol/L. */
    Formula supplied(Ion ion) {
        return new Element(supplied, axis, axis.indexOf(ion.key()));
    }

    /** What is supplied less what is asked for, where they differ by more than a millionth. */
    private Formula beyondRounding(Line target) {
        return when(
                or(supplied.exceeds(target), target.exceeds(supplied)), supplied.minus(target), none(MMOL_PER_LITRE));
    }

    private static Line concentration(ScheduleBuilder s, String id, String label, Formula formula) {
        return concentration(s, id, label, formula, "");
    }

    private static Line concentration(ScheduleBuilder s, String id, String label, Formula formula, String source) {
        return s.line(id, label, MMOL_PER_LITRE, formula, source);
    }

    /** A formula for each ion. */
    Formula rows(Function<Ion, Formula> formula) {
        return new Rows(axis, tables.ions().keySet().stream().map(formula).toList());
    }

    private static Formula byAcid(Acid acid, Ion ion) {
        return ion == Ion.BICARBONATE ? none(MMOL_PER_LITRE).minus(acid.neutralised) : orNone(acid.brings(ion));
    }

    private static Formula orNone(Optional<Formula> amount) {
        return amount.orElse(none(MMOL_PER_LITRE));
    }

    private Formula asked(Recipe recipe, Line fromWater, Line fromAcid, Ion ion) {
        Line line = recipe.target.get(ion);
        return line != null
                ? line
                : new Element(fromWater, axis, axis.indexOf(ion.key()))
                        .plus(new Element(fromAcid, axis, axis.indexOf(ion.key())));
    }
}
