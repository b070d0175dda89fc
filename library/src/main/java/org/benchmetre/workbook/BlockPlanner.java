package org.benchmetre.workbook;

import java.util.List;
import java.util.stream.IntStream;
import org.benchmetre.budget.Axis;
import org.benchmetre.budget.CellRef;
import org.benchmetre.budget.Kind;
import org.benchmetre.budget.Line;
import org.benchmetre.page.Across;
import org.benchmetre.page.BlockVisitor;
import org.benchmetre.page.CaseTable;
import org.benchmetre.page.CautionList;
import org.benchmetre.page.Chart;
import org.benchmetre.page.Criterion;
import org.benchmetre.page.EntryList;
import org.benchmetre.page.EntryTable;
import org.benchmetre.page.Evidence;
import org.benchmetre.page.FigureList;
import org.benchmetre.page.FigureRow;
import org.benchmetre.page.FixedWords;
import org.benchmetre.page.Levers;
import org.benchmetre.page.Sentence;
import org.benchmetre.page.Sentences;
import org.benchmetre.page.Table;
import org.benchmetre.page.TableRow;
import org.benchmetre.page.Tone;
import org.benchmetre.page.shown.ShownTable;

/** Places the blocks of one panel, one below the other, in the columns of the panel. */
final class BlockPlanner implements BlockVisitor<Void> {

    private final PagePlan plan;
    private final List<Integer> columns;
    private int row;

    BlockPlanner(PagePlan plan, List<Integer> columns, int row) {
        this.plan = plan;
        this.columns = columns;
        this.row = row;
    }

    /** The first row below what was placed. */
    int row() {
        return row;
    }

    private int column(int place) {
        if (place >= columns.size()) {
            throw new IllegalArgumentException("A block of page '" + plan.name() + "' needs column " + (place + 1)
                    + ", but its panel has " + columns.size() + ".");
        }
        return columns.get(place);
    }

    private int lastColumn() {
        return columns.get(columns.size() - 1);
    }

    private void title(String words) {
        if (!words.isEmpty()) {
            plan.add(PageCell.of(row++, column(0), new PageCell.Plain(words), Look.Role.HEADING)
                    .until(lastColumn()));
        }
    }

    private PageCell words(int place, String text, Look.Role role) {
        return PageCell.of(row, column(place), new PageCell.Plain(text), role);
    }

    private void head(int place, String text, boolean number) {
        plan.add(words(place, text, number ? Look.Role.HEAD_NUMBER : Look.Role.HEAD));
    }

    private static Look.Role label(Tone tone) {
        return tone == Tone.TOTAL ? Look.Role.LABEL_TOTAL : Look.Role.LABEL;
    }

    private static Look.Role number(Tone tone) {
        return tone == Tone.TOTAL ? Look.Role.NUMBER_TOTAL : Look.Role.NUMBER;
    }

    private void figure(int place, CellRef ref, String format, Tone tone) {
        boolean text = ref.line().kind() == Kind.TEXT;
        plan.add(PageCell.of(row, column(place), new PageCell.Shown(ref), text ? label(tone) : number(tone))
                .as(format));
    }

    private void section(String words) {
        if (!words.isEmpty()) {
            plan.add(words(0, words, Look.Role.SECTION));
            row++;
        }
    }

    /** What says nothing as written, below no sentence that leads, has no ground. */
    @Override
    public Void sentences(Sentences block) {
        boolean leads = block.rows().get(0).tone() == Tone.LEAD;
        for (Sentence sentence : block.rows()) {
            boolean isUnsaid = !leads && plan.isEmpty(sentence.text());
            plan.add(PageCell.of(
                            row++,
                            column(0),
                            new PageCell.Shown(new CellRef(sentence.text(), 0)),
                            isUnsaid ? Look.Role.UNSAID : said(sentence.tone()))
                    .until(lastColumn()));
        }
        row++;
        return null;
    }

    private static Look.Role said(Tone tone) {
        return switch (tone) {
            case LEAD -> Look.Role.LEAD;
            case TOTAL -> Look.Role.HEADING;
            case PLAIN -> Look.Role.SENTENCE;
            case WARNING -> Look.Role.ALERT;
            case FAINT -> Look.Role.NOTE;
        };
    }

