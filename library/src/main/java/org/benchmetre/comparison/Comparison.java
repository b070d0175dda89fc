package org.benchmetre.comparison;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.entry.Numbers;
import org.benchmetre.budget.run.Figures;
import org.benchmetre.page.Page;
import org.benchmetre.scenario.Faults;
import org.benchmetre.scenario.Place;
import org.benchmetre.scenario.Remark;

/**
 * Two or more scenarios in one currency as a budget of its own; the first is what the others are held against. Its entries are figures of
 * the scenarios; differences, their causes and the answer are lines along the scenarios, and no figure is worked out anywhere else.
 * Not for use by several threads.
 */
public final class Comparison {

    private static final String PLAN_YEAR = "plan_year";

    private final ComparisonBudget built;
    private final Figures figures;
    private final Measure per;
    private final Faults found;

    private Comparison(ComparisonBudget built, Measure per, Faults found) {
        this.built = built;
        this.figures = Figures.of(built.budget());
        this.per = per;
        this.found = found;
    }

    /**
     * Holds scenarios against the first.
     *
     * @param scenarios two or more of different names that {@link #check} has found nothing against
     * @param per by what money and fruit are divided
     * @param found warnings and notes about them
     * @return the comparison
     * @throws IllegalArgumentException when there are fewer than two, or two of one name
     */
    public static Comparison of(List<Compared> scenarios, Measure per, Faults found) {
        Set<String> names = new HashSet<>();
        scenarios.forEach(each -> names.add(each.name()));
        if (names.size() < 2 || names.size() < scenarios.size()) {
            throw new IllegalArgumentException(
                    "Two or more scenarios of different names are compared; there were " + names + ".");
        }
        return new Comparison(ComparisonBudget.of(List.copyOf(scenarios), per), per, found);
    }

    /**
     * Looks whether scenarios can be held against the first: money of two currencies is not compared, nor what has nothing to divide
     * by; prices of two years may be, with a warning.
     *
     * @param scenarios the scenarios
     * @param per by what money and fruit are to be divided
     * @param faults where it is reported, each with the name of its scenario as its place
     */
    public static void check(List<Compared> scenarios, Measure per, Faults faults) {
        for (Compared each : scenarios) {
            checkAgainst(scenarios.get(0), each, faults);
            if (!(each.figures().number(per.line()) > 0)) {
                faults.add(Place.wholeFile(each.name()), "nothing to divide by", "some, for results " + per.words());
            }
        }
    }

    private static void checkAgainst(Compared first, Compared other, Faults faults) {
        Place place = Place.wholeFile(other.name());
        if (!other.currency().equals(first.currency())) {
            faults.add(place, "money in " + other.currency(), first.currency() + " as in " + first.name());
        }
        double year = first.figures().number(PLAN_YEAR);
        double otherYear = other.figures().number(PLAN_YEAR);
        if (otherYear != year) {
            String text = "the plan is of " + Numbers.plain(otherYear) + " and that of " + first.name() + " of "
                    + Numbers.plain(year) + "; no price is indexed";
            faults.warn(place, text);
        }
    }

    /**
     * The value of every line of the comparison.
     *
     * @return entries, differences, causes, sentences
     */
    public Figures figures() {
        return figures;
    }

    /**
     * What a reader sees.
     *
     * @return the answer, then the causes
     */
    public List<Page> pages() {
        Line names = figures.budget().line("scenario_name");
        List<String> scenarios = IntStream.range(0, names.size())
                .mapToObj(scenario -> figures.text(names, scenario))
                .toList();
        return ComparisonPages.of(built, scenarios, per);
    }

    /**
     * The measure.
     *
     * @return by what money and fruit are divided
     */
    public Measure per() {
        return per;
    }

    /**
     * Results side by side.
     *
     * @return first cost, yearly cost, fruit, receipts, returns above total cost, break-evens, in the order a reader wants them
     */
    public List<Beside> results() {
        return built.results();
    }

    /**
     * What receipts by the measure are the product of. What each brings is line {@code receipts_step}, along {@code factor} and
     * {@code scenario}.
     *
     * @return those that the measure leaves, in the order in which they are changed
     */
    public List<Beside> factors() {
        return built.factors();
    }

    /**
     * What looks wrong in any of the scenarios or between them.
     *
     * @return sorted by scenario; each names it
     */
    public List<Remark> warnings() {
        return found.warnings();
    }

    /**
     * How the files were understood.
     *
     * @return sorted by scenario; each names it
     */
    public List<Remark> notes() {
        return found.notes();
    }

    /**
     * Sums that should agree and do not, and figures that are not finite: faults of the arithmetic, not of the input.
     *
     * @return whole sentences; empty when all agree
     */
    public List<String> disagreements() {
        List<String> sentences = new ArrayList<>(figures.troubles());
        for (Line check : built.checks()) {
            for (int scenario = 0; scenario < check.size(); scenario++) {
                sentences.add(figures.text(check, scenario));
            }
        }
        sentences.removeIf(String::isEmpty);
        return List.copyOf(sentences);
    }
}
