package org.woodyield.job;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.woodyield.log.MeasuredStem;
import org.woodyield.log.StemPoint;
import org.woodyield.measure.Domain;
import org.woodyield.measure.Length;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.measure.Rounding;
import org.woodyield.plan.Bucking;
import org.woodyield.plan.LogPrices;
import org.woodyield.plan.LogPrices.PriceClass;
import org.woodyield.show.BuckingSheet;
import org.woodyield.show.WorkingText;
import org.woodyield.source.Sources;
import org.woodyield.wood.SpeciesCatalogue;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;

/** Cuts a stem into logs so that they are worth most by a buyer's rule and prices. */
final class BuckCommand implements Subcommand {

    private static final Answer ANSWER = new Answer("bucking", "buck.txt", "buck-logs.csv", "the logs stand in");
    private static final String FROM = "from-butt";
    private static final String DIAMETER = "diameter";
    private static final String GRADE = "grade";
    private static final String LEAST_DIAMETER = "least-diameter";
    private static final String LEAST_LENGTH = "least-length";
    private static final String PRICE = "price";
    private static final String PLAIN_GRADE = "any";
    private static final List<Table.Column> STEM =
            List.of(Table.Column.required(FROM), Table.Column.required(DIAMETER), Table.Column.optional(GRADE));
    private static final List<Table.Column> PRICES = List.of(
            Table.Column.required(LEAST_DIAMETER),
            Table.Column.optional(LEAST_LENGTH),
            Table.Column.optional(GRADE),
            Table.Column.required(PRICE));
    private static final Length HIGHEST = Length.feet(400);
    private static final Length WIDEST = Length.millimetres(3000);
    private static final Length LONGEST = Length.millimetres(30_000);
    private static final Domain PRICE_RANGE = Domain.of("price", "per mbf", 0, 1e9);

    @Override
    public String name() {
        return "buck";
    }

    @Override
    public CommandSpec spec() {
        Usage usage = new Usage("Cuts a stem into logs so that they are worth most by a buyer's rule and prices.")
                .argumentIfAny(
                        "STEM",
                        "Table of a stem: " + FROM + ", " + DIAMETER + " (inside bark), from the butt up; optional "
                                + GRADE + ", which holds from there on. In its place --length, --butt and --top.")
                .option(
                        "--prices",
                        "TABLE",
                        "What the buyer pays: " + LEAST_DIAMETER + ", " + PRICE + " (such as 450 per mbf); optional "
                                + LEAST_LENGTH + ", and " + GRADE + ", the best first.")
                .option("--lengths", "LENGTH;...", "Scaling lengths that may be cut, such as '8 ft; 12 ft; 16 ft'.")
                .option("--offcuts", "LENGTH;...", "Lengths that may be cut away for nothing.")
                .option("--rule", "RULE", "Key of the buyer's log rule; 'rules' lists them. Or " + OwnRule.WORDS + ".")
                .option("--law", "PLACE", "Key of a place whose law sets rule and convention, in place of --rule.")
                .option(
                        "--trim",
                        "LENGTH",
                        "What each log is longer than its scaling length; without it 6 in (common practice, no source).")
                .option("--kerf", "LENGTH", "What each cut takes; without it 3/8 in (common practice, no source).")
                .option("--length", "LENGTH", "Length of a stem without a table.")
                .option("--butt", "DIAMETER", "Its diameter inside bark at the butt.")
                .option("--top", "DIAMETER", "Its diameter inside bark at the top.")
                .option("--currency", "WORD", "Currency of the prices; without it USD.");
        return ANSWER.options(usage, "Show how the worth comes about as well.").spec();
    }

