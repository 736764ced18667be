package org.woodyield.show;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.woodyield.measure.Length;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.measure.Volume;
import org.woodyield.show.Block.Fact;
import org.woodyield.show.Block.Facts;
import org.woodyield.show.Block.Points;
import org.woodyield.show.Block.Prose;
import org.woodyield.show.Block.Section;
import org.woodyield.show.Block.Tabular;
import org.woodyield.show.Block.Workings;
import org.woodyield.show.PlanTable.Cell;
import org.woodyield.source.Source;
import org.woodyield.source.Sourced;
import org.woodyield.source.Sources;
import org.woodyield.wood.AirDrying;
import org.woodyield.wood.Cupping;
import org.woodyield.wood.DryingAir;
import org.woodyield.wood.EquilibriumMoisture;
import org.woodyield.wood.LumberStack;
import org.woodyield.wood.RedOakKiln;
import org.woodyield.wood.Species;
import org.woodyield.wood.WoodWeight;

/**
 * How boards dry: time in the open, moisture of the air, weight and water, red oak in a kiln, cup and stack. As plain text, as
 * a page with the drawing of a cupped board, and as a table. What cannot be told is named with the reason.
 */
public final class DryingSheet {

    private static final double FIBRE_SATURATION = 30;
    private static final double TABLE_END = 20;
    private static final double CUBIC_INCHES = 144;
    private static final int MOST_BOARDS = 100_000;

    /** One figure of the table for files. */
    private record Entry(String part, String what, double value, int decimals, String unit, String source) {}

    private final DryingCase asked;
    private final LengthText lengths;
    private final DryingParts parts;
    private final Optional<Sourced> green;
    private final Optional<Double> from;
    private final List<Entry> entries = new ArrayList<>();
    private final List<Section> sections = new ArrayList<>();
    private final List<Block.Derivation> shown = new ArrayList<>();

    private DryingSheet(DryingCase asked, Source origin) {
        this.asked = asked;
        lengths = asked.inches() ? LengthText.INCHES : LengthText.MILLIMETRES;
        parts = new DryingParts(lengths, origin);
        green = asked.fromPercent().isPresent()
                ? Optional.empty()
                : asked.species().greenMoisturePercent();
        from = asked.fromPercent().or(() -> green.map(Sourced::value));
    }

    /**
     * Lays out all that is known of a case.
     *
     * @param asked the boards, and how they dry
     * @param origin who gave the case, such as a command line
     * @return the sheet
     * @throws OutOfDomainException if the boards asked for cannot be: more than 100000, or the wood starts drier than it is
     *     to end
     */
    public static DryingSheet of(DryingCase asked, Source origin) {
        DryingSheet sheet = new DryingSheet(asked, origin);
        if (sheet.from.isPresent() && sheet.from.get() < asked.toPercent()) {
            throw new OutOfDomainException(
                    "moisture at the end",
                    percent(asked.toPercent()),
                    "%",
                    "up to the green moisture of " + asked.species().commonName() + ", " + percent(sheet.from.get())
                            + " %",
                    "give a drier end, or the moisture at the start");
        }
        sheet.add("air-drying", "Time to dry in the open", sheet.airDrying());
        asked.air().ifPresent(air -> sheet.add("equilibrium", "Moisture that the air allows", sheet.air(air)));
        sheet.add("weight", "Weight and water", sheet.weight());
        sheet.add("kiln", "Red oak in a kiln", sheet.kiln());
        sheet.add("cupping", "Cupping", sheet.cupping());
        sheet.add("stack", "The stack", sheet.stack());
        if (asked.air().isEmpty()) {
            sheet.parts.missing("Equilibrium moisture", "no temperature with humidity and no place is given");
        }
        if (!sheet.parts.leftOut().isEmpty()) {
            sheet.add("left-out", "What is left out, and why", List.of(new Points(sheet.parts.leftOut())));
        }
        sheet.add("sources", "Sources", List.of(new Tabular(PlanTable.ofSources(sheet.parts.sources()))));
        return sheet;
    }

