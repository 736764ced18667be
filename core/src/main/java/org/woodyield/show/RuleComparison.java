package org.woodyield.show;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.scaling.LogRule;
import org.woodyield.scaling.LogRules;
import org.woodyield.scaling.MeasurementError;
import org.woodyield.show.Block.Figure;
import org.woodyield.show.Block.Points;
import org.woodyield.show.Block.Prose;
import org.woodyield.show.Block.Section;
import org.woodyield.show.Block.Tabular;
import org.woodyield.show.PlanTable.Cell;

/**
 * Log rules beside each other at whole inches of diameter, for one length: what each gives, and how far it moves when the
 * diameter is misread by half an inch and by an inch. As plain text, as a page of its own with a drawing, and as tables.
 */
public final class RuleComparison {

    /** What a rule is drawn beside in its panel. */
    private static final LogRule BESIDE = LogRules.byId("international-quarter");

    private static final String TITLE = "Log rules by diameter";
    private static final int COLUMNS = 8;
    private static final int PANELS_A_ROW = 4;
    private static final double PANEL = 196;
    private static final double GAP = 26;
    private static final double NAME = 34;
    private static final double HEIGHT = 110;
    private static final double MOST_SHARE = 1.1;

    /** Half the arm of the cross that stands for a lone point. */
    private static final double MARK = 3.5;

    private final List<LogRule> rules;
    private final double lengthFeet;
    private final int least;
    private final int greatest;

    private RuleComparison(List<LogRule> rules, double lengthFeet, int least, int greatest) {
        this.rules = List.copyOf(rules);
        this.lengthFeet = lengthFeet;
        this.least = least;
        this.greatest = greatest;
    }

    /**
     * A comparison.
     *
     * @param rules in the order in which they are shown, one or more
     * @param lengthFeet the scaling length
     * @param leastInches the least diameter, 1 in or more
     * @param greatestInches the greatest, more than the least and 200 in or less
     * @return the comparison; a rule says nothing where its domain does not reach
     * @throws OutOfDomainException if there is no rule, the range is empty or too wide, or no rule takes any of these logs
     */
    public static RuleComparison of(List<LogRule> rules, double lengthFeet, int leastInches, int greatestInches) {
        if (leastInches < 1 || greatestInches <= leastInches || greatestInches > 200) {
            throw new OutOfDomainException(
                    "range of diameters",
                    leastInches + " to " + greatestInches,
                    "in",
                    "1 to 200 in, the second above the first",
                    "give the lesser diameter first");
        }
        RuleComparison comparison = new RuleComparison(rules, lengthFeet, leastInches, greatestInches);
        boolean any = rules.stream()
                .anyMatch(rule ->
                        comparison.inches().anyMatch(d -> comparison.at(rule, d).isPresent()));
        if (!any) {
            throw new OutOfDomainException(
                    "length",
                    NumberText.plain(lengthFeet),
                    "ft",
                    "lengths and diameters that one of the rules takes",
                    "try 16 ft and 6 to 30 in");
        }
        return comparison;
    }

    private IntStream inches() {
        return IntStream.rangeClosed(least, greatest);
    }

    private OptionalDouble at(LogRule rule, int inches) {
        try {
            return OptionalDouble.of(rule.boardFeet(inches, lengthFeet));
        } catch (OutOfDomainException outside) {
            return OptionalDouble.empty();
        }
    }

    private Optional<MeasurementError> error(LogRule rule, int inches) {
        try {
            return Optional.of(MeasurementError.of(rule, inches, lengthFeet));
        } catch (OutOfDomainException outside) {
            return Optional.empty();
        }
    }

    /**
     * Every rule at every diameter, with the effect of a misread diameter in percent.
     *
     * @return a table with a row for each rule and diameter in its domain
     */
    public PlanTable table() {
        PlanTable.Builder table = PlanTable.of("rules", TITLE)
                .text("Rule", "rule")
                .text("Standing", "standing")
                .text("Diameter at", "diameter-at")
                .number("Diameter, in", "diameter-in")
                .number("Length, ft", "length-ft")
                .number("Board feet by scale", "scale-bf")
                .number("Half an inch less, %", "half-inch-less-percent")
                .number("Half an inch more, %", "half-inch-more-percent")
                .number("An inch less, %", "inch-less-percent")
                .number("An inch more, %", "inch-more-percent")
                .text("Caution", "caution");
        for (LogRule rule : rules) {
            inches().forEach(d -> at(rule, d).ifPresent(feet -> {
                List<Cell> cells = new ArrayList<>(List.of(
                        Cell.text(rule.id()),
                        Cell.text(rule.standing().label()),
                        Cell.text(rule.diameterAt().label()),
                        Cell.whole(d),
                        Cell.number(lengthFeet, 2),
                        Cell.number(feet, 2)));
                cells.addAll(errors(error(rule, d), 2));
                cells.add(Cell.text(rule.caution(d, lengthFeet).orElse("")));
                table.row(cells);
            }));
        }
        return table.build();
    }