    @Override
    public Void levers(Levers block) {
        title(block.title());
        head(0, "Entry", false);
        head(1, "Value", true);
        head(2, "Unit", false);
        row++;
        for (FigureRow each : block.rows()) {
            Line entry = each.line();
            plan.add(words(0, each.label(), Look.Role.LABEL));
            plan.add(PageCell.of(row, column(1), new PageCell.Typed(new CellRef(entry, 0)), Look.Role.ENTRY));
            plan.add(words(2, plan.beside().typedUnit(entry), Look.Role.UNIT));
            plan.home(entry, row, column(1));
            row++;
        }
        row++;
        return null;
    }

    @Override
    public Void figures(FigureList block) {
        title(block.title());
        List<CellRef> all =
                block.rows().stream().map(each -> new CellRef(each.line(), 0)).toList();
        for (FigureRow each : block.rows()) {
            Line line = each.line();
            plan.add(words(0, each.label(), label(each.tone())).to(line));
            figure(1, new CellRef(line, 0), plan.format(alike(all, line)), each.tone());
            plan.add(words(
                    2, plan.beside().unit(line), each.tone() == Tone.TOTAL ? Look.Role.UNIT_TOTAL : Look.Role.UNIT));
            row++;
        }
        row++;
        return null;
    }

    /** The cells that share the format of a line's: those of its unit. */
    private static List<CellRef> alike(List<CellRef> all, Line line) {
        return all.stream()
                .filter(ref ->
                        ref.line().unit().equals(line.unit()) && ref.line().kind() == line.kind())
                .toList();
    }

    @Override
    public Void table(Table block) {
        ShownTable shown = plan.shown(block);
        int top = row;
        title(shown.title());
        int last = block.columns().size();
        for (int i = 0; i < last; i++) {
            head(i, shown.heading(i), shown.isOfNumbers(i));
        }
        plan.headRow(row++);
        plan.follow(block, shown, row, columns);
        String section = "";
        for (TableRow each : shown.rows()) {
            section = each.heading().isEmpty() ? section : each.heading();
            boolean folded = shown.isFolded(each);
            if (!folded) {
                section(section);
                section = "";
            }
            for (int i = 0; i < last; i++) {
                tableCell(block, shown, each, i);
            }
            if (folded) {
                plan.fold(row);
            }
            row++;
        }
        remark(block.note());
        row++;
        if (shown.isAllFolded()) {
            IntStream.range(top, row).forEach(plan::fold);
        }
        return null;
    }

    private void tableCell(Table block, ShownTable shown, TableRow each, int place) {
        CellRef ref = place == 0 && !each.label().isEmpty() ? null : shown.cell(each, place);
        if (ref == null) {
            boolean first = place == 0;
            plan.add(words(place, first ? each.label() : "", first ? label(each.tone()) : number(each.tone())));
        } else if (block.columns().get(place).typed() && each.index() >= 0) {
            plan.add(PageCell.of(row, column(place), new PageCell.Typed(ref), Look.Role.ENTRY));
            plan.scattered(ref, row, column(place));
        } else if (ref.line().kind() == Kind.TEXT && each.index() < 0) {
            plan.add(PageCell.of(row, column(place), new PageCell.Shown(ref), label(each.tone()))
                    .until(column(free(block, shown, each, place))));
        } else {
            figure(place, ref, plan.format(ref.line(), shown.decimals(each, place)), each.tone());
        }
    }

    /** The last place that is free behind a text, which runs over it. */
    private static int free(Table block, ShownTable shown, TableRow each, int place) {
        int last = place;
        while (last + 1 < block.columns().size() && shown.cell(each, last + 1) == null) {
            last++;
        }
        return last;
    }

    private void remark(String words) {
        if (!words.isEmpty()) {
            plan.add(words(0, words, Look.Role.NOTE).until(lastColumn()));
            row++;
        }
    }

    @Override
    public Void across(Across block) {
        title(block.title());
        head(0, "", false);
        head(1, "Unit", false);
        for (int i = block.from(); i < block.to(); i++) {
            plan.add(PageCell.of(
                    row, column(2 + i - block.from()), new PageCell.Named(block.axis(), i), Look.Role.HEAD_NUMBER));
        }
        row++;
        block.rows().forEach(each -> criterion(block, each));
        row++;
        return null;
    }

