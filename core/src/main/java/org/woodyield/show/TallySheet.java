package org.woodyield.show;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.woodyield.lumber.BoardMeasure;
import org.woodyield.lumber.BoardMeasure.Exact;
import org.woodyield.lumber.HardwoodTally;
import org.woodyield.lumber.HardwoodThickness;
import org.woodyield.lumber.JapaneseMeasure;
import org.woodyield.lumber.KilnNet;
import org.woodyield.lumber.NominalSize;
import org.woodyield.lumber.SoftwoodSizes;
import org.woodyield.lumber.Tally;
import org.woodyield.measure.Length;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.measure.Rounding;
import org.woodyield.measure.Volume;
import org.woodyield.show.Block.Derivation;
import org.woodyield.show.Block.Points;
import org.woodyield.show.Block.Section;
import org.woodyield.show.Block.Tabular;
import org.woodyield.show.PlanTable.Cell;
import org.woodyield.source.Source;
import org.woodyield.source.Sources;

/**
 * A tally of lumber laid out: its rows, its sums by size, species and grade, and in all. All sums are exact fractions, so that
 * they depend neither on the order of the rows nor on how they are grouped.
 */
public final class TallySheet {

    /**
     * Equal pieces that are measured, not named.
     *
     * @param thickness as measured, 1 to 1000 mm
     * @param width as measured, 1 to 1000 mm
     * @param length as measured, 1 to 30 000 mm
     * @param count how many
     * @param species as the table names it, possibly empty
     * @param grade as the table names it, possibly empty
     */
    public record Measured(Length thickness, Length width, Length length, int count, String species, String grade) {
        /**
         * Checks that Japan's measure takes this.
         *
         * @throws OutOfDomainException if a dimension is outside
         */
        public Measured {
            japan(thickness, width, length);
        }

        private double japan() {
            return japan(thickness, width, length);
        }

        private static double japan(Length thickness, Length width, Length length) {
            return JapaneseMeasure.cubicMetres(
                    thickness.toMillimetres(), width.toMillimetres(), length.toMillimetres());
        }
    }

    /**
     * Equal boards of hardwood.
     *
     * @param board one of them
     * @param count how many
     * @param species as the table names it, possibly empty
     * @param grade as the table names it, possibly empty
     */
    public record Boards(HardwoodTally.Board board, int count, String species, String grade) {}

    /** A column of amounts, each from one of the exact amounts of a part. */
    private record Amount(String header, String key, int index, Unit unit, int decimals) {}

    /** What is counted together, several rows without a length, a bundle without a width too; an amount that cannot be told is empty. */
    private record Part(
            Length thickness,
            Length width,
            Length length,
            String size,
            String species,
            String grade,
            long pieces,
            List<Optional<Exact>> amounts) {}

    /** A sum over parts; an amount that no part has is empty. */
    private static final class Sum {
        private long pieces;
        private final List<Optional<Exact>> amounts;
        private final List<Long> missing;

        Sum(int amounts) {
            this.amounts = new ArrayList<>(Collections.nCopies(amounts, Optional.empty()));
            missing = new ArrayList<>(Collections.nCopies(amounts, 0L));
        }

        void add(Part part) {
            pieces += part.pieces();
            for (int i = 0; i < amounts.size(); i++) {
                Optional<Exact> amount = part.amounts().get(i);
                if (amount.isPresent()) {
                    Exact sum = amounts.get(i).orElse(Exact.ZERO).plus(amount.get());
                    amounts.set(i, Optional.of(sum));
                } else {
                    missing.set(i, missing.get(i) + part.pieces());
                }
            }
        }
    }

    /** By what sums are drawn. */
    private enum By {
        SIZE("size", "Size"),
        SPECIES("species", "Species"),
        GRADE("grade", "Grade");

        private final String key;
        private final String header;

        By(String key, String header) {
            this.key = key;
            this.header = header;
        }

        String name(Part part) {
            return switch (this) {
                case SIZE -> part.size();
                case SPECIES -> part.species();
                case GRADE -> part.grade();
            };
        }

        Comparator<Part> order() {
            return this == SIZE
                    ? Comparator.comparing(Part::thickness).thenComparing(Part::width)
                    : Comparator.comparing(this::name);
        }
    }

    /** What an exact amount is shown in. */
    private enum Unit {
        ITS_OWN,
        CUBIC_FEET,
        BOARD_FEET;

