package org.benchmetre.farm.profile;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.benchmetre.scenario.CsvTable;
import org.benchmetre.scenario.Faults;

/**
 * The files of profiles: one folder a crop, which names its tables in {@code tables.csv}, over one folder of what all crops have in
 * common. Rows of defaults and facts stand in place of common rows of the same name; any other table of the crop stands in place of
 * the whole common table. They are found where classes are found, so that a profile may come with another jar.
 */
final class ProfileFiles {

    private static final String FOLDER = "/org/benchmetre/profile/";
    private static final String LIST = "tables";
    private static final String COMMON = "common";
    private static final Set<String> BY_ROW = Set.of("entries", "months", "facts", "ranges");
    private static final Pattern NAME = Pattern.compile("[a-z][a-z0-9_]*");

    private static final Map<String, Map<String, List<ProfileRow>>> READ = new ConcurrentHashMap<>();

    private ProfileFiles() {}

    static boolean exists(String name) {
        return NAME.matcher(name).matches()
                && !name.equals(COMMON)
                && ProfileFiles.class.getResource(path(name, LIST)) != null;
    }

    /** All tables of a profile by name, those of all crops first; files are read once, for they are part of the program. */
    static Map<String, List<ProfileRow>> read(String name) {
        if (!exists(name)) {
            throw new IllegalArgumentException("There is no profile of a crop '" + name + "'.");
        }
        return READ.computeIfAbsent(name, ProfileFiles::tables);
    }

    private static Map<String, List<ProfileRow>> tables(String name) {
        Map<String, List<ProfileRow>> tables = new LinkedHashMap<>();
        for (String folder : List.of(COMMON, name)) {
            for (ProfileRow row : rows(folder, LIST)) {
                String table = row.text("table");
                tables.merge(
                        table, rows(folder, table), BY_ROW.contains(table) ? ProfileFiles::both : (all, own) -> own);
            }
        }
        return Collections.unmodifiableMap(tables);
    }

    private static List<ProfileRow> both(List<ProfileRow> all, List<ProfileRow> own) {
        return Stream.concat(all.stream(), own.stream()).toList();
    }

    private static String path(String name, String table) {
        return FOLDER + name + "/" + table + ".csv";
    }

    private static List<ProfileRow> rows(String name, String table) {
        String path = path(name, table);
        try (InputStream in = ProfileFiles.class.getResourceAsStream(path)) {
            if (in == null) {
                throw new IllegalStateException("The library was packed without " + path + ".");
            }
            String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            return parsed(path, text);
        } catch (IOException e) {
            throw new IllegalStateException(path + " cannot be read.", e);
        }
    }

    private static List<ProfileRow> parsed(String path, String text) {
        Faults faults = new Faults();
        CsvTable table = CsvTable.parse(text, path, faults);
        if (!faults.isEmpty()) {
            throw new IllegalStateException(faults.report());
        }
        String first = table.columns().get(0);
        Set<String> names = new HashSet<>();
        table.rows().stream()
                .filter(row -> !names.add(row.text(first)))
                .findFirst()
                .ifPresent(row -> {
                    throw new IllegalStateException(
                            row.place(first) + ": " + row.text(first) + " stands a second time.");
                });
        return table.rows().stream()
                .map(row -> new ProfileRow(
                        row.place("").toString(),
                        table.columns().stream().collect(Collectors.toMap(Function.identity(), row::text))))
                .toList();
    }
}
