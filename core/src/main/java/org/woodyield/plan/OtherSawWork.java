package org.woodyield.plan;

import java.util.List;
import java.util.Optional;
import org.woodyield.measure.BoardFeet;
import org.woodyield.measure.Length;
import org.woodyield.measure.Money;
import org.woodyield.work.JobCost;
import org.woodyield.work.LogWork;
import org.woodyield.work.OtherSaw;
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
 */
record OtherSawWork(String name, WorkInputs inputs, Length kerf, List<LogWork> works, LumberWorth.Beside lumber) {

    /** With the price of what has to be bought beside among the inputs, where it is known. */
    static OtherSawWork of(
            String name, WorkInputs inputs, Length kerf, List<LogWork> works, LumberWorth.Beside lumber) {
        WorkInputs priced = lumber.price()
                .map(price -> inputs.with(WorkInput.LUMBER_PRICE, price))
                .orElse(inputs);
        return new OtherSawWork(name, priced, kerf, works, lumber);
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
                BoardFeet.usable(lumber.serves() + lumber.more()),
                lumber.lacking(),
                // The prices of the job move together, so its mean price carries the worth through the draws.
                lumber.more() > 0 && price.isPresent() && price.get() > 0
                        ? lumber.worth().orElse(0.0) / price.get()
                        : 0);
    }
}