        double of(double amount) {
            return switch (this) {
                case ITS_OWN -> amount;
                case CUBIC_FEET -> new Volume(amount).cubicFeet();
                case BOARD_FEET -> BoardMeasure.ofSolid(new Volume(amount));
            };
        }
    }

    private static final int DECIMALS = 3;
    private static final Length INCH = Length.inches(1);
    private static final String BOARD_FEET = "bf";
    private static final String CUBIC_METRES = "m3";

    private final String title;
    private final String unit;
    private final List<Amount> columns;
    private final List<Part> rows;
    private final List<Part> parts;
    private final List<PlanTable> more;
    private final List<String> notes;
    private final List<Source> sources;
    private final List<Derivation> workings;

    private TallySheet(
            String title,
            String unit,
            List<Amount> columns,
            List<Part> rows,
            List<Part> parts,
            List<PlanTable> more,
            List<String> notes,
            List<Source> sources,
            List<Derivation> workings) {
        this.title = title;
        this.unit = unit;
        this.columns = List.copyOf(columns);
        this.rows = List.copyOf(rows);
        this.parts = List.copyOf(parts);
        this.more = List.copyOf(more);
        this.notes = List.copyOf(notes);
        this.sources = List.copyOf(sources);
        this.workings = List.copyOf(workings);
    }

    /**
     * A tally by nominal size: board feet, and the solid volume of the pieces dressed and dry by PS 20.
     *
     * @param tally one line or more
     * @param rounding of the whole tally to the board foot
     * @param worked whether its working is wanted, which is long
     * @return the sheet
     * @throws OutOfDomainException if the tally has no line
     */
    public static TallySheet nominal(Tally tally, Rounding rounding, boolean worked) {
        requireAny("lines of the tally", tally.lines());
        record Stick(NominalSize size, Length length) {}
        record Each(String size, Exact boardFeet, Optional<Exact> dressed) {}
        // A long tally has few sizes and lengths.
        Map<Stick, Each> sticks = new HashMap<>();
        List<Part> parts = new ArrayList<>();
        for (Tally.Line line : tally.lines()) {
            Each each = sticks.computeIfAbsent(
                    new Stick(line.size(), line.length()),
                    one -> new Each(
                            one.size().toString(),
                            BoardMeasure.exact(one.size(), one.length()),
                            dressed(one.size(), one.length())));
            parts.add(new Part(
                    line.size().thickness(),
                    line.size().width(),
                    line.length(),
                    each.size(),
                    line.species(),
                    line.grade(),
                    line.count(),
                    List.of(
                            Optional.of(each.boardFeet().times(line.count())),
                            each.dressed().map(one -> one.times(line.count())))));
        }
        return new TallySheet(
                "Tally by nominal size",
                BOARD_FEET,
                List.of(
                        new Amount("Board feet", "board-feet", 0, Unit.ITS_OWN, DECIMALS),
                        new Amount("Solid, dressed dry, ft3", "dressed-dry-ft3", 1, Unit.CUBIC_FEET, DECIMALS),
                        new Amount("Solid, dressed dry, m3", "dressed-dry-m3", 1, Unit.ITS_OWN, 4)),
                parts,
                together(parts),
                List.of(),
                List.of(
                        whole(tally.total(), rounding),
                        "A board foot of a tally counts the nominal size; under 1 in thick counts as 1 in. The solid volume is"
                                + " that of the minimum dressed dry size."),
                List.of(Sources.get("navy-lumber"), Sources.get("ps-20"), Sources.get("definition")),
                worked ? List.of(new Derivation("All board feet", tally.wholeBoardFeetWorking(rounding))) : List.of());
    }

    private static Optional<Exact> dressed(NominalSize nominal, Length length) {
        try {
            SoftwoodSizes.Size size = SoftwoodSizes.dressed(nominal, SoftwoodSizes.Condition.DRY);
            return Optional.of(BoardMeasure.exactCubicMetres(size.thickness(), size.width(), length));
        } catch (OutOfDomainException e) {
            return Optional.empty();
        }
    }

