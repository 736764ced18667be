package org.woodyield.job;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.woodyield.measure.Domain;
import org.woodyield.measure.Length;
import org.woodyield.plan.Bucking;
import org.woodyield.plan.LogPrices;
import org.woodyield.plan.LogPrices.PriceClass;
import org.woodyield.show.BuckingSheet;
import org.woodyield.show.WorkingText;
import org.woodyield.source.Source;
import org.woodyield.source.Sources;
import org.woodyield.source.Standing;
import org.woodyield.working.Working;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;

/** Cuts a stem into logs so that they are worth most by a buyer's rule and prices. */
final class BuckCommand implements Subcommand {

    private static final Answer ANSWER = new Answer("bucking", "buck.txt", "buck-logs.csv", "the logs stand in");
    private static final String GRADE = StemInput.GRADE;
    private static final String LEAST_DIAMETER = "least-diameter";
    private static final String LEAST_LENGTH = "least-length";
    private static final String PRICE = "price";
    private static final String PLAIN_GRADE = StemInput.PLAIN_GRADE;
    private static final List<Table.Column> PRICES = List.of(
            Table.Column.required(LEAST_DIAMETER),
            Table.Column.optional(LEAST_LENGTH),
            Table.Column.optional(GRADE),
            Table.Column.required(PRICE));
    private static final Length WIDEST = StandingTree.WIDEST;
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
                        "Table of a stem: " + StemInput.FROM + ", " + StemInput.DIAMETER
                                + " (inside bark, unless --bark-ratio is given), from the butt up; optional " + GRADE
                                + ", which holds from there on. In its place --length, --butt and --top, or a standing tree"
                                + " by --breast-height and --form-class.")
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
                .option("--currency", "WORD", "Currency of the prices; without it USD.");
        StemInput.options(usage);
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
        StemInput input = StemInput.read(given, arguments, prices, problems);
        Scaling.BoardFeet buyer = (Scaling.BoardFeet) scalings.get(0);
        Bucking bucking = new Bucking(lengths, offcuts, trim, kerf, buyer.rule(), buyer.convention(), prices);
        input.remarks().forEach(terminal::say);
        BuckingSheet sheet = new BuckingSheet(bucking, bucking.best(input.stem()), input.diameters(), input.remarks());
        return ANSWER.give(
                given,
                terminal,
                folder,
                sheet.text(),
                sheet::table,
                () -> workings(bucking, sheet.best(), input, Sheets.file(given.matchedOptionValue("--prices", ""))));
    }

    /** The worth, and behind it the diameter at the upper end of each log. */
    private static String workings(Bucking bucking, Bucking.Best best, StemInput input, String prices) {
        Working worth = bucking.working(best);
        for (String symbol : List.of("a", "b", "M")) {
            worth = worth.givenBy(symbol, origin(Standing.DERIVED, "The stem where the log ends"));
        }
        for (String symbol : List.of("D", "L")) {
            worth = worth.givenBy(symbol, origin(Standing.DERIVED, "From the log, by the convention in the note"));
        }
        worth = worth.givenBy("H", origin(Standing.DERIVED, "The log as it is cut, trim included"));
        for (int i = 1; i <= best.cuts().size(); i++) {
            worth = worth.givenBy("p" + i, origin(Standing.GIVEN, "From the table " + prices));
        }
        StringBuilder text = new StringBuilder(WorkingText.plain(worth.givenBy(Sources.get("command-line"))));
        for (Bucking.Cut cut : best.cuts()) {
            text.append('\n')
                    .append(WorkingText.plain(
                            input.working(cut.from().plus(cut.log().length()))));
        }
        return text.toString();
    }

    private static Source origin(Standing standing, String words) {
        return new Source("bucking", standing, "", words, "", "");
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
}