    /** A section; one without anything to show is left away, as what it lacks is named further on. */
    private void add(String id, String title, List<Block> blocks) {
        if (!blocks.isEmpty()) {
            List<Block> all = new ArrayList<>(blocks);
            if (!parts.workings().isEmpty()) {
                all.add(new Workings("How these figures come about", List.copyOf(parts.workings())));
                shown.addAll(parts.workings());
                parts.workings().clear();
            }
            sections.add(new Section(id, title, all));
        }
    }

    private static String percent(double moisture) {
        return NumberText.significant(moisture, 4);
    }

    private List<Block> airDrying() {
        Species species = asked.species();
        String what = "Days to dry in the open";
        double inches = asked.thickness().toInches();
        Optional<AirDrying.Days> inch = AirDrying.ofInchLumber(species);
        if (inch.isEmpty()) {
            parts.missing(what, "the table has no row for " + species.commonName());
            return List.of();
        }
        if (!AirDrying.THICKNESS.holds(inches)) {
            parts.missing(
                    what,
                    "the range is held to hold for " + AirDrying.THICKNESS.limits() + ", and the boards are "
                            + lengths.size(asked.thickness()) + " thick");
            return List.of();
        }
        if (from.isPresent() && from.get() < FIBRE_SATURATION) {
            parts.missing(
                    what, "the range begins with green wood, and these boards start at " + percent(from.get()) + " %");
            return List.of();
        }
        PlanTable.Builder table = PlanTable.of(
                        "air-drying",
                        "Days from green to about 20 %, boards " + lengths.size(asked.thickness()) + " thick")
                .text("Exponent", "exponent")
                .number("Days at least", "days-least")
                .number("Days at most", "days-most")
                .text("Exponent after", "exponent-source")
                .text("Range of 1 in after", "source");
        for (AirDrying.ThicknessExponent exponent : AirDrying.ThicknessExponent.values()) {
            AirDrying.Days days = AirDrying.days(species, asked.thickness(), exponent);
            boolean used = exponent == AirDrying.ThicknessExponent.TENTH_THICKER;
            String name = NumberText.full(exponent.value());
            parts.show("Days with exponent " + name, AirDrying.daysWorking(species, asked.thickness(), exponent));
            table.row(
                    Cell.text(name + (used ? ", used" : "")),
                    Cell.number(days.least(), 0, 2),
                    Cell.number(days.greatest(), 0, 2),
                    Cell.text(DryingParts.exponentInWords(exponent) + "; " + parts.rests(exponent.source())),
                    Cell.text(parts.rests(days.source())));
            note("air-drying", "least days, exponent " + name, days.least(), 2, "days", parts.rests(days.source()));
            note("air-drying", "most days, exponent " + name, days.greatest(), 2, "days", parts.rests(days.source()));
        }
        String end = asked.toPercent() < TABLE_END
                ? " The way on from 20 % to " + percent(asked.toPercent()) + " % is not in it."
                : asked.toPercent() > TABLE_END
                        ? " It ends at about 20 %: to " + percent(asked.toPercent()) + " % is sooner."
                        : "";
        return List.of(
                new Tabular(table.build()),
                new Prose(
                        "Days of 1 in times thickness^exponent. Plans use the first exponent; the others are views beside"
                                + " it. Season, place and stacking decide within the range: short for a stack made in spring, long"
                                + " for one made in autumn." + end));
    }

    private List<Block> air(DryingAir air) {
        if (air instanceof DryingAir.Steady steady) {
            note(
                    "equilibrium",
                    "equilibrium moisture, coefficients for "
                            + steady.equation().temperature().unit(),
                    steady.equation()
                            .percent(steady.air().temperature(), steady.air().humidityPercent()),
                    4,
                    "%",
                    parts.rests(steady.equation()
                            .working(steady.air().temperature(), steady.air().humidityPercent())));
        }
        List<Block> blocks = new ArrayList<>(parts.air(air));
        if (air instanceof DryingAir.Steady steady) {
            double least = steady.equation()
                    .percent(steady.air().temperature(), steady.air().humidityPercent());
            if (asked.toPercent() < least) {
                blocks.add(new Prose("The end, " + percent(asked.toPercent()) + " %, is below the equilibrium of this"
                        + " air, " + NumberText.fixed(least, 1) + " %: in it the boards never come so far."));
            }
        }
        return blocks;
    }

