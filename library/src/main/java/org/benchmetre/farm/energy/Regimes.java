package org.benchmetre.farm.energy;

import static org.benchmetre.budget.Formulas.lookup;
import static org.benchmetre.budget.Formulas.number;
import static org.benchmetre.budget.Formulas.sumWhere;
import static org.benchmetre.budget.Formulas.text;
import static org.benchmetre.farm.energy.EnergyUnits.CELSIUS;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.benchmetre.budget.Axis;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.Rows;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.farm.input.FarmEntries;
import org.benchmetre.farm.input.Sheets;
import org.benchmetre.farm.input.Tables;
import org.benchmetre.farm.profile.ProfileRow;

/**
 * Named ways to hold a house: set points by day and by night that go together, from {@code regimes.csv} of the profile with the source
 * of each. The one chosen goes before the set points typed by month; {@code own} takes those that are typed.
 */
final class Regimes {

    /** Set points as typed by month. */
    static final String OWN = "own";

    /** The regime chosen, {@link #OWN} or a row of the profile. */
    final Line choice;
    /** Held by day in the regime chosen, degC; 0 where it is {@link #OWN}. */
    final Line day;
    /** Held by night in the regime chosen, degC; 0 where it is {@link #OWN}. */
    final Line night;

    private final Line key;
    private final Line name;
    private final List<ProfileRow> rows;
    private final Axis axis;

    Regimes(BudgetBuilder b, FarmEntries entries) {
        rows = entries.profile().rows("regimes");
        List<String> keys = rows.stream().map(row -> row.text("regime")).toList();
        axis = Axis.rows("regime", "Regime", keys, 0);
        List<String> words = new ArrayList<>(List.of(OWN));
        words.addAll(keys);
        ScheduleBuilder s = b.shared(Sheets.OPERATIONS, Tables.HEATING);
        choice = entries.add(s.textEntry("house_regime", "Regime of the house; goes before set points by month")
                .oneOf(words));
        ScheduleBuilder table = b.schedule(Sheets.OPERATIONS, "Regimes: set points that go together");
        table.note("A regime chosen goes before the set points typed by month. All set points warmer by: moves both.");
        key = table.textLine("regime_key", "Regime", rows(row -> text(row.text("regime"))));
        name = table.textLine("regime_name", "Name", rows(row -> text(row.text("label"))));
        b.nameRows(axis, name);
        Line byDay = held(table, "regime_day_set", "Held by day", "day_set");
        Line byNight = held(table, "regime_night_set", "Held by night", "night_set");
        table.textLine("regime_source", "Source", rows(row -> text(row.text("source"))));
        day = s.line("regime_day", "Held by day in the regime chosen", CELSIUS, sumWhere(byDay, key, choice, axis));
        night = s.line(
                "regime_night", "Held by night in the regime chosen", CELSIUS, sumWhere(byNight, key, choice, axis));
    }

    /** What people call the regime chosen; only where one is. */
    Formula called() {
        return lookup(name, key, choice);
    }

    private Line held(ScheduleBuilder table, String id, String label, String column) {
        return table.line(
                id, label, CELSIUS, rows(row -> number(row.number(column), CELSIUS)), "see the source of each row");
    }

    private Formula rows(Function<ProfileRow, Formula> cell) {
        return new Rows(axis, rows.stream().map(cell).toList());
    }
}
