package org.benchmetre.batch;

import java.util.Collection;
import org.benchmetre.budget.Kind;
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
            String unit = line.unit().inFiles(currency);
            for (int cell = 0; cell < line.size(); cell++) {
                boolean words = line.kind() == Kind.TEXT || figures.hasReason(line, cell);
                String value = figures.text(line, cell);
                csv.row(line.id(), line.index(cell), words ? Csv.text(value) : value, unit);
            }
        }
        return csv.toString();
    }
}
