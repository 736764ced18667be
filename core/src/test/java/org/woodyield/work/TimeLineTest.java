package org.woodyield.work;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.woodyield.measure.Length;
import org.woodyield.work.TimeLine.Activity;

class TimeLineTest {

    private static final Length KERF = Length.millimetres(8);

    private static List<LogWork> logs(int count, int passes, double width) {
        List<LogWork> logs = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            List<Cut> cuts = new ArrayList<>();
            for (int pass = 0; pass < passes; pass++) {
                cuts.add(new Cut(width, width + pass, 260));
            }
            logs.add(new LogWork("log " + i, SawingWorkTest.OAK, cuts, Math.min(2, passes)));
        }
        return logs;
    }

    @Property(tries = 200)
    void theSumsAreThoseOfTheEstimateButForPartsOfAStop(
            @ForAll @IntRange(min = 1, max = 12) int count,
            @ForAll @IntRange(min = 1, max = 9) int passes,
            @ForAll @DoubleRange(min = 5, max = 70) double width,
            @ForAll @DoubleRange(min = 0.4, max = 1) double utilisation,
            @ForAll @DoubleRange(min = 1, max = 10) double hours) {
        WorkInputs inputs =
                CuttingRateTest.CHAIN.with(WorkInput.UTILISATION, utilisation).with(WorkInput.HOURS_PER_DAY, hours);
        List<LogWork> logs = logs(count, passes, width);
        TimeBreakdown sums = WorkEstimate.of(inputs, KERF, logs).time();
        TimeLine line = TimeLine.of(inputs, KERF, logs);
        Offset<Double> rounding = within(1e-6);
        assertThat(line.minutes(Activity.CUTTING)).isCloseTo(sums.cutting(), rounding);
        assertThat(line.minutes(Activity.WARM_UP)).isCloseTo(sums.warmUp(), rounding);
        assertThat(line.minutes(Activity.COOL_DOWN)).isCloseTo(sums.coolDown(), rounding);
        assertThat(line.minutes(Activity.SETTING)).isCloseTo(sums.setting(), rounding);
        assertThat(line.minutes(Activity.CARRYING)).isCloseTo(sums.carrying(), rounding);
        assertThat(line.minutes(Activity.TURNING)).isCloseTo(sums.turning(), rounding);
        assertThat(line.minutes(Activity.LOADING)).isCloseTo(sums.loading(), rounding);
        double refuelling = sums.refuelling() - line.minutes(Activity.REFUELLING);
        assertThat(refuelling).isBetween(-1e-6, inputs.get(WorkInput.REFUELLING) + 1e-6);
        double sharpening = sums.sharpening() - line.minutes(Activity.SHARPENING);
        assertThat(sharpening).isBetween(-1e-6, inputs.get(WorkInput.SHARPENING) + 1e-6);
        double total = line.days().stream().mapToDouble(TimeLine.Day::minutes).sum();
        assertThat(sums.total() - total).isCloseTo((refuelling + sharpening) / utilisation, rounding);
    }

    @Property(tries = 200)
    void stretchesFollowEachOtherAndADayIsNotLongerThanGivenUnlessItHoldsOneRound(
            @ForAll @IntRange(min = 1, max = 8) int count, @ForAll @DoubleRange(min = 0.5, max = 10) double hours) {
        WorkInputs inputs = CuttingRateTest.CHAIN.with(WorkInput.HOURS_PER_DAY, hours);
        TimeLine line = TimeLine.of(inputs, KERF, logs(count, 6, 45));
        int passes = 0;
        List<String> finished = new ArrayList<>();
        for (TimeLine.Day day : line.days()) {
            double clock = 0;
            for (TimeLine.Stretch stretch : day.stretches()) {
                assertThat(stretch.start()).isEqualTo(clock);
                assertThat(stretch.minutes()).isPositive();
                clock += stretch.minutes();
            }
            if (day.passes() > 1) {
                assertThat(day.minutes()).isLessThanOrEqualTo(hours * 60 + 1e-6);
            }
            assertThat(day.cuttingShare()).isBetween(0.0, 1.0);
            passes += day.passes();
            finished.addAll(day.finished());
        }
        assertThat(passes).isEqualTo(6 * count);
        assertThat(finished).hasSize(count).doesNotHaveDuplicates();
    }

    @Test
    void turnsComeBeforeTheirPasses() {
        LogWork log = new LogWork(
                "1", SawingWorkTest.OAK, List.of(new Cut(30, 30, 250), new Cut(30, 30, 250)), List.of(0, 1));
        WorkInputs restless = CuttingRateTest.CHAIN.with(WorkInput.UTILISATION, 1);
        List<Activity> order = TimeLine.of(restless, KERF, List.of(log)).days().get(0).stretches().stream()
                .map(TimeLine.Stretch::activity)
                .toList();
        assertThat(order)
                .containsExactly(
                        Activity.LOADING,
                        Activity.TURNING,
                        Activity.SETTING,
                        Activity.WARM_UP,
                        Activity.CUTTING,
                        Activity.COOL_DOWN,
                        Activity.CARRYING,
                        Activity.TURNING,
                        Activity.SETTING,
                        Activity.WARM_UP,
                        Activity.CUTTING,
                        Activity.COOL_DOWN,
                        Activity.CARRYING);
    }

    @Test
    void noLogsTakeNoDays() {
        assertThat(TimeLine.of(CuttingRateTest.CHAIN, KERF, List.of()).days()).isEmpty();
    }

    @Test
    void turnsBeforePassesThatAreNotThereAreRefused() {
        List<Cut> one = List.of(new Cut(30, 30, 250));
        assertThatThrownBy(() -> new LogWork("1", SawingWorkTest.OAK, one, List.of(1)))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new LogWork("1", SawingWorkTest.OAK, one, -1))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void theGuideIsLaidOnceForEachPassThatItLeads() {
        List<Cut> cuts = List.of(new Cut(30, 36, 250), new Cut(40, 45, 250), new Cut(42, 47, 250));
        LogWork free = new LogWork("1", SawingWorkTest.OAK, cuts, List.of(0, 1));
        LogWork led = new LogWork("1", SawingWorkTest.OAK, cuts, List.of(0, 1), List.of(0, 1));
        WorkInputs inputs = CuttingRateTest.CHAIN.with(WorkInput.GUIDE, 7).with(WorkInput.UTILISATION, 0.7);
        TimeBreakdown without = WorkEstimate.of(inputs, KERF, List.of(free)).time();
        TimeBreakdown with = WorkEstimate.of(inputs, KERF, List.of(led)).time();
        assertThat(without.guide()).isZero();
        assertThat(with.guide()).isEqualTo(14);
        assertThat(with.total() - without.total()).isCloseTo(14 / 0.7, within(1e-9));
        assertThat(TimeLine.of(inputs, KERF, List.of(led)).minutes(Activity.GUIDE))
                .isEqualTo(14);
        assertThatThrownBy(() -> new LogWork("1", SawingWorkTest.OAK, cuts, List.of(0), List.of(3)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("there are 3");
    }
}
