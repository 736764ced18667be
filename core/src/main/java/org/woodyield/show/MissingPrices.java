package org.woodyield.show;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.woodyield.lumber.Product.Wood;
import org.woodyield.plan.JobPlan;
import org.woodyield.show.PlanTable.Cell;
import org.woodyield.work.BreakEven;
import org.woodyield.work.JobCost;
import org.woodyield.work.SupplyWay;
import org.woodyield.work.SupplyWays;
import org.woodyield.work.WorkInput;

/** Which prices of a plan are missing, what to write for each, and which figures are left out for want of it. */
final class MissingPrices {

    private static final String JOB = "job.properties";
    private static final String OTHER_SAW = "other-saw.properties";
    private static final String PRICES = "prices.csv";

    /** A cost that nobody may have, so that its want leaves a bound of what a way costs. */
    private static final Set<WorkInput> MAY_BE_NOTHING = EnumSet.of(
            WorkInput.OTHER_OUTLAY,
            WorkInput.DRYING_PRICE,
            WorkInput.PLANING_PRICE,
            WorkInput.BY_PRODUCTS,
            WorkInput.HIRE_SET_UP,
            WorkInput.HIRE_LEAST,
            WorkInput.HIRE_DAMAGE,
            WorkInput.HIRE_STRIKES,
            WorkInput.HIRE_HELP,
            WorkInput.RESALE);

    /** What a plan needs to follow the saw year by year, beside all that its saving needs. */
    private static final List<WorkInput> YEARS =
            List.of(WorkInput.RESALE, WorkInput.LIFE, WorkInput.HOURS_PER_YEAR, WorkInput.INTEREST);

    private final JobPlan plan;
    private final JobCost cost;
    private final BreakEven money;

    private MissingPrices(JobPlan plan, JobCost cost, BreakEven money) {
        this.plan = plan;
        this.cost = cost;
        this.money = money;
    }

    /** Empty where nothing is sawn: then nothing is asked for. */
    static Optional<MissingPrices> of(JobPlan plan) {
        return plan.cost().flatMap(cost -> plan.breakEven().map(money -> new MissingPrices(plan, cost, money)));
    }

    /** Whether it is a cost or income that there may be nothing of: then 0 is to be written. */
    static boolean mayBeNothing(WorkInput input) {
        return MAY_BE_NOTHING.contains(input);
    }

    /** An input with the place where its value is written. */
    static String named(WorkInput input) {
        return input.label() + " (" + key(input) + ")";
    }

    /** An input of a way with the place where its value is written: another saw has a file of its own. */
    static String named(SupplyWay.Kind kind, WorkInput input) {
        return input.label() + " (" + key(kind, input) + ")";
    }

    /** Where the value of an input of a way is written. */
    static String key(SupplyWay.Kind kind, WorkInput input) {
        return key(input) + (isOfOtherSaw(kind, input) ? " in " + OTHER_SAW : "");
    }

    private static boolean isOfOtherSaw(SupplyWay.Kind kind, WorkInput input) {
        return kind == SupplyWay.Kind.OTHER_SAW && input.ofSaw();
    }

    static String named(Iterable<WorkInput> inputs) {
        List<String> names = new ArrayList<>();
        inputs.forEach(input -> names.add(named(input)));
        return String.join(", no ", names);
    }

    /** The keys of those whose want leaves a figure out, in the order in which they stand in a job; empty where all is known. */
    List<String> keys() {
        List<String> keys = new ArrayList<>();
        for (WorkInput input : WorkInput.values()) {
            if (isMissing(input) && !figures(input).isEmpty()) {
                keys.add(key(input));
            }
        }
        return keys;
    }

    /** A row for each price or other figure of money that is missing; no table where none is. */
    Optional<PlanTable> table() {
        PlanTable.Builder table = PlanTable.of(
                        "missing-prices", "Prices that are missing, and what is left out for want of each")
                .text("Key", "key")
                .text("What it is", "what")
                .text("What to write", "write")
                .text("Left out without it", "left-out");
        boolean any = false;
        for (WorkInput input : WorkInput.values()) {
            if (isMissing(input)) {
                List<String> out = new ArrayList<>(figures(input));
                notCounted(input).ifPresent(out::add);
                if (!out.isEmpty()) {
                    any = true;
                    table.row(
                            Cell.text(key(input)),
                            Cell.text(input.label()),
                            Cell.text(write(input)),
                            Cell.text(String.join("; ", out)));
                }
            }
        }
        return any ? Optional.of(table.build()) : Optional.empty();
    }

    /** What the years of the saw lack; empty where they are shown. */
    Set<WorkInput> ofYears(boolean ownWorkValued) {
        Set<WorkInput> lacking = new LinkedHashSet<>();
        JobPlan.Years years = plan.cashFlow();
        if ((ownWorkValued ? years.workValued() : years.workFree()).isEmpty()) {
            for (WorkInput input : WorkInput.values()) {
                if (isMissing(input) && (holdsBack(input, ownWorkValued) || YEARS.contains(input))) {
                    lacking.add(input);
                }
            }
        }
        return lacking;
    }

