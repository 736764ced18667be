package org.woodyield.show;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.show.Block.Derivation;
import org.woodyield.show.Block.Figure;
import org.woodyield.show.Block.Prose;
import org.woodyield.show.Block.Tabular;
import org.woodyield.show.PlanTable.Cell;
import org.woodyield.source.Source;
import org.woodyield.source.Sourced;
import org.woodyield.source.Sources;
import org.woodyield.source.Standing;
import org.woodyield.wood.AirDrying;
import org.woodyield.wood.Cupping;
import org.woodyield.wood.DryingAir;
import org.woodyield.wood.EquilibriumMoisture;
import org.woodyield.wood.LumberStack;
import org.woodyield.wood.OutdoorMoisture;
import org.woodyield.wood.Species;
import org.woodyield.working.Working;

/** Parts that a drying sheet and a plan share: the air, a cupped board, a stack; gathers workings, sources and gaps. */
final class DryingParts {

    private static final List<String> MONTHS = List.of(
            "January",
            "February",
            "March",
            "April",
            "May",
            "June",
            "July",
            "August",
            "September",
            "October",
            "November",
            "December");
    private static final double FOOT = 0.3048;
    static final double POUND = 0.45359237;

    private final LengthText lengths;
    private final Source origin;
    private final Set<Source> sources = new LinkedHashSet<>();
    private final List<Derivation> workings = new ArrayList<>();
    private final List<String> leftOut = new ArrayList<>();

    DryingParts(LengthText lengths, Source origin) {
        this.lengths = lengths;
        this.origin = origin;
    }

    Set<Source> sources() {
        return sources;
    }

    List<Derivation> workings() {
        return workings;
    }

    /** What has no figure, and why. */
    List<String> leftOut() {
        return leftOut;
    }

    void missing(String what, String why) {
        leftOut.add(what + ": left out; " + why + ".");
    }

    void missing(String what, OutOfDomainException why) {
        missing(what, why.getMessage());
    }

    void show(String of, Working derived) {
        Working working = derived.givenBy(origin);
        working.lines().forEach(line -> sources.add(line.source()));
        workings.add(new Derivation(of, working));
    }

    /** Standing and key of a source, to stand beside a figure; the list of sources has it in full. */
    String rests(Source source) {
        sources.add(source);
        return source.standing().label() + ": " + source.id();
    }

    /** The citation of a source, which the list of sources has as well. */
    String cited(Source source) {
        sources.add(source);
        return source.citation();
    }

    /** The source of a working that is trusted least, of those that are no definition; it stands beside the figure. */
    String rests(Working working) {
        return rests(working.lines().stream()
                .map(Working.Line::source)
                .max((a, b) -> Integer.compare(trust(a.standing()), trust(b.standing())))
                .orElse(Sources.get("definition")));
    }

    private static int trust(Standing standing) {
        return switch (standing) {
            case DERIVED, GIVEN -> 0;
            case COMMON_PRACTICE -> 1;
            case PUBLISHED -> 2;
            case SECONDHAND -> 3;
            case MEMORY -> 4;
            case INVENTED -> 5;
        };
    }

    static String exponentInWords(AirDrying.ThicknessExponent exponent) {
        return switch (exponent) {
            case TENTH_THICKER -> "one tenth thicker takes 15 % longer";
            case DOUBLE_THICKNESS -> "twice as thick takes 2.5 times as long";
            case RED_OAK_KILN -> "red oak in a kiln";
        };
    }

    /** Equilibrium moisture of the air in which it dries. */
    List<Block> air(DryingAir air) {
        if (air instanceof DryingAir.Steady steady) {
            return steady(steady);
        }
        if (air instanceof DryingAir.Year year) {
            return year(year);
        }
        if (air instanceof DryingAir.Place place) {
            return place(place.city());
        }
        return seasons(((DryingAir.Seasons) air).ranges());
    }

