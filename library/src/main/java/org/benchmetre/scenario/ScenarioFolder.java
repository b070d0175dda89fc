package org.benchmetre.scenario;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.benchmetre.budget.entry.NearNames;

/**
 * A scenario: a folder of CSV files, one table a file. {@code README.md}, other {@code .md} and {@code .txt} files and
 * hidden files are left alone.
 */
public final class ScenarioFolder implements ScenarioTables {

    /** The files that every scenario has. */
    public static final List<String> REQUIRED =
            List.of("farm.csv", "materials.csv", "irrigation.csv", "plant_stock.csv");

    /** The files that a scenario may have. */
    public static final List<String> OPTIONAL = List.of(
            "stock_prices.csv",
            "crops.csv",
            "tasks.csv",
            "months.csv",
            "channels.csv",
            "loans.csv",
            "funds.csv",
            "cash.csv");

    private static final List<String> KNOWN =
            Stream.concat(REQUIRED.stream(), OPTIONAL.stream()).toList();

    private final String name;
    private final Map<String, CsvTable> tables = new LinkedHashMap<>();
    private final List<String> present;

    private ScenarioFolder(Path folder, List<String> present) {
        Path last = folder.toAbsolutePath().normalize().getFileName();
        this.name = last == null ? folder.toString() : last.toString();
        this.present = present;
    }

    /**
     * Opens a folder and reads every known file in it.
     *
     * @param folder the folder
     * @param faults where everything wrong is reported: one fault for a missing folder, one for each required file that
     *     is missing, one for each file that is unreadable, one for each faulty header or row; a warning for each other
     *     CSV file
     * @return the scenario; tables that are missing are there without rows
     */
    public static ScenarioFolder open(Path folder, Faults faults) {
        if (!Files.isDirectory(folder)) {
            return unopened(folder, Files.exists(folder) ? "a file" : "no such folder", faults);
        }
        List<String> present;
        try (Stream<Path> entries = Files.list(folder)) {
            present = csvFiles(entries);
        } catch (IOException e) {
            return unopened(folder, "a folder that does not open", faults);
        }
        ScenarioFolder scenario = new ScenarioFolder(folder, present);
        KNOWN.forEach(file -> scenario.tables.put(file, scenario.read(folder, file, faults)));
        present.stream().filter(Predicate.not(KNOWN::contains)).forEach(file -> warnOf(file, faults));
        return scenario;
    }

    private static ScenarioFolder unopened(Path folder, String found, Faults faults) {
        faults.add(
                Place.wholeFile(folder.toString()), found, "a scenario folder with " + Phrases.joined(REQUIRED, "and"));
        ScenarioFolder scenario = new ScenarioFolder(folder, List.of());
        KNOWN.forEach(file -> scenario.tables.put(file, CsvTable.absent(file, faults)));
        return scenario;
    }

    private static List<String> csvFiles(Stream<Path> entries) {
        return entries.filter(Predicate.not(Files::isDirectory))
                .map(path -> path.getFileName().toString())
                .filter(file ->
                        !file.startsWith(".") && file.toLowerCase(Locale.ROOT).endsWith(".csv"))
                .collect(Collectors.collectingAndThen(Collectors.toCollection(TreeSet::new), ArrayList::new));
    }

    private CsvTable read(Path folder, String file, Faults faults) {
        if (present.contains(file)) {
            return CsvTable.read(folder.resolve(file), faults);
        }
        if (REQUIRED.contains(file)) {
            faults.add(
                    Place.wholeFile(file),
                    "no such file in the folder " + name,
                    "a file of this name in every scenario");
            return CsvTable.absent(file, faults);
        }
        return CsvTable.none(file);
    }

    private static void warnOf(String file, Faults faults) {
        String question = NearNames.didYouMean(file, KNOWN);
        faults.warn(Place.wholeFile(file), "nothing reads this file" + (question.isEmpty() ? "" : "; " + question));
    }

    /**
     * The files that a scenario in a folder consists of, whether they are there or not.
     *
     * @param folder the folder
     * @return one path for each of {@link #REQUIRED} and {@link #OPTIONAL}
     */
    public static List<Path> files(Path folder) {
        return KNOWN.stream().map(folder::resolve).toList();
    }

    /**
     * The folder's own name without what leads to it.
     *
     * @return for example {@code trough_house}
     */
    @Override
    public String name() {
        return name;
    }

    /**
     * Whether the folder has a file.
     *
     * @param file one of {@link #REQUIRED} or {@link #OPTIONAL}
     * @return true when it is there, readable or not
     */
    public boolean has(String file) {
        return present.contains(file);
    }

    /**
     * A table of the scenario.
     *
     * @param file one of {@link #REQUIRED} or {@link #OPTIONAL}
     * @return the table; without rows when the file is missing or unreadable
     * @throws IllegalArgumentException when scenarios have no file of that name
     */
    @Override
    public CsvTable table(String file) {
        CsvTable table = tables.get(file);
        if (table == null) {
            throw new IllegalArgumentException(
                    "Scenarios have no file '" + file + "'; they have " + Phrases.joined(KNOWN, "and") + ".");
        }
        return table;
    }
}
