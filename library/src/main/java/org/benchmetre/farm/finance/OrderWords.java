package org.benchmetre.farm.finance;

import static org.benchmetre.budget.Formulas.joined;
import static org.benchmetre.budget.Formulas.number;
import static org.benchmetre.budget.Formulas.one;
import static org.benchmetre.budget.Formulas.or;
import static org.benchmetre.budget.Formulas.shown;
import static org.benchmetre.budget.Formulas.text;
import static org.benchmetre.budget.Formulas.when;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.MinorUnit;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.crop.ChosenStock;
import org.benchmetre.farm.crop.CropYear;
import org.benchmetre.farm.crop.PlantOrder;
import org.benchmetre.farm.input.Sheets;
import org.benchmetre.farm.takeoff.TakeOff;

/** What to order, and until when, in sentences. Money is shown in whole units. */
public final class OrderWords {

    private static final double MONTHS = 12;

    private final ScheduleBuilder s;
    private final Formula currency;
    private final int coins;

    /**
     * Declares lines and sentences.
     *
     * @param b where the schedule is added
     * @param takeOff parts in whole packs
     * @param stock the chosen plant stock
     * @param plants whole plants of it
     * @param startUp what the start takes
     * @param year the crop year
     */
    public OrderWords(
            BudgetBuilder b, TakeOff takeOff, ChosenStock stock, PlantOrder plants, StartUp startUp, CropYear year) {
        s = b.schedule(Sheets.CASH_FLOW, "What to order, in words");
        currency = text(" " + b.structure().currency());
        coins = MinorUnit.decimals(b.structure().currency());
        Formula packs = joined(shown(takeOff.packCount, 0), text(" packs of parts for "), money(takeOff.purchase));
        Formula set = joined(shown(plants.plants, 0), text(" plants for "), money(plants.cost));
        Line start = startUp(startUp);
        s.textLine(
                "order_now", "What to order now", joined(text("Order "), packs, text(" and "), set, text("; "), start));
        Line level = takeOff.priceLevel;
        s.textLine(
                "order_price_level",
                "Level of prices of parts",
                when(
                        or(level.exceeds(one()), one().exceeds(level)),
                        joined(
                                text("Prices of parts are counted "),
                                shown(level, 2),
                                text(" times those listed; freight and tax too.")),
                        text("")));
        lead(s.line("plants_lead_weeks", "Lead time of plants", Unit.parse("wk"), stock.leadWeeks()), year);
    }

    private Line startUp(StartUp startUp) {
        Formula lumps = joined(text(" and "), money(startUp.lumps), text(" for house and contingency"));
        return s.textLine(
                "order_start_up",
                "What start-up takes with it",
                joined(
                        text("with "),
                        money(startUp.labour),
                        text(" of installing labour"),
                        when(startUp.lumps.isPositive(), lumps, text("")),
                        text(" start-up takes "),
                        money(startUp.cash),
                        text(".")));
    }

    private Formula money(Formula amount) {
        return joined(shown(amount, coins), currency);
    }

    /** Until when plants are ordered: so many whole months before the one of planting. */
    private void lead(Line weeks, CropYear year) {
        Unit month = Unit.parse("mo");
        Line ahead = s.line(
                "order_months_ahead",
                "Months ahead",
                ONE,
                weeks.in(month).counting(ONE).wholeUp(),
                "whole months, so that the weeks fit in before the month of planting begins: common practice, no source");
        Formula back =
                ahead.plus(number(MONTHS, ONE)).minus(year.plantingNumber).over(number(MONTHS, ONE));
        Line years = s.line(
                "order_years_before",
                "Years before that of planting",
                ONE,
                back.wholeDown(),
                "a step back over January is a year: plain counting");
        Line ordered = s.line(
                "order_month_number",
                "Month to order in, its number",
                ONE,
                year.plantingNumber.minus(ahead).plus(years.times(number(MONTHS, ONE))),
                "12 months a year: plain counting");
        Line first = s.textLine("order_month", "Month to order plants in", year.named(ordered));
        Line before = s.textLine(
                "order_year",
                "In which year",
                when(
                        years.minus(one()).isPositive(),
                        joined(text(", "), shown(years, 0), text(" years before,")),
                        when(years.isPositive(), text(" of the year before,"), text(""))));
        Formula told = joined(
                text("Order plants in "),
                first,
                before,
                text(" for planting in "),
                year.plantingName,
                text(": their lead time is "),
                shown(weeks, 0),
                text(" weeks."));
        s.textLine(
                "order_plants_by",
                "When to order plants",
                when(
                        weeks.isPositive(),
                        told,
                        joined(
                                text("No lead time of plants is entered; they are planted in "),
                                year.plantingName,
                                text("."))));
    }
}
