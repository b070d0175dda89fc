package org.benchmetre.farm.profile;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What is documented of a crop: defaults and usual ranges of entries, facts, and tables that sections ask for by name. What all crops
 * have in common stands once, and a crop says what it has otherwise. A profile decides no figure of a scenario that says its own.
 */
public final class CropProfile {

    private final String name;
    private final Map<String, Documented> entries = new LinkedHashMap<>();
    private final Map<String, DocumentedMonths> months = new LinkedHashMap<>();
    private final Map<String, Fact> facts = new LinkedHashMap<>();
    private final Map<String, List<ProfileRow>> tables;

    private CropProfile(String name, Map<String, List<ProfileRow>> tables) {
        this.name = name;
        this.tables = tables;
        rows("entries").forEach(row -> entries.put(row.text("line"), Documented.of(row)));
        rows("months").forEach(row -> months.put(row.text("line"), DocumentedMonths.of(row)));
        rows("facts").forEach(row -> facts.put(row.text("key"), Fact.of(row)));
    }

    /**
     * Reads a profile: its own files over those that all crops have in common.
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
     * What is documented of an entry that has to be documented.
     *
     * @param line its identifier
     * @return default, range and source
     * @throws IllegalStateException when nothing is documented
     */
    public Documented needed(String line) {
        return entry(line).orElseThrow(() -> lacking(line));
    }

    /**
     * What is documented of an entry by month.
     *
     * @param line its identifier
     * @return twelve values and their source
     * @throws IllegalStateException when nothing is documented
     */
    public DocumentedMonths months(String line) {
        DocumentedMonths known = months.get(line);
        if (known == null) {
            throw lacking(line);
        }
        return known;
    }

    /**
     * A fact that is no default of an entry.
     *
     * @param key its name
     * @return the fact
     * @throws IllegalStateException when the profile does not say it
     */
    public Fact fact(String key) {
        Fact known = facts.get(key);
        if (known == null) {
            throw lacking(key);
        }
        return known;
    }

    private IllegalStateException lacking(String what) {
        return new IllegalStateException("The profile of " + name + " does not say " + what + ".");
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
