package org.woodyield.measure;

/**
 * An estimated amount in one currency. It is a result of a model, not an entry in a ledger, so it is a double and is
 * rounded only where it is shown.
 *
 * @param amount finite, below zero for a loss
 * @param currency the currency as the user writes it, for example {@code USD}
 */
public record Money(double amount, String currency) implements Comparable<Money> {

    /**
     * Refuses what is not an amount.
     *
     * @throws OutOfDomainException if the amount is not finite or the currency blank
     */
    public Money {
        if (!Double.isFinite(amount)) {
            throw new OutOfDomainException("amount", Double.toString(amount), currency, "finite numbers", "");
        }
        if (currency.isBlank()) {
            throw new OutOfDomainException("currency", "empty", "", "a short code such as USD", "");
        }
    }

    /**
     * The sum.
     *
     * @param other an amount in the same currency
     * @return the sum
     * @throws IllegalArgumentException if the currencies differ
     */
    public Money plus(Money other) {
        requireSame(other);
        return new Money(amount + other.amount, currency);
    }

    /**
     * The difference.
     *
     * @param other an amount in the same currency
     * @return this less the other
     * @throws IllegalArgumentException if the currencies differ
     */
    public Money minus(Money other) {
        requireSame(other);
        return new Money(amount - other.amount, currency);
    }

    /**
     * A multiple.
     *
     * @param factor finite
     * @return so many times this
     */
    public Money times(double factor) {
        return new Money(amount * factor, currency);
    }

    @Override
    public int compareTo(Money other) {
        requireSame(other);
        return Double.compare(amount, other.amount);
    }

    private void requireSame(Money other) {
        if (!other.currency.equals(currency)) {
            throw new IllegalArgumentException(currency + " and " + other.currency + " do not mix");
        }
    }
}
