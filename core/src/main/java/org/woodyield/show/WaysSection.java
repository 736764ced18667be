package org.woodyield.show;

import static org.woodyield.show.PlanWords.feet;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.woodyield.measure.BoardFeet;
import org.woodyield.measure.MonteCarlo;
import org.woodyield.plan.JobPlan;
import org.woodyield.show.Block.Points;
import org.woodyield.show.Block.Prose;
import org.woodyield.show.Block.Tabular;
import org.woodyield.show.PlanTable.Cell;
import org.woodyield.work.Outlook;
import org.woodyield.work.SupplyChoice;
import org.woodyield.work.SupplyWay;
import org.woodyield.work.SupplyWays;
import org.woodyield.work.WorkInput;

/** What a plan says of the ways to come by its lumber: what each costs, where they change places, and which is the cheapest. */
final class WaysSection {

    /** From so many times the volume in question on it does not matter where two ways change places. */
    private static final double FAR = 100;

    /** Sums from here on are shown without cents: no price is known to them. */
    private static final double WITHOUT_CENTS = 100;

    private final PlanWords words;
    private final JobPlan.Ways ways;

    WaysSection(PlanWords words, JobPlan.Ways ways) {
        this.words = words;
        this.ways = ways;
    }

    /** A choice, and how own work stands in it. */
    record Side(String work, SupplyChoice choice) {
        /** Both sides, or one for both where own work costs nothing or is not in them. */
        static List<Side> of(SupplyChoice free, SupplyChoice valued) {
            return free.ways().equals(valued.ways()) && movers(free).equals(movers(valued))
                    ? List.of(new Side("counted or not", free))
                    : List.of(new Side("not counted", free), new Side("counted", valued));
        }

        /** What the ranges move: a wage of nothing that may be something is in one side only. */
        private static List<List<Outlook.Mover>> movers(SupplyChoice choice) {
            return choice.costs().stream().map(Outlook::movers).toList();
        }

        String lead() {
            return "Own work " + work;
        }
    }

    private List<Side> sides() {
        return Side.of(ways.free(), ways.valued());
    }