    /** Rows that no sum keeps apart in one; which amounts they have depends on their size alone. */
    private static List<Part> together(List<Part> rows) {
        record Alike(Length thickness, Length width, String size, String species, String grade) {}
        Map<Alike, Sum> sums = new LinkedHashMap<>();
        for (Part row : rows) {
            sums.computeIfAbsent(
                            new Alike(row.thickness(), row.width(), row.size(), row.species(), row.grade()),
                            alike -> new Sum(row.amounts().size()))
                    .add(row);
        }
        List<Part> parts = new ArrayList<>();
        sums.forEach((alike, sum) -> parts.add(new Part(
                alike.thickness(),
                alike.width(),
                Length.ZERO,
                alike.size(),
                alike.species(),
                alike.grade(),
                sum.pieces,
                List.copyOf(sum.amounts))));
        return parts;
    }

    private static String whole(Exact boardFeet, Rounding rounding) {
        return "In all " + exact(boardFeet, BOARD_FEET) + " bf, " + NumberText.fixed(boardFeet.rounded(1, rounding), 0)
                + " bf to the whole foot (" + rounding.label() + ", rounded once, at the end).";
    }

    /**
     * A tally of hardwood by surface measure, beside the tally by the ends. Boards of one counted thickness, species and
     * grade are a bundle, within which exact halves go up and down alternately; those under an inch count as an inch.
     *
     * @param boards one or more
     * @param firstHalf where the first exact half of each bundle goes
     * @param end where an exact half of a bundle's board feet goes
     * @param net what is taken off for kiln drying, if anything
     * @param worked whether its working is wanted
     * @return the sheet
     * @throws OutOfDomainException if there is no board, or a rounding is not half up or half down
     */
    public static TallySheet surface(
            List<Boards> boards, Rounding firstHalf, Rounding end, Optional<KilnNet> net, boolean worked) {
        requireAny("boards of the tally", boards);
        record Bundle(Length thickness, String species, String grade) {}
        Map<Bundle, List<Integer>> bundles = new TreeMap<>(Comparator.comparing(Bundle::thickness)
                .thenComparing(Bundle::species)
                .thenComparing(Bundle::grade));
        for (int i = 0; i < boards.size(); i++) {
            Boards row = boards.get(i);
            bundles.computeIfAbsent(
                            new Bundle(row.board().counted(), row.species(), row.grade()), key -> new ArrayList<>())
                    .add(i);
        }
        List<Part> rows = new ArrayList<>();
        List<Integer> order = new ArrayList<>();
        List<Part> parts = new ArrayList<>();
        List<Derivation> workings = new ArrayList<>();
        PlanTable.Builder blocks = PlanTable.of("blocks", "Blocks: how many boards of each surface measure")
                .text("Thickness", "thickness")
                .text("Species", "species")
                .text("Grade", "grade")
                .number("Surface measure, ft2", "surface-ft2")
                .number("Boards", "boards");
        boolean thinner =
                boards.stream().anyMatch(row -> row.board().thickness().compareTo(INCH) < 0);
        double wholeFeet = 0;
        for (Map.Entry<Bundle, List<Integer>> entry : bundles.entrySet()) {
            Bundle bundle = entry.getKey();
            String size = thickness(bundle.thickness())
                    + (thinner && bundle.thickness().equals(INCH) ? " and thinner" : "");
            List<HardwoodTally.Board> one = new ArrayList<>();
            for (int i : entry.getValue()) {
                for (int n = 0; n < boards.get(i).count(); n++) {
                    one.add(boards.get(i).board());
                }
            }
            HardwoodTally tally = new HardwoodTally(one);
            List<Long> measures = tally.surfaceMeasures(firstHalf);
            int next = 0;
            long all = 0;
            for (int i : entry.getValue()) {
                Boards row = boards.get(i);
                long sum = 0;
                for (int n = 0; n < row.count(); n++) {
                    sum += measures.get(next++);
                }
                all += sum;
                order.add(i);
                rows.add(new Part(
                        row.board().thickness(),
                        row.board().width(),
                        row.board().length(),
                        thickness(row.board().thickness()) + " x " + row.board().width(),
                        row.species(),
                        row.grade(),
                        row.count(),
                        amounts(sum, bundle.thickness(), Optional.empty())));
            }
            parts.add(new Part(
                    bundle.thickness(),
                    Length.ZERO,
                    Length.ZERO,
                    size,
                    bundle.species(),
                    bundle.grade(),
                    one.size(),
                    amounts(all, bundle.thickness(), Optional.of(tally.endTally(firstHalf)))));
            tally.blocks(firstHalf)
                    .forEach((thickness, counts) -> counts.forEach((measure, count) -> blocks.row(
                            Cell.text(thickness(thickness)),
                            Cell.text(bundle.species()),
                            Cell.text(bundle.grade()),
                            Cell.number((double) measure, 0),
                            Cell.whole(count))));
            wholeFeet += tally.boardFeet(firstHalf, end);
            if (worked) {
                String of = Stream.of(size, bundle.species(), bundle.grade())
                        .filter(words -> !words.isEmpty())
                        .collect(Collectors.joining(", "));
                workings.add(new Derivation("Bundle " + of, tally.boardFeetWorking(firstHalf, end)));
            }
        }
        List<String> notes = new ArrayList<>();
        notes.add("In all " + NumberText.fixed(wholeFeet, 0)
                + " bf by surface measure, each bundle of one counted thickness, species and grade to the whole foot ("
                + end.label()
                + "). Where the tally by the ends differs, this one holds; it takes each width to the whole"
                + " inch first, an exact half alternately.");
        notes.add("Exact half feet of a bundle go up and down alternately [MEMORY], the first "
                + (firstHalf == Rounding.HALF_UP ? "up" : "down")
                + ": what one row gets depends on its place, what a bundle gets does not.");
        List<Source> sources = new ArrayList<>(List.of(
                Sources.get("nhla-surface-measure"),
                Sources.get("nhla-tally"),
                Sources.get("nhla-halves-memory"),
                Sources.get("hardwood-glossary"),
                Sources.get("ahec-measure")));
        if (net.isPresent()) {
            KilnNet custom = net.get();
            notes.add("Net after kiln drying, if this was tallied green: "
                    + NumberText.fixed(custom.net(wholeFeet), 1) + " bf, " + NumberText.full(custom.percent())
                    + " % taken off by the custom '" + custom.id() + "' ["
                    + custom.source().standing().label() + "].");
            sources.add(custom.source());
            if (worked) {
                workings.add(new Derivation("Net after kiln drying", custom.netWorking(wholeFeet)));
            }
        }
        return new TallySheet(
                "Tally of hardwood",
                BOARD_FEET,
                List.of(
                        new Amount("Board feet by surface measure", "board-feet", 0, Unit.ITS_OWN, DECIMALS),
                        new Amount("Surface measure, ft2", "surface-ft2", 1, Unit.ITS_OWN, 0),
                        new Amount("Board feet by the ends", "end-board-feet", 2, Unit.ITS_OWN, DECIMALS)),
                inOrder(rows, order),
                parts,
                List.of(blocks.build()),
                notes,
                sources,
                workings);
    }

