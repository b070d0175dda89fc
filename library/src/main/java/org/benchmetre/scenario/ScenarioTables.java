package org.benchmetre.scenario;

/** The tables of a scenario, wherever they are kept: files of a folder, or rows put together in memory. */
public interface ScenarioTables {

    /**
     * What the scenario is called.
     *
     * @return the folder's name without what leads to it
     */
    String name();

    /**
     * A table.
     *
     * @param file its name
     * @return the table; without rows when the scenario does not have it or it is unreadable
     * @throws IllegalArgumentException when scenarios have no table of that name
     */
    CsvTable table(String file);
}