    void addTo(List<Block> blocks) {
        PlanTable.Builder table = PlanTable.of(
                        "ways",
                        words.fromMemory(
                                "Ways to come by " + feet(ways.workFree().usable())))
                .text("Own work", "own-work")
                .text("Way", "way");
        costColumns(table)
                .number("Least charge", "least-charge")
                .number("Cheapest in, %", "cheapest-percent")
                .text("Not counted for want of a price", "not-counted");
        PlanTable.Builder places = crossings("Each two ways, and where they change places", words::fromMemory);
        boolean cross = false;
        List<String> lines = new ArrayList<>();
        List<String> stretches = new ArrayList<>();
        for (Side one : sides()) {
            SupplyChoice choice = one.choice();
            SupplyWays side = choice.ways();
            for (int i = 0; i < side.ways().size(); i++) {
                SupplyWay way = side.ways().get(i);
                List<Cell> cells = new ArrayList<>(List.of(Cell.text(one.work()), Cell.text(way.name())));
                cells.addAll(
                        costs(way, side.usable(), Optional.of(choice.costs().get(i))));
                cells.add(leastCharge(way));
                cells.add(choice.cheapestShare(i)
                        .map(share -> Cell.number(100 * share, 1, 2))
                        .orElse(Cell.NONE));
                cells.add(notCounted(way));
                table.row(cells);
            }
            for (SupplyWay way : side.bounds()) {
                List<Cell> cells = new ArrayList<>(List.of(Cell.text(one.work()), Cell.text(way.name())));
                cells.addAll(costs(way, side.usable(), Optional.empty()));
                cells.addAll(List.of(leastCharge(way), Cell.NONE, notCounted(way)));
                table.row(cells);
            }
            cross |= crossings(places, one, WaysSection::label);
            stretches.addAll(sentences(one, WaysSection::label));
            cheapest(choice).ifPresent(best -> lines.add(one.lead() + ": " + best));
        }
        ways.other().ifPresent(other -> lines.add(other(other, ways.workFree().usable())));
        unranked().ifPresent(lines::add);
        for (SupplyWays.LeftOut out : ways.workValued().leftOut()) {
            boolean always = ways.workFree().leftOut().stream()
                    .anyMatch(other -> other.kind() == out.kind() && other.use() == out.use());
            lines.add(way(out) + ": left out" + (always ? "" : " where own work is counted") + ", no "
                    + Stream.concat(
                                    out.missing().stream().map(input -> MissingPrices.named(out.kind(), input)),
                                    out.unscaled()
                                            ? Stream.of("International 1/4-inch scale of the logs")
                                            : Stream.of())
                            .collect(Collectors.joining(", no "))
                    + ".");
        }
        if (Stream.of(ways.workFree(), ways.workValued())
                .allMatch(side -> side.ways().isEmpty() && side.bounds().isEmpty())) {
            blocks.add(new Points(lines));
            return;
        }
        blocks.add(new Tabular(table.build()));
        sawyer().ifPresent(text -> blocks.add(new Prose(text)));
        blocks.add(new Prose(
                "Like for like: beside what the verdict above counts, sawn lumber bears here what it takes to dry and"
                        + " plane it and to have it graded, or the loss of serving only where no grade is asked for, each thing wanted by"
                        + " its own price; what is beyond the need bears this, as it counts, at "
                        + NumberText.fixed(100 * words.plan().choice().surplusShare(), 0)
                        + " %. Whether ungraded lumber is accepted, the local authority says."
                        + (Stream.of(ways.free(), ways.valued())
                                        .flatMap(choice -> choice.costs().stream())
                                        .allMatch(cost -> cost.drawn().isEmpty())
                                ? ""
                                : " From and to hold 95 % of the draws of the cost of this job; one draw of all ranges"
                                        + " prices every way, so that an error which they share cancels between them."
                                        + " Where they are missing, no range moves that cost.")));
        if (cross) {
            blocks.add(new Tabular(places.build()));
            blocks.add(new Prose("Two ways are set beside each other for one use: graded lumber not beside ungraded of"
                    + " another way. No range stands where no input that moves the volume has one, or where two ways"
                    + " change places more than once, or the other way round, in some draws."));
        }
        if (!stretches.isEmpty()) {
            blocks.add(new Points(stretches));
        }
        blocks.add(new Points(lines));
        choiceMovers(blocks);
    }

    /** The columns of {@link #costs}. */
    static PlanTable.Builder costColumns(PlanTable.Builder table) {
        return table.text("Costs", "bound")
                .number("Fixed", "fixed")
                .number("Per usable bf", "per-usable-bf")
                .number("This job", "this-job")
                .number("From", "from")
                .number("To", "to");
    }

    /** What a way costs, with the interval of that for the job. */
    static List<Cell> costs(SupplyWay way, BoardFeet usable, Optional<Outlook> drawn) {
        Optional<MonteCarlo.Interval> ends = WorkSections.interval(drawn);
        return List.of(
                Cell.text(way.bound().words()),
                money(way.fixed().amount()),
                Cell.number(way.perBoardFoot().plus(way.rate()).amount(), 3, 6),
                money(way.cost(usable).amount()),
                ends.map(found -> money(found.least())).orElse(Cell.NONE),
                ends.map(found -> money(found.greatest())).orElse(Cell.NONE));
    }

    private static Cell money(double amount) {
        return Cell.number(amount, Math.abs(amount) < WITHOUT_CENTS ? 2 : 0, 4);
    }

    private static Cell leastCharge(SupplyWay way) {
        return way.least().amount() > 0 ? money(way.least().amount()) : Cell.NONE;
    }

    private static Cell notCounted(SupplyWay way) {
        return notCounted(way, input -> MissingPrices.named(way.kind(), input));
    }

