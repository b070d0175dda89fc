package org.benchmetre.batch;

import java.util.List;
import java.util.stream.Collectors;
import org.benchmetre.budget.Budget;
import org.benchmetre.budget.Caution;
import org.benchmetre.budget.CellRef;
import org.benchmetre.budget.run.Figures;
import org.benchmetre.page.Across;
import org.benchmetre.page.Block;
import org.benchmetre.page.BlockVisitor;
import org.benchmetre.page.CaseTable;
import org.benchmetre.page.CautionList;
import org.benchmetre.page.Chart;
import org.benchmetre.page.Decimals;
import org.benchmetre.page.EntryList;
import org.benchmetre.page.EntryTable;
import org.benchmetre.page.Evidence;
import org.benchmetre.page.EvidenceCount;
import org.benchmetre.page.FigureList;
import org.benchmetre.page.FigureRow;
import org.benchmetre.page.FixedWords;
import org.benchmetre.page.Levers;
import org.benchmetre.page.Page;
import org.benchmetre.page.Sentences;
import org.benchmetre.page.Table;
import org.benchmetre.page.Tone;
import org.benchmetre.page.shown.ShownCells;

/**
 * Draws pages as text of at most 100 columns, one block below the other. Charts are not drawn, only the sentence that says what they
 * show. Cautions are short unless asked for in full.
 */
final class PageText implements BlockVisitor<String> {

    private static final String PLAN_YEAR = "plan_year";
    private static final Decimals COUNT = new Decimals(0, true);

    private final Budget budget;
    private final Figures figures;
    private final ShownCells cells;
    private final EntryText entries;
    private final boolean cautionsInFull;
    private final boolean tight;

    PageText(Figures figures, boolean cautionsInFull) {
        this(figures, Page.Kind.ANSWER, cautionsInFull, false);
    }

    private PageText(Figures figures, Page.Kind kind, boolean cautionsInFull, boolean tight) {
        this.figures = figures;
        this.budget = figures.budget();
        this.cells = new ShownCells(figures, kind);
        this.entries = new EntryText(figures);
        this.cautionsInFull = cautionsInFull;
        this.tight = tight;
    }

    /** The same in as few lines as it takes: no empty ones, titles of tables among their headings, last words in one paragraph. */
    PageText tight() {
        return new PageText(figures, cells.kind(), cautionsInFull, true);
    }

    /** The same with the decimals of a kind of page. */
    PageText of(Page.Kind kind) {
        return new PageText(figures, kind, cautionsInFull, tight);
    }

    /** A page from its name and question to its last block; the sentence of a chart only where it is not said already. */
    String of(Page page) {
        StringBuilder text = new StringBuilder();
        text.append(TextTable.wrapped(page.name() + ": " + page.question()));
        text.append(TextTable.wrapped(budget.title() + "; " + prices()));
        boolean afterWords = false;
        StringBuilder words = new StringBuilder();
        PageText drawer = new PageText(figures, page.kind(), cautionsInFull, tight);
        for (Block block : page.blocks()) {
            String drawn = block.show(drawer);
            if (tight && isWords(block) && !(block instanceof Chart)) {
                words.append(drawn.replace('\n', ' '));
            } else if (!drawn.isEmpty() && !(block instanceof Chart && text.indexOf(drawn) >= 0)) {
                text.append(tight || afterWords && isWords(block) ? "" : "\n").append(drawn);
                afterWords = isWords(block);
            }
        }
        return text + (words.isEmpty() ? "" : TextTable.wrapped(words.toString().strip()));
    }

    /** Whether a block is a sentence or two without a title, between which there is no empty line. */
    private boolean isWords(Block block) {
        if (block instanceof CautionList cautions) {
            return !isInFull(cautions);
        }
        return block.title().isEmpty() && (block instanceof Chart || block instanceof FixedWords);
    }

    private boolean isInFull(CautionList block) {
        return block.inFull() || cautionsInFull;
    }

