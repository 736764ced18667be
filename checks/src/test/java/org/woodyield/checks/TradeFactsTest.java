package org.woodyield.checks;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
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

    /** Whatever the crossing is, it stands beside the fact; none is made to meet it. */
    @Test
    void theCrossingIsShownAndNotFitted() {
        List<Result> crossings = Run.of(Catalogue.all(), CheckTables.all()).results().stream()
                .filter(result -> result.row().calculation().equals("work.crossing-worth"))
                .toList();
        assertThat(crossings)
                .isNotEmpty()
                .allMatch(result -> result.row().published().equals("2500"));
        assertThat(crossings.stream().map(Result::computed).collect(Collectors.toSet()))
                .hasSameSizeAs(crossings);
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