    static Cell notCounted(SupplyWay way, Function<WorkInput, String> named) {
        List<String> notCounted = new ArrayList<>();
        Stream.concat(way.costsMissing().stream(), way.incomeMissing().stream())
                .forEach(input -> notCounted.add(named.apply(input)));
        notCounted.addAll(way.taken());
        return Cell.text(String.join("; ", notCounted));
    }

    /** What the row of a travelling sawyer does not tell. */
    private Optional<String> sawyer() {
        return Stream.concat(ways.workFree().ways().stream(), ways.workFree().bounds().stream())
                .filter(way -> way.kind() == SupplyWay.Kind.HIRED_SAWYER)
                .findFirst()
                .map(way -> {
                    double least = way.least().amount();
                    double rate = way.rate().amount();
                    return "A travelling sawyer is taken to saw the logs as this plan does and to be paid by the board feet"
                            + " sawn; help at the saw and struck metal grow with the volume as in this job."
                            + (least > 0 && rate > 0
                                    ? " His least charge, " + NumberText.money(way.least())
                                            + " beside what is fixed, is what he is paid up to "
                                            + feet(BoardFeet.usable(least / rate))
                                            + "; from there on it is by the board foot."
                                    : "");
                });
    }

    /** A table of volumes at which two ways change places. */
    static PlanTable.Builder crossings(String title, Function<String, String> marked) {
        return PlanTable.of("crossings", marked.apply(title))
                .text("Own work", "own-work")
                .text("Cheaper of small volumes", "way")
                .text("Other way", "other-way")
                .text("Change places at bf usable", "at-bf")
                .text("Range of that", "at-bf-range");
    }

    /** Adds the pairs that change places, if only in some draws, not so far away that it does not matter. */
    static boolean crossings(PlanTable.Builder table, Side side, Function<SupplyWay, String> label) {
        List<SupplyWays.Crossing> pairs = side.choice().ways().crossings();
        double far = far(side);
        boolean any = false;
        for (int i = 0; i < pairs.size(); i++) {
            SupplyWays.Crossing pair = pairs.get(i);
            Optional<SupplyChoice.Volumes> range = side.choice().crossings().get(i);
            if (changesPlaces(pair, range, far)) {
                any = true;
                table.row(
                        Cell.text(side.work()),
                        Cell.text(label.apply(pair.one())),
                        Cell.text(label.apply(pair.other())),
                        Cell.text(
                                pair.volumes().isEmpty()
                                        ? "never"
                                        : pair.volumes().stream()
                                                .map(volume -> volume(volume.value(), far))
                                                .distinct()
                                                .collect(Collectors.joining(", "))),
                        Cell.text(range.map(volumes -> range(volumes, far)).orElse("")));
            }
        }
        return any;
    }

    static double far(Side side) {
        return FAR * side.choice().ways().usable().value();
    }

    private static String volume(double feet, double far) {
        return feet > far ? "over " + NumberText.fixed(far, 0) : NumberText.fixed(feet, 0);
    }

    static String range(SupplyChoice.Volumes volumes, double far) {
        return volume(volumes.least(), far) + " to "
                + volumes.greatest().map(greatest -> volume(greatest, far)).orElse("never");
    }

    static boolean changesPlaces(SupplyWays.Crossing pair, Optional<SupplyChoice.Volumes> range, double far) {
        return pair.volumes().stream().anyMatch(volume -> volume.value() <= far)
                || range.filter(volumes -> volumes.least() <= far).isPresent();
    }

