package org.woodyield.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import org.junit.jupiter.api.Test;
import org.woodyield.log.Log;
import org.woodyield.lumber.CoverArea;
import org.woodyield.lumber.FallDown;
import org.woodyield.lumber.Product;
import org.woodyield.lumber.Product.Size;
import org.woodyield.lumber.Product.Surface;
import org.woodyield.lumber.Product.Wood;
import org.woodyield.measure.Length;
import org.woodyield.measure.MonteCarlo;
import org.woodyield.plan.JobInput.Price;
import org.woodyield.sawing.PieceOption;
import org.woodyield.sawing.Rectangle;
import org.woodyield.sawing.Saw;
import org.woodyield.sawing.SawingPlan;
import org.woodyield.sawing.SawnPiece;
import org.woodyield.sawing.SearchSpace;
import org.woodyield.sawing.Verifier;
import org.woodyield.wood.Species;
import org.woodyield.wood.SpeciesCatalogue;
import org.woodyield.work.CashFlow;
import org.woodyield.work.Outlook;
import org.woodyield.work.WorkInput;
import org.woodyield.work.WorkInputs;

class PlannerTest {

    private static Log log(String id, String species, String length, String small, String large) {
        return new Log(
                id,
                SpeciesCatalogue.published().find(species),
                Length.parse(length),
                Length.parse(small),
                Length.parse(small),
                Length.parse(large),
                Length.parse("1/2 in"),
                Length.ZERO,
                0,
                false);
    }

    private static WorkInputs work() {
        return WorkInputs.chainDefaults()
                .with(WorkInput.RATED_POWER, 4)
                .with(WorkInput.TANK, 0.8)
                .with(WorkInput.WARM_UP, 1)
                .with(WorkInput.COOL_DOWN, 1)
                .with(WorkInput.FUEL_PRICE, 1.5);
    }

    static JobInput job(List<Price> prices) {
        Wood softwood = Wood.of(Wood.Kind.SOFTWOOD);
        return new JobInput(
                "Two small logs",
                "USD",
                List.of(
                        log("A", "eastern white pine", "10 ft 3 in", "12 in", "13 in"),
                        log("B", "eastern white pine", "8 ft 4 in", "9 in", "10 in"),
                        log("C", "white oak", "8 ft 4 in", "9 in", "10 in")),
                List.of(new Product(
                        "stud",
                        new Size(true, Length.inches(2), Length.inches(4)),
                        Length.feet(8),
                        5,
                        softwood,
                        Surface.DRESSED_DRY,
                        15)),
                List.of(new CoverArea(
                        "wall",
                        4,
                        true,
                        Length.inches(1),
                        Length.inches(4),
                        Length.inches(8),
                        Length.inches(1),
                        List.of(Length.feet(6), Length.feet(8)),
                        10,
                        softwood,
                        Surface.DRESSED_DRY,
                        15)),
                new Saw(
                        "saw",
                        Length.inches(5, 16),
                        Length.inches(24),
                        Length.inches(1, 16),
                        Saw.Reference.PREVIOUS_FACE,
                        Length.ZERO,
                        Length.parse("0.03 in")),
                SearchSpace.standard().withGrid(Length.inches(1, 8)),
                work(),
                Length.inches(1, 32),
                5,
                DryingYard.usual(),
                prices,
                List.of());
    }

    private static final List<Price> PRICES = List.of(new Price(Optional.empty(), Wood.of(Wood.Kind.SOFTWOOD), 1.2));

    @Test
    void whatIsSuppliedIsWhatTheLogsGive() {
        JobPlan plan = Planner.plan(job(PRICES));
        double studs = plan.logs().stream()
                .flatMap(log -> log.sawing().stream())
                .flatMap(sawing -> sawing.pieces().stream())
                .filter(piece -> piece.optionId().equals("stud"))
                .count();
        assertThat(plan.supply().get(0).sawn()).isEqualTo(studs).isPositive();
        assertThat(plan.supply().get(1).toSaw()).isCloseTo(4.4, within(1e-12));
    }

