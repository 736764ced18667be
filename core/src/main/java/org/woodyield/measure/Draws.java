package org.woodyield.measure;

/**
 * A seeded generator of its own, so that the same seed gives the same draws on every platform and release: the 64-bit
 * mixer of Steele, Lea and Flood (Fast splittable pseudorandom number generators, 2014). The state rises by the odd
 * number {@code 0x9e3779b97f4a7c15} a step; the output is the state after two rounds of shift, exclusive-or and
 * multiplication and a last shift. Not safe for secrets, not shared between threads.
 */
public final class Draws {

    private static final double TWO_PI = 2 * Math.PI;

    private long state;

    private Draws(long seed) {
        this.state = seed;
    }

    /**
     * A generator.
     *
     * @param seed any number
     * @return the generator at its beginning
     */
    public static Draws seeded(long seed) {
        return new Draws(seed);
    }

    /**
     * The next 64 bits.
     *
     * @return every value alike
     */
    public long nextLong() {
        state += 0x9e3779b97f4a7c15L;
        long z = state;
        z = (z ^ (z >>> 30)) * 0xbf58476d1ce4e5b9L;
        z = (z ^ (z >>> 27)) * 0x94d049bb133111ebL;
        return z ^ (z >>> 31);
    }

    /**
     * The next number from 0 to 1, 1 excluded: the upper 53 bits over 2 to the power 53.
     *
     * @return every multiple alike
     */
    public double nextDouble() {
        return (nextLong() >>> 11) * 0x1.0p-53;
    }

    /**
     * The next number from the standard normal law, from two uniform ones after Box and Muller: {@code sqrt(-2 ln(1 - u))
     * cos(2 pi v)}.
     *
     * @return mean 0, standard deviation 1
     */
    public double nextNormal() {
        double u = nextDouble();
        double v = nextDouble();
        return StrictMath.sqrt(-2 * StrictMath.log(1 - u)) * StrictMath.cos(TWO_PI * v);
    }
}
