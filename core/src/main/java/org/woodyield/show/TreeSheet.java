package org.woodyield.show;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.woodyield.log.BarkRatio;
import org.woodyield.log.FormClass;
import org.woodyield.log.MeasuredTree;
import org.woodyield.log.StemVolumeEquation;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.measure.Rounding;
import org.woodyield.scaling.TreeVolumeTable;
import org.woodyield.show.Block.Points;
import org.woodyield.show.Block.Section;
import org.woodyield.show.Block.Tabular;
import org.woodyield.show.PlanTable.Cell;
import org.woodyield.source.Source;
import org.woodyield.source.Sources;
import org.woodyield.working.Working;

/**
 * What standing trees hold, as plain text and as a table: board feet by the printed table of one form class, cubic feet by an
 * equation fitted to felled trees, the end of the first log by the form class, and the bark.
 *
 * @param trees the trees
 * @param felled the trees to which the equation of volume is fitted
 * @param felledWords what trees these are, such as "31 black cherry trees"
 * @param basis sentences on where the given values come from
 */
public record TreeSheet(List<Tree> trees, List<MeasuredTree> felled, String felledWords, List<String> basis) {

    private static final TreeVolumeTable TABLE = TreeVolumeTable.scribnerFormClass78();

    /**
     * A standing tree.
     *
     * @param id the user's name for it
     * @param breastHeightInches diameter at breast height, outside bark
     * @param logs count of 16-ft logs, if known
     * @param totalHeightFeet of the tip above the ground, if known
     * @param formClass if known
     * @param barkRatio if known
     */
    public record Tree(
            String id,
            double breastHeightInches,
            OptionalDouble logs,
            OptionalDouble totalHeightFeet,
            Optional<FormClass> formClass,
            Optional<BarkRatio> barkRatio) {}

    /** A value with its working, or the reason why there is none. */
    private record Found(Optional<Working> working, String reason) {

        static final Found NOT_ASKED = new Found(Optional.empty(), "");

        Cell cell(int decimals, int inFiles) {
            return working.map(one -> Cell.number(one.value(), decimals, inFiles))
                    .orElse(Cell.NONE);
        }
    }

    /** What is told of a tree. */
    private record Told(Tree tree, Found insideBark, Found firstLog, Found boardFeet, Found cubicFeet) {

        static Told of(Tree tree, StemVolumeEquation equation) {
            return new Told(
                    tree,
                    TreeSheet.insideBark(tree),
                    TreeSheet.firstLog(tree),
                    TreeSheet.boardFeet(tree),
                    TreeSheet.cubicFeet(tree, equation));
        }

        String remarks() {
            return Stream.of(boardFeet, cubicFeet)
                    .map(Found::reason)
                    .filter(reason -> !reason.isEmpty())
                    .collect(Collectors.joining("; "));
        }
    }

    /** Keeps immutable copies. */
    public TreeSheet {
        trees = List.copyOf(trees);
        felled = List.copyOf(felled);
        basis = List.copyOf(basis);
    }

    private StemVolumeEquation equation() {
        return StemVolumeEquation.fit(felled);
    }

    private List<Told> told(StemVolumeEquation equation) {
        return trees.stream().map(tree -> Told.of(tree, equation)).toList();
    }

    /** Diameters are told in whole inches by the table; halves go up. */
    private static double inchClass(Tree tree) {
        return Rounding.HALF_UP.toStep(tree.breastHeightInches(), 1);
    }

    private static boolean printed(double logs) {
        return 2 * logs == Math.rint(2 * logs);
    }