    private static List<Optional<Exact>> amounts(long squareFeet, Length thickness, Optional<Exact> end) {
        return List.of(
                Optional.of(HardwoodTally.boardFeet(squareFeet, thickness)),
                Optional.of(new Exact(BigInteger.valueOf(squareFeet), BigInteger.ONE)),
                end);
    }

    /** The rows as the table had them. */
    private static List<Part> inOrder(List<Part> rows, List<Integer> order) {
        Map<Integer, Part> sorted = new TreeMap<>();
        for (int i = 0; i < rows.size(); i++) {
            sorted.put(order.get(i), rows.get(i));
        }
        return List.copyOf(sorted.values());
    }

    /**
     * A tally by measured size: solid volume, the same as Japan counts it piece by piece, and the board feet that the solid
     * volume holds.
     *
     * @param pieces one or more
     * @param worked whether the working of each size is wanted
     * @return the sheet
     * @throws OutOfDomainException if there is no piece
     */
    public static TallySheet measured(List<Measured> pieces, boolean worked) {
        requireAny("pieces of the tally", pieces);
        List<Part> rows = new ArrayList<>();
        Map<String, Derivation> workings = new LinkedHashMap<>();
        for (Measured piece : pieces) {
            double t = piece.thickness().toMillimetres();
            double w = piece.width().toMillimetres();
            double l = piece.length().toMillimetres();
            String size = NumberText.significant(t, 6) + " x " + NumberText.significant(w, 6) + " mm";
            rows.add(new Part(
                    piece.thickness(),
                    piece.width(),
                    piece.length(),
                    size,
                    piece.species(),
                    piece.grade(),
                    piece.count(),
                    List.of(
                            Optional.of(BoardMeasure.exactCubicMetres(piece.thickness(), piece.width(), piece.length())
                                    .times(piece.count())),
                            Optional.of(thousandths(piece.japan()).times(piece.count())))));
            if (worked) {
                workings.computeIfAbsent(
                        "A piece of " + size + ", " + NumberText.significant(l, 6) + " mm long",
                        title -> new Derivation(title, JapaneseMeasure.cubicMetresWorking(t, w, l)));
            }
        }
        List<Part> parts = together(rows);
        return new TallySheet(
                "Tally by measured size",
                CUBIC_METRES,
                List.of(
                        new Amount("Solid, m3", "solid-m3", 0, Unit.ITS_OWN, 5),
                        new Amount("As Japan counts, m3", "japan-m3", 1, Unit.ITS_OWN, 3),
                        new Amount("Solid, ft3", "solid-ft3", 0, Unit.CUBIC_FEET, DECIMALS),
                        new Amount("Board feet of the solid", "solid-board-feet", 0, Unit.BOARD_FEET, DECIMALS)),
                rows,
                parts,
                List.of(),
                List.of(
                        "In all " + all(parts, 0, 5) + " m3 solid, " + all(parts, 1, 3) + " m3 as Japan counts.",
                        "Japan counts each piece to a thousandth of a cubic metre, the fourth decimal half up, and then adds"
                                + " up [secondhand]. The board feet are the solid volume over 144 cubic inches, not a nominal tally."),
                List.of(Sources.get("definition"), Sources.get("japan-measure"), Sources.get("international-inch")),
                List.copyOf(workings.values()));
    }