    /** The cheapest by volume, and the pairs of which one is the cheaper throughout. */
    static List<String> sentences(Side side, Function<SupplyWay, String> label) {
        List<String> sentences = new ArrayList<>();
        byVolume(side, label).ifPresent(text -> sentences.add(side.lead() + ", the cheapest by volume: " + text));
        Map<String, List<String>> before = new LinkedHashMap<>();
        List<SupplyWays.Crossing> pairs = side.choice().ways().crossings();
        boolean isFar = false;
        for (int i = 0; i < pairs.size(); i++) {
            SupplyWays.Crossing pair = pairs.get(i);
            if (!changesPlaces(pair, side.choice().crossings().get(i), far(side))) {
                isFar |= !pair.volumes().isEmpty();
                before.computeIfAbsent(label.apply(pair.one()), one -> new ArrayList<>())
                        .add(label.apply(pair.other()));
            }
        }
        if (!before.isEmpty()) {
            sentences.add(side.lead() + ", cheaper or as dear at every volume"
                    + (isFar ? " up to " + NumberText.fixed(FAR, 0) + " times this one" : "") + ": "
                    + before.entrySet().stream()
                            .map(one -> one.getKey() + " before " + String.join(", ", one.getValue()))
                            .collect(Collectors.joining("; "))
                    + ".");
        }
        return sentences;
    }

    /** The cheapest way from nothing on; nothing where one way is alone. */
    static Optional<String> byVolume(Side side, Function<SupplyWay, String> label) {
        if (side.choice().ways().ways().size() < 2) {
            return Optional.empty();
        }
        List<SupplyWays.Stretch> stretches = new ArrayList<>();
        for (SupplyWays.Stretch stretch : side.choice().ways().cheapestByVolume()) {
            stretches.add(stretch);
            if (stretch.upTo().filter(end -> end.value() <= far(side)).isEmpty()) {
                break;
            }
        }
        if (stretches.size() == 1) {
            return Optional.of(label.apply(stretches.get(0).way()) + " at every volume"
                    + (stretches.get(0).upTo().isPresent()
                            ? " up to " + NumberText.fixed(FAR, 0) + " times this one"
                            : "")
                    + ".");
        }
        SupplyWays.Stretch last = stretches.get(stretches.size() - 1);
        return Optional.of(stretches.stream()
                        .map(stretch -> label.apply(stretch.way())
                                + stretch.upTo()
                                        .filter(end -> !stretch.equals(last))
                                        .map(end -> " up to " + feet(end))
                                        .orElse(" beyond"
                                                + (last.upTo().isPresent()
                                                        ? ", up to " + NumberText.fixed(FAR, 0) + " times this volume"
                                                        : "")))
                        .collect(Collectors.joining(", then "))
                + ".");
    }

    /** A way in few words. */
    private static String label(SupplyWay way) {
        return way(way.kind()).toLowerCase(Locale.ROOT) + inBrackets(way.use());
    }

    /** How lumber is used, in a word; none as it is. */
    static String use(SupplyWay.Use use) {
        return switch (use) {
            case AS_IT_IS -> "";
            case GRADED -> "graded";
            case UNGRADED -> "ungraded";
        };
    }

    /** A use behind the name of a way. */
    static String inBrackets(SupplyWay.Use use) {
        return use == SupplyWay.Use.AS_IT_IS ? "" : " (" + use(use) + ")";
    }

    /** The lumber of another saw beside that of the plan. */
    private String other(JobPlan.OtherSaw other, BoardFeet usable) {
        return "Another saw, "
                + besideFirst(
                        other, usable, "of this plan", words.plan().choice().surplusShare())
                + (other.leftOut().isPresent()
                        ? ""
                        : " Its volumes are counted in board feet of this plan's lumber; compare-saws reckons the same"
                                + " way and sets more of the two side by side.");
    }

