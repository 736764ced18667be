package org.woodyield.job;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.woodyield.log.BarkRatio;
import org.woodyield.log.FormClassStem;
import org.woodyield.log.MeasuredStem;
import org.woodyield.log.StemPoint;
import org.woodyield.log.StemProfile;
import org.woodyield.log.TaperCurve;
import org.woodyield.measure.Domain;
import org.woodyield.measure.Length;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.measure.Rounding;
import org.woodyield.plan.Bucking;
import org.woodyield.plan.LogPrices;
import org.woodyield.show.NumberText;
import org.woodyield.source.Source;
import org.woodyield.source.Sources;
import org.woodyield.source.Standing;
import org.woodyield.wood.SpeciesCatalogue;
import org.woodyield.working.Working;
import picocli.CommandLine.ParseResult;

/**
 * The stem that is to be bucked: measured, fitted to what was measured, by its ends, by its form class, or by coefficients of
 * the user's own.
 *
 * @param stem the stem
 * @param diameters where its diameters come from, in sentences
 * @param remarks what a reader should know of it, each a sentence without its point
 * @param origins where the values of its working come from, by symbol; the others are given on the command line
 */
record StemInput(Bucking.Stem stem, String diameters, List<String> remarks, Map<String, Source> origins) {

    static final String FROM = "from-butt";
    static final String DIAMETER = "diameter";
    static final String GRADE = "grade";
    static final String PLAIN_GRADE = "any";

    private static final String ONE = "one parabola";
    private static final String THREE = "three parabolas";
    private static final String COEFFICIENTS = "b1 -3.2; b2 1.6; b3 -1.4; b4 60; a1 0.75; a2 0.1";
    private static final List<Table.Column> STEM =
            List.of(Table.Column.required(FROM), Table.Column.required(DIAMETER), Table.Column.optional(GRADE));
    private static final Length HIGHEST = StandingTree.HIGHEST;
    private static final Length WIDEST = StandingTree.WIDEST;
    private static final String LENGTH = "--length";
    private static final String BUTT = "--butt";
    private static final String TOP = "--top";
    private static final String CURVE = "--curve";
    private static final String STUMP = "--stump";
    private static final String TOTAL = option(StandingTree.TOTAL_HEIGHT);
    private static final String BREAST = option(StandingTree.BREAST_HEIGHT);
    private static final String FORM = option(StandingTree.FORM_CLASS);
    private static final String RATIO = option(StandingTree.BARK_RATIO);
    private static final double BREAST_HEIGHT_FEET = 4.5;

    /** Where the parabolas join, as shares of the height. Common practice, no source. */
    private static final double UPPER_JOIN = 0.75;

    private static final double LOWER_JOIN = 0.1;
    private static final String JOINS = " Three parabolas join at " + NumberText.full(UPPER_JOIN) + " and "
            + NumberText.full(LOWER_JOIN) + " of the height (common practice, no source).";
    private static final String LOG_END = "Where the log ends, by the cuts below it";
    private static final double STEP_FEET = 0.25;

    /** Keeps immutable copies. */
    StemInput {
        remarks = List.copyOf(remarks);
        origins = Map.copyOf(origins);
    }

    /** How the diameter at a height comes about. */
    Working working(Length height) {
        Working working = stem.profile().working(height.toFeet()).givenBy("h", origin(Standing.DERIVED, LOG_END));
        for (Map.Entry<String, Source> origin : origins.entrySet()) {
            working = working.givenBy(origin.getKey(), origin.getValue());
        }
        return working.givenBy(Sources.get("command-line"));
    }

    private static Source origin(Standing standing, String words) {
        return new Source("stem", standing, "", words, "", "");
    }

    private static String option(String column) {
        return "--" + column;
    }

