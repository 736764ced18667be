package org.woodyield.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.woodyield.log.Log;
import org.woodyield.lumber.FallDown;
import org.woodyield.lumber.NaturalEdge;
import org.woodyield.lumber.Product;
import org.woodyield.lumber.Product.Surface;
import org.woodyield.lumber.Product.Wood;
import org.woodyield.measure.Length;
import org.woodyield.wood.Species;

/** Reads the boards wanted with natural edges. */
final class NaturalEdgeTable {

    private static final String ID = "id";
    private static final String THICKNESS = "thickness";
    private static final String LEAST = "least-width";
    private static final String LENGTHS = "lengths";
    private static final String QUANTITY = "quantity";
    private static final String WOOD = "wood";
    private static final String SURFACE = "surface";
    private static final String MOISTURE = "moisture";

    static final List<Table.Column> COLUMNS = List.of(
            Table.Column.required(ID),
            Table.Column.required(THICKNESS),
            Table.Column.required(LEAST),
            Table.Column.required(LENGTHS),
            Table.Column.required(QUANTITY),
            Table.Column.required(WOOD),
            Table.Column.required(SURFACE),
            Table.Column.required(MOISTURE));

    private static final Length GREATEST = Length.millimetres(1000);

    private record Entry(NaturalEdge board, Table.Row row) {}

    private final List<Entry> entries = new ArrayList<>();

    static NaturalEdgeTable read(List<Table.Row> rows, Names names) {
        NaturalEdgeTable table = new NaturalEdgeTable();
        rows.forEach(row -> table.row(row, names));
        return table;
    }

    List<NaturalEdge> boards() {
        return entries.stream().map(Entry::board).toList();
    }

    private void row(Table.Row row, Names names) {
        Optional<String> id = names.read(row.cell(ID), "a name of your own for the boards");
        Optional<Length> thickness =
                row.cell(THICKNESS).lengthUpTo(GREATEST, "give what the board measures at its final moisture");
        Optional<Length> least =
                row.cell(LEAST).lengthUpTo(GREATEST, "give the least width inside bark at the final moisture");
        Optional<List<Length>> lengths = Sizes.lengths(row.cell(LENGTHS));
        Optional<Integer> quantity = row.cell(QUANTITY).count(1, 100_000);
        Optional<Wood> wood = Woods.read(row.cell(WOOD));
        Optional<Surface> surface = row.cell(SURFACE).choice(Choices.SURFACE);
        Optional<Double> moisture = Woods.moisture(row.cell(MOISTURE), surface);
        if (thickness.isPresent() && least.isPresent() && least.get().compareTo(thickness.get()) < 0) {
            row.cell(LEAST).refuse("the thickness or more, " + thickness.get(), "change the two");
            return;
        }
        if (id.isPresent()
                && thickness.isPresent()
                && least.isPresent()
                && lengths.isPresent()
                && quantity.isPresent()
                && wood.isPresent()
                && surface.isPresent()
                && moisture.isPresent()) {
            entries.add(new Entry(
                    new NaturalEdge(
                            id.get(),
                            thickness.get(),
                            least.get(),
                            lengths.get(),
                            quantity.get(),
                            wood.get(),
                            surface.get(),
                            moisture.get()),
                    row));
        }
    }

    /** The moistures to which wood that is finished dry has to shrink, as far as one of these boards takes the species. */
    List<Double> dryMoistures(Species species) {
        return boards().stream()
                .filter(board -> board.wood().accepts(species) && board.surface() != Surface.DRESSED_GREEN)
                .map(NaturalEdge::moisturePercent)
                .toList();
    }

    /** Notes each board that no log can give: none is of its wood, none is long enough, or none is wide enough there. */
    void refuseImpossible(List<Log> logs, FallDown ofDrying) {
        for (Entry entry : entries) {
            NaturalEdge board = entry.board();
            List<Log> ofWood = logs.stream()
                    .filter(log -> board.wood().accepts(log.species()))
                    .toList();
            if (ofWood.isEmpty()) {
                entry.row().cell(WOOD).refuse("the wood of one of the logs", "no log can give it; change the wood");
                continue;
            }
            FallDown losses = ofDrying.of(board.surface());
            Length longest = board.lengths().get(board.lengths().size() - 1);
            if (ofWood.stream().noneMatch(log -> losses.lengthToSaw(longest).compareTo(log.length()) <= 0)) {
                entry.row()
                        .cell(LENGTHS)
                        .refuse(
                                "up to the longest log of " + board.wood().words()
                                        + ", what is trimmed from both ends included",
                                "no log can give the longer ones; leave them out");
                continue;
            }
            Length shortest = losses.lengthToSaw(board.lengths().get(0));
            double diagonal = new Product.Section(board.thickness(), board.leastWidth()).diagonalMillimetres();
            double widest = ofWood.stream()
                    .filter(log -> log.length().compareTo(shortest) >= 0)
                    .mapToDouble(log -> log.longestDiagonal(shortest).toMillimetres())
                    .max()
                    .orElseThrow();
            if (diagonal > widest) {
                entry.row()
                        .cell(LEAST)
                        .refuse(
                                "no more from corner to corner than " + (long) widest + " mm in this length and wood",
                                "no log can give it; choose a lesser width or length");
            }
        }
    }
}
