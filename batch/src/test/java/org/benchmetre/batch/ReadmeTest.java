package org.benchmetre.batch;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The commands that the user's page has its readers try, and what it says that they print. */
class ReadmeTest {

    private static final Pattern STEP = Pattern.compile("(?ms)^\\d\\. .*?(?=^\\d\\. |^\\*\\*|\\z)");
    private static final Pattern COMMAND = Pattern.compile("`benchmetre ([^`>]+)");
    private static final Pattern BLOCK = Pattern.compile("(?s)```text\n(.*?)```");
    private static final Pattern QUOTED = Pattern.compile("(?s)\"([^\"]+)\"");
    private static final Pattern SPACES = Pattern.compile("\\s+");

    /** The steps that name a command which writes nothing. */
    static Stream<String> steps() throws IOException {
        String page = Files.readString(Path.of("..", "README.md"));
        String walks = page.substring(page.indexOf("## Five minutes"), page.indexOf("## Commands"));
        return groups(STEP, walks, 0).filter(step -> commands(step).findAny().isPresent());
    }

    private static Stream<String> groups(Pattern pattern, String text, int group) {
        List<MatchResult> found = pattern.matcher(text).results().toList();
        return found.stream().map(match -> match.group(group));
    }

    private static Stream<String> commands(String step) {
        return groups(COMMAND, step, 1).filter(command -> !command.contains("../") && !command.contains(" -o "));
    }

    private static String oneLine(String text) {
        return SPACES.matcher(text).replaceAll(" ").strip();
    }

    private static String printed(String command) {
        Object[] arguments = Stream.of(SPACES.split(command.strip()))
                .map(word -> word.startsWith("samples/") ? "../" + word : word)
                .toArray();
        Ran ran = Ran.with(arguments);
        assertThat(ran.exit()).as(command).isZero();
        return oneLine(ran.out());
    }

    @ParameterizedTest
    @MethodSource("steps")
    void a_step_prints_what_the_page_says(String step) {
        String printed = printed(commands(step).findFirst().orElseThrow());

        assertThat(printed).isNotEmpty();
        Stream.concat(groups(BLOCK, step, 1), groups(QUOTED, step, 1))
                .map(ReadmeTest::oneLine)
                .forEach(told -> assertThat(printed).contains(told));
    }
}
