package org.benchmetre;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.CellRef;
import org.benchmetre.budget.Kind;
import org.benchmetre.budget.Layer;
import org.benchmetre.budget.run.Explanation;
import org.benchmetre.budget.run.Figures;
import org.benchmetre.farm.input.FarmTables;
import org.benchmetre.farm.pages.FarmPages;
import org.benchmetre.page.Page;
import org.benchmetre.review.Agreement;
import org.benchmetre.review.Doubts;
import org.benchmetre.review.Watch;
import org.benchmetre.scenario.Address;
import org.benchmetre.scenario.Faults;
import org.benchmetre.scenario.Place;
import org.benchmetre.scenario.Remark;
import org.benchmetre.scenario.ScenarioWriter;
import org.benchmetre.scenario.Settings;

/** A scenario that was read without faults, and its figures, all of them finite. Not for use by several threads. */
public final class Plan {

    private final Budget budget;
    private final Figures figures;
    private final Faults found;

    Plan(Budget budget, Figures figures, Faults found) {
        this.budget = budget;
        this.figures = figures;
        this.found = found;
    }

    /**
     * The budget, with price list and settings in it.
     *
     * @return lines, schedules and entered values
     */
    public Budget budget() {
        return budget;
    }

    /**
     * The value of every line.
     *
     * @return figures that are all finite
     */
    public Figures figures() {
        return figures;
    }

    /**
     * What each reader sees: pages over the lines of the budget.
     *
     * @return in reading order, answers first
     */
    public List<Page> pages() {
        return FarmPages.of(budget);
    }

    /**
     * The same plan with one entry changed.
     *
     * @param address an entry, such as {@code plant_spacing} or {@code material_price[tape]}
     * @param value a number, with a unit behind it where it is not in the unit the entry was given in, or a word
     * @return a new plan; this one is unchanged
     * @throws ScenarioException when there is no such entry, it does not take the value, or a figure has no finite value then
     * @throws org.benchmetre.scenario.SettingSyntaxException when the address does not follow the form
     */
    public Plan with(String address, String value) throws ScenarioException {
        return with(List.of(address + "=" + value));
    }

    /**
     * The same plan with several entries changed at once.
     *
     * @param settings see {@link org.benchmetre.scenario.Setting#parse}; each entry at most once
     * @return a new plan; this one is unchanged
     * @throws ScenarioException when there are faults; it carries all of them
     * @throws org.benchmetre.scenario.SettingSyntaxException when a setting does not follow the form
     */
    public Plan with(List<String> settings) throws ScenarioException {
        Faults faults = new Faults();
        Layer layer = Settings.parse(settings).over(budget, new Layer(), faults);
        Optional<Budget> changed = budget.gate()
                .lay(
                        layer,
                        line -> false,
                        no -> faults.add(
                                Place.of(no, budget),
                                no.refusal().found(),
                                no.refusal().expected()));
        if (changed.isEmpty() || !faults.isEmpty()) {
            throw new ScenarioException(faults);
        }
        return Benchmetre.plan(changed.get(), faults, budget.title());
    }

    /**
     * A figure with its unit.
     *
     * @param address a line with one value, or a cell of a line with more, such as {@code material_quantity[tape]}
     * @return the figure
     * @throws IllegalArgumentException when there is no such figure, or it is no number
     */
    public Quantity quantity(String address) {
        CellRef cell = cell(address);
        if (cell.line().kind() == Kind.TEXT) {
            throw new IllegalArgumentException(address + " is a text, not a number.");
        }
        return new Quantity(
                figures.number(cell.line(), cell.cell()), cell.line().unit(), budget.currency());
    }

    /**
     * A text of the plan, such as a sentence of its answer.
     *
     * @param address a line with one value, or a cell of a line with more
     * @return the text
     * @throws IllegalArgumentException when there is no such figure, or it is no text
     */
    public String text(String address) {
        CellRef cell = cell(address);
        if (cell.line().kind() != Kind.TEXT) {
            throw new IllegalArgumentException(address + " is a number, not a text.");
        }
        return figures.text(cell.line(), cell.cell());
    }

    /**
     * Where a figure comes from, down to the entries.
     *
     * @param address a line with one value, or a cell of a line with more
     * @return the explanation, as indented text
     * @throws IllegalArgumentException when there is no such figure
     */
    public Explanation explain(String address) {
        CellRef cell = cell(address);
        return Explanation.of(figures, cell.line(), cell.cell());
    }

    private CellRef cell(String address) {
        Faults faults = new Faults();
        return Address.parse(address)
                .in(budget, Place.wholeFile(address), faults)
                .orElseThrow(() -> new IllegalArgumentException(faults.report().trim()));
    }

    /**
     * Writes the plan as a live workbook.
     *
     * @param target where it goes, an {@code .xlsx} that does not exist yet
     * @throws IOException when the target exists or cannot be written
     */
    public void writeWorkbook(Path target) throws IOException {
        FarmWorkbook.write(figures, target, false);
    }

    /**
     * Writes the plan as a folder of CSV files, which reads as the same plan.
     *
     * @param folder a new or empty folder
     * @throws IOException when the folder is not empty or cannot be written
     */
    public void writeScenario(Path folder) throws IOException {
        new ScenarioWriter(FarmTables.FORMS).write(budget, folder);
    }

    /**
     * What looks wrong in the files, though it can be used, and what the figures themselves warn of.
     *
     * @return the files' sorted by place, then the figures' in order of definition
     */
    public List<Remark> warnings() {
        List<Remark> all = new ArrayList<>(found.warnings());
        all.addAll(new Watch(figures).remarks());
        return List.copyOf(all);
    }

    /**
     * How the files were understood.
     *
     * @return sorted by place
     */
    public List<Remark> notes() {
        return found.notes();
    }

    /**
     * What looks wrong in the values: entries outside their usual range, and prices of another year than the plan.
     *
     * @return in the order of the lines
     */
    public List<Remark> doubts() {
        return new Doubts(budget).all();
    }

    /**
     * Sums that should agree and do not: a fault of the arithmetic, not of the input.
     *
     * @return whole sentences; empty when all agree
     */
    public List<String> disagreements() {
        return Agreement.disagreements(figures);
    }
}
