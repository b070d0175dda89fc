package org.benchmetre.farm.feed;

import static org.benchmetre.budget.Formulas.greater;
import static org.benchmetre.budget.Formulas.lesser;
import static org.benchmetre.budget.Formulas.number;
import static org.benchmetre.budget.Formulas.or;
import static org.benchmetre.farm.feed.FeedUnits.MEQ_PER_LITRE;
import static org.benchmetre.farm.feed.FeedUnits.MG_PER_LITRE;
import static org.benchmetre.farm.feed.FeedUnits.MOLAR_MASS;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.input.FarmEntries;
import org.benchmetre.farm.input.Sheets;

/**
 * Conductivity and pH against their bands. Conductivity is worked out from the ions ({@link Conductivity}), and beside it estimated as
 * a tenth of the charge of the cations: EC in dS/m at 25 degrees Celsius is about meq/L over 10, good to about a tenth below 4 dS/m
 * (from memory). The band warns where both lie outside on the same side; a meter decides.
 */
final class FeedBands {

    private static final Unit EC = Unit.parse("dS/m");

    private final ScheduleBuilder s;
    private final FarmEntries entries;

    /**
     * What conducts.
     *
     * @param cations charge of all cations, meq/L
     * @param ec conductivity from the ions, dS/m
     */
    record Conducting(Line cations, Line ec) {}

    FeedBands(BudgetBuilder b, FarmEntries entries, FeedTables tables, Conducting conducting, IonTable ions) {
        this.entries = entries;
        s = b.schedule(Sheets.OPERATIONS, "Conductivity and pH of the nutrient solution");
        s.note(
                "EC is told by a rule of thumb and from the ions; measure nutrient solution and drain water with a meter. 1 dS/m is 1 mS/cm.");
        s.line(
                "feed_nitrogen_mass",
                "Nitrogen by mass, nitrate and ammonium together",
                MG_PER_LITRE,
                ions.supplied(Ion.NITRATE)
                        .plus(ions.supplied(Ion.AMMONIUM))
                        .times(number(tables.of(Ion.NITRATE).molarMass(), MOLAR_MASS))
                        .in(MG_PER_LITRE),
                "molar mass of nitrogen: " + ChemicalElement.SOURCE);
        Line ec = s.line(
                "feed_ec_estimate",
                "EC of the nutrient solution, by rule of thumb",
                EC,
                conducting.cations().over(number(10, MEQ_PER_LITRE.over(EC))),
                "a tenth of the charge of the cations; from memory");
        Line ecLeast = entry("feed_ec_least", "EC of the nutrient solution, least", EC, 10);
        Line ecMost = entry("feed_ec_most", "EC of the nutrient solution, most", EC, 10);
        s.warning(
                "feed_ec_warning",
                "EC of the nutrient solution",
                or(
                        ecLeast.exceeds(greater(ec, conducting.ec())),
                        lesser(ec, conducting.ec()).exceeds(ecMost)),
                "it lies outside its band, by rule of thumb and from the ions. Raise or lower all ions of the recipe together, or take purer water.");
        Line ph = entry("feed_ph", "pH of the nutrient solution", ONE, 14);
        Line root = entry("root_ph", "pH of the root zone, from drain water", ONE, 14);
        Line phLeast = entry("root_ph_least", "pH of the root zone, least", ONE, 14);
        Line phMost = entry("root_ph_most", "pH of the root zone, most", ONE, 14);
        s.warning(
                "feed_ph_warning",
                "pH of the nutrient solution",
                or(phLeast.exceeds(ph), ph.exceeds(phMost)),
                "it lies outside the band of the root zone. Change the acid, that is the alkalinity left, "
                        + "and measure again after a day.");
        s.warning(
                "root_ph_warning",
                "pH of the root zone",
                or(phLeast.exceeds(root), root.exceeds(phMost)),
                "it lies outside its band. Where it is high, leave less alkalinity or raise the ammonium share; where it is low, "
                        + "leave more alkalinity or lower the ammonium share.");
    }

    private Line entry(String id, String label, Unit unit, double most) {
        return entries.add(s.entry(id, label, unit).from(0, most));
    }
}
