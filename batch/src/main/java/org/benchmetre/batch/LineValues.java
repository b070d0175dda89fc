package org.benchmetre.batch;

import java.util.Collection;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.run.Figures;

/** Values of lines as comma-separated text: {@code line,index,value,unit}, one row a cell, with all digits. */
final class LineValues {

    private LineValues() {}

    static String csv(Figures figures, Collection<Line> lines) {
        Csv csv = new Csv("line", "index", "value", "unit");
        String currency = figures.budget().currency();
        for (Line line : lines) {
            if (figures.budget().isRepeated(line)) {
                continue;
            }
            String unit = line.unit().display(currency);
            for (int cell = 0; cell < line.size(); cell++) {
                csv.row(line.id(), line.index(cell), figures.text(line, cell), unit);
            }
        }
        return csv.toString();
    }
}
