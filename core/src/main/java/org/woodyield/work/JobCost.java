package org.woodyield.work;

import java.util.Collections;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.woodyield.measure.BoardFeet;
import org.woodyield.measure.Domain;
import org.woodyield.measure.Money;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.source.Sources;
import org.woodyield.working.Calculation;
import org.woodyield.working.Working;

/**
 * What the sawing of a job costs, kind by kind. A kind for which a price is missing is not a zero: it stands in {@link
 * #leftOut} with what is missing, and the sums say that they are too low.
 */
public final class JobCost {

    private static final Domain PIECE = Domain.positive("board feet of the piece", "bf");

    private final String currency;
    private final BoardFeet usable;
    private final Map<CostKind, Double> amounts;
    private final Map<CostKind, Set<WorkInput>> leftOut;

    private JobCost(
            String currency,
            BoardFeet usable,
            EnumMap<CostKind, Double> amounts,
            EnumMap<CostKind, Set<WorkInput>> leftOut) {
        this.currency = currency;
        this.usable = usable;
        this.amounts = Collections.unmodifiableMap(amounts);
        this.leftOut = Collections.unmodifiableMap(leftOut);
    }

    /**
     * The cost of some work. Where no resale is given the saw is written off in full; what else is spent before the first board
     * always is, over the life of the saw.
     *
     * @param inputs prices
     * @param currency the currency of the prices
     * @param work time, fuel and wear
     * @param usable the lumber that is usable in the end
     * @return the cost by kind
     * @throws OutOfDomainException if the lumber is not named as usable, or there is none
     */
    public static JobCost of(WorkInputs inputs, String currency, WorkEstimate work, BoardFeet usable) {
        if (usable.kind() != BoardFeet.Kind.USABLE || !(usable.value() > 0)) {
            throw new OutOfDomainException(
                    "usable lumber",
                    usable.value() + " (" + usable.kind().label() + ")",
                    "bf",
                    "usable board feet above 0",
                    "cost by the board foot is for what is left after drying and planing");
        }
        Collector collect = new Collector(inputs);
        FuelUse use = work.use();
        double hours = work.time().hours();
        collect.product(CostKind.FUEL, use.fuelLitres(), WorkInput.FUEL_PRICE);
        collect.product(CostKind.BAR_OIL, use.barOilLitres(), WorkInput.BAR_OIL_PRICE);
        collect.product(CostKind.MIX_OIL, use.mixOilLitres(), WorkInput.MIX_OIL_PRICE);
        if (collect.has(CostKind.EDGES, WorkInput.EDGE_PRICE, WorkInput.EDGE_LIFE)) {
            collect.put(
                    CostKind.EDGES,
                    SawingWork.of(inputs).edgesWorn(work.areaSquareMetres()) * inputs.get(WorkInput.EDGE_PRICE));
        }
        double resale = inputs.find(WorkInput.RESALE).map(InputValue::value).orElse(0.0);
        if (collect.has(CostKind.DEPRECIATION, WorkInput.PURCHASE, WorkInput.LIFE, WorkInput.HOURS_PER_YEAR)) {
            double depreciation = MachineRate.depreciationPerHour(
                    inputs.get(WorkInput.PURCHASE),
                    resale,
                    inputs.get(WorkInput.LIFE),
                    inputs.get(WorkInput.HOURS_PER_YEAR));
            collect.put(CostKind.DEPRECIATION, depreciation * hours);
            collect.product(CostKind.REPAIRS, depreciation * hours, WorkInput.REPAIRS);
        } else {
            collect.has(
                    CostKind.REPAIRS, WorkInput.PURCHASE, WorkInput.LIFE, WorkInput.HOURS_PER_YEAR, WorkInput.REPAIRS);
        }
        double other =
                inputs.find(WorkInput.OTHER_OUTLAY).map(InputValue::value).orElse(0.0);
        if (inputs.find(WorkInput.OTHER_OUTLAY).isPresent() && other == 0) {
            collect.put(CostKind.OTHER_OUTLAY, 0);
        } else if (collect.has(
                CostKind.OTHER_OUTLAY, WorkInput.OTHER_OUTLAY, WorkInput.LIFE, WorkInput.HOURS_PER_YEAR)) {
            collect.put(
                    CostKind.OTHER_OUTLAY,
                    hours
                            * MachineRate.depreciationPerHour(
                                    other, 0, inputs.get(WorkInput.LIFE), inputs.get(WorkInput.HOURS_PER_YEAR)));
        }
        if (collect.has(
                CostKind.INTEREST,
                WorkInput.PURCHASE,
                WorkInput.OTHER_OUTLAY,
                WorkInput.LIFE,
                WorkInput.HOURS_PER_YEAR,
                WorkInput.INTEREST)) {
            collect.put(
                    CostKind.INTEREST,
                    hours
                            * MachineRate.interestPerHour(
                                    inputs.get(WorkInput.PURCHASE) + other,
                                    resale,
                                    inputs.get(WorkInput.LIFE),
                                    inputs.get(WorkInput.INTEREST),
                                    inputs.get(WorkInput.HOURS_PER_YEAR)));
        }
        collect.product(CostKind.LOGS, usable.value(), WorkInput.LOG_PRICE);
        collect.product(CostKind.WORK, hours, WorkInput.WAGE);
        return new JobCost(currency, usable, collect.amounts, collect.leftOut);
    }

    /** Puts each kind either among the amounts or among what is left out. */
    private static final class Collector {
        private final WorkInputs inputs;
        private final EnumMap<CostKind, Double> amounts = new EnumMap<>(CostKind.class);
        private final EnumMap<CostKind, Set<WorkInput>> leftOut = new EnumMap<>(CostKind.class);

