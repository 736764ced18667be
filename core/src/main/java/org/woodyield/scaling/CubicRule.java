package org.woodyield.scaling;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import org.woodyield.log.Log;
import org.woodyield.measure.Domain;
import org.woodyield.measure.Length;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.measure.Rounding;
import org.woodyield.source.PublishedTable;
import org.woodyield.source.Source;
import org.woodyield.source.Sources;
import org.woodyield.source.Standing;
import org.woodyield.working.Calculation;
import org.woodyield.working.Working;

/**
 * The cubic rules of countries: cubic metres of a log from one diameter or girth in centimetres and the length in metres.
 *
 * <p>{@link #centimetres(Length...)} and {@link #metres} take readings to the rule's classes; {@link
 * #cubicMetres(double, double)} computes and rounds, {@link #cubicMetres(Log)} does all of it for a log.
 * Where no rounding is stated nothing is rounded. Lengths go to the nearest centimetre, so that an exact half is one.
 */
@Calculation("scaling.cubic-rule")
public enum CubicRule {
    /** Japan, JAS: D^2 L/10000; from 6 m with half a centimetre to each whole metre above 4 m. */
    JAPAN("japan", "Japan, logs (JAS)", Place.LEAST_SMALL_END, 1000, "japan-logs-page", "japan-practice-memory"),
    /** Korea: as Japan. */
    KOREA("korea", "Korea", Place.LEAST_SMALL_END, 1000, "japan-logs-page", "japan-practice-memory"),
    /** Japan, imported logs, 1968: 0.6, 0.8 or the whole of that allowance, by diameter. */
    JAPAN_1968(
            "japan-1968",
            "Japan, imported logs (1968)",
            Place.LEAST_SMALL_END,
            1000,
            "japan-trade-pages",
            "japan-logs-page",
            "japan-practice-memory"),
    /** Japan, by the mean of least and greatest small-end diameter: D^2 L/10000. */
    JAPAN_MEAN("japan-mean-diameter", "Japan, mean diameter", Place.MEAN_SMALL_END, 0, "japan-trade-pages"),
    /** South-Sea logs in Japan: 0.7854 D^2 L/10000 of the mean of both ends. */
    SOUTH_SEA("south-sea", "South-Sea logs (Japan, 1961)", Place.MEAN_OF_ENDS, 1000, "japan-trade-pages"),
    /** Indonesia, metric Brereton: 0.7854 D^2 L/10000 of the mean of both ends. */
    INDONESIA("indonesia", "Indonesia (Brereton metric)", Place.MEAN_OF_ENDS, 0, "indonesia-1970"),
    /** China, GB 4814-84: one formula to 12 cm, one from 14 cm, a third outside 2 to 10 m. */
    CHINA("china", "China (GB 4814-84)", Place.MEAN_SMALL_END, 1000, "gb-4814-text", "gb-4814-range-memory"),
    /**
     * China, poles of fir, GB 4815-84; D is taken 2.5 m from the butt. The copy read prints 0.4902 L/10000 for 8 cm, a
     * hundredth of what its neighbours lead to; 0.4902 L/100 is meant.
     */
    CHINA_FIR_POLES("china-fir-poles", "China, fir poles (GB 4815-84)", Place.NEAR_BUTT, 0, "gb-4815-memory"),
    /** Russia, GOST 2708-75, table 1 as printed: even classes of 14 to 38 cm, 1.0 to 9.0 m in half metres. */
    RUSSIA("russia", "Russia (GOST 2708-75)", Place.MEAN_SMALL_END, 1000, "gost-2708-75"),
    /** Sweden, m3to: cylinder on the area 10 cm from the top end, under bark. */
    SWEDEN_TOP("sweden-top", "Sweden, top measure (m3to)", Place.TEN_FROM_TOP, 0, "swedish-forest-agency"),
    /** Sweden, m3mi: cylinder on the area at mid-length, under bark. */
    SWEDEN_MIDDLE("sweden-middle", "Sweden, middle measure (m3mi)", Place.MIDDLE, 0, "sca-measures"),
    /** Germany: cylinder on the mid-diameter, readings and mean in whole centimetres, rounded down. */
    GERMANY("germany", "Germany, mid-diameter", Place.MIDDLE, 0, "germany-forum"),
    /** France, real volume: C^2 L/(4 pi) of the girth at mid-length in whole centimetres, rounded down. */
    FRANCE("france-girth", "France, real volume from girth", Place.GIRTH, 1000, "france-girth-page");

