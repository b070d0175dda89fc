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
import org.benchmetre.budget.Element;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.crop.CropPlants;
import org.benchmetre.farm.crop.Crops;
import org.benchmetre.farm.crop.PlantOrder;
import org.benchmetre.farm.input.FarmTable;
import org.benchmetre.farm.input.MoneyWords;
import org.benchmetre.farm.input.Months;
import org.benchmetre.farm.input.Sheets;
import org.benchmetre.farm.input.Tables;
import org.benchmetre.farm.takeoff.TakeOff;

/** What to order, and until when, in sentences. Money is shown in whole units. */
public final class OrderWords {

    private final ScheduleBuilder s;
    private final MoneyWords money;

    /**
     * Declares lines and sentences.
     *
     * @param b where the schedule is added
     * @param takeOff parts in whole packs
     * @param grown the plants of the crops
     * @param plants whole plants of them
     * @param startUp what the start takes
     */
    public OrderWords(BudgetBuilder b, TakeOff takeOff, CropPlants grown, PlantOrder plants, StartUp startUp) {
        s = b.schedule(Sheets.CASH_FLOW, "What to order, in words");
        money = new MoneyWords(b);
        Formula packs = joined(shown(takeOff.packCount, 0), text(" packs of parts for "), money.paid(takeOff.purchase));
        Formula set = joined(shown(plants.plants, 0), text(" plants for "), money.paid(plants.cost));
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
        lead(b, grown);
    }

    private Line startUp(StartUp startUp) {
        Formula lumps = joined(text(" and "), money.paid(startUp.lumps), text(" for house and contingency"));
        return s.textLine(
                "order_start_up",
                "What start-up takes with it",
                joined(
                        text("with "),
                        money.paid(startUp.labour),
                        text(" of installing labour"),
                        when(startUp.lumps.isPositive(), lumps, text("")),
                        text(" start-up takes "),
                        money.paid(startUp.cash),
                        text(".")));
    }

    /** Until when the plants of each crop are ordered: so many whole months before the one of planting. */
    private void lead(BudgetBuilder b, CropPlants grown) {
        Crops crops = grown.crops();
        Unit month = Unit.parse("mo");
        ScheduleBuilder c = b.shared(Sheets.CROP, Tables.CROPS);
        Line weeks = c.line(
                "crop_lead_weeks", "Lead time of plants", Unit.parse("wk"), crops.ofKind(grown.growth().leadWeeks));
        Line ahead = c.line(
                "crop_months_ahead",
                "Ordered ahead, months",
                ONE,
                weeks.in(month).counting(ONE).wholeUp(),
                "whole months, so that the weeks fit in before the month of planting begins: common practice, no source");
        Formula back = ahead.plus(number(Months.IN_A_YEAR, ONE))
                .minus(crops.plantingNumber)
                .over(number(Months.IN_A_YEAR, ONE));
        Line years = c.line(
                "crop_years_before",
                "Years before that of planting",
                ONE,
                back.wholeDown(),
                "a step back over January is a year: plain counting");
        Line ordered = c.line(
                "crop_order_month_number",
                "Month to order in, its number",
                ONE,
                crops.plantingNumber.minus(ahead).plus(years.times(number(Months.IN_A_YEAR, ONE))),
                Months.COUNTING);
        Line first = c.textLine(
                "crop_order_month",
                "Month to order plants in",
                inUse(crops, grown.year().named(ordered)));
        Line before = c.textLine(
                "crop_order_year",
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
                crops.planting,
                text(": their lead time is "),
                shown(weeks, 0),
                text(" weeks."));
        Formula unknown =
                joined(text("No lead time of plants is entered; they are planted in "), crops.planting, text("."));
        Formula stay = text("The plants of another crop stay.");
        Line by = c.textLine(
                "crop_order_by",
                "When to order plants",
                inUse(crops, when(crops.newShare.isPositive(), when(weeks.isPositive(), told, unknown), stay)));
        if (FarmTable.CROPS.hasRows(b.structure())) {
            c.textLine(
                    "crop_order_told",
                    "Month to order in, in words",
                    when(crops.newShare.isPositive(), first, text("")));
        }
        s.textLine("order_plants_by", "When to order the plants of the first crop", new Element(by, crops.axis, 0));
    }

    private static Formula inUse(Crops crops, Formula words) {
        return when(crops.key.isFilled(), words, text(""));
    }
}
