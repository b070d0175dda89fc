package org.benchmetre.farm.profile;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.benchmetre.scenario.Faults;
import org.benchmetre.scenario.Table;

/** The files of profiles, which are packed with the library: one folder a crop, named in its {@code tables.csv}. */
final class ProfileFiles {

    private static final String FOLDER = "/org/benchmetre/profile/";
    private static final String LIST = "tables";
    private static final Pattern NAME = Pattern.compile("[a-z][a-z0-9_]*");

    private ProfileFiles() {}

    static boolean exists(String name) {
        return NAME.matcher(name).matches() && ProfileFiles.class.getResource(path(name, LIST)) != null;
    }

    /** All tables of a profile by name. */
    static Map<String, List<ProfileRow>> read(String name) {
        if (!exists(name)) {
            throw new IllegalArgumentException("There is no profile of a crop '" + name + "'.");
        }
        Map<String, List<ProfileRow>> tables = new LinkedHashMap<>();
        for (ProfileRow row : rows(name, LIST)) {
            String table = row.text("table");
            tables.put(table, rows(name, table));
        }
        return tables;
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
        Table table = Table.parse(text, path, faults);
        if (!faults.isEmpty()) {
            throw new IllegalStateException(faults.report());
        }
        return table.rows().stream()
                .map(row -> new ProfileRow(
                        row.place("").toString(),
                        table.columns().stream().collect(Collectors.toMap(Function.identity(), row::text))))
                .toList();
    }
}
