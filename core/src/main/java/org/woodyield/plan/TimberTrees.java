package org.woodyield.plan;

import java.util.ArrayList;
import java.util.List;
import org.woodyield.log.StemProfile;
import org.woodyield.measure.Length;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.sawing.SquaredTimber;
import org.woodyield.source.Source;
import org.woodyield.source.Sources;
import org.woodyield.working.Calculation;
import org.woodyield.working.Working;

/**
 * Which standing trees give a wanted timber: those whose stem is thick enough at the upper end of the first log.
 *
 * @param timber the timber
 * @param length of the log, trim included
 * @param stump height of the stump
 * @param kerf of the bucking cut
 */
@Calculation("plan.timber-trees")
public record TimberTrees(SquaredTimber timber, Length length, Length stump, Length kerf) {

    /**
     * A tree that is asked about.
     *
     * @param id the user's name for it
     * @param profile its diameters
     */
    public record Tree(String id, StemProfile profile) {}

    /**
     * What a tree gives.
     *
     * @param tree the tree
     * @param timbers logs for the timber, one above the other from the stump
     * @param endInches diameter inside bark at the upper end of the first log
     * @param spareInches by how much it is thicker than needed, below zero if too thin
     */
    public record Answer(Tree tree, int timbers, double endInches, double spareInches) {}

    /**
     * Refuses lengths that make no sense.
     *
     * @throws OutOfDomainException if the log has no length, or stump or kerf are below zero
     */
    public TimberTrees {
        if (!length.isPositive() || stump.compareTo(Length.ZERO) < 0 || kerf.compareTo(Length.ZERO) < 0) {
            throw new OutOfDomainException(
                    "log for a timber",
                    length + ", stump " + stump + ", kerf " + kerf,
                    "",
                    "a length above 0, stump and kerf 0 or more",
                    "");
        }
    }

    /**
     * Asks one tree.
     *
     * @param tree the tree
     * @return what it gives; no timber if it is too thin
     * @throws OutOfDomainException if the profile does not reach from the stump to the end of the first log
     */
    public Answer ask(Tree tree) {
        tree.profile().diameterInches(stump.toFeet());
        double need = timber.smallestEndInches();
        double first = tree.profile().diameterInches(end(0).toFeet());
        int timbers = 0;
        while (tree.profile().heightFeet().holds(end(timbers).toFeet())
                && tree.profile().diameterInches(end(timbers).toFeet()) >= need) {
            timbers++;
        }
        return new Answer(tree, timbers, first, first - need);
    }

    private Length end(int logsBelow) {
        return stump.plus(length.plus(kerf).times(logsBelow)).plus(length);
    }

    /**
     * The trees that give at least one timber.
     *
     * @param trees the trees
     * @return in their order
     * @throws OutOfDomainException if a profile does not reach from the stump to the end of the first log
     */
    public List<Answer> holding(List<Tree> trees) {
        List<Answer> holding = new ArrayList<>();
        for (Tree tree : trees) {
            Answer answer = ask(tree);
            if (answer.timbers() > 0) {
                holding.add(answer);
            }
        }
        return List.copyOf(holding);
    }

    /**
     * How the spare thickness of a tree comes about.
     *
     * @param tree the tree
     * @return a working with the value of {@link Answer#spareInches}
     * @throws OutOfDomainException if the profile does not reach to the end of the first log
     */
    public Working working(Tree tree) {
        return working(tree, Sources.get("given"));
    }

    /**
     * How the spare thickness of a tree comes about, with the origin of the tree's own values.
     *
     * @param tree the tree
     * @param origin who gave its values; the height asked for follows from stump and length
     * @return a working with the value of {@link Answer#spareInches}
     * @throws OutOfDomainException if the profile does not reach to the end of the first log
     */
    public Working working(Tree tree, Source origin) {
        Working end = tree.profile()
                .working(end(0).toFeet())
                .givenBy("h", Sources.get("end-of-log"))
                .givenBy(origin);
        Working need = timber.smallestEndInchesWorking();
        return Working.of("Whether tree " + tree.id() + " holds the timber")
                .include(end)
                .step(
                        "end",
                        "stem at the upper end of the first log",
                        end.result().symbol(),
                        "in",
                        end.result().source())
                .include(need)
                .step(
                        "spare",
                        "thicker than needed by",
                        "end - " + need.result().symbol(),
                        "in",
                        need.result().source())
                .build();
    }
}
