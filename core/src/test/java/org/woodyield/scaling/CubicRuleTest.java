package org.woodyield.scaling;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.math.RoundingMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.woodyield.log.Log;
import org.woodyield.log.ProfileStation;
import org.woodyield.measure.Length;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.source.Standing;

/** The cubic rules of countries. */
class CubicRuleTest {

    /** A measure that the rule takes, near the given one: classes of 2 cm from 14 cm up to 38. */
    private static int taken(CubicRule rule, int diameter) {
        return rule == CubicRule.FRANCE ? 3 * diameter : diameter;
    }

    @Property(tries = 500)
    void aValueHasTheBitsOfItsWorkingAndGrowsWithDiameterAndHoldsLessThanItsCylinderAtTheButt(
            @ForAll @IntRange(min = 7, max = 18) int half, @ForAll @IntRange(min = 2, max = 18) int halfMetres) {
        for (CubicRule rule : CubicRule.values()) {
            int d = taken(rule, 2 * half);
            double l = halfMetres / 2.0;
            double value = rule.cubicMetres(d, l);
            assertThat(rule.working(d, l).value()).as(rule.id()).isEqualTo(value);
            assertThat(value).as(rule.id()).isPositive();
            assertThat(rule.cubicMetres(taken(rule, 2 * half + 2), l))
                    .as(rule.id())
                    .isGreaterThanOrEqualTo(value);
            assertThat(rule.unroundedCubicMetres(d, l)).as(rule.id()).isCloseTo(value, within(0.0051));
        }
    }

    @Property(tries = 500)
    void anExactHalfOfALitreIsOneWhateverTheLength(
            @ForAll @IntRange(min = 3, max = 120) int d, @ForAll @IntRange(min = 50, max = 599) int lengthCentimetres) {
        BigDecimal exact =
                BigDecimal.valueOf((long) d * d * lengthCentimetres, 6).setScale(3, RoundingMode.HALF_UP);
        assertThat(CubicRule.JAPAN.cubicMetres(d, lengthCentimetres / 100.0)).isEqualTo(exact.doubleValue());
    }

    @Test
    void japanAllowsForTaperFromSixMetresAndLessOfItForImportedLogs() {
        // Arithmetic on the printed rule: 30 + (6 - 4)/2 = 31, 31^2 x 6.3 = 6054.3.
        assertThat(CubicRule.JAPAN.cubicMetres(30, 6.3)).isEqualTo(0.605);
        assertThat(CubicRule.JAPAN.cubicMetres(26, 13.4)).isEqualTo(1.247);
        assertThat(CubicRule.KOREA.cubicMetres(26, 13.4)).isEqualTo(1.247);
        // 26 + 0.6 x 4.5 = 28.7.
        assertThat(CubicRule.JAPAN_1968.cubicMetres(26, 13.4)).isEqualTo(1.104);
        assertThat(CubicRule.JAPAN.cubicMetres(20, 4)).isEqualTo(0.16);
        // The step at 6 m: 5.99 m has no allowance.
        assertThat(CubicRule.JAPAN.cubicMetres(20, 5.99)).isEqualTo(0.24);
        assertThat(CubicRule.JAPAN.cubicMetres(20, 6)).isEqualTo(0.265);
    }

    @Test
    void readingsAreTakenToTheClassesOfTheirRule() {
        assertThat(CubicRule.JAPAN.centimetres(Length.parse("15.9 cm"), Length.parse("18 cm")))
                .isEqualTo(14);
        assertThat(CubicRule.JAPAN.centimetres(Length.parse("13.9 cm"))).isEqualTo(13);
        assertThat(CubicRule.SOUTH_SEA.centimetres(
                        Length.parse("61.9 cm"), Length.parse("64 cm"), Length.parse("66 cm"), Length.parse("67.9 cm")))
                // 60, 64, 66, 66: the mean is 64.
                .isEqualTo(64);
        assertThat(CubicRule.SOUTH_SEA.centimetres(Length.parse("60 cm"), Length.parse("62 cm"), Length.parse("62 cm")))
                .isEqualTo(61);
        assertThat(CubicRule.INDONESIA.centimetres(Length.parse("40.9 cm"), Length.parse("43.2 cm")))
                .isEqualTo(41.5);
        assertThat(CubicRule.GERMANY.centimetres(Length.parse("51.8 cm"), Length.parse("52.1 cm")))
                .isEqualTo(51);
        assertThat(CubicRule.RUSSIA.centimetres(Length.parse("15 cm"))).isEqualTo(16);
        assertThat(CubicRule.RUSSIA.centimetres(Length.parse("14.9 cm"))).isEqualTo(14);
        assertThat(CubicRule.CHINA.centimetres(Length.parse("20.5 cm"), Length.parse("21 cm")))
                .isEqualTo(20.75);
    }

