package org.woodyield.plan;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.woodyield.log.Log;
import org.woodyield.lumber.CoverArea;
import org.woodyield.lumber.NaturalEdge;
import org.woodyield.lumber.Product;
import org.woodyield.lumber.Product.Size;
import org.woodyield.lumber.Product.Wood;
import org.woodyield.measure.Distribution;
import org.woodyield.measure.Length;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.sawing.Saw;
import org.woodyield.sawing.SawGuide;
import org.woodyield.sawing.SearchSpace;
import org.woodyield.source.Source;
import org.woodyield.wood.Species;
import org.woodyield.work.WorkInputs;
import org.woodyield.working.Working;

/**
 * All that a plan is made from.
 *
 * @param title what the job is called
 * @param currency of every amount
 * @param logs the logs, each id once
 * @param pieces the pieces wanted, each id once
 * @param areas the areas to cover, each id once, no id that a piece has
 * @param naturalEdges the boards wanted with natural edges, each id once, no id that another thing has
 * @param saw the saw
 * @param guide how true the saw is led
 * @param space the patterns that are tried for each log
 * @param work time, fuel and money: the user's figures over the defaults of the kind of saw
 * @param planing what is taken off each planed face
 * @param undersizePercent share of pieces that may come out too thin to plane clean
 * @param yard how the lumber is dried and what that loses
 * @param prices what bought lumber costs; possibly empty, and then what rests on it is left out. Their ranges are of one law, and
 *     they move together: where one is at its upper end, all are
 * @param otherSaw another saw that stands among the ways to come by the lumber; its name is not that of the saw
 * @param assumptions what nobody gave and was taken instead, work and money left aside, whose sources stand in {@code work}
 */