    private static List<Cell> errors(Optional<MeasurementError> error, int decimals) {
        if (error.isEmpty()) {
            return List.of(Cell.NONE, Cell.NONE, Cell.NONE, Cell.NONE);
        }
        MeasurementError known = error.get();
        return List.of(
                cell(known.percentHalfInchLess(), decimals),
                cell(known.percentHalfInchMore(), decimals),
                Cell.number(known.percentInchLess(), decimals),
                Cell.number(known.percentInchMore(), decimals));
    }

    private static Cell cell(OptionalDouble value, int decimals) {
        return value.isPresent() ? Cell.number(value.getAsDouble(), decimals) : Cell.NONE;
    }

    /** A few of the diameters, evenly spread, both ends among them. */
    private int[] shown() {
        int count = Math.min(COLUMNS, greatest - least + 1);
        return IntStream.range(0, count)
                .map(i -> least + (int) Math.rint((double) i * (greatest - least) / (count - 1)))
                .toArray();
    }

    private PlanTable values() {
        PlanTable.Builder table = PlanTable.of("values", "Board feet by scale, by diameter in inches")
                .text("Rule", "rule")
                .text("Standing", "standing");
        for (int d : shown()) {
            table.number(d + " in", d + "-in");
        }
        for (LogRule rule : rules) {
            List<Cell> cells = new ArrayList<>(
                    List.of(Cell.text(rule.id()), Cell.text(rule.standing().label())));
            for (int d : shown()) {
                OptionalDouble feet = at(rule, d);
                cells.add(feet.isPresent() ? Cell.number(feet.getAsDouble(), 0) : Cell.NONE);
            }
            table.row(cells);
        }
        return table.build();
    }

    private PlanTable misread() {
        int middle = shown()[shown().length / 2];
        PlanTable.Builder table = PlanTable.of(
                        "misread",
                        "What a misread diameter does to a log of " + middle
                                + " in, before the rule's own rounding; of a table from cell to cell")
                .text("Rule", "rule")
                .text("Standing", "standing")
                .number("Half an inch less, %", "half-inch-less-percent")
                .number("Half an inch more, %", "half-inch-more-percent")
                .number("An inch less, %", "inch-less-percent")
                .number("An inch more, %", "inch-more-percent");
        for (LogRule rule : rules) {
            List<Cell> cells = new ArrayList<>(
                    List.of(Cell.text(rule.id()), Cell.text(rule.standing().label())));
            cells.addAll(errors(error(rule, middle), 1));
            table.row(cells);
        }
        return table.build();
    }

    private List<Section> sections(boolean page) {
        List<Block> values = new ArrayList<>();
        if (page) {
            values.add(new Figure(
                    svg(),
                    "Board feet by scale as a share of 12 board feet for each cubic foot of a cylinder of the scaling diameter;"
                            + " more than 1.1 is drawn at the upper edge; the thin broken line is " + BESIDE.name()
                            + "."));
        }
        values.add(new Tabular(values()));
        List<String> elsewhere = rules.stream()
                .filter(rule -> rule.diameterAt() != BESIDE.diameterAt())
                .map(rule ->
                        rule.id() + ": diameter at the " + rule.diameterAt().label() + ".")
                .toList();
        if (!elsewhere.isEmpty()) {
            values.add(new Points(elsewhere));
        }
        List<String> cautions = rules.stream()
                .flatMap(rule -> inches().filter(d -> at(rule, d).isPresent())
                        .mapToObj(d -> rule.caution(d, lengthFeet))
                        .flatMap(Optional::stream)
                        .limit(1)
                        .map(words -> rule.id() + ", caution: " + words + "."))
                .toList();
        if (!cautions.isEmpty()) {
            values.add(new Points(cautions));
        }
        return List.of(
                new Section("values", "What each rule gives", values),
                new Section(
                        "misread",
                        "What a misread diameter does",
                        List.of(
                                new Prose(
                                        "Two rules that differ by less than this cannot be told apart by a tape that far off. A"
                                                + " rule of rounded cells moves in its own steps. A dash stands where a rule gives no"
                                                + " figure: near or beyond its limits, where it gives nothing, or between the whole"
                                                + " inches of a table."),
                                new Tabular(misread()))));
    }

    private String intro() {
        return "Logs of " + NumberText.plain(lengthFeet) + " ft, " + least + " to " + greatest
                + " in, diameter inside bark where the rule takes it. Each rule stands under its key and with what it rests on; the"
                + " command rules tells its name, limits and source.";
    }

