package org.woodyield.job;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.woodyield.measure.Domain;
import org.woodyield.measure.Length;
import org.woodyield.show.DryingCase;
import org.woodyield.show.DryingSheet;
import org.woodyield.source.Sources;
import org.woodyield.wood.DryingAir;
import org.woodyield.wood.Species;
import org.woodyield.wood.Stacking;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;

/** Tells how boards dry: time, moisture of the air, weight and water, kiln, cup and stack. */
final class DryingCommand implements Subcommand {

    private static final String PAGE = "drying.html";
    private static final String TABLE = "drying.csv";
    private static final Domain MOISTURE =
            new Domain("moisture", "%", 0, 400, "give water over oven-dry wood, in percent");
    private static final Domain FEET = new Domain("board feet", "bf", 0.01, 10_000_000, "give the boards of one yard");
    private static final int MOST_BOARDS = 100_000;
    private static final Length THICKEST = Length.inches(24);
    private static final Length WIDEST = Length.inches(60);
    private static final Length LONGEST = Length.millimetres(30_000);

    @Override
    public String name() {
        return "drying";
    }

    @Override
    public CommandSpec spec() {
        return new Usage(
                        "Tells how boards dry: days in the open, moisture that the air allows, weight and water, red oak in"
                                + " a kiln, cup, and the stack. What lacks a figure is named with the reason.")
                .argument("WOOD", "Name of the species.")
                .argument("THICKNESS", "Of a board, green, such as '1 1/8 in' or '28 mm'.")
                .option("--width", "LENGTH", "Of a board, green.")
                .option("--length", "LENGTH", "Of a board.")
                .option("--boards", "NUMBER", "How many boards there are.")
                .option("--board-feet", "FEET", "Instead: so much, as sawn, such as '500 bf'; up to a whole board.")
                .option("--from", "PERCENT", "Moisture at the start; the species' green moisture if not given.")
                .option("--to", "PERCENT", "Moisture at the end; 20 %% if not given.")
                .option("--temperature", "DEGREES", "Of the air, '70 F' or '21 C'; or of 12 months, with semicolons.")
                .option("--humidity", "PERCENT", "Of the air, '65 %%'; or of 12 months, with semicolons.")
                .option("--place", "NAME", "Instead: a place whose moisture is tabled, such as 'Denver, CO'.")
                .option("--rings", "ANGLE", "Flat, quarter, or degrees between rings and wide face; flat if not given.")
                .option(
                        "--pith",
                        "LENGTH",
                        "From the pith to the middle of the board; cupping needs it. Several with semicolons.")
                .option("--stack-width", "LENGTH", "Widest row of the stack; 4 ft if not given.")
                .option("--gap", "LENGTH", "Between boards of a row; 1 in if not given.")
                .option("--sticker", "LENGTH", "Thickness of a sticker; 3/4 in if not given.")
                .option("--spacing", "LENGTH", "Of the stickers along the boards; 16 in if not given.")
                .flag("--working", "Show how each figure comes about as well.")
                .out(
                        "Write " + PAGE + " with drawing and workings, and " + TABLE
                                + ", to this folder, which must be new or empty.",
                        "result")
                .spec();
    }

    @Override
    public int run(ParseResult given, Terminal terminal) throws IOException {
        Optional<PlanFolder> folder = Usage.folder(given, Set.of(PAGE, TABLE));
        DryingSheet sheet = DryingSheet.of(asked(given), Sources.get("command-line"));
        if (folder.isEmpty()) {
            return terminal.print("drying", sheet.text(given.matchedOptionValue("--working", false)));
        }
        terminal.say("the drying stands in "
                + folder.get()
                        .write(Map.of(
                                PAGE,
                                sheet.page().getBytes(StandardCharsets.UTF_8),
                                TABLE,
                                Outputs.csv(sheet.table()))));
        return Main.DONE;
    }

    private DryingCase asked(ParseResult given) {
        Problems problems = new Problems();
        Arguments arguments = new Arguments(name(), given, problems);
        Cell wood = arguments.argument(0, "WOOD");
        Cell thick = arguments.argument(1, "THICKNESS");
        Optional<Species> species = Woods.species(wood);
        Optional<Length> thickness = thick.lengthUpTo(THICKEST, "check the unit");
        Optional<Length> width = arguments.find("--width").flatMap(cell -> cell.lengthUpTo(WIDEST, "check the unit"));
        Optional<Length> length =
                arguments.find("--length").flatMap(cell -> cell.lengthUpTo(LONGEST, "check the unit"));
        Optional<DryingCase.Amount> amount = amount(arguments);
        Optional<Double> from = arguments.find("--from").flatMap(cell -> cell.quantity(Units.PERCENT, MOISTURE));
        Optional<Double> to = arguments.cell("--to", "20 %").quantity(Units.PERCENT, MOISTURE);
        Optional<DryingAir> air = AirReader.read(
                arguments.find("--place"), arguments.find("--temperature"), arguments.find("--humidity"));
        Optional<Double> rings = GreenSizeCommand.angle(arguments.cell("--rings", "flat"));
        List<Length> pith = arguments
                .find("--pith")
                .flatMap(cell -> cell.lengthsUpTo(WIDEST, "measure from the pith to the middle of the board"))
                .orElse(List.of());
        Optional<Stacking> stacking = StackingReader.read(
                arguments.find("--stack-width"),
                arguments.find("--gap"),
                arguments.find("--sticker"),
                arguments.find("--spacing"));
        if (from.isPresent() && to.isPresent() && to.get() > from.get()) {
            arguments
                    .cell("--to", "20 %")
                    .refuse(
                            "up to the moisture at the start, "
                                    + arguments.cell("--from", "").text(),
                            "drying goes from wet to dry; change --from or --to");
        }
        problems.stopIfAny();
        return new DryingCase(
                species.orElseThrow(),
                thickness.orElseThrow(),
                width,
                length,
                amount,
                from,
                to.orElseThrow(),
                rings.orElseThrow(),
                pith,
                air,
                stacking.orElseThrow(),
                !thick.text().toLowerCase(Locale.ROOT).endsWith("m"));
    }

    private static Optional<DryingCase.Amount> amount(Arguments arguments) {
        Optional<Cell> boards = arguments.find("--boards");
        Optional<Cell> feet = arguments.find("--board-feet");
        if (boards.isPresent() && feet.isPresent()) {
            feet.get().refuse("a number of boards or board feet", "leave one of the two out");
            return Optional.empty();
        }
        if (boards.isPresent()) {
            return boards.get().count(1, MOST_BOARDS).map(DryingCase.Boards::new);
        }
        return feet.flatMap(cell -> cell.quantity(Units.BOARD_FEET, FEET)).map(DryingCase.Feet::new);
    }
}
