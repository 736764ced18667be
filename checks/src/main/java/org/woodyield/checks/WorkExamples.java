package org.woodyield.checks;

import static org.woodyield.checks.Examples.inches;
import static org.woodyield.checks.Examples.pine;

import java.util.List;
import java.util.Set;
import org.woodyield.measure.BoardFeet;
import org.woodyield.measure.Money;
import org.woodyield.work.BreakEven;
import org.woodyield.work.CarbonMonoxide;
import org.woodyield.work.CashFlow;
import org.woodyield.work.Cut;
import org.woodyield.work.CuttingRate;
import org.woodyield.work.EnergyFit;
import org.woodyield.work.FellingFuel;
import org.woodyield.work.Hauling;
import org.woodyield.work.JobCost;
import org.woodyield.work.KerfWorth;
import org.woodyield.work.LogMoving;
import org.woodyield.work.LogWork;
import org.woodyield.work.MachineRate;
import org.woodyield.work.NoiseLimit;
import org.woodyield.work.SawingWork;
import org.woodyield.work.SupplyWay;
import org.woodyield.work.TimedCut;
import org.woodyield.work.VibrationDay;
import org.woodyield.work.WorkEstimate;
import org.woodyield.work.WorkInput;
import org.woodyield.work.WorkInputs;

/** Examples of {@code org.woodyield.work}; machines and prices are made up. */
final class WorkExamples {

    private WorkExamples() {}

    static void list(Examples.Builder examples) {
        cutting(examples);
        money(examples);
        exposure(examples);
        moving(examples);
    }

    private static void moving(Examples.Builder examples) {
        examples.example(
                        "work.end-lift",
                        x -> LogMoving.endLiftWorking(LogExamples.log(x[1], x[2], x[3]), x[0], LogMoving.End.LARGE),
                        250,
                        12,
                        12,
                        15)
                .example("work.parbuckle", x -> LogMoving.parbuckleWorking(x[0], x[1], x[2]), 250, 20, 0.05)
                .example("work.slope-pull", x -> LogMoving.slopePullWorking(x[0], x[1], x[2]), 250, 10, 0.6)
                .example(
                        "work.half-log",
                        x -> LogMoving.halfLogWorking(LogExamples.log(x[1], x[2], x[3]), x[0], inches(x[4])),
                        250,
                        12,
                        12,
                        15,
                        0.375)
                .example(
                        "work.haul-log-trips",
                        x -> Hauling.tripsOfLogsWorking(List.of(x[1], x[2], x[3], x[4]), x[0]),
                        500,
                        300,
                        150,
                        210,
                        180)
                .example("work.haul-trips", x -> Hauling.tripsWorking(x[0], x[1]), 1300, 500)
                .example("work.haul-time", x -> Hauling.minutesWorking(x[0], x[1], x[2], x[3]), 3, 25, 5, 20)
                .example("work.haul-cost", x -> Hauling.costWorking(x[0], x[1], x[2], x[3]), 175, 15, 5, 2);
    }

    private static void cutting(Examples.Builder examples) {
        examples.example("work.feed", x -> rate(x[0]).feedWorking(inches(x[1])), 0.375, 12)
                .example("work.rated-power-needed", x -> rate(0.375).ratedKilowattsWorking(inches(x[0]), x[1]), 20, 0.5)
                .example(
                        "work.energy-fit",
                        x -> EnergyFit.working(
                                saw(),
                                inches(0.375),
                                false,
                                List.of(
                                        TimedCut.of("first", pine(), inches(x[0]), inches(x[1]), x[2]),
                                        TimedCut.of("second", pine(), inches(16), inches(144), 310),
                                        TimedCut.of("third", pine(), inches(20), inches(144), 370))),
                        12,
                        144,
                        220)
                .example(
                        "work.cutting-time",
                        x -> rate(0.375).cuttingSecondsWorking(new Cut(x[0], x[1], x[2])),
                        0.3,
                        0.35,
                        3)
                .example("work.cutting-fuel", x -> SawingWork.of(saw()).cuttingLitresWorking(rate(0.375), x[0]), 10)
                .example("work.power-at-cut", x -> rate(x[0]).powerAtCutWorking(), 0.375)
                .example("work.bar-oil", x -> SawingWork.of(saw()).barOilWorking(x[0]), 8)
                .example("work.mix-oil", x -> SawingWork.of(saw()).mixOilWorking(x[0]), 8)
                .example("work.edges-worn", x -> SawingWork.of(saw()).edgesWornWorking(x[0]), 48)
                .example("work.felling-fuel", x -> FellingFuel.PLOT_1.fuelMillilitresWorking(x[0]), 25)
                .example("work.felling-oil", x -> FellingFuel.PLOT_1.oilMillilitresWorking(x[0]), 25)
                .example("work.wood-saved", x -> KerfWorth.savedPercentWorking(x[0], x[1]), 13.75, 12.5)
                .example("work.kerf-worth", x -> KerfWorth.worthPerThousandWorking(x[0], x[1]), 300, 9);
    }

