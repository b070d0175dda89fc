package org.benchmetre;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.benchmetre.budget.CellRef;
import org.benchmetre.comparison.Compared;
import org.benchmetre.comparison.Comparison;
import org.benchmetre.comparison.Measure;
import org.benchmetre.comparison.SharedSetting;
import org.benchmetre.scenario.Faults;
import org.benchmetre.scenario.ManyFaults;
import org.benchmetre.scenario.Setting;

/** Reads scenarios that are to be compared, each with the same price list and settings, and tells the faults of all of them at once. */
final class SeveralScenarios {

    private final ManyFaults found = new ManyFaults();
    private final List<Compared> read = new ArrayList<>();

    static Comparison compared(List<Path> folders, Optional<Path> prices, List<String> settings, Measure per)
            throws ScenarioException {
        SeveralScenarios several = new SeveralScenarios();
        List<String> names = names(folders);
        for (int i = 0; i < names.size(); i++) {
            several.read(names.get(i), folders.get(i), prices, settings);
        }
        Faults all = several.found.all();
        Comparison.check(several.read, per, all);
        several.checkUnits(settings);
        if (!all.isEmpty()) {
            throw new ScenarioException(all);
        }
        return Comparison.of(several.read, per, all);
    }

    /** The folders' own names, with a number behind one that an earlier folder has as well. */
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

    private void read(String name, Path folder, Optional<Path> prices, List<String> settings) {
        try {
            Plan plan = Benchmetre.read(folder, prices, settings);
            found.remarks(name, plan.warnings(), plan.notes());
            read.add(new Compared(name, plan.figures()));
        } catch (ScenarioException e) {
            found.add(name, folder, e.faults());
        }
    }

    private void checkUnits(List<String> settings) {
        for (String text : settings) {
            Setting setting = Setting.parse(text);
            List<CellRef> cells = read.stream()
                    .map(each ->
                            setting.cell(each.figures().budget(), new Faults()).orElseThrow())
                    .toList();
            new SharedSetting(setting.place(), setting.value()).check(read, cells, found.all());
        }
    }
}
