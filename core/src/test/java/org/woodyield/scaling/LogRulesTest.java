package org.woodyield.scaling;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.source.Standing;

/** The published rules: bits, flags, domains, and figures worked by hand. */
class LogRulesTest {

    /** Every log of a grid by default; the mutation profile, which runs these tests thousands of times, asks for fewer. */
    private static final int STEP = Integer.getInteger("woodyield.test.every", 1);

    static Stream<LogRule> rules() {
        return Stream.concat(
                Stream.concat(LogRules.all().stream(), LogRules.onRequest().stream()),
                Stream.of(KerfRule.likeInternational(0.25), KerfRule.likeInternational(0.05)));
    }

    private static List<RuleFlag.Case> grid(LogRule rule) {
        double least = rule.diameterInches().least();
        double greatest = Math.min(80, rule.diameterInches().greatest());
        return Stream.iterate(least, d -> d <= greatest, d -> d + 1)
                .flatMap(d -> Stream.iterate(
                                rule.lengthFeet().least(),
                                l -> l <= rule.lengthFeet().greatest(),
                                l -> l + 1)
                        .map(l -> new RuleFlag.Case(d, l)))
                .toList();
    }

    private static List<RuleFlag.Case> sample(LogRule rule) {
        List<RuleFlag.Case> grid = grid(rule);
        return IntStream.iterate(0, i -> i < grid.size(), i -> i + STEP)
                .mapToObj(grid::get)
                .toList();
    }

    @ParameterizedTest
    @MethodSource("rules")
    void theWorkingHasTheBitsOfTheScale(LogRule rule) {
        assertThat(sample(rule)).isNotEmpty().allSatisfy(log -> {
            double scale = rule.boardFeet(log.diameterInches(), log.lengthFeet());
            assertThat(rule.working(log.diameterInches(), log.lengthFeet()).value())
                    .isEqualTo(scale);
            assertThat(scale).isGreaterThanOrEqualTo(0);
        });
    }

    @ParameterizedTest
    @MethodSource("rules")
    void aBatchHasTheBitsOfTheSingleCall(LogRule rule) {
        List<RuleFlag.Case> grid = sample(rule);
        double[] diameters =
                grid.stream().mapToDouble(RuleFlag.Case::diameterInches).toArray();
        double[] lengths = grid.stream().mapToDouble(RuleFlag.Case::lengthFeet).toArray();
        double[] out = new double[lengths.length];
        rule.scale(diameters, lengths, out);
        double[] single = grid.stream()
                .mapToDouble(log -> rule.boardFeet(log.diameterInches(), log.lengthFeet()))
                .toArray();
        assertThat(out).isEqualTo(single);
        double[] unrounded = grid.stream()
                .mapToDouble(log -> rule.unroundedBoardFeet(log.diameterInches(), log.lengthFeet()))
                .toArray();
        rule.unroundedBoardFeet(diameters, lengths, out);
        assertThat(out).isEqualTo(unrounded);
        double[] both = diameters.clone();
        rule.unroundedBoardFeet(both, lengths, both);
        assertThat(both).isEqualTo(unrounded);
        rule.scale(diameters, lengths, lengths);
        assertThat(lengths).isEqualTo(single);
    }