    private List<Block> weight() {
        Species species = asked.species();
        if (species.specificGravityGreen().isEmpty()) {
            parts.missing("Weight and water", "no gravity on green volume is known for " + species.commonName());
            return List.of();
        }
        PlanTable.Builder table = PlanTable.of("weights", "Weight, and water that leaves")
                .text("Of", "of")
                .number(start() + ", kg", "start-kg")
                .number("At " + percent(asked.toPercent()) + " %, kg", "end-kg")
                .number("Water, kg", "water-kg")
                .number("Water, lb", "water-lb")
                .text("Rests on", "source");
        Optional<Volume> board = board();
        if (board.isPresent()) {
            weigh(table, "one board", board.get());
            boards().ifPresent(count -> {
                if (count > 1) {
                    weigh(table, count + " boards", board.get().times(count));
                }
            });
        } else {
            parts.missing("Weight of a board", "its width or its length is not given");
        }
        weigh(table, "1000 bf", Volume.ofCubicInches(CUBIC_INCHES * 1000));
        if (from.isEmpty()) {
            parts.missing(
                    "Weight at the start, and the water that leaves",
                    "no green moisture is known for " + species.commonName() + "; give the moisture at the start");
        }
        String begins = green.map(moisture -> " The start is the green moisture of the species, "
                        + percent(moisture.value()) + " %, by " + parts.cited(moisture.source()) + ".")
                .orElse("");
        return List.of(
                new Tabular(table.build()),
                new Prose("1000 bf are 144 cubic inches of green wood each, as sawn; a nominal tally counts otherwise."
                        + begins + ""));
    }

    private String start() {
        return from.map(moisture -> "At " + percent(moisture) + " %").orElse("At the start");
    }

    private void weigh(PlanTable.Builder table, String of, Volume volume) {
        Species species = asked.species();
        double end = WoodWeight.kilograms(species, volume, asked.toPercent());
        String rests = parts.rests(WoodWeight.kilogramsWorking(species, volume, asked.toPercent()));
        parts.show(of + ", at the end", WoodWeight.kilogramsWorking(species, volume, asked.toPercent()));
        note("weight", of + ", at the end", end, 3, "kg", rests);
        Cell begin = Cell.NONE;
        Cell water = Cell.NONE;
        Cell pounds = Cell.NONE;
        if (from.isPresent()) {
            double kilograms = WoodWeight.kilograms(species, volume, from.get());
            double lost = WoodWeight.waterLostKilograms(species, volume, from.get(), asked.toPercent());
            parts.show(of + ", at the start", WoodWeight.kilogramsWorking(species, volume, from.get()));
            parts.show(of + ", water", WoodWeight.waterLostWorking(species, volume, from.get(), asked.toPercent()));
            begin = Cell.number(kilograms, 1, 3);
            water = Cell.number(lost, 1, 3);
            pounds = Cell.number(lost / DryingParts.POUND, 1, 3);
            note("weight", of + ", at the start", kilograms, 3, "kg", rests);
            note("weight", of + ", water lost", lost, 3, "kg", rests);
        }
        table.row(Cell.text(of), begin, Cell.number(end, 1, 3), water, pounds, Cell.text(rests));
    }

