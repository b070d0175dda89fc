package org.benchmetre.farm.feed;

import static org.benchmetre.budget.Formulas.number;

import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.input.Sheets;
import org.benchmetre.farm.input.Tables;

/**
 * Whether each salt dissolves in its stock tank: its concentration there against what cold water takes of it alone (about 10
 * degrees Celsius, rounded, from memory). Salts together dissolve less, so that half of it is a better aim.
 */
final class Dissolving {

    private static final Unit CONCENTRATION = Unit.parse("g/L");

    Dissolving(BudgetBuilder b, SaltTable salts, Line dilution) {
        ScheduleBuilder s = b.shared(Sheets.OPERATIONS, Tables.SALTS);
        s.note("What cold water of about 10 °C takes of each salt alone, from memory; salts together dissolve less.");
        Line concentration = s.line(
                "salt_concentration",
                "In the stock solution",
                CONCENTRATION,
                salts.rate.times(dilution).in(CONCENTRATION));
        Line solubility = s.line(
                "salt_solubility",
                "Dissolves alone",
                CONCENTRATION,
                salts.rows(salt -> number(salt.substance().solubility(), CONCENTRATION)),
                "at about 10 degrees Celsius, rounded, from memory");
        s.warning(
                "salt_undissolved",
                "Salt in its stock tank",
                concentration.exceeds(solubility),
                "more than cold water dissolves. Make the stock solution weaker: fewer litres of nutrient solution from a litre of it.");
    }
}