    @Property(tries = 200)
    void aBatchHasTheBitsOfTheSingleCalls(
            @ForAll @IntRange(min = 7, max = 18) int half, @ForAll @IntRange(min = 2, max = 18) int halfMetres) {
        for (CubicRule rule : CubicRule.values()) {
            double[] d = {taken(rule, 2 * half), taken(rule, 14), taken(rule, 38)};
            double[] l = {halfMetres / 2.0, 4, 9};
            double[] out = new double[3];
            rule.cubicMetres(d, l, out);
            for (int i = 0; i < 3; i++) {
                assertThat(out[i]).as(rule.id()).isEqualTo(rule.cubicMetres(d[i], l[i]));
            }
            rule.cubicMetres(d, l, d);
            assertThat(d).isEqualTo(out);
        }
    }

    @Test
    void aBatchStopsAtTheFirstBadLogAndWantsArraysOfOneLength() {
        double[] out = new double[2];
        assertThatThrownBy(() -> CubicRule.JAPAN.cubicMetres(new double[] {20, 999}, new double[] {4, 4}, out))
                .isInstanceOf(OutOfDomainException.class);
        assertThat(out[0]).isEqualTo(0.16);
        assertThatThrownBy(() -> CubicRule.JAPAN.cubicMetres(new double[] {20}, new double[] {4, 4}, out))
                .hasMessageContaining("three arrays of one length");
    }

    @Test
    void aLogIsReadWhereTheRuleWantsIt() {
        Log log = ScaleTest.log("4.05 m", "25.9 cm", "24.1 cm", "31 cm");
        assertThat(CubicRule.JAPAN.centimetres(log)).isEqualTo(24);
        // 24^2 x 4.05 = 2332.8 in ten-thousandths.
        assertThat(CubicRule.JAPAN.cubicMetres(log)).isEqualTo(0.233);
        assertThat(CubicRule.JAPAN_MEAN.centimetres(log)).isEqualTo(25);
        // Readings down to even centimetres: 24, 24, 30, 30; their mean is 27.
        assertThat(CubicRule.SOUTH_SEA.centimetres(log)).isEqualTo(27);
        assertThat(CubicRule.GERMANY.centimetres(log)).isEqualTo(28);
        assertThat(CubicRule.SWEDEN_TOP.centimetres(log)).isCloseTo(25 + 6 * 0.1 / 4.05, within(1e-6));
        assertThat(CubicRule.CHINA_FIR_POLES.centimetres(log)).isCloseTo(31 - 6 * 2.5 / 4.05, within(1e-6));
        // pi x 28 is 87.96.
        assertThat(CubicRule.FRANCE.centimetres(log)).isEqualTo(87);
        Log flared = log.withProfile(java.util.List.of(
                new ProfileStation(Length.ZERO, Length.parse("25 cm")),
                new ProfileStation(Length.parse("2.025 m"), Length.parse("26 cm")),
                new ProfileStation(Length.parse("4.05 m"), Length.parse("31 cm"))));
        assertThat(CubicRule.GERMANY.centimetres(flared)).isEqualTo(26);
        for (CubicRule rule : CubicRule.values()) {
            if (rule != CubicRule.RUSSIA) {
                assertThat(rule.working(log).value()).as(rule.id()).isEqualTo(rule.cubicMetres(log));
            }
        }
        assertThatThrownBy(() -> CubicRule.CHINA_FIR_POLES.cubicMetres(ScaleTest.log("2 m", "9 cm", "9 cm", "10 cm")))
                .hasMessageContaining("distance from the small end");
    }