    /** The options of a stem that no table holds, or that is more than its table. */
    static Usage options(Usage usage) {
        usage.option(LENGTH, "LENGTH", "Length of a stem without a table.")
                .option(BUTT, "DIAMETER", "Its diameter inside bark at the butt.")
                .option(TOP, "DIAMETER", "Its diameter inside bark at the top.");
        return StandingTree.options(usage)
                .option(
                        STUMP,
                        "HEIGHT",
                        "Height of the butt above the ground, of a standing tree or with " + CURVE
                                + "; without it 1 ft.")
                .option(
                        CURVE,
                        "CURVE",
                        "'" + ONE + "' or '" + THREE + "': a taper curve fitted to the places of the table, its tip by "
                                + TOTAL + "." + JOINS
                                + " Or your own coefficients from a publication for the species, in place of a"
                                + " table, with " + BREAST + " and " + TOTAL + ": '" + COEFFICIENTS
                                + "' (invented). None are built in, for none that was read could be trusted.");
    }

    /** How a stem is given, and the options that say something of it. */
    private enum Way {
        TABLE("a table"),
        FITTED("a fitted curve"),
        ENDS("a stem by its ends"),
        FORM_CLASS("a tree by its form class"),
        COEFFICIENTS("a curve by its coefficients");

        private final String words;

        Way(String words) {
            this.words = words;
        }

        private List<String> options() {
            return switch (this) {
                case TABLE -> List.of(RATIO);
                case FITTED -> List.of(RATIO, STUMP, TOTAL);
                case ENDS -> List.of();
                case FORM_CLASS ->
                    List.of(BREAST, option(StandingTree.BARK), RATIO, option(StandingTree.TAPER), TOTAL, STUMP);
                case COEFFICIENTS -> List.of(BREAST, TOTAL, STUMP);
            };
        }

        /** Nothing that is given may be without effect. */
        void refuseIdle(ParseResult given) {
            for (String option : FORM_CLASS.options()) {
                if (given.hasMatchedOption(option) && !options().contains(option)) {
                    throw new BadInputException(option + " says nothing of " + words + "; leave it out"
                            + (this == TABLE ? ", or add " + CURVE + " '" + ONE + "' for a fitted stem" : ""));
                }
            }
        }
    }

    /** Reads the stem; what is wrong stops the command. */
    static StemInput read(ParseResult given, Arguments arguments, LogPrices prices, Problems problems)
            throws IOException {
        String curve = given.matchedOptionValue(CURVE, "").strip();
        String table = given.matchedPositionalValue(0, "");
        Way way = way(given, table, curve);
        way.refuseIdle(given);
        try {
            return switch (way) {
                case TABLE, FITTED -> byTable(table, arguments, prices, curve, problems);
                case ENDS -> byEnds(arguments, problems).graded(prices, List.of());
                case FORM_CLASS -> byForm(arguments, problems).graded(prices, List.of());
                case COEFFICIENTS -> byCoefficients(arguments, problems).graded(prices, List.of());
            };
        } catch (OutOfDomainException e) {
            throw new BadInputException((table.isEmpty() ? "" : Sheets.file(table) + ": ") + e.getMessage());
        }
    }

    private static Way way(ParseResult given, String table, String curve) {
        boolean fitted = curve.equals(ONE) || curve.equals(THREE);
        List<Way> ways = new ArrayList<>();
        if (!table.isEmpty()) {
            ways.add(fitted ? Way.FITTED : Way.TABLE);
        }
        if (given.hasMatchedOption(LENGTH) || given.hasMatchedOption(BUTT) || given.hasMatchedOption(TOP)) {
            ways.add(Way.ENDS);
        }
        if (given.hasMatchedOption(FORM)) {
            ways.add(Way.FORM_CLASS);
        }
        if (!curve.isEmpty() && !fitted) {
            ways.add(Way.COEFFICIENTS);
        }
        String all = "a table; " + LENGTH + ", " + BUTT + " and " + TOP + "; " + BREAST + " and " + FORM + "; " + CURVE
                + " with coefficients, " + BREAST + " and " + TOTAL;
        if (ways.isEmpty()) {
            throw new BadInputException("a stem is needed: " + all);
        }
        if (ways.size() > 1) {
            throw new BadInputException("a stem is given twice; give one of these: " + all);
        }
        if (fitted && ways.get(0) != Way.FITTED) {
            throw new BadInputException(
                    CURVE + " '" + curve + "' is fitted to a table of places; name the table, or leave it out");
        }
        return ways.get(0);
    }