    /** Japan's measure has whole thousandths; the double that carries them does not. */
    private static Exact thousandths(double cubicMetres) {
        return new Exact(BigInteger.valueOf(Math.round(cubicMetres * 1000)), BigInteger.valueOf(1000));
    }

    private static String all(List<Part> parts, int index, int decimals) {
        Sum sum = new Sum(index + 1);
        parts.forEach(sum::add);
        return NumberText.fixed(sum.amounts.get(index).orElse(Exact.ZERO).value(), decimals);
    }

    private static void requireAny(String what, List<?> counted) {
        if (counted.isEmpty()) {
            throw new OutOfDomainException(what, "none", "", "one or more", "");
        }
    }

    /** In quarters from an inch up, where it is whole quarters. */
    private static String thickness(Length nominal) {
        boolean quarters = nominal.equals(nominal.roundedTo(Length.inches(1, 4), Rounding.DOWN));
        return quarters && nominal.compareTo(INCH) >= 0 ? HardwoodThickness.quarters(nominal) : nominal.toString();
    }

    /**
     * Nothing is rounded. Board feet are a whole and a fraction; cubic metres, whose denominator divides a power of ten, all their
     * decimals. Lengths are whole nanometres, so neither outgrows the cell: 24 digits below the stroke, 27 after the point.
     */
    private static String exact(Exact value, String unit) {
        return unit.equals(CUBIC_METRES)
                ? new BigDecimal(value.numerator())
                        .divide(new BigDecimal(value.denominator()))
                        .toPlainString()
                : value.toString();
    }

    /**
     * As plain text.
     *
     * @return lines of no more than 100 characters unless a table cannot be narrower, each with its line end
     */
    public String text() {
        List<Section> sections = new ArrayList<>();
        for (By by : By.values()) {
            if (isNamed(by)) {
                sections.add(section(by));
            }
        }
        for (PlanTable table : more) {
            sections.add(new Section(table.name(), "Block tally", List.of(new Tabular(table))));
        }
        Sum all = sum(parts);
        List<String> points = new ArrayList<>(notes);
        for (Amount column : columns) {
            long missing = all.missing.get(column.index());
            if (missing > 0) {
                points.add(column.header() + ": " + pieces(missing)
                        + " left out, of sizes that the table of dressed sizes does not have.");
            }
        }
        sections.add(new Section("all", "In all", List.of(new Points(points))));
        sections.add(new Section("sources", "Sources", List.of(new Tabular(PlanTable.ofSources(sources)))));
        return PlanText.of(title + ", " + pieces(all.pieces), List.of(), sections);
    }

