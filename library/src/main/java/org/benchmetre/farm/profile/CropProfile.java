package org.benchmetre.farm.profile;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What is documented of a crop: defaults and usual ranges of entries, and tables that sections ask for by name. A profile decides no
 * figure of a scenario that says its own.
 */
public final class CropProfile {

    private final String name;
    private final Map<String, Documented> entries = new LinkedHashMap<>();
    private final Map<String, DocumentedMonths> months = new LinkedHashMap<>();
    private final Map<String, List<ProfileRow>> tables;

    private CropProfile(String name, Map<String, List<ProfileRow>> tables) {
        this.name = name;
        this.tables = tables;
        rows("entries").forEach(row -> entries.put(row.text("line"), Documented.of(row)));
        rows("months").forEach(row -> months.put(row.text("line"), DocumentedMonths.of(row)));
    }

    /**
     * Reads a profile that comes with the library.
     *
     * @param name of the crop, such as {@code strawberry}
     * @return the profile
     * @throws IllegalArgumentException when there is no such profile
     * @throws IllegalStateException when the profile is not well formed: a fault of the library
     */
    public static CropProfile of(String name) {
        return new CropProfile(name, ProfileFiles.read(name));
    }

    /**
     * Whether a profile comes with the library.
     *
     * @param name of the crop
     * @return true when there is one
     */
    public static boolean exists(String name) {
        return ProfileFiles.exists(name);
    }

    /**
     * What the crop is called.
     *
     * @return lower case
     */
    public String name() {
        return name;
    }

    /**
     * What is documented of a single entry.
     *
     * @param line its identifier
     * @return default, range and source, if anything is documented
     */
    public Optional<Documented> entry(String line) {
        return Optional.ofNullable(entries.get(line));
    }

    /**
     * What is documented of an entry by month.
     *
     * @param line its identifier
     * @return twelve values and their source, if anything is documented
     */
    public Optional<DocumentedMonths> months(String line) {
        return Optional.ofNullable(months.get(line));
    }

    /**
     * The identifiers of all lines that are documented.
     *
     * @return in the order of the files
     */
    public List<String> lines() {
        List<String> all = new ArrayList<>(entries.keySet());
        all.addAll(months.keySet());
        return all;
    }

    /**
     * The rows of a table of the profile.
     *
     * @param table its name, without {@code .csv}
     * @return in order; empty when the crop has none
     */
    public List<ProfileRow> rows(String table) {
        return tables.getOrDefault(table, List.of());
    }
}
