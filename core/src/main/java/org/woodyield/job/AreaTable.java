package org.woodyield.job;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.woodyield.log.Log;
import org.woodyield.lumber.CoverArea;
import org.woodyield.lumber.FallDown;
import org.woodyield.lumber.Product.Size;
import org.woodyield.lumber.Product.Surface;
import org.woodyield.lumber.Product.Wood;
import org.woodyield.measure.Domain;
import org.woodyield.measure.Length;
import org.woodyield.measure.Rounding;
import org.woodyield.plan.JobInput.Assumption;
import org.woodyield.source.Sources;
import org.woodyield.wood.Species;

/** Reads the areas to cover. */
final class AreaTable {

    private static final String ID = "id";
    private static final String AREA = "area";
    private static final String THICKNESS = "thickness";
    private static final String LEAST = "least-width";
    private static final String GREATEST = "greatest-width";
    private static final String OVERLAP = "overlap";
    private static final String LENGTHS = "lengths";
    private static final String WASTE = "waste";
    private static final String WOOD = "wood";
    private static final String SURFACE = "surface";
    private static final String MOISTURE = "moisture";

    static final List<Table.Column> COLUMNS = List.of(
            Table.Column.required(ID),
            Table.Column.required(AREA),
            Table.Column.required(THICKNESS),
            Table.Column.required(LEAST),
            Table.Column.optional(GREATEST),
            Table.Column.optional(OVERLAP),
            Table.Column.required(LENGTHS),
            Table.Column.optional(WASTE),
            Table.Column.required(WOOD),
            Table.Column.required(SURFACE),
            Table.Column.required(MOISTURE));

    private static final Domain AREAS = Domain.of("area", "m2", 0.01, 100_000);
    private static final Domain WASTES = Domain.of("waste", "%", 0, 100);
    private static final double USUAL_WASTE = 10;
    private static final Length WIDEST = Length.millimetres(1000);

    private record Entry(CoverArea area, Table.Row row) {}

    private final List<Entry> entries = new ArrayList<>();
    private final List<Assumption> assumptions = new ArrayList<>();

    static AreaTable read(List<Table.Row> rows, Names names) {
        AreaTable table = new AreaTable();
        rows.forEach(row -> table.row(row, names));
        return table;
    }

    List<CoverArea> areas() {
        return entries.stream().map(Entry::area).toList();
    }

    List<Assumption> assumptions() {
        return List.copyOf(assumptions);
    }

    private void row(Table.Row row, Names names) {
        Optional<String> id = names.read(row.cell(ID), "a name of your own for the area");
        Optional<Double> area = row.cell(AREA).quantity(Units.AREA, AREAS);
        Optional<Sizes.Thickness> thickness = Sizes.thickness(row.cell(THICKNESS));
        Optional<Length> least = row.cell(LEAST).lengthUpTo(WIDEST, "give the width of a board at its final moisture");
        Optional<Length> greatest = row.cellIfAny(GREATEST)
                .map(cell -> cell.lengthUpTo(WIDEST, "give the width of a board at its final moisture"))
                .orElse(least);
        Optional<Length> overlap = row.cellIfAny(OVERLAP)
                .map(cell -> cell.lengthOrNoneUpTo(WIDEST, "give the part of a board that the next one covers"))
                .orElse(Optional.of(Length.ZERO));
        Optional<List<Length>> lengths = Sizes.lengths(row.cell(LENGTHS));
        Optional<Double> waste = row.cellIfAny(WASTE)
                .map(cell -> cell.quantity(Units.PERCENT, WASTES))
                .orElse(Optional.of(USUAL_WASTE));
        Optional<Wood> wood = Woods.read(row.cell(WOOD));
        Optional<Surface> surface = row.cell(SURFACE).choice(Choices.SURFACE);
        Optional<Double> moisture = Woods.moisture(row.cell(MOISTURE), surface);
        if (thickness.isPresent() && thickness.get().nominal() && surface.isPresent()) {
            // Any width does here: only the thickness is looked up.
            Length width = Length.max(thickness.get().length(), Length.inches(6));
            if (Sizes.finished(
                            row.cell(THICKNESS), new Size(true, thickness.get().length(), width), surface.get())
                    .isEmpty()) {
                thickness = Optional.empty();
            }
        }
        if (least.isPresent() && greatest.isPresent() && greatest.get().compareTo(least.get()) < 0) {
            row.cell(GREATEST).refuse("no less than the least width, " + least.get(), "change the two");
            greatest = Optional.empty();
        }
        if (least.isPresent() && overlap.isPresent() && overlap.get().compareTo(least.get()) >= 0) {
            row.cell(OVERLAP).refuse("less than the least width, " + least.get(), "nothing of such a board would show");
            overlap = Optional.empty();
        }
        if (id.isEmpty()
                || area.isEmpty()
                || thickness.isEmpty()
                || least.isEmpty()
                || greatest.isEmpty()
                || overlap.isEmpty()
                || lengths.isEmpty()
                || waste.isEmpty()
                || wood.isEmpty()
                || surface.isEmpty()
                || moisture.isEmpty()) {
            return;
        }
        if (row.cellIfAny(WASTE).isEmpty()) {
            assumptions.add(new Assumption(
                    "waste when " + id.get() + " is covered", (long) USUAL_WASTE + " %", Sources.get("trade")));
        }
        entries.add(new Entry(
                new CoverArea(
                        id.get(),
                        area.get(),
                        thickness.get().nominal(),
                        thickness.get().length(),
                        least.get(),
                        greatest.get(),
                        overlap.get(),
                        lengths.get(),
                        waste.get(),
                        wood.get(),
                        surface.get(),
                        moisture.get()),
                row));
    }

    /** The moistures to which wood that is finished dry has to shrink, as far as one of these areas takes the species. */
    List<Double> dryMoistures(Species species) {
        return entries.stream()
                .map(Entry::area)
                .filter(area -> area.wood().accepts(species) && area.surface() != Surface.DRESSED_GREEN)
                .map(CoverArea::moisturePercent)
                .toList();
    }

    /** Notes each area whose boards no log can give: none is of the wood, or none is as long as one of the boards. */
    void refuseImpossible(List<Log> logs, FallDown ofDrying) {
        for (Entry entry : entries) {
            Wood wood = entry.area().wood();
            Optional<Length> longest = logs.stream()
                    .filter(log -> wood.accepts(log.species()))
                    .map(Log::length)
                    .max(Comparator.naturalOrder());
            if (longest.isEmpty()) {
                entry.row().cell(WOOD).refuse("the wood of one of the logs", "no log can give it; change the wood");
                continue;
            }
            List<Length> lengths = entry.area().lengths();
            FallDown losses = ofDrying.of(entry.area().surface());
            if (losses.lengthToSaw(lengths.get(lengths.size() - 1)).compareTo(longest.get()) > 0) {
                boolean trimmed = losses.endTrim().isPositive();
                entry.row()
                        .cell(LENGTHS)
                        .refuse(
                                "up to " + longest.get().inFeet(16, Rounding.DOWN) + ", the longest log of "
                                        + wood.words() + (trimmed ? ", the trim of both ends included" : ""),
                                "no log can give the longer ones; leave them out");
            }
        }
    }
}
