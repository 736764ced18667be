package org.woodyield.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.woodyield.measure.Length;

class KerfTooWideTest {

    private static Optional<KerfTooWide> of(String kerf) {
        JobInput job = PlannerTest.job(List.of());
        return KerfTooWide.of(Length.parse(kerf), job.logs(), job.pieces(), job.areas(), job.naturalEdges());
    }

    /** Two logs are 9 in thick, and the one before them 12 in. */
    @Test
    void theThinnestLogIsNamedBeforeAnyBoard() {
        for (String kerf : List.of("9 in", "12 in")) {
            assertThat(of(kerf)).as(kerf).contains(new KerfTooWide(true, "B", Length.inches(9)));
        }
        assertThat(of("8.999 in").map(KerfTooWide::ofLog)).contains(false);
    }

    @Test
    void aBoardMayBeAsThinAsTheKerf() {
        KerfTooWide board = of("8 in").orElseThrow();
        assertThat(board.id()).isEqualTo("wall");
        assertThat(of(board.thickness().toString())).isEmpty();
        assertThat(board.words()).isEqualTo("wall is only " + board.thickness() + " thick");
    }
}
