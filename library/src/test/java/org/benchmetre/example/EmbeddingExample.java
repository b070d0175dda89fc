package org.benchmetre.example;

import java.io.PrintStream;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.benchmetre.Benchmetre;
import org.benchmetre.Plan;

/** The example of the embedding page, as it stands there. */
final class EmbeddingExample {

    private EmbeddingExample() {}

    static void run(PrintStream out, Path folder) throws Exception {
        // The page begins here.
        Plan plan = Benchmetre.read(Path.of("../samples/trough-house"));
        for (String spacing : List.of("10 cm", "15 cm", "20 cm")) {
            out.println(plan.with("plant_spacing", spacing).quantity("first_cost_per_metre"));
        }
        out.println(plan.explain("yearly_cost_per_metre"));
        plan.writeWorkbook(folder.resolve("house.xlsx"));
        plan.with("irrigation_choice", "tape").writeScenario(folder.resolve("tape-house"));

        Map<String, String> trough =
                Map.of("driver", "bench_metres", "rate", "1", "price", "5.50", "price_year", "2026");
        Map<String, String> tape = Map.of("driver", "line_metres", "rate", "1", "price", "0.16", "price_year", "2026");
        Plan other = Benchmetre.plan("strawberry")
                .entry("bench_count", "10")
                .entry("plant_spacing", "8 in", "a neighbour")
                .row("materials", "trough", trough)
                .row("materials", "tape", tape)
                .row("irrigation", "tape", Map.of("lines", "2", "outlet_spacing", "0.2"))
                .row("plant_stock", "plug", Map.of("price", "0.40", "price_year", "2026"))
                .build();
        out.println(other.quantity("first_cost_per_metre"));
        // The page ends here.
    }
}