    /** Some thousand seeded logs of every kind, wrong ones too, each in the place of one log among good ones. */
    @ParameterizedTest
    @MethodSource("rules")
    void aBatchRefusesWhatTheSingleCallRefusesAndKeepsWhatLiesBefore(LogRule rule) {
        double good =
                rule.diameterInches().holds(16) ? 16 : rule.diameterInches().greatest();
        double goodLength = rule.lengthFeet().holds(12) ? 12 : rule.lengthFeet().greatest();
        double scale = rule.boardFeet(good, goodLength);
        Random random = new Random(8);
        double[] odd = {
            Double.NaN,
            -0.0,
            0,
            -1,
            -12,
            0.5,
            1e-310,
            3,
            4,
            5.999999999999999,
            6.000000000000001,
            6.015625,
            63,
            64,
            6,
            11,
            12,
            12.5,
            28,
            28.5,
            44,
            45,
            60,
            61,
            120,
            Math.nextUp(120.0),
            0x1p31 + 12,
            0x1p32 + 12,
            0x1p52,
            0x1p52 + 12,
            -0x1p52 + 12,
            0x1p53,
            Double.POSITIVE_INFINITY,
            Double.NEGATIVE_INFINITY,
            Double.MAX_VALUE
        };
        for (int n = 0; n < 300; n += STEP) {
            double d = n % 3 == 0 ? odd[random.nextInt(odd.length)] : random.nextInt(n % 3 == 1 ? 130 : 1300) / 10.0;
            double l = n % 2 == 0 ? 12 : n % 5 == 0 ? odd[random.nextInt(odd.length)] : random.nextInt(650) / 10.0;
            int at = n % 10 == 0 ? 1050 : random.nextInt(20);
            double[] diameters = filled(at + 2, good);
            double[] lengths = filled(at + 2, goodLength);
            diameters[at] = d;
            lengths[at] = l;
            double[] out = filled(at + 2, -7);
            Optional<String> refused = refusal(() -> out[at] = rule.boardFeet(d, l));
            double single = out[at];
            out[at] = -7;
            assertThat(refusal(() -> rule.scale(diameters, lengths, out)))
                    .as("%s in x %s ft at %d", d, l, at)
                    .isEqualTo(refused);
            double[] before = filled(at + 2, -7);
            assertThat(refusal(() -> rule.unroundedBoardFeet(diameters, lengths, before)))
                    .as("%s in x %s ft at %d, before rounding", d, l, at)
                    .isEqualTo(refused);
            assertThat(before[at + 1] == -7).isEqualTo(refused.isPresent());
            assertThat(new double[] {out[at], out[0], out[at + 1]})
                    .containsExactly(single, at == 0 ? single : scale, refused.isPresent() ? -7 : scale);
        }
    }

    private static double[] filled(int count, double value) {
        double[] array = new double[count];
        Arrays.fill(array, value);
        return array;
    }

    private static Optional<String> refusal(Runnable calculation) {
        try {
            calculation.run();
            return Optional.empty();
        } catch (OutOfDomainException e) {
            return Optional.of(e.getMessage());
        }
    }

    /** The batch rounds by another formula than the single call; every tenth of an inch meets halves and near halves. */
    @ParameterizedTest
    @MethodSource("rules")
    void aBatchRoundsAsTheSingleCallDoes(LogRule rule) {
        double[] diameters = DoubleStream.iterate(1, d -> d < 63.5, d -> d + 0.0625 * STEP)
                .filter(d -> refusal(() -> rule.boardFeet(d, rule.lengthFeet().greatest()))
                        .isEmpty())
                .toArray();
        for (double length = rule.lengthFeet().least(); rule.lengthFeet().holds(length); length += 3) {
            double[] lengths = filled(diameters.length, length);
            double[] out = new double[diameters.length];
            rule.scale(diameters, lengths, out);
            double same = length;
            double[] single =
                    DoubleStream.of(diameters).map(d -> rule.boardFeet(d, same)).toArray();
            assertThat(Arrays.equals(out, single))
                    .as("%s at %s ft", rule, length)
                    .isTrue();
        }
    }

    @ParameterizedTest
    @MethodSource("rules")
    void everyFlagIsShownByItsCounterexample(LogRule rule) {
        assertThat(rule.flags()).allMatch(flag -> flag.shownBy(rule));
    }

    @ParameterizedTest
    @MethodSource("rules")
    void aRuleWithoutAFlagForItNeverFalls(LogRule rule) {
        boolean fallsByDiameter = has(rule, RuleFlag.Fault.FALLS_AS_DIAMETER_GROWS);
        boolean fallsByLength = has(rule, RuleFlag.Fault.FALLS_AS_LENGTH_GROWS);
        for (RuleFlag.Case log : sample(rule)) {
            double d = log.diameterInches();
            double l = log.lengthFeet();
            double here = rule.boardFeet(d, l);
            if (!fallsByDiameter && rule.diameterInches().holds(d + 1)) {
                assertThat(rule.boardFeet(d + 1, l)).as(rule.id() + " " + log).isGreaterThanOrEqualTo(here);
            }
            if (!fallsByLength && rule.lengthFeet().holds(l + 1)) {
                assertThat(rule.boardFeet(d, l + 1)).as(rule.id() + " " + log).isGreaterThanOrEqualTo(here);
            }
        }
    }

    private static boolean has(LogRule rule, RuleFlag.Fault fault) {
        return rule.flags().stream().anyMatch(flag -> flag.fault() == fault);
    }

