package org.woodyield.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;
import org.woodyield.log.MeasuredStem;
import org.woodyield.log.StemPoint;
import org.woodyield.measure.Length;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.measure.Rounding;
import org.woodyield.plan.LogPrices.PriceClass;
import org.woodyield.scaling.LogRules;
import org.woodyield.scaling.ScalingConvention;
import org.woodyield.wood.Species;
import org.woodyield.wood.SpeciesCatalogue;

/** Bucking a stem for most worth. */
class BuckingTest {

    private static final Species ANY =
            SpeciesCatalogue.published().all().iterator().next();

    private static final LogPrices PRICES = new LogPrices(
            "USD",
            List.of("clear", "common"),
            List.of(
                    new PriceClass("clear", 14, 900),
                    new PriceClass("clear", 10, 500),
                    new PriceClass("common", 8, 300)));

    private static Bucking bucking(String rule, List<Length> lengths, List<Length> offcuts, Length trim, Length kerf) {
        return new Bucking(lengths, offcuts, trim, kerf, LogRules.byId(rule), ScalingConvention.plain(), PRICES);
    }

    private static Bucking.Stem stem(double stump, double top, double taper, List<Bucking.Stretch> stretches) {
        return new Bucking.Stem(
                "T",
                ANY,
                new MeasuredStem(List.of(new StemPoint(0, stump), new StemPoint(60, stump - 60 * taper))),
                Length.feet(1),
                Length.ofFeet(top, Rounding.DOWN),
                stretches);
    }

    @Test
    void twoLogsByHand() {
        // Doyle, no trim or kerf. From 1 to 25 ft; 20 in at the ground, less 1/8 in a foot.
        Bucking doyle = bucking("doyle", List.of(Length.feet(8), Length.feet(16)), List.of(), Length.ZERO, Length.ZERO);
        Bucking.Best best = doyle.best(stem(20, 25, 0.125, List.of()));
        // Ends at 9, 17 and 25 ft are 18.875, 17.875 and 16.875 in: 19, 18 and 17 in. Three 8-ft logs: 113 + 98 + 85 bf
        // (112.5, 98, 84.5, halves up) against 16 ft and 8 ft: 196 + 85.
        assertThat(best.cuts())
                .extracting(cut -> cut.scale().boardFeet().value())
                .containsExactly(113.0, 98.0, 85.0);
        assertThat(best.value()).isCloseTo(296 * 0.9, within(1e-9));
        assertThat(doyle.working(best).value()).isEqualTo(best.value());
        assertThat(best.heights()).isEqualTo(3);
    }

    @Test
    void ofThePricesThatFitTheThickestAndThenTheLongestClassCounts() {
        LogPrices prices = new LogPrices(
                "USD",
                List.of("any"),
                List.of(
                        new PriceClass("any", 8, 16, 350),
                        new PriceClass("any", 8, 300),
                        new PriceClass("any", 12, 12, 500),
                        new PriceClass("any", 12, 8, 450)));
        assertThat(prices.perThousand("any", 10, 8)).hasValue(300);
        assertThat(prices.perThousand("any", 10, 16)).hasValue(350);
        assertThat(prices.perThousand("any", 14, 16)).hasValue(500);
        assertThat(prices.perThousand("any", 14, 10)).hasValue(450);
        // Too short for the thicker classes.
        assertThat(prices.perThousand("any", 14, 6)).hasValue(300);
        assertThat(prices.perThousand("any", 7, 16)).isEmpty();
        assertThatThrownBy(() -> new PriceClass("any", 8, Double.NaN, 1)).isInstanceOf(OutOfDomainException.class);
    }

    @Test
    void anOffcutGetsPastABadPlace() {
        List<Bucking.Stretch> bad = List.of(new Bucking.Stretch(Length.feet(1), Length.feet(3), "common"));
        Bucking.Stem stem = stem(20, 19, 0.05, bad);
        Bucking without = bucking("doyle", List.of(Length.feet(16)), List.of(), Length.ZERO, Length.ZERO);
        Bucking with = bucking("doyle", List.of(Length.feet(16)), List.of(Length.feet(2)), Length.ZERO, Length.ZERO);
        assertThat(without.best(stem).cuts()).extracting(Bucking.Cut::grade).containsExactly("common");
        assertThat(with.best(stem).cuts()).extracting(Bucking.Cut::grade).containsExactly("clear");
        assertThat(with.best(stem).cuts().get(0).from()).isEqualTo(Length.feet(3));
        assertThat(with.best(stem).cuts().get(0).log().butt()).isFalse();
        assertThat(without.best(stem).cuts().get(0).log().butt()).isTrue();
    }

