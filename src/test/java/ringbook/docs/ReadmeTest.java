package ringbook.docs;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ringbook.cli.Shell;

/** What the README shows is run, and what it points to is there. */
final class ReadmeTest {

  private static final Pattern SHEET =
      Pattern.compile("```\n(learner,exercise,answer\n.*?)```", Pattern.DOTALL);

  private static String readme() throws IOException {
    return Files.readString(Path.of("README.md"));
  }

  @Test
  void the_commands_work_with_the_answer_sheet_shown(@TempDir Path folder) throws IOException {
    Matcher sheet = SHEET.matcher(readme());
    assertThat(sheet.find()).isTrue();
    Path answers = folder.resolve("answers.csv");
    Files.writeString(answers, sheet.group(1));
    List<String> commands =
        readme().lines().filter(line -> line.startsWith("$ ringbook ")).toList();
    assertThat(commands).hasSizeGreaterThanOrEqualTo(2);
    for (String command : commands) {
      Shell shell = Shell.run(words(command.replace("answers.csv", answers.toString())));
      assertThat(shell.code()).as(command + "\n" + shell.err()).isZero();
      assertThat(shell.out()).as(command).isNotBlank();
    }
  }

  @Test
  void the_answers_of_the_sheet_shown_are_right(@TempDir Path folder) throws IOException {
    Matcher sheet = SHEET.matcher(readme());
    assertThat(sheet.find()).isTrue();
    Path answers = folder.resolve("answers.csv");
    Files.writeString(answers, sheet.group(1));
    assertThat(Shell.run("mark", answers.toString()).out()).contains("2 of 2    2      2");
  }

  @Test
  void pictures_and_files_it_names_exist() throws IOException {
    Matcher link = Pattern.compile("\\]\\(([^)]+)\\)").matcher(readme());
    int links = 0;
    while (link.find()) {
      assertThat(Path.of(link.group(1))).exists();
      links++;
    }
    assertThat(links).isGreaterThanOrEqualTo(2);
  }

  /** The words of a command line, with quotation marks taken off. */
  private static String[] words(String command) {
    List<String> words = new ArrayList<>();
    Matcher word =
        Pattern.compile("\"([^\"]*)\"|(\\S+)").matcher(command.substring("$ ringbook ".length()));
    while (word.find()) {
      words.add(word.group(1) != null ? word.group(1) : word.group(2));
    }
    return words.toArray(String[]::new);
  }
}