    @ParameterizedTest
    @MethodSource("rules")
    void outsideItsDomainARuleRefusesWithTheLimits(LogRule rule) {
        double d = rule.diameterInches().greatest();
        double l = rule.lengthFeet().greatest();
        for (double wrong : new double[] {Double.NaN, -1, 0, d + 1, Double.POSITIVE_INFINITY}) {
            assertThatThrownBy(() -> rule.boardFeet(wrong, l))
                    .isInstanceOf(OutOfDomainException.class)
                    .hasMessageContaining("scaling diameter")
                    .hasMessageContaining("allowed: ");
        }
        for (double wrong : new double[] {Double.NaN, -1, 0, l + 1, Double.POSITIVE_INFINITY}) {
            assertThatThrownBy(() -> rule.boardFeet(d, wrong))
                    .isInstanceOf(OutOfDomainException.class)
                    .hasMessageContaining("scaling length");
            assertThatThrownBy(() -> rule.working(d, wrong)).isInstanceOf(OutOfDomainException.class);
            assertThatThrownBy(() -> rule.scale(new double[] {d}, new double[] {wrong}, new double[1]))
                    .isInstanceOf(OutOfDomainException.class);
        }
    }

    @Test
    void tablesHaveNoCellsBetweenInches() {
        assertThatThrownBy(() -> LogRules.byId("scribner-decimal-c").boardFeet(12.5, 16))
                .hasMessageContaining("whole inches");
        assertThatThrownBy(() -> LogRules.byId("scribner-decimal-c").boardFeet(12, 16.5))
                .hasMessageContaining("whole feet");
        assertThatThrownBy(() -> LogRules.byId("scribner-diagram").boardFeet(12.5, 16))
                .hasMessageContaining("whole inches");
    }

    @Test
    void doyleByHand() {
        LogRule doyle = LogRules.byId("doyle");
        assertThat(doyle.boardFeet(20, 10)).isEqualTo(160);
        assertThat(doyle.boardFeet(12, 12)).isEqualTo(48);
        assertThat(doyle.boardFeet(35, 16)).isEqualTo(961);
        assertThat(doyle.unroundedBoardFeet(7, 10)).isEqualTo(5.625);
        assertThat(doyle.boardFeet(7, 10)).isEqualTo(6);
    }

    @Test
    void internationalByHand() {
        // 4 sections from 16 in: 44.96 + 48.1800... ; the closed form of 16 ft is 0.88 D^2 - 1.52 D - 1.36.
        double eighth = 0.88 * 256 - 1.52 * 16 - 1.36;
        assertThat(LogRules.byId("international-eighth").unroundedBoardFeet(16, 16))
                .isCloseTo(eighth, within(1e-9));
        assertThat(LogRules.byId("international-quarter").boardFeet(16, 16)).isEqualTo(180);
        assertThat(LogRules.byId("international-quarter").boardFeet(34, 16)).isEqualTo(870);
        assertThat(LogRules.byId("international-quarter-905").boardFeet(34, 16)).isEqualTo(875);
    }

    @Test
    void theConstantOfTheQuarterInchRuleChangesThirtySevenOf715Cells() {
        LogRule statute = LogRules.byId("international-quarter");
        LogRule printed = LogRules.byId("international-quarter-905");
        int cells = 0;
        int changed = 0;
        for (int d = 6; d <= 60; d++) {
            for (int l = 8; l <= 20; l++) {
                cells++;
                double difference = Math.abs(statute.boardFeet(d, l) - printed.boardFeet(d, l));
                assertThat(difference).isIn(0.0, 5.0);
                changed += difference == 0 ? 0 : 1;
            }
        }
        assertThat(cells).isEqualTo(715);
        assertThat(changed).isEqualTo(37);
    }

    @Test
    void aSectionAtAQuarterInchIsAlmostTheAssumptionsOfTheRule() {
        KerfRule assumed = KerfRule.likeInternational(0.25);
        double ratio = assumed.boardFeet(16, 16)
                / LogRules.byId("international-quarter").unroundedBoardFeet(16, 16);
        assertThat(ratio).isBetween(1.0, 1.005);
    }