    @Override
    public int run(ParseResult given, Terminal terminal) throws IOException {
        Optional<PlanFolder> folder = ANSWER.folder(given);
        Problems problems = new Problems();
        List<String> unknown = new ArrayList<>();
        List<Scaling> scalings = new ArrayList<>();
        Scalings.logRules(given.matchedOptionValue("--rule", ""), unknown)
                .forEach(rule -> scalings.add(Scalings.plain(rule)));
        scalings.addAll(Scalings.of("", given.matchedOptionValue("--law", ""), unknown));
        if (unknown.isEmpty() && scalings.size() != 1) {
            unknown.add("one of --rule and --law names the buyer's rule; " + scalings.size() + " are given");
        }
        if (!unknown.isEmpty()) {
            throw new BadInputException(unknown.toArray(String[]::new));
        }
        Arguments arguments = new Arguments(name(), given, problems);
        List<Length> lengths = arguments.lengths("--lengths", LONGEST);
        List<Length> offcuts =
                given.hasMatchedOption("--offcuts") ? arguments.lengths("--offcuts", LONGEST) : List.of();
        Length trim = arguments.lengthOrNone("--trim", "6 in", Length.feet(3));
        Length kerf = arguments.lengthOrNone("--kerf", "3/8 in", Length.inches(2));
        LogPrices prices = prices(given, problems);
        List<String> remarks = new ArrayList<>();
        Bucking.Stem stem = stem(given, arguments, prices, remarks, problems);
        problems.stopIfAny();
        Scaling.BoardFeet buyer = (Scaling.BoardFeet) scalings.get(0);
        Bucking bucking = new Bucking(lengths, offcuts, trim, kerf, buyer.rule(), buyer.convention(), prices);
        remarks.forEach(terminal::say);
        BuckingSheet sheet = new BuckingSheet(bucking, bucking.best(stem), remarks);
        String working = WorkingText.plain(bucking.working(sheet.best()).givenBy(Sources.get("command-line")));
        return ANSWER.give(given, terminal, folder, sheet.text(), sheet.table(), working);
    }

    private static LogPrices prices(ParseResult given, Problems problems) throws IOException {
        String currency = given.matchedOptionValue("--currency", "USD");
        if (!given.hasMatchedOption("--prices")) {
            problems.add("--prices", 0, "", "", "a table of what the buyer pays", "add --prices TABLE");
            return new LogPrices(currency, List.of(PLAIN_GRADE), List.of());
        }
        String name = given.matchedOptionValue("--prices", "");
        List<String> grades = new ArrayList<>();
        List<PriceClass> classes = new ArrayList<>();
        List<Table.Row> rows =
                Sheets.rows(name, PRICES, LEAST_DIAMETER + ", " + PRICE, "a row for each price", problems);
        for (Table.Row row : rows) {
            Optional<Length> thick =
                    row.cell(LEAST_DIAMETER).lengthOrNoneUpTo(WIDEST, "give the least diameter that is paid so");
            Optional<Length> far = row.cellIfAny(LEAST_LENGTH)
                    .map(cell -> cell.lengthOrNoneUpTo(LONGEST, "give the least length that is paid so"))
                    .orElse(Optional.of(Length.ZERO));
            Optional<Double> price = row.cell(PRICE).rate(Units.THOUSAND_BOARD_FEET, PRICE_RANGE);
            String grade = row.cellIfAny(GRADE).map(Cell::text).orElse(PLAIN_GRADE);
            if (thick.isPresent() && far.isPresent() && price.isPresent()) {
                if (!grades.contains(grade)) {
                    grades.add(grade);
                }
                classes.add(
                        new PriceClass(grade, thick.get().toInches(), far.get().toFeet(), price.get()));
            }
        }
        return new LogPrices(currency, grades.isEmpty() ? List.of(PLAIN_GRADE) : grades, classes);
    }