    @Test
    void lengthsAreTakenToTheStepsOfTheirRule() {
        assertThat(CubicRule.SOUTH_SEA.metres(Length.parse("5.99 m"))).isEqualTo(5.8);
        assertThat(CubicRule.INDONESIA.metres(Length.parse("4.19 m"))).isEqualTo(4.0);
        assertThat(CubicRule.JAPAN.metres(Length.parse("3.659 m"))).isEqualTo(3.65);
        assertThatThrownBy(() -> CubicRule.INDONESIA.metres(Length.parse("19 cm")))
                .isInstanceOf(OutOfDomainException.class);
        assertThatThrownBy(() -> CubicRule.JAPAN.centimetres()).isInstanceOf(OutOfDomainException.class);
        assertThatThrownBy(() -> CubicRule.JAPAN.centimetres(Length.ZERO)).isInstanceOf(OutOfDomainException.class);
    }

    @Test
    void theRussianTableRisesInEveryDirection() {
        for (int d = 14; d <= 38; d += 2) {
            for (double l = 1; l <= 9; l += 0.5) {
                double cell = CubicRule.RUSSIA.cubicMetres(d, l);
                if (l > 1) {
                    assertThat(cell).as("%s cm %s m", d, l).isGreaterThan(CubicRule.RUSSIA.cubicMetres(d, l - 0.5));
                }
                if (d > 14) {
                    assertThat(cell).as("%s cm %s m", d, l).isGreaterThan(CubicRule.RUSSIA.cubicMetres(d - 2, l));
                }
                // A stem of at most 2 cm of taper to the metre holds no more than the cylinder of its butt.
                assertThat(cell)
                        .isBetween(
                                0.9 * Math.PI / 4 * d * d * l / 1e4, Math.PI / 4 * (d + 2 * l) * (d + 2 * l) * l / 1e4);
            }
        }
    }

    @Test
    void whatNoRuleCoversIsRefusedWithARemedy() {
        for (CubicRule rule : CubicRule.values()) {
            assertThatThrownBy(() -> rule.cubicMetres(Double.NaN, 4)).isInstanceOf(OutOfDomainException.class);
            assertThatThrownBy(() -> rule.cubicMetres(20, Double.NaN)).isInstanceOf(OutOfDomainException.class);
            assertThatThrownBy(() -> rule.working(20, 400)).hasMessageContaining("metres");
        }
        assertThatThrownBy(() -> CubicRule.RUSSIA.cubicMetres(15, 4)).hasMessageContaining("even centimetres");
        assertThatThrownBy(() -> CubicRule.RUSSIA.cubicMetres(40, 4)).hasMessageContaining("14 to 38");
        assertThatThrownBy(() -> CubicRule.RUSSIA.cubicMetres(14, 4.25)).hasMessageContaining("steps of 0.5");
        assertThatThrownBy(() -> CubicRule.CHINA.cubicMetres(13, 4)).hasMessageContaining("8 to 12");
        assertThatThrownBy(() -> CubicRule.CHINA_FIR_POLES.cubicMetres(9, 4)).hasMessageContaining("10 or more");
        assertThatThrownBy(() -> CubicRule.byId("siberia")).hasMessageContaining("japan, korea");
    }

    @Test
    void aRuleStandsByItsWeakestPartAndARecalledFormulaAnswersByIdOnly() {
        assertThat(CubicRule.JAPAN.standing()).isEqualTo(Standing.MEMORY);
        assertThat(CubicRule.RUSSIA.standing()).isEqualTo(Standing.PUBLISHED);
        assertThat(CubicRule.GERMANY.standing()).isEqualTo(Standing.SECONDHAND);
        assertThat(CubicRule.CHINA_FIR_POLES.byRequestOnly()).isTrue();
        assertThat(CubicRule.byId("china-fir-poles")).isEqualTo(CubicRule.CHINA_FIR_POLES);
        // Poles of 8 cm lie below those of 10 cm, as the hundredth would not.
        assertThat(CubicRule.CHINA_FIR_POLES.cubicMetres(8, 5)).isEqualTo(0.02451);
    }