    /**
     * As plain text.
     *
     * @return lines of no more than 100 characters unless a table cannot be narrower, each with its line end
     */
    public String text() {
        return PlanText.of(TITLE, List.of(new Prose(intro())), sections(false));
    }

    /**
     * As a page that needs nothing beside itself.
     *
     * @return HTML that is well-formed XML as well
     */
    public String page() {
        return PlanPage.of(TITLE, List.of(new Prose(intro())), sections(true));
    }

    /** A panel for each rule; the curves are told apart by place and name, never by colour. */
    private String svg() {
        int rows = (rules.size() + PANELS_A_ROW - 1) / PANELS_A_ROW;
        double width = PANELS_A_ROW * (PANEL + GAP) + GAP;
        double height = rows * (NAME + HEIGHT + 2 * GAP);
        Drawing drawing = new Drawing(
                "rules",
                width,
                height,
                TITLE,
                "A panel for each of " + rules.size() + " rules: its share of a cylinder rises with the diameter from "
                        + least + " to " + greatest + " in. The table below has the figures.");
        for (int i = 0; i < rules.size(); i++) {
            double x = GAP + i % PANELS_A_ROW * (PANEL + GAP);
            int row = i / PANELS_A_ROW;
            double y = row * (NAME + HEIGHT + 2 * GAP) + NAME;
            panel(drawing, rules.get(i), x, y);
        }
        return drawing.finish();
    }

    private void panel(Drawing drawing, LogRule rule, double x, double y) {
        drawing.text(x, y - NAME + 8, "start", rule.id())
                .text(x, y - NAME + 23, "start", rule.standing().label());
        drawing.rectangle(x, y, PANEL, HEIGHT, "fill", "none", "stroke", "currentColor", "stroke-width", "0.7");
        for (double share : new double[] {0.25, 0.5, 0.75, 1}) {
            drawing.path(
                    "M" + Drawing.number(x) + " " + Drawing.number(y(y, share)) + "h" + Drawing.number(PANEL),
                    "fill",
                    "none",
                    "stroke",
                    "currentColor",
                    "stroke-width",
                    "0.3");
        }
        drawing.text(x - 3, y(y, 0.5), "end", "½").text(x - 3, y(y, 1), "end", "1");
        drawing.text(x, y + HEIGHT + 11, "start", least + " in")
                .text(x + PANEL, y + HEIGHT + 11, "end", greatest + " in");
        drawing.path(
                curve(BESIDE, x, y),
                "fill",
                "none",
                "stroke",
                "currentColor",
                "stroke-width",
                "0.9",
                "stroke-dasharray",
                "4 3");
        String curve = curve(rule, x, y);
        if (curve.isEmpty()) {
            drawing.text(x + PANEL / 2.0, y + HEIGHT / 2.0, "middle", why(rule));
        } else {
            drawing.path(curve, "fill", "none", "stroke", "currentColor", "stroke-width", "2");
        }
    }

    /** Why a rule has no curve. */
    private String why(LogRule rule) {
        return rule.lengthFeet().holds(lengthFeet)
                ? "not for these diameters"
                : "for " + NumberText.full(rule.lengthFeet().least()) + " to "
                        + NumberText.full(rule.lengthFeet().greatest()) + " ft only";
    }

    private static double y(double top, double share) {
        return top + HEIGHT * (1 - share / MOST_SHARE);
    }

    /** Broken where the rule gives nothing; a share beyond the panel stays at its edge. A point alone is a small cross. */
    private String curve(LogRule rule, double x, double y) {
        StringBuilder d = new StringBuilder();
        for (int inches = least; inches <= greatest; inches++) {
            OptionalDouble feet = at(rule, inches);
            if (feet.isEmpty()) {
                continue;
            }
            boolean first = inches == least || at(rule, inches - 1).isEmpty();
            boolean last = inches == greatest || at(rule, inches + 1).isEmpty();
            double cylinder = 12 * Math.PI / 4 * inches * inches / 144 * lengthFeet;
            double share = Math.min(MOST_SHARE, Math.max(0, feet.getAsDouble() / cylinder));
            double across = x + PANEL * (inches - least) / (greatest - least);
            double up = y(y, share);
            if (first && last) {
                d.append("M" + Drawing.number(across - MARK) + " " + Drawing.number(up) + "h"
                                + Drawing.number(2 * MARK))
                        .append("M" + Drawing.number(across) + " " + Drawing.number(up - MARK) + "v"
                                + Drawing.number(2 * MARK));
            } else {
                d.append(first ? 'M' : 'L')
                        .append(Drawing.number(across))
                        .append(' ')
                        .append(Drawing.number(up));
            }
        }
        return d.toString();
    }
}
