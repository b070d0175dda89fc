package org.benchmetre.farm.lending;

import static org.benchmetre.budget.Formulas.none;
import static org.benchmetre.budget.Formulas.number;
import static org.benchmetre.budget.Formulas.text;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.benchmetre.budget.Axis;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.Rows;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.unit.Unit;
import org.benchmetre.farm.input.Sheets;
import org.benchmetre.farm.profile.CropProfile;
import org.benchmetre.farm.profile.ProfileRow;

/**
 * Depreciation tables of income tax: which share of a cost counts in each year, by the class of the property. Which classes there are,
 * and where their shares come from, says the profile; a class is named by its life in years.
 */
final class TaxClasses {

    private static final Unit YEAR = Unit.parse("a");

    private final List<ProfileRow> rows;
    private final List<String> classes;

    /** One row for each class. */
    final Axis axis;
    /** What is told of each class. */
    final ScheduleBuilder schedule;
    /** Life that the class is named by, a. */
    final Line life;
    /** Share of the cost that counts in a year of the plan, along classes and years; 0 at the start. */
    final Line share;

    TaxClasses(BudgetBuilder b, CropProfile profile, Axis years) {
        rows = profile.rows("tax_classes");
        classes = rows.stream().map(row -> row.text("class")).distinct().toList();
        axis = Axis.rows(
                "tax_class",
                "Tax class",
                classes.stream().map(each -> "class_" + each).toList(),
                0);
        String sources = rows.stream().map(row -> row.text("source")).distinct().collect(Collectors.joining("; "));
        schedule = b.schedule(Sheets.CASH_FLOW, "Tax: classes of property");
        b.nameRows(axis, schedule.textLine("tax_class_label", "Class", each(name -> text(name + " years"))));
        life = schedule.line(
                "tax_class_life",
                "Life it is named by",
                YEAR,
                each(name -> number(Double.parseDouble(name), YEAR)),
                sources);
        share = b.schedule(Sheets.CASH_FLOW, "Tax: share of cost in each year, by class")
                .line(
                        "tax_class_share",
                        "Share of cost",
                        ONE,
                        each(name -> new Rows(years, shares(name, years))),
                        sources);
    }

    private Formula each(Function<String, Formula> cell) {
        return new Rows(axis, classes.stream().map(cell).toList());
    }

    /** The shares of a class, each in its year of the plan. */
    private List<Formula> shares(String name, Axis years) {
        List<Formula> shares = new ArrayList<>(Collections.nCopies(years.size(), none(ONE)));
        rows.stream()
                .filter(row -> row.text("class").equals(name) && years.indexOf(row.text("year")) >= 0)
                .forEach(row -> shares.set(years.indexOf(row.text("year")), number(row.number("share"), ONE)));
        return shares;
    }
}