    /**
     * The lumber of a saw beside that of the plan that it is compared with.
     *
     * @param whose the lumber that it is beside, in words
     * @param share at which lumber beyond the need counts
     */
    static String besideFirst(JobPlan.OtherSaw other, BoardFeet usable, String whose, double share) {
        String atItsShare = ", what is beyond the need counted at " + NumberText.fixed(100 * share, 0) + " %";
        return other.name() + ": "
                + other.leftOut()
                        .map(why -> "left out, " + why + ".")
                        .orElseGet(() -> "of the same logs it makes " + feet(other.usable()) + ". Thing by thing "
                                + feet(other.serves()) + " of it stand in for as many of the " + feet(usable) + " "
                                + whose
                                + (other.bought() > 0
                                        ? "; to have as much of everything " + NumberText.fixed(other.bought(), 1)
                                                + " bf are bought beside"
                                                + other.price()
                                                        .map(price -> " at " + NumberText.money(price) + " in the mean")
                                                        .orElse("")
                                                + atItsShare
                                        : "")
                                + "."
                                + (other.more() > 0
                                        ? " Beside these it makes " + NumberText.fixed(other.more(), 1)
                                                + " bf more of something" + atItsShare
                                                + other.worth()
                                                        .map(worth -> "; their worth, " + NumberText.money(worth)
                                                                + ", is taken off.")
                                                        .orElse("; no price tells their worth.")
                                        : ""));
    }

