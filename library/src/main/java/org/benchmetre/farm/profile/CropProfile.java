package org.benchmetre.farm.profile;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.benchmetre.budget.Structure;
import org.benchmetre.budget.entry.Usual;
import org.benchmetre.budget.unit.Unit;

/**
 * What is documented of a crop: defaults and usual ranges of entries, facts, and tables that sections ask for by name. What all crops
 * have in common stands once, and a crop says what it has otherwise. A profile decides no figure of a scenario that says its own.
 */
public final class CropProfile {

    /** Currencies of which one unit is worth about a dollar: from memory, to within a factor of two. */
    public static final Set<String> DOLLARS_WORTH = Set.of("USD", "EUR", "GBP", "CAD", "AUD", "CHF");

    private final String name;
    private final Map<String, Documented> entries = new LinkedHashMap<>();
    private final Map<String, DocumentedMonths> months = new LinkedHashMap<>();
    private final Map<String, Documented> ranges = new LinkedHashMap<>();
    private final Map<String, Fact> facts = new LinkedHashMap<>();
    private final Map<String, List<ProfileRow>> tables;
    private final boolean moneyHolds;

    private CropProfile(String name, Map<String, List<ProfileRow>> tables, boolean moneyHolds) {
        this.name = name;
        this.tables = tables;
        this.moneyHolds = moneyHolds;
        rows("ranges").forEach(row -> ranges.put(row.text("line"), Documented.ofRange(row)));
        rows("entries").forEach(row -> entries.put(row.text("line"), Documented.of(row)));
        rows("months").forEach(row -> months.put(row.text("line"), DocumentedMonths.of(row)));
        rows("facts").forEach(row -> facts.put(row.text("key"), Fact.of(row)));
    }

    /**
     * Reads a profile: its own files over those that all crops have in common.
     *
     * @param name of the crop, as {@code plan_crop} says it
     * @return the profile
     * @throws IllegalArgumentException when there is no such profile
     * @throws IllegalStateException when the profile is not well formed: a fault of the library
     */
    public static CropProfile of(String name) {
        return new CropProfile(name, ProfileFiles.read(name), true);
    }

    /**
     * The profile of a plan: of its crop, as it holds for its money.
     *
     * @param structure of the plan
     * @return the profile; one that documents nothing where the plan names no crop
     * @throws IllegalArgumentException when there is no profile of that name
     */
    public static CropProfile of(Structure structure) {
        return structure.kind().isEmpty()
                ? new CropProfile("", Map.of(), false)
                : of(structure.kind()).forMoney(structure.currency());
    }

    /**
     * The profile as it holds for a plan in a currency. Documented ranges of money are meant for money of about a dollar's worth; in
     * any other currency they say nothing. Defaults stay, for a plan has none but its own prices.
     *
     * @param currency ISO 4217 code of the plan's money
     * @return a profile whose ranges of money are known only for {@link #DOLLARS_WORTH}
     */
    public CropProfile forMoney(String currency) {
        return new CropProfile(name, tables, DOLLARS_WORTH.contains(currency));
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
     * The usual range of a column of a table, or of a total.
     *
     * @param line its identifier
     * @param unit its unit
     * @return range and source; unknown where nothing is documented, or what is does not hold for the plan's money
     */
    public Usual range(String line, Unit unit) {
        Documented range = ranges.get(line);
        return range == null || unit.hasMoney() && !moneyHolds
                ? Usual.UNKNOWN
                : new Usual(range.in(unit), "", range.source());
    }

    /**
     * Whether documented ranges of money hold for the plan's money.
     *
     * @return true for {@link #DOLLARS_WORTH}
     */
    public boolean moneyHolds() {
        return moneyHolds;
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
