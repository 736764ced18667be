package org.woodyield.measure;

/**
 * How a value that is not known exactly may lie (after Supplement 1 to the GUM, JCGM 101).
 *
 * <p>Source: {@code gum-supplement-2008} in the register.
 */
public sealed interface Distribution {

    /**
     * The expectation.
     *
     * @return the mean
     */
    double mean();

    /**
     * The standard uncertainty.
     *
     * @return one standard deviation, zero for a fixed value
     */
    double standardDeviation();

    /**
     * The lowest value there can be.
     *
     * @return the lower end, minus infinity where there is none
     */
    double least();

    /**
     * The highest value there can be.
     *
     * @return the upper end, infinity where there is none
     */
    double greatest();

    /**
     * Draws a value.
     *
     * @param draws the generator; the count of numbers taken from it is the same for every draw of one distribution
     * @return the value
     */
    double draw(Draws draws);

    /**
     * A value taken as exact.
     *
     * @param value finite
     */
    record Fixed(double value) implements Distribution {
        /**
         * Refuses what is not a number.
         *
         * @throws OutOfDomainException if the value is not finite
         */
        public Fixed {
            finite("value", value);
        }

        @Override
        public double mean() {
            return value;
        }

        @Override
        public double standardDeviation() {
            return 0;
        }

        @Override
        public double least() {
            return value;
        }

        @Override
        public double greatest() {
            return value;
        }

        @Override
        public double draw(Draws draws) {
            return value;
        }
    }

    /**
     * The normal law.
     *
     * @param mean finite
     * @param standardDeviation zero or more
     */
    record Normal(double mean, double standardDeviation) implements Distribution {
        /**
         * Refuses what is not a spread.
         *
         * @throws OutOfDomainException if the mean is not finite or the deviation negative or not finite
         */
        public Normal {
            finite("mean", mean);
            Domain.notNegative("standard uncertainty", "").require(standardDeviation);
        }

        @Override
        public double least() {
            return Double.NEGATIVE_INFINITY;
        }

        @Override
        public double greatest() {
            return Double.POSITIVE_INFINITY;
        }

        @Override
        public double draw(Draws draws) {
            return mean + standardDeviation * draws.nextNormal();
        }
    }

    /**
     * Every place in a range alike.
     *
     * @param least the lower end
     * @param greatest the upper end
     */
    record Rectangular(double least, double greatest) implements Distribution {
        /**
         * Refuses crossed ends.
         *
         * @throws OutOfDomainException if the ends are crossed or not finite
         */
        public Rectangular {
            ordered(least, greatest);
        }

        @Override
        public double mean() {
            return (least + greatest) / 2;
        }

        @Override
        public double standardDeviation() {
            return (greatest - least) / StrictMath.sqrt(12);
        }

        @Override
        public double draw(Draws draws) {
            return least + (greatest - least) * draws.nextDouble();
        }
    }

    /**
     * A range with a likeliest value: the density rises straight to the peak and falls straight from it.
     *
     * @param least the lower end
     * @param peak the likeliest value
     * @param greatest the upper end
     */
    record Triangular(double least, double peak, double greatest) implements Distribution {
        /**
         * Refuses crossed ends.
         *
         * @throws OutOfDomainException if the three are not in order or not finite
         */
        public Triangular {
            ordered(least, peak);
            ordered(peak, greatest);
        }

        @Override
        public double mean() {
            return (least + peak + greatest) / 3;
        }

        @Override
        public double standardDeviation() {
            double low = peak - least;
            double high = greatest - peak;
            return StrictMath.sqrt((low * low + high * high + low * high) / 18);
        }

        @Override
        public double draw(Draws draws) {
            double u = draws.nextDouble();
            double width = greatest - least;
            double low = peak - least;
            if (u * width < low) {
                return least + StrictMath.sqrt(u * width * low);
            }
            return greatest - StrictMath.sqrt((1 - u) * width * (greatest - peak));
        }
    }

    private static void finite(String parameter, double value) {
        if (!Double.isFinite(value)) {
            throw new OutOfDomainException(parameter, Double.toString(value), "", "finite numbers", "");
        }
    }

    private static void ordered(double lower, double upper) {
        finite("range", lower);
        finite("range", upper);
        if (!(lower <= upper)) {
            throw new OutOfDomainException(
                    "range", lower + " to " + upper, "", "the lesser end first", "exchange the ends");
        }
    }
}
