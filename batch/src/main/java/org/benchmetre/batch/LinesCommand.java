package org.benchmetre.batch;

import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.benchmetre.Plan;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.Entry;
import org.benchmetre.budget.Kind;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.Schedule;
import org.benchmetre.budget.entry.Numbers;
import org.benchmetre.budget.unit.Unit;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Lists every line with unit, range and source. */
@Command(name = "lines", description = "Lists every line: entries, which may be changed with --set, and formulas.")
final class LinesCommand extends ScenarioCommand {

    @Option(
            names = "--csv",
            description = "Prints line,label,unit,kind,low,typical,high,source. Typical is the documented default.")
    private boolean csv;

    @Override
    int run(Plan plan) {
        print(csv ? csv(plan.budget()) : tables(plan.budget()));
        return Exit.DONE;
    }

    private static String csv(Budget budget) {
        Csv csv = new Csv("line", "label", "unit", "kind", "low", "typical", "high", "source");
        for (Line line : listed(budget, budget.lines())) {
            Optional<Entry> entry = budget.entry(line);
            csv.row(
                    line.id(),
                    line.label(),
                    line.unit().inFiles(budget.currency()),
                    kind(entry),
                    entry.map(e -> known(e.plausible().low())).orElse(""),
                    entry.map(e -> typical(line, e)).orElse(""),
                    entry.map(e -> known(e.plausible().high())).orElse(""),
                    entry.map(Entry::source).orElse(line.note()));
        }
        return csv.toString();
    }

    private static String tables(Budget budget) {
        StringBuilder text = new StringBuilder();
        for (Schedule schedule : budget.schedules()) {
            List<Line> lines = listed(budget, schedule.lines());
            if (lines.isEmpty()) {
                continue;
            }
            text.append(TextTable.wrapped(heading(schedule))).append('\n');
            TextTable table = new TextTable(List.of("line", "label", "unit", "kind", "low", "typical", "high"), 2);
            table.right(4, 5, 6);
            lines.forEach(line -> table.row(row(budget, line)));
            text.append(table).append('\n');
        }
        return text.toString();
    }

    /** All but the copies of lines in a what-if table. */
    private static List<Line> listed(Budget budget, Collection<Line> lines) {
        return lines.stream().filter(line -> !budget.isRepeated(line)).toList();
    }

    private static String heading(Schedule schedule) {
        String axes = String.join(
                " and ",
                schedule.axes().stream()
                        .map(axis -> "each " + decapitalised(axis.title()))
                        .toList());
        return schedule.sheet() + ": " + schedule.title() + (axes.isEmpty() ? "" : " (" + axes + ")");
    }

    private static String decapitalised(String title) {
        return title.substring(0, 1).toLowerCase(Locale.ROOT) + title.substring(1);
    }

    private static List<String> row(Budget budget, Line line) {
        Optional<Entry> entry = budget.entry(line);
        return List.of(
                line.id(),
                line.label() + words(entry),
                line.unit().equals(Unit.ONE) ? "" : line.unit().display(budget.currency()),
                kind(entry),
                entry.map(e -> known(e.plausible().low())).orElse(""),
                entry.map(e -> typical(line, e)).orElse(""),
                entry.map(e -> known(e.plausible().high())).orElse(""));
    }

    /** The words a choice takes, as files and {@code --set} write them. */
    private static String words(Optional<Entry> entry) {
        List<String> words = entry.map(e -> e.form().words()).orElse(List.of());
        return words.isEmpty() ? "" : ": " + String.join(", ", words);
    }

    private static String kind(Optional<Entry> entry) {
        return entry.isPresent() ? "entry" : "formula";
    }

    private static String typical(Line line, Entry entry) {
        return line.kind() == Kind.TEXT
                ? entry.usualText()
                : known(entry.plausible().typical());
    }

    private static String known(double number) {
        return Double.isNaN(number) ? "" : Numbers.plain(number);
    }
}
