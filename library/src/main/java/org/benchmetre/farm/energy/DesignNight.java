package org.benchmetre.farm.energy;

import static org.benchmetre.budget.Formulas.greater;
import static org.benchmetre.budget.Formulas.greatest;
import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.number;
import static org.benchmetre.budget.Formulas.one;
import static org.benchmetre.budget.Formulas.sum;
import static org.benchmetre.budget.Formulas.when;
import static org.benchmetre.farm.energy.EnergyUnits.CELSIUS;
import static org.benchmetre.farm.energy.EnergyUnits.HOURS_A_DAY;
import static org.benchmetre.farm.energy.EnergyUnits.KELVIN;
import static org.benchmetre.farm.energy.EnergyUnits.KILOWATT;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.input.FarmEntries;
import org.benchmetre.farm.input.Sheets;
import org.benchmetre.farm.input.Tables;

/**
 * The night that sizes the heater: what the house loses at the coldest temperature it is built for, with the screen open (snow must
 * melt, a screen may stick), and a margin. A first figure for a quotation, not a heating design.
 *
 * <pre>
 * Q = (UA + L) (Ti - To)     P = Q (1 + m)
 * Q  lost on the design night, kW        UA  lost through surfaces for each kelvin, W/K
 * L  lost with air for each kelvin, W/K  Ti, To  inside and outside on that night, degC; nothing where To is above Ti
 * m  margin, a share                     P   size of the heater, kW
 * </pre>
 *
 * Loss for each kelvin times kelvins: Bartok, <i>Greenhouse heat loss</i>. A house that is heated in no month has no heater.
 */
public final class DesignNight {

    private static final String SOURCE = "loss for each kelvin times kelvins: Bartok, Greenhouse heat loss";

    /** Size of the heater, kW. */
    public final Line heaterPower;

    /**
     * Declares entries and lines.
     *
     * @param b where schedules are added
     * @param entries gives entries their values
     * @param loss what the house loses for each kelvin
     * @param climate the months
     * @param fuel what is burnt
     */
    public DesignNight(BudgetBuilder b, FarmEntries entries, HeatLoss loss, Climate climate, Fuel fuel) {
        ScheduleBuilder s = b.schedule(Sheets.OPERATIONS, "Design night: size of the heater");
        s.note("The screen is taken as open. A heating contractor sizes the plant; this is a first figure.");
        Line outside = entries.add(s.entry("design_temperature", "Coldest night the house is heated in", CELSIUS)
                .from(-60, 40));
        Line inside = entries.add(
                s.entry("design_inside", "Held inside on that night", CELSIUS).from(-10, 40));
        Line margin = entries.add(s.entry("boiler_margin", "Margin on top of the design loss", ONE)
                .from(0, 3));
        Line heated = s.line("months_heated", "Months that are heated", ONE, sum(climate.heated, climate.months.axis));
        Line colder = s.line(
                "design_difference",
                "Colder outside by",
                KELVIN,
                when(heated.isPositive(), greater(inside.minus(outside), none(KELVIN)), none(KELVIN)),
                "nothing where the house is heated in no month, so that no heater is sized");
        Line through = s.line(
                "design_surface_loss",
                "Lost through surfaces",
                KILOWATT,
                loss.surfaces.times(colder).in(KILOWATT),
                SOURCE);
        Line withAir = s.line(
                "design_air_loss",
                "Lost with air",
                KILOWATT,
                loss.air.times(colder).in(KILOWATT),
                SOURCE);
        Line total = s.line("design_heat_loss", "Lost on the design night", KILOWATT, through.plus(withAir));
        heaterPower = s.line(
                "boiler_size",
                "Size of the heater",
                KILOWATT,
                total.times(one().plus(margin)),
                "a margin on the loss: common practice, no source");
        Formula aDay = total.times(number(24, HOURS_A_DAY)).in(Unit.parse("kWh/d"));
        s.line("design_day_fuel", "Fuel for a day and night as cold", Unit.parse("fuel_unit/d"), fuel.fuelFor(aDay));
        Line milder = b.shared(Sheets.OPERATIONS, Tables.HEAT)
                .line(
                        "design_night_milder",
                        "Design night milder than the mean night by",
                        KELVIN,
                        when(
                                climate.heated.isPositive(),
                                greater(outside.minus(climate.outsideByNight), none(KELVIN)),
                                none(KELVIN)));
        s.warning(
                "design_night_warning",
                "Design night against the months",
                greatest(milder, climate.months.axis).exceeds(none(KELVIN)),
                "The design night is milder than the mean night of a month: take the coldest night of many winters.");
    }
}