    /** By hand: 6 + 1.8 + 0.2 = 8 cm and 8 + 1.8 + 0.2 = 10 cm; 14 + 2 + 0.08 + 0.2 = 16.28 cm; 0.7854 x 4 of their squares. */
    @Test
    void chinaChangesItsFormulaWithDiameterAndLength() {
        assertThat(CubicRule.CHINA.cubicMetres(6, 4)).as("four decimals").isEqualTo(0.0201);
        assertThat(CubicRule.CHINA.cubicMetres(8, 4)).as("three").isEqualTo(0.031);
        assertThat(CubicRule.CHINA.cubicMetres(12, 4)).isEqualTo(0.062);
        assertThat(CubicRule.CHINA.cubicMetres(14, 4)).isEqualTo(0.083);
        // 8 + 4.5 + 0.2 = 12.7 cm at 10 m; beyond it 0.8 x 10.2 x (8 + 5.1)^2.
        assertThat(CubicRule.CHINA.cubicMetres(8, 10)).isEqualTo(0.127);
        assertThat(CubicRule.CHINA.cubicMetres(8, 10.2)).isEqualTo(0.14);
        // 20 + 1 + 0.02 + 0.36 = 21.38 cm at 2 m; below it 0.8 x 1.9 x (20 + 0.95)^2.
        assertThat(CubicRule.CHINA.cubicMetres(20, 2)).isEqualTo(0.072);
        assertThat(CubicRule.CHINA.cubicMetres(20, 1.9)).isEqualTo(0.067);
        for (double between : new double[] {3.9, 6.5, 7.9, 12.5, 13.9}) {
            assertThatThrownBy(() -> CubicRule.CHINA.cubicMetres(between, 4))
                    .hasMessageContaining("take it to a class");
        }
        assertThat(CubicRule.CHINA.cubicMetres(4, 4)).isPositive();
        assertThat(CubicRule.CHINA_FIR_POLES.cubicMetres(10, 4)).isPositive();
    }

    /** By hand: 28.6, 30.8, 58.8 and 61 cm squared times 6 m. */
    @Test
    void importedLogsAreAllowedMoreFromThirtyAndFromSixtyCentimetres() {
        assertThat(CubicRule.JAPAN_1968.cubicMetres(28, 6)).isEqualTo(0.491);
        assertThat(CubicRule.JAPAN_1968.cubicMetres(30, 6)).isEqualTo(0.569);
        assertThat(CubicRule.JAPAN_1968.cubicMetres(58, 6)).isEqualTo(2.074);
        assertThat(CubicRule.JAPAN_1968.cubicMetres(60, 6)).isEqualTo(2.233);
    }

    @Test
    void theRussianTableEndsWithItsPrintedRowsAndColumns() {
        for (double[] corner : new double[][] {{14, 1}, {14, 9}, {38, 1}, {38, 9}}) {
            assertThat(CubicRule.RUSSIA.cubicMetres(corner[0], corner[1])).isPositive();
        }
        assertThatThrownBy(() -> CubicRule.RUSSIA.cubicMetres(12, 4)).hasMessageContaining("even centimetres");
        assertThatThrownBy(() -> CubicRule.RUSSIA.cubicMetres(14, 9.5)).hasMessageContaining("1.0 to 9.0");
        assertThatThrownBy(() -> CubicRule.RUSSIA.cubicMetres(14, 0.5)).hasMessageContaining("1.0 to 9.0");
    }

    @Test
    void aReadingAtTheRulesPlaceLeadsToTheVolumeOfItsClasses() {
        Length reading = Length.parse("21.4 cm");
        Length measured = Length.parse("5 m");
        for (CubicRule rule : CubicRule.values()) {
            Length at = rule == CubicRule.FRANCE ? reading.times(3) : reading;
            assertThat(rule.working(at, measured).value())
                    .as(rule.id())
                    .isEqualTo(rule.cubicMetres(
                            rule.centimetres(at), rule == CubicRule.RUSSIA ? 5.0 : rule.metres(measured)));
            assertThat(rule.working(at, measured).notes())
                    .as(rule.id())
                    .anyMatch(note -> note.contains(rule.classSource().title()));
        }
    }

    @Test
    void theWorkingOfALogSaysWhereItWasRead() {
        Log log = ScaleTest.log("4.5 m", "26 cm", "26 cm", "30 cm");
        assertThat(lastNote(CubicRule.FRANCE, log)).contains("of a round section", "straight between the ends");
        assertThat(lastNote(CubicRule.GERMANY, log))
                .contains("straight between the ends")
                .doesNotContain("round section");
        assertThat(lastNote(CubicRule.INDONESIA, log)).doesNotContain("straight between the ends");
        assertThat(lastNote(CubicRule.JAPAN, log)).doesNotContain("straight between the ends");
        Log measured = log.withProfile(java.util.List.of(
                new ProfileStation(Length.ZERO, Length.parse("26 cm")),
                new ProfileStation(Length.parse("4.5 m"), Length.parse("30 cm"))));
        assertThat(lastNote(CubicRule.GERMANY, measured)).contains("off the measured profile");
        assertThat(CubicRule.JAPAN.working(log).lines())
                .noneMatch(line -> line.name().contains("large-end"));
        assertThat(CubicRule.GERMANY.working(log).lines())
                .anyMatch(line -> line.name().contains("large-end"));
    }

