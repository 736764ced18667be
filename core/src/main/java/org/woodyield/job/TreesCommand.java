package org.woodyield.job;

import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.woodyield.log.BarkRatio;
import org.woodyield.log.FormClass;
import org.woodyield.log.MeasuredTree;
import org.woodyield.log.StemVolumeEquation;
import org.woodyield.measure.Domain;
import org.woodyield.measure.Length;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.measure.Rounding;
import org.woodyield.show.NumberText;
import org.woodyield.show.TreeSheet;
import org.woodyield.show.TreeSheet.Tree;
import org.woodyield.source.Source;
import org.woodyield.source.Sources;
import org.woodyield.source.Standing;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;

/** Tells what standing trees hold: by a printed table, by an equation, inside bark and by form class. */
final class TreesCommand implements Subcommand {

    private static final Answer ANSWER = new Answer("trees", "trees.txt", "trees.csv", "the trees stand in");
    private static final String ID = "id";
    private static final String BREAST_HEIGHT = StandingTree.BREAST_HEIGHT;
    private static final String FORM_CLASS = StandingTree.FORM_CLASS;
    private static final String UPPER = "upper-diameter";
    private static final String BARK_RATIO = StandingTree.BARK_RATIO;
    private static final String LOGS = "logs";
    private static final String TOTAL_HEIGHT = StandingTree.TOTAL_HEIGHT;
    private static final String HEIGHT = "height";
    private static final String VOLUME = "volume";
    private static final String OUTSIDE = "outside";
    private static final String INSIDE = "inside";
    private static final List<Table.Column> COLUMNS = List.of(
            Table.Column.required(ID),
            Table.Column.required(BREAST_HEIGHT),
            Table.Column.optional(LOGS),
            Table.Column.optional(TOTAL_HEIGHT),
            Table.Column.optional(FORM_CLASS),
            Table.Column.optional(UPPER),
            Table.Column.optional(BARK_RATIO));
    private static final List<Table.Column> FELLED_COLUMNS =
            List.of(Table.Column.required(BREAST_HEIGHT), Table.Column.required(HEIGHT), Table.Column.required(VOLUME));
    private static final List<Table.Column> BARK_COLUMNS =
            List.of(Table.Column.required(OUTSIDE), Table.Column.required(INSIDE));
    private static final Domain COUNT = new Domain("", "", 0.5, 12, "16-ft logs, halves and other parts allowed");
    private static final double LOG_FEET = 16;
    private static final Domain VOLUMES = Domain.of("", "ft3", 0.001, 1e5);

    @Override
    public String name() {
        return "trees";
    }

    @Override
    public CommandSpec spec() {
        Usage usage = new Usage(
                        "Tells what standing trees hold: board feet by the printed table of form class 78, cubic feet"
                                + " by an equation fitted to felled trees, the end of the first log, and the bark.")
                .argumentIfAny(
                        "TREES",
                        "Table of trees: " + ID + ", " + BREAST_HEIGHT + " (diameter at 4.5 ft outside bark); optional "
                                + LOGS + " (of 16 ft, such as 2.5), " + TOTAL_HEIGHT + ", " + FORM_CLASS
                                + " (78 %%) or " + UPPER + " (inside bark at 17.3 ft), " + BARK_RATIO
                                + " (inside over outside bark). In its place the options of the same names for one"
                                + " tree.");
        for (String column : List.of(BREAST_HEIGHT, LOGS, TOTAL_HEIGHT, FORM_CLASS, UPPER, BARK_RATIO)) {
            usage.option("--" + column, "VALUE", "Of one tree, as the column of that name.");
        }
        usage.option(
                        "--felled",
                        "TABLE",
                        "Felled trees to fit the equation to: " + BREAST_HEIGHT + ", " + HEIGHT + ", " + VOLUME
                                + " (of the stem, in ft3 or m3). Without it 31 black cherry trees, as published.")
                .option(
                        "--bark",
                        "TABLE",
                        "Diameters measured at the same places, " + OUTSIDE + " and " + INSIDE
                                + " bark: fits the bark ratio of trees that have none of their own.");
        return ANSWER.options(usage, "Show how each value comes about as well.").spec();
    }

