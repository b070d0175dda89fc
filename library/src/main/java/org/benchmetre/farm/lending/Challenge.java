package org.benchmetre.farm.lending;

import static org.benchmetre.budget.Formulas.joined;
import static org.benchmetre.budget.Formulas.number;
import static org.benchmetre.budget.Formulas.one;
import static org.benchmetre.budget.Formulas.shown;
import static org.benchmetre.budget.Formulas.text;
import static org.benchmetre.budget.Formulas.when;
import static org.benchmetre.farm.input.TradeUnits.ONE;

import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.IntStream;
import org.benchmetre.budget.Axis;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Formula;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.Rows;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.entry.EvidenceKind;
import org.benchmetre.decision.EndSearch;
import org.benchmetre.decision.EntryWords;
import org.benchmetre.decision.RangeEnds;
import org.benchmetre.farm.input.FarmEntries;
import org.benchmetre.farm.input.FarmTable;
import org.benchmetre.farm.input.Sheets;

/**
 * What a lender should doubt: assumptions with their ranges, where they come from, and how far each alone moves net present value and
 * lowest coverage. All but the values are as they were when the plan was written, since each effect takes the whole plan once more.
 */
final class Challenge {

    private static final double LESS = 0.7;
    private static final double MORE = 1.5;

    /** A source is told in two lines of a page; in full it stands on Entries. */
    private static final int LETTERS = 52;

    private static final String FRUIT_OF_ONE = "yield_per_plant";
    private static final String FRUIT_OF_ALL = "yield_level";
    private static final String NOTE =
            "this entry alone at the end of its usual range, all others as entered; 0.7 to 1.5 times the entry where "
                    + "no range is known: our choice, no source";

    private final List<Doubt> doubts;
    private final List<Line> lines;
    private final RangeEnds ends;
    private final EndSearch.Figure worth;
    private final EndSearch.Figure coverage;
    private final ScheduleBuilder single;

    Challenge(BudgetBuilder b, FarmEntries entries, Line netPresentValue, Line lowest) {
        String unused = FarmTable.CROPS.hasRows(b.structure()) ? FRUIT_OF_ONE : FRUIT_OF_ALL;
        String currency = b.structure().currency();
        doubts = Doubt.of(name -> !name.equals(unused));
        lines = doubts.stream().map(doubt -> entries.line(doubt.entry())).toList();
        ends = new RangeEnds(lines, List.of(netPresentValue, lowest), LESS, MORE);
        worth = EndSearch.Figure.of(netPresentValue);
        coverage = new EndSearch.Figure(lowest, Repayment.NO_DEBT, "no debt");
        Axis axis = Axis.rows(
                "challenge", "Assumption", doubts.stream().map(Doubt::entry).toList(), 0);
        ScheduleBuilder s = b.schedule(Sheets.SUBMISSION, "What to doubt");
        single = b.schedule(Sheets.SUBMISSION, "What to doubt, in words");
        b.nameRows(
                axis,
                s.textLine(
                        "challenge_label",
                        "Assumption",
                        rows(axis, row -> text(doubts.get(row).label()))));
        s.line(
                "challenge_value",
                "As entered",
                ONE,
                rows(axis, row -> doubts.get(row).value(lines.get(row), currency)),
                "shares and rates in per cent");
        List<EntryWords.Told> told = doubts.stream()
                .map(doubt -> doubt.told(entries.line(doubt.entry()), currency))
                .toList();
        s.solvedText("challenge_range", "Usual range", NOTE, new EntryWords.Ranges(ends, told), axis);
        s.solvedText(
                "challenge_evidence",
                "Evidence",
                "the weakest word of the source: a choice of this project, no source",
                new EntryWords.Kinds(new EntryWords.Asked(lines, Doubt.BEHIND)),
                axis);
        s.solvedText(
                "challenge_source",
                "Source",
                "as entered, else as documented",
                new EntryWords.Sources(lines, LETTERS),
                axis);
        change(s, axis, "challenge_worth", "Net present value", worth);
        change(s, axis, "challenge_coverage", "Lowest coverage", coverage);
        s.solvedNumber(
                "challenge_weight",
                "Weight",
                ONE,
                "the larger of both changes, each as a share of the largest: our choice, no source",
                new EndSearch.Weight(ends, List.of(worth, coverage)),
                axis);
        sentence(currency);
        evidence();
    }

    private static Formula rows(Axis axis, Function<Integer, Formula> each) {
        return new Rows(axis, IntStream.range(0, axis.size()).boxed().map(each).toList());
    }

    private void change(ScheduleBuilder s, Axis axis, String id, String label, EndSearch.Figure figure) {
        for (boolean isHigh : List.of(false, true)) {
            String end = isHigh ? "high" : "low";
            s.solved(
                    id + "_" + end,
                    label + ", change at the " + end + " end",
                    figure.line().unit(),
                    NOTE,
                    new EndSearch.Change(ends, figure, isHigh),
                    axis);
        }
    }

    private record Most(Line name, Line size) {}

    private Most most(String id, String label, EndSearch.Figure figure) {
        List<String> names = doubts.stream()
                .map(doubt -> doubt.label().toLowerCase(Locale.ROOT))
                .toList();
        return new Most(
                single.solvedText(
                        id + "_first",
                        label + ": what moves it most",
                        NOTE,
                        new EndSearch.Foremost(ends, figure, names)),
                single.solvedNumber(
                        id + "_most",
                        label + ": by how much",
                        figure.line().unit(),
                        NOTE,
                        new EndSearch.Largest(ends, figure)));
    }

    private void sentence(String currency) {
        Most ofWorth = most("challenge_worth", "Net present value", worth);
        Most ofCoverage = most("challenge_coverage", "Lowest coverage", coverage);
        Formula by = joined(text(" by up to "), shown(ofCoverage.size, 2));
        Formula same = joined(text(", and lowest coverage"), by);
        Formula other = joined(text("; lowest coverage hangs most on "), ofCoverage.name, text(", which moves it"), by);
        Line further = single.textLine(
                "challenge_coverage_words",
                "What moves lowest coverage most, in words",
                when(ofCoverage.size.isPositive(), when(ofCoverage.name.is(ofWorth.name), same, other), text("")));
        single.textLine(
                "challenge_sentence",
                "What hangs on it",
                joined(
                        text("Doubt first "),
                        ofWorth.name,
                        text(": within its usual range it moves net present value by up to "),
                        shown(ofWorth.size.counting(ONE), 0),
                        text(" " + currency),
                        further,
                        text(".")));
    }

    private void evidence() {
        Line backed = single.solvedNumber(
                "challenge_backed",
                "Quoted or published",
                ONE,
                "by the words of their sources",
                new EntryWords.Counted(
                        new EntryWords.Asked(lines, Doubt.BEHIND),
                        Set.of(EvidenceKind.QUOTED, EvidenceKind.PUBLISHED)));
        single.line(
                "challenge_evidence_sentence",
                "What the assumptions rest on",
                ONE,
                when(
                        number(lines.size(), ONE).exceeds(backed),
                        joined(
                                text("Of " + lines.size() + " assumptions that decide most, "),
                                when(backed.isPositive(), shown(backed, 0), text("none")),
                                when(backed.exceeds(one()), text(" are"), text(" is")),
                                text(" quoted or published: ask for more evidence.")),
                        text("All assumptions that decide most are quoted or published.")),
                "against the number of assumptions: plain arithmetic");
    }
}
