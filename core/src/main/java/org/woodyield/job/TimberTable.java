package org.woodyield.job;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.woodyield.log.BarkRatio;
import org.woodyield.log.MeasuredStem;
import org.woodyield.log.StemPoint;
import org.woodyield.log.StemProfile;
import org.woodyield.measure.Length;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.plan.TimberTrees.Tree;

/**
 * Standing trees by form class, or stems measured at several heights. A row that cannot be used is named and counted. A measured
 * stem without one of its places would be another stem, so it is left out whole; where nobody can say whose place a row is, all
 * measured stems are.
 */
final class TimberTable {

    static final String ID = "id";
    static final String HEIGHT = "height";
    static final String DIAMETER = "diameter";
    private static final List<Table.Column> COLUMNS = Stream.of(
                    List.of(Table.Column.required(ID)),
                    StandingTree.COLUMNS,
                    List.of(Table.Column.optional(HEIGHT), Table.Column.optional(DIAMETER)))
            .flatMap(List::stream)
            .toList();

    /** Where each name stands first. */
    private final Map<String, Table.Row> first = new LinkedHashMap<>();

    private final Map<String, StemProfile> profiles = new HashMap<>();
    private final Map<String, List<StemPoint>> places = new LinkedHashMap<>();
    private final Set<String> measured = new HashSet<>();
    private final Set<String> spoilt = new LinkedHashSet<>();
    private boolean ofAnyStem;

    private TimberTable() {}

    /** What a row says: a tree by form class, or one place of a measured stem. */
    private record Told(String id, Optional<StemProfile> stem, Optional<StemPoint> place) {}

    /**
     * Reads a table.
     *
     * @param remarks what is said of single trees, in sentences without their points
     * @param basis what is said of the table, in sentences
     * @return the trees in the order in which they first stand
     * @throws BadInputException if no row can be used
     */
    static List<Tree> read(String name, Terminal terminal, List<String> remarks, List<String> basis)
            throws IOException {
        RowByRow table = RowByRow.of(
                Sheets.file(name),
                Sheets.text(name, ID + ", " + StandingTree.BREAST_HEIGHT + ", " + StandingTree.FORM_CLASS),
                COLUMNS,
                "a row for each tree",
                "add the trees");
        return new TimberTable().trees(table, terminal, remarks, basis);
    }

    private List<Tree> trees(RowByRow table, Terminal terminal, List<String> remarks, List<String> basis) {
        table.read(this::told, (told, line) -> {
            told.stem().ifPresent(stem -> profiles.put(told.id(), stem));
            told.place()
                    .ifPresent(place -> places.computeIfAbsent(told.id(), key -> new ArrayList<>())
                            .add(place));
        });
        table.ragged().forEach(this::spoil);
        int used = profiles.size();
        for (Map.Entry<String, Table.Row> each : first.entrySet()) {
            String id = each.getKey();
            List<StemPoint> points = places.getOrDefault(id, List.of());
            if (points.isEmpty()) {
                continue;
            }
            if (spoilt.contains(id)) {
                remarks.add("Tree " + id + " is left out whole: a place of it cannot be used, and without it the stem"
                        + " would be another");
                continue;
            }
            if (ofAnyStem) {
                remarks.add(
                        "Tree " + id + " is left out whole: a row of which nobody can say whose it is may be a place of"
                                + " it, and without it the stem would be another");
                continue;
            }
            Optional<MeasuredStem> stem = table.readAt(each.getValue(), row -> stem(row, points));
            if (stem.isPresent()) {
                Swellings.words("Tree " + id, points, stem.get()).ifPresent(remarks::add);
                profiles.put(id, stem.get());
                used += points.size();
            }
        }
        if (used == 0) {
            remarks.forEach(terminal::say);
        }
        table.tellAll(terminal, used).ifPresent(basis::add);
        return first.keySet().stream()
                .flatMap(id -> Optional.ofNullable(profiles.get(id)).map(profile -> new Tree(id, profile)).stream())
                .toList();
    }

    private Optional<Told> told(Table.Row row) {
        Optional<String> name = row.cell(ID).words("a name for the tree");
        if (name.isEmpty()) {
            ofAnyStem |= has(row, HEIGHT) || has(row, DIAMETER) || !isByFormClass(row);
            return Optional.empty();
        }
        String id = name.get();
        Table.Row earlier = first.putIfAbsent(id, row);
        boolean place = has(row, HEIGHT) || has(row, DIAMETER) || (measured.contains(id) && !isByFormClass(row));
        if (earlier != null && !(place && measured.contains(id))) {
            row.cell(ID)
                    .refuse(
                            "each tree once, or several places of a measured stem",
                            "it stands in line " + earlier.line() + " already; rename one of the two");
            return Optional.empty();
        }
        if (!place) {
            return StandingTree.read(row::cell).map(stem -> new Told(id, Optional.of(stem), Optional.empty()));
        }
        measured.add(id);
        Optional<StemPoint> point = place(row);
        if (point.isEmpty()) {
            spoilt.add(id);
        }
        return point.map(one -> new Told(id, Optional.empty(), Optional.of(one)));
    }

    /**
     * Finds the stem that lacks a place for a row with a cell too many or too few. Its cells may have moved, so that the name is
     * looked for in all of them; what stands in the place of the name is that of another tree only if it does not begin as a measure.
     */
    private void spoil(Table.Ragged row) {
        Optional<String> id = row.cell(ID);
        List<String> names = id.filter(first::containsKey)
                .map(List::of)
                .orElseGet(() -> row.cells().stream()
                        .map(String::strip)
                        .filter(first::containsKey)
                        .toList());
        spoilt.addAll(names);
        ofAnyStem |= names.isEmpty()
                && id.filter(text -> !text.matches("[-+.\\d].*")).isEmpty();
    }

    private static boolean isByFormClass(Table.Row row) {
        return has(row, StandingTree.BREAST_HEIGHT) || has(row, StandingTree.FORM_CLASS);
    }

    private static boolean has(Table.Row row, String column) {
        return row.cellIfAny(column).isPresent();
    }

    private static Optional<StemPoint> place(Table.Row row) {
        Optional<Length> height = row.cell(HEIGHT).lengthOrNoneUpTo(StandingTree.HIGHEST, "measure from the ground");
        Optional<Length> wide = row.cell(DIAMETER).lengthOrNoneUpTo(StandingTree.WIDEST, "check the unit");
        Cell ratio = row.cell(StandingTree.BARK_RATIO);
        Optional<BarkRatio> bark = StandingTree.barkRatio(ratio);
        if (height.isEmpty() || wide.isEmpty() || ratio.isUnread(bark)) {
            return Optional.empty();
        }
        double across = wide.get().toInches();
        return Optional.of(new StemPoint(
                height.get().toFeet(),
                bark.isPresent() && across > 0 ? bark.get().inside(across) : across));
    }

    private static Optional<MeasuredStem> stem(Table.Row row, List<StemPoint> points) {
        try {
            return Optional.of(MeasuredStem.withoutSwellings(points));
        } catch (OutOfDomainException e) {
            row.cell(DIAMETER).refuse(e);
            return Optional.empty();
        }
    }
}