    /** Where the diameter or girth is taken. */
    public enum Place {
        /** Least diameter of the small end. */
        LEAST_SMALL_END("least small-end diameter inside bark", 3, 300),
        /** Mean diameter of the small end. */
        MEAN_SMALL_END("small-end diameter inside bark", 3, 300),
        /** Mean of the diameters of both ends. */
        MEAN_OF_ENDS("mean diameter of both ends inside bark", 3, 300),
        /** Diameter at mid-length. */
        MIDDLE("diameter at mid-length inside bark", 3, 300),
        /** Diameter 10 cm from the small end. */
        TEN_FROM_TOP("diameter 10 cm from the small end inside bark", 3, 300),
        /** Diameter 2.5 m from the butt. */
        NEAR_BUTT("diameter 2.5 m from the butt", 3, 300),
        /** Girth at mid-length. */
        GIRTH("girth at mid-length", 9, 950);

        private final String label;

        // Immutable; the compiler's check does not know records.
        @SuppressWarnings("ImmutableEnumChecker")
        private final Domain domain;

        Place(String label, double least, double greatest) {
            this.label = label;
            domain = new Domain(label, "cm", least, greatest, "give it in centimetres, and measure again");
        }

        /**
         * The words in which this is shown.
         *
         * @return a short phrase
         */
        public String label() {
            return label;
        }
    }

    private static final Domain LENGTH = new Domain("length", "m", 0.5, 30, "give it in metres, of one log");
    private static final Length CENTIMETRE = Length.millimetres(10);
    private static final Length FROM_BUTT = Length.millimetres(2500);

    /** The Russian table; read when it is first asked for. */
    private static final class Gost {
        private static final PublishedTable TABLE = PublishedTable.read(CubicRule.class, "gost_2708_75_table1.csv");
        private static final int LEAST = 14;

        /** By diameter class, then by half metres from 1.0 m. */
        private static final double[][] CELLS = cells();

        private static double[][] cells() {
            List<String> lengths = TABLE.columns().subList(1, TABLE.columns().size());
            double[][] cells = new double[TABLE.rows().size()][lengths.size()];
            for (int i = 0; i < cells.length; i++) {
                PublishedTable.Row row = TABLE.rows().get(i);
                if (row.number("diameter_cm") != LEAST + 2 * i) {
                    throw new IllegalStateException(
                            TABLE.name() + " line " + row.line() + ": diameters are not in order");
                }
                for (int j = 0; j < lengths.size(); j++) {
                    if (Double.parseDouble(lengths.get(j)) != 1 + j / 2.0) {
                        throw new IllegalStateException(TABLE.name() + ": lengths are not in order");
                    }
                    cells[i][j] = row.number(lengths.get(j));
                }
            }
            return cells;
        }

        private static double cell(double centimetres, double metres) {
            double row = (centimetres - LEAST) / 2;
            double column = (metres - 1) * 2;
            if (!(row >= 0 && row < CELLS.length && row == Math.rint(row))) {
                throw new OutOfDomainException(
                        "diameter class",
                        Double.toString(centimetres),
                        "cm",
                        "even centimetres from 14 to 38",
                        "take the readings to a class first; other rows of the table were not read");
            }
            if (!(column >= 0 && column < CELLS[0].length && column == Math.rint(column))) {
                throw new OutOfDomainException(
                        "length",
                        Double.toString(metres),
                        "m",
                        "1.0 to 9.0 in steps of 0.5",
                        "the table has no cells between; its other lengths were not read");
            }
            return CELLS[(int) row][(int) column];
        }
    }