    private static Found boardFeet(Tree tree) {
        if (tree.logs().isEmpty()) {
            return Found.NOT_ASKED;
        }
        double percent = TABLE.formClass().percent();
        if (tree.formClass().isPresent() && tree.formClass().get().percent() != percent) {
            return new Found(
                    Optional.empty(),
                    "the printed table is of form class " + NumberText.full(percent) + ", this tree of "
                            + NumberText.fixed(tree.formClass().get().percent(), 1)
                            + "; leave out its form class to read the table all the same");
        }
        double logs = tree.logs().getAsDouble();
        double inches = inchClass(tree);
        try {
            Working cell = printed(logs) ? TABLE.boardFeetWorking(inches, logs) : TABLE.betweenWorking(inches, logs);
            Working working = Working.of("Board feet of tree " + tree.id())
                    .given("b", "diameter at breast height as measured", tree.breastHeightInches(), "in")
                    .round(
                            "c",
                            "whole inches, as the table has them",
                            "b",
                            Rounding.HALF_UP,
                            1,
                            "in",
                            Sources.get("trade"))
                    .include(cell)
                    .build();
            return new Found(Optional.of(working), doubt(inches, logs));
        } catch (OutOfDomainException e) {
            return new Found(Optional.empty(), e.getMessage());
        }
    }

    private static String doubt(double inches, double logs) {
        return printed(logs) && logs != Math.rint(logs) && TABLE.doubtful(inches, logs)
                ? "the printed cell is doubtful: it parts from the mean of its neighbours, "
                        + NumberText.full(TABLE.between(inches, logs)) + " bf"
                : "";
    }

    private static Found cubicFeet(Tree tree, StemVolumeEquation equation) {
        if (tree.totalHeightFeet().isEmpty()) {
            return Found.NOT_ASKED;
        }
        try {
            return new Found(
                    Optional.of(equation.working(
                            tree.breastHeightInches(), tree.totalHeightFeet().getAsDouble())),
                    "");
        } catch (OutOfDomainException e) {
            return new Found(Optional.empty(), "no volume by the equation: " + e.getMessage());
        }
    }

    private static Found firstLog(Tree tree) {
        return new Found(tree.formClass().map(form -> form.upperInchesWorking(tree.breastHeightInches())), "");
    }

    private static Found insideBark(Tree tree) {
        return new Found(tree.barkRatio().map(ratio -> ratio.insideWorking(tree.breastHeightInches(), "in")), "");
    }

    /**
     * The trees in their order.
     *
     * @return a row for each
     */
    public PlanTable table() {
        return table(told(equation()), true);
    }

    private static PlanTable table(List<Told> trees, boolean inFile) {
        PlanTable.Builder table = PlanTable.of("trees", "The trees")
                .text("Tree", "tree")
                .number("Breast height, in", "breast-height-in")
                .number("Inside bark, in", "inside-bark-in")
                .number("Form class, %", "form-class-percent")
                .number("At 17.3 ft, in", "inside-bark-at-17.3-ft-in")
                .number("Logs of 16 ft", "logs")
                .number("Scribner, bf", "scribner-form-class-78-bf")
                .number("Height, ft", "total-height-ft")
                .number("Stem, ft3", "stem-volume-ft3");
        if (inFile) {
            table.text("Remark", "remark");
        }
        for (Told told : trees) {
            Tree tree = told.tree();
            List<Cell> row = new ArrayList<>(List.of(
                    Cell.text(tree.id()),
                    Cell.number(tree.breastHeightInches(), 1, 4),
                    told.insideBark().cell(1, 4),
                    tree.formClass()
                            .map(form -> Cell.number(form.percent(), 1, 4))
                            .orElse(Cell.NONE),
                    told.firstLog().cell(1, 4),
                    tree.logs().isPresent() ? Cell.number(tree.logs().getAsDouble(), 2) : Cell.NONE,
                    told.boardFeet().cell(0, 4),
                    tree.totalHeightFeet().isPresent()
                            ? Cell.number(tree.totalHeightFeet().getAsDouble(), 1, 4)
                            : Cell.NONE,
                    told.cubicFeet().cell(1, 4)));
            if (inFile) {
                row.add(Cell.text(told.remarks()));
            }
            table.row(row);
        }
        return table.build();
    }

