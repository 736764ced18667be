package org.woodyield.show;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.woodyield.measure.Length;
import org.woodyield.measure.Rounding;
import org.woodyield.plan.Bucking;
import org.woodyield.scaling.ScalingConvention;
import org.woodyield.show.Block.Points;
import org.woodyield.show.Block.Prose;
import org.woodyield.show.Block.Section;
import org.woodyield.show.Block.Tabular;
import org.woodyield.show.PlanTable.Cell;

/**
 * How a stem is cut for most worth, as plain text and as a table.
 *
 * @param bucking what was asked
 * @param best the answer
 * @param diameters where the diameters come from, a sentence
 * @param remarks what a reader should know of the stem, each a sentence without its point; possibly none
 */
public record BuckingSheet(Bucking bucking, Bucking.Best best, String diameters, List<String> remarks) {

    /** Keeps an immutable copy. */
    public BuckingSheet {
        remarks = List.copyOf(remarks);
    }

    /**
     * The logs from the butt.
     *
     * @return a row for each
     */
    public PlanTable table() {
        return table(true);
    }

    private PlanTable table(boolean cautions) {
        String currency = bucking.prices().currency();
        PlanTable.Builder table = PlanTable.of("logs", "The logs, from the butt")
                .text("Log", "log")
                .number("From butt", "from-butt-mm")
                .number("Length", "length-mm")
                .number("Large, in", "large-end-in")
                .number("Small, in", "small-end-in")
                .text("Grade", "grade")
                .text("Scaled, in x ft", "scaled-in-x-ft")
                .number("Scale, bf", "scale-bf")
                .number(currency + " a mbf", "price-per-mbf")
                .number("Worth, " + currency, "worth");
        if (cautions) {
            table.text("Caution", "caution");
        }
        int number = 1;
        for (Bucking.Cut cut : best.cuts()) {
            Length from = cut.from().minus(best.stem().stump());
            double feet = cut.scale().boardFeet().value();
            List<Cell> row = new ArrayList<>(List.of(
                    Cell.text(Integer.toString(number)),
                    Cell.length(shown(from), from),
                    Cell.length(shown(cut.log().length()), cut.log().length()),
                    Cell.number(cut.log().largeEndMean().toInches(), 1, 3),
                    Cell.number(cut.log().smallEndMean().toInches(), 1, 3),
                    Cell.text(cut.grade()),
                    Cell.text(scaledAs(cut)),
                    Cell.number(feet, feet == Math.rint(feet) ? 0 : 3, 3),
                    Cell.number(cut.perThousand(), 2),
                    Cell.number(cut.value(), 2, 4)));
            if (cautions) {
                row.add(Cell.text(Stream.concat(cut.scale().caution().stream(), remarks.stream())
                        .collect(Collectors.joining("; "))));
            }
            table.row(row);
            number++;
        }
        return table.build();
    }

    private static String scaledAs(Bucking.Cut cut) {
        StringBuilder text = new StringBuilder();
        for (ScalingConvention.Segment segment : cut.scale().segments()) {
            text.append(text.isEmpty() ? "" : "; ")
                    .append(NumberText.full(segment.diameterInches()))
                    .append(" x ")
                    .append(NumberText.full(segment.lengthFeet()));
        }
        return text.toString();
    }

    private static String shown(Length length) {
        return length.inFeet(4, Rounding.HALF_UP);
    }

    /** Where the last cut is made; the beginning of the stem if there is none. */
    private Length end() {
        Length end = best.stem().stump();
        for (Bucking.Cut cut : best.cuts()) {
            end = cut.from().plus(cut.log().length());
        }
        return end;
    }

    /**
     * As plain text.
     *
     * @return lines of no more than 100 characters unless the table cannot be narrower, each with its line end
     */
    public String text() {
        List<Block> blocks = new ArrayList<>();
        if (best.cuts().isEmpty()) {
            blocks.add(new Prose("The buyer takes no log of these lengths from this stem; it is worth nothing here."));
        } else {
            blocks.add(new Tabular(table(false)));
        }
        List<String> points = new ArrayList<>();
        points.add("The best way is worth " + NumberText.fixed(best.value(), 2) + " "
                + bucking.prices().currency() + ", of all ways to cut the listed lengths"
                + (bucking.offcuts().isEmpty() ? "" : " and offcuts")
                + " from the butt up: "
                + (best.heights() == 1
                        ? "the one height that cuts can reach was"
                        : "all " + best.heights() + " heights that cuts can reach were")
                + " looked at.");
        points.add("Lengths are those to cut, trim included; diameters are inside bark. Above the last cut "
                + shown(best.stem().top().minus(end())) + " are left of the stem.");
        cautions().forEach(points::add);
        blocks.add(new Points(points));
        ScalingConvention convention = bucking.convention();
        List<String> basis = new ArrayList<>();
        basis.add("Rule: " + bucking.rule().name() + ", "
                + bucking.rule().standing().label() + ": "
                + bucking.rule().sources().get(0).citation() + ".");
        basis.add("Diameter and length: " + convention.name() + ": "
                + convention.source().citation() + ".");
        convention.notes().forEach(basis::add);
        basis.add("Each log is " + shown(bucking.trim()) + " longer than its scaling length; each cut takes "
                + bucking.kerf().inInches(64, Rounding.HALF_UP) + ".");
        basis.add(diameters);
        remarks.forEach(words -> basis.add(words + "."));
        return PlanText.of(
                "Stem " + best.stem().id() + ", cut for most worth",
                List.of(),
                List.of(
                        new Section("logs", "What to cut", blocks),
                        new Section("basis", "What it rests on", List.of(new Points(basis)))));
    }

    private List<String> cautions() {
        return best.cuts().stream()
                .map(cut -> cut.scale().caution())
                .flatMap(Optional::stream)
                .distinct()
                .map(words -> "Caution: " + words + ".")
                .toList();
    }
}
