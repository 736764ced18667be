package org.woodyield.lumber;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.woodyield.measure.Length;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.source.Standing;

class MetricTest {

    @ParameterizedTest
    @CsvSource({
        "EN 336 T1,section,100,99,true",
        "EN 336 T1,section,100,98.9,false",
        "EN 336 T1,section,100,103,true",
        "EN 336 T1,section,100,103.1,false",
        "EN 336 T1,section,101,99,true",
        "EN 336 T1,section,125,129.1,false",
        "EN 336 T2,section,47,46,true",
        "EN 336 T2,section,145,146.6,false",
        "BS 4471:1978,section,125,131,true",
        "GOST 24454-80,section,32,33.1,false",
        "GOST 24454-80,section,40,42,true",
        "GOST 24454-80,section,125,128,true",
        "GOST 24454-80,length,3000,2975,true",
        "GOST 24454-80,length,3000,3051,false"
    })
    void admitsAPieceWithinTheTolerance(
            String rule, String dimension, String target, String measured, boolean admitted) {
        Length size = Length.parse(target + " mm");
        assertThat(MetricTolerance.of(rule, dimension, size).admits(size, Length.parse(measured + " mm")))
                .isEqualTo(admitted);
    }

    @Test
    void tolerancesRefuseWhatTheyAreNotFor() {
        assertThatExceptionOfType(OutOfDomainException.class)
                .isThrownBy(() -> MetricTolerance.of("EN 336 T3", "section", Length.millimetres(50)))
                .withMessageContaining("EN 336 T1 for section");
        assertThatExceptionOfType(OutOfDomainException.class)
                .isThrownBy(() -> MetricTolerance.of("EN 336 T1", "section", Length.millimetres(6)))
                .withMessageContaining("above 6 mm");
        MetricTolerance thin = MetricTolerance.of("EN 336 T1", "section", Length.millimetres(50));
        assertThatExceptionOfType(OutOfDomainException.class)
                .isThrownBy(() -> thin.admits(Length.millimetres(150), Length.millimetres(150)));
    }

    @Property(tries = 300)
    void sizeGrowsWithMoistureUpToFibreSaturationAndStopsThere(
            @ForAll @DoubleRange(min = 1, max = 1000) double size,
            @ForAll @DoubleRange(min = 0, max = 200) double moisture,
            @ForAll @DoubleRange(min = 20, max = 40) double saturation) {
        double at = MetricSizeChange.millimetres(size, moisture, saturation);
        assertThat(MetricSizeChange.millimetresWorking(size, moisture, saturation)
                        .value())
                .isEqualTo(at);
        double wetter = MetricSizeChange.millimetres(size, Math.min(200, moisture + 1), saturation);
        if (moisture >= saturation) {
            assertThat(wetter).isEqualTo(at);
        } else {
            assertThat(wetter).isGreaterThan(at);
        }
        assertThat(MetricSizeChange.millimetres(size, 20, saturation)).isEqualTo(size);
        assertThat(at).isBetween(size * 0.949, size * 1.051);
    }

    @Test
    void fiftyMillimetresAtTwelvePercentIsFortyNine() {
        assertThat(MetricSizeChange.millimetres(50, 12, MetricSizeChange.FIBRE_SATURATION))
                .isCloseTo(49, within(1e-12));
        assertThat(MetricSizeChange.millimetres(50, 90, MetricSizeChange.FIBRE_SATURATION_IN_FRANCE))
                .isCloseTo(51, within(1e-12));
    }

    @ParameterizedTest
    @CsvSource({"NaN,12,30", "50,NaN,30", "50,12,NaN", "0,12,30", "50,-1,30", "50,201,30", "50,12,41"})
    void sizeChangeRefusesBadInput(double size, double moisture, double saturation) {
        assertThatExceptionOfType(OutOfDomainException.class)
                .isThrownBy(() -> MetricSizeChange.millimetres(size, moisture, saturation));
    }

    @Test
    void aLotKeepsToItsTargetOnAverage() {
        Length target = Length.millimetres(50);
        assertThat(MetricTolerance.lotMeanHolds(target, List.of(Length.millimetres(49), Length.millimetres(51))))
                .isTrue();
        assertThat(MetricTolerance.lotMeanHolds(target, List.of(Length.millimetres(49), Length.parse("50.999 mm"))))
                .isFalse();
        assertThatExceptionOfType(OutOfDomainException.class)
                .isThrownBy(() -> MetricTolerance.lotMeanHolds(target, List.of()));
    }

    @ParameterizedTest
    @CsvSource({"16,50", "50,50", "60,60", "100,60", "125,75", "300,180"})
    void anUnedgedBoardHasALeastNarrowFace(int thickness, int face) {
        assertThat(MetricSizes.gostLeastNarrowFace(Length.millimetres(thickness)))
                .isEqualTo(Length.millimetres(face));
    }

