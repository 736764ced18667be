package org.woodyield.work;

import org.woodyield.measure.BoardFeet;

/**
 * Another saw that saws the logs of a job for the same lumber.
 *
 * @param name of the saw
 * @param inputs work and prices with it; the price of lumber is that of a board foot of what has to be bought beside
 * @param cost what sawing the logs with it costs, spread over the usable lumber of the job
 * @param serves usable board feet of its lumber that stand in for bought lumber
 * @param bought board feet that have to be bought beside, zero or more
 * @param more what it makes beyond the lumber of the job, as board feet of the mean price of that, zero or more
 */
public record OtherSaw(String name, WorkInputs inputs, JobCost cost, BoardFeet serves, double bought, double more) {}
