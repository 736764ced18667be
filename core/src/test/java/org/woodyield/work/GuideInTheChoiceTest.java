package org.woodyield.work;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.woodyield.log.LogSolid;
import org.woodyield.measure.Length;
import org.woodyield.sawing.BestPattern;
import org.woodyield.sawing.LengthWorth;
import org.woodyield.sawing.PieceOption;
import org.woodyield.sawing.Saw;
import org.woodyield.sawing.SawPass;
import org.woodyield.sawing.SawingPlan;
import org.woodyield.sawing.SearchSpace;

/** What the passes of a plan cost in the search is the money of their minutes and fuel, laying the guide counted. */
class GuideInTheChoiceTest {

    private static final Length KERF = Length.inches(3, 8);
    private static final Length LONG = Length.feet(8);
    private static final double UTILISATION = MoneyTest.PRICED.get(WorkInput.UTILISATION);

    private static WorkInputs guide(double minutes) {
        return MoneyTest.PRICED.with(WorkInput.GUIDE, minutes);
    }

    private static SawingPlan plan(WorkInputs inputs, int radiusInches, int taperInches, Saw.Reference rides) {
        double large = (radiusInches + taperInches / 2.0) * 0.0254;
        LogSolid solid = LogSolid.of(
                List.of(
                        new LogSolid.Station(0, radiusInches * 0.0254, 0, 0),
                        new LogSolid.Station(LONG.toMetres(), large, 0, 0)),
                1,
                Length.ZERO);
        Saw saw = new Saw("saw", KERF, Length.inches(30), Length.inches(1, 8), rides, Length.ZERO, Length.ZERO);
        List<PieceOption> sizes = List.of(
                PieceOption.fixed("board", Length.inches(1), Length.inches(4), List.of(new LengthWorth(LONG, 8))),
                PieceOption.fixed("plank", Length.inches(2), Length.inches(6), List.of(new LengthWorth(LONG, 22))));
        CuttingRate rate = CuttingRate.of(inputs, SawingWorkTest.OAK, KERF);
        return BestPattern.find(
                solid,
                saw,
                sizes,
                SearchSpace.standard().withGrid(Length.inches(1, 4)),
                WorkCost.of(inputs, rate, true));
    }

    /** The widths are taken up to a step of the search, so that its cost is a little above the model's. */
    @Property(tries = 12)
    void theCostOfThePassesIsThatOfTheTimeModel(
            @ForAll @IntRange(min = 4, max = 8) int radius,
            @ForAll @IntRange(min = 0, max = 2) int taper,
            @ForAll @IntRange(min = 0, max = 15) int minutes) {
        for (Saw.Reference rides : Saw.Reference.values()) {
            WorkInputs inputs = guide(minutes);
            SawingPlan plan = plan(inputs, radius, taper, rides);
            WorkEstimate work = WorkEstimate.of(inputs, KERF, List.of(LogWork.of("A", SawingWorkTest.OAK, plan)));
            TimeBreakdown time = work.time();
            double beside = (time.turning() + time.loading()) / UTILISATION;
            FuelUse use = work.use();
            double money = (time.total() - beside) / 60 * inputs.get(WorkInput.WAGE)
                    + use.fuelLitres() * inputs.get(WorkInput.FUEL_PRICE)
                    + use.barOilLitres() * inputs.get(WorkInput.BAR_OIL_PRICE)
                    + use.mixOilLitres() * inputs.get(WorkInput.MIX_OIL_PRICE)
                    + use.sharpenings() * inputs.get(WorkInput.EDGE_PRICE) / inputs.get(WorkInput.EDGE_LIFE);
            assertThat(plan.proof().passCost()).isCloseTo(money, withinPercentage(1));
        }
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