    @Override
    public int run(ParseResult given, Terminal terminal) throws IOException {
        Optional<PlanFolder> folder = ANSWER.folder(given);
        Problems problems = new Problems();
        Arguments arguments = new Arguments(name(), given, problems);
        String table = given.matchedPositionalValue(0, "");
        Optional<String> option = COLUMNS.stream()
                .map(column -> "--" + column.name())
                .filter(name -> !name.equals("--" + ID) && given.hasMatchedOption(name))
                .findFirst();
        boolean felledGiven = given.hasMatchedOption("--felled");
        boolean barkGiven = given.hasMatchedOption("--bark");
        if (!table.isEmpty() && option.isPresent()) {
            throw new BadInputException(
                    option.get() + " is for one tree without a table; leave it out, or make it a column of the table");
        }
        if (table.isEmpty() && option.isEmpty() && !felledGiven && !barkGiven) {
            throw new BadInputException("a tree is needed: a table, or --" + BREAST_HEIGHT + " with --" + LOGS + ", --"
                    + TOTAL_HEIGHT + " or --" + FORM_CLASS);
        }
        List<String> basis = new ArrayList<>();
        Optional<BarkRatio> bark =
                barkGiven ? bark(given.matchedOptionValue("--bark", ""), basis, problems, terminal) : Optional.empty();
        List<Tree> trees = new ArrayList<>();
        if (!table.isEmpty()) {
            problems.stopIfAny();
            table(table, bark, trees, basis, terminal);
        } else if (option.isPresent()) {
            tree("1", column -> arguments.cell("--" + column, ""), bark).ifPresent(trees::add);
        }
        List<MeasuredTree> felled = felledGiven
                ? felled(given.matchedOptionValue("--felled", ""), basis, problems, terminal)
                : MeasuredTree.blackCherry();
        problems.stopIfAny();
        String words = felledGiven
                ? felled.size() + " trees of " + Sheets.file(given.matchedOptionValue("--felled", ""))
                : felled.size() + " black cherry trees felled in the Allegheny National Forest ("
                        + Sources.get("black-cherry-trees").citation() + ")";
        TreeSheet sheet = new TreeSheet(trees, felled, words, basis);
        Source origin = table.isEmpty()
                ? Sources.get("command-line")
                : new Source("trees", Standing.GIVEN, "", "From the table " + Sheets.file(table), "", "");
        Source fitted = new Source(
                "bark",
                Standing.DERIVED,
                "",
                "Fitted by least squares to the diameters of " + Sheets.file(given.matchedOptionValue("--bark", "-")),
                "",
                "");
        return ANSWER.give(
                given,
                terminal,
                folder,
                sheet.text(),
                sheet::table,
                () -> sheet.workings(origin, ratio -> bark.filter(ratio::equals).isPresent() ? fitted : origin));
    }

    /** A row that cannot be used is named and counted; the trees of the others are told. */
    private static void table(
            String name, Optional<BarkRatio> bark, List<Tree> trees, List<String> basis, Terminal terminal)
            throws IOException {
        RowByRow table = RowByRow.of(
                Sheets.file(name),
                Sheets.text(name, ID + ", " + BREAST_HEIGHT),
                COLUMNS,
                "a row for each tree",
                "add the trees");
        Map<String, Integer> lines = new LinkedHashMap<>();
        table.read(
                row -> {
                    Optional<String> id = row.cell(ID).words("a name for the tree");
                    Integer earlier = lines.putIfAbsent(id.orElse(""), row.line());
                    if (id.isPresent() && earlier != null) {
                        row.cell(ID)
                                .refuse(
                                        "each tree once",
                                        "it stands in line " + earlier + " already; rename one of the two");
                    }
                    return id.flatMap(known -> tree(known, row::cell, bark));
                },
                (tree, line) -> trees.add(tree));
        table.tellAll(terminal, trees.size()).ifPresent(basis::add);
    }

    private static Optional<Tree> tree(String id, Function<String, Cell> cells, Optional<BarkRatio> bark) {
        Optional<Length> breast = cells.apply(BREAST_HEIGHT).lengthUpTo(StandingTree.WIDEST, "check the unit");
        Cell logsCell = cells.apply(LOGS);
        Cell heightCell = cells.apply(TOTAL_HEIGHT);
        Cell formCell = cells.apply(FORM_CLASS);
        Cell upperCell = cells.apply(UPPER);
        Cell ratioCell = cells.apply(BARK_RATIO);
        Optional<Double> logs = logsCell.ifAny(cell -> cell.number(COUNT));
        Optional<Length> height = StandingTree.totalHeight(heightCell);
        Optional<Double> percent = formCell.ifAny(cell -> cell.quantity(Units.PERCENT, StandingTree.PERCENT));
        Optional<Length> upper = upperCell.ifAny(cell -> cell.lengthUpTo(StandingTree.WIDEST, "check the unit"));
        Optional<BarkRatio> ratio = StandingTree.barkRatio(ratioCell);
        if (percent.isPresent() && upper.isPresent()) {
            upperCell.refuse("the form class or the diameter that it comes from", "leave out one of the two");
            return Optional.empty();
        }
        if (breast.isEmpty()
                || logsCell.isUnread(logs)
                || heightCell.isUnread(height)
                || formCell.isUnread(percent)
                || upperCell.isUnread(upper)
                || ratioCell.isUnread(ratio)) {
            return Optional.empty();
        }
        // In whole hundredths, so that the limit is the number that is printed.
        Optional<Double> tip = height.map(total -> Rounding.DOWN.toWhole(total.toFeet() * 100 / LOG_FEET) / 100);
        if (logs.isPresent() && tip.isPresent() && !(logs.get() < tip.get())) {
            logsCell.refuse(
                    "fewer than "
                            + NumberText.significant(tip.get(), 4)
                            + " logs of 16 ft, which would reach the tip of a tree of " + heightCell.text(),
                    "count the logs up to the least diameter of use, or mend " + TOTAL_HEIGHT);
            return Optional.empty();
        }
        double inches = breast.get().toInches();
        Optional<FormClass> form;
        try {
            form = percent.map(FormClass::new).or(() -> upper.map(high -> FormClass.of(inches, high.toInches())));
            // Also that the diameter is one of a tree.
            form.ifPresent(one -> one.upperInches(inches));
        } catch (OutOfDomainException e) {
            (upper.isPresent() ? upperCell : cells.apply(BREAST_HEIGHT)).refuse(e);
            return Optional.empty();
        }
        return Optional.of(new Tree(
                id,
                inches,
                StandingTree.ifKnown(logs),
                StandingTree.ifKnown(height.map(Length::toFeet)),
                form,
                ratio.or(() -> bark)));
    }

