package org.benchmetre.farm.finance;

import static org.benchmetre.budget.Formulas.joined;
import static org.benchmetre.budget.Formulas.lookup;
import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.one;
import static org.benchmetre.budget.Formulas.shown;
import static org.benchmetre.budget.Formulas.text;
import static org.benchmetre.budget.Formulas.when;
import static org.benchmetre.farm.input.TradeUnits.MONEY;

import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.farm.crop.CropYear;
import org.benchmetre.farm.crop.Harvest;
import org.benchmetre.farm.energy.Heating;
import org.benchmetre.farm.input.FarmTable;
import org.benchmetre.farm.input.MoneyWords;
import org.benchmetre.farm.input.Sheets;
import org.benchmetre.farm.operations.AllWork;
import org.benchmetre.farm.ownership.BudgetMonths;

/** What the calendar says in sentences, and what is missing in it. Money is shown in whole units. */
public final class CalendarWords {

    private final ScheduleBuilder s;
    private final SeasonCash season;
    private final BudgetMonths cash;
    private final MoneyWords money;
    private final boolean isListed;

    /**
     * Whose figures are told.
     *
     * @param harvest fruit and receipts
     * @param labour hours and people
     * @param heating heat
     */
    public record Sections(Harvest harvest, AllWork labour, Heating heating) {}

    /**
     * Declares the sentences.
     *
     * @param b where the schedule is added
     * @param season the calendar from the month of planting on
     * @param cash cash by month of the calendar
     * @param told whose figures are told
     */
    public CalendarWords(BudgetBuilder b, SeasonCash season, BudgetMonths cash, Sections told) {
        this.season = season;
        this.cash = cash;
        s = b.schedule(Sheets.CASH_FLOW, "Calendar, in words");
        money = new MoneyWords(b);
        isListed = FarmTable.CROPS.hasRows(b.structure());
        year(told.harvest());
        Line lowest = monthOf("season_cash_lowest_month", "Month of the least cash so far", season.lowestMark);
        lowest(lowest);
        labour(told.labour());
        picture(told.harvest(), lowest);
        missing(told);
        s.textLine(
                "calendar_evenly",
                "What has no month",
                onlyIf(
                        cash.evenOfYear,
                        joined(
                                money.whole(cash.evenOfYear),
                                text(
                                        " have no month and are spread evenly: irrigation maintenance, replanting, what is used up, "
                                                + "repairs, insurance, property tax, overhead."))));
    }

    private static Formula onlyIf(Formula amount, Formula sentence) {
        return when(amount.isPositive(), sentence, text(""));
    }

    private void year(Harvest harvest) {
        Line left = cash.leftOfYear;
        Formula lack = none(left.unit()).minus(left);
        Line end = s.textLine(
                "calendar_year_left",
                "What the year leaves",
                when(
                        lack.isPositive(),
                        joined(text(", which is "), money.whole(lack), text(" more than comes in.")),
                        joined(text(", which leaves "), money.whole(left), text("."))));
        s.textLine(
                "calendar_year",
                "The year in cash",
                joined(
                        text("A full crop year from "),
                        season.year.plantingName,
                        text(" on takes in "),
                        money.whole(harvest.receipts),
                        text(" and pays "),
                        money.whole(cash.costsOfYear),
                        end));
    }

    /** A marked month of the crop year, and in which year it lies where there are two. */
    private Line monthOf(String id, String label, Line mark) {
        CropYear y = season.year;
        Formula later = lookup(y.year, mark, text(SeasonCash.MARK)).minus(y.planYear);
        Formula which = when(later.isPositive(), text(" of the next year"), text(" of the first year"));
        return s.textLine(
                id, label, joined(lookup(y.name, mark, text(SeasonCash.MARK)), when(y.isOneYear(), text(""), which)));
    }

    private void lowest(Line month) {
        Formula below = none(MONEY).minus(season.lowest);
        Formula plants = onlyIf(
                cash.plantsOfYear,
                joined(
                        text(" Plants of "),
                        money.whole(cash.plantsOfYear),
                        isListed
                                ? text(" are paid when they are planted.")
                                : joined(text(" are paid in "), season.year.plantingName, text("."))));
        s.textLine(
                "calendar_lowest",
                "Least cash so far",
                joined(
                        when(
                                below.isPositive(),
                                joined(
                                        text("Cash so far is lowest at the end of "),
                                        month,
                                        text(": "),
                                        money.whole(season.lowest),
                                        text(".")),
                                text("Cash so far never falls below zero.")),
                        plants));
    }

    private void labour(AllWork labour) {
        Line most = monthOf("season_hours_most_month", "Month with most labour", season.mostHoursMark);
        Formula hours = season.mostHours;
        s.textLine(
                "calendar_labour",
                "Most labour",
                when(
                        hours.isPositive(),
                        joined(
                                text("Most labour: "),
                                most,
                                text(", "),
                                shown(hours, 0),
                                text(" h, "),
                                shown(labour.peakPeople, 1),
                                text(" people; "),
                                shown(labour.hours, 0),
                                text(" h in the year.")),
                        text("No labour is entered: no hours are counted.")));
    }

    private void picture(Harvest harvest, Line lowest) {
        s.textLine(
                "calendar_cash_shown",
                "What receipts and cash out show",
                joined(
                        text("Receipts of "),
                        money.whole(harvest.receipts),
                        text(" against cash out of "),
                        money.whole(cash.costsOfYear),
                        text("; cash so far is lowest in "),
                        lowest,
                        text(".")));
    }

    private void missing(Sections told) {
        s.textLine(
                "calendar_no_fruit",
                "Fruit that is missing",
                when(
                        told.harvest().yield.isPositive(),
                        text(""),
                        text("No fruit is counted: no receipts come in and no fruit is picked.")));
        Line unknown = told.heating().monthsUnknown;
        Formula months = when(
                unknown.minus(one()).isPositive(),
                joined(shown(unknown, 0), text(" heated months")),
                text("one heated month"));
        s.textLine(
                "calendar_no_heat",
                "Climate that is missing",
                onlyIf(
                        unknown,
                        when(
                                told.heating().heatOfYear.isPositive(),
                                joined(text("No climate is entered for "), months, text(": no heat is counted there.")),
                                text("No climate is entered: no heat is counted."))));
    }
}
