package org.benchmetre;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** The drawing of the packages in the developers' page is made from the classes: each package once, arrows to what stands below. */
class PackageDrawingTest {

    private static final String ROOT = "org.benchmetre";

    private static final JavaClasses CLASSES = new ClassFileImporter()
            .withImportOption(new ImportOption.DoNotIncludeTests())
            .importPackages(ROOT);

    /** What each package uses, of our own. */
    private static Map<String, Set<String>> uses() {
        Map<String, Set<String>> uses = new TreeMap<>();
        for (JavaClass each : CLASSES) {
            Set<String> used = uses.computeIfAbsent(each.getPackageName(), any -> new TreeSet<>());
            each.getDirectDependenciesFromSelf().stream()
                    .map(dependency -> dependency.getTargetClass().getPackageName())
                    .filter(name -> name.startsWith(ROOT) && !name.equals(each.getPackageName()))
                    .forEach(used::add);
        }
        return uses;
    }

    /** How many packages stand below on the longest way down. */
    private static int height(String name, Map<String, Set<String>> uses) {
        return uses.get(name).stream()
                .mapToInt(below -> 1 + height(below, uses))
                .max()
                .orElse(0);
    }

    /** Arrows that no way over other packages makes needless. */
    private static List<String> arrows(String name, Map<String, Set<String>> uses) {
        return uses.get(name).stream()
                .filter(below ->
                        uses.get(name).stream().noneMatch(other -> !other.equals(below) && reaches(other, below, uses)))
                .map(PackageDrawingTest::shortened)
                .toList();
    }

    private static boolean reaches(String from, String to, Map<String, Set<String>> uses) {
        return uses.get(from).contains(to) || uses.get(from).stream().anyMatch(next -> reaches(next, to, uses));
    }

    private static String shortened(String name) {
        return name.equals(ROOT) ? ROOT : name.substring(ROOT.length() + 1);
    }

    private static String drawing() {
        Map<String, Set<String>> uses = uses();
        List<String> names = new ArrayList<>(uses.keySet());
        names.sort(
                Comparator.comparingInt((String name) -> -height(name, uses)).thenComparing(Comparator.naturalOrder()));
        return names.stream()
                .map(name -> {
                    List<String> arrows = arrows(name, uses);
                    String line = String.format(Locale.ROOT, "%-29s", shortened(name));
                    return (line + (arrows.isEmpty() ? "" : "↓ " + String.join(", ", arrows))).stripTrailing();
                })
                .collect(Collectors.joining("\n"));
    }

    @Test
    void the_developers_page_shows_the_packages_as_they_are() throws IOException {
        String page = Files.readString(Path.of("..", "DEVELOPERS.md"));
        assertThat(page).contains("```text\n" + drawing() + "\n```");
    }
}