    private final String id;
    private final String label;
    private final Place place;
    private final int parts;
    private final String sources;

    /** Parts of a cubic metre to which the rule rounds, or 0. */
    CubicRule(String id, String label, Place place, int parts, String... sources) {
        this.id = id;
        this.label = label;
        this.place = place;
        this.parts = parts;
        this.sources = String.join(" ", sources);
    }

    /**
     * A rule by its id.
     *
     * @param id for example {@code japan}
     * @return the rule
     * @throws OutOfDomainException if there is none; names all that there are
     */
    public static CubicRule byId(String id) {
        return Arrays.stream(values())
                .filter(rule -> rule.id.equals(id))
                .findFirst()
                .orElseThrow(() -> new OutOfDomainException(
                        "cubic rule",
                        "'" + id + "'",
                        "",
                        Arrays.stream(values()).map(CubicRule::id).collect(Collectors.joining(", ")),
                        "take one of these ids"));
    }

    /**
     * The key.
     *
     * @return lower case with hyphens
     */
    public String id() {
        return id;
    }

    /**
     * The name as shown.
     *
     * @return a short phrase
     */
    public String label() {
        return label;
    }

    /**
     * Where the diameter or girth is taken.
     *
     * @return the place
     */
    public Place place() {
        return place;
    }

    /**
     * What the rule rests on.
     *
     * @return one or more, the one that states the formula first
     */
    public List<Source> sources() {
        return Arrays.stream(sources.split(" ", -1)).map(Sources::get).toList();
    }

    /**
     * The weakest part that a value of the rule may rest on.
     *
     * @return the standing, shown wherever the rule's values are shown
     */
    public Standing standing() {
        return sources().stream()
                .map(Source::standing)
                .max(Comparator.naturalOrder())
                .orElseThrow();
    }

    /**
     * Whether the rule answers only when asked for by id, because its formula was recalled with less than high confidence.
     *
     * @return true to leave it out of lists and comparisons
     */
    public boolean byRequestOnly() {
        return this == CHINA_FIR_POLES;
    }

    /**
     * The diameters or girths that the rule accepts.
     *
     * @return in centimetres
     */
    public Domain domainCentimetres() {
        return place.domain;
    }

    /**
     * The lengths that the rule accepts.
     *
     * @return in metres
     */
    public Domain lengthMetres() {
        return LENGTH;
    }

    /**
     * What states how readings are taken to classes.
     *
     * @return the source of the formula where the classes have none of their own
     */
    public Source classSource() {
        return switch (this) {
            case JAPAN, KOREA, JAPAN_1968 -> Sources.get("japan-practice-memory");
            case RUSSIA -> Sources.get("gost-2292-memory");
            case GERMANY -> Sources.get("germany-memory");
            default -> sources().get(0);
        };
    }

    /**
     * How the rule rounds, and what states it.
     *
     * @return a sentence
     */
    public String rounding() {
        return switch (this) {
            case JAPAN, KOREA, JAPAN_1968 -> "To three decimals, an exact half up (recalled).";
            case SOUTH_SEA -> "To three decimals, the fourth half up.";
            case CHINA -> "To four decimals up to 6 cm and to three from 8 cm; an exact half up (ours).";
            case FRANCE -> "To three decimals; an exact half up (ours).";
            case RUSSIA -> "The cells are rounded as printed, to two decimals or three.";
            default -> "Not rounded; no rounding of the volume was read.";
        };
    }

