package org.benchmetre.farm.energy;

import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.not;
import static org.benchmetre.budget.Formulas.one;
import static org.benchmetre.budget.Formulas.sum;
import static org.benchmetre.budget.Formulas.when;
import static org.benchmetre.farm.energy.EnergyUnits.U_VALUE;
import static org.benchmetre.farm.energy.EnergyUnits.WATT_PER_KELVIN;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import java.util.List;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.Rows;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.input.FarmEntries;
import org.benchmetre.farm.input.Sheets;

/**
 * What the house loses for each kelvin between inside and outside: through its surfaces, and with the air that leaks out and comes in
 * cold.
 *
 * <pre>
 * H = sum of A U + V n c     Hn = H (1 - s)
 * A  area of a surface, m2     U  its U-value, W/(m2 K)     V  air in the house, m3     n  changes of air, 1/h
 * c  heat that air holds, J/(m3 K)     s  share that a night screen saves     H, Hn  by day and by night, W/K
 * </pre>
 *
 * U-values: eXtension greenhouse energy course. Air: Bartok, <i>Save money by reducing air infiltration</i>, 0.02 Btu/(ft3 degF), which
 * rounds up the 1207 J/(m3 K) of dry air at 20 °C. Screen: SARE LNE10-299.
 */
public final class HeatLoss {

    private static final String COURSE = "eXtension greenhouse energy course";
    private static final String AIR =
            "Bartok, Save money by reducing air infiltration: 0.02 Btu/(ft3 degF), dry air at 20 degC rounded up";
    private static final Unit HEAT_OF_AIR = Unit.parse("J/(m3 K)");
    private static final String SINGLE = "single";
    private static final String DOUBLE = "double";
    private static final String INSULATED = "insulated";

    /** Through all surfaces, for each kelvin, W/K. */
    public final Line surfaces;
    /** With the air that leaks, for each kelvin, W/K. */
    public final Line air;
    /** By day, W/K: both. */
    public final Line total;
    /** By night, W/K: both, less what a screen keeps in. */
    public final Line atNight;

    /**
     * Declares entries and lines.
     *
     * @param b where schedules are added
     * @param entries gives entries their values
     * @param skin areas and volume
     */
    public HeatLoss(BudgetBuilder b, FarmEntries entries, Envelope skin) {
        ScheduleBuilder s = b.schedule(Sheets.OPERATIONS, "Skin of the house: covers, leaks and screen");
        Line single = uValue(s, entries, "u_value_single", "U-value, single");
        Line twofold = uValue(s, entries, "u_value_double", "U-value, double");
        Line board = uValue(s, entries, "u_value_insulated", "U-value, insulated wall");
        Line glazing = glazing(s, entries, skin);
        Line changes = entries.add(s.entry("air_changes", "Changes of air by leaks", Unit.parse("1/h"))
                .from(0, 60));
        Line heatOfAir = entries.add(
                s.entry("air_heat", "Heat that air holds", HEAT_OF_AIR).above(0, 2000));
        Line screen = entries.add(s.textEntry("night_screen", "Night screen").oneOf(List.of("no", "yes")));
        Line saving = entries.add(s.entry("screen_saving", "Share of the night's loss that a screen saves", ONE)
                .from(0, 0.95));

        Line uValue = skin.table.line(
                "surface_u_value",
                "U-value",
                U_VALUE,
                when(glazing.is(SINGLE), single, when(glazing.is(DOUBLE), twofold, board)));
        Line each = skin.table.line(
                "surface_heat_loss",
                "Heat lost for each kelvin",
                WATT_PER_KELVIN,
                skin.area.times(uValue),
                "area times U-value: " + COURSE);

        ScheduleBuilder t = b.schedule(Sheets.OPERATIONS, "Heat lost for each kelvin between inside and outside");
        surfaces = t.line("ua_total", "Through all surfaces", WATT_PER_KELVIN, sum(each, skin.axis));
        air = t.line(
                "air_change_loss",
                "With the air that leaks",
                WATT_PER_KELVIN,
                changes.times(skin.volume).times(heatOfAir).in(WATT_PER_KELVIN),
                "volume times changes times heat of air: Bartok, Save money by reducing air infiltration");
        total = t.line("house_heat_loss", "By day", WATT_PER_KELVIN, surfaces.plus(air));
        atNight = t.line(
                "night_heat_loss",
                "By night, behind the screen",
                WATT_PER_KELVIN,
                total.times(one().minus(when(screen.is("yes"), saving, none(ONE)))),
                "a screen saves a share of the loss: SARE LNE10-299; " + COURSE);
        t.warning(
                "surface_warning",
                "Surfaces that lose heat",
                not(surfaces.isPositive()),
                "The house has no surface that loses heat: enter the measured areas, or take them from the house.");
    }

    private static Line uValue(ScheduleBuilder s, FarmEntries entries, String id, String label) {
        return entries.add(s.entry(id, label, U_VALUE).above(0, 20));
    }

    private static Line glazing(ScheduleBuilder s, FarmEntries entries, Envelope skin) {
        Rows chosen = new Rows(
                skin.axis,
                List.of(
                        cover(s, entries, "roof_glazing", "Roof"),
                        cover(s, entries, "side_glazing", "Side walls"),
                        cover(s, entries, "end_glazing", "End walls"),
                        cover(s, entries, "other_glazing", "Any other surface")));
        return skin.table.textLine("surface_glazing", "Cover", chosen);
    }

    private static Line cover(ScheduleBuilder s, FarmEntries entries, String id, String what) {
        return entries.add(s.textEntry(id, what).oneOf(List.of(SINGLE, DOUBLE, INSULATED)));
    }
}