    /** The ways that lack the price of a cost. */
    private Optional<String> unranked() {
        Map<SupplyWay.Kind, Set<WorkInput>> missing = new EnumMap<>(SupplyWay.Kind.class);
        for (SupplyWays side : List.of(ways.workFree(), ways.workValued())) {
            for (SupplyWay way : side.bounds()) {
                missing.computeIfAbsent(way.kind(), kind -> EnumSet.noneOf(WorkInput.class))
                        .addAll(way.costsMissing());
            }
        }
        if (missing.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of("Not ranked among the others, since a cost of it has no price: "
                + missing.entrySet().stream()
                        .map(one -> way(one.getKey()).toLowerCase(Locale.ROOT) + ", no "
                                + one.getValue().stream()
                                        .map(input -> MissingPrices.named(one.getKey(), input))
                                        .collect(Collectors.joining(", no ")))
                        .collect(Collectors.joining("; "))
                + ". Write 0 for what costs nothing.");
    }

    /** What moves the lead of the cheapest way over the next. */
    private void choiceMovers(List<Block> blocks) {
        PlanTable.Builder table = PlanTable.of(
                        "choice-movers", words.fromMemory("What moves the choice most, each input by itself"))
                .text("Own work", "own-work")
                .text("Cheapest way", "way")
                .text("Input", "input")
                .text("Range", "range")
                .text("Standing", "standing")
                .number("Lead, input lower", "lead-lower")
                .number("Lead, input higher", "lead-higher");
        boolean any = false;
        for (Side side : sides()) {
            SupplyChoice choice = side.choice();
            Optional<Integer> best = choice.cheapest();
            for (Outlook.Mover mover : best
                    .map(index -> choice.leads().get(index).movers())
                    .orElse(List.of())
                    .stream()
                    .limit(WorkSections.MOVERS)
                    .toList()) {
                any = true;
                table.row(words.moved(
                        mover,
                        Cell.text(side.work()),
                        Cell.text(choice.ways().ways().get(best.orElseThrow()).name())));
            }
        }
        if (any) {
            blocks.add(new Tabular(table.build()));
            blocks.add(new Prose(
                    "The lead is what the cheapest way costs less than the next one; below zero another way is"
                            + " the cheaper."));
        }
    }

    /** Which way is the cheapest can be said where two or more have a figure, and how often where a range moves it. */
    private static Optional<String> cheapest(SupplyChoice choice) {
        SupplyWays ways = choice.ways();
        boolean alone = ways.ways().stream().map(SupplyWay::kind).distinct().count() == 1;
        return ways.cheapest(ways.usable())
                .map(way -> alone
                        ? way(way.kind()).toLowerCase(Locale.ROOT)
                                + " is the only choice that could be costed in full; whether it is the cheapest cannot"
                                + " be said."
                                + lackedByOthers(ways, way.kind())
                        : "of the choices that could be costed in full the cheapest for this job is to " + way.name()
                                + inDraws(choice)
                                + incomeMissing(ways, way));
    }

    /** What the choices lack that cannot be set beside the only one, by key. */
    private static String lackedByOthers(SupplyWays ways, SupplyWay.Kind alone) {
        Map<SupplyWay.Kind, Set<String>> lacked = new EnumMap<>(SupplyWay.Kind.class);
        ways.bounds()
                .forEach(way -> way.costsMissing()
                        .forEach(input -> lacked.computeIfAbsent(way.kind(), kind -> new LinkedHashSet<>())
                                .add(MissingPrices.key(way.kind(), input))));
        ways.leftOut()
                .forEach(out -> out.missing()
                        .forEach(input -> lacked.computeIfAbsent(out.kind(), kind -> new LinkedHashSet<>())
                                .add(MissingPrices.key(out.kind(), input))));
        lacked.remove(alone);
        return lacked.isEmpty()
                ? ""
                : " To set another beside it, give what it lacks: "
                        + lacked.entrySet().stream()
                                .map(one -> way(one.getKey()).toLowerCase(Locale.ROOT) + " "
                                        + String.join(", ", one.getValue()))
                                .collect(Collectors.joining("; "))
                        + ".";
    }

    /** How often the cheapest at the values is the cheapest, and which is more often. */
    private static String inDraws(SupplyChoice choice) {
        return choice.trials()
                .map(trials -> {
                    int cheapest = choice.cheapest().orElseThrow();
                    int leader = choice.leader().orElseThrow();
                    return ", and so it is in "
                            + WorkSections.share(choice.cheapestShare(cheapest).orElseThrow()) + " of " + trials
                            + " draws."
                            + (leader == cheapest
                                    ? ""
                                    : " The ranges lie to one side of the values taken: in more of the draws, "
                                            + WorkSections.share(
                                                    choice.cheapestShare(leader).orElseThrow())
                                            + ", the cheapest is to "
                                            + choice.ways().ways().get(leader).name() + ".");
                })
                .orElse(". No input that moves the choice has a range, so there is no probability.");
    }

    /** Where income has no price another way may yet be the cheaper. */
    private static String incomeMissing(SupplyWays ways, SupplyWay cheapest) {
        Set<String> missing = new LinkedHashSet<>();
        for (SupplyWay way : ways.ways()) {
            if (!way.equals(cheapest)) {
                way.incomeMissing().forEach(input -> missing.add(MissingPrices.named(way.kind(), input)));
            }
        }
        return missing.isEmpty()
                ? ""
                : " Income for which no price is given is counted in no way, and another may be cheaper with it: "
                        + String.join(", ", missing) + ".";
    }

    /** The choices like for like, in a sentence or two for the head of a plan; empty where none has a figure. */
    Optional<String> likeForLike() {
        if (ways.workFree().ways().isEmpty()) {
            return Optional.empty();
        }
        StringBuilder text = new StringBuilder("These verdicts set the saw alone against buying. Like for like, drying,"
                + " planing and grading are counted too, as far as they have a price.");
        Optional<String> free = cheapest(ways.free());
        Optional<String> valued = cheapest(ways.valued());
        if (free.equals(valued)) {
            free.ifPresent(best -> text.append(" Own work counted or not: ").append(best));
        } else {
            free.ifPresent(best -> text.append(" Own work not counted: ").append(best));
            valued.ifPresent(best -> text.append(" Own work counted: ").append(best));
        }
        return Optional.of(text.append(" Money has them all.").toString());
    }

    static String way(SupplyWays.LeftOut out) {
        return way(out.kind()) + out.use().words();
    }

    static String way(SupplyWay.Kind kind) {
        return switch (kind) {
            case BUY -> "Buying the lumber";
            case OWN_SAW -> "This saw";
            case OTHER_SAW -> "Another saw";
            case HIRED_SAWYER -> "A travelling sawyer";
            case SELL_AND_BUY -> "Selling the logs and buying";
        };
    }
}
