package org.woodyield.checks;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.Properties;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.woodyield.source.Standing;

/** Facts of the trade are rows marked as such, or say why they cannot be. */
class TradeFactsTest {

    @TempDir
    Path folder;

    @Test
    void eachHasRowsOfCommonPracticeOrSaysWhyNot() throws IOException {
        Run run = Run.of(Catalogue.all(), CheckTables.all());
        for (Account.TradeFact fact : Account.tradeFacts()) {
            assertThat(fact.computed()).as(fact.fact()).isEqualTo(fact.why().isBlank());
            if (fact.computed()) {
                List<Standing> standings = run.results().stream()
                        .filter(result -> result.row().calculation().equals(fact.calculation()))
                        .map(result -> result.row().source().standing())
                        .toList();
                assertThat(standings).as(fact.fact()).isNotEmpty().containsOnly(Standing.COMMON_PRACTICE);
            }
        }
    }

    /** Prices that were made to meet the fact would agree with it; the demonstration's own outlay stands in the rows. */
    @Test
    void everyCrossingDisagreesWithTheFactAndTheOutlayIsThatOfTheDemonstration() throws IOException {
        Properties demo = new Properties();
        try (InputStream file =
                Objects.requireNonNull(org.woodyield.job.Main.class.getResourceAsStream("demo/job.properties"))) {
            demo.load(new InputStreamReader(file, StandardCharsets.UTF_8));
        }
        double outlay = money(demo, "purchase") + money(demo, "other-outlay") - money(demo, "resale");
        List<String> rows;
        try (InputStream file =
                Objects.requireNonNull(TradeFactsTest.class.getResourceAsStream("work/trade-buying.csv"))) {
            rows = new String(file.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .toList();
        }
        assertThat(rows.stream()
                        .filter(row -> row.contains("demonstration") || row.contains("the same with own work"))
                        .map(row -> Double.parseDouble(row.split(",", 2)[0])))
                .hasSize(2)
                .containsOnly(outlay);
        List<Result> crossings = Run.of(Catalogue.all(), CheckTables.all()).results().stream()
                .filter(result -> result.row().calculation().equals("work.crossing-worth"))
                .toList();
        assertThat(crossings)
                .isNotEmpty()
                .allMatch(result -> result.row().published().equals("2500"))
                .allMatch(result -> Math.abs(Double.parseDouble(result.computed()) - 2500) > 100);
    }

    private static double money(Properties demo, String key) {
        return Double.parseDouble(demo.getProperty("money." + key));
    }

    @Test
    void thePageHoldsThemAll() throws IOException {
        Book.write(Run.of(Catalogue.all(), CheckTables.all()), folder);
        String page = Files.readString(folder.resolve("trade.html"));
        for (Account.TradeFact fact : Account.tradeFacts()) {
            assertThat(page).contains(fact.fact());
            if (fact.computed()) {
                assertThat(page).contains(fact.href());
                assertThat(folder.resolve(fact.href())).exists();
            } else {
                assertThat(page).contains(fact.why());
            }
        }
    }
}
