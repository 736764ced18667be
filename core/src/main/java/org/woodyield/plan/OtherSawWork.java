package org.woodyield.plan;

import java.util.List;
import java.util.Optional;
import org.woodyield.measure.BoardFeet;
import org.woodyield.measure.Length;
import org.woodyield.measure.Money;
import org.woodyield.work.JobCost;
import org.woodyield.work.LogWork;
import org.woodyield.work.OtherSaw;
import org.woodyield.work.SupplyWays;
import org.woodyield.work.WorkEstimate;
import org.woodyield.work.WorkInput;
import org.woodyield.work.WorkInputs;

/**
 * The passes of another saw on the logs of a job, and its lumber beside that of the saw of the job.
 *
 * @param name of the saw
 * @param inputs work and prices with it; the price of lumber is that of what has to be bought beside
 * @param kerf of it
 * @param works the passes of each log
 * @param lumber its lumber beside that of the saw of the job
 * @param things what its lumber is
 */
record OtherSawWork(
        String name,
        WorkInputs inputs,
        Length kerf,
        List<LogWork> works,
        LumberWorth.Beside lumber,
        List<SupplyWays.Thing> things) {

    /**
     * The work with another saw.
     *
     * @param job with that saw
     * @param works the passes of each log
     * @param its lumber
     * @param own lumber of the saw of the job
     * @param mean price of a usable board foot of the job, where it is known
     */
    static OtherSawWork of(JobInput job, List<LogWork> works, LumberWorth its, LumberWorth own, Optional<Double> mean) {
        LumberWorth.Beside lumber = own.beside(its);
        WorkInputs priced = lumber.price()
                .map(price -> job.work().with(WorkInput.LUMBER_PRICE, price))
                .orElse(job.work());
        return new OtherSawWork(job.saw().name(), priced, job.saw().kerf(), works, lumber, its.things(job, mean));
    }

    /** What a reader is told of its lumber. */
    JobPlan.OtherSaw told(String currency) {
        return new JobPlan.OtherSaw(
                name,
                BoardFeet.usable(lumber.usable()),
                BoardFeet.usable(lumber.serves()),
                lumber.lacking(),
                lumber.price().map(price -> new Money(price.value(), currency)),
                lumber.more(),
                lumber.worth().map(worth -> new Money(worth, currency)),
                Optional.empty());
    }

    /** What a reader is told of a saw that cannot saw the logs. */
    static JobPlan.OtherSaw unable(String name, String why) {
        BoardFeet none = BoardFeet.usable(0);
        return new JobPlan.OtherSaw(name, none, none, 0, Optional.empty(), 0, Optional.empty(), Optional.of(why));
    }

    /** Its cost in one draw, spread over the lumber of the job. */
    OtherSaw drawn(WorkInputs some, String currency, BoardFeet usable, Optional<Double> price) {
        return new OtherSaw(
                name,
                some,
                JobCost.of(some, currency, WorkEstimate.of(some, kerf, works), usable),
                BoardFeet.usable(lumber.usable()),
                things,
                lumber.lacking(),
                // The prices of the job move together, so its mean price carries the worth through the draws.
                lumber.more() > 0 && price.isPresent() && price.get() > 0
                        ? lumber.worth().orElse(0.0) / price.get()
                        : 0);
    }
}