    private static StemInput of(
            String id, StemProfile profile, Length from, Length to, String diameters, List<String> remarks) {
        return new StemInput(
                new Bucking.Stem(
                        id, SpeciesCatalogue.published().all().iterator().next(), profile, from, to, List.of()),
                diameters,
                remarks,
                Map.of());
    }

    private StemInput withOrigins(Map<String, Source> symbols) {
        return new StemInput(stem, diameters, remarks, symbols);
    }

    private static StemInput byEnds(Arguments arguments, Problems problems) {
        double butt = arguments.length(BUTT, WIDEST).toInches();
        Length length = arguments.length(LENGTH, HIGHEST);
        double top = arguments.length(TOP, WIDEST).toInches();
        problems.stopIfAny();
        if (top > butt) {
            throw new BadInputException(
                    "the top is thicker than the butt; " + BUTT + " and " + TOP + " may be exchanged");
        }
        MeasuredStem stem = new MeasuredStem(List.of(new StemPoint(0, butt), new StemPoint(length.toFeet(), top)));
        return of(
                "by its ends",
                stem,
                Length.ZERO,
                length,
                "Diameters are inside bark, straight between the two ends.",
                List.of());
    }

    private static StemInput byForm(Arguments arguments, Problems problems) {
        Optional<FormClassStem> tree = StandingTree.read(column -> arguments.cell(option(column), ""));
        Length stump = arguments.lengthOrNone(STUMP, "1 ft", Length.feet(10));
        problems.stopIfAny();
        FormClassStem stem = tree.orElseThrow();
        boolean ends =
                stem.taperInchesPerFoot().isEmpty() && stem.totalHeightFeet().isEmpty();
        String below = stem.barkInches().isPresent()
                ? "straight from breast height to 17.3 ft"
                : "below 17.3 ft taken as no thicker than there, since the bark is not given";
        String above = ends
                ? ""
                : stem.totalHeightFeet().isPresent()
                        ? ", above it straight to the tip"
                        : ", above it by the taper given";
        return of(
                "by its form class",
                stem,
                stump,
                Length.ofFeet(stem.heightFeet().greatest(), Rounding.DOWN),
                "Diameters are inside bark by the form class, " + below + above + ". The stump is "
                        + stump.inFeet(16, Rounding.HALF_UP) + " high.",
                ends
                        ? List.of("Nothing is known of the stem above 17.3 ft, where it is taken to end; " + TOTAL
                                + " or " + option(StandingTree.TAPER) + " says more")
                        : List.of());
    }

    private static StemInput byCoefficients(Arguments arguments, Problems problems) {
        double breast = arguments.length(BREAST, WIDEST).toInches();
        Length total = arguments.length(TOTAL, HIGHEST);
        Length stump = arguments.lengthOrNone(STUMP, "1 ft", Length.feet(10));
        Map<String, Double> b = coefficients(arguments.cell(CURVE, ""));
        problems.stopIfAny();
        TaperCurve curve = new TaperCurve(
                breast,
                total.toFeet(),
                b.getOrDefault("b1", 0.0),
                b.getOrDefault("b2", 0.0),
                b.getOrDefault("b3", 0.0),
                b.getOrDefault("b4", 0.0),
                b.getOrDefault("a1", 0.0),
                b.getOrDefault("a2", 0.0));
        requireFalling(curve, stump.toFeet(), total.toFeet());
        return of(
                "by its curve",
                curve,
                stump,
                total,
                "Diameters are inside bark by a taper curve in the form of Max and Burkhart, with coefficients given by you: "
                        + words(curve) + ". The stump is " + stump.inFeet(16, Rounding.HALF_UP) + " high.",
                List.of());
    }

