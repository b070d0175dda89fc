package org.benchmetre;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.run.Figures;
import org.benchmetre.comparison.Comparison;
import org.benchmetre.comparison.Measure;
import org.benchmetre.farm.FarmBudget;
import org.benchmetre.scenario.Fault;
import org.benchmetre.scenario.Faults;
import org.benchmetre.scenario.Place;
import org.benchmetre.scenario.ScenarioFolder;
import org.benchmetre.scenario.ScenarioReader;
import org.benchmetre.scenario.ScenarioTables;
import org.benchmetre.scenario.Settings;

/** Reads scenarios. */
public final class Benchmetre {

    private Benchmetre() {}

    /**
     * Reads a scenario as it stands.
     *
     * @param scenario the folder
     * @return the plan
     * @throws ScenarioException when there are faults; it carries all of them
     */
    public static Plan read(Path scenario) throws ScenarioException {
        return read(scenario, Optional.empty(), List.of());
    }

    /**
     * Reads a scenario, lays a price list over its parts, then settings over its entries.
     *
     * @param scenario the folder
     * @param prices a price list, see {@link org.benchmetre.scenario.PriceLayer}: its price, pack, price year and source replace those of the part with the
     *     same item; an item that no part has is noted; another unit than the part's or another currency is a fault
     * @param settings changes, see {@link org.benchmetre.scenario.Setting#parse}; each entry at most once
     * @return the plan
     * @throws ScenarioException when there are faults in any of the three, or a figure has no finite value; it carries all of them
     * @throws org.benchmetre.scenario.SettingSyntaxException when a setting does not follow the form; nothing was read
     */
    public static Plan read(Path scenario, Optional<Path> prices, List<String> settings) throws ScenarioException {
        Settings changes = Settings.parse(settings);
        Faults faults = new Faults();
        ScenarioFolder folder = ScenarioFolder.open(scenario, faults);
        if (!Files.isDirectory(scenario)) {
            throw new ScenarioException(faults);
        }
        return plan(folder, new ScenarioReader.Over(prices, changes), faults);
    }

    /**
     * Starts a plan that is put together in memory.
     *
     * @param crop whose documented defaults stand where nothing is said, by its name in lower case
     * @return where rows and entries are said
     */
    public static PlanBuilder plan(String crop) {
        return new PlanBuilder(crop);
    }

    static Plan read(ScenarioTables tables) throws ScenarioException {
        return plan(tables, ScenarioReader.Over.NOTHING, new Faults());
    }

    private static Plan plan(ScenarioTables tables, ScenarioReader.Over over, Faults faults) throws ScenarioException {
        Budget budget = FarmBudget.READER.read(tables, over, faults).orElseThrow(() -> new ScenarioException(faults));
        return plan(budget, faults, tables.name());
    }

    /**
     * Reads scenarios, each with the same price list and the same settings, and holds them against the first.
     *
     * @param scenarios two or more folders; the same one may stand there twice
     * @param prices a price list for all of them
     * @param settings changes for all of them; one that a scenario cannot take is a fault of that scenario
     * @param per by what money and fruit are divided
     * @return the comparison, a budget of its own
     * @throws ScenarioException when any has faults, another currency than the first or nothing to divide by, or a number set without
     *     a unit would be in another unit in each; it carries the faults of all scenarios
     * @throws org.benchmetre.scenario.SettingSyntaxException when a setting does not follow the form
     * @throws IllegalArgumentException when there are fewer than two
     */
    public static Comparison compare(List<Path> scenarios, Optional<Path> prices, List<String> settings, Measure per)
            throws ScenarioException {
        if (scenarios.size() < 2) {
            throw new IllegalArgumentException(
                    "Two or more scenarios are compared; there were " + scenarios.size() + ".");
        }
        return SeveralScenarios.compared(scenarios, prices, settings, per);
    }

    /** The plan of a budget, if all its figures are finite. */
    static Plan plan(Budget budget, Faults faults, String name) throws ScenarioException {
        Figures figures = Figures.of(budget);
        figures.troubles().forEach(trouble -> faults.add(fault(name, trouble, "a finite number")));
        if (!faults.isEmpty()) {
            throw new ScenarioException(faults);
        }
        return new Plan(budget, figures, faults);
    }

    private static Fault fault(String name, String sentence, String expected) {
        String cause = sentence.endsWith(".") ? sentence.substring(0, sentence.length() - 1) : sentence;
        return new Fault(Place.wholeFile(name), "that " + cause, expected);
    }
}
