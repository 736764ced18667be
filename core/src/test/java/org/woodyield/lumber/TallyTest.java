package org.woodyield.lumber;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;
import org.junit.jupiter.api.Test;
import org.woodyield.lumber.BoardMeasure.Exact;
import org.woodyield.measure.Length;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.measure.Rounding;
import org.woodyield.measure.Volume;

class TallyTest {

    private static Tally.Line line(String size, long feet, int count, String species, String grade) {
        return new Tally.Line(NominalSize.parse(size), Length.feet(feet), count, species, grade);
    }

    private static final Tally SHED = new Tally(List.of(
            line("2x4", 8, 10, "pine", "1"),
            line("1x6", 10, 3, "oak", "2"),
            line("2x4", 7, 1, "oak", "1"),
            line("3/4 x 6", 8, 2, "pine", "2")));

    @Test
    void addsUpBySizeSpeciesAndGrade() {
        assertThat(SHED.total()).hasToString("81");
        assertThat(SHED.pieces()).isEqualTo(16);
        assertThat(SHED.bySize().toString()).isEqualTo("{3/4 x 6=8, 1x6=15, 2x4=58}");
        assertThat(SHED.bySpecies().toString()).isEqualTo("{oak=19 2/3, pine=61 1/3}");
        assertThat(SHED.byGrade().toString()).isEqualTo("{1=58, 2=23}");
    }

    @Test
    void dressedVolumeIsWhatThePiecesMeasure() {
        Tally studs = new Tally(List.of(line("2x4", 8, 10, "", "")));
        assertThat(studs.dressedVolume(SoftwoodSizes.Condition.DRY).cubicFeet())
                .isCloseTo(10 * 1.5 * 3.5 * 96 / 1728, within(1e-9));
        double factor = BoardMeasure.volumeFactor(1.5, 2, 3.5, 4, 8, 8);
        assertThat(BoardMeasure.solid(studs.total().value() * factor).cubicFeet())
                .isCloseTo(studs.dressedVolume(SoftwoodSizes.Condition.DRY).cubicFeet(), within(1e-9));
    }

    @Test
    void onlyTheSumIsRounded() {
        Tally seven = new Tally(Collections.nCopies(3, line("2x4", 7, 1, "", "")));
        assertThat(seven.wholeBoardFeet(Rounding.DOWN)).isEqualTo(14);
        Tally half = new Tally(List.of(line("1x6", 5, 1, "", "")));
        assertThat(half.wholeBoardFeet(Rounding.HALF_UP)).isEqualTo(3);
        assertThat(half.wholeBoardFeet(Rounding.HALF_EVEN)).isEqualTo(2);
        assertThat(half.wholeBoardFeetWorking(Rounding.HALF_EVEN).value()).isEqualTo(2);
    }

    @Test
    void countsThePiecesThatAreNeeded() {
        Exact each = BoardMeasure.exact(NominalSize.parse("2x4"), Length.feet(8));
        Exact hundred = new Exact(BigInteger.valueOf(100), BigInteger.ONE);
        assertThat(hundred.count(each, Rounding.UP)).isEqualTo(19);
        assertThat(hundred.count(each, Rounding.DOWN)).isEqualTo(18);
        assertThatExceptionOfType(OutOfDomainException.class).isThrownBy(() -> each.count(Exact.ZERO, Rounding.UP));
    }

    @Test
    void anEmptyTallyHoldsNothing() {
        Tally none = new Tally(List.of());
        assertThat(none.total()).isEqualTo(Exact.ZERO);
        assertThat(none.boardFeet().value()).isZero();
        assertThatExceptionOfType(OutOfDomainException.class)
                .isThrownBy(() -> none.wholeBoardFeetWorking(Rounding.HALF_UP));
    }

    @Test
    void refusesALineThatCannotBeCounted() {
        assertThatExceptionOfType(OutOfDomainException.class).isThrownBy(() -> line("2x4", 8, -1, "", ""));
        assertThatExceptionOfType(OutOfDomainException.class).isThrownBy(() -> line("2x4", 0, 1, "", ""));
        assertThatExceptionOfType(OutOfDomainException.class).isThrownBy(() -> line("2x4", 1000, 1, "", ""));
    }

    @Provide
    Arbitrary<List<Tally.Line>> lines() {
        Arbitrary<NominalSize> sizes = Arbitraries.of("2x4", "1x6", "1 1/4 x 8", "3/8 x 4", "6x8", "2 1/2 x 10")
                .map(NominalSize::parse);
        Arbitrary<Length> lengths = Arbitraries.integers().between(48, 240).map(Length::inches);
        return Combinators.combine(
                        sizes,
                        lengths,
                        Arbitraries.integers().between(0, 500),
                        Arbitraries.of("oak", "pine", ""),
                        Arbitraries.of("1", "2"))
                .as(Tally.Line::new)
                .list()
                .ofMinSize(1)
                .ofMaxSize(12);
    }

    @Property(tries = 300)
    void theOrderOfTheLinesChangesNothing(@ForAll("lines") List<Tally.Line> lines, @ForAll Random random) {
        List<Tally.Line> shuffled = new ArrayList<>(lines);
        Collections.shuffle(shuffled, random);
        Tally a = new Tally(lines);
        Tally b = new Tally(shuffled);
        assertThat(b.total()).isEqualTo(a.total());
        assertThat(b.bySize()).isEqualTo(a.bySize());
        assertThat(b.bySpecies()).isEqualTo(a.bySpecies());
        assertThat(b.byGrade()).isEqualTo(a.byGrade());
        assertThat(b.pieces()).isEqualTo(a.pieces());
        for (Rounding rounding : Rounding.values()) {
            assertThat(b.wholeBoardFeet(rounding)).isEqualTo(a.wholeBoardFeet(rounding));
        }
        assertThat(b.boardFeet()).isEqualTo(a.boardFeet());
    }