    /** By name; a problem where one cannot be read. */
    private static Map<String, Double> coefficients(Cell cell) {
        Map<String, Domain> allowed = new LinkedHashMap<>();
        for (String name : List.of("b1", "b2", "b3", "b4")) {
            allowed.put(name, Domain.of("", "", -1e4, 1e4));
        }
        allowed.put("a1", Domain.of("", "", 0, 1));
        allowed.put("a2", Domain.of("", "", 0, 1));
        Map<String, Double> found = new TreeMap<>();
        Set<String> named = new HashSet<>();
        String words = "'" + ONE + "', '" + THREE + "', or coefficients as in " + COEFFICIENTS;
        for (Cell part : cell.list().orElse(List.of())) {
            String name = part.text().split("\\s+", 2)[0];
            Domain domain = allowed.get(name);
            if (domain == null) {
                part.refuse(words, "");
                return found;
            }
            if (!named.add(name)) {
                part.refuse("each coefficient once", "remove one of the two");
            }
            part.part(part.text().substring(name.length())).number(domain).ifPresent(value -> found.put(name, value));
        }
        if (!named.containsAll(List.of("b1", "b2"))) {
            cell.refuse(words, "b1 and b2 are needed at least");
        }
        return found;
    }

    private static String words(TaperCurve curve) {
        StringBuilder text = new StringBuilder(
                "b1 " + NumberText.significant(curve.b1(), 6) + ", b2 " + NumberText.significant(curve.b2(), 6));
        if (curve.a1() > 0) {
            text.append(", b3 ")
                    .append(NumberText.significant(curve.b3(), 6))
                    .append(", b4 ")
                    .append(NumberText.significant(curve.b4(), 6))
                    .append(", a1 ")
                    .append(NumberText.full(curve.a1()))
                    .append(", a2 ")
                    .append(NumberText.full(curve.a2()));
        }
        return text.toString();
    }

    /** A curve that grows upward is no stem. */
    private static void requireFalling(TaperCurve curve, double from, double to) {
        double below = curve.diameterInches(from);
        for (double height = from + STEP_FEET; height <= to; height += STEP_FEET) {
            double here = curve.diameterInches(height);
            if (here > below) {
                throw new OutOfDomainException(
                        "diameter by the taper curve at " + NumberText.fixed(height, 2) + " ft",
                        NumberText.fixed(here, 2),
                        "in",
                        "no more than below it, " + NumberText.fixed(below, 2) + " in",
                        "this curve is no stem there; check the coefficients, measure more places, or leave out "
                                + CURVE + " for a stem straight between its places");
            }
            below = here;
        }
    }

    private static StemInput byTable(
            String name, Arguments arguments, LogPrices prices, String curve, Problems problems) throws IOException {
        Length stump = curve.isEmpty() ? Length.ZERO : arguments.lengthOrNone(STUMP, "1 ft", Length.feet(10));
        Optional<BarkRatio> ratio = StandingTree.barkRatio(arguments.cell(RATIO, ""));
        List<StemPoint> points = new ArrayList<>();
        List<Bucking.Stretch> stretches = new ArrayList<>();
        table(name, stump, ratio, prices, points, stretches, problems);
        Optional<Length> total =
                curve.isEmpty() ? Optional.empty() : arguments.cell(TOTAL, "").lengthUpTo(HIGHEST, "check the unit");
        problems.stopIfAny();
        MeasuredStem measured = MeasuredStem.withoutSwellings(points);
        Length from = feet(points.get(0));
        Length to = feet(points.get(points.size() - 1));
        String bark = ratio.map(
                        k -> " Those of the table are outside bark and were multiplied by the bark ratio given, "
                                + NumberText.full(k.ratio()) + ".")
                .orElse("");
        List<String> remarks = new ArrayList<>();
        if (total.isEmpty()) {
            Optional<String> swellings = Swellings.words("The stem", points, measured);
            swellings.ifPresent(remarks::add);
            Source places = origin(
                    ratio.isEmpty() && swellings.isEmpty() ? Standing.GIVEN : Standing.DERIVED,
                    "From the table " + Sheets.file(name) + (ratio.isEmpty() ? "" : ", times the bark ratio given")
                            + (swellings.isEmpty() ? "" : ", no place thicker than those below it"));
            return of(
                            Sheets.file(name),
                            measured,
                            from,
                            to,
                            "Diameters are inside bark, straight between the places measured." + bark,
                            remarks)
                    .withOrigins(Map.of("h1", places, "d1", places, "h2", places, "d2", places))
                    .graded(prices, stretches);
        }
        TaperCurve fit = fit(curve, points, measured, total.get(), to);
        requireFalling(fit, from.toFeet(), to.toFeet());
        return of(
                        Sheets.file(name),
                        fit,
                        from,
                        to,
                        "Diameters are inside bark by a taper curve of " + curve + " that was fitted to your "
                                + points.size() + " places: " + words(fit) + "." + (curve.equals(THREE) ? JOINS : "")
                                + (spare(curve, fit, points) == 0 ? "" : misses(fit, points)) + bark,
                        freedom(curve, fit, points).stream().toList())
                .withOrigins(fitted(curve, fit, points, Sheets.file(name)))
                .graded(prices, stretches);
    }

