package org.benchmetre;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.benchmetre.budget.entry.Numbers;
import org.benchmetre.scenario.Faults;
import org.benchmetre.scenario.Place;
import org.benchmetre.scenario.Remark;

/** Two or more scenarios in one currency, side by side; the first is what the others are held against. */
public final class Comparison {

    private final List<Compared> scenarios;
    private final ManyFaults found;

    private Comparison(List<Compared> scenarios, ManyFaults found) {
        this.scenarios = List.copyOf(scenarios);
        this.found = found;
    }

    /**
     * Reads scenarios, each with the same price list and the same settings.
     *
     * @param folders two or more folders; the same one may stand there twice
     * @param prices a price list for all of them
     * @param settings changes for all of them; one that a scenario cannot take is a fault of that scenario
     * @return the scenarios
     * @throws ScenarioException when any has faults or another currency than the first, or a number set without a unit would be
     *     in another unit in each; it carries the faults of all scenarios
     * @throws SettingSyntaxException when a setting does not follow the form
     * @throws IllegalArgumentException when there are fewer than two
     */
    public static Comparison read(List<Path> folders, Optional<Path> prices, List<String> settings)
            throws ScenarioException {
        if (folders.size() < 2) {
            throw new IllegalArgumentException(
                    "Two or more scenarios are compared; there were " + folders.size() + ".");
        }
        ManyFaults found = new ManyFaults();
        List<Compared> read = new ArrayList<>();
        List<String> names = names(folders);
        for (int i = 0; i < names.size(); i++) {
            String name = names.get(i);
            Path folder = folders.get(i);
            try {
                Plan plan = Benchmetre.read(folder, prices, settings);
                found.remarks(name, plan.warnings(), plan.notes());
                read.add(new Compared(name, folder, plan));
            } catch (ScenarioException e) {
                found.add(name, folder, e.faults());
            }
        }
        if (read.size() > 1) {
            read.subList(1, read.size()).forEach(other -> check(read.get(0), other, found.all()));
            new SharedSettings(settings, read).check(found.all());
        }
        if (!found.all().isEmpty()) {
            throw new ScenarioException(found.all());
        }
        return new Comparison(read, found);
    }

    private static List<String> names(List<Path> folders) {
        List<String> names = new ArrayList<>();
        for (Path folder : folders) {
            Path last = folder.toAbsolutePath().normalize().getFileName();
            String own = last == null ? folder.toString() : last.toString();
            String name = own;
            for (int i = 2; names.contains(name); i++) {
                name = own + " (" + i + ")";
            }
            names.add(name);
        }
        return names;
    }

    /** Money of two currencies is not compared; prices of two years may be, with a warning. */
    private static void check(Compared first, Compared other, Faults faults) {
        String currency = first.plan().budget().currency();
        if (!other.plan().budget().currency().equals(currency)) {
            faults.add(
                    Place.wholeFile(other.name()),
                    "money in " + other.plan().budget().currency(),
                    currency + " as in " + first.name());
        }
        double year = first.figures().number(Lines.PLAN_YEAR);
        double otherYear = other.figures().number(Lines.PLAN_YEAR);
        if (otherYear != year) {
            String text = "the plan is of " + Numbers.plain(otherYear) + " and that of " + first.name() + " of "
                    + Numbers.plain(year) + "; no price is indexed";
            faults.warn(Place.wholeFile(other.name()), text);
        }
    }

    /**
     * The scenarios.
     *
     * @return two or more, in the order given
     */
    public List<Compared> scenarios() {
        return scenarios;
    }

    /**
     * The currency of all of them.
     *
     * @return an ISO 4217 code
     */
    public String currency() {
        return scenarios.get(0).plan().budget().currency();
    }

    /**
     * What looks wrong in any of the scenarios or between them.
     *
     * @return sorted by scenario; each names it
     */
    public List<Remark> warnings() {
        return found.all().warnings();
    }

    /**
     * How the files were understood.
     *
     * @return sorted by scenario; each names it
     */
    public List<Remark> notes() {
        return found.all().notes();
    }
}
