package org.woodyield.job;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.woodyield.log.Log;
import org.woodyield.lumber.FallDown;
import org.woodyield.lumber.Product;
import org.woodyield.lumber.Product.Size;
import org.woodyield.lumber.Product.Surface;
import org.woodyield.lumber.Product.Wood;
import org.woodyield.lumber.WaneLimit;
import org.woodyield.measure.Domain;
import org.woodyield.measure.Length;
import org.woodyield.measure.Rounding;
import org.woodyield.source.Sources;
import org.woodyield.wood.NearestNames;
import org.woodyield.wood.Species;

/** Reads the pieces wanted. */
final class WantedTable {

    private static final String ID = "id";
    private static final String SIZE = "size";
    private static final String LENGTH = "length";
    private static final String QUANTITY = "quantity";
    private static final String WOOD = "wood";
    private static final String SURFACE = "surface";
    private static final String MOISTURE = "moisture";
    private static final String WANE = "wane";

    static final List<Table.Column> COLUMNS = List.of(
            Table.Column.required(ID),
            Table.Column.required(SIZE),
            Table.Column.required(LENGTH),
            Table.Column.required(QUANTITY),
            Table.Column.required(WOOD),
            Table.Column.required(SURFACE),
            Table.Column.required(MOISTURE),
            Table.Column.optional(WANE));

    /** No wane. */
    private static final WaneLimit SQUARE = new WaneLimit("none", 0, 0, Sources.get("definition"));

    private static final Domain WANES = Domain.of("wane", "%", 0, 50);
    private static final int MOST = 100_000;

    private record Entry(Product piece, Table.Row row) {}

    private final List<Entry> entries = new ArrayList<>();

    static WantedTable read(List<Table.Row> rows, Names names) {
        WantedTable table = new WantedTable();
        rows.forEach(row -> table.row(row, names));
        return table;
    }

    List<Product> pieces() {
        return entries.stream().map(Entry::piece).toList();
    }

    private void row(Table.Row row, Names names) {
        Optional<String> id = names.read(row.cell(ID), "a name of your own for the pieces");
        Optional<Size> size = Sizes.size(row.cell(SIZE));
        Optional<Length> length =
                row.cell(LENGTH).length(Sizes.SHORTEST, Sizes.LONGEST, Sizes.LENGTHS, Sizes.OTHER_LENGTH);
        Optional<Integer> quantity = row.cell(QUANTITY).count(1, MOST);
        Optional<Wood> wood = Woods.read(row.cell(WOOD));
        Optional<Surface> surface = row.cell(SURFACE).choice(Choices.SURFACE);
        Optional<Double> moisture = Woods.moisture(row.cell(MOISTURE), surface);
        Optional<WaneLimit> wane = row.cellIfAny(WANE).map(WantedTable::wane).orElse(Optional.of(SQUARE));
        Optional<Product.Section> finished = size.isPresent() && surface.isPresent()
                ? Sizes.finished(row.cell(SIZE), size.get(), surface.get())
                : Optional.empty();
        if (id.isPresent()
                && finished.isPresent()
                && size.isPresent()
                && length.isPresent()
                && quantity.isPresent()
                && wood.isPresent()
                && surface.isPresent()
                && moisture.isPresent()
                && wane.isPresent()) {
            entries.add(new Entry(
                    new Product(
                            id.get(),
                            size.get(),
                            length.get(),
                            quantity.get(),
                            wood.get(),
                            surface.get(),
                            moisture.get(),
                            wane.filter(limit -> limit.widthShare() > 0)),
                    row));
        }
    }

    /** None, the limit of a grade, or one share for thickness and width. */
    private static Optional<WaneLimit> wane(Cell cell) {
        if (cell.text().equalsIgnoreCase("none")) {
            return Optional.of(SQUARE);
        }
        if (cell.text().endsWith("%")) {
            return cell.quantity(Units.PERCENT, WANES)
                    .map(share -> new WaneLimit(cell.text(), share / 100, share / 100, Sources.get("user")));
        }
        List<String> grades = WaneLimit.all().stream().map(WaneLimit::grade).toList();
        Optional<WaneLimit> limit = WaneLimit.all().stream()
                .filter(each -> each.grade().equalsIgnoreCase(cell.text()))
                .findFirst();
        if (limit.isEmpty()) {
            cell.refuse(
                    "none, a share from 0 % to 50 %, or the limit of a grade: " + String.join(", ", grades),
                    NearestNames.question(cell.text(), grades));
        }
        return limit;
    }

    /** The moistures to which wood that is finished dry has to shrink, as far as one of these pieces takes the species. */
    List<Double> dryMoistures(Species species) {
        return entries.stream()
                .map(Entry::piece)
                .filter(piece -> piece.wood().accepts(species) && piece.surface() != Surface.DRESSED_GREEN)
                .map(Product::moisturePercent)
                .toList();
    }

    /**
     * Notes each piece that no log can give: none is of its wood, none is long enough, or none is thick enough at the place
     * where the piece would end, the diagonal of its finished section against the longer diameter. What passes may still be
     * short in the plan. The ends that are cut off when the piece is dry count with it.
     */
    void refuseImpossible(List<Log> logs, FallDown ofDrying) {
        for (Entry entry : entries) {
            Product piece = entry.piece();
            List<Log> ofWood = logs.stream()
                    .filter(log -> piece.wood().accepts(log.species()))
                    .toList();
            if (ofWood.isEmpty()) {
                entry.row().cell(WOOD).refuse("the wood of one of the logs", "no log can give it; change the wood");
                continue;
            }
            Length longest = ofWood.stream()
                    .map(Log::length)
                    .max(Comparator.naturalOrder())
                    .orElseThrow();
            FallDown losses = ofDrying.of(piece.surface());
            Length sawn = losses.lengthToSaw(piece.length());
            if (sawn.compareTo(longest) > 0) {
                boolean trimmed = losses.endTrim().isPositive();
                entry.row()
                        .cell(LENGTH)
                        .refuse(
                                "up to " + longest.inFeet(16, Rounding.DOWN) + ", the longest log of "
                                        + piece.wood().words() + (trimmed ? ", the trim of both ends included" : ""),
                                "no log can give it; shorten or splice it");
                continue;
            }
            double diagonal = piece.leastDiameterMillimetres();
            double widest = ofWood.stream()
                    .filter(log -> log.length().compareTo(sawn) >= 0)
                    .mapToDouble(log -> log.longestDiagonal(sawn).toMillimetres())
                    .max()
                    .orElseThrow();
            if (diagonal > widest) {
                entry.row()
                        .cell(SIZE)
                        .refuse(
                                "a diagonal up to " + Math.round(widest) + " mm in this length and wood, wane left out",
                                "no log can give it; choose a lesser size or length");
            }
        }
    }
}