    private void criterion(Across block, Criterion each) {
        section(each.heading());
        Line line = each.line();
        plan.add(words(0, each.label(), label(each.tone())).to(line));
        plan.add(words(1, plan.beside().unit(line), each.tone() == Tone.TOTAL ? Look.Role.UNIT_TOTAL : Look.Role.UNIT));
        String format = plan.format(IntStream.range(0, block.axis().filled())
                .mapToObj(i -> new CellRef(line, i))
                .toList());
        for (int i = block.from(); i < block.to(); i++) {
            plan.add(PageCell.of(
                            row,
                            column(2 + i - block.from()),
                            new PageCell.Shown(new CellRef(line, i)),
                            number(each.tone()))
                    .as(format));
        }
        row++;
    }

    @Override
    public Void cases(CaseTable block) {
        title(block.title());
        Axis down = block.down().axes().get(0);
        Axis across = block.across().axes().get(0);
        plan.add(words(1, plan.headed(block.across().label(), block.across()), Look.Role.BLOCK)
                .until(column(across.size())));
        row++;
        head(0, plan.headed(block.down().label(), block.down()), false);
        String ofAcross = plan.format(plan.cells(block.across()));
        for (int j = 0; j < across.size(); j++) {
            plan.add(PageCell.of(
                            row,
                            column(1 + j),
                            new PageCell.Shown(new CellRef(block.across(), j)),
                            Look.Role.HEAD_NUMBER)
                    .as(ofAcross));
        }
        row++;
        int first = row;
        String ofDown = plan.format(plan.cells(block.down()));
        String ofValues = plan.format(plan.cells(block.values()));
        for (int i = 0; i < down.size(); i++) {
            plan.add(
                    PageCell.of(row, column(0), new PageCell.Shown(new CellRef(block.down(), i)), Look.Role.HEAD_NUMBER)
                            .as(ofDown));
            for (int j = 0; j < across.size(); j++) {
                int cell = i * across.size() + j;
                plan.add(PageCell.of(
                                row,
                                column(1 + j),
                                new PageCell.Shown(new CellRef(block.values(), cell)),
                                Look.Role.NUMBER)
                        .as(ofValues));
            }
            row++;
        }
        plan.boxed(block, first, column(1), column(across.size()));
        row++;
        return null;
    }

    @Override
    public Void chart(Chart block) {
        PlacedChart placed = new PlacedChart(block, row, column(0), lastColumn());
        plan.add(placed);
        row = placed.end() + 1;
        return null;
    }

    @Override
    public Void words(FixedWords block) {
        title(block.title());
        plan.add(words(0, block.text(), said(block.tone())).until(lastColumn()));
        row++;
        return null;
    }

    @Override
    public Void entries(EntryList block) {
        row = new EntryListPlanner(plan, columns).place(block, row);
        return null;
    }

    @Override
    public Void entryTable(EntryTable block) {
        title(block.title());
        row = new EntryTablePlanner(plan, row).place(block) + 1;
        return null;
    }

    @Override
    public Void cautions(CautionList block) {
        title(block.title());
        if (block.inFull()) {
            block.all().forEach(caution -> {
                plan.add(words(0, caution.topic(), Look.Role.LABEL_TOTAL));
                plan.add(words(1, caution.text(), Look.Role.WORDS).until(lastColumn()));
                row++;
            });
        } else {
            String topics = String.join(
                    " · ", block.all().stream().map(caution -> caution.topic()).toList());
            plan.add(words(0, topics + ": see " + plan.cautionsPage() + ".", Look.Role.NOTE)
                    .until(lastColumn()));
            row++;
        }
        return null;
    }

    @Override
    public Void evidence(Evidence block) {
        title(block.title());
        plan.evidence().byKind().forEach((kind, count) -> {
            if (count > 0) {
                plan.add(words(0, kind.label(), Look.Role.LABEL));
                plan.add(PageCell.of(row, column(1), new PageCell.Bound(count), Look.Role.NUMBER)
                        .as("0"));
                row++;
            }
        });
        row++;
        return null;
    }
}