    @ParameterizedTest
    @ValueSource(ints = {15, 55, 110, 301})
    void theNarrowFaceIsRefusedWhereNoneIsPrinted(int thickness) {
        assertThatExceptionOfType(OutOfDomainException.class)
                .isThrownBy(() -> MetricSizes.gostLeastNarrowFace(Length.millimetres(thickness)))
                .withMessageContaining("nearest");
    }

    @Test
    void en336SeriesGoesBothWays() {
        for (Length sawn : MetricSizes.en336(false)) {
            assertThat(MetricSizes.en336Sawn(MetricSizes.en336Planed(sawn))).isEqualTo(sawn);
            assertThat(MetricSizes.en336Planed(sawn)).isLessThan(sawn);
        }
        assertThatExceptionOfType(OutOfDomainException.class)
                .isThrownBy(() -> MetricSizes.en336Planed(Length.millimetres(140)))
                .withMessageContaining("nearest: 150 mm, 125 mm, 175 mm");
    }

    @Test
    void gostSizesAreAskedByThickness() {
        assertThat(MetricSizes.gostWidths(Length.millimetres(16)))
                .containsExactly(
                        Length.millimetres(75),
                        Length.millimetres(100),
                        Length.millimetres(125),
                        Length.millimetres(150));
        for (Length thickness : MetricSizes.gostThicknesses()) {
            List<Length> widths = MetricSizes.gostWidths(thickness);
            assertThat(widths).isSorted().doesNotHaveDuplicates();
            assertThat(widths.get(0)).isGreaterThanOrEqualTo(thickness);
        }
        assertThat(MetricSizes.gostThicknesses()).isSorted().hasSize(16);
        assertThatExceptionOfType(OutOfDomainException.class)
                .isThrownBy(() -> MetricSizes.gostWidths(Length.millimetres(45)))
                .withMessageContaining("nearest: 44 mm, 40 mm, 50 mm");
    }

    @Test
    void planingTakesMoreOffJoinery() {
        assertThat(MetricSizes.planedMillimetres(100, MetricSizes.Use.CONSTRUCTION))
                .isEqualTo(97);
        assertThat(MetricSizes.planedMillimetres(100, MetricSizes.Use.JOINERY)).isEqualTo(91);
        for (double size : new double[] {15, 35, 36, 100.5, 101, 150, 151, 500}) {
            for (MetricSizes.Use use : MetricSizes.Use.values()) {
                assertThat(MetricSizes.planedMillimetresWorking(size, use).value())
                        .isEqualTo(MetricSizes.planedMillimetres(size, use));
            }
        }
        for (double bad : new double[] {Double.NaN, 14, 501}) {
            assertThatExceptionOfType(OutOfDomainException.class)
                    .isThrownBy(() -> MetricSizes.planedMillimetres(bad, MetricSizes.Use.JOINERY));
        }
    }

    @Test
    void countriesCarryTheirSources() {
        assertThat(MetricSizes.series())
                .filteredOn(series -> series.name().startsWith("Japanese"))
                .hasSize(2)
                .allSatisfy(series -> {
                    assertThat(series.source().standing()).isEqualTo(Standing.MEMORY);
                    assertThat(series.sizes()).isSorted();
                });
        assertThat(MetricSizes.lengths())
                .filteredOn(lengths -> lengths.name().equals("Finland"))
                .singleElement()
                .satisfies(lengths -> assertThat(lengths.step()).isEqualTo(Length.millimetres(300)));
        assertThat(MetricSizes.referenceMoistures())
                .hasSize(8)
                .allSatisfy(moisture ->
                        assertThat(moisture.leastPercent()).isLessThanOrEqualTo(moisture.greatestPercent()));
    }

    /** No second copy was read: what a mistyped cell would break is the order of the table. */
    @Test
    void gostAllowanceGrowsWithSizeAndFallsWithMoisture() {
        double[] before = new double[38];
        for (Length size : GostShrinkage.sizes()) {
            double s = size.toMillimetres();
            double drier = Double.MAX_VALUE;
            for (int moisture = 5; moisture <= 37; moisture++) {
                double allowance = GostShrinkage.greenMillimetres(s, moisture) - s;
                assertThat(allowance).isLessThanOrEqualTo(drier + 1e-9).isPositive();
                assertThat(allowance).isGreaterThanOrEqualTo(before[moisture] - 1e-9);
                before[moisture] = allowance;
                drier = allowance;
                assertThat(GostShrinkage.greenMillimetresWorking(s, moisture).value())
                        .isEqualTo(GostShrinkage.greenMillimetres(s, moisture));
            }
        }
        assertThat(GostShrinkage.greenMillimetres(50, 15)).isEqualTo(52.0);
        assertThat(GostShrinkage.greenMillimetres(50, 16.4)).isEqualTo(52.0);
        assertThat(GostShrinkage.greenMillimetres(50, 16.5)).isEqualTo(51.8);
    }