    @Test
    void theAssumptionsOfTheInternationalRuleStandBesideWhatItPrints() {
        KerfRule eighth = KerfRule.likeInternational(0.125);
        assertThat(eighth.squareCoefficient())
                .isCloseTo(0.22046, within(5e-6))
                .isEqualTo(eighth.squareCoefficientWorking().value());
        KerfRule quarter = KerfRule.likeInternational(0.25);
        assertThat(quarter.kerfConstant(eighth))
                .isCloseTo(19.0 / 21, within(1e-15))
                .isEqualTo(quarter.kerfConstantWorking(eighth).value());
        // 4-ft sections from 16 in: the slab term is the printed one, so the square alone differs, by 1.00209.
        double squares = 0.88 * 256 + 0.22 * (2 * 16 * 0.5 * 6 + 0.25 * 14);
        double printed = LogRules.byId("international-eighth").unroundedBoardFeet(16, 16);
        assertThat(eighth.unroundedBoardFeet(16, 16) - printed)
                .isCloseTo(squares * (eighth.squareCoefficient() / 0.22 - 1), within(1e-9));
        assertThat(LogRules.byId("international-quarter").working(16, 16).notes())
                .anyMatch(note -> note.contains("0.22046") && note.contains("before rounding"));
    }

    @Test
    void theOneFormulaForAnyLengthIsTheSumAtWholeSections() {
        LogRule formula = LogRules.byId("international-quarter-any-length");
        LogRule sum = LogRules.byId("international-quarter-905");
        for (int d = 6; d <= 40; d++) {
            for (int l = 4; l <= 24; l += 4) {
                // Half a unit of the last printed digit of L^3, D L^2, L^2 and L.
                double allowance = 5e-7 * l * l * l + 5e-7 * d * l * l + 5e-5 * l * l + 5e-5 * l;
                assertThat(formula.unroundedBoardFeet(d, l)).isCloseTo(sum.unroundedBoardFeet(d, l), within(allowance));
            }
        }
    }

    @Test
    void factorsAloneDifferFromTheDecimalTableInItsFourExceptionsOnly() {
        LogRule factors = LogRules.byId("scribner-factors");
        LogRule table = LogRules.byId("scribner-decimal-c");
        List<RuleFlag.Case> differ = grid(table).stream()
                .filter(log -> factors.boardFeet(log.diameterInches(), log.lengthFeet())
                        != table.boardFeet(log.diameterInches(), log.lengthFeet()))
                .toList();
        assertThat(differ)
                .containsExactly(
                        new RuleFlag.Case(6, 6),
                        new RuleFlag.Case(6, 8),
                        new RuleFlag.Case(7, 6),
                        new RuleFlag.Case(7, 8));
    }

    @Test
    void scribnerDecimalCIsTheTableAndNotTheFit() {
        LogRule table = LogRules.byId("scribner-decimal-c");
        LogRule fit = LogRules.byId("scribner-fit");
        assertThat(table.boardFeet(30, 16)).isEqualTo(660);
        assertThat(fit.boardFeet(30, 16)).isEqualTo(647);
        assertThat(table.boardFeet(6, 8)).isEqualTo(5);
        long differ = IntStream.rangeClosed(6, 60)
                .filter(d -> Math.rint(fit.boardFeet(d, 16) / 10) * 10 != table.boardFeet(d, 16))
                .count();
        assertThat(differ).isEqualTo(41);
    }

    @Test
    void doyleScribnerIsTheSmallerOfTheTwo() {
        LogRule both = LogRules.byId("doyle-scribner");
        for (int d = 12; d <= 44; d++) {
            assertThat(both.boardFeet(d, 16))
                    .isEqualTo(Math.min(
                            LogRules.byId("doyle").boardFeet(d, 16),
                            LogRules.byId("scribner-diagram").boardFeet(d, 16)));
        }
    }

    @Test
    void aRuleWithAnInsetWarnsBelowIt() {
        assertThat(LogRules.byId("doyle").caution(3.9, 16)).isPresent();
        assertThat(LogRules.byId("doyle").caution(4, 16)).isEmpty();
        assertThat(LogRules.byId("doyle").working(3, 16).notes())
                .anyMatch(note -> note.startsWith("Caution: below 4 in"));
        assertThat(LogRules.byId("scribner-decimal-c").caution(6, 16)).isEmpty();
    }

    @Test
    void aTableByBitsHoldsNoNumberThatCannotBeLookedUp() {
        assertThatThrownBy(() -> WholeCells.column(3, 8, d -> d)).hasMessageContaining("not 3");
        assertThatThrownBy(() -> WholeCells.column(60, 64, d -> d)).hasMessageContaining("not 64");
        assertThat(WholeCells.column(4, 63, d -> d)).hasSize(WholeCells.ENTRIES);
    }

