package org.woodyield.measure;

/**
 * A value that a calculation refuses, with all that a reader needs to mend it.
 *
 * <p>The message reads: parameter, value and unit, what is allowed, remedy.
 */
public final class OutOfDomainException extends IllegalArgumentException {

    private static final long serialVersionUID = 1L;

    /** What was refused, as written to the user. */
    private final String parameter;

    /** The value as it came. */
    private final String value;

    /** The unit of the value, possibly empty. */
    private final String unit;

    /** What is allowed. */
    private final String limits;

    /** What to do. */
    private final String remedy;

    /**
     * Builds the refusal.
     *
     * @param parameter what was refused, for example {@code scaling diameter}
     * @param value the value as it came
     * @param unit its unit, possibly empty
     * @param limits what is allowed, for example {@code 6 to 120 in}
     * @param remedy what to do, as a short sentence without full stop; possibly empty
     */
    public OutOfDomainException(String parameter, String value, String unit, String limits, String remedy) {
        super(parameter + " is " + value + (unit.isEmpty() ? "" : " " + unit) + "; allowed: " + limits
                + (remedy.isEmpty() ? "" : "; " + remedy));
        this.parameter = parameter;
        this.value = value;
        this.unit = unit;
        this.limits = limits;
        this.remedy = remedy;
    }

    /** {@inheritDoc} */
    @Override
    public String getMessage() {
        return String.valueOf(super.getMessage());
    }

    /**
     * What was refused.
     *
     * @return the parameter's name
     */
    public String parameter() {
        return parameter;
    }

    /**
     * The value as it came.
     *
     * @return the value's text
     */
    public String value() {
        return value;
    }

    /**
     * The unit of the value.
     *
     * @return the unit, possibly empty
     */
    public String unit() {
        return unit;
    }

    /**
     * What is allowed.
     *
     * @return the limits in words
     */
    public String limits() {
        return limits;
    }

    /**
     * What to do.
     *
     * @return a short sentence, possibly empty
     */
    public String remedy() {
        return remedy;
    }
}