    /** Cautions below pages none of which has its own. */
    String cautionsBelow(List<Page> pages) {
        boolean have = pages.stream().flatMap(page -> page.blocks().stream()).anyMatch(CautionList.class::isInstance);
        return have || budget.cautions().isEmpty() ? "" : "\n" + cautions(budget.cautions(), cautionsInFull);
    }

    private static String titled(String title, String body) {
        return title.isEmpty() || body.isEmpty() ? body : TextTable.wrapped(title) + body;
    }

    private String prices() {
        String year = budget.find(PLAN_YEAR)
                .filter(line -> line.axes().isEmpty())
                .map(line -> "prices of " + figures.text(line, 0) + " in ")
                .orElse("money in ");
        return year + budget.currency();
    }

    @Override
    public String sentences(Sentences block) {
        return block.rows().stream()
                .map(sentence -> figures.text(sentence.text(), 0))
                .filter(words -> !words.isEmpty())
                .map(TextTable::wrapped)
                .collect(Collectors.joining());
    }

    @Override
    public String levers(Levers block) {
        return titled(block.title(), new LeverText(entries, block).toString());
    }

    /** Figures of one unit have the same decimals. */
    @Override
    public String figures(FigureList block) {
        TextTable table = new TextTable(List.of(), 0).right(1);
        for (FigureRow row : block.rows()) {
            List<CellRef> alike = block.rows().stream()
                    .filter(other -> other.line().unit().equals(row.line().unit()))
                    .map(other -> new CellRef(other.line(), 0))
                    .toList();
            CellRef cell = new CellRef(row.line(), 0);
            String unit = cells.isNumber(cell) ? cells.unit(row.line().unit()) : "";
            List<String> words = List.of(row.label(), cells.shown(cell, cells.decimals(alike)), unit);
            if (row.tone() == Tone.TOTAL) {
                table.total(words);
            } else {
                table.row(words);
            }
        }
        return titled(block.title(), table.toString());
    }

    @Override
    public String table(Table block) {
        return new TableText(cells, block, tight).toString();
    }

    @Override
    public String across(Across block) {
        return titled(block.title(), new AcrossText(cells, block).toString());
    }

    @Override
    public String cases(CaseTable block) {
        return new CaseText(cells, block).toString();
    }

    @Override
    public String chart(Chart block) {
        String sentence = figures.text(block.sentence(), 0);
        return sentence.isEmpty() ? "" : TextTable.wrapped(sentence);
    }

    @Override
    public String words(FixedWords block) {
        return titled(block.title(), TextTable.wrapped(block.text()));
    }

    @Override
    public String entries(EntryList block) {
        return titled(block.title(), new EntryTables(entries, cells).list(block));
    }

    @Override
    public String entryTable(EntryTable block) {
        return titled(block.title(), new EntryTables(entries, cells).table(block));
    }

    @Override
    public String cautions(CautionList block) {
        boolean inFull = isInFull(block);
        return titled(inFull ? block.title() : "", cautions(block.all(), inFull));
    }

    private static String cautions(List<Caution> all, boolean inFull) {
        if (inFull) {
            return all.stream()
                    .map(caution -> TextTable.wrapped(caution.topic() + ": " + caution.text()))
                    .collect(Collectors.joining());
        }
        String topics = all.stream().map(Caution::topic).distinct().collect(Collectors.joining(", "));
        return TextTable.wrapped("Cautions (in full: --cautions): " + topics + ".");
    }

    @Override
    public String evidence(Evidence block) {
        EvidenceCount count = EvidenceCount.of(budget);
        TextTable table = new TextTable(List.of("Source", "Numbers entered"), 1).right(1);
        count.byKind().forEach((kind, number) -> table.row(List.of(kind.label(), COUNT.written(number))));
        table.total(List.of("All", COUNT.written(count.all())));
        return titled(block.title(), table.toString());
    }
}
