package org.benchmetre.budget.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.benchmetre.budget.Formulas.joined;
import static org.benchmetre.budget.Formulas.text;

import java.io.IOException;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.benchmetre.budget.BudgetBuilder;
import org.benchmetre.budget.CellRef;
import org.benchmetre.budget.Line;
import org.benchmetre.budget.ScheduleBuilder;
import org.benchmetre.budget.entry.Given;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Texts that come out of a run have the same codes whichever case, run or machine computes them. */
class StableCodesTest {

    private static final List<String> WAYS = List.of("tape", "Mist", "drip line", "emitter");

    @TempDir
    Path folder;

    private static Cases cases() {
        BudgetBuilder b = new BudgetBuilder("Joined", "EUR");
        ScheduleBuilder s = b.schedule("Sheet", "Table");
        Line way = s.textEntry("way_choice", "Way").given(Given.text("tape"));
        Line sentence = s.textLine("way_sentence", "Sentence", joined(text("Water by "), way, text(".")));
        return Cases.of(b.build(), List.of(new CellRef(way, 0)), List.of(sentence));
    }

    private static String codes(Cases cases, List<String> ways) {
        Cases.Run run = cases.start();
        double[] inputs = ways.stream().mapToDouble(run::code).toArray();
        double[] found = run.blocks(new double[][] {inputs}, cases.outputs().get(0), 0);
        StringBuilder lines = new StringBuilder();
        for (String way : WAYS) {
            double code = found[ways.indexOf(way)];
            lines.append(run.text(code)).append(' ').append((long) code).append('\n');
        }
        return lines.toString();
    }

    @Test
    void two_runs_in_different_order_give_the_same_codes() {
        List<String> backwards = List.of("emitter", "drip line", "Mist", "tape");
        assertThat(codes(cases(), backwards))
                .isEqualTo(codes(cases(), WAYS))
                .startsWith("Water by tape. ")
                .contains("Water by Mist. ");
    }

    @Test
    void a_program_read_in_another_virtual_machine_gives_the_same_codes() throws IOException, InterruptedException {
        Path written = folder.resolve("cases");
        Cases cases = cases();
        try (ObjectOutputStream out = new ObjectOutputStream(Files.newOutputStream(written))) {
            out.writeObject(cases);
        }
        Path answer = folder.resolve("answer");
        String classes = System.getProperty("surefire.test.class.path", System.getProperty("java.class.path"));
        Process other = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-cp",
                        classes,
                        Other.class.getName(),
                        written.toString(),
                        answer.toString())
                .inheritIO()
                .start();
        assertThat(other.waitFor(2, TimeUnit.MINUTES)).isTrue();
        assertThat(other.exitValue()).isZero();
        assertThat(Files.readString(answer, StandardCharsets.UTF_8)).isEqualTo(codes(cases, WAYS));
    }

    /** The other virtual machine. */
    static final class Other {

        private Other() {}

        public static void main(String[] files) throws IOException, ClassNotFoundException {
            try (ObjectInputStream in = new ObjectInputStream(Files.newInputStream(Path.of(files[0])))) {
                List<String> order = List.of("drip line", "emitter", "tape", "Mist");
                Files.writeString(Path.of(files[1]), codes((Cases) in.readObject(), order), StandardCharsets.UTF_8);
            }
        }
    }
}