    /** By how much the felled trees lie off the equation, one standard deviation of the logarithms. */
    private double spread(StemVolumeEquation equation) {
        double squares = 0;
        for (MeasuredTree tree : felled) {
            double miss = StrictMath.log(tree.volumeCubicFeet())
                    - StrictMath.log(equation.cubicFeet(tree.breastHeightInches(), tree.heightFeet()));
            squares += miss * miss;
        }
        return felled.size() > 3 ? Math.sqrt(squares / (felled.size() - 3)) : Double.NaN;
    }

    /**
     * As plain text.
     *
     * @return lines of no more than 100 characters unless the table cannot be narrower, each with its line end
     */
    public String text() {
        StemVolumeEquation equation = equation();
        List<Section> sections = new ArrayList<>();
        if (!trees.isEmpty()) {
            List<Told> all = told(equation);
            List<String> said = new ArrayList<>();
            for (Told told : all) {
                String remarks = told.remarks();
                if (!remarks.isEmpty()) {
                    said.add("Tree " + told.tree().id() + ": " + remarks + ".");
                }
            }
            List<Block> blocks = new ArrayList<>(List.of(new Tabular(table(all, false))));
            if (!said.isEmpty()) {
                blocks.add(new Points(said));
            }
            sections.add(new Section("trees", "What they hold", blocks));
        }
        double spread = spread(equation);
        List<String> rests = new ArrayList<>();
        rests.add("Board feet: " + TABLE.source().citation() + ". Gross scale of a whole tree of form class "
                + NumberText.full(TABLE.formClass().percent())
                + " by the nearest inch, an exact half up (common practice, no source); between printed counts of logs"
                + " straight. Nothing is extrapolated.");
        rests.add("Stem: ln V = " + NumberText.significant(equation.constant(), 5) + " + "
                + NumberText.significant(equation.diameterExponent(), 4) + " ln D + "
                + NumberText.significant(equation.heightExponent(), 4)
                + " ln H, V in ft3, D in in and H in ft, fitted to "
                + felledWords + ", " + NumberText.full(equation.breastHeight().least()) + " to "
                + NumberText.full(equation.breastHeight().greatest()) + " in thick and "
                + NumberText.full(equation.height().least()) + " to "
                + NumberText.full(equation.height().greatest()) + " ft high"
                + (Double.isNaN(spread)
                        ? ""
                        : "; they lie off it by " + NumberText.percent(spread) + " (one standard deviation)")
                + ". Of another species or place it is a guess; nothing is extrapolated.");
        rests.add("Form class: diameter inside bark at 17.3 ft over diameter outside bark at breast height. Bark ratio:"
                + " diameter inside over outside bark.");
        rests.addAll(basis);
        sections.add(new Section("basis", "What it rests on", List.of(new Points(rests))));
        return PlanText.of("Standing trees", List.of(), sections);
    }

    /**
     * How each value comes about.
     *
     * @param origin who gave the trees
     * @param ofRatio where a bark ratio comes from
     * @return plain text
     */
    public String workings(Source origin, Function<BarkRatio, Source> ofRatio) {
        StringBuilder text = new StringBuilder();
        for (Told told : told(equation())) {
            Source ratios = told.tree().barkRatio().map(ofRatio).orElse(origin);
            for (Found found : List.of(told.insideBark(), told.firstLog(), told.boardFeet(), told.cubicFeet())) {
                found.working()
                        .ifPresent(working -> text.append(text.isEmpty() ? "" : "\n")
                                .append(WorkingText.plain(
                                        working.givenBy("k", ratios).givenBy(origin))));
            }
            told.tree()
                    .barkRatio()
                    .ifPresent(ratio -> text.append('\n')
                            .append(WorkingText.plain(
                                    ratio.percentOfStemWorking().givenBy(ratios))));
        }
        return text.toString();
    }
}
