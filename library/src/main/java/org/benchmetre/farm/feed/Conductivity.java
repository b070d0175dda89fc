package org.benchmetre.farm.feed;

import static org.benchmetre.budget.Formulas.number;
import static org.benchmetre.budget.Formulas.one;
import static org.benchmetre.budget.Formulas.sum;
import static org.benchmetre.farm.feed.FeedUnits.MMOL_PER_LITRE;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.input.Sheets;

/**
 * Conductivity of the nutrient solution from its ions, at 25 degrees Celsius.
 *
 * <pre>
 * EC = sum of k(i) c(i)     k(i) = k0(i) - A(i) r / (1 + B(i) r)     r = sqrt(I)     I = sum of z(i)² c(i) / 2
 * EC  dS/m     c  concentration, mol/L, taken for mol/kg     k  conductance, dS/m for each mol/L     I  ionic strength, mol/L
 * k0, A, B  of the ion at 25 degrees Celsius                 z  charge
 * </pre>
 *
 * McCleskey, Nordstrom, Ryan and Ball, A new method of calculating electrical conductivity with applications to natural waters, Geochimica
 * et Cosmochimica Acta 77:369-382, 2012, for ionic strengths up to 0.7 mol/kg. All ions are taken as free: where calcium and magnesium
 * meet much sulphate, some of them pair, and a meter reads a few per cent less. Dihydrogen phosphate is not in that paper.
 */
final class Conductivity {

    private static final Unit EC = Unit.parse("dS/m");
    private static final Unit MOLAR = EC.over(MMOL_PER_LITRE);
    private static final String SOURCE =
            "McCleskey et al., Geochimica et Cosmochimica Acta 77:369-382, 2012, at 25 °C; phosphate as said with the ions";

    /** Conductivity, dS/m. */
    final Line ec;

    Conductivity(BudgetBuilder b, FeedTables tables, IonTable ions) {
        ScheduleBuilder table = ions.schedule;
        Line part = table.line(
                "ion_strength",
                "Part in ionic strength",
                MMOL_PER_LITRE,
                ions.supplied
                        .times(ions.charge.counting(ONE))
                        .times(ions.charge.counting(ONE))
                        .over(number(2, ONE)),
                "half of concentration times charge squared: the definition of ionic strength");
        ScheduleBuilder s = b.schedule(Sheets.OPERATIONS, "Conductivity from the ions");
        s.note(
                "All ions are taken as free; where calcium and magnesium meet much sulphate a meter reads a few per cent less.");
        Line strength = s.line("feed_ionic_strength", "Ionic strength", MMOL_PER_LITRE, sum(part, ions.axis));
        Line root = s.line(
                "feed_ionic_strength_root",
                "Square root of ionic strength in mol/L",
                ONE,
                strength.over(number(1000, MMOL_PER_LITRE)).power(number(0.5, ONE)),
                SOURCE);
        Line free = constant(table, ions, tables, "ion_conductance_free", "Conductance, far apart", 0);
        Line fall = constant(table, ions, tables, "ion_conductance_fall", "Fall of conductance with ionic strength", 1);
        Line curve = table.line(
                "ion_conductance_curve",
                "Curve of that fall",
                ONE,
                ions.rows(ion -> number(tables.of(ion).conductance().curve(), ONE)),
                SOURCE);
        Line conductance = table.line(
                "ion_conductance",
                "Conductance",
                MOLAR,
                free.minus(fall.times(root).over(one().plus(curve.times(root)))),
                "k0 - A r / (1 + B r): " + SOURCE);
        Line share = table.line("ion_conductivity", "Conductivity of the ion", EC, ions.supplied.times(conductance));
        ec = s.line(
                "feed_ec_from_ions", "EC of the nutrient solution, from its ions", EC, sum(share, ions.axis), SOURCE);
    }

    private static Line constant(
            ScheduleBuilder s, IonTable ions, FeedTables tables, String id, String label, int which) {
        return s.line(
                id,
                label,
                MOLAR,
                ions.rows(ion -> {
                    IonFacts.Conductance of = tables.of(ion).conductance();
                    return number((which == 0 ? of.free() : of.fall()) / 1000, MOLAR);
                }),
                SOURCE);
    }
}
