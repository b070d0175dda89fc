package org.benchmetre.farm.whole;

import static org.benchmetre.budget.Formulas.joined;
import static org.benchmetre.budget.Formulas.number;
import static org.benchmetre.budget.Formulas.shown;
import static org.benchmetre.budget.Formulas.text;
import static org.benchmetre.budget.Formulas.when;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import java.util.List;
import java.util.Map;
import java.util.function.Function;
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
 * Figures of the plan beside what is published of farms with the crop: {@code published.csv} of its profile, each row with its source.
 * What lies outside is no fault, but a reader wants to know why. Money is compared only where documented ranges of money hold for it.
 */
public final class BesidePublished {

    private static final int DECIMALS = 2;

    private final List<ProfileRow> rows;
    private final Axis axis;

    private BesidePublished(List<ProfileRow> rows) {
        this.rows = rows;
        axis = Axis.rows(
                "published_figure",
                "Figure",
                rows.stream().map(row -> row.text("key")).toList(),
                0);
    }

    /**
     * Declares the lines; none where nothing is published.
     *
     * @param b where a schedule is added
     * @param profile what is published
     * @param figures of the plan, by the keys of {@code published.csv}
     */
    public static void of(BudgetBuilder b, CropProfile profile, Map<String, Formula> figures) {
        List<ProfileRow> rows = profile.rows("published").stream()
                .filter(row -> profile.moneyHolds() || !unit(row).hasMoney())
                .toList();
        if (!rows.isEmpty()) {
            new BesidePublished(rows).declare(b, figures);
        }
    }

    private void declare(BudgetBuilder b, Map<String, Formula> figures) {
        ScheduleBuilder s = b.schedule(Sheets.SUMMARY, "Beside what is published");
        String currency = b.structure().currency();
        s.note(
                "What lies outside is no fault: say why, or look again. Money of about a dollar's worth is compared as it stands.");
        b.nameRows(axis, s.textLine("published_label", "Figure", each(row -> text(labelled(row, currency)))));
        Line figure = s.line(
                "published_figure",
                "This plan",
                ONE,
                each(row -> figures.get(row.text("key")).in(unit(row)).counting(ONE)));
        Line least =
                s.line("published_least", "Published, from", ONE, each(row -> bound(row, "low")), "see the sources");
        Line most = s.line("published_most", "Published, to", ONE, each(row -> bound(row, "high")), "see the sources");
        Line place = s.textLine(
                "published_place",
                "That is",
                when(figure.exceeds(most), text("above"), when(least.exceeds(figure), text("below"), text("within"))));
        Line source = s.textLine("published_source", "Source", each(row -> text(row.text("source"))));
        s.textLine(
                "published_told",
                "Beside what is published",
                joined(
                        place,
                        text(" "),
                        shown(least, DECIMALS),
                        text(" to "),
                        shown(most, DECIMALS),
                        text(": "),
                        source));
    }

    private static String labelled(ProfileRow row, String currency) {
        Unit unit = unit(row);
        return unit.equals(ONE) ? row.text("label") : row.text("label") + ", " + unit.display(currency);
    }

    private static Unit unit(ProfileRow row) {
        return Unit.parse(row.text("unit"));
    }

    private static Formula bound(ProfileRow row, String end) {
        return number(row.number(end), ONE);
    }

    private Formula each(Function<ProfileRow, Formula> cell) {
        return new Rows(axis, rows.stream().map(cell).toList());
    }
}