    @Property(tries = 300)
    void everyDivisionAddsUpToTheTotal(@ForAll("lines") List<Tally.Line> lines) {
        Tally tally = new Tally(lines);
        for (Map<?, Exact> parts : List.of(tally.bySize(), tally.bySpecies(), tally.byGrade())) {
            assertThat(parts.values().stream().reduce(Exact.ZERO, Exact::plus)).isEqualTo(tally.total());
        }
    }

    @Property(tries = 300)
    void theWorkingGivesTheSameWholeFeet(@ForAll("lines") List<Tally.Line> lines, @ForAll Rounding rounding) {
        Tally tally = new Tally(lines);
        assertThat(tally.wholeBoardFeetWorking(rounding).value()).isEqualTo(tally.wholeBoardFeet(rounding));
    }

    @Property(tries = 300)
    void boardFeetAndSolidVolumeGoBothWays(@ForAll("lines") List<Tally.Line> lines) {
        double boardFeet = new Tally(lines).boardFeet().value();
        Volume solid = BoardMeasure.solid(boardFeet);
        assertThat(BoardMeasure.ofSolid(solid)).isCloseTo(boardFeet, within(1e-9 * (1 + boardFeet)));
    }

    @Provide
    Arbitrary<Exact> fractions() {
        Arbitrary<BigInteger> denominators = Arbitraries.bigIntegers().between(BigInteger.ONE, BigInteger.TEN.pow(30));
        Arbitrary<BigInteger> small =
                Arbitraries.integers().between(1, 1_000_000).map(BigInteger::valueOf);
        return Combinators.combine(
                        Arbitraries.bigIntegers().between(BigInteger.TEN.pow(33).negate(), BigInteger.TEN.pow(33)),
                        Arbitraries.oneOf(denominators, small),
                        Arbitraries.oneOf(small, Arbitraries.of(BigInteger.ONE)))
                .as((numerator, denominator, share) -> new Exact(numerator.divide(share), denominator));
    }

    /** Far beyond the digits of a double, and rounded once: what a decimal of 60 digits reads back as. */
    @Property(tries = 2000)
    void anExactAmountIsTheNearestDouble(@ForAll("fractions") Exact amount) {
        double nearest = new BigDecimal(amount.numerator())
                .divide(new BigDecimal(amount.denominator()), new MathContext(60))
                .doubleValue();
        assertThat(amount.value()).isEqualTo(nearest);
    }

    @Property(tries = 2000)
    void smallFractionsAreTheNearestDoublesToo(@ForAll int numerator, @ForAll @IntRange(min = 1) int denominator) {
        Exact amount = new Exact(BigInteger.valueOf(numerator), BigInteger.valueOf(denominator));
        assertThat(amount.value())
                .isEqualTo(new BigDecimal(numerator)
                        .divide(new BigDecimal(denominator), new MathContext(60))
                        .doubleValue());
    }

    @Property(tries = 1000)
    void sumsAreExactAndInLowestTerms(@ForAll("fractions") Exact a, @ForAll("fractions") Exact b) {
        Exact sum = a.plus(b);
        BigInteger crossed =
                a.numerator().multiply(b.denominator()).add(b.numerator().multiply(a.denominator()));
        assertThat(sum.numerator().multiply(a.denominator()).multiply(b.denominator()))
                .isEqualTo(crossed.multiply(sum.denominator()));
        assertThat(sum.numerator().gcd(sum.denominator())).isEqualTo(BigInteger.ONE);
        assertThat(b.plus(a)).isEqualTo(sum);
    }

    /** In cubic nanometres, as the lengths are held. */
    @Property(tries = 500)
    void volumesAreExact(
            @ForAll @LongRange(min = 1, max = 1_000_000_000) long thickness,
            @ForAll @LongRange(min = 1, max = 1_000_000_000) long width,
            @ForAll @LongRange(min = 1, max = 30_000_000_000L) long length) {
        BigInteger cubicNanometres = BigInteger.valueOf(thickness)
                .multiply(BigInteger.valueOf(width))
                .multiply(BigInteger.valueOf(length));
        assertThat(BoardMeasure.exactCubicMetres(
                        Length.nanometres(thickness), Length.nanometres(width), Length.nanometres(length)))
                .isEqualTo(new Exact(cubicNanometres, BigInteger.TEN.pow(27)));
    }

    @Test
    void aLineMayCountNothingAndTenMillionAtMost() {
        assertThat(line("2x4", 8, 0, "", "").boardFeet()).isEqualTo(Exact.ZERO);
        assertThat(line("2x4", 8, 10_000_000, "", "").count()).isEqualTo(10_000_000);
        assertThatExceptionOfType(OutOfDomainException.class).isThrownBy(() -> line("2x4", 8, 10_000_001, "", ""));
        assertThat(new Tally.Line(NominalSize.parse("2x4"), Length.millimetres(30_000), 1, "", "").length())
                .isEqualTo(Length.millimetres(30_000));
        assertThatExceptionOfType(OutOfDomainException.class)
                .isThrownBy(() -> new Tally.Line(NominalSize.parse("2x4"), Length.millimetres(30_001), 1, "", ""))
                .withMessageContaining("up to 30000 mm");
    }

    @Test
    void greenLumberHoldsMoreThanDry() {
        Tally studs = new Tally(List.of(line("2x4", 8, 10, "", "")));
        assertThat(studs.dressedVolume(SoftwoodSizes.Condition.GREEN).cubicFeet())
                .isCloseTo(10 * 1.5625 * 3.5625 * 96 / 1728, within(1e-9));
    }
}
