package org.benchmetre.farm.feed;

import static org.benchmetre.budget.Formulas.greater;
import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.number;
import static org.benchmetre.budget.Formulas.or;
import static org.benchmetre.budget.Formulas.sum;
import static org.benchmetre.budget.Formulas.sumWhere;
import static org.benchmetre.budget.Formulas.text;
import static org.benchmetre.farm.feed.FeedUnits.CHARGE;
import static org.benchmetre.farm.feed.FeedUnits.GRAMS_PER_VOLUME;
import static org.benchmetre.farm.feed.FeedUnits.MMOL_PER_LITRE;
import static org.benchmetre.farm.feed.FeedUnits.MOLAR_MASS;
import static org.benchmetre.farm.feed.FeedUnits.MONEY_PER_KG;
import static org.benchmetre.farm.feed.FeedUnits.MONEY_PER_VOLUME;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import org.benchmetre.budget.Axis;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.Rows;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.entry.Meaning;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.input.FarmEntries;
import org.benchmetre.farm.input.Sheets;
import org.benchmetre.farm.input.Tables;

/** The salts by weight and money: grams in a cubic metre of feed, their cost, and what goes into a stock tank. Plain arithmetic. */
final class SaltTable {

    private static final Unit KILOGRAM = Unit.parse("kg");
    private static final double APART = 0.1;
    private static final String CHARGES = "charges of its ions at pH 5 to 6.5: plain chemistry, from memory";

    private final FeedTables tables;
    private final Axis axis;
    /** Grams of each salt in a cubic metre of feed. */
    final Line rate;

    private final Line tank;
    private final Line cost;
    private final Line perTank;

    SaltTable(BudgetBuilder b, FarmEntries entries, ScheduleBuilder prices, SaltAmounts amounts, StockTanks tanks) {
        tables = amounts.tables;
        axis = Axis.rows("salt", "Salt", tables.saltKeys(), 0);
        Map<Salt, Line> priceOf = new HashMap<>();
        tables.salts().forEach(salt -> priceOf.put(salt, price(prices, entries, salt)));
        ScheduleBuilder s = b.shared(Sheets.OPERATIONS, Tables.SALTS);
        s.note(
                "Grams in a cubic metre are milligrams in a litre, of the salt as sold. The water of crystallisation is weighed with the salt.");
        Line label = s.textLine("salt_label", "Salt", rows(salt -> text(salt.label())));
        b.nameRows(axis, label);
        s.textLine("salt_formula", "Formula", rows(salt -> text(salt.substance().formula())));
        tank = s.textLine("salt_tank", "Stock tank", rows(salt -> text(salt.tank())));
        Line mass = s.line(
                "salt_molar_mass",
                "Molar mass",
                MOLAR_MASS,
                rows(salt -> number(salt.substance().molarMass(), MOLAR_MASS)),
                ChemicalElement.SOURCE);
        Line amount = s.line("salt_amount", "Amount", MMOL_PER_LITRE, rows(amounts.of::get));
        rate = s.line(
                "salt_rate",
                "In a volume of nutrient solution",
                GRAMS_PER_VOLUME,
                amount.times(mass).in(GRAMS_PER_VOLUME));
        charges(s, amounts);
        Line price = s.line("salt_price", "Price", MONEY_PER_KG, rows(priceOf::get));
        cost = s.line("salt_cost", "Cost", MONEY_PER_VOLUME, rate.times(price).in(MONEY_PER_VOLUME));
        perTank = s.line(
                "salt_per_tank",
                "In a stock tank",
                KILOGRAM,
                rate.times(tanks.feed).in(KILOGRAM));
    }

    /** Cations against anions of each salt as sold: a pure salt has as many charges of both. */
    private void charges(ScheduleBuilder s, SaltAmounts amounts) {
        Line cations =
                s.line("salt_cations", "Cations of a mole", CHARGE, rows(salt -> charge(amounts, salt, 1)), CHARGES);
        Line anions =
                s.line("salt_anions", "Anions of a mole", CHARGE, rows(salt -> charge(amounts, salt, -1)), CHARGES);
        Formula most = greater(cations, anions).times(number(APART, ONE));
        Line apart = s.line(
                "salt_charge_allowed",
                "Difference allowed",
                CHARGE,
                most,
                "a tenth of the larger sum: a choice of this project, no source");
        s.warning(
                "salt_charge_warning",
                "Content declared of a salt",
                or(cations.exceeds(anions.plus(apart)), anions.exceeds(cations.plus(apart))),
                "cations and anions as declared do not go together. Check each content of the bag, and whether it is told as oxide "
                        + "(P2O5, K2O) or as element.");
    }

    private Formula charge(SaltAmounts amounts, Salt salt, int sign) {
        return salt.substance().ions().keySet().stream()
                .filter(ion -> Integer.signum(tables.of(ion).charge()) == sign)
                .map(ion -> amounts.content(salt, ion)
                        .times(number(Math.abs(tables.of(ion).charge()), CHARGE)))
                .reduce(Formula::plus)
                .orElse(none(CHARGE));
    }

    /** Cost of all salts, money/m3. */
    Formula cost() {
        return sum(cost, axis);
    }

    /** Weight of all salts in one of the stock tanks. */
    Line inTank(ScheduleBuilder s, String letter) {
        String id = "stock_tank_" + letter.toLowerCase(Locale.ROOT) + "_salts";
        return s.line(id, "Salts in tank " + letter, KILOGRAM, sumWhere(perTank, tank, text(letter), axis));
    }

    /** A formula for each salt. */
    Formula rows(Function<Salt, Formula> formula) {
        return new Rows(axis, tables.salts().stream().map(formula).toList());
    }

    private static Line price(ScheduleBuilder s, FarmEntries entries, Salt salt) {
        return entries.add(s.entry(salt.key() + "_price", "Price: " + salt.label(), MONEY_PER_KG)
                .from(0, 1_000_000)
                .meaning(Meaning.priceOf(salt.key(), FeedCost.YEAR)));
    }
}