    @Test
    void aStemThatTheBuyerDoesNotTakeIsWorthNothing() {
        Bucking doyle = bucking("doyle", List.of(Length.feet(8)), List.of(), Length.ZERO, Length.ZERO);
        Bucking.Best best = doyle.best(stem(7, 25, 0.05, List.of()));
        assertThat(best.cuts()).isEmpty();
        assertThat(best.value()).isZero();
        assertThat(doyle.working(best).value()).isZero();
    }

    @Test
    void whatCannotBeIsRefused() {
        assertThatThrownBy(() -> bucking("doyle", List.of(), List.of(), Length.ZERO, Length.ZERO))
                .isInstanceOf(OutOfDomainException.class);
        assertThatThrownBy(() -> stem(20, 1, 0.05, List.of())).hasMessageContaining("above the stump");
        Bucking doyle = bucking("doyle", List.of(Length.feet(8)), List.of(), Length.ZERO, Length.ZERO);
        assertThatThrownBy(() -> doyle.best(stem(20, 61, 0.05, List.of()))).hasMessageContaining("measure the stem");
        assertThatThrownBy(() -> doyle.best(
                        stem(20, 25, 0.05, List.of(new Bucking.Stretch(Length.ZERO, Length.feet(9), "veneer")))))
                .hasMessageContaining("buyer's grades");
        assertThatThrownBy(() -> new PriceClass("clear", Double.NaN, 1)).isInstanceOf(OutOfDomainException.class);
        assertThatThrownBy(() -> new LogPrices("USD", List.of("a"), List.of(new PriceClass("b", 1, 1))))
                .hasMessageContaining("grade of a price");
        Bucking fine = bucking("doyle", List.of(Length.nanometres(1000)), List.of(), Length.ZERO, Length.ZERO);
        assertThatThrownBy(() -> fine.best(stem(20, 25, 0.05, List.of()))).hasMessageContaining("fewer lengths");
    }

    /** Every sequence of cuts, tried out. */
    private static double most(Bucking bucking, Bucking.Stem stem, Length from) {
        double most = 0;
        for (Length length : bucking.lengths()) {
            Optional<Bucking.Cut> cut = bucking.cut(stem, from, length);
            if (cut.isPresent()) {
                Length next = from.plus(length).plus(bucking.trim()).plus(bucking.kerf());
                most = Math.max(most, cut.get().value() + most(bucking, stem, next));
            }
        }
        for (Length offcut : bucking.offcuts()) {
            Length next = from.plus(offcut).plus(bucking.kerf());
            if (next.compareTo(stem.top()) < 0) {
                most = Math.max(most, most(bucking, stem, next));
            }
        }
        return most;
    }

    @Property(tries = 200)
    void noOtherWayToCutIsWorthMore(
            @ForAll @IntRange(min = 0, max = 3) int rule,
            @ForAll @Size(min = 1, max = 3) List<@IntRange(min = 8, max = 20) Integer> feet,
            @ForAll @IntRange(min = 0, max = 6) int offcut,
            @ForAll @IntRange(min = 0, max = 8) int trimInches,
            @ForAll @IntRange(min = 10, max = 26) int stump,
            @ForAll @IntRange(min = 20, max = 58) int top,
            @ForAll @IntRange(min = 0, max = 50) int bad) {
        Bucking bucking = bucking(
                List.of("doyle", "scribner-decimal-c", "international-quarter", "scribner-fit")
                        .get(rule),
                feet.stream().map(each -> Length.feet(each)).toList(),
                offcut < 3 ? List.of() : List.of(Length.feet(offcut)),
                Length.inches(trimInches),
                Length.inches(3, 8));
        Bucking.Stem stem =
                stem(stump, top, 0.14, List.of(new Bucking.Stretch(Length.feet(bad), Length.feet(bad + 3), "common")));
        Bucking.Best best = bucking.best(stem);
        assertThat(best.value()).isEqualTo(most(bucking, stem, stem.stump()));
        assertThat(bucking.working(best).value()).isEqualTo(best.value());
        Length end = stem.stump();
        for (Bucking.Cut cut : best.cuts()) {
            assertThat(cut.from()).isGreaterThanOrEqualTo(end);
            end = cut.from().plus(cut.log().length()).plus(bucking.kerf());
        }
        assertThat(end.minus(bucking.kerf())).isLessThanOrEqualTo(stem.top());
    }
}
