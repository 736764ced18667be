package org.woodyield.job;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.woodyield.lumber.SizeTable;

class SizesCommandTest {

    @Test
    void allTablesAreListedAndEachIsShownWithItsStandingAndSources() {
        String list = Run.of("sizes").out();
        for (SizeTable table : SizeTable.all()) {
            assertThat(list).contains(table.key() + "\n");
            Run run = Run.of("sizes", table.key());
            assertThat(run.code()).isZero();
            assertThat(run.out()).contains("Source, ");
        }
    }

    @Test
    void aSizeIsLookedUpBothWays() {
        assertThat(Run.of("sizes", "softwood", "2x4").out())
                .contains("dry: 1 1/2 in x 3 1/2 in", "green: 1 9/16 in x 3 9/16 in", "dry: 38 mm x 89 mm");
        assertThat(Run.of("sizes", "softwood", "--measured", "1 1/2 x 3 1/2").out())
                .contains("dimension: nominal 2 in x 4 in");
        assertThat(Run.of("sizes", "hardwood", "5/4").out())
                .contains("surfaced two sides 1 1/16 in", "no less than 1 3/16 in");
        assertThat(Run.of("sizes", "hardwood", "--measured", "1 1/16 in").out()).contains("1 1/4 in nominal");
        assertThat(Run.of("sizes", "en-336", "50 x 100").out()).contains("planed: 47 mm x 97 mm");
        assertThat(Run.of("sizes", "en-336", "--measured", "47x97").out()).contains("nominal 50 mm x 100 mm");
        assertThat(Run.of("sizes", "worked", "4").out())
                .contains("flooring, face width 4 in nominal: dry 3 1/8 in [MEMORY]");
    }

    @Test
    void theFaceThatTheTableLacksIsNamed() {
        assertThat(Run.of("sizes", "gost-6782-1", "50 x 150").err())
                .contains("nominal width is 150 mm", "nearest: 86 mm");
        assertThat(Run.of("sizes", "gost-6782-1", "51 x 75").err()).contains("nominal thickness is 51 mm");
    }

    @Test
    void aDoubtfulCellSaysSo() {
        assertThat(Run.of("sizes", "softwood", "3/4x6").out()).contains("doubtful, nominal 3/4 in", "21/32 would fit");
        assertThat(Run.of("sizes", "softwood", "8x8").out()).containsOnlyOnce("one reprint takes 3/4 in off");
    }

    @Test
    void moistureIsAnsweredWithTheWorkingWhereTheStandardHasARule() {
        // By hand: 50 mm less 8 x 0.25 %; and 2.0 mm from the table at 50 mm and 15 %.
        assertThat(Run.of("sizes", "en-336", "50", "--moisture", "12 %").out()).contains("= 49 mm");
        assertThat(Run.of("sizes", "gost-6782-1", "50", "--moisture", "15 %").out())
                .contains("= 52 mm");
        refused("with en-336 or gost-6782-1", "softwood", "2x4", "--moisture", "12 %");
        refused("--moisture: '3 %' is not accepted; allowed: 5 to 37 %", "gost-6782-1", "50", "--moisture", "3 %");
        refused("behind a table and a nominal size", "en-336", "--moisture", "12 %");
    }

    @Test
    void whatCannotBeLookedUpIsRefusedWithWhatCan() {
        refused("is softwood meant?", "sofwood");
        refused("nearest: 12 in, 14 in, 10 in", "softwood", "2x13");
        refused("nearest: 38 mm, 1 1/2 in", "softwood", "--measured", "1.4 in");
        refused("thickness first", "softwood", "4x2");
        refused("this table pairs no thickness with a width", "worked", "--measured", "3/4x3");
        refused("ask for each face alone", "hardwood", "1x4");
        refused("a number and a unit", "softwood", "abc");
        refused("one face, or thickness x width", "softwood", "2x4x6");
        refused("leave one of the two out", "softwood", "2x4", "--measured", "1x2");
        refused("above 0", "softwood", "0");
        refused("sizes lists the keys", "--measured", "1x2");
    }

    private static void refused(String why, String... arguments) {
        String[] all = new String[arguments.length + 1];
        all[0] = "sizes";
        System.arraycopy(arguments, 0, all, 1, arguments.length);
        Run run = Run.of(all);
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).contains(why);
    }
}