    /**
     * The diameter or girth by which the rule scales, from readings at its place.
     *
     * <p>Japan and Korea take the least reading, below 14 cm down to the centimetre and from 14 cm down to the even one
     * (recalled); South-Sea logs each reading down to the even centimetre, then drop the decimals of the mean; Indonesia
     * each reading down to the centimetre; Russia the mean to the nearest class, 1 cm below 14 cm and 2 cm from there
     * (recalled); Germany each reading and the mean down; France the girth down. The others take the mean as it is.
     *
     * @param readings one or more
     * @return in centimetres
     * @throws OutOfDomainException if there is no reading or one is not above zero
     */
    public double centimetres(Length... readings) {
        if (readings.length == 0) {
            throw new OutOfDomainException("readings", "none", "", "one or more", "measure the " + place.label);
        }
        for (Length reading : readings) {
            if (!reading.isPositive()) {
                throw new OutOfDomainException(place.label, reading.toString(), "", "above 0", "measure again");
            }
        }
        return switch (this) {
            case JAPAN, KOREA, JAPAN_1968 ->
                classed(Arrays.stream(readings).min(Comparator.naturalOrder()).orElseThrow(), Rounding.DOWN);
            case SOUTH_SEA -> Math.floor(meanOfSteps(readings, CENTIMETRE.times(2)) * 2);
            case INDONESIA -> meanOfSteps(readings, CENTIMETRE);
            case GERMANY, FRANCE -> Math.floor(meanOfSteps(readings, CENTIMETRE));
            case RUSSIA -> classed(mean(readings), Rounding.HALF_UP);
            default -> mean(readings).toMillimetres() / 10;
        };
    }

    private static double classed(Length reading, Rounding rounding) {
        boolean coarse = reading.compareTo(CENTIMETRE.times(14)) >= 0;
        return coarse ? 2.0 * reading.steps(CENTIMETRE.times(2), rounding) : 1.0 * reading.steps(CENTIMETRE, rounding);
    }

    private static double meanOfSteps(Length[] readings, Length step) {
        long sum = 0;
        for (Length reading : readings) {
            sum += reading.steps(step, Rounding.DOWN);
        }
        return (double) sum / readings.length;
    }

    private static Length mean(Length[] readings) {
        Length sum = Length.ZERO;
        for (Length reading : readings) {
            sum = sum.plus(reading);
        }
        return sum.dividedBy(readings.length, Rounding.DOWN);
    }

    /**
     * The length by which the rule scales: South-Sea logs down to 20 cm; Indonesia less 10 cm of trim and down to 10 cm;
     * the others down to the centimetre.
     *
     * @param measured from end to end
     * @return in metres
     * @throws OutOfDomainException if nothing is left
     */
    public double metres(Length measured) {
        Length trim = this == INDONESIA ? CENTIMETRE.times(10) : Length.ZERO;
        long step = switch (this) {
            case SOUTH_SEA -> 20;
            case INDONESIA -> 10;
            default -> 1;
        };
        Length rest = measured.minus(trim);
        if (rest.compareTo(CENTIMETRE.times(step)) < 0) {
            throw new OutOfDomainException(
                    "length", measured.toString(), "", "a step of " + step + " cm and the trim", "measure again");
        }
        return (double) (rest.steps(CENTIMETRE.times(step), Rounding.DOWN) * step) / 100;
    }

    /**
     * The volume, rounded as the rule rounds.
     *
     * @param centimetres diameter or girth, symbol {@code D} or {@code C}
     * @param lengthMetres length, symbol {@code L}
     * @return in cubic metres
     * @throws OutOfDomainException outside the rule's domain, or for NaN
     */
    public double cubicMetres(double centimetres, double lengthMetres) {
        if (this == RUSSIA) {
            require(centimetres, lengthMetres);
            return Gost.cell(centimetres, lengthMetres);
        }
        double litres = litres(centimetres, lengthMetres);
        return rounded(litres, centimetres) / 1000;
    }

