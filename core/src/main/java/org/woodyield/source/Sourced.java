package org.woodyield.source;

/**
 * A number together with what it rests on.
 *
 * @param value the number, finite
 * @param unit its unit as written, {@code "%"} or {@code ""} included
 * @param source what it rests on
 */
public record Sourced(double value, String unit, Source source) {

    /**
     * Refuses a value that is not a number.
     *
     * @throws IllegalArgumentException if the value is not finite
     */
    public Sourced {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("value from " + source.id() + " is not finite");
        }
    }
}