    private static void money(Examples.Builder examples) {
        examples.example("work.break-even", x -> BreakEven.volumeWorking(x[0], x[1], x[2]), 2000, 0.4, 1.2)
                .example(
                        "work.piece-cost",
                        x -> JobCost.of(
                                        saw().with(WorkInput.FUEL_PRICE, 1.2)
                                                .with(WorkInput.BAR_OIL_PRICE, 4)
                                                .with(WorkInput.MIX_OIL_PRICE, 10)
                                                .with(WorkInput.EDGE_PRICE, 30)
                                                .with(WorkInput.PURCHASE, 1200)
                                                .with(WorkInput.LOG_PRICE, 0.1),
                                        "USD",
                                        WorkEstimate.of(
                                                saw(),
                                                inches(0.375),
                                                List.of(new LogWork("1", pine(), List.of(new Cut(0.3, 0.35, 3)), 1))),
                                        BoardFeet.usable(x[0]))
                                .pieceCostWorking(x[1], false),
                        60,
                        5)
                .example("work.present-worth", x -> CashFlow.presentWorthWorking(x[0], x[1]), 0.05, 10)
                .example("work.payback", x -> CashFlow.paybackWorking(x[0], x[1]), 2000, 500)
                .example(
                        "work.way-cost",
                        x -> new SupplyWay(
                                        SupplyWay.Kind.HIRED_SAWYER,
                                        SupplyWay.Use.AS_IT_IS,
                                        "",
                                        "a travelling sawyer",
                                        usd(x[0]),
                                        usd(x[1]),
                                        usd(0),
                                        usd(0),
                                        Set.of(),
                                        Set.of(),
                                        List.of())
                                .costWorking(BoardFeet.usable(x[2])),
                        100,
                        0.5,
                        800)
                .example(
                        "work.average-annual-investment",
                        x -> MachineRate.averageAnnualInvestmentWorking(x[0], x[1], x[2]),
                        10000,
                        2000,
                        5)
                .example(
                        "work.depreciation",
                        x -> MachineRate.depreciationPerHourWorking(x[0], x[1], x[2], x[3]),
                        10000,
                        2000,
                        5,
                        400)
                .example(
                        "work.interest",
                        x -> MachineRate.interestPerHourWorking(x[0], x[1], x[2], x[3], x[4]),
                        10000,
                        2000,
                        5,
                        0.1,
                        400)
                .example("work.unit-cost", x -> MachineRate.unitCostWorking(x[0], x[1]), 30, 60)
                .example(
                        "work.fuel-by-the-hour",
                        x -> MachineRate.fuelLitresPerHourWorking(x[0], x[1], x[2], x[3]),
                        0.21,
                        20,
                        0.5,
                        0.72);
    }

    private static void exposure(Examples.Builder examples) {
        examples.example("work.noise-time", x -> NoiseLimit.NIOSH.allowedHoursWorking(x[0]), 100)
                .example("work.noise-dose", x -> NoiseLimit.NIOSH.doseWorking(x[0], x[1]), 100, 2)
                .example(
                        "work.vibration",
                        x -> new VibrationDay(List.of(
                                        new VibrationDay.Task("chain saw", x[0], x[1]),
                                        new VibrationDay.Task("sander", 4, 1)))
                                .dailyExposureWorking(),
                        5,
                        2)
                .example("work.vibration-time", x -> VibrationDay.hoursUntilWorking(x[0], x[1]), 5, 2.5)
                .example(
                        "work.carbon-monoxide",
                        x -> CarbonMonoxide.eightHourMeanWorking(
                                List.of(new CarbonMonoxide.Stretch(x[0], x[1]), new CarbonMonoxide.Stretch(10, 2))),
                        50,
                        4);
    }

    private static WorkInputs saw() {
        return WorkInputs.chainDefaults().with(WorkInput.RATED_POWER, 4.2);
    }

    private static CuttingRate rate(double kerfInches) {
        return CuttingRate.of(saw(), pine(), inches(kerfInches));
    }

    private static Money usd(double amount) {
        return new Money(amount, "USD");
    }
}