    @Test
    void vermontByHand() {
        assertThat(LogRules.byId("vermont").boardFeet(12, 12)).isEqualTo(72);
        assertThat(LogRules.byId("vermont").boardFeet(28, 12)).isEqualTo(392);
        assertThatThrownBy(() -> LogRules.byId("vermont").boardFeet(12, 16)).hasMessageContaining("sections of 12 ft");
    }

    @Test
    void rulesRecalledWithLittleConfidenceAnswerOnlyByTheirId() {
        assertThat(LogRules.onRequest())
                .extracting(LogRule::id)
                .contains("tiemann", "spaulding", "champlain")
                .doesNotContainAnyElementsOf(
                        LogRules.all().stream().map(LogRule::id).toList());
        LogRule tiemann = LogRules.byId("tiemann");
        assertThat(tiemann.standing()).isEqualTo(Standing.MEMORY);
        assertThat(tiemann.working(16, 16).notes()).anyMatch(note -> note.contains("MEMORY"));
    }

    @Test
    void anUnknownRuleIsRefusedWithTheIdsThatThereAre() {
        assertThatThrownBy(() -> LogRules.byId("doyel"))
                .isInstanceOf(OutOfDomainException.class)
                .hasMessageContaining("'doyel'")
                .hasMessageContaining("doyle, scribner-decimal-c");
    }

    @Test
    void aFlagIsShownOnlyByLogsThatShowIt() {
        LogRule doyle = LogRules.byId("doyle");
        assertThat(RuleFlag.fallsWithDiameter("", 16, 1, 3).shownBy(doyle)).isTrue();
        assertThat(RuleFlag.fallsWithDiameter("", 16, 10, 12).shownBy(doyle)).isFalse();
        assertThat(RuleFlag.fallsWithDiameter("", 16, 4, 4).shownBy(doyle)).isFalse();
        assertThat(new RuleFlag(
                                RuleFlag.Fault.FALLS_AS_DIAMETER_GROWS,
                                "",
                                List.of(new RuleFlag.Case(10, 16), new RuleFlag.Case(11, 4)))
                        .shownBy(doyle))
                .as("of two lengths")
                .isFalse();
        assertThat(new RuleFlag(
                                RuleFlag.Fault.FALLS_AS_LENGTH_GROWS,
                                "",
                                List.of(new RuleFlag.Case(10, 8), new RuleFlag.Case(8, 16)))
                        .shownBy(doyle))
                .as("of two diameters")
                .isFalse();
        LogRule decimalC = LogRules.byId("scribner-decimal-c");
        assertThat(RuleFlag.fallsWithLength("", 6, 7, 8).shownBy(decimalC)).isTrue();
        assertThat(RuleFlag.fallsWithLength("", 6, 8, 9).shownBy(decimalC)).isFalse();
        assertThat(RuleFlag.givesNothing("", 4, 16).shownBy(doyle)).isTrue();
        assertThat(RuleFlag.givesNothing("", 5, 16).shownBy(doyle)).isFalse();
        assertThat(RuleFlag.cuttingAdds("", 12, 16, 8, 13).shownBy(doyle)).isTrue();
        assertThat(RuleFlag.cuttingAdds("", 12, 16, 8, 12).shownBy(doyle))
                .as("without taper both pieces are the log")
                .isFalse();
        assertThatThrownBy(() -> new RuleFlag(RuleFlag.Fault.GIVES_NOTHING, "", List.of()))
                .hasMessageContaining("shown by 1 logs");
    }

    /** A rule of a mill's own: half the square in board feet, whatever the length. */
    private record OwnRule() implements LogRule {
        @Override
        public String id() {
            return "own";
        }

        @Override
        public String name() {
            return "Own";
        }

        @Override
        public List<org.woodyield.source.Source> sources() {
            return List.of();
        }

        @Override
        public Standing standing() {
            return Standing.COMMON_PRACTICE;
        }

        @Override
        public org.woodyield.measure.Domain diameterInches() {
            return org.woodyield.measure.Domain.of("scaling diameter", "in", 1, 40);
        }

        @Override
        public org.woodyield.measure.Domain lengthFeet() {
            return org.woodyield.measure.Domain.of("scaling length", "ft", 1, 40);
        }

        @Override
        public String rounding() {
            return "Down.";
        }

        @Override
        public List<RuleFlag> flags() {
            return List.of();
        }