    /** A row that cannot be used is named and counted, and it is said that the equation rests on the others alone. */
    private static List<MeasuredTree> felled(String name, List<String> basis, Problems problems, Terminal terminal)
            throws IOException {
        String columns = BREAST_HEIGHT + ", " + HEIGHT + ", " + VOLUME;
        RowByRow table = RowByRow.of(
                Sheets.file(name),
                Sheets.text(name, columns),
                FELLED_COLUMNS,
                "a row for each felled tree",
                "add the trees");
        List<MeasuredTree> felled = new ArrayList<>();
        table.read(TreesCommand::felledTree, (tree, line) -> felled.add(tree));
        Optional<String> leftOut = table.tellAll(terminal, felled.size());
        leftOut.ifPresent(words -> basis.add(words + " The equation is fitted to the others alone."));
        try {
            StemVolumeEquation.fit(felled);
        } catch (OutOfDomainException e) {
            problems.add(Sheets.file(name), 0, "", e.parameter() + ": " + e.value(), e.limits(), remedy(e, leftOut));
        }
        return felled;
    }

    /** Where rows are left out, mending them may be remedy enough. */
    private static String remedy(OutOfDomainException refusal, Optional<String> leftOut) {
        return Stream.concat(
                        leftOut.map(words -> "mend the rows that are left out").stream(), Stream.of(refusal.remedy()))
                .filter(words -> !words.isEmpty())
                .collect(Collectors.joining(", or "));
    }

    private static Optional<MeasuredTree> felledTree(Table.Row row) {
        Optional<Length> breast = row.cell(BREAST_HEIGHT).lengthUpTo(StandingTree.WIDEST, "check the unit");
        Optional<Length> height = row.cell(HEIGHT).lengthUpTo(StandingTree.HIGHEST, "check the unit");
        Optional<Double> volume = row.cell(VOLUME).quantity(Units.CUBIC_FEET, VOLUMES);
        if (breast.isEmpty() || height.isEmpty() || volume.isEmpty()) {
            return Optional.empty();
        }
        try {
            return Optional.of(
                    new MeasuredTree(breast.get().toInches(), height.get().toFeet(), volume.get()));
        } catch (OutOfDomainException e) {
            row.cell(e.parameter().equals("height") ? HEIGHT : BREAST_HEIGHT).refuse(e);
            return Optional.empty();
        }
    }

    /** Two diameters at one place, in inches. */
    private record Pair(double outside, double inside) {}

    private static Optional<Pair> pair(Table.Row row) {
        Optional<Length> over = row.cell(OUTSIDE).lengthUpTo(StandingTree.WIDEST, "check the unit");
        return over.flatMap(most -> row.cell(INSIDE)
                .lengthUpTo(most, "inside bark it is no more than outside; check the two")
                .map(under -> new Pair(most.toInches(), under.toInches())));
    }

    /** A row that cannot be used is named and counted, and it is said that the ratio rests on the others alone. */
    private static Optional<BarkRatio> bark(String name, List<String> basis, Problems problems, Terminal terminal)
            throws IOException {
        RowByRow table = RowByRow.of(
                Sheets.file(name),
                Sheets.text(name, OUTSIDE + ", " + INSIDE),
                BARK_COLUMNS,
                "a row for each place",
                "add the places");
        List<Pair> pairs = new ArrayList<>();
        table.read(TreesCommand::pair, (pair, line) -> pairs.add(pair));
        Optional<String> leftOut = table.tellAll(terminal, pairs.size());
        BarkRatio ratio;
        try {
            ratio = BarkRatio.fit(
                    pairs.stream().mapToDouble(Pair::outside).toArray(),
                    pairs.stream().mapToDouble(Pair::inside).toArray());
        } catch (OutOfDomainException e) {
            problems.add(Sheets.file(name), 0, "", e.value(), e.limits(), remedy(e, leftOut));
            return Optional.empty();
        }
        basis.add("Bark: ratio " + NumberText.significant(ratio.ratio(), 4) + ", fitted by least squares to your "
                + pairs.size() + (pairs.size() == 1 ? " pair" : " pairs")
                + " of diameters; of the stem with its bark "
                + NumberText.fixed(ratio.percentOfStem(), 1) + " % is bark, beside the wood's volume "
                + NumberText.fixed(ratio.percentOfWood(), 1)
                + " %. It is taken for trees that have none of their own."
                + leftOut.map(words -> " " + words + " The ratio is fitted to the others alone.")
                        .orElse(""));
        return Optional.of(ratio);
    }
}