public record JobInput(
        String title,
        String currency,
        List<Log> logs,
        List<Product> pieces,
        List<CoverArea> areas,
        List<NaturalEdge> naturalEdges,
        Saw saw,
        SawGuide guide,
        SearchSpace space,
        WorkInputs work,
        Length planing,
        double undersizePercent,
        DryingYard yard,
        List<Price> prices,
        Optional<OtherSaw> otherSaw,
        List<Assumption> assumptions) {

    /**
     * Another saw that the same logs could be sawn with.
     *
     * @param saw the saw
     * @param work time, fuel and money with it
     */
    public record OtherSaw(Saw saw, WorkInputs work) {}

    /**
     * Why no plan is made with the other saw, as far as its kerf tells: one as wide as a log, or wider than a board is thick, gives
     * none.
     *
     * @return a clause; nothing where there is no other saw or its kerf suits the job
     */
    public Optional<String> otherKerfTooWide() {
        return otherSaw.map(other -> other.saw().kerf())
                .flatMap(kerf -> KerfTooWide.of(kerf, logs, pieces, areas, naturalEdges)
                        .map(reason -> "its kerf of " + kerf + " is too wide: " + reason.words()));
    }

    /**
     * Keeps immutable copies.
     *
     * @throws OutOfDomainException if there is no log, nothing is wanted, two logs or two things wanted share an id, prices have
     *     ranges of several laws, or both saws share a name
     */
    public JobInput {
        logs = List.copyOf(logs);
        pieces = List.copyOf(pieces);
        areas = List.copyOf(areas);
        naturalEdges = List.copyOf(naturalEdges);
        prices = List.copyOf(prices);
        List<Price> all = prices;
        if (!prices.stream().allMatch(price -> all.stream().allMatch(price::movesWith))) {
            throw new OutOfDomainException(
                    "ranges of prices",
                    "several laws",
                    "",
                    "one law for all prices with a range, since they move together",
                    "give each as a triangle, each as an even range or each as a normal law");
        }
        String name = saw.name();
        if (otherSaw.filter(other -> other.saw().name().equals(name)).isPresent()) {
            throw new OutOfDomainException(
                    "other saw", name, "", "another name than the saw's", "rename one of the two");
        }
        assumptions = List.copyOf(assumptions);
        require("logs", logs.stream().map(Log::id).toList());
        require(
                "things wanted",
                Stream.of(
                                pieces.stream().map(Product::id),
                                areas.stream().map(CoverArea::id),
                                naturalEdges.stream().map(NaturalEdge::id))
                        .flatMap(each -> each)
                        .toList());
    }

    /**
     * A job without natural edges, in which nothing is known of how true the saw is led.
     *
     * @param title what the job is called
     * @param currency of every amount
     * @param logs the logs, each id once
     * @param pieces the pieces wanted, each id once
     * @param areas the areas to cover, each id once, no id that a piece has
     * @param saw the saw
     * @param space the patterns that are tried for each log
     * @param work time, fuel and money
     * @param planing what is taken off each planed face
     * @param undersizePercent share of pieces that may come out too thin to plane clean
     * @param yard how the lumber is dried and what that loses
     * @param prices what bought lumber costs
     * @param assumptions what nobody gave and was taken instead
     * @throws OutOfDomainException if there is no log, nothing is wanted, or two logs or two things wanted share an id
     */
    public JobInput(
            String title,
            String currency,
            List<Log> logs,
            List<Product> pieces,
            List<CoverArea> areas,
            Saw saw,
            SearchSpace space,
            WorkInputs work,
            Length planing,
            double undersizePercent,
            DryingYard yard,
            List<Price> prices,
            List<Assumption> assumptions) {
        this(
                title,
                currency,
                logs,
                pieces,
                areas,
                List.of(),
                saw,
                SawGuide.unknown(),
                space,
                work,
                planing,
                undersizePercent,
                yard,
                prices,
                Optional.empty(),
                assumptions);
    }

    /**
     * Whether something wanted is planed, so that it has an allowance for it.
     *
     * @param wantedId the id of something wanted
     * @return false for what stays rough, and for an unknown id
     */
    public boolean isPlaned(String wantedId) {
        return Stream.of(
                        pieces.stream()
                                .filter(piece -> piece.id().equals(wantedId))
                                .map(Product::surface),
                        areas.stream()
                                .filter(area -> area.id().equals(wantedId))
                                .map(CoverArea::surface),
                        naturalEdges.stream()
                                .filter(board -> board.id().equals(wantedId))
                                .map(NaturalEdge::surface))
                .flatMap(each -> each)
                .anyMatch(surface -> surface != Product.Surface.ROUGH);
    }

    /**
     * The same logs, wants and prices with another saw instead, of which nobody said how true it is led.
     *
     * @param other the saw
     * @param itsWork time, fuel and money with it
     * @return a copy; its assumptions are still those of the first saw
     */
    public JobInput withSaw(Saw other, WorkInputs itsWork) {
        return with(other, SawGuide.unknown(), itsWork, Optional.empty());
    }

    /**
     * The same job with another saw to choose.
     *
     * @param another the other saw; empty for none
     * @return a copy
     * @throws OutOfDomainException if both saws share a name
     */
    public JobInput withOtherSaw(Optional<OtherSaw> another) {
        return with(saw, guide, work, another);
    }

    private JobInput with(Saw itsSaw, SawGuide itsGuide, WorkInputs itsWork, Optional<OtherSaw> another) {
        return new JobInput(
                title,
                currency,
                logs,
                pieces,
                areas,
                naturalEdges,
                itsSaw,
                itsGuide,
                space,
                itsWork,
                planing,
                undersizePercent,
                yard,
                prices,
                another,
                assumptions);
    }

    private static void require(String what, List<String> ids) {
        if (ids.isEmpty()) {
            throw new OutOfDomainException(what, "none", "", "one or more", "");
        }
        if (ids.stream().distinct().count() != ids.size()) {
            throw new OutOfDomainException(what, ids.toString(), "", "each id once", "rename one of the two");
        }
    }

    /**
     * The price of a size in a species: of those that fit the one that says most, first of the size, then of the wood.
     *
     * @param size a size that was wanted
     * @param species the species that it is sawn from
     * @return the price, if there is one
     */
    public Optional<Price> price(Size size, Species species) {
        return prices.stream()
                .filter(price -> price.wood().accepts(species))
                .filter(price -> price.size().map(size::equals).orElse(true))
                .max(Comparator.comparing((Price price) -> price.size().isPresent())
                        .thenComparing(price -> price.wood().kind()));
    }

    /**
     * Woods in which something that is wanted has no price bought.
     *
     * @return softwood, hardwood, both or none
     */
    public List<Wood> unpriced() {
        return Planner.items(this).stream()
                .flatMap(item -> logs.stream()
                        .map(Log::species)
                        .filter(item.wood()::accepts)
                        .filter(species -> price(item.priceSize(), species).isEmpty()))
                .map(species -> Wood.of(species.hardwood() ? Wood.Kind.HARDWOOD : Wood.Kind.SOFTWOOD))
                .distinct()
                .toList();
    }

    /**
     * What is wanted and can be had bought for nothing, so that nothing is sawn for it.
     *
     * @return ids, in the order of the wants; none where a price is missing, for then worth is counted in board feet
     */
    public List<String> pricedAtNothing() {
        return unpriced().isEmpty()
                ? Planner.items(this).stream()
                        .filter(item -> LumberWorth.lowestPrice(this, item)
                                .filter(price -> price.perBoardFoot() == 0)
                                .isPresent())
                        .map(Item::id)
                        .toList()
                : List.of();
    }

    /**
     * What bought lumber costs.
     *
     * @param size the size that the price is for; empty for any that has no price of its own
     * @param wood the wood that the price is for
     * @param perBoardFoot in the currency of the job, for each board foot of the nominal tally
     * @param spread how it may lie otherwise; {@link Distribution.Fixed} where no range was given
     */
    public record Price(Optional<Size> size, Wood wood, double perBoardFoot, Distribution spread) {
        /**
         * A price without a range.
         *
         * @param size the size that the price is for; empty for any that has no price of its own
         * @param wood the wood that the price is for
         * @param perBoardFoot in the currency of the job, for each board foot of the nominal tally
         * @throws OutOfDomainException if the price is not finite
         */
        public Price(Optional<Size> size, Wood wood, double perBoardFoot) {
            this(size, wood, perBoardFoot, new Distribution.Fixed(perBoardFoot));
        }

        /**
         * Whether the price can move together with another one.
         *
         * @param other another price of the job
         * @return true where one of the two is fixed or both have ranges of one law
         */
        public boolean movesWith(Price other) {
            return spread.standardDeviation() == 0
                    || other.spread.standardDeviation() == 0
                    || spread.getClass() == other.spread.getClass();
        }
    }

    /**
     * What nobody gave and was taken instead.
     *
     * @param what the value in words
     * @param taken what was taken
     * @param source what that rests on
     * @param working how it came about, where it was computed from the user's own measurements
     */
    public record Assumption(String what, String taken, Source source, Optional<Working> working) {
        /**
         * An assumption that was not computed.
         *
         * @param what the value in words
         * @param taken what was taken
         * @param source what that rests on
         */
        public Assumption(String what, String taken, Source source) {
            this(what, taken, source, Optional.empty());
        }
    }
}