    private boolean isMissing(WorkInput input) {
        return input == WorkInput.LUMBER_PRICE
                ? money.boughtPerBoardFoot().isEmpty()
                : input.keyOfJob().startsWith("money.")
                        && plan.input().work().find(input).isEmpty();
    }

    /** Where the value of an input is written: its key, or the file of the prices. */
    static String key(WorkInput input) {
        return input == WorkInput.LUMBER_PRICE ? PRICES : input.keyOfJob();
    }

    private String write(WorkInput input) {
        if (input == WorkInput.LUMBER_PRICE) {
            List<String> rows = plan.input().unpriced().stream()
                    .map(Wood::words)
                    .map(wood -> "any," + wood + ",AMOUNT per bf")
                    .toList();
            return String.join("; ", rows) + " in " + PRICES + (rows.size() == 1 ? ", as a row" : ", each as a row");
        }
        String unit = input.unit();
        String value = switch (unit) {
            case "" -> "NUMBER";
            case "1/year" -> "NUMBER %";
            default -> input.isMoney() ? unit.replace("money", "AMOUNT") : "NUMBER " + unit;
        };
        return input.keyOfJob() + " = " + value.replace("/", " per ") + " in " + JOB
                + (MAY_BE_NOTHING.contains(input) ? "; 0 where there is nothing of it" : "");
    }

    /** The figures that have no value without the input. */
    private List<String> figures(WorkInput input) {
        List<String> figures = new ArrayList<>();
        cost.leftOut().forEach((kind, missing) -> {
            if (missing.contains(input)) {
                figures.add("cost of " + kind.label());
            }
        });
        side("the whole running cost and the cost of a piece", running(input, false), running(input, true))
                .ifPresent(figures::add);
        side("the saving and the volume from which it pays", holdsBack(input, false), holdsBack(input, true))
                .ifPresent(figures::add);
        Set<String> workFree = choices(JobPlan.Ways::workFree, input);
        Set<String> workValued = new LinkedHashSet<>(workFree);
        workValued.addAll(choices(JobPlan.Ways::workValued, input));
        for (String choice : workValued) {
            side("the choice: " + choice, workFree.contains(choice), true).ifPresent(figures::add);
        }
        Set<String> boundFree = bounds(JobPlan.Ways::workFree, input);
        Set<String> boundValued = new LinkedHashSet<>(boundFree);
        boundValued.addAll(bounds(JobPlan.Ways::workValued, input));
        for (String choice : boundValued) {
            side("the rank of the choice: " + choice, boundFree.contains(choice), true)
                    .ifPresent(figures::add);
        }
        side(
                        "the saw year by year",
                        ofYears(false).contains(input),
                        ofYears(true).contains(input))
                .ifPresent(figures::add);
        return figures;
    }

    private static Optional<String> side(String figure, boolean workFree, boolean workValued) {
        if (workFree) {
            return Optional.of(figure);
        }
        return workValued ? Optional.of(figure + ", own work counted") : Optional.empty();
    }

    private boolean running(WorkInput input, boolean ownWorkValued) {
        return cost.leftOutOfRunning(ownWorkValued).values().stream().anyMatch(missing -> missing.contains(input));
    }

    /** Whether the saving has no value for want of it. */
    private boolean holdsBack(WorkInput input, boolean ownWorkValued) {
        return input == WorkInput.PURCHASE
                || input == WorkInput.OTHER_OUTLAY
                || input == WorkInput.LUMBER_PRICE
                || running(input, ownWorkValued);
    }

    /** The choices that have no figure for want of it. */
    private Set<String> choices(Function<JobPlan.Ways, SupplyWays> side, WorkInput input) {
        return plan.ways().stream()
                .flatMap(ways -> side.apply(ways).leftOut().stream())
                .filter(out -> out.missing().contains(input) && !isOfOtherSaw(out.kind(), input))
                .map(out -> WaysSection.way(out).toLowerCase(Locale.ROOT))
                .collect(Collectors.toCollection(LinkedHashSet::new));
    }

    /** The choices that cannot be ranked for want of it. */
    private Set<String> bounds(Function<JobPlan.Ways, SupplyWays> side, WorkInput input) {
        return plan.ways().stream()
                .flatMap(ways -> side.apply(ways).bounds().stream())
                .filter(way -> way.costsMissing().contains(input) && !isOfOtherSaw(way.kind(), input))
                .map(way -> WaysSection.way(way.kind()).toLowerCase(Locale.ROOT))
                .collect(Collectors.toCollection(LinkedHashSet::new));
    }

    /** Choices that have a figure, though this income is not in it. */
    private Optional<String> notCounted(WorkInput input) {
        String choices = plan.ways().stream()
                .flatMap(ways -> Stream.concat(ways.workFree().ways().stream(), ways.workFree().bounds().stream()))
                .filter(way -> way.incomeMissing().contains(input) && !isOfOtherSaw(way.kind(), input))
                .map(way -> WaysSection.way(way.kind()))
                .distinct()
                .map(way -> way.toLowerCase(Locale.ROOT))
                .collect(Collectors.joining(", "));
        String writtenOff = input == WorkInput.RESALE
                ? "; depreciation, repairs and interest are reckoned as if the saw were written off in full"
                : "";
        return choices.isEmpty() ? Optional.empty() : Optional.of("the income of it from: " + choices + writtenOff);
    }
}