    /**
     * Scales many logs; each value has the bits of {@link #cubicMetres(double, double)}. Nothing is allocated for each log.
     *
     * @param centimetres diameter or girth, one for each log
     * @param lengthsMetres one for each log
     * @param cubicMetres receives the volumes; may be one of the other two arrays
     * @throws IllegalArgumentException if the arrays differ in length
     * @throws OutOfDomainException at the first log outside the domain; what lies before it is already written
     */
    public void cubicMetres(double[] centimetres, double[] lengthsMetres, double[] cubicMetres) {
        LogRules.requireSameLength(centimetres, lengthsMetres, cubicMetres);
        for (int i = 0; i < cubicMetres.length; i++) {
            cubicMetres[i] = cubicMetres(centimetres[i], lengthsMetres[i]);
        }
    }

    /**
     * The diameter or girth by which the rule scales a log, in whose ends the readings are taken: at the small end its two
     * diameters, at the large end the mean for both, elsewhere the mean off the log's profile or its straight taper. A
     * girth is that of a round section of the mean diameter.
     *
     * @param log inside bark
     * @return in centimetres
     * @throws OutOfDomainException if the log ends before the rule's place
     */
    public double centimetres(Log log) {
        return switch (place) {
            case LEAST_SMALL_END, MEAN_SMALL_END -> centimetres(log.smallEndLong(), log.smallEndShort());
            case MEAN_OF_ENDS ->
                centimetres(log.smallEndLong(), log.smallEndShort(), log.largeEndMean(), log.largeEndMean());
            case MIDDLE -> centimetres(middle(log));
            case TEN_FROM_TOP -> centimetres(log.meanDiameter(CENTIMETRE.times(10)));
            case NEAR_BUTT -> centimetres(log.meanDiameter(log.length().minus(FROM_BUTT)));
            case GIRTH ->
                centimetres(Length.ofMetres(StrictMath.PI * middle(log).toMetres(), Rounding.DOWN));
        };
    }

    private static Length middle(Log log) {
        return log.meanDiameter(log.length().dividedBy(2, Rounding.DOWN));
    }

    /**
     * The volume of a log, rounded as the rule rounds, by {@link #centimetres(Log)} and {@link #metres}.
     *
     * @param log inside bark
     * @return in cubic metres
     * @throws OutOfDomainException outside the rule's domain
     */
    public double cubicMetres(Log log) {
        return cubicMetres(centimetres(log), metres(log.length()));
    }

    /**
     * The working of {@link #cubicMetres(Log)}.
     *
     * @param log inside bark
     * @return a working with the same value
     * @throws OutOfDomainException outside the rule's domain
     */
    public Working working(Log log) {
        Working of = working(centimetres(log), metres(log.length()));
        Working.Builder working = Working.of(of.title() + ", log " + log.id())
                .given("a", "longest small-end diameter", log.smallEndLong().toMillimetres() / 10, "cm")
                .given("b", "shortest small-end diameter", log.smallEndShort().toMillimetres() / 10, "cm");
        if (asksTaper()) {
            working.given("e", "mean large-end diameter", log.largeEndMean().toMillimetres() / 10, "cm");
        }
        working.given("M", "length as measured", log.length().toMetres(), "m")
                .include(of)
                .note("Readings: " + place.label + (place == Place.GIRTH ? ", of a round section" : "")
                        + (asksTaper() && place != Place.MEAN_OF_ENDS
                                ? (log.profile().isEmpty()
                                        ? ", straight between the ends"
                                        : ", off the measured profile")
                                : "")
                        + ". Taken to the rule's classes as stated in: "
                        + classSource().citation() + ".");
        return working.build();
    }

    /**
     * The working from one reading at the rule's place.
     *
     * @param reading of the diameter or the girth
     * @param measured length from end to end
     * @return a working with the value of {@link #cubicMetres(double, double)} of the classes
     * @throws OutOfDomainException outside the rule's domain
     */
    public Working working(Length reading, Length measured) {
        Working of = working(centimetres(reading), metres(measured));
        return Working.of(of.title())
                .given("a", place.label + " as read", reading.toMillimetres() / 10, "cm")
                .given("M", "length as measured", measured.toMetres(), "m")
                .include(of)
                .note("Taken to the rule's classes as stated in: "
                        + classSource().citation() + ".")
                .build();
    }