    private static TaperCurve fit(
            String curve, List<StemPoint> points, MeasuredStem measured, Length total, Length last) {
        if (total.compareTo(last) < 0) {
            throw new OutOfDomainException(
                    "height of the tip",
                    total.inFeet(16, Rounding.HALF_UP),
                    "",
                    "no lower than the last place, " + last.inFeet(16, Rounding.HALF_UP) + " with the stump",
                    "measure the height of the tip above the ground for " + TOTAL);
        }
        if (!measured.heightFeet().holds(BREAST_HEIGHT_FEET)) {
            throw new OutOfDomainException(
                    "places measured on the stem",
                    NumberText.fixed(measured.heightFeet().least(), 2) + " to "
                            + NumberText.fixed(measured.heightFeet().greatest(), 2) + " ft above the ground",
                    "",
                    "below and above breast height, 4.5 ft",
                    "measure there too, or check " + STUMP);
        }
        double breast = measured.diameterInches(BREAST_HEIGHT_FEET);
        return curve.equals(ONE)
                ? TaperCurve.fitParabola(breast, total.toFeet(), points)
                : TaperCurve.fit(breast, total.toFeet(), UPPER_JOIN, LOWER_JOIN, points);
    }

    /** What each value of a fitted curve is. */
    private static Map<String, Source> fitted(String curve, TaperCurve fit, List<StemPoint> points, String file) {
        Map<String, Source> symbols = new TreeMap<>();
        Source coefficient = origin(
                Standing.DERIVED,
                "Fitted by least squares of the squared share to the " + points.size() + " places of " + file + "; "
                        + (spare(curve, fit, points) == 0 ? "it meets every place whatever it is" : miss(fit, points)));
        Source join = origin(Standing.COMMON_PRACTICE, "Where the parabolas join");
        for (String symbol : List.of("b1", "b2", "b3", "b4")) {
            symbols.put(symbol, coefficient);
        }
        symbols.put("a1", join);
        symbols.put("a2", join);
        symbols.put("B", origin(Standing.DERIVED, "At 4.5 ft, straight between the places of " + file));
        return symbols;
    }

    /** How many more places there are than coefficients; the tip itself tells nothing of them. */
    private static long spare(String curve, TaperCurve fit, List<StemPoint> points) {
        long telling = points.stream()
                .filter(point -> point.heightFeet() < fit.totalHeightFeet())
                .count();
        return telling - (curve.equals(ONE) ? 2 : 4);
    }

    private static Optional<String> freedom(String curve, TaperCurve fit, List<StemPoint> points) {
        int coefficients = curve.equals(ONE) ? 2 : 4;
        String tip = points.stream().anyMatch(point -> point.heightFeet() >= fit.totalHeightFeet())
                ? ", the tip not counted,"
                : "";
        long spare = spare(curve, fit, points);
        String counted = coefficients + " coefficients were fitted to " + (spare + coefficients) + " places" + tip;
        if (spare > 1) {
            return Optional.empty();
        }
        return Optional.of(
                spare == 0
                        ? counted + " so that no degree of freedom is left: the curve meets the places whatever they"
                                + " are, which tells nothing of the stem between them; measure more places"
                        : counted + " so that one degree of freedom is left: the miss tells little of the stem"
                                + " between the places; measure more");
    }

    private static String misses(TaperCurve fit, List<StemPoint> points) {
        return " Its " + miss(fit, points) + ".";
    }

