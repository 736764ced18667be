package org.woodyield.lumber;

import java.util.List;
import java.util.Optional;
import org.woodyield.measure.BoardFeet;
import org.woodyield.measure.Domain;
import org.woodyield.measure.Length;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.measure.Rounding;
import org.woodyield.measure.Volume;
import org.woodyield.wood.Species;

/**
 * Pieces of one kind that are wanted.
 *
 * @param id the user's name for them
 * @param size nominal or measured, at the final moisture
 * @param length trimmed length
 * @param quantity how many, 1 to 100 000
 * @param wood which wood will do
 * @param surface how they are finished
 * @param moisturePercent final moisture, oven-dry basis, 0 to 200 %
 * @param wane what may be missing at their edges; empty for square edges
 */
public record Product(
        String id,
        Size size,
        Length length,
        int quantity,
        Wood wood,
        Surface surface,
        double moisturePercent,
        Optional<WaneLimit> wane) {

    private static final Domain QUANTITY = Domain.of("quantity", "", 1, 100_000);
    private static final Domain MOISTURE = Domain.of("final moisture", "%", 0, 200);
    private static final Length GREATEST = Length.millimetres(1000);
    static final Length LONGEST = Length.millimetres(30_000);

    /**
     * Checks that this can be a piece.
     *
     * @throws OutOfDomainException if the id is blank, or length, quantity or moisture is outside
     */
    public Product {
        requireName(id);
        within("width of " + id, size.width(), GREATEST);
        within("length of " + id, length, LONGEST);
        QUANTITY.require(quantity);
        MOISTURE.require(moisturePercent);
    }

    /**
     * Pieces with square edges.
     *
     * @param id the user's name for them
     * @param size nominal or measured, at the final moisture
     * @param length trimmed length
     * @param quantity how many
     * @param wood which wood will do
     * @param surface how they are finished
     * @param moisturePercent final moisture
     * @throws OutOfDomainException if the id is blank, or length, quantity or moisture is outside
     */
    public Product(
            String id, Size size, Length length, int quantity, Wood wood, Surface surface, double moisturePercent) {
        this(id, size, length, quantity, wood, surface, moisturePercent, Optional.empty());
    }

    /**
     * What a piece measures when it is finished.
     *
     * @return its section
     * @throws OutOfDomainException if it is of a nominal size that the tables do not have
     */
    public Section finished() {
        return size.finished(surface);
    }

    /**
     * The least diameter of a log that a piece fits into as finished: from corner to corner, with its wane from the end of
     * one face to the far end of the other.
     *
     * @return millimetres
     * @throws OutOfDomainException as {@link #finished}
     */
    public double leastDiameterMillimetres() {
        Section section = finished();
        double t = section.thickness().toMillimetres();
        double w = section.width().toMillimetres();
        double narrower = t * (1 - 2 * wane.map(WaneLimit::thicknessShare).orElse(0.0));
        double shorter = w * (1 - 2 * wane.map(WaneLimit::widthShare).orElse(0.0));
        return StrictMath.sqrt(Math.max(shorter * shorter + t * t, w * w + narrower * narrower));
    }

    /**
     * Board feet of one piece: by its nominal size if it has one, otherwise by the size that it measures.
     *
     * @return a tally
     */
    public BoardFeet tallyPerPiece() {
        return size.nominal()
                ? BoardMeasure.tally(new NominalSize(size.thickness(), size.width()), length)
                : BoardMeasure.tallyOfActualSize(size.thickness(), size.width(), length);
    }

    /**
     * The solid volume of one piece as finished.
     *
     * @return the volume
     * @throws OutOfDomainException as {@link #finished}
     */
    public Volume finishedVolume() {
        Section section = finished();
        return Volume.ofPiece(section.thickness(), section.width(), length);
    }

    /**
     * The same under another name.
     *
     * @param other the name
     * @return a new product
     * @throws OutOfDomainException if the name is blank
     */
    public Product named(String other) {
        return new Product(other, size, length, quantity, wood, surface, moisturePercent, wane);
    }

    static void requireName(String id) {
        if (id.isBlank()) {
            throw new OutOfDomainException("id", "empty", "", "a name for what is wanted", "");
        }
    }

    static void requireMoisture(double percent) {
        MOISTURE.require(percent);
    }

    static void within(String parameter, Length value, Length greatest) {
        if (!value.isPositive() || value.compareTo(greatest) > 0) {
            throw new OutOfDomainException(
                    parameter, value.toString(), "", "above 0, up to " + greatest.inMillimetres(0), "check the unit");
        }
    }

    /** A copy of the lengths any of which will do: one or more, shortest first. */
    static List<Length> anyOf(String id, List<Length> lengths) {
        if (lengths.isEmpty()) {
            throw new OutOfDomainException("lengths of " + id, "none", "", "one or more", "");
        }
        Length shorter = Length.ZERO;
        for (Length length : lengths) {
            within("length of " + id, length, LONGEST);
            if (length.compareTo(shorter) <= 0) {
                throw new OutOfDomainException(
                        "lengths of " + id, lengths.toString(), "", "shortest first, each once", "sort them");
            }
            shorter = length;
        }
        return List.copyOf(lengths);
    }

    /**
     * What a piece measures.
     *
     * @param thickness the lesser one
     * @param width the greater one
     */
    public record Section(Length thickness, Length width) {

        /**
         * From corner to corner.
         *
         * @return millimetres
         */
        public double diagonalMillimetres() {
            double t = thickness.toMillimetres();
            double w = width.toMillimetres();
            return StrictMath.sqrt(t * t + w * w);
        }
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

        /**
         * What a piece of this size measures when it is finished: a measured size what it says, a nominal one what the
         * tables of softwood lumber say for the surface, rough and dry, dressed and dry, or dressed and green.
         *
         * @param surface how it is finished
         * @return its section
         * @throws OutOfDomainException if the tables do not have the nominal size
         */
        public Section finished(Surface surface) {
            if (!nominal) {
                return new Section(thickness, width);
            }
            NominalSize named = new NominalSize(thickness, width);
            SoftwoodSizes.Size table = switch (surface) {
                case ROUGH -> SoftwoodSizes.rough(named, SoftwoodSizes.Condition.DRY);
                case DRESSED_DRY -> SoftwoodSizes.dressed(named, SoftwoodSizes.Condition.DRY);
                case DRESSED_GREEN -> SoftwoodSizes.dressed(named, SoftwoodSizes.Condition.GREEN);
            };
            return new Section(table.thickness(), table.width());
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
}
