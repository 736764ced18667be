package org.woodyield.show;

import java.util.ArrayList;
import java.util.List;
import org.woodyield.log.Log;
import org.woodyield.log.LogSolid;
import org.woodyield.measure.Length;
import org.woodyield.measure.Rounding;
import org.woodyield.plan.JobInput;
import org.woodyield.sawing.Frame;

/** Tells of offsets that are so great that no piece as long as its log lies in any log of a job. */
public final class IdleOffsets {

    private IdleOffsets() {}

    /**
     * What is said of them. A line along the saw's travel stays in a log only if the axis rises from end to end by less than half of both
     * ends' greatest diameters together.
     *
     * @param job the job
     * @return a sentence for each such offset
     */
    public static List<String> of(JobInput job) {
        if (!job.space().lays().contains(Frame.Lay.OFFSET)) {
            return List.of();
        }
        double most = 0;
        for (Log log : job.logs()) {
            LogSolid solid = LogSolid.of(log);
            most = Math.max(
                    most,
                    solid.section(0).halfLongMetres()
                            + solid.section(solid.lengthMetres()).halfLongMetres());
        }
        Length limit = Length.ofMetres(most, Rounding.DOWN);
        List<String> said = new ArrayList<>();
        for (Length offset : job.space().offsets()) {
            boolean below = offset.compareTo(Length.ZERO) < 0;
            if ((below ? Length.ZERO.minus(offset) : offset).compareTo(limit) >= 0) {
                said.add("Offset " + offset
                        + " lies outside of every log: no line along the saw's travel stays in the wood"
                        + " from end to end, so at most pieces shorter than the log come of it. It would have to be less than "
                        + limit.inInches(8, Rounding.DOWN) + " either way; take it out, or check the unit.");
            }
        }
        return said;
    }
}
