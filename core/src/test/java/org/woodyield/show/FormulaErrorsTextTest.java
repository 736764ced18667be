package org.woodyield.show;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.woodyield.log.FormulaErrors;

/** The matrix of formulas and solids as text. */
class FormulaErrorsTextTest {

    private static final FormulaErrors MATRIX = FormulaErrors.of(0.3, 0.6, 5);

    @Test
    void plainTextSaysWhatIsExactAndHowFarTheOthersAreOff() {
        String text = FormulaErrorsText.plain(MATRIX, "m");
        assertThat(text.lines()).allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(100));
        assertThat(text).containsPattern("Newton \\(prismoidal\\) +exact +exact +exact +exact");
        // Ends as 1 to 2: Smalian (1 + 4)/2, cone 7/3: 14.2857 too much in 100 x 7/3.
        assertThat(text).containsPattern("Smalian +exact +exact +\\+7\\.14 % ");
        // Huber on the cone: 9/4 against 7/3.
        assertThat(text).containsPattern("Huber +exact +exact +-3\\.57 % ");
        assertThat(text).contains("[MEMORY]").contains("centroid");
    }

    @Test
    void markdownHasTheSameCells() {
        String text = FormulaErrorsText.markdown(MATRIX, "m");
        assertThat(text)
                .contains("| Formula | cylinder | paraboloid | cone | neiloid |\n|:--|--:|--:|--:|--:|\n")
                .contains("| Newton (prismoidal) | exact | exact | exact | exact |")
                .contains("| Smalian | exact | exact | +7.14 % |");
    }
}
