package org.woodyield.plan;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.woodyield.log.Log;
import org.woodyield.measure.Domain;
import org.woodyield.measure.Length;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.measure.Rounding;
import org.woodyield.sawing.Saw;
import org.woodyield.sawing.SearchSpace;
import org.woodyield.source.Source;
import org.woodyield.wood.Species;
import org.woodyield.work.WorkInputs;

/**
 * All that a plan is made from.
 *
 * @param title what the job is called
 * @param currency of every amount
 * @param logs the logs, each id once
 * @param pieces the pieces wanted, each id once
 * @param areas the areas to cover, each id once, no id that a piece has
 * @param saw the saw
 * @param space the patterns that are tried for each log
 * @param work time, fuel and money: the user's figures over the defaults of the kind of saw
 * @param planing what is taken off each planed face
 * @param undersizePercent share of pieces that may come out too thin to plane clean
 * @param prices what bought lumber costs; possibly empty, and then what rests on it is left out
 * @param assumptions what nobody gave and was taken instead, work and money left aside, whose sources stand in {@code work}
 */
public record JobInput(
        String title,
        String currency,
        List<Log> logs,
        List<WantedPiece> pieces,
        List<WantedArea> areas,
        Saw saw,
        SearchSpace space,
        WorkInputs work,
        Length planing,
        double undersizePercent,
        List<Price> prices,
        List<Assumption> assumptions) {

    /**
     * Keeps immutable copies.
     *
     * @throws OutOfDomainException if there is no log, nothing is wanted, or two logs or two things wanted share an id
     */
    public JobInput {
        logs = List.copyOf(logs);
        pieces = List.copyOf(pieces);
        areas = List.copyOf(areas);
        prices = List.copyOf(prices);
        assumptions = List.copyOf(assumptions);
        require("logs", logs.stream().map(Log::id).toList());
        require(
                "things wanted",
                Stream.concat(
                                pieces.stream().map(WantedPiece::id),
                                areas.stream().map(WantedArea::id))
                        .toList());
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
     * Which wood will do.
     *
     * @param kind how it is named
     * @param species the species, if the kind is {@link Kind#SPECIES}
     */
    public record Wood(Kind kind, Optional<Species> species) {

        /** How the wood is named. */
        public enum Kind {
            /** Any wood. */
            ANY("any wood"),
            /** Any softwood. */
            SOFTWOOD("softwood"),
            /** Any hardwood. */
            HARDWOOD("hardwood"),
            /** One species. */
            SPECIES("one species");

            private final String words;

            Kind(String words) {
                this.words = words;
            }

            /**
             * The kind in words.
             *
             * @return a short phrase
             */
            public String words() {
                return words;
            }
        }

        /**
         * Checks that a species is there exactly where one is named.
         *
         * @throws IllegalArgumentException if not
         */
        public Wood {
            if (species.isPresent() != (kind == Kind.SPECIES)) {
                throw new IllegalArgumentException("wood of the kind " + kind + " with species " + species);
            }
        }

        /**
         * Any wood of a kind.
         *
         * @param kind not {@link Kind#SPECIES}
         * @return the wood
         */
        public static Wood of(Kind kind) {
            return new Wood(kind, Optional.empty());
        }

        /**
         * One species only.
         *
         * @param species the species
         * @return the wood
         */
        public static Wood of(Species species) {
            return new Wood(Kind.SPECIES, Optional.of(species));
        }

        /**
         * Whether a species will do.
         *
         * @param candidate a species
         * @return true if so
         */
        public boolean accepts(Species candidate) {
            return switch (kind) {
                case ANY -> true;
                case SOFTWOOD -> !candidate.hardwood();
                case HARDWOOD -> candidate.hardwood();
                case SPECIES ->
                    species.map(wanted -> wanted.id().equals(candidate.id())).orElse(false);
            };
        }

        /**
         * The wood in words.
         *
         * @return the species' name, or the kind
         */
        public String words() {
            return species.map(Species::commonName).orElse(kind.words());
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
     * A size as it was wanted.
     *
     * @param nominal whether it is named by its nominal size ({@code 2x4}), not measured
     * @param thickness the lesser one, nominal or measured
     * @param width the greater one, nominal or measured
     */
    public record Size(boolean nominal, Length thickness, Length width) {

        /**
         * Checks the two.
         *
         * @throws OutOfDomainException if the thickness is not above zero or more than the width
         */
        public Size {
            if (!thickness.isPositive() || thickness.compareTo(width) > 0) {
                throw new OutOfDomainException(
                        "size",
                        thickness + " x " + width,
                        "",
                        "a thickness above 0, up to the width",
                        "change the two");
            }
        }

        /**
         * The size as it is written.
         *
         * @return for example {@code 2x4}, {@code 5/4x6} or {@code 45 mm x 145 mm}
         */
        public String words() {
            return nominal ? number(thickness) + "x" + number(width) : thickness + " x " + width;
        }

        private static String number(Length length) {
            long quarters = length.steps(Length.inches(1, 4), Rounding.HALF_UP);
            return quarters % 4 == 0 ? Long.toString(quarters / 4) : quarters + "/4";
        }
    }

    /** How the faces of a piece are finished. */
    public enum Surface {
        /** As it comes from the saw; the size is what it measures at its final moisture. */
        ROUGH("rough"),
        /** Planed on all faces after drying; the size is what it measures then. */
        DRESSED_DRY("dressed dry"),
        /** Planed on all faces while green; the size is that of the standard for green lumber. */
        DRESSED_GREEN("dressed green");

        private final String words;

        Surface(String words) {
            this.words = words;
        }

        /**
         * The surface in words.
         *
         * @return two words or one
         */
        public String words() {
            return words;
        }
    }

    /**
     * Pieces of one kind that are wanted.
     *
     * @param id the user's name for them
     * @param size nominal or measured, at the final moisture
     * @param length trimmed length
     * @param quantity one or more
     * @param wood which wood will do
     * @param surface how they are finished
     * @param moisturePercent final moisture, oven-dry basis
     */
    public record WantedPiece(
            String id, Size size, Length length, int quantity, Wood wood, Surface surface, double moisturePercent) {}

    /**
     * An area to be covered with boards of random widths and of any of some lengths.
     *
     * @param id the user's name for it
     * @param squareMetres to be covered
     * @param nominalThickness whether the thickness is a nominal one
     * @param thickness of the boards, nominal or measured at the final moisture
     * @param leastWidth of a board at the final moisture, overlap included
     * @param greatestWidth of a board at the final moisture, overlap included
     * @param overlap the part of each board's width that the next one covers; less than the least width
     * @param lengths trimmed lengths that will do, at least one, shortest first
     * @param wastePercent added for what is cut off and thrown away when the boards are put up
     * @param wood which wood will do
     * @param surface how they are finished
     * @param moisturePercent final moisture, oven-dry basis
     */
    public record WantedArea(
            String id,
            double squareMetres,
            boolean nominalThickness,
            Length thickness,
            Length leastWidth,
            Length greatestWidth,
            Length overlap,
            List<Length> lengths,
            double wastePercent,
            Wood wood,
            Surface surface,
            double moisturePercent) {

        /**
         * Keeps an immutable copy of the lengths.
         *
         * @throws OutOfDomainException if the area is not above zero, there is no length, the widths are crossed, or the
         *     overlap takes the whole of the least width
         */
        public WantedArea {
            Domain.positive("area of " + id, "m2").require(squareMetres);
            lengths = List.copyOf(lengths);
            if (lengths.isEmpty()) {
                throw new OutOfDomainException("lengths of " + id, "none", "", "one or more", "");
            }
            if (greatestWidth.compareTo(leastWidth) < 0) {
                throw new OutOfDomainException(
                        "greatest width of " + id, greatestWidth.toString(), "", leastWidth + " or more", "");
            }
            if (overlap.compareTo(leastWidth) >= 0) {
                throw new OutOfDomainException(
                        "overlap of " + id, overlap.toString(), "", "less than " + leastWidth, "");
            }
        }

        /**
         * The area that a board covers: its width less the overlap, times its length.
         *
         * @param width a width at the final moisture
         * @param length its length
         * @return square metres
         */
        public double coveredBy(Length width, Length length) {
            return width.minus(overlap).toMetres() * length.toMetres();
        }
    }

    /**
     * What bought lumber costs.
     *
     * @param size the size that the price is for; empty for any that has no price of its own
     * @param wood the wood that the price is for
     * @param perBoardFoot in the currency of the job, for each board foot of the nominal tally
     */
    public record Price(Optional<Size> size, Wood wood, double perBoardFoot) {}

    /**
     * What nobody gave and was taken instead.
     *
     * @param what the value in words
     * @param taken what was taken
     * @param source what that rests on
     */
    public record Assumption(String what, String taken, Source source) {}
}
