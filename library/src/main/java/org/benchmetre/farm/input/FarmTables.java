package org.benchmetre.farm.input;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.benchmetre.scenario.TableForm;

/** How the files of a farm are kept. */
public final class FarmTables {

    /** All tables but that of single values. */
    public static final List<TableForm> FORMS = forms();

    private FarmTables() {}

    /**
     * How a table is kept.
     *
     * @param file its name
     * @return the form
     * @throws IllegalArgumentException when farms have no such table
     */
    public static TableForm form(String file) {
        return FORMS.stream()
                .filter(form -> form.file().equals(file))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("Farms have no table '" + file + "'; they have "
                        + String.join(", ", FORMS.stream().map(TableForm::file).toList()) + "."));
    }

    private static List<TableForm> forms() {
        List<TableForm> forms = new ArrayList<>(
                Arrays.stream(FarmTable.values()).map(FarmTable::form).toList());
        forms.add(TableForm.fixed(Months.FILE, Months.AXIS, Months.KEYS));
        return List.copyOf(forms);
    }
}