    /**
     * Whether the rule looks elsewhere than at the small end, so that the large end has to be known.
     *
     * @return false for the rules of the small end
     */
    public boolean asksTaper() {
        return place != Place.LEAST_SMALL_END && place != Place.MEAN_SMALL_END;
    }

    /**
     * The volume before the rule's rounding; of a table the cell.
     *
     * @param centimetres diameter or girth
     * @param lengthMetres length
     * @return in cubic metres
     * @throws OutOfDomainException outside the rule's domain, or for NaN
     */
    public double unroundedCubicMetres(double centimetres, double lengthMetres) {
        return this == RUSSIA ? cubicMetres(centimetres, lengthMetres) : litres(centimetres, lengthMetres) / 1000;
    }

    /** A whole litre is rounded as {@link Rounding#HALF_UP} does, without its search for the step. */
    private double rounded(double litres, double centimetres) {
        if (parts == 0) {
            return litres;
        }
        double step = step(centimetres);
        return step == 1 ? Math.floor(litres + PublishedRule.BELOW_HALF) : Rounding.HALF_UP.toStep(litres, step);
    }

    private double step(double centimetres) {
        return this == CHINA && centimetres < 8 ? 0.1 : 1000.0 / parts;
    }

    /** In whole centimetres of length, where halves of a litre come out exact. */
    private double litres(double d, double l) {
        require(d, l);
        double c = Math.floor(100 * l + 0.5);
        return switch (this) {
            case JAPAN_MEAN -> d * d * c / 1000;
            case JAPAN, KOREA, JAPAN_1968 -> {
                double allowed = d + grows(d) * (Math.floor(c / 100) - 4) / 2;
                yield c < 600 ? d * d * c / 1000 : allowed * allowed * c / 1000;
            }
            case SOUTH_SEA, INDONESIA -> 0.7854 * (d * d) * c / 1000;
            case CHINA -> {
                if (third(l)) {
                    double sum = d + 0.5 * l;
                    yield 0.8 * l * (sum * sum) / 10000 * 1000;
                }
                double sum = d <= 12
                        ? d + 0.45 * l + 0.2
                        : d + 0.5 * l + 0.005 * (l * l) + 0.000125 * l * ((14 - l) * (14 - l)) * (d - 10);
                yield 0.7854 * l * (sum * sum) / 10000 * 1000;
            }
            case CHINA_FIR_POLES -> {
                double sum = 3.5 + d;
                yield d == 8 ? 0.4902 * l / 100 * 1000 : 0.39 * (sum * sum) * (0.48 + l) / 10000 * 1000;
            }
            case RUSSIA -> Gost.cell(d, l) * 1000;
            case SWEDEN_TOP, SWEDEN_MIDDLE, GERMANY -> StrictMath.PI / 4 * (d * d) * c / 1000;
            case FRANCE -> d * d * c / (4 * StrictMath.PI) / 1000;
        };
    }

    private double grows(double d) {
        if (this != JAPAN_1968) {
            return 1;
        }
        return d < 30 ? 0.6 : d < 60 ? 0.8 : 1;
    }

    private static boolean third(double l) {
        return l < 2 || l > 10;
    }

    private void require(double d, double l) {
        place.domain.require(d);
        LENGTH.require(l);
        boolean between = switch (this) {
            case CHINA -> d < 4 || (d > 12 && d < 14) || (d > 6 && d < 8);
            case CHINA_FIR_POLES -> d != 8 && d < 10;
            default -> false;
        };
        if (between) {
            throw new OutOfDomainException(
                    place.label,
                    Double.toString(d),
                    "cm",
                    this == CHINA ? "4 to 6, 8 to 12, and 14 or more" : "8, and 10 or more",
                    "take it to a class of the standard first");
        }
    }