    @Test
    void boardsForAnAreaAreNeverPricedBelowWhatTheyCover() {
        JobInput input = job(PRICES);
        Item.Boards boards = Item.Boards.of(input.areas().get(0), FallDown.NONE);
        Species pine = SpeciesCatalogue.published().find("eastern white pine");
        GreenSize green = boards.greenSize(pine, input, input.saw(), 1.645);
        PieceOption option = boards.option(green, input.saw().settingStep(), 1);
        Length width = option.leastWidth();
        while (width.compareTo(option.greatestWidth()) <= 0) {
            Length length = Length.feet(8);
            SawnPiece piece = new SawnPiece(
                    1,
                    "wall",
                    green.thicknessToSaw(),
                    width,
                    length,
                    new Rectangle(Length.ZERO, width, Length.ZERO, green.thicknessToSaw()),
                    Length.ZERO,
                    length,
                    false,
                    0);
            double priced = option.lengths().get(1).worth()
                    * width.toMetres()
                    / option.leastWidth().toMetres();
            assertThat(priced).isGreaterThanOrEqualTo(boards.amount(piece, green) * (1 - 1e-12));
            width = width.plus(option.widthStep());
        }
        // The last width is the first that dries to the greatest one wanted.
        assertThat(boards.amount(
                        new SawnPiece(
                                1,
                                "wall",
                                green.thicknessToSaw(),
                                option.greatestWidth(),
                                Length.feet(8),
                                new Rectangle(Length.ZERO, option.greatestWidth(), Length.ZERO, green.thicknessToSaw()),
                                Length.ZERO,
                                Length.feet(8),
                                false,
                                0),
                        green))
                .isCloseTo(7 * 0.0254 * 8 * 0.3048, within(1e-9));
    }

    @Test
    void aBeamTooThickForTheDryingTableIsPlannedWithoutADryingTime() {
        JobInput input = job(PRICES);
        JobInput beam = new JobInput(
                input.title(),
                input.currency(),
                input.logs(),
                List.of(new Product(
                        "beam",
                        new Size(false, Length.millimetres(120), Length.millimetres(120)),
                        Length.feet(8),
                        1,
                        Wood.of(Wood.Kind.SOFTWOOD),
                        Surface.ROUGH,
                        19)),
                List.of(),
                input.saw(),
                input.space(),
                input.work(),
                input.planing(),
                5,
                DryingYard.usual(),
                PRICES,
                List.of());
        JobPlan plan = Planner.plan(beam);
        assertThat(plan.supply().get(0).sawn()).isPositive();
        assertThat(plan.drying()).allMatch(drying -> drying.days().isEmpty());
    }

    @Test
    void lossesOfDryingMakeThePiecesLongerAskForSparesAndLowerWhatIsUsable() {
        JobInput input = job(PRICES);
        FallDown losses = new FallDown(Length.inches(1), 10, 20);
        JobPlan plan = Planner.plan(new JobInput(
                input.title(),
                input.currency(),
                input.logs(),
                input.pieces(),
                input.areas(),
                input.saw(),
                input.space(),
                input.work(),
                input.planing(),
                input.undersizePercent(),
                new DryingYard(losses),
                input.prices(),
                input.assumptions()));
        assertThat(plan.supply().get(0).toSaw()).isEqualTo(7); // 5 / (0.9 x 0.8) = 6.94
        assertThat(plan.supply().get(1).toSaw()).isCloseTo(4.4 / 0.72, within(1e-12));
        assertThat(plan.logs().stream()
                        .flatMap(log -> log.sawing().stream())
                        .flatMap(sawing -> sawing.pieces().stream())
                        .filter(piece -> piece.optionId().equals("stud"))
                        .map(SawnPiece::length))
                .isNotEmpty()
                .containsOnly(Length.parse("8 ft 2 in"));
        double usable = 0;
        double tally = 0;
        for (JobPlan.Lot lot : plan.fallDown()) {
            usable += lot.stages().usable().value();
            tally += lot.tally();
            assertThat(lot.stages().dried().value()).isCloseTo(0.9 * lot.tally(), within(1e-9));
            assertThat(lot.working().value()).isEqualTo(lot.stages().usable().value());
        }
        assertThat(plan.usable().value()).isCloseTo(usable, within(1e-9)).isLessThanOrEqualTo(0.72 * tally + 1e-9);
        assertThat(plan.tally().value()).isCloseTo(tally, within(1e-9));
    }

    /** The years of the saw hang on the same draws as the saving: they have intervals about their values. */
    @Test
    void theYearsOfTheSawHaveIntervals() {
        JobInput input = job(PRICES);
        WorkInputs years = input.work()
                .with(WorkInput.PURCHASE, 900)
                .with(WorkInput.OTHER_OUTLAY, 100)
                .with(WorkInput.RESALE, 200)
                .with(WorkInput.LIFE, 5)
                .with(WorkInput.HOURS_PER_YEAR, 100)
                .with(WorkInput.INTEREST, 0.05)
                .with(WorkInput.REPAIRS, 0.3)
                .with(WorkInput.BAR_OIL_PRICE, 4)
                .with(WorkInput.MIX_OIL_PRICE, 10)
                .with(WorkInput.EDGE_PRICE, 30)
                .with(WorkInput.EDGE_LIFE, 10)
                .with(WorkInput.LOG_PRICE, 0);
        JobPlan plan = Planner.plan(input.withSaw(input.saw(), years));
        CashFlow free = plan.cashFlow().workFree().orElseThrow();
        Outlook worth = plan.prospects().worthFree().orElseThrow();
        assertThat(worth.value()).isEqualTo(free.presentValue().amount());
        MonteCarlo.Interval ends = worth.drawn().orElseThrow().interval(0.95);
        assertThat(ends.least()).isLessThan(ends.greatest());
        Outlook paid = plan.prospects().paidFree().orElseThrow();
        double time = 1 / paid.value() - 1;
        assertThat(time).as("paid within the life, so that the years can tell").isBetween(0.0, 5.0);
        for (CashFlow.Year year : free.years()) {
            double standingWithoutResale =
                    year.standing().amount() - (year.number() == 5 ? years.get(WorkInput.RESALE) : 0);
            assertThat(standingWithoutResale >= 0).as("year %d", year.number()).isEqualTo(year.number() >= time);
        }
        assertThat(plan.prospects().worthValued().isPresent())
                .isEqualTo(plan.cashFlow().workValued().isPresent());
        assertThat(Planner.plan(job(List.of())).prospects().worthFree()).isEmpty();
    }

