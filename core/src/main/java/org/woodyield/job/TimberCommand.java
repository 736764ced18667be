package org.woodyield.job;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.woodyield.lumber.Product.Size;
import org.woodyield.measure.Domain;
import org.woodyield.measure.Length;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.plan.TimberTrees;
import org.woodyield.plan.TimberTrees.Tree;
import org.woodyield.sawing.SquaredTimber;
import org.woodyield.sawing.Wane;
import org.woodyield.show.TimberSheet;
import org.woodyield.source.Source;
import org.woodyield.source.Sources;
import org.woodyield.source.Standing;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;

/** Tells which standing trees give a timber, with square edges and with wane. */
final class TimberCommand implements Subcommand {

    private static final Answer ANSWER = new Answer("timber", "timber.txt", "timber-trees.csv", "the trees stand in");
    private static final Length LONGEST = Length.millimetres(30_000);
    private static final Domain WANE = new Domain("", "%", 0, 50, "wane of two edges meets at half the side");

    @Override
    public String name() {
        return "timber";
    }

    @Override
    public CommandSpec spec() {
        Usage usage = new Usage("Tells which standing trees give a timber, with square edges and with wane.")
                .argument("SIZE", "Green size of the timber, such as 8x8 (in inches, full) or '200 mm x 200 mm'.")
                .argumentIfAny(
                        "TREES",
                        "Table of trees: " + TimberTable.ID + ", " + StandingTree.WORDS
                                + ". Or stems measured inside bark: " + TimberTable.ID
                                + ", " + TimberTable.HEIGHT + ", " + TimberTable.DIAMETER
                                + ", two rows or more for each from the ground up; the tip may be one, with 0 in; with "
                                + StandingTree.BARK_RATIO + " a diameter is one outside bark."
                                + " Without it only what the timber needs is told.")
                .option(
                        "--length",
                        "LENGTH",
                        "Length of the log, trim included; without it 16 ft 3 1/2 in, so that from a stump"
                                + " of 1 ft it ends at the height of the form class.")
                .option("--stump", "STUMP", "Height of the stump; without it 1 ft.")
                .option("--kerf", "KERF", "What each cut takes; without it 3/8 in.")
                .option(
                        "--wane",
                        "WANE",
                        "Wane allowed at every edge as a share of each side; without it 25 %% (ours).");
        return ANSWER.options(usage, "Show how each answer comes about as well.")
                .spec();
    }

    @Override
    public int run(ParseResult given, Terminal terminal) throws IOException {
        Optional<PlanFolder> folder = ANSWER.folder(given);
        Problems problems = new Problems();
        Arguments arguments = new Arguments(name(), given, problems);
        Optional<Size> size = Sizes.size(new Cell("SIZE", 0, "", given.matchedPositionalValue(0, ""), problems));
        Length length = arguments.length("--length", "16 ft 3 1/2 in", LONGEST);
        Length stump = arguments.lengthOrNone("--stump", "1 ft", Length.feet(10));
        Length kerf = arguments.lengthOrNone("--kerf", "3/8 in", Length.inches(2));
        Optional<Double> wane = arguments.cell("--wane", "25 %").quantity(Units.PERCENT, WANE);
        String table = given.matchedPositionalValue(1, "");
        problems.stopIfAny();
        List<String> remarks = new ArrayList<>();
        List<String> basis = new ArrayList<>();
        List<Tree> trees = table.isEmpty() ? List.of() : TimberTable.read(table, terminal, remarks, basis);
        double share = wane.orElseThrow() / 100;
        SquaredTimber timber =
                new SquaredTimber(size.orElseThrow().width(), size.orElseThrow().thickness(), new Wane(share, share));
        TimberTrees wanted = new TimberTrees(timber, length, stump, kerf);
        List<String> refusals = new ArrayList<>();
        List<Tree> asked = new ArrayList<>();
        for (Tree tree : trees) {
            try {
                wanted.ask(tree);
                asked.add(tree);
            } catch (OutOfDomainException e) {
                refusals.add("tree " + tree.id() + ": " + e.getMessage());
            }
        }
        remarks.forEach(terminal::say);
        refusals.forEach(terminal::say);
        TimberSheet sheet = new TimberSheet(wanted, asked);
        if (!table.isEmpty()) {
            basis.add(
                    0,
                    "Of a tree without its bark the stem below 17.3 ft is taken as no thicker than there; measured"
                            + " stems are straight between the places measured.");
        }
        remarks.forEach(words -> basis.add(words + "."));
        if (!refusals.isEmpty()) {
            basis.add(refusals.size() + (refusals.size() == 1 ? " tree" : " trees")
                    + " of the table could not be asked; the messages say why.");
        }
        return ANSWER.give(
                given,
                terminal,
                folder,
                sheet.text(basis),
                sheet::table,
                () -> sheet.workings(
                        Sources.get("command-line"),
                        new Source("trees", Standing.GIVEN, "", "From the table " + Sheets.file(table), "", "")));
    }
}
