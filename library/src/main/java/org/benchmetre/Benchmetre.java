package org.benchmetre;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.Entry;
import org.benchmetre.budget.FormulaException;
import org.benchmetre.budget.Given;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.run.Figures;
import org.benchmetre.farm.FarmBudget;
import org.benchmetre.scenario.Fault;
import org.benchmetre.scenario.Faults;
import org.benchmetre.scenario.Place;
import org.benchmetre.scenario.PriceList;
import org.benchmetre.scenario.ScenarioFolder;

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
     * @param prices a price list, see {@link PriceList}: its price, pack, price year and source replace those of the part with the
     *     same item; an item that no part has is noted; another unit than the part's or another currency is a fault
     * @param settings changes, see {@link Setting#parse}; each entry at most once
     * @return the plan
     * @throws ScenarioException when there are faults in any of the three, or a figure has no finite value; it carries all of them
     * @throws SettingSyntaxException when a setting does not follow the form; nothing was read
     */
    public static Plan read(Path scenario, Optional<Path> prices, List<String> settings) throws ScenarioException {
        Faults faults = new Faults();
        Settings changes = Settings.parse(settings, faults);
        ScenarioFolder folder = ScenarioFolder.open(scenario, faults);
        Optional<PriceList> list = prices.map(path -> PriceList.read(path, faults));
        if (!Files.isDirectory(scenario)) {
            throw new ScenarioException(faults);
        }
        Budget read = built(folder, faults);
        Budget priced = list.map(found -> new Prices(found, faults).over(read)).orElse(read);
        Budget budget = changes.over(priced);
        refuse(faults);
        checkChoices(budget, folder.name(), faults);
        refuse(faults);
        Figures figures = Figures.of(budget);
        figures.troubles().forEach(trouble -> faults.add(fault(folder.name(), trouble, "a finite number")));
        refuse(faults);
        return new Plan(budget, figures, faults);
    }

    /** Names that collide only when lines are built, such as a part that is called like a spare row, are faults as well. */
    private static Budget built(ScenarioFolder folder, Faults faults) throws ScenarioException {
        try {
            return FarmBudget.of(folder, faults);
        } catch (FormulaException e) {
            faults.add(fault(folder.name(), e.getMessage(), "names that do not collide"));
            ScenarioException refused = new ScenarioException(faults);
            refused.initCause(e);
            throw refused;
        }
    }

    private static void checkChoices(Budget budget, String name, Faults faults) {
        Set<Line> told = new HashSet<>();
        for (Line line : budget.lines()) {
            Optional<Line> keys = budget.entry(line).map(Entry::keysOf);
            if (keys.isPresent()
                    && told.add(keys.get())
                    && budget.given(keys.get()).stream().noneMatch(Given::filled)) {
                String title = keys.get().axes().get(0).title().toLowerCase(Locale.ROOT);
                faults.add(Place.wholeFile(name), "no row in the table of " + title, "at least one for " + line.id());
            }
        }
    }

    private static void refuse(Faults faults) throws ScenarioException {
        if (!faults.isEmpty()) {
            throw new ScenarioException(faults);
        }
    }

    private static Fault fault(String name, String sentence, String expected) {
        String cause = sentence.endsWith(".") ? sentence.substring(0, sentence.length() - 1) : sentence;
        return new Fault(Place.wholeFile(name), "that " + cause, expected);
    }
}