        @Override
        public double boardFeet(double d, double l) {
            return Math.floor(unroundedBoardFeet(d, l));
        }

        @Override
        public double unroundedBoardFeet(double d, double l) {
            return diameterInches().require(d) * d / 2;
        }

        @Override
        public org.woodyield.working.Working working(double d, double l) {
            throw new UnsupportedOperationException();
        }
    }

    @Test
    void aRuleOfAMillsOwnGetsItsBatchesFromTheSingleCall() {
        LogRule own = new OwnRule();
        double[] out = new double[2];
        own.scale(new double[] {5, 6}, new double[] {8, 8}, out);
        assertThat(out).containsExactly(12, 18);
        own.unroundedBoardFeet(new double[] {5, 6}, new double[] {8, 8}, out);
        assertThat(out).containsExactly(12.5, 18);
        assertThat(own.diameterAt()).isEqualTo(DiameterAt.SMALL_END);
        assertThat(own.caution(5, 8)).isEmpty();
        double[] one = {5};
        assertThatThrownBy(() -> own.scale(one, out, out)).hasMessageContaining("three arrays of one length");
        assertThatThrownBy(() -> own.unroundedBoardFeet(out, one, out))
                .hasMessageContaining("three arrays of one length");
    }

    @ParameterizedTest
    @MethodSource("rules")
    void aBatchWantsThreeArraysOfOneLength(LogRule rule) {
        double[] two = {16, 16};
        double[] one = {12};
        for (double[][] wrong : new double[][][] {{one, two, two}, {two, one, two}, {two, two, one}}) {
            assertThatThrownBy(() -> rule.scale(wrong[0], wrong[1], wrong[2]))
                    .isInstanceOf(IllegalArgumentException.class)
                    .hasMessageContaining("three arrays of one length");
            assertThatThrownBy(() -> rule.unroundedBoardFeet(wrong[0], wrong[1], wrong[2]))
                    .isInstanceOf(IllegalArgumentException.class);
        }
    }

    @Test
    void aRuleSaysWhatItIs() {
        LogRule brereton = LogRules.byId("brereton");
        assertThat(brereton.name()).isEqualTo("Brereton").isEqualTo(brereton.toString());
        assertThat(brereton.diameterAt()).isEqualTo(DiameterAt.MEAN_OF_ENDS);
        assertThat(brereton.diameterAt().label()).isEqualTo("mean of the two ends");
        assertThat(brereton.rounding()).startsWith("Not rounded");
        assertThat(LogRules.byId("doyle").sources())
                .extracting(org.woodyield.source.Source::id)
                .containsExactly("la-rs-3-4641", "fnr-191", "chase-1913", "doyle-stick");
        assertThat(LogRules.byId("doyle").standing()).isEqualTo(Standing.PUBLISHED);
        assertThat(LogRules.byId("doyle").working(16, 16).notes()).noneMatch(note -> note.contains("stands as"));
        assertThat(LogRules.byId("vermont").lengthFeet().greatest()).isEqualTo(12);
    }

    @Test
    void aKerfRuleSaysWhatItIsAndRefusesAsABatchWhatItRefusesAlone() {
        KerfRule rule = KerfRule.likeInternational(0.25);
        assertThat(rule.standing()).isEqualTo(Standing.DERIVED);
        assertThat(rule.sources())
                .singleElement()
                .satisfies(source -> assertThat(source.id()).isEqualTo("kerf-rule"));
        assertThat(rule.rounding()).startsWith("Not rounded");
        assertThat(rule.name()).contains("kerf 0.25 in");
        for (double[] wrong : new double[][] {{0.9, 8}, {121, 8}, {12, 0.9}, {12, 61}, {Double.NaN, 8}}) {
            assertThatThrownBy(() -> rule.boardFeet(wrong[0], wrong[1])).isInstanceOf(OutOfDomainException.class);
            assertThatThrownBy(() -> rule.working(wrong[0], wrong[1])).isInstanceOf(OutOfDomainException.class);
            assertThatThrownBy(() -> rule.scale(new double[] {wrong[0]}, new double[] {wrong[1]}, new double[1]))
                    .isInstanceOf(OutOfDomainException.class);
        }
        for (double[] limit : new double[][] {{1, 1}, {120, 60}}) {
            assertThat(rule.boardFeet(limit[0], limit[1])).isNotNegative();
        }
    }

