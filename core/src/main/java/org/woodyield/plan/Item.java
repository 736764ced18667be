package org.woodyield.plan;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.woodyield.lumber.BoardMeasure;
import org.woodyield.lumber.CoverArea;
import org.woodyield.lumber.FallDown;
import org.woodyield.lumber.GreenTargetSize;
import org.woodyield.lumber.NaturalEdge;
import org.woodyield.lumber.Product;
import org.woodyield.lumber.Product.Size;
import org.woodyield.lumber.Product.Surface;
import org.woodyield.lumber.Product.Wood;
import org.woodyield.lumber.WaneLimit;
import org.woodyield.measure.Length;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.measure.Rounding;
import org.woodyield.sawing.LengthWorth;
import org.woodyield.sawing.PieceOption;
import org.woodyield.sawing.Saw;
import org.woodyield.sawing.SawnPiece;
import org.woodyield.sawing.Wane;
import org.woodyield.source.Standing;
import org.woodyield.wood.Face;
import org.woodyield.wood.ShrinkageModel;
import org.woodyield.wood.Species;
import org.woodyield.working.Working;

/** A thing wanted as the planner sees it: pieces of one size, boards of random width for an area, or with natural edges. */
sealed interface Item {

    /** Widths of boards for an area are sawn to this step where the saw's own is finer. */
    Length WIDTH_STEP = Length.inches(1, 2);

    String id();

    Wood wood();

    Surface surface();

    double moisturePercent();

    String label();

    String unit();

    double wanted();

    double toSaw();

    /** What is lost in drying; nothing where the pieces are finished green. */
    FallDown fallDown();

    Length finishedThickness();

    Length finishedWidth();

    /** Whether its edges are sawn, and so scatter and are planed; natural ones only shrink. */
    default boolean sawnEdges() {
        return true;
    }

    /** Board feet of one unit of the need, as far as that can be said before it is sawn. */
    double feetPerUnit();

    /** The size under which a price is looked up. */
    Size priceSize();

    /** How much a sawn piece counts toward the need. */
    double amount(SawnPiece piece, GreenSize green);

    /** Board feet of a sawn piece by nominal size, or by finished size where there is none, and by its trimmed length. */
    double tally(SawnPiece piece, GreenSize green);

    /** Board feet in the ends that are cut off a sawn piece when it is dry. */
    default double endFeet(SawnPiece piece, GreenSize green) {
        return fallDown().endBoardFeet(tally(piece, green), fallDown().lengthKept(piece.length()));
    }

    /** The option that stands for this at a worth for each unit of the need. */
    PieceOption option(GreenSize green, Length step, double worthPerUnit);

    /**
     * The green size in a species. Which way the rings will lie is not known before the log is sawn, so both faces are
     * given the tangential shrinkage, the greater one.
     */
    default GreenSize greenSize(Species species, JobInput input, Saw saw, double z) {
        Length planing =
                surface() == Surface.ROUGH ? Length.ZERO : input.planing().times(2);
        Length deviation = saw.sawingVariation();
        Length edgePlaning = sawnEdges() ? planing : Length.ZERO;
        Length edgeDeviation = sawnEdges() ? deviation : Length.ZERO;
        if (surface() == Surface.DRESSED_GREEN) {
            GreenTargetSize thickness = GreenTargetSize.planedGreen(finishedThickness(), planing, z, deviation);
            GreenTargetSize width = GreenTargetSize.planedGreen(finishedWidth(), edgePlaning, z, edgeDeviation);
            return new GreenSize(
                    id(),
                    species,
                    finishedThickness(),
                    finishedWidth(),
                    Optional.empty(),
                    thickness,
                    width,
                    asSawn(saw, thickness),
                    asSawn(saw, width),
                    Optional.empty());
        }
        Shrinkage shrinkage = Shrinkage.of(species, moisturePercent());
        GreenTargetSize thickness =
                GreenTargetSize.planedDry(finishedThickness(), planing, shrinkage.thicknessPercent(), z, deviation);
        GreenTargetSize width =
                GreenTargetSize.planedDry(finishedWidth(), edgePlaning, shrinkage.widthPercent(), z, edgeDeviation);
        return new GreenSize(
                id(),
                species,
                finishedThickness(),
                finishedWidth(),
                Optional.of(shrinkage.model()),
                thickness,
                width,
                asSawn(saw, thickness),
                asSawn(saw, width),
                Optional.of(shrinkage.working()));
    }

    private static Length asSawn(Saw saw, GreenTargetSize size) {
        return saw.settable(Length.ofInches(size.targetInches(), Rounding.HALF_UP));
    }