    private List<Block> steady(DryingAir.Steady steady) {
        PlanTable.Builder table = PlanTable.of("yard-moisture", "Equilibrium moisture of the air")
                .text("Coefficients", "coefficients")
                .number("Temperature", "temperature")
                .number("Humidity, %", "humidity-percent")
                .number("Equilibrium, %", "moisture-percent")
                .text("Rests on", "source");
        double own = steady.air().temperature();
        for (EquilibriumMoisture form :
                List.of(steady.equation(), steady.equation().other())) {
            double temperature =
                    form.equals(steady.equation()) ? own : steady.equation().toOther(own);
            String unit = form.temperature().unit();
            try {
                Working working = form.working(temperature, steady.air().humidityPercent());
                show("Equilibrium moisture, coefficients for " + unit, working);
                table.row(
                        Cell.text("for " + unit),
                        Cell.number(temperature, 1, 3),
                        Cell.number(steady.air().humidityPercent(), 1, 3),
                        Cell.number(form.percent(temperature, steady.air().humidityPercent()), 2, 4),
                        Cell.text(rests(working)));
            } catch (OutOfDomainException e) {
                missing("Equilibrium moisture by the coefficients for " + unit, e);
            }
        }
        return List.of(
                new Tabular(table.build()),
                new Prose(
                        "The equation is printed once for °F and once for °C; the two sets of coefficients were rounded"
                                + " apart. Wood comes near this moisture and never below it."));
    }

