package org.benchmetre;

import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static java.util.stream.Collectors.groupingBy;
import static java.util.stream.Collectors.mapping;
import static java.util.stream.Collectors.toList;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Arrows point one way. */
class ArchitectureTest {

    private static final JavaClasses CLASSES = new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .importPackages("org.benchmetre");

    private static final String PAGES_OF_THE_FARM = "org.benchmetre.farm.pages..";

    @Test
    void classesWereSeen() {
        assertThat(CLASSES.size()).isGreaterThan(60);
        assertThat(CLASSES.contain("org.benchmetre.budget.Budget")).isTrue();
        assertThat(CLASSES.contain("org.benchmetre.farm.FarmBudget")).isTrue();
        assertThat(CLASSES.contain("org.benchmetre.farm.pages.FarmPages")).isTrue();
    }

    @Test
    void layersPointDown() {
        layeredArchitecture()
                .consideringOnlyDependenciesInLayers()
                .layer("front door")
                .definedBy("org.benchmetre")
                .layer("review")
                .definedBy("org.benchmetre.review..")
                .layer("comparison")
                .definedBy("org.benchmetre.comparison..")
                .layer("workbook")
                .definedBy("org.benchmetre.workbook..")
                .layer("files")
                .definedBy("org.benchmetre.files..")
                .layer("page shown")
                .definedBy("org.benchmetre.page.shown..")
                .layer("page")
                .definedBy("org.benchmetre.page")
                .layer("farm pages")
                .definedBy(PAGES_OF_THE_FARM)
                .layer("farm")
                .definedBy(resideInAPackage("org.benchmetre.farm..").and(not(resideInAPackage(PAGES_OF_THE_FARM))))
                .layer("decision")
                .definedBy("org.benchmetre.decision..")
                .layer("scenario")
                .definedBy("org.benchmetre.scenario..")
                .layer("run")
                .definedBy("org.benchmetre.budget.run..")
                .layer("graph")
                .definedBy("org.benchmetre.budget")
                .layer("unit")
                .definedBy("org.benchmetre.budget.unit..")
                .whereLayer("front door")
                .mayNotBeAccessedByAnyLayer()
                .whereLayer("review")
                .mayOnlyBeAccessedByLayers("front door")
                .whereLayer("comparison")
                .mayOnlyBeAccessedByLayers("front door")
                .whereLayer("workbook")
                .mayOnlyBeAccessedByLayers("front door")
                .whereLayer("files")
                .mayOnlyBeAccessedByLayers("front door", "workbook", "scenario")
                .whereLayer("page shown")
                .mayOnlyBeAccessedByLayers("workbook")
                .whereLayer("page")
                .mayOnlyBeAccessedByLayers("front door", "comparison", "workbook", "page shown", "farm pages")
                .whereLayer("decision")
                .mayOnlyBeAccessedByLayers("farm")
                .whereLayer("farm pages")
                .mayOnlyBeAccessedByLayers("front door")
                .whereLayer("farm")
                .mayOnlyBeAccessedByLayers("front door", "farm pages")
                .whereLayer("scenario")
                .mayOnlyBeAccessedByLayers("front door", "review", "comparison", "farm")
                .whereLayer("run")
                .mayOnlyBeAccessedByLayers("front door", "review", "comparison", "workbook", "page shown", "decision")
                .whereLayer("graph")
                .mayOnlyBeAccessedByLayers(
                        "front door",
                        "review",
                        "comparison",
                        "workbook",
                        "page shown",
                        "page",
                        "decision",
                        "farm pages",
                        "farm",
                        "run",
                        "scenario")
                .check(CLASSES);
    }

    @Test
    void packagesHaveNoCycles() {
        slices().matching("org.benchmetre.(**)").should().beFreeOfCycles().check(CLASSES);
    }

    @Test
    void irrigationPointsFromCloggingToWaterToHydraulics() {
        String irrigation = "org.benchmetre.farm.irrigation.";
        layeredArchitecture()
                .consideringOnlyDependenciesInLayers()
                .layer("clogging")
                .definedBy(irrigation + "clogging")
                .layer("water")
                .definedBy(irrigation + "water")
                .layer("hydraulics")
                .definedBy(irrigation + "hydraulics")
                .whereLayer("clogging")
                .mayNotBeAccessedByAnyLayer()
                .whereLayer("water")
                .mayOnlyBeAccessedByLayers("clogging")
                .check(CLASSES);
    }

    @Test
    void onlyTheWorkbookSeesPoi() {
        noClasses()
                .that()
                .resideOutsideOfPackage("org.benchmetre.workbook..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("org.apache.poi..", "org.openxmlformats..", "org.apache.xmlbeans..")
                .check(CLASSES);
    }

    @Test
    void onlyTheScenarioSeesCsv() {
        noClasses()
                .that()
                .resideOutsideOfPackage("org.benchmetre.scenario..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("org.apache.commons.csv..")
                .check(CLASSES);
    }

    @Test
    void theTradeEvaluatesNothing() {
        noClasses()
                .that()
                .resideInAPackage("org.benchmetre.farm..")
                .should()
                .dependOnClassesThat()
                .resideInAPackage("org.benchmetre.budget.run..")
                .check(CLASSES);
    }

    @Test
    void no_two_classes_share_a_simple_name() {
        Map<String, List<String>> packages = CLASSES.stream()
                .filter(type -> type.isTopLevelClass() && !type.getSimpleName().equals("package-info"))
                .collect(groupingBy(JavaClass::getSimpleName, mapping(JavaClass::getPackageName, toList())));
        packages.values().removeIf(in -> in.size() == 1);
        assertThat(packages).isEmpty();
    }
}