    @Test
    void aKerfRuleRefusesAssumptionsThatCannotBe() {
        double[] usual = {1, 0.25, 0.0625, 2.5, 0.125, 4};
        double[] tooMuch = {12.1, 1.1, 1.1, 12.1, 1.1, 61};
        double[] tooLittle = {0.24, -0.1, -0.1, -0.1, -0.1, 0.9};
        for (int i = 0; i < usual.length; i++) {
            for (double bad : new double[] {tooMuch[i], tooLittle[i], Double.NaN}) {
                double[] v = usual.clone();
                v[i] = bad;
                assertThatThrownBy(() -> new KerfRule("own", "Own", v[0], v[1], v[2], v[3], v[4], v[5]))
                        .isInstanceOf(OutOfDomainException.class);
            }
        }
    }

    /** One section of 12 ft from 12 in: (pi/4 x 144 - 2.5 x 12) x 1/(1 + 1/4) x 12/12. */
    @Test
    void aKerfRuleByHand() {
        KerfRule rule = new KerfRule("own", "Own", 1, 0.25, 0, 2.5, 0.125, 12);
        assertThat(rule.boardFeet(12, 12)).isCloseTo((Math.PI * 36 - 30) / 1.25, within(1e-9));
        // Two sections: the second begins 1 1/2 in thicker and is 6 ft long.
        assertThat(rule.boardFeet(12, 18) - rule.boardFeet(12, 12))
                .isCloseTo((Math.PI / 4 * 13.5 * 13.5 - 2.5 * 13.5) / 1.25 / 2, within(1e-9));
        assertThat(rule.boardFeet(3, 12)).as("all slab").isZero();
    }

    @Test
    void aCheckByBitsIsForWhatLiesAboveNothing() {
        org.woodyield.measure.Domain good = org.woodyield.measure.Domain.of("a", "in", 1, 2);
        org.woodyield.measure.Domain zero = org.woodyield.measure.Domain.of("b", "in", 0, 2);
        assertThatThrownBy(() -> new DomainCheck(zero, good)).hasMessageContaining("at or below 0");
        assertThatThrownBy(() -> new DomainCheck(good, zero)).hasMessageContaining("at or below 0");
        DomainCheck check = new DomainCheck(good, good);
        assertThat(check.holds(1, 2)).isTrue();
        assertThat(check.holds(2, 1)).isTrue();
        for (double out : new double[] {Math.nextDown(1.0), Math.nextUp(2.0), -1.5, Double.NaN}) {
            assertThat(check.holds(out, 1)).isFalse();
            assertThat(check.holds(1, out)).isFalse();
            assertThat(check.firstRefused(new double[] {1, out, 1}, new double[] {1, 1, 1}, 0, 3))
                    .isEqualTo(1);
            assertThat(check.firstRefused(new double[] {1, 1, 1}, new double[] {1, 1, out}, 0, 3))
                    .isEqualTo(2);
        }
        assertThat(check.firstRefused(new double[] {9, 1, 9}, new double[] {1, 1, 1}, 1, 2))
                .isEqualTo(2);
    }

    /** Doyle of 3 and of 5 in is the same, and of 4 in nothing at any length: what stays as it is does not fall. */
    @Test
    void aFlagOfFallingNeedsAFall() {
        LogRule doyle = LogRules.byId("doyle");
        assertThat(RuleFlag.fallsWithDiameter("", 16, 3, 5).shownBy(doyle)).isFalse();
        assertThat(RuleFlag.fallsWithLength("", 4, 8, 9).shownBy(doyle)).isFalse();
    }

    /** By hand: 199.6, and its squares, 247.17, more by 0.220463/0.22: 0.52. */
    @Test
    void theInternationalWorkingShowsARestOnlyWhereThereIsOneAndWhatItsAssumptionsGive() {
        LogRule eighth = LogRules.byId("international-eighth");
        assertThat(eighth.working(16, 16).lines()).noneMatch(line -> line.name().equals("rest at the butt"));
        assertThat(eighth.working(16, 18).lines()).anyMatch(line -> line.name().equals("rest at the butt"));
        assertThat(eighth.working(16, 16).notes())
                .anyMatch(note -> note.contains("kerf 0.125 in") && note.contains("200.12 bf before rounding"));
        assertThat(LogRules.byId("international-quarter").working(16, 16).notes())
                .anyMatch(note -> note.contains("kerf 0.25 in"));
    }
}