    /** The shrinkage taken for both faces. */
    record Shrinkage(String model, double thicknessPercent, double widthPercent, Working working) {
        static Shrinkage of(Species species, double moisture) {
            ShrinkageModel line = ShrinkageModel.straightLine();
            if (line.appliesTo(species)) {
                double percent = line.percent(species, Face.WIDTH, 0, moisture);
                return new Shrinkage(line.label(), percent, percent, line.working(species, Face.WIDTH, 0, moisture));
            }
            ShrinkageModel lumber = ShrinkageModel.lumberEquation();
            if (lumber.appliesTo(species) && lumber.moisture().holds(moisture)) {
                return new Shrinkage(
                        lumber.label(),
                        lumber.percent(species, Face.THICKNESS, 0, moisture),
                        lumber.percent(species, Face.WIDTH, 0, moisture),
                        lumber.working(species, Face.WIDTH, 0, moisture));
            }
            throw new OutOfDomainException(
                    "shrinkage of " + species.commonName(),
                    "not known",
                    "",
                    "species with a printed shrinkage",
                    "name a related species whose shrinkage is known, or ask for the pieces dressed green");
        }
    }

    /** Pieces of one size and length. */
    record Pieces(Product product, FallDown fallDown, Length finishedThickness, Length finishedWidth) implements Item {

        static Pieces of(Product piece, FallDown ofDrying) {
            Product.Section finished = piece.finished();
            return new Pieces(piece, ofDrying.of(piece.surface()), finished.thickness(), finished.width());
        }

        @Override
        public String id() {
            return product.id();
        }

        @Override
        public Wood wood() {
            return product.wood();
        }

        @Override
        public Surface surface() {
            return product.surface();
        }

        @Override
        public double moisturePercent() {
            return product.moisturePercent();
        }

        @Override
        public String label() {
            return product.size().words() + ", " + shown(product.length()) + ", "
                    + product.surface().words()
                    + product.wane().map(Pieces::words).orElse("");
        }

        @Override
        public String unit() {
            return "pieces";
        }

        @Override
        public double wanted() {
            return product.quantity();
        }

        @Override
        public double toSaw() {
            return fallDown.piecesToSaw(product.quantity());
        }

        @Override
        public Size priceSize() {
            return product.size();
        }

        @Override
        public double amount(SawnPiece piece, GreenSize green) {
            return 1;
        }

        @Override
        public double tally(SawnPiece piece, GreenSize green) {
            return feetPerUnit();
        }

        private static String words(WaneLimit limit) {
            Standing standing = limit.source().standing();
            return ", wane up to " + limit.grade() + (standing == Standing.MEMORY ? " [" + standing.label() + "]" : "");
        }

        @Override
        public double feetPerUnit() {
            return product.tallyPerPiece().value();
        }

        @Override
        public PieceOption option(GreenSize green, Length step, double worthPerUnit) {
            Wane wane = product.wane()
                    .map(limit -> Wane.within(
                            limit, finishedThickness, finishedWidth, green.thicknessToSaw(), green.widthToSaw()))
                    .orElse(Wane.NONE);
            return PieceOption.fixed(
                            id(),
                            green.thicknessToSaw(),
                            green.widthToSaw(),
                            List.of(new LengthWorth(fallDown.lengthToSaw(product.length()), worthPerUnit)))
                    .withWane(wane);
        }
    }

    /** Boards of random width for an area. */
    record Boards(CoverArea wantedArea, FallDown fallDown, Length finishedThickness) implements Item {

        static Boards of(CoverArea area, FallDown ofDrying) {
            return new Boards(area, ofDrying.of(area.surface()), area.finishedThickness());
        }

        @Override
        public String id() {
            return wantedArea.id();
        }

        @Override
        public Wood wood() {
            return wantedArea.wood();
        }

        @Override
        public Surface surface() {
            return wantedArea.surface();
        }

        @Override
        public double moisturePercent() {
            return wantedArea.moisturePercent();
        }

        @Override
        public String label() {
            return "boards " + finishedThickness + " thick, "
                    + wantedArea.leastWidth() + " to "
                    + wantedArea.greatestWidth() + " wide, "
                    + wantedArea.surface().words();
        }

        @Override
        public String unit() {
            return "m2";
        }

        @Override
        public double wanted() {
            return wantedArea.squareMetres();
        }

        @Override
        public double toSaw() {
            return fallDown.amountToSaw(wantedArea.squareMetres() * (1 + wantedArea.wastePercent() / 100));
        }

        @Override
        public Length finishedWidth() {
            return wantedArea.leastWidth();
        }

        @Override
        public Size priceSize() {
            Length thickness = wantedArea.thickness();
            return new Size(
                    wantedArea.nominalThickness(), thickness, Length.max(thickness, wantedArea.greatestWidth()));
        }

        @Override
        public double amount(SawnPiece piece, GreenSize green) {
            return wantedArea.coveredBy(finishedWidth(piece.width(), green), fallDown.lengthKept(piece.length()));
        }

        @Override
        public double tally(SawnPiece piece, GreenSize green) {
            return BoardMeasure.boardFeet(
                    tallyThicknessInches(),
                    finishedWidth(piece.width(), green).toInches(),
                    fallDown.lengthKept(piece.length()).toFeet());
        }