    /**
     * The working of {@link #cubicMetres(double, double)}.
     *
     * @param centimetres diameter or girth
     * @param lengthMetres length
     * @return a working with the same value
     * @throws OutOfDomainException outside the rule's domain, or for NaN
     */
    public Working working(double centimetres, double lengthMetres) {
        require(centimetres, lengthMetres);
        Source stated = sources().get(0);
        Working.Builder working = Working.of(label)
                .given(this == FRANCE ? "C" : "D", place.label, centimetres, "cm")
                .given("L", "length", lengthMetres, "m");
        if (this == RUSSIA) {
            working.lookup(
                    "V",
                    "volume",
                    centimetres + " cm, " + lengthMetres + " m",
                    Gost.cell(centimetres, lengthMetres),
                    "m3",
                    stated);
        } else {
            lines(working, centimetres, lengthMetres, stated);
            String from = "N";
            if (parts > 0) {
                working.round("R", "rounded", "N", Rounding.HALF_UP, step(centimetres), "dm3", roundingSource(stated));
                from = "R";
            }
            working.step("V", "volume", from + " / 1000", "m3", Sources.get("definition"));
        }
        boolean inTheTable = this == CHINA && !third(lengthMetres);
        if (standing() != Standing.PUBLISHED && !inTheTable) {
            working.note("This rule stands as: " + standing().label() + ".");
        }
        return working.note(rounding()).build();
    }

    private Source roundingSource(Source stated) {
        return switch (this) {
            case JAPAN, KOREA, JAPAN_1968 -> Sources.get("japan-practice-memory");
            default -> stated;
        };
    }

    private void lines(Working.Builder working, double d, double l, Source stated) {
        boolean metric = this != CHINA && this != CHINA_FIR_POLES;
        if (metric) {
            working.step("c", "length in whole centimetres", "floor(100 * L + 0.5)", "cm", Sources.get("definition"));
        }
        if (this == SWEDEN_TOP || this == SWEDEN_MIDDLE || this == GERMANY || this == FRANCE) {
            working.constant("pi", "pi", StrictMath.PI, "", Sources.get("definition"));
        }
        String formula = switch (this) {
            case JAPAN_MEAN -> "D^2 * c / 1000";
            case JAPAN, KOREA, JAPAN_1968 -> {
                if (l < 6) {
                    yield "D^2 * c / 1000";
                }
                String grows = PublishedRule.literal(grows(d)) + " * ";
                working.step(
                        "A",
                        "diameter with its allowance for taper",
                        "D + " + (this == JAPAN_1968 ? grows : "") + "(floor(c / 100) - 4) / 2",
                        "cm",
                        stated);
                yield "A^2 * c / 1000";
            }
            case SOUTH_SEA, INDONESIA -> "0.7854 * D^2 * c / 1000";
            case CHINA -> {
                String sum = third(l)
                        ? "D + 0.5 * L"
                        : d <= 12
                                ? "D + 0.45 * L + 0.2"
                                : "D + 0.5 * L + 0.005 * L^2 + 0.000125 * L * (14 - L)^2 * (D - 10)";
                working.step("S", "diameter with its allowance for taper", sum, "cm", stated);
                if (third(l)) {
                    working.note("That lengths outside 2 to 10 m take this formula stands as: "
                            + Sources.get("gb-4814-range-memory").standing().label() + ".");
                }
                yield (third(l) ? "0.8" : "0.7854") + " * L * S^2 / 10000 * 1000";
            }
            case CHINA_FIR_POLES ->
                d == 8 ? "0.4902 * L / 100 * 1000" : "0.39 * (3.5 + D)^2 * (0.48 + L) / 10000 * 1000";
            case RUSSIA -> throw new IllegalStateException("a table");
            case SWEDEN_TOP, SWEDEN_MIDDLE, GERMANY -> "pi / 4 * D^2 * c / 1000";
            case FRANCE -> "C^2 * c / (4 * pi) / 1000";
        };
        working.step("N", "content", formula, "dm3", stated);
    }
}