        Collector(WorkInputs inputs) {
            this.inputs = inputs;
        }

        boolean has(CostKind kind, WorkInput... needed) {
            EnumSet<WorkInput> missing = EnumSet.noneOf(WorkInput.class);
            for (WorkInput input : needed) {
                if (inputs.find(input).isEmpty()) {
                    missing.add(input);
                }
            }
            if (!missing.isEmpty()) {
                leftOut.put(kind, Collections.unmodifiableSet(missing));
            }
            return missing.isEmpty();
        }

        void put(CostKind kind, double amount) {
            amounts.put(kind, amount);
        }

        /** What is not used needs no price. */
        void product(CostKind kind, double quantity, WorkInput price) {
            if (quantity == 0) {
                put(kind, 0);
            } else if (has(kind, price)) {
                put(kind, quantity * inputs.get(price));
            }
        }
    }

    /**
     * The lumber that the cost is spread over.
     *
     * @return usable board feet
     */
    public BoardFeet usable() {
        return usable;
    }

    /**
     * The cost of one kind.
     *
     * @param kind which
     * @return its amount, or nothing where a price is missing
     */
    public Optional<Money> amount(CostKind kind) {
        return Optional.ofNullable(amounts.get(kind)).map(amount -> new Money(amount, currency));
    }

    /**
     * The kinds that could not be computed, each with the inputs that are missing.
     *
     * @return an unmodifiable map, empty where nothing is missing
     */
    public Map<CostKind, Set<WorkInput>> leftOut() {
        return leftOut;
    }

    /**
     * The kinds that are left out of a running cost.
     *
     * @param ownWorkValued whether work counts
     * @return an unmodifiable map, empty where the running cost is whole
     */
    public Map<CostKind, Set<WorkInput>> leftOutOfRunning(boolean ownWorkValued) {
        EnumMap<CostKind, Set<WorkInput>> some = new EnumMap<>(CostKind.class);
        leftOut.forEach((kind, missing) -> {
            if (kind.running() && (ownWorkValued || kind != CostKind.WORK)) {
                some.put(kind, missing);
            }
        });
        return Collections.unmodifiableMap(some);
    }

    /**
     * The running cost beside the outlay, of the kinds that are known.
     *
     * @param ownWorkValued whether work counts
     * @return fuel, oils, edges, repairs, logs and, if valued, work
     */
    public Money running(boolean ownWorkValued) {
        return sum(true, ownWorkValued);
    }

    /**
     * The full cost with the saw's own loss of worth and interest by the hour, of the kinds that are known.
     *
     * @param ownWorkValued whether work counts
     * @return all kinds and, if valued, work
     */
    public Money full(boolean ownWorkValued) {
        return sum(false, ownWorkValued);
    }

    private Money sum(boolean runningOnly, boolean ownWorkValued) {
        double sum = 0;
        for (CostKind kind : CostKind.values()) {
            boolean counts = (kind.running() || !runningOnly) && (ownWorkValued || kind != CostKind.WORK);
            if (counts) {
                sum += amounts.getOrDefault(kind, 0.0);
            }
        }
        return new Money(sum, currency);
    }

    /**
     * A sum by the usable board foot.
     *
     * @param sum of this cost
     * @return the sum over {@link #usable}
     */
    public Money perBoardFoot(Money sum) {
        return sum.times(1 / usable.value());
    }

    /**
     * The running cost of one piece that can be used: its board feet at the running cost of a usable board foot, so that it
     * bears its share of the pieces that are lost.
     *
     * @param boardFeet of the piece, above 0
     * @param ownWorkValued whether work counts
     * @return {@code R (1 / U) f} with the running cost R and the usable board feet U of the job
     * @throws OutOfDomainException if the piece has no board feet, or a running cost is left out
     */
    @Calculation("work.piece-cost")
    public double pieceCost(double boardFeet, boolean ownWorkValued) {
        requirePiece(boardFeet, ownWorkValued);
        return perBoardFoot(running(ownWorkValued)).times(boardFeet).amount();
    }

    /**
     * How {@link #pieceCost} comes about.
     *
     * @param boardFeet of the piece, above 0
     * @param ownWorkValued whether work counts
     * @return the working, with the same result
     * @throws OutOfDomainException if the piece has no board feet, or a running cost is left out
     */
    public Working pieceCostWorking(double boardFeet, boolean ownWorkValued) {
        requirePiece(boardFeet, ownWorkValued);
        return Working.of("Cost of one piece, own work " + (ownWorkValued ? "counted" : "not counted"))
                .given("R", "running cost of the job", running(ownWorkValued).amount(), currency)
                .given("U", "usable lumber of the job", usable.value(), "bf")
                .given("f", "board feet of the piece", boardFeet, "bf")
                .step("C", "cost of the piece", "R * (1 / U) * f", currency, Sources.get("definition"))
                .build();
    }

    private void requirePiece(double boardFeet, boolean ownWorkValued) {
        PIECE.require(boardFeet);
        Map<CostKind, Set<WorkInput>> absent = leftOutOfRunning(ownWorkValued);
        if (!absent.isEmpty()) {
            List<String> missing = absent.values().stream()
                    .flatMap(Set::stream)
                    .distinct()
                    .sorted()
                    .map(WorkInput::label)
                    .toList();
            throw new OutOfDomainException(
                    "running cost", "missing", currency, "every kind known", "give " + String.join(", ", missing));
        }
    }
}
