package org.woodyield.show;

import java.util.ArrayList;
import java.util.List;
import org.woodyield.measure.Rounding;
import org.woodyield.plan.TimberTrees;
import org.woodyield.plan.TimberTrees.Answer;
import org.woodyield.plan.TimberTrees.Tree;
import org.woodyield.sawing.SquaredTimber;
import org.woodyield.sawing.Wane;
import org.woodyield.show.Block.Points;
import org.woodyield.show.Block.Section;
import org.woodyield.show.Block.Tabular;
import org.woodyield.show.PlanTable.Cell;
import org.woodyield.source.Source;

/**
 * Which standing trees give a timber with square edges and which with wane, as plain text and as a table.
 *
 * @param wanted the timber with wane
 * @param trees the trees
 */
public record TimberSheet(TimberTrees wanted, List<Tree> trees) {

    /** Keeps an immutable copy. */
    public TimberSheet {
        trees = List.copyOf(trees);
    }

    private TimberTrees sharp() {
        SquaredTimber timber = wanted.timber();
        return new TimberTrees(
                new SquaredTimber(timber.width(), timber.height(), Wane.NONE),
                wanted.length(),
                wanted.stump(),
                wanted.kerf());
    }

    /**
     * The trees in their order.
     *
     * @return a row for each
     * @throws org.woodyield.measure.OutOfDomainException if a profile does not reach to the end of the first log
     */
    public PlanTable table() {
        PlanTable.Builder table = PlanTable.of("trees", "The trees")
                .text("Tree", "tree")
                .number("First log ends, in", "upper-end-in")
                .number("Timbers, square edges", "timbers-square")
                .number("Spare, in", "spare-square-in")
                .number("Timbers, with wane", "timbers-wane")
                .number("Spare with wane, in", "spare-wane-in");
        TimberTrees sharp = sharp();
        for (Tree tree : trees) {
            Answer square = sharp.ask(tree);
            Answer waney = wanted.ask(tree);
            table.row(List.of(
                    Cell.text(tree.id()),
                    Cell.number(square.endInches(), 2, 4),
                    Cell.whole(square.timbers()),
                    Cell.number(square.spareInches(), 2, 4),
                    Cell.whole(waney.timbers()),
                    Cell.number(waney.spareInches(), 2, 4)));
        }
        return table.build();
    }

    /**
     * As plain text.
     *
     * @param basis sentences on where the diameters come from; none where no trees are asked about
     * @return lines of no more than 100 characters unless the table cannot be narrower, each with its line end
     * @throws org.woodyield.measure.OutOfDomainException if a profile does not reach to the end of the first log
     */
    public String text(List<String> basis) {
        TimberTrees sharp = sharp();
        SquaredTimber timber = wanted.timber();
        List<String> need = new ArrayList<>();
        need.add("With square edges the smallest end inside bark is "
                + NumberText.fixed(sharp.timber().smallestEndInches(), 2) + " in.");
        need.add("With wane of " + NumberText.percent(timber.wane().widthShare()) + " of each side at every edge it is "
                + NumberText.fixed(timber.smallestEndInches(), 2) + " in.");
        need.add("The size is that of the green timber, its centre at the centre of a round end; sweep, rot and an oval"
                + " stem need more.");
        Section needs = new Section("need", "What it needs", List.of(new Points(need)));
        String title = "Timber " + size(timber) + " from standing trees";
        if (trees.isEmpty() && basis.isEmpty()) {
            return PlanText.of(title, List.of(), List.of(needs));
        }
        List<String> counted = new ArrayList<>();
        counted.add(
                trees.isEmpty()
                        ? "No tree could be asked."
                        : sharp.holding(trees).size() + " of " + trees.size() + " give it with square edges, "
                                + wanted.holding(trees).size() + " with that wane.");
        counted.add("Logs of " + wanted.length().inFeet(4, Rounding.HALF_UP) + ", one above the other from a stump of "
                + wanted.stump().inFeet(4, Rounding.HALF_UP) + "; each cut takes "
                + wanted.kerf().inInches(64, Rounding.HALF_UP) + ".");
        counted.addAll(basis);
        List<Block> blocks = new ArrayList<>();
        if (!trees.isEmpty()) {
            blocks.add(new Tabular(table()));
        }
        blocks.add(new Points(counted));
        Section given = new Section("trees", "Which trees give it", blocks);
        return PlanText.of(title, List.of(), List.of(needs, given));
    }

    private static String size(SquaredTimber timber) {
        return timber.width().inInches(16, Rounding.HALF_UP) + " x "
                + timber.height().inInches(16, Rounding.HALF_UP);
    }

    /**
     * How each spare comes about, with square edges and with wane.
     *
     * @param origin who gave what the timber needs
     * @param ofTrees who gave the trees
     * @return plain text
     * @throws org.woodyield.measure.OutOfDomainException if a profile does not reach to the end of the first log
     */
    public String workings(Source origin, Source ofTrees) {
        StringBuilder text = new StringBuilder();
        for (Tree tree : trees) {
            text.append(WorkingText.plain(sharp().working(tree, ofTrees).givenBy(origin)))
                    .append('\n');
            text.append(WorkingText.plain(wanted.working(tree, ofTrees).givenBy(origin)))
                    .append('\n');
        }
        return text.toString();
    }
}