    private List<Block> year(DryingAir.Year year) {
        EquilibriumMoisture own = year.equation();
        EquilibriumMoisture other = own.other();
        String unit = own.temperature().unit();
        PlanTable.Builder table = PlanTable.of("yard-moisture", "Equilibrium moisture by month, of air under a roof")
                .text("Month", "month")
                .number("Temperature, " + unit, unit.equals("°F") ? "temperature-f" : "temperature-c")
                .number("Humidity, %", "humidity-percent")
                .number("By the set for " + unit + ", %", "moisture-percent")
                .number("By the set for " + other.temperature().unit() + ", %", "moisture-other-percent");
        List<String> frost = new ArrayList<>();
        for (int i = 0; i < MONTHS.size(); i++) {
            OutdoorMoisture.Air air = year.months().get(i);
            Cell cell = moisture(own, air.temperature(), air.humidityPercent());
            Cell converted = moisture(other, own.toOther(air.temperature()), air.humidityPercent());
            if (cell.value().isEmpty()) {
                frost.add(MONTHS.get(i));
            }
            table.row(
                    Cell.text(MONTHS.get(i)),
                    Cell.number(air.temperature(), 1, 3),
                    Cell.number(air.humidityPercent(), 1, 3),
                    cell,
                    converted);
        }
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Tabular(table.build()));
        Source source = Sources.get("wood-handbook-emc");
        String mean = "";
        if (frost.isEmpty()) {
            mean = " Mean of the year " + NumberText.fixed(OutdoorMoisture.meanPercent(own, year.months()), 1) + " %.";
            show("Mean of the year", OutdoorMoisture.meanWorking(own, year.months()));
        } else {
            missing(
                    "Equilibrium moisture of " + String.join(", ", frost) + ", and the mean of the year",
                    "the equation holds for " + own.temperature().limits()
                            + " and was not made for frost; write its least temperature for such a month to have it counted so");
        }
        blocks.add(new Prose("From the temperatures and humidities given, by " + cited(source) + "." + mean
                + " Wood outdoors under a roof lags behind the month; sun and rain change it."));
        return blocks;
    }

    private static Cell moisture(EquilibriumMoisture equation, double temperature, double humidity) {
        return equation.temperature().holds(temperature)
                ? Cell.number(equation.percent(temperature, humidity), 1, 4)
                : Cell.NONE;
    }

    private List<Block> place(OutdoorMoisture.City city) {
        PlanTable.Builder table = PlanTable.of("yard-moisture", "Equilibrium moisture outdoors in " + city.name())
                .text("Month", "month")
                .number("Equilibrium, %", "moisture-percent")
                .text("Rests on", "source");
        for (int i = 0; i < MONTHS.size(); i++) {
            Sourced month = city.months().get(i);
            table.row(Cell.text(MONTHS.get(i)), Cell.number(month.value(), 1), Cell.text(rests(month.source())));
        }
        return List.of(new Tabular(table.build()), new Prose("As tabled for the place; no temperature is asked."));
    }

    private List<Block> seasons(List<OutdoorMoisture.Range> ranges) {
        PlanTable.Builder table = PlanTable.of(
                        "yard-moisture",
                        "Equilibrium moisture outdoors in " + ranges.get(0).name())
                .text("Period", "period")
                .number("Least, %", "least-percent")
                .number("Greatest, %", "greatest-percent")
                .text("Rests on", "source");
        for (OutdoorMoisture.Range range : ranges) {
            table.row(
                    Cell.text(range.period()),
                    Cell.number(range.least().value(), 1),
                    Cell.number(range.greatest().value(), 1),
                    Cell.text(rests(range.least().source())));
        }
        return List.of(new Tabular(table.build()));
    }

    /** A board's end, green and dry. */
    record Cup(String of, Cupping board, double dryPercent) {}

    /** How boards cup, with a drawing of each. */
    List<Block> cups(List<Cup> cups) {
        PlanTable.Builder table = PlanTable.of("cupping", "Cup of boards that nothing holds, from green to dry")
                .text("Board", "board")
                .number("Dry at, %", "dry-percent")
                .number("Rings to face, degrees", "ring-angle-degrees")
                .number("From the pith, " + lengths.unit(), "pith-distance-mm")
                .number("Across the rings, %", "radial-percent")
                .number("Along the rings, %", "tangential-percent")
                .number("Hollow, bark side, in", "bark-side-in")
                .number("Raised, pith side, in", "pith-side-in");
        List<Block> blocks = new ArrayList<>();
        List<Block> figures = new ArrayList<>();
        for (int i = 0; i < cups.size(); i++) {
            Cup cup = cups.get(i);
            Cupping board = cup.board();
            String of = cup.of() + ", " + lengths.size(board.ringRadius()) + " from the pith";
            for (Cupping.Side side : Cupping.Side.values()) {
                show(of + ", " + (side == Cupping.Side.BARK ? "bark side" : "pith side"), board.depthWorking(side));
            }
            table.row(
                    Cell.text(cup.of()),
                    Cell.number(cup.dryPercent(), 1, 3),
                    Cell.number(board.ringAngleDegrees(), 0, 2),
                    Cell.length(lengths.bare(lengths.size(board.ringRadius())), board.ringRadius()),
                    Cell.number(board.radialPercent(), 2, 4),
                    Cell.number(board.tangentialPercent(), 2, 4),
                    Cell.number(board.depthInches(Cupping.Side.BARK), 3, 5),
                    Cell.number(board.depthInches(Cupping.Side.PITH), 3, 5));
            figures.add(new Figure(
                    CupDrawing.svg("cup-" + (i + 1), board),
                    of + ": end of the board, green dashed, dry at " + NumberText.significant(cup.dryPercent(), 4)
                            + " % full."));
        }
        blocks.add(new Tabular(table.build()));
        blocks.add(new Prose(
                "A model of this library, derived, that no publication confirms: rings as arcs about the pith, nothing"
                        + " holding the board. Stickers and the weight of the stack hold boards flatter. The edges bend away"
                        + " from the pith: its side is raised in the middle by as much as stands there. Below zero it is the other"
                        + " way round. Shrinkage on the straight line from 30 %."));
        blocks.addAll(figures);
        return blocks;
    }

    /** A stack of boards of one size. */
    record Pile(String of, Species species, LumberStack stack, Optional<Double> fromPercent, double toPercent) {}

    /** How boards are stacked. */
    List<Block> stacks(List<Pile> piles) {
        PlanTable.Builder table = PlanTable.of("stacks", "Stacks, one size in each, boards as sawn")
                .text("Stack", "stack")
                .text("Wood", "species")
                .number("Boards", "boards")
                .number("In a row", "boards-in-row")
                .number("Rows", "rows")
                .number("Stickers in a row", "stickers-in-row")
                .number("Stickers", "stickers")
                .number("High, in", "height-in")
                .number("Wide, " + lengths.unit(), "width-mm")
                .number(lengths == LengthText.INCHES ? "Ground, ft2" : "Ground, m2", "ground-m2")
                .number("Green, kg", "green-kg")
                .number("Dry, kg", "dry-kg");
        for (Pile pile : piles) {
            LumberStack stack = pile.stack();
            show(pile.of() + ", height", stack.heightWorking());
            table.row(
                    Cell.text(pile.of()),
                    Cell.text(pile.species().commonName()),
                    Cell.whole(stack.boards()),
                    Cell.whole(stack.boardsInARow()),
                    Cell.whole(stack.rows()),
                    Cell.whole(stack.stickersInARow()),
                    Cell.whole(stack.stickers()),
                    Cell.number(stack.heightInches(), 1, 4),
                    Cell.length(lengths.bare(lengths.size(stack.stackWidth())), stack.stackWidth()),
                    ground(stack.footprintSquareMetres()),
                    weight(pile, pile.fromPercent(), "green"),
                    weight(pile, Optional.of(pile.toPercent()), "dry"));
        }
        if (piles.size() > 1) {
            int boards = piles.stream().mapToInt(pile -> pile.stack().boards()).sum();
            int stickers =
                    piles.stream().mapToInt(pile -> pile.stack().stickers()).sum();
            table.row(
                    Cell.text("sum"),
                    Cell.text(""),
                    Cell.whole(boards),
                    Cell.NONE,
                    Cell.NONE,
                    Cell.NONE,
                    Cell.whole(stickers),
                    Cell.NONE,
                    Cell.NONE,
                    Cell.NONE,
                    Cell.NONE,
                    Cell.NONE);
        }
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Tabular(table.build()));
        blocks.add(new Prose("Rows and stickers: definition; spacing of stickers after "
                + cited(Sources.get("wengert-stickers")) + ". The weight is that of the boards, stickers left out."));
        boolean high = piles.stream()
                .anyMatch(pile ->
                        pile.stack().heightInches() > pile.stack().stackWidth().toInches());
        blocks.add(
                new Prose("A stack can fall or roll: level bearers, lower than it is wide, load taken off by hand from"
                        + " the top."
                        + (high
                                ? " One of these would stand higher than it is wide: build more and lower ones."
                                : "")));
        return blocks;
    }

    private Cell ground(double squareMetres) {
        String shown = lengths == LengthText.INCHES
                ? NumberText.fixed(squareMetres / (FOOT * FOOT), 1)
                : NumberText.fixed(squareMetres, 2);
        return new Cell(shown, Optional.of(squareMetres), 4, false);
    }

    private Cell weight(Pile pile, Optional<Double> moisture, String word) {
        String what = "Weight of the stack of " + pile.of() + ", " + word;
        if (moisture.isEmpty()) {
            missing(what, "no green moisture is known for " + pile.species().commonName());
            return Cell.NONE;
        }
        try {
            double kilograms = pile.stack().kilograms(pile.species(), moisture.get());
            show(pile.of() + ", weight " + word, pile.stack().kilogramsWorking(pile.species(), moisture.get()));
            return Cell.number(kilograms, 0, 2);
        } catch (OutOfDomainException e) {
            missing(what, e);
            return Cell.NONE;
        }
    }
}