    /** What is sawn beyond the need, as the pieces tell it. */
    @Test
    void lumberBeyondTheNeedIsTheSurplusOfThePieces() {
        JobPlan plan = Planner.plan(job(PRICES));
        double beyond = 0;
        for (Supply supply : plan.supply()) {
            double usable = plan.fallDown().stream()
                    .filter(lot -> lot.wantedId().equals(supply.wantedId()))
                    .mapToDouble(lot -> lot.stages().usable().value())
                    .sum();
            beyond += supply.sawn() > 0 ? usable * supply.surplus() / supply.sawn() : 0;
        }
        assertThat(beyond).isPositive();
        JobPlan.Surplus surplus = plan.surplus().orElseThrow();
        assertThat(surplus.usable().value()).isCloseTo(beyond, within(1e-9));
        assertThat(surplus.inFull().orElseThrow().amount())
                .isGreaterThan(plan.breakEven()
                        .orElseThrow()
                        .boughtPerBoardFoot()
                        .orElseThrow()
                        .amount());
        assertThat(Planner.plan(job(List.of())).surplus().flatMap(JobPlan.Surplus::inFull))
                .isEmpty();
    }

    @Test
    void everySawingPlanIsSound() {
        List<SawingPlan> plans = Planner.plan(job(PRICES)).logs().stream()
                .flatMap(log -> log.sawing().stream())
                .toList();
        assertThat(plans)
                .isNotEmpty()
                .allSatisfy(plan -> assertThat(Verifier.verify(plan)).isEmpty());
    }

    @Test
    void theWoodIsAccountedForToABillionth() {
        JobPlan plan = Planner.plan(job(PRICES));
        double solid = plan.solid().cubicMetres();
        assertThat(plan.balance().sum().cubicMetres()).isCloseTo(solid, within(1e-9 * solid));
    }

    @Test
    void noChoiceIsWorthMoreThanTheBound() {
        JobPlan.Choice choice = Planner.plan(job(PRICES)).choice();
        assertThat(choice.worth()).isPositive().isLessThanOrEqualTo(choice.bound() * (1 + 1e-9));
        assertThat(choice.unit()).isEqualTo("USD");
    }

    @Test
    void thePlanIsTheSameForAnyExecutor() {
        ExecutorService executor = Executors.newFixedThreadPool(3);
        try {
            JobPlan one = Planner.plan(job(PRICES));
            JobPlan three = Planner.plan(job(PRICES), (done, all) -> {}, executor);
            assertThat(three.choice()).isEqualTo(one.choice());
            assertThat(three.supply()).isEqualTo(one.supply());
            assertThat(three.balance()).isEqualTo(one.balance());
        } finally {
            executor.shutdownNow();
        }
    }

    @Test
    void withoutPricesWorthIsCountedInBoardFeetAndNoPriceIsMadeUp() {
        JobPlan plan = Planner.plan(job(List.of()));
        assertThat(plan.choice().unit()).isEqualTo("bf");
        assertThat(plan.breakEven().orElseThrow().boughtPerBoardFoot()).isEmpty();
    }

    @Test
    void aLogOfWoodThatNobodyWantsIsLeftWholeAndSaysWhy() {
        LogPlan oak = Planner.plan(job(PRICES)).logs().get(2);
        assertThat(oak.sawing()).isEmpty();
        assertThat(oak.leftWhole()).contains("nothing is wanted in");
        assertThat(oak.scales()).allMatch(scale -> scale.overrunPercent().isEmpty());
    }

    @Test
    void theGreenSizeDriesAndPlanesToTheFinishedOne() {
        GreenSize stud = Planner.plan(job(PRICES)).greenSizes().get(0);
        assertThat(stud.finishedThickness()).isEqualTo(Length.inches(3, 2));
        assertThat(stud.thicknessToSaw()).isGreaterThan(Length.inches(3, 2));
        assertThat(stud.sparePlanedThicknessInches()).isPositive();
        assertThat(stud.scantShare()).isLessThanOrEqualTo(0.05);
    }
}