    private static String lastNote(CubicRule rule, Log log) {
        java.util.List<String> notes = rule.working(log).notes();
        return notes.get(notes.size() - 1);
    }

    @Test
    void oneStepOfLengthIsEnough() {
        assertThat(CubicRule.SOUTH_SEA.metres(Length.parse("20 cm"))).isEqualTo(0.2);
        assertThat(CubicRule.INDONESIA.metres(Length.parse("20 cm"))).isEqualTo(0.1);
        assertThat(CubicRule.JAPAN.metres(Length.parse("1 cm"))).isEqualTo(0.01);
        assertThatThrownBy(() -> CubicRule.SOUTH_SEA.metres(Length.parse("19.9 cm")))
                .hasMessageContaining("a step of 20 cm");
    }

    @Test
    void aRuleSaysItsNamePlaceDomainAndSources() {
        assertThat(CubicRule.byId("sweden-middle")).isEqualTo(CubicRule.SWEDEN_MIDDLE);
        assertThat(CubicRule.JAPAN.label()).isEqualTo("Japan, logs (JAS)");
        assertThat(CubicRule.FRANCE.place().label()).isEqualTo("girth at mid-length");
        assertThat(CubicRule.FRANCE.domainCentimetres().holds(950)).isTrue();
        assertThat(CubicRule.JAPAN.domainCentimetres().holds(300.1)).isFalse();
        assertThat(CubicRule.JAPAN.lengthMetres().holds(30)).isTrue();
        assertThat(CubicRule.CHINA.sources())
                .extracting(org.woodyield.source.Source::id)
                .containsExactly("gb-4814-text", "gb-4814-range-memory");
        assertThat(CubicRule.JAPAN.classSource().id()).isEqualTo("japan-practice-memory");
        assertThat(CubicRule.RUSSIA.classSource().id()).isEqualTo("gost-2292-memory");
        assertThat(CubicRule.GERMANY.classSource().id()).isEqualTo("germany-memory");
        assertThat(CubicRule.CHINA.classSource().id()).isEqualTo("gb-4814-text");
        assertThat(CubicRule.SWEDEN_TOP.byRequestOnly()).isFalse();
        assertThat(CubicRule.SWEDEN_TOP.asksTaper()).isTrue();
        assertThat(CubicRule.CHINA.asksTaper()).isFalse();
        assertThat(CubicRule.JAPAN.asksTaper()).isFalse();
    }

    /** A table inside its range is published; its formula outside was recalled, and the working says so only there. */
    @Test
    void aWorkingTellsOfWhatWasRecalledOnlyWhereItWasUsed() {
        String memory = Standing.MEMORY.label();
        assertThat(CubicRule.CHINA.working(20, 4).notes()).noneMatch(note -> note.contains(memory));
        assertThat(CubicRule.CHINA.working(20, 11).notes()).anyMatch(note -> note.contains(memory));
        assertThat(CubicRule.JAPAN.working(20, 4).notes()).anyMatch(note -> note.contains(memory));
        assertThat(CubicRule.RUSSIA.working(20, 4).notes()).noneMatch(note -> note.contains("stands as"));
        assertThat(CubicRule.JAPAN.working(20, 4).notes()).contains(CubicRule.JAPAN.rounding());
        assertThat(CubicRule.INDONESIA.rounding()).startsWith("Not rounded");
        assertThat(CubicRule.CHINA.rounding()).contains("four decimals up to 6 cm");
    }

    @Test
    void aWorkingGivesReadingsInCentimetres() {
        Log log = ScaleTest.log("4.05 m", "25.9 cm", "24.1 cm", "31 cm");
        assertThat(CubicRule.GERMANY.working(log).value("a")).isCloseTo(25.9, within(1e-12));
        assertThat(CubicRule.GERMANY.working(log).value("b")).isCloseTo(24.1, within(1e-12));
        assertThat(CubicRule.GERMANY.working(log).value("e")).isCloseTo(31, within(1e-12));
        assertThat(CubicRule.JAPAN
                        .working(Length.parse("25.9 cm"), Length.parse("4 m"))
                        .value("a"))
                .isCloseTo(25.9, within(1e-12));
    }
}
