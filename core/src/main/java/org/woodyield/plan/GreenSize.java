package org.woodyield.plan;

import java.util.Optional;
import org.woodyield.lumber.GreenTargetSize;
import org.woodyield.measure.Length;
import org.woodyield.wood.Species;
import org.woodyield.working.Working;

/**
 * What to saw green of one thing wanted in one species, so that it dries and planes to its finished size.
 *
 * @param wantedId what is wanted
 * @param species the wood
 * @param finishedThickness thickness at the final moisture, planed where it is dressed
 * @param finishedWidth width likewise; the least one for boards of random width
 * @param shrinkageModel the model of shrinkage in words; empty where the wood is finished green
 * @param thickness how the green thickness comes about
 * @param width how the green width comes about; of the least one for boards of random width
 * @param thicknessToSaw green thickness as the saw leaves it
 * @param widthToSaw green width as the saw leaves it
 * @param shrinkageWorking how the shrinkage came about; empty where the wood is finished green
 */
public record GreenSize(
        String wantedId,
        Species species,
        Length finishedThickness,
        Length finishedWidth,
        Optional<String> shrinkageModel,
        GreenTargetSize thickness,
        GreenTargetSize width,
        Length thicknessToSaw,
        Length widthToSaw,
        Optional<Working> shrinkageWorking) {

    /**
     * What a piece as thick as the setting has to spare in the mean, dried and planed by the allowance; it is planed off.
     *
     * @return in inches over the finished thickness, not rounded
     */
    public double sparePlanedThicknessInches() {
        return thickness.planedInches(thicknessToSaw) - finishedThickness.toInches();
    }

    /**
     * Share of a piece's wood that it has only because thickness and width are taken up to what the saw can be set to.
     *
     * @param sawnWidth green width of the piece as the saw leaves it
     * @return 0 to 1
     */
    public double settingShare(Length sawnWidth) {
        double spare = widthToSaw.toInches() - width.targetInches();
        double target = thickness.targetInches() * (sawnWidth.toInches() - spare);
        return 1 - target / (thicknessToSaw.toInches() * sawnWidth.toInches());
    }

    /**
     * Share of pieces that the scatter of the saw leaves too thin to plane clean.
     *
     * @return 0 to 1
     */
    public double scantShare() {
        return thickness.scantShare(thicknessToSaw);
    }
}
