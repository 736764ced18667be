package org.woodyield.scaling;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.woodyield.measure.BoardFeet;
import org.woodyield.measure.OutOfDomainException;

/** The printed table of standing trees. */
class TreeVolumeTableTest {

    private static final TreeVolumeTable TABLE = TreeVolumeTable.scribnerFormClass78();

    @Test
    void cellsAreGivenAsPrinted() {
        assertThat(TABLE.boardFeet(20, 2)).isEqualTo(BoardFeet.scale(270));
        assertThat(TABLE.boardFeetWorking(20, 2).value()).isEqualTo(270);
        assertThat(TABLE.boardFeet(37, 2.5).value()).isEqualTo(1209);
        assertThat(TABLE.between(37, 2.5)).isEqualTo(1290.5);
        assertThat(TABLE.betweenWorking(37, 2.5).value()).isEqualTo(1290.5);
    }

    @Test
    void whatIsNotPrintedIsRefused() {
        for (double[] wrong : new double[][] {{9, 1}, {41, 1}, {20.5, 1}, {20, 1.25}, {20, 5.5}, {10, 4}, {20, 0.5}}) {
            assertThatThrownBy(() -> TABLE.boardFeet(wrong[0], wrong[1])).isInstanceOf(OutOfDomainException.class);
        }
        assertThatThrownBy(() -> TABLE.boardFeet(Double.NaN, 1)).isInstanceOf(OutOfDomainException.class);
        assertThatThrownBy(() -> TABLE.boardFeet(20, Double.NaN)).isInstanceOf(OutOfDomainException.class);
        assertThatThrownBy(() -> TABLE.between(20, 2)).hasMessageContaining("between two whole ones");
        assertThatThrownBy(() -> TABLE.between(10, 3.5)).isInstanceOf(OutOfDomainException.class);
    }

    @Test
    void eightCellsOfTheCopyPartFromTheMeanOfTheirNeighbours() {
        List<String> doubtful = new ArrayList<>();
        for (int d = 10; d <= 40; d++) {
            for (double logs = 1.5; logs < 5; logs++) {
                if (printed(d, logs) && TABLE.doubtful(d, logs)) {
                    doubtful.add(d + "x" + logs);
                }
            }
        }
        assertThat(doubtful)
                .containsExactly("28x3.5", "28x4.5", "32x2.5", "37x2.5", "38x3.5", "38x4.5", "39x3.5", "39x4.5");
    }

    private static boolean printed(int diameter, double logs) {
        int most = diameter < 12 ? 3 : diameter < 20 ? 4 : 5;
        return logs < most;
    }

    @Test
    void treesScaleMoreTheThickerAndLongerTheyAre() {
        for (int d = 10; d <= 40; d++) {
            for (int logs = 1; logs <= (d < 12 ? 3 : d < 20 ? 4 : 5); logs++) {
                double here = TABLE.boardFeet(d, logs).value();
                if (logs > 1) {
                    assertThat(here).isGreaterThan(TABLE.boardFeet(d, logs - 1).value());
                }
                if (d > 10 && ((d != 12 && d != 20) || logs < 4)) {
                    assertThat(here).isGreaterThan(TABLE.boardFeet(d - 1, logs).value());
                }
            }
        }
    }

    /** One log is nearly the fitted Scribner formula at 78 % of the diameter; how the table was computed is not stated. */
    @Test
    void oneLogIsNearlyTheFittedFormulaAtTheFormClass() {
        for (int d = 10; d <= 40; d++) {
            double fit =
                    LogRules.byId("scribner-fit").boardFeet(TABLE.formClass().upperInches(d), 16);
            assertThat(TABLE.boardFeet(d, 1).value()).isCloseTo(fit, within(2.2));
        }
    }

    @Test
    void theTableSaysItsFormClassAndSourceAndReachesItsLastCell() {
        assertThat(TABLE.formClass().percent()).isEqualTo(78);
        assertThat(TABLE.source().title()).isNotEmpty();
        assertThat(TABLE.boardFeet(40, 5).value()).isPositive();
        assertThat(TABLE.boardFeet(10, 1).value()).isPositive();
        assertThatThrownBy(() -> TABLE.boardFeetWorking(20, 5.5)).isInstanceOf(OutOfDomainException.class);
        assertThatThrownBy(() -> TABLE.betweenWorking(20, 2)).hasMessageContaining("between two whole ones");
        assertThat(TABLE.betweenWorking(20, 2.5).title()).endsWith("form class 78");
    }
}