    private static String miss(TaperCurve fit, List<StemPoint> points) {
        double worst = 0;
        double at = 0;
        for (StemPoint point : points) {
            double miss = fit.diameterInches(point.heightFeet()) - point.diameterInches();
            if (Math.abs(miss) > Math.abs(worst)) {
                worst = miss;
                at = point.heightFeet();
            }
        }
        return "greatest miss is " + NumberText.fixed(Math.abs(worst), 2) + " in, too " + (worst > 0 ? "thick" : "thin")
                + " at " + NumberText.fixed(at, 2) + " ft above the ground";
    }

    /** With the grades of the stretches, and with what is said where some of the stem has none. */
    private StemInput graded(LogPrices prices, List<Bucking.Stretch> stretches) {
        List<Bucking.Stretch> all = new ArrayList<>(stretches);
        List<String> said = new ArrayList<>(remarks);
        ungraded(prices, all).ifPresent(said::add);
        return new StemInput(
                new Bucking.Stem(stem.id(), stem.species(), stem.profile(), stem.stump(), stem.top(), all),
                diameters,
                said,
                origins);
    }

    /**
     * What is said where prices have grades and the stem, or its butt, has none; a stem without any is paid by the prices
     * without a grade, if there are such.
     */
    private Optional<String> ungraded(LogPrices prices, List<Bucking.Stretch> stretches) {
        List<String> grades = prices.grades();
        boolean whole = stretches.isEmpty();
        if (grades.equals(List.of(PLAIN_GRADE))
                || (!whole && stretches.get(0).from().equals(stem.stump()))) {
            return Optional.empty();
        }
        if (whole && grades.contains(PLAIN_GRADE)) {
            stretches.add(new Bucking.Stretch(stem.stump(), stem.top(), PLAIN_GRADE));
            return Optional.of("The stem has no grade and is paid by the prices that have none; for the others give "
                    + "the stem as a table with the column " + GRADE);
        }
        String part = whole
                ? "The stem has no grade and is"
                : "Up to " + stretches.get(0).from().minus(stem.stump()).inFeet(16, Rounding.HALF_UP)
                        + " the stem has no grade and is";
        return Optional.of(
                part + " taken as '" + grades.get(0) + "', the first of the grades in the prices; for another"
                        + " give the stem as a table with the column " + GRADE + ", from the butt on");
    }

    private static Length feet(StemPoint point) {
        return Length.ofFeet(point.heightFeet(), Rounding.HALF_UP);
    }

    private static void table(
            String name,
            Length stump,
            Optional<BarkRatio> ratio,
            LogPrices prices,
            List<StemPoint> points,
            List<Bucking.Stretch> stretches,
            Problems problems)
            throws IOException {
        Optional<Length> graded = Optional.empty();
        String grade = "";
        for (Table.Row row : Sheets.rows(name, STEM, FROM + ", " + DIAMETER, "a row for each place", problems)) {
            Optional<Length> from = row.cell(FROM).lengthOrNoneUpTo(HIGHEST, "measure along the stem from the butt");
            Optional<Length> wide = row.cell(DIAMETER).lengthOrNoneUpTo(WIDEST, "check the unit");
            if (from.isEmpty() || wide.isEmpty()) {
                continue;
            }
            Length here = from.get().plus(stump);
            double across = wide.get().toInches();
            points.add(new StemPoint(
                    here.toFeet(), ratio.isPresent() && across > 0 ? ratio.get().inside(across) : across));
            if (graded.isPresent()) {
                stretches.add(new Bucking.Stretch(graded.get(), here, grade));
            }
            Optional<Cell> cell = row.cellIfAny(GRADE);
            if (cell.isPresent()) {
                grade = cell.get().text();
                if (!prices.grades().contains(grade)) {
                    if (prices.grades().equals(List.of(PLAIN_GRADE))) {
                        cell.get()
                                .refuse(
                                        "no grade, since the table of prices has no column " + GRADE,
                                        "give the prices their grades, or empty the column " + GRADE + " of the stem");
                    } else {
                        cell.get().refuse(String.join(", ", prices.grades()), "take one of the buyer's grades");
                    }
                }
            } else if (graded.isEmpty()) {
                continue;
            }
            graded = Optional.of(here);
        }
    }
}