    /** From a table or from its length and ends; some stem where there is a problem. */
    private static Bucking.Stem stem(
            ParseResult given, Arguments arguments, LogPrices prices, List<String> remarks, Problems problems)
            throws IOException {
        String name = given.matchedPositionalValue(0, "");
        List<StemPoint> points = new ArrayList<>();
        List<Bucking.Stretch> stretches = new ArrayList<>();
        boolean byEnds = given.hasMatchedOption("--length")
                || given.hasMatchedOption("--butt")
                || given.hasMatchedOption("--top");
        if (name.isEmpty() && !byEnds) {
            throw new BadInputException("a stem is needed: a table, or --length, --butt and --top");
        }
        if (!name.isEmpty() && byEnds) {
            throw new BadInputException("a stem is given twice; give a table or --length, --butt and --top");
        }
        if (byEnds) {
            points.add(new StemPoint(0, arguments.length("--butt", WIDEST).toInches()));
            points.add(new StemPoint(
                    arguments.length("--length", HIGHEST).toFeet(),
                    arguments.length("--top", WIDEST).toInches()));
        } else {
            table(name, prices, points, stretches, problems);
        }
        problems.stopIfAny();
        try {
            if (byEnds && points.get(1).diameterInches() > points.get(0).diameterInches()) {
                throw new BadInputException("the top is thicker than the butt; --butt and --top may be exchanged");
            }
            MeasuredStem profile = MeasuredStem.withoutSwellings(points);
            Swellings.words("The stem", points, profile).ifPresent(remarks::add);
            ungraded(prices, points, stretches).ifPresent(remarks::add);
            return new Bucking.Stem(
                    name.isEmpty() ? "by its ends" : Sheets.file(name),
                    SpeciesCatalogue.published().all().iterator().next(),
                    profile,
                    feet(points.get(0)),
                    feet(points.get(points.size() - 1)),
                    stretches);
        } catch (OutOfDomainException e) {
            throw new BadInputException((name.isEmpty() ? "" : Sheets.file(name) + ": ") + e.getMessage());
        }
    }

    /**
     * What is said where prices have grades and the stem, or its butt, has none; a stem without any is paid by the prices
     * without a grade, if there are such.
     */
    private static Optional<String> ungraded(
            LogPrices prices, List<StemPoint> points, List<Bucking.Stretch> stretches) {
        List<String> grades = prices.grades();
        boolean whole = stretches.isEmpty();
        if (grades.equals(List.of(PLAIN_GRADE))
                || (!whole && stretches.get(0).from().equals(feet(points.get(0))))) {
            return Optional.empty();
        }
        if (whole && grades.contains(PLAIN_GRADE)) {
            stretches.add(new Bucking.Stretch(feet(points.get(0)), feet(points.get(points.size() - 1)), PLAIN_GRADE));
            return Optional.of("The stem has no grade and is paid by the prices that have none; for the others give "
                    + "the stem as a table with the column " + GRADE);
        }
        String part = whole
                ? "The stem has no grade and is"
                : "Up to " + stretches.get(0).from().inFeet(16, Rounding.HALF_UP) + " the stem has no grade and is";
        return Optional.of(
                part + " taken as '" + grades.get(0) + "', the first of the grades in the prices; for another"
                        + " give the stem as a table with the column " + GRADE + ", from the butt on");
    }

    private static Length feet(StemPoint point) {
        return Length.ofFeet(point.heightFeet(), Rounding.HALF_UP);
    }

    private static void table(
            String name, LogPrices prices, List<StemPoint> points, List<Bucking.Stretch> stretches, Problems problems)
            throws IOException {
        Optional<Length> graded = Optional.empty();
        String grade = "";
        for (Table.Row row : Sheets.rows(name, STEM, FROM + ", " + DIAMETER, "a row for each place", problems)) {
            Optional<Length> from = row.cell(FROM).lengthOrNoneUpTo(HIGHEST, "measure along the stem from the butt");
            Optional<Length> wide = row.cell(DIAMETER).lengthOrNoneUpTo(WIDEST, "check the unit");
            if (from.isEmpty() || wide.isEmpty()) {
                continue;
            }
            points.add(new StemPoint(from.get().toFeet(), wide.get().toInches()));
            if (graded.isPresent()) {
                stretches.add(new Bucking.Stretch(graded.get(), from.get(), grade));
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
            graded = from;
        }
    }
}
