package org.benchmetre.budget;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Prints a formula with line names, for messages and explanations: the spreadsheet's spelling without its cells. */
public final class Words {

    private Words() {}

    /**
     * The formula in line names.
     *
     * @param formula any formula
     * @return for example {@code bench_count*bench_length}
     */
    public static String of(Formula formula) {
        return formula.walk(new Printer()).text();
    }

    private static final class Printer implements Walk<Spelling.Printed> {

        @Override
        public Spelling.Printed line(Line line) {
            return atom(line.id());
        }

        @Override
        public Spelling.Printed constant(Constant constant) {
            return constant.kind() == Kind.TEXT
                    ? atom("\"" + constant.text() + "\"")
                    : Spelling.number(constant.number());
        }

        @Override
        public Spelling.Printed call(Call call) {
            if (call.function() == Function.HAS_KEY) {
                return new Spelling.Printed(
                        of(call.arguments().get(0)) + " has "
                                + of(call.arguments().get(1)),
                        Spelling.COMPARE);
            }
            return FormulaText.printed(call, argument -> argument.walk(this));
        }

        @Override
        public Spelling.Printed fold(Fold fold) {
            Stream<String> lines = fold.lines().stream().map(Line::id);
            Stream<String> tag = Stream.ofNullable(fold.tag()).map(Words::of);
            String name = fold.gather().name().toLowerCase(java.util.Locale.ROOT);
            return call(
                    name + "_of_" + fold.axis().name(),
                    Stream.concat(lines, tag).toList());
        }

        @Override
        public Spelling.Printed lookup(Lookup lookup) {
            return atom(lookup.values().id() + "[" + of(lookup.key()) + "]");
        }

        @Override
        public Spelling.Printed element(Element element) {
            return atom(element.line().id() + "[" + element.axis().keys().get(element.index()) + "]");
        }

        @Override
        public Spelling.Printed previous(Previous previous) {
            return call("previous", List.of(previous.line().id()));
        }

        @Override
        public Spelling.Printed rows(Rows rows) {
            return atom("a formula for each " + rows.axis().name());
        }

        private static Spelling.Printed call(String name, List<String> parts) {
            return atom(parts.stream().collect(Collectors.joining(", ", name + "(", ")")));
        }

        private static Spelling.Printed atom(String text) {
            return new Spelling.Printed(text, Spelling.ATOM);
        }
    }
}
