package org.woodyield.log;

import org.woodyield.measure.Length;

/**
 * A place along a log at which its diameter was measured. A butt flare is a few of them near the large end.
 *
 * @param distance from the small end
 * @param diameter mean diameter inside bark
 */
public record ProfileStation(Length distance, Length diameter) {}
