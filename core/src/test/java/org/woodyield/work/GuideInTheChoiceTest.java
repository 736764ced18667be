package org.woodyield.work;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.function.UnaryOperator;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.woodyield.log.LogSolid;
import org.woodyield.measure.Length;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.sawing.BestPattern;
import org.woodyield.sawing.LengthWorth;
import org.woodyield.sawing.PieceOption;
import org.woodyield.sawing.Saw;
import org.woodyield.sawing.SawPass;
import org.woodyield.sawing.SawingPlan;
import org.woodyield.sawing.SearchSpace;

/** What the passes of a plan cost in the search is the money of the log's minutes and fuel, all handling counted. */
class GuideInTheChoiceTest {

    private static final Length KERF = Length.inches(3, 8);
    private static final Length LONG = Length.feet(8);
    private static final double STEP_CENTIMETRES = 2.54 / 8;
    private static final double UTILISATION = MoneyTest.PRICED.get(WorkInput.UTILISATION);

    private static WorkInputs guide(double minutes) {
        return MoneyTest.PRICED.with(WorkInput.GUIDE, minutes);
    }

    private static SawingPlan plan(WorkInputs inputs, int radiusInches, int taperInches, Saw.Reference rides) {
        return plan(inputs, radiusInches, taperInches, rides, 1);
    }

    /** With sizes that are worth so many times as much. */
    private static SawingPlan plan(
            WorkInputs inputs, int radiusInches, int taperInches, Saw.Reference rides, int times) {
        double large = (radiusInches + taperInches / 2.0) * 0.0254;
        LogSolid solid = LogSolid.of(
                List.of(
                        new LogSolid.Station(0, radiusInches * 0.0254, 0, 0),
                        new LogSolid.Station(LONG.toMetres(), large, 0, 0)),
                1,
                Length.ZERO);
        Saw saw = new Saw("saw", KERF, Length.inches(30), Length.inches(1, 8), rides, Length.ZERO, Length.ZERO);
        List<PieceOption> sizes = List.of(
                PieceOption.fixed(
                        "board", Length.inches(1), Length.inches(4), List.of(new LengthWorth(LONG, 8 * times))),
                PieceOption.fixed(
                        "plank", Length.inches(2), Length.inches(6), List.of(new LengthWorth(LONG, 22 * times))));
        CuttingRate rate = CuttingRate.of(inputs, SawingWorkTest.OAK, KERF);
        return BestPattern.find(
                solid,
                saw,
                sizes,
                SearchSpace.standard().withGrid(Length.inches(1, 4)),
                WorkCost.of(inputs, rate, true));
    }

    /**
     * The search takes the mean width of a pass up to its step; at those widths the model gives the search's cost, loading, turning
     * and the guide counted, to the millionths to which the search counts. At the widths of the passes themselves it gives no
     * less than the search less a step of each, and in a cylinder, where they are alike from end to end, no more.
     */
    @Property(tries = 12)
    void theCostOfThePassesIsThatOfTheTimeModel(
            @ForAll @IntRange(min = 4, max = 8) int radius,
            @ForAll @IntRange(min = 0, max = 2) int taper,
            @ForAll @IntRange(min = 0, max = 15) int minutes) {
        for (Saw.Reference rides : Saw.Reference.values()) {
            WorkInputs inputs = guide(minutes);
            // Dear enough that even a small log is worth the dearest guide.
            SawingPlan plan = plan(inputs, radius, taper, rides, 4);
            LogWork work = LogWork.of("A", SawingWorkTest.OAK, plan);
            double inTheSearch = plan.proof().passCost();
            double millionths = 1e-6 * (plan.passes().size() + work.turns() + 1);
            assertThat(money(inputs, work, GuideInTheChoiceTest::upToAStep)).isCloseTo(inTheSearch, within(millionths));
            assertThat(money(inputs, work, GuideInTheChoiceTest::aStepWider))
                    .isGreaterThanOrEqualTo(inTheSearch - millionths);
            if (taper == 0) {
                assertThat(money(inputs, work, cut -> cut)).isLessThanOrEqualTo(inTheSearch + millionths);
            }
        }
    }

