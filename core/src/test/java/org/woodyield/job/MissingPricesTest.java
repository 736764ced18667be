package org.woodyield.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Without a price the physical plan stays, and each money figure that rests on it is left out by name. */
class MissingPricesTest {

    private static final String JOB = "job.properties";

    @TempDir
    Path folder;

    private String money(EditedDemo job) throws IOException {
        Path out = folder.resolve("out");
        assertThat(job.run("--out", out.toString()).code()).isZero();
        assertThat(out.resolve("plan-passes.csv")).isNotEmptyFile();
        return Files.readString(out.resolve("plan-money.csv"));
    }

    private static String words(EditedDemo job) {
        return Run.of(job.folder().toString()).out().replaceAll("\\s+", " ");
    }

    @Test
    void withoutAWageNoSumCountsWork() throws IOException {
        EditedDemo job = EditedDemo.small(folder.resolve("job")).with(JOB, "money.wage = 14 per h\n", "");
        assertThat(money(job))
                .contains("\"running, own work counted, known costs only\",sum,,,work")
                .contains("\"with owning, own work counted, known costs only\",sum,,,work")
                .containsPattern("\"running, own work not counted\",sum,[0-9]")
                .containsPattern("\"with owning, own work not counted\",sum,[0-9]");
    }

    @Test
    void withoutThePriceOfTheSawNoSumCountsOwningItAndTheYearsAreLeftOutByName() throws IOException {
        EditedDemo job = EditedDemo.small(folder.resolve("job")).with(JOB, "money.purchase = 1150\n", "");
        job.with(JOB, "money.resale = 450\n", "");
        assertThat(money(job))
                .containsPattern(
                        "\"with owning, own work not counted, known costs only\",sum,,,\"?repairs, depreciation")
                .containsPattern("\"running, own work not counted, known costs only\",sum,[0-9]");
        assertThat(words(job)).contains("The saw year by year: left out, no price of the saw");
    }

    @Test
    void withoutAnyPriceThereIsNoMoneyAtAllAndNothingIsZero() throws IOException {
        EditedDemo job = EditedDemo.small(folder.resolve("job")).without("prices.csv");
        StringBuilder physical = new StringBuilder();
        job.text(JOB)
                .lines()
                .filter(line -> !line.startsWith("money."))
                .forEach(line -> physical.append(line).append('\n'));
        job.write(JOB, physical.toString().getBytes(java.nio.charset.StandardCharsets.UTF_8));
        assertThat(money(job)).doesNotContain(",0.0");
        assertThat(words(job))
                .contains("Nobody gave: ", "The saw year by year: left out")
                .contains("A travelling sawyer: left out, no rate of a travelling sawyer")
                .doesNotContain("Where two ways change places", "0.00 USD", "no a ");
    }
}