    /** Whether anything of that kind is named. */
    private boolean isNamed(By by) {
        return parts.stream().anyMatch(part -> !by.name(part).isEmpty());
    }

    private static String pieces(long count) {
        return count == 1 ? "1 piece" : count + " pieces";
    }

    private Section section(By by) {
        PlanTable.Builder table = PlanTable.of(by.key, "Sums by " + by.key).text(by.header, by.key);
        amountColumns(table);
        groups(by).forEach((name, sum) -> {
            List<Cell> cells = new ArrayList<>(List.of(Cell.text(name.isEmpty() ? "not named" : name)));
            cells.addAll(amounts(sum));
            table.row(cells);
        });
        return new Section(by.key, "By " + by.key, List.of(new Tabular(table.build())));
    }

    private void amountColumns(PlanTable.Builder table) {
        table.number("Pieces", "pieces").number("Exactly, " + unit, "exact-" + unit);
        columns.forEach(column -> table.number(column.header(), column.key()));
    }

    private List<Cell> amounts(Sum sum) {
        List<Cell> cells = new ArrayList<>();
        cells.add(Cell.number((double) sum.pieces, 0));
        cells.add(
                Cell.text(sum.amounts.get(0).map(amount -> exact(amount, unit)).orElse("")));
        for (Amount column : columns) {
            cells.add(sum.amounts
                    .get(column.index())
                    .map(amount -> Cell.number(column.unit().of(amount.value()), column.decimals()))
                    .orElse(Cell.NONE));
        }
        return cells;
    }

    private Sum sum(List<Part> of) {
        Sum sum = new Sum(parts.get(0).amounts().size());
        of.forEach(sum::add);
        return sum;
    }

    private Map<String, Sum> groups(By by) {
        Map<String, List<Part>> named = new LinkedHashMap<>();
        parts.stream()
                .sorted(by.order())
                .forEach(part -> named.computeIfAbsent(by.name(part), key -> new ArrayList<>())
                        .add(part));
        Map<String, Sum> sums = new LinkedHashMap<>();
        named.forEach((name, group) -> sums.put(name, sum(group)));
        return sums;
    }

    /**
     * How many rows were counted.
     *
     * @return the count, one or more
     */
    public int count() {
        return rows.size();
    }

    /**
     * The species that the rows name.
     *
     * @return in the order of their letters; rows without one have none here
     */
    public Set<String> species() {
        return rows.stream()
                .map(Part::species)
                .filter(name -> !name.isEmpty())
                .collect(Collectors.toCollection(TreeSet::new));
    }

    /**
     * The rows as they were counted.
     *
     * @return a row for each
     */
    public PlanTable rows() {
        PlanTable.Builder table = PlanTable.of("tally", "The rows")
                .text("Size", "size")
                .number("Length, mm", "length-mm")
                .text("Species", "species")
                .text("Grade", "grade");
        amountColumns(table);
        for (Part row : rows) {
            List<Cell> cells = new ArrayList<>(List.of(
                    Cell.text(row.size()),
                    Cell.length(row.length().toString(), row.length()),
                    Cell.text(row.species()),
                    Cell.text(row.grade())));
            cells.addAll(amounts(sum(List.of(row))));
            table.row(cells);
        }
        return table.build();
    }

    /**
     * The sums by size, by species, by grade and in all.
     *
     * @return a row for each
     */
    public PlanTable sums() {
        PlanTable.Builder table =
                PlanTable.of("sums", "The sums").text("By", "by").text("Name", "name");
        amountColumns(table);
        for (By by : By.values()) {
            if (isNamed(by)) {
                groups(by).forEach((name, sum) -> sumRow(table, by.key, name, sum));
            }
        }
        sumRow(table, "all", "", sum(parts));
        return table.build();
    }

    private void sumRow(PlanTable.Builder table, String by, String name, Sum sum) {
        List<Cell> cells = new ArrayList<>(List.of(Cell.text(by), Cell.text(name)));
        cells.addAll(amounts(sum));
        table.row(cells);
    }

    /**
     * How the whole comes about.
     *
     * @param origin who gave the values
     * @return plain text
     */
    public String working(Source origin) {
        StringBuilder text = new StringBuilder();
        workings.forEach(each -> text.append(each.title())
                .append('\n')
                .append(WorkingText.plain(each.working().givenBy(origin)))
                .append('\n'));
        return text.toString();
    }
}