    private static double money(WorkInputs inputs, LogWork work, UnaryOperator<Cut> cuts) {
        LogWork asCounted = new LogWork(
                work.id(),
                work.species(),
                work.cuts().stream().map(cuts).toList(),
                work.turnsBefore(),
                work.guidesBefore());
        WorkEstimate estimate = WorkEstimate.of(inputs, KERF, List.of(asCounted));
        FuelUse use = estimate.use();
        return estimate.time().hours() * inputs.get(WorkInput.WAGE)
                + use.fuelLitres() * inputs.get(WorkInput.FUEL_PRICE)
                + use.barOilLitres() * inputs.get(WorkInput.BAR_OIL_PRICE)
                + use.mixOilLitres() * inputs.get(WorkInput.MIX_OIL_PRICE)
                + use.sharpenings() * inputs.get(WorkInput.EDGE_PRICE) / inputs.get(WorkInput.EDGE_LIFE);
    }

    /** Kerf, setting step, grid and sizes of the job are whole eighths of an inch, and so the search steps by one. */
    private static Cut upToAStep(Cut cut) {
        double mean = (cut.widthAtOneEnd() + cut.widthAtOther()) / 2;
        double up = Math.ceil(mean / STEP_CENTIMETRES - 1e-9) * STEP_CENTIMETRES;
        return new Cut(up, up, cut.length());
    }

    private static Cut aStepWider(Cut cut) {
        return new Cut(cut.widthAtOneEnd() + STEP_CENTIMETRES, cut.widthAtOther() + STEP_CENTIMETRES, cut.length());
    }

    /** The log is clamped once and each cant once, though all cants lie alike. */
    @Test
    void eachCantIsTurnedAndClamped() {
        SawingPlan plan = plan(guide(0), 10, 0, Saw.Reference.PREVIOUS_FACE);
        long cants = plan.passes().stream()
                .filter(pass -> pass.comesOff().startsWith("cant "))
                .count();
        assertThat(cants).isGreaterThan(1);
        assertThat(LogWork.of("A", SawingWorkTest.OAK, plan).turns()).isEqualTo((int) cants + 1);
    }

    /** Where turning is dear, fewer cants are made, and where loading eats all that a log gives, it is left. */
    @Test
    void dearTurningMakesFewerCantsAndDearLoadingLeavesTheLog() {
        SawingPlan free = plan(guide(0).with(WorkInput.TURNING, 0), 10, 0, Saw.Reference.PREVIOUS_FACE);
        SawingPlan dear = plan(guide(0).with(WorkInput.TURNING, 30), 10, 0, Saw.Reference.PREVIOUS_FACE);
        assertThat(LogWork.of("A", SawingWorkTest.OAK, dear).turns())
                .isLessThan(LogWork.of("A", SawingWorkTest.OAK, free).turns());
        double left = free.proof().objective();
        double hours = left / guide(0).get(WorkInput.WAGE) + 0.01;
        WorkInputs far = guide(0).with(WorkInput.TURNING, 0)
                .with(WorkInput.LOADING, guide(0).get(WorkInput.LOADING) + hours * 60 * UTILISATION);
        assertThatThrownBy(() -> plan(far, 10, 0, Saw.Reference.PREVIOUS_FACE))
                .isInstanceOf(OutOfDomainException.class)
                .hasMessageContaining("less than their passes cost in every pattern");
    }

    /** A dear guide is laid less often, and what is counted for it is so many minutes of the wage with their rest. */
    @Test
    void aDearGuideIsLaidLessOften() {
        SawingPlan free = plan(guide(0), 8, 1, Saw.Reference.PREVIOUS_FACE);
        SawingPlan dear = plan(guide(15), 8, 1, Saw.Reference.PREVIOUS_FACE);
        assertThat(guides(dear)).isLessThan(guides(free)).isPositive();
        assertThat(dear.proof().objective())
                .isGreaterThanOrEqualTo(free.proof().objective() - guides(free) * 15 / UTILISATION / 60 * 15 - 1e-6)
                .isLessThan(free.proof().objective());
    }

    private static long guides(SawingPlan plan) {
        return plan.passes().stream().filter(SawPass::byGuide).count();
    }
}
