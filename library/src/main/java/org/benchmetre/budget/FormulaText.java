package org.benchmetre.budget;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Prints the formula of one cell as a spreadsheet reads it (ECMA-376 part 1, 18.17), without the leading equals sign. Parentheses
 * come from how tightly the parts bind; numbers have a point in any locale; a multiplication by one that only renames a unit is
 * left out. Texts end in {@code &""}, since a spreadsheet reads a blank cell as 0 where a formula returns it.
 */
public final class FormulaText implements Walk<Spelling.Printed> {

    /** The longest text that spreadsheet programs take between quotation marks in a formula. */
    private static final int LONGEST_LITERAL = 255;

    private static final Pattern ESCAPE = Pattern.compile("_[xX][0-9A-Fa-f]+_");

    private final Addresses addresses;
    private final Position position;

    private FormulaText(Addresses addresses, Position position) {
        this.addresses = addresses;
        this.position = position;
    }

    /**
     * The text of the formula of one cell.
     *
     * @param line the line that is defined
     * @param formula its formula
     * @param cell which of its cells, from 0
     * @param addresses where lines stand
     * @return spreadsheet text
     */
    public static String of(Line line, Formula formula, int cell, Addresses addresses) {
        String text =
                formula.walk(new FormulaText(addresses, line.positionOf(cell))).text();
        return switch (line.kind()) {
            case TRUTH -> "IF(" + text + ",1,0)";
            case TEXT -> text + "&\"\"";
            default -> text;
        };
    }

    @Override
    public Spelling.Printed line(Line line) {
        return reference(line, line.cellAt(position));
    }

    @Override
    public Spelling.Printed constant(Constant constant) {
        return constant.kind() == Kind.TEXT ? literal(constant.text()) : Spelling.number(constant.number());
    }

    /**
     * A text between quotation marks; a long one in halves that are joined, no character cut in two. What readers would take for an escaped
     * character (ECMA-376 part 1, 22.9.2.19) is cut behind its first underscore as well, since not all of them undo escapes in formulas.
     */
    private static Spelling.Printed literal(String text) {
        Matcher escape = ESCAPE.matcher(text);
        if (escape.find()) {
            int cut = escape.start() + 1;
            return Spelling.joined().of(List.of(literal(text.substring(0, cut)), literal(text.substring(cut))));
        }
        String quoted = text.replace("\"", "\"\"");
        if (quoted.length() <= LONGEST_LITERAL) {
            return atom("\"" + quoted + "\"");
        }
        int middle = text.offsetByCodePoints(0, text.codePointCount(0, text.length()) / 2);
        return Spelling.joined().of(List.of(literal(text.substring(0, middle)), literal(text.substring(middle))));
    }

    @Override
    public Spelling.Printed call(Call call) {
        return printed(call, argument -> argument.walk(this));
    }

    /** Prints a call; what only renames a unit is not printed. */
    static Spelling.Printed printed(Call call, java.util.function.Function<Formula, Spelling.Printed> argument) {
        List<Formula> arguments = call.arguments();
        boolean renamesOnly = call.function() == Function.MULTIPLY
                && arguments.get(1) instanceof Constant constant
                && constant.isOne();
        if (renamesOnly) {
            return argument.apply(arguments.get(0));
        }
        return call.function().spelling().of(arguments.stream().map(argument).toList());
    }

    @Override
    public Spelling.Printed fold(Fold fold) {
        List<String> ranges = fold.lines().stream()
                .map(line -> addresses.range(line, fold.axis(), position))
                .toList();
        sameWay(fold);
        return atom(fold.gather().spelled(ranges, fold.tag() == null ? "" : tag(fold)));
    }

    private String tag(Fold fold) {
        return fold.tag().walk(this).text();
    }

    private void sameWay(Fold fold) {
        boolean down = addresses.isDown(fold.lines().get(0), fold.axis());
        if (fold.lines().stream().anyMatch(line -> addresses.isDown(line, fold.axis()) != down)) {
            throw new FormulaException("Lines " + fold.lines() + " run down one and across the other along "
                    + fold.axis() + "; a spreadsheet cannot gather them together.");
        }
    }

    @Override
    public Spelling.Printed lookup(Lookup lookup) {
        Axis axis = lookup.axis();
        String values = addresses.range(lookup.values(), axis, position);
        String row = "MATCH(" + lookup.key().walk(this).text() + "," + addresses.range(lookup.keys(), axis, position)
                + ",0)";
        boolean down = addresses.isDown(lookup.values(), axis);
        return atom("INDEX(" + values + "," + (down ? row : "1," + row) + ")");
    }

    @Override
    public Spelling.Printed element(Element element) {
        Position fixed = position.with(element.axis(), element.index());
        return reference(element.line(), element.line().cellAt(fixed));
    }

    @Override
    public Spelling.Printed previous(Previous previous) {
        int period = position.on(previous.axis());
        if (period == 0) {
            return previous.initial().walk(this);
        }
        Position before = position.with(previous.axis(), period - 1);
        return reference(previous.line(), previous.line().cellAt(before));
    }

    @Override
    public Spelling.Printed rows(Rows rows) {
        return rows.formulas().get(position.on(rows.axis())).walk(this);
    }

    private Spelling.Printed reference(Line line, int cell) {
        String text = addresses.cell(line, cell);
        return line.kind() == Kind.TRUTH ? new Spelling.Printed(text + "=1", Spelling.COMPARE) : atom(text);
    }

    private static Spelling.Printed atom(String text) {
        return new Spelling.Printed(text, Spelling.ATOM);
    }
}
