package org.benchmetre.farm.loans;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.Structure;
import org.benchmetre.farm.input.FarmTable;
import org.benchmetre.farm.input.FarmTables;
import org.benchmetre.farm.profile.CropProfile;
import org.benchmetre.scenario.CsvTable;
import org.benchmetre.scenario.Deciding;
import org.benchmetre.scenario.Fault;
import org.benchmetre.scenario.Faults;
import org.benchmetre.scenario.ScenarioReader;
import org.benchmetre.scenario.ScenarioTables;
import org.benchmetre.scenario.ScenarioWriter;

/** A section that is built alone, read from the text of its files and written back. */
record OneSection(Consumer<BudgetBuilder> section) {

    private record Texts(Map<String, String> files, Faults faults) implements ScenarioTables {

        @Override
        public String name() {
            return "texts";
        }

        @Override
        public CsvTable table(String file) {
            return files.containsKey(file) ? CsvTable.parse(files.get(file), file, faults) : CsvTable.none(file);
        }
    }

    private Budget build(Structure structure) {
        BudgetBuilder b = new BudgetBuilder(structure);
        section.accept(b);
        return b.build();
    }

    private Budget read(Map<String, String> files, Faults faults) {
        ScenarioReader reader = new ScenarioReader(
                FarmTables.FORMS,
                this::build,
                FarmTable.MATERIALS.file(),
                "strawberry",
                CropProfile::exists,
                Deciding.NONE);
        return reader.read(new Texts(files, faults), ScenarioReader.Over.NOTHING, faults)
                .orElse(null);
    }

    /** The budget of a file that has no fault and nothing odd. */
    Budget read(String file, String text) {
        return read(Map.of(file, text));
    }

    /** The same of several files. */
    Budget read(Map<String, String> files) {
        Faults faults = new Faults();
        Budget budget = read(files, faults);
        assertThat(faults.faults()).isEmpty();
        assertThat(faults.warnings()).isEmpty();
        return budget;
    }

    /** What is wrong with a file. */
    List<String> faults(String file, String text) {
        Faults faults = new Faults();
        read(Map.of(file, text), faults);
        return faults.faults().stream().map(Fault::message).toList();
    }

    /** The same budget, written and read again. */
    Budget again(Budget budget) {
        return read(new ScenarioWriter(FarmTables.FORMS).files(budget));
    }
}
