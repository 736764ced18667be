package org.woodyield.log;

import java.util.List;
import org.woodyield.measure.Domain;
import org.woodyield.source.PublishedTable;

/**
 * A tree that was felled and measured.
 *
 * @param breastHeightInches diameter at 4.5 ft, outside bark
 * @param heightFeet total height
 * @param volumeCubicFeet volume of the stem
 */
public record MeasuredTree(double breastHeightInches, double heightFeet, double volumeCubicFeet) {

    private static final Domain BREAST_HEIGHT = Domain.of("diameter at breast height", "in", 0.1, 400);
    private static final Domain HEIGHT = Domain.of("height", "ft", 4.5, 400);
    private static final Domain VOLUME = Domain.of("volume", "ft3", 0.001, 1e5);

    /**
     * Refuses what is no tree.
     *
     * @throws org.woodyield.measure.OutOfDomainException if a value is out of reason or NaN
     */
    public MeasuredTree {
        BREAST_HEIGHT.require(breastHeightInches);
        HEIGHT.require(heightFeet);
        VOLUME.require(volumeCubicFeet);
    }

    /**
     * The 31 black cherry trees felled in the Allegheny National Forest that many textbooks use.
     *
     * @return in the order printed, by diameter
     */
    public static List<MeasuredTree> blackCherry() {
        return PublishedTable.read(MeasuredTree.class, "black_cherry_trees.csv").rows().stream()
                .map(row -> new MeasuredTree(row.number("dbh_in"), row.number("height_ft"), row.number("volume_ft3")))
                .toList();
    }
}
