package org.benchmetre.farm.feed;

import static org.benchmetre.budget.Formulas.greater;
import static org.benchmetre.budget.Formulas.lookup;
import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.number;
import static org.benchmetre.budget.Formulas.text;
import static org.benchmetre.budget.Formulas.when;
import static org.benchmetre.farm.feed.FeedUnits.ACID_PER_VOLUME;
import static org.benchmetre.farm.feed.FeedUnits.MMOL_PER_LITRE;
import static org.benchmetre.farm.feed.FeedUnits.MOLAR_MASS;
import static org.benchmetre.farm.feed.FeedUnits.MONEY_PER_VOLUME;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import java.util.Optional;
import java.util.function.Function;
import org.benchmetre.budget.Axis;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Element;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.Rows;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.entry.Meaning;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.input.FarmEntries;
import org.benchmetre.farm.input.Sheets;

/**
 * Acid for alkalinity: each proton turns one bicarbonate into carbon dioxide. What the acid leaves behind (nitrate, phosphate or
 * sulphate) counts towards the recipe. All three acids are reckoned, the one chosen is counted.
 *
 * <pre>
 * N = max(0, B - L)     x = N / p     V = x M / (w d)
 * B  alkalinity of the raw water, mmol/L     L  alkalinity to be left, mmol/L     N  taken out, mmol/L
 * x  dose, mmol/L    p  protons a molecule gives up    M  molar mass, g/mol    w  strength, share by mass    d  density, kg/L
 * V  acid as sold, mL/m3
 * </pre>
 *
 * Plain chemistry.
 */
final class Acid {

    private static final Unit DENSITY = Unit.parse("kg/L");
    private static final Unit PRICE = Unit.parse("money/L");

    /** Alkalinity that is taken out, mmol/L. */
    final Line neutralised;
    /** Cost of the acid chosen, money/m3. */
    final Line cost;

    private final FeedTables tables;
    private final Axis axis;
    private final Line choice;
    private final Line dose;

    Acid(BudgetBuilder b, FarmEntries entries, FeedTables tables, Line alkalinity) {
        this.tables = tables;
        axis = Axis.rows("acid", "Acid", tables.acidKeys(), 0);
        ScheduleBuilder s = b.schedule(Sheets.OPERATIONS, "Acid for alkalinity");
        s.note(
                "Strength, density and price of each acid are those of the drum. Leave some alkalinity: without any, pH falls away.");
        choice = entries.add(s.textEntry("acid_choice", "Acid").oneOf(tables.acidKeys()));
        Line left = entries.add(s.entry("alkalinity_left", "Alkalinity to be left", MMOL_PER_LITRE)
                .from(0, 100));
        neutralised = s.line(
                "alkalinity_neutralised",
                "Alkalinity taken out",
                MMOL_PER_LITRE,
                greater(none(MMOL_PER_LITRE), alkalinity.minus(left)),
                "plain chemistry: a proton turns one bicarbonate into carbon dioxide");
        ScheduleBuilder t = b.schedule(Sheets.OPERATIONS, "Acids side by side");
        Line label = t.textLine("acid_label", "Acid", rows(acid -> text(acid.label())));
        Line key = t.textLine("acid_key", "Key", rows(acid -> text(acid.key())));
        b.nameRows(axis, label);
        Line strength = t.line("acid_strength", "Strength by mass", ONE, rows(acid -> strength(s, entries, acid)));
        Line density = t.line("acid_density", "Density", DENSITY, rows(acid -> density(s, entries, acid)));
        Line price = t.line("acid_price", "Price", PRICE, rows(acid -> price(s, entries, acid)));
        Line mass = t.line(
                "acid_molar_mass",
                "Molar mass",
                MOLAR_MASS,
                rows(acid -> number(acid.molarMass(), MOLAR_MASS)),
                ChemicalElement.SOURCE);
        Line protons = t.line(
                "acid_protons",
                "Protons given up by each molecule",
                ONE,
                rows(acid -> number(acid.protons(), ONE)),
                "given up below pH 6.5: plain chemistry, from memory");
        dose = t.line(
                "acid_dose",
                "Dose",
                MMOL_PER_LITRE,
                neutralised.over(protons),
                "a proton for each bicarbonate: plain chemistry");
        Line volume = t.line(
                "acid_volume",
                "Acid as sold",
                ACID_PER_VOLUME,
                dose.times(mass).over(strength).over(density).in(ACID_PER_VOLUME),
                "dose times molar mass over strength and density: plain chemistry");
        Line costs = t.line(
                "acid_cost", "Cost", MONEY_PER_VOLUME, volume.times(price).in(MONEY_PER_VOLUME));
        s.line("acid_volume_chosen", "Acid as sold", ACID_PER_VOLUME, lookup(volume, key, choice));
        cost = s.line("feed_acid_cost_per_volume", "Cost of acid", MONEY_PER_VOLUME, lookup(costs, key, choice));
    }

    /** What the acid chosen leaves of an ion, mmol/L; empty for an ion that no acid leaves. */
    Optional<Formula> brings(Ion ion) {
        return tables.acids().stream()
                .filter(acid -> acid.brings() == ion)
                .map(acid -> when(
                        choice.is(acid.key()), new Element(dose, axis, axis.indexOf(acid.key())), none(MMOL_PER_LITRE)))
                .findFirst();
    }

    private Formula rows(Function<AcidKind, Formula> formula) {
        return new Rows(axis, tables.acids().stream().map(formula).toList());
    }

    private static Line strength(ScheduleBuilder s, FarmEntries entries, AcidKind acid) {
        return entries.add(s.entry(acid.key() + "_acid_strength", acid.label() + ", strength by mass", ONE)
                .above(0.01, 1));
    }

    private static Line density(ScheduleBuilder s, FarmEntries entries, AcidKind acid) {
        return entries.add(s.entry(acid.key() + "_acid_density", acid.label() + ", density", DENSITY)
                .from(1, 2));
    }

    private static Line price(ScheduleBuilder s, FarmEntries entries, AcidKind acid) {
        return entries.add(s.entry(acid.key() + "_acid_price", acid.label() + ", price", PRICE)
                .from(0, 1_000_000)
                .meaning(Meaning.priceOf(acid.key() + "_acid", FeedCost.YEAR)));
    }
}