    @Test
    void gostAllowanceRefusesSizesBetweenRowsAndNamesTheNearest() {
        assertThatExceptionOfType(OutOfDomainException.class)
                .isThrownBy(() -> GostShrinkage.greenMillimetres(44, 15))
                .withMessageContaining("nearest: 45 mm, 40 mm, 50 mm");
        for (double bad : new double[] {Double.NaN, 12, 90}) {
            assertThatExceptionOfType(OutOfDomainException.class)
                    .isThrownBy(() -> GostShrinkage.greenMillimetres(bad, 15));
        }
        for (double bad : new double[] {Double.NaN, 4.9, 37.1}) {
            assertThatExceptionOfType(OutOfDomainException.class)
                    .isThrownBy(() -> GostShrinkage.greenMillimetres(50, bad));
        }
    }

    @Property(tries = 500)
    void japaneseVolumeRoundsTheFourthDecimalHalfUp(
            @ForAll @IntRange(min = 1, max = 1000) int t,
            @ForAll @IntRange(min = 1, max = 1000) int w,
            @ForAll @IntRange(min = 1, max = 30_000) int length) {
        BigDecimal exact = BigDecimal.valueOf((long) t * w * length, 9).setScale(3, RoundingMode.HALF_UP);
        assertThat(JapaneseMeasure.cubicMetres(t, w, length)).isEqualTo(exact.doubleValue());
        assertThat(JapaneseMeasure.cubicMetresWorking(t, w, length).value())
                .isEqualTo(JapaneseMeasure.cubicMetres(t, w, length));
    }

    @Test
    void japanesePostOfThreeMetres() {
        assertThat(JapaneseMeasure.cubicMetres(105, 105, 3000)).isEqualTo(0.033);
        assertThat(JapaneseMeasure.cubicMetres(100, 15, 1000)).isEqualTo(0.002);
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, 0, -1, 1001})
    void japaneseVolumeRefusesBadInput(double bad) {
        assertThatExceptionOfType(OutOfDomainException.class)
                .isThrownBy(() -> JapaneseMeasure.cubicMetres(bad, 105, 3000));
    }

    /** A saturation that no source states is the user's own. */
    @Test
    void theWorkingNamesWhoSaysWhatFibreSaturationIs() {
        assertThat(saturationSource(MetricSizeChange.FIBRE_SATURATION)).isEqualTo("fibre-saturation-memory");
        assertThat(saturationSource(MetricSizeChange.FIBRE_SATURATION_IN_FRANCE))
                .isEqualTo("en-1313-1-france");
        assertThat(saturationSource(27)).isEqualTo("given");
    }

    private static String saturationSource(double percent) {
        return MetricSizeChange.millimetresWorking(50, 12, percent).lines().stream()
                .filter(line -> line.name().equals("fibre saturation"))
                .findFirst()
                .orElseThrow()
                .source()
                .id();
    }

    @Test
    void aToleranceEndsWithItsSizes() {
        MetricTolerance thin = MetricTolerance.of("EN 336 T1", "section", Length.millimetres(100));
        assertThat(thin.upTo()).contains(Length.millimetres(100));
        assertThatExceptionOfType(OutOfDomainException.class)
                .isThrownBy(() -> thin.admits(Length.millimetres(101), Length.millimetres(101)))
                .withMessageContaining(", up to 100 mm");
        assertThat(MetricTolerance.of("EN 336 T1", "section", Length.parse("100.1 mm")))
                .isNotEqualTo(thin);
        assertThat(MetricTolerance.all()).extracting(MetricTolerance::rule).contains("EN 336 T1", "BS 4471:1978");
    }

    @Test
    void stockLengthsMayLackALeastOrAGreatest() {
        MetricSizes.Lengths packaging = MetricSizes.lengths().stream()
                .filter(lengths -> lengths.name().contains("packaging"))
                .findFirst()
                .orElseThrow();
        assertThat(packaging.least()).contains(Length.millimetres(500));
        assertThat(packaging.greatest()).isEmpty();
        assertThat(packaging.step()).isEqualTo(Length.millimetres(100));
    }

    @Test
    void workingsRefuseWhatTheirFiguresRefuse() {
        assertThatExceptionOfType(OutOfDomainException.class)
                .isThrownBy(() -> MetricSizeChange.millimetresWorking(50, 201, 30));
        assertThatExceptionOfType(OutOfDomainException.class)
                .isThrownBy(() -> JapaneseMeasure.cubicMetresWorking(0, 105, 3000));
        assertThatExceptionOfType(OutOfDomainException.class)
                .isThrownBy(() -> MetricSizes.planedMillimetresWorking(501, MetricSizes.Use.JOINERY));
        assertThatExceptionOfType(OutOfDomainException.class)
                .isThrownBy(() -> GostShrinkage.greenMillimetresWorking(50, 38));
        assertThatExceptionOfType(OutOfDomainException.class)
                .isThrownBy(() -> KilnNet.customs().get(0).netWorking(-1));
    }

    @Test
    void theGostWorkingNamesItsCell() {
        assertThat(GostShrinkage.greenMillimetresWorking(50, 15).lines())
                .anySatisfy(line -> assertThat(line)
                        .isInstanceOfSatisfying(
                                org.woodyield.working.Working.Lookup.class,
                                lookup -> assertThat(lookup.cell()).isEqualTo("50 mm, 14 to 16 %")));
    }
}