    private List<Block> kiln() {
        String what = "Days in a kiln";
        if (!RedOakKiln.isFor(asked.species())) {
            parts.missing(what, "the equation is for northern and southern red oak alone");
            return List.of();
        }
        if (!(asked.air().orElse(null) instanceof DryingAir.Steady steady)) {
            parts.missing(
                    what, "it needs one kiln temperature, " + RedOakKiln.TEMPERATURE.limits() + ", and one humidity");
            return List.of();
        }
        boolean fahrenheit = steady.equation().equals(EquilibriumMoisture.fahrenheit());
        double temperature = steady.air().temperature();
        double f = fahrenheit ? temperature : steady.equation().toOther(temperature);
        if (!RedOakKiln.TEMPERATURE.holds(f)) {
            parts.missing(
                    what,
                    "it holds for " + RedOakKiln.TEMPERATURE.limits() + ", and the air has " + NumberText.fixed(f, 1)
                            + " °F; in the open the air-drying times count");
            return List.of();
        }
        if (from.isEmpty()) {
            parts.missing(what, "the moisture at the start is not known");
            return List.of();
        }
        double equilibrium = steady.equation().percent(temperature, steady.air().humidityPercent());
        try {
            double days = RedOakKiln.days(asked.thickness(), f, equilibrium, from.get(), asked.toPercent());
            parts.show(
                    "Days in the kiln",
                    RedOakKiln.daysWorking(asked.thickness(), f, equilibrium, from.get(), asked.toPercent()));
            String rests = parts.rests(Sources.get("simpson-tschernitz")) + "; "
                    + parts.rests(
                            RedOakKiln.daysWorking(asked.thickness(), f, equilibrium, from.get(), asked.toPercent()));
            note("kiln", "days in a kiln", days, 3, "days", rests);
            return List.of(
                    new Facts(List.of(new Fact(
                            "Days in a kiln",
                            NumberText.fixed(days, 1),
                            "at " + NumberText.fixed(f, 1) + " °F and an equilibrium of "
                                    + NumberText.fixed(equilibrium, 1)
                                    + " %, " + percent(from.get()) + " to " + percent(asked.toPercent())
                                    + " %; " + rests))),
                    new Prose(
                            "At one temperature and humidity all the way. Oak dried green at kiln heat checks: it is no"
                                    + " kiln schedule. A kiln is hot and airless; nobody inside while it runs."));
        } catch (OutOfDomainException e) {
            parts.missing(what, e);
            return List.of();
        }
    }

    private List<Block> cupping() {
        String what = "Cupping";
        if (asked.width().isEmpty()) {
            parts.missing(what, "the width of the boards is not given");
            return List.of();
        }
        if (asked.pithDistances().isEmpty()) {
            parts.missing(what, "the distance from the pith to the middle of the board is not given");
            return List.of();
        }
        if (asked.toPercent() >= FIBRE_SATURATION) {
            parts.missing(what, "wood does not shrink before it is below 30 %");
            return List.of();
        }
        List<DryingParts.Cup> cups = new ArrayList<>();
        for (Length distance : asked.pithDistances()) {
            try {
                Cupping board = Cupping.of(
                        asked.species(),
                        asked.toPercent(),
                        asked.width().get(),
                        asked.thickness(),
                        asked.ringAngleDegrees(),
                        distance);
                cups.add(new DryingParts.Cup(
                        lengths.size(asked.thickness()) + " x "
                                + lengths.size(asked.width().get()),
                        board,
                        asked.toPercent()));
            } catch (OutOfDomainException e) {
                parts.missing(what, e);
            }
        }
        if (cups.isEmpty()) {
            return List.of();
        }
        List<Block> blocks = new ArrayList<>(parts.cups(cups));
        for (Optional<Sourced> shrinkage :
                List.of(asked.species().radialPercent(), asked.species().tangentialPercent())) {
            shrinkage.ifPresent(one -> parts.rests(one.source()));
        }
        Source source = asked.species().radialPercent().orElseThrow().source();
        blocks.add(new Prose("Shrinkage to oven-dry: radial "
                + asked.species().radialPercent().orElseThrow().value() + " %, tangential "
                + asked.species().tangentialPercent().orElseThrow().value() + " %, by " + source.citation() + "."));
        for (DryingParts.Cup cup : cups) {
            String at = cups.size() == 1 ? "" : ", " + lengths.size(cup.board().ringRadius()) + " from the pith";
            for (Cupping.Side side : Cupping.Side.values()) {
                note(
                        "cupping",
                        (side == Cupping.Side.BARK ? "hollow of the bark side" : "rise of the pith side") + at,
                        cup.board().depthInches(side),
                        5,
                        "in",
                        "derived; shrinkage " + parts.rests(source));
            }
        }
        return blocks;
    }

