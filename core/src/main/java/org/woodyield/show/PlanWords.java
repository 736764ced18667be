package org.woodyield.show;

import java.util.LinkedHashSet;
import java.util.Set;
import java.util.stream.Stream;
import org.woodyield.measure.BoardFeet;
import org.woodyield.measure.Distribution;
import org.woodyield.measure.Length;
import org.woodyield.measure.Volume;
import org.woodyield.plan.GreenSize;
import org.woodyield.plan.JobPlan;
import org.woodyield.show.Block.Derivation;
import org.woodyield.show.PlanTable.Cell;
import org.woodyield.source.Source;
import org.woodyield.source.Sources;
import org.woodyield.source.Standing;
import org.woodyield.work.Outlook;
import org.woodyield.work.WorkInput;
import org.woodyield.working.Working;

/** How the sections of one plan word their figures; gathers the sources that they name. */
final class PlanWords {

    static final String NOTHING = "Nothing is sawn, so there is nothing to show here.";

    private static final int VALUE_DIGITS = 6;
    private static final int RANGE_DIGITS = 4;

    private final JobPlan plan;
    private final LengthText lengths;
    private final Set<Source> sources = new LinkedHashSet<>();

    PlanWords(JobPlan plan) {
        this.plan = plan;
        lengths = LengthText.of(plan.input().saw());
    }

    JobPlan plan() {
        return plan;
    }

    LengthText lengths() {
        return lengths;
    }

    /** All that were named so far, in the order of their first mention; a section adds its own. */
    Set<Source> sources() {
        return sources;
    }

    Derivation derivation(String title, Working derived) {
        Working working = derived.givenBy(Sources.get("user"));
        working.lines().forEach(line -> sources.add(line.source()));
        return new Derivation(title, working);
    }

    Cell length(Length length) {
        return Cell.length(lengths.bare(lengths.size(length)), length);
    }

    Cell near(Length length) {
        return Cell.length(lengths.bare(lengths.near(length)), length);
    }

    String header(String words) {
        return words + ", " + lengths.unit();
    }

    /** The wood of a green size, marked where its shrinkage is not published. */
    static String wood(GreenSize size) {
        return size.shrinkageWorking()
                .map(working -> marked(size.species().commonName(), weakest(working)))
                .orElse(size.species().commonName());
    }

    private static Standing weakest(Working working) {
        return working.lines().stream().anyMatch(line -> line.source().standing() == Standing.MEMORY)
                ? Standing.MEMORY
                : Standing.PUBLISHED;
    }

    /** Time, fuel and what they cost rest on figures from memory until the job gives its own. */
    String fromMemory(String name) {
        return plan.input().work().values().values().stream()
                        .anyMatch(value -> value.source().standing() == Standing.MEMORY)
                ? marked(name, Standing.MEMORY)
                : name;
    }

    static String marked(String name, Standing standing) {
        return standing == Standing.PUBLISHED ? name : name + " [" + standing.label() + "]";
    }

    static String feet(BoardFeet feet) {
        return NumberText.fixed(feet.value(), 0) + " bf " + feet.kind().label();
    }

    static String cubic(Volume volume) {
        return NumberText.fixed(volume.cubicFeet(), 1) + " ft3 (" + NumberText.fixed(volume.cubicMetres(), 3) + " m3)";
    }

    static String share(Volume part, Volume whole) {
        return whole.cubicMetres() > 0 ? NumberText.percent(part.cubicMetres() / whole.cubicMetres()) : "–";
    }

    static String signed(double percent) {
        String text = NumberText.fixed(percent, 0);
        return percent > 0 && !text.equals("0") ? "+" + text : text;
    }

    static String amount(double value, String unit) {
        if (!unit.equals("pieces")) {
            return NumberText.fixed(value, 2) + " " + unit;
        }
        return NumberText.fixed(value, 0) + (value == 1 ? " piece" : " pieces");
    }

    /** What a source is called in a table. */
    static String title(Source source) {
        return source.author().isBlank() ? source.title() : source.author() + ", " + source.title();
    }

    /** A range in words, empty where there is none. */
    static String range(Distribution spread) {
        if (spread instanceof Distribution.Triangular triangle) {
            return ranged(triangle.least()) + " to " + ranged(triangle.greatest());
        }
        if (spread instanceof Distribution.Rectangular even) {
            return ranged(even.least()) + " to " + ranged(even.greatest());
        }
        if (spread instanceof Distribution.Normal normal) {
            return ranged(normal.mean()) + " +- " + ranged(normal.standardDeviation());
        }
        return "";
    }

    /** A value with a range, or an end of the range: nobody knows more digits of these. */
    static String ranged(double value) {
        return NumberText.significant(value, RANGE_DIGITS);
    }

    /** A value that was given or computed, without the digits that nobody knows. */
    static String value(double value) {
        return NumberText.significant(value, VALUE_DIGITS);
    }

    /** A row of an input with its range and what it does to a sum of money. */
    Cell[] moved(Outlook.Mover mover, Cell... before) {
        sources().add(mover.value().source());
        return Stream.concat(
                        Stream.of(before),
                        Stream.of(
                                Cell.text(label(mover)),
                                Cell.text(
                                        (PlanWords.range(mover.value().spread()) + " " + unit(mover.input())).strip()),
                                Cell.text(mover.value().source().standing().label()),
                                Cell.number(mover.lower(), 2, 4),
                                Cell.number(mover.upper(), 2, 4)))
                .toArray(Cell[]::new);
    }

    /** An input that moves a figure, with the saw that it belongs to where there are two. */
    private static String label(Outlook.Mover mover) {
        return mover.input().label() + (mover.saw().isEmpty() ? "" : " (" + mover.saw() + ")");
    }

    String unit(WorkInput input) {
        return input.isMoney() ? input.unit().replace("money", plan.input().currency()) : input.unit();
    }
}