        /** A square metre and its overlap; the mean of the widths stands for all. */
        @Override
        public double feetPerUnit() {
            double width = (wantedArea.leastWidth().toInches()
                            + wantedArea.greatestWidth().toInches())
                    / 2;
            double net = width - wantedArea.overlap().toInches();
            return tallyThicknessInches() * (width / net) / (0.3048 * 0.3048);
        }

        /** The thickness under which boards are counted: the nominal one, or what they measure but no less than an inch. */
        double tallyThicknessInches() {
            return wantedArea.tallyThickness().toInches();
        }

        /** The width that a board keeps when it has dried, is planed, and the saw has scattered to the thin side. */
        private Length finishedWidth(Length greenWidth, GreenSize green) {
            double margin = green.width().targetInches() - green.width().criticalInches();
            Length sure = Length.ofInches(greenWidth.toInches() - margin, Rounding.DOWN);
            Length width = Length.ofInches(green.width().planedInches(sure), Rounding.DOWN);
            return Length.max(wantedArea.leastWidth(), Length.min(wantedArea.greatestWidth(), width));
        }

        @Override
        public PieceOption option(GreenSize green, Length step, double worthPerUnit) {
            Length least = green.widthToSaw();
            Length widthStep = WIDTH_STEP.roundedTo(step, Rounding.UP);
            Length greatest = least;
            double covered = perWidth(least, green);
            while (finishedWidth(greatest, green).compareTo(wantedArea.greatestWidth()) < 0) {
                greatest = greatest.plus(widthStep);
                covered = Math.max(covered, perWidth(greatest, green));
            }
            // What a board covers is not in proportion to its width: the overlap is lost once. Every width is
            // priced by the one that covers most for its width, so that no pattern's worth is taken too low.
            double most = covered;
            List<LengthWorth> lengths = wantedArea.lengths().stream()
                    .map(length -> new LengthWorth(
                            fallDown.lengthToSaw(length), worthPerUnit * most * least.toMetres() * length.toMetres()))
                    .toList();
            return new PieceOption(id(), green.thicknessToSaw(), least, greatest, widthStep, lengths, Wane.NONE);
        }

        /** The width that shows of a board for each unit of its green width. */
        private double perWidth(Length greenWidth, GreenSize green) {
            return finishedWidth(greenWidth, green).minus(wantedArea.overlap()).toMetres() / greenWidth.toMetres();
        }
    }

    /** Boards that keep their natural edges. */
    record NaturalEdges(NaturalEdge board, FallDown fallDown) implements Item {

        static NaturalEdges of(NaturalEdge board, FallDown ofDrying) {
            return new NaturalEdges(board, ofDrying.of(board.surface()));
        }

        @Override
        public String id() {
            return board.id();
        }

        @Override
        public Wood wood() {
            return board.wood();
        }

        @Override
        public Surface surface() {
            return board.surface();
        }

        @Override
        public double moisturePercent() {
            return board.moisturePercent();
        }

        @Override
        public String label() {
            return "natural edges, " + board.thickness() + " thick, " + board.leastWidth() + " wide or more, "
                    + board.lengths().stream().map(Item::shown).collect(Collectors.joining("; ")) + ", "
                    + board.surface().words();
        }

        @Override
        public String unit() {
            return "pieces";
        }

        @Override
        public double wanted() {
            return board.quantity();
        }

        @Override
        public double toSaw() {
            return fallDown.piecesToSaw(board.quantity());
        }

        @Override
        public Length finishedThickness() {
            return board.thickness();
        }

        @Override
        public Length finishedWidth() {
            return board.leastWidth();
        }

        @Override
        public boolean sawnEdges() {
            return false;
        }

        @Override
        public Size priceSize() {
            return new Size(false, board.thickness(), board.leastWidth());
        }

        @Override
        public double amount(SawnPiece piece, GreenSize green) {
            return 1;
        }

        @Override
        public double tally(SawnPiece piece, GreenSize green) {
            return board.tally(fallDown.lengthKept(piece.length())).value();
        }

        /** The shortest that will do. */
        @Override
        public double feetPerUnit() {
            return board.tally(board.lengths().get(0)).value();
        }

        /** A wider or longer one meets the need no better, so none is paid more. */
        @Override
        public PieceOption option(GreenSize green, Length step, double worthPerUnit) {
            Length width = green.widthToSaw();
            List<LengthWorth> lengths = board.lengths().stream()
                    .map(length -> new LengthWorth(fallDown.lengthToSaw(length), worthPerUnit))
                    .toList();
            return PieceOption.unedged(
                    id(), green.thicknessToSaw(), width, width, step, PieceOption.Edges.BARK_LEAST_WIDTH, lengths);
        }
    }

    /** As it was given: in feet where that is exact, otherwise metric. */
    private static String shown(Length length) {
        boolean inches = length.equals(length.roundedTo(Length.inches(1, 64), Rounding.DOWN));
        return inches ? length.inFeet(64, Rounding.DOWN) : length.toString();
    }
}