    private List<Block> stack() {
        String what = "Stack";
        if (asked.width().isEmpty() || asked.length().isEmpty()) {
            parts.missing(what, "the width or the length of the boards is not given");
            return List.of();
        }
        if (boards().isEmpty()) {
            parts.missing(what, "neither a number of boards nor board feet are given");
            return List.of();
        }
        LumberStack stack;
        try {
            stack = asked.stacking()
                    .of(
                            boards().get(),
                            asked.thickness(),
                            asked.width().get(),
                            asked.length().get());
        } catch (OutOfDomainException e) {
            parts.missing(what, e);
            return List.of();
        }
        DryingParts.Pile pile = new DryingParts.Pile("these boards", asked.species(), stack, from, asked.toPercent());
        note("stack", "stickers", pile.stack().stickers(), 0, "", "definition");
        note("stack", "rows", pile.stack().rows(), 0, "", "definition");
        note("stack", "height", pile.stack().heightInches(), 4, "in", "definition");
        note("stack", "ground covered", pile.stack().footprintSquareMetres(), 4, "m2", "definition");
        return parts.stacks(List.of(pile));
    }

    private Optional<Volume> board() {
        return asked.width()
                .flatMap(width -> asked.length().map(length -> Volume.ofPiece(asked.thickness(), width, length)));
    }

    /** How many boards there are; from board feet as many as give them, up to a whole board. */
    private Optional<Integer> boards() {
        if (asked.amount().isEmpty()) {
            return Optional.empty();
        }
        if (asked.amount().get() instanceof DryingCase.Boards boards) {
            return Optional.of(boards.count());
        }
        double feet = ((DryingCase.Feet) asked.amount().get()).feet();
        return asked.width().flatMap(width -> asked.length().map(length -> fromFeet(feet, width, length)));
    }

    private int fromFeet(double feet, Length width, Length length) {
        double each = asked.thickness().toInches() * width.toInches() * length.toInches() / CUBIC_INCHES;
        double count = Math.ceil(feet / each - 0.000001);
        if (!(count >= 1 && count <= MOST_BOARDS)) {
            throw new OutOfDomainException(
                    "board feet",
                    NumberText.full(feet),
                    "bf",
                    "1 to " + MOST_BOARDS + " boards of " + NumberText.fixed(each, 3) + " bf",
                    "give fewer board feet, or check the unit of the board's size");
        }
        return (int) count;
    }

    private void note(String part, String what, double value, int decimals, String unit, String source) {
        entries.add(new Entry(part, what, value, decimals, unit, source));
    }

    private String title() {
        return "Drying of " + asked.species().commonName() + ", " + lengths.size(asked.thickness()) + " thick";
    }

    private List<Block> preface() {
        return List.of(new Prose((asked.width().isEmpty()
                        ? "Boards"
                        : "Boards " + lengths.size(asked.width().get()) + " wide")
                + asked.length()
                        .map(length -> ", " + lengths.longways(length) + " long")
                        .orElse("")
                + boards().map(count -> ", " + count + " of them").orElse("")
                + ", from "
                + from.map(start -> percent(start) + " %").orElse("green")
                + (green.isPresent() ? " (green)" : "") + " to " + percent(asked.toPercent())
                + " % moisture on the oven-dry basis; sizes green, as sawn."));
    }

    /**
     * The sheet as plain text.
     *
     * @param workings whether to show how each figure came about as well
     * @return lines, none over 100 characters but those of a working, each with its line end
     */
    public String text(boolean workings) {
        StringBuilder out = new StringBuilder(PlanText.of(title(), preface(), sections));
        if (workings) {
            for (Block.Derivation derivation : shown) {
                out.append('\n').append(derivation.title()).append('\n');
                out.append(WorkingText.plain(derivation.working()));
            }
        }
        return out.toString();
    }

    /**
     * The sheet as a page that needs nothing beside itself, with the drawing and every working.
     *
     * @return HTML that is well-formed XML as well
     */
    public String page() {
        return PlanPage.of(title(), preface(), sections);
    }

    /**
     * The main figures, one a row, each with its unit and what it rests on.
     *
     * @return a table
     */
    public PlanTable table() {
        PlanTable.Builder table = PlanTable.of("drying", title())
                .text("Part", "part")
                .text("Figure", "figure")
                .number("Value", "value")
                .text("Unit", "unit")
                .text("Rests on", "source");
        for (Entry entry : entries) {
            table.row(
                    Cell.text(entry.part()),
                    Cell.text(entry.what()),
                    Cell.number(entry.value(), entry.decimals()),
                    Cell.text(entry.unit()),
                    Cell.text(entry.source()));
        }
        return table.build();
    }
}
