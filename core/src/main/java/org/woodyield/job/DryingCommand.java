package org.woodyield.job;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
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
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
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
        CommandSpec spec = CommandSpec.create();
        spec.addPositional(argument(0, "WOOD", "Name of the species."));
        spec.addPositional(argument(1, "THICKNESS", "Of a board, green, such as '1 1/8 in' or '28 mm'."));
        option(spec, "--width", "LENGTH", "Of a board, green.");
        option(spec, "--length", "LENGTH", "Of a board.");
        option(spec, "--boards", "NUMBER", "How many boards there are.");
        option(spec, "--board-feet", "FEET", "Instead: so much, as sawn, such as '500 bf'; up to a whole board.");
        option(spec, "--from", "PERCENT", "Moisture at the start; the species' green moisture if not given.");
        option(spec, "--to", "PERCENT", "Moisture at the end; 20 %% if not given.");
        option(spec, "--temperature", "DEGREES", "Of the air, '70 F' or '21 C'; or of 12 months, with semicolons.");
        option(spec, "--humidity", "PERCENT", "Of the air, '65 %%'; or of 12 months, with semicolons.");
        option(spec, "--place", "NAME", "Instead: a place whose moisture is tabled, such as 'Denver, CO'.");
        option(spec, "--rings", "ANGLE", "Flat, quarter, or degrees between rings and wide face; flat if not given.");
        option(spec, "--pith", "LENGTH", "From the pith to the middle of the board; cupping needs it.");
        option(spec, "--stack-width", "LENGTH", "Widest row of the stack; 4 ft if not given.");
        option(spec, "--gap", "LENGTH", "Between boards of a row; 1 in if not given.");
        option(spec, "--sticker", "LENGTH", "Thickness of a sticker; 3/4 in if not given.");
        option(spec, "--spacing", "LENGTH", "Of the stickers along the boards; 16 in if not given.");
        flag(spec, "--working", "Show how each figure comes about as well.");
        option(
                spec,
                "--out",
                "FOLDER",
                "Write " + PAGE + " with drawing and workings, and " + TABLE
                        + ", to this folder, which must be new or empty.");
        flag(
                spec,
                "--replace",
                "Replace an earlier result in that folder. A folder that holds anything else is left alone.");
        spec.usageMessage()
                .description("Tells how boards dry: days in the open, moisture that the air allows, weight and water,"
                        + " red oak in a kiln, cup, and the stack. What lacks a figure is named with the reason.");
        return spec;
    }

    private static PositionalParamSpec argument(int index, String label, String description) {
        return PositionalParamSpec.builder()
                .index(Integer.toString(index))
                .paramLabel(label)
                .arity("1")
                .type(String.class)
                .description(description)
                .build();
    }

    private static void option(CommandSpec spec, String name, String label, String description) {
        spec.addOption(OptionSpec.builder(name)
                .paramLabel(label)
                .type(String.class)
                .description(description)
                .build());
    }

    private static void flag(CommandSpec spec, String name, String description) {
        spec.addOption(OptionSpec.builder(name)
                .type(boolean.class)
                .description(description)
                .build());
    }

    @Override
    public int run(ParseResult given, Terminal terminal) throws IOException {
        Optional<String> out = Optional.ofNullable(given.matchedOptionValue("--out", null));
        boolean replace = given.matchedOptionValue("--replace", false);
        if (replace && out.isEmpty()) {
            throw new BadInputException("--replace needs --out FOLDER; nothing is written without it");
        }
        DryingSheet sheet = DryingSheet.of(asked(given), Sources.get("command-line"));
        if (out.isEmpty()) {
            return terminal.print("drying", sheet.text(given.matchedOptionValue("--working", false)));
        }
        PlanFolder folder = PlanFolder.of(out.get(), Set.of(PAGE, TABLE), replace);
        terminal.say("the drying stands in "
                + folder.write(Map.of(
                        PAGE, sheet.page().getBytes(StandardCharsets.UTF_8), TABLE, Outputs.csv(sheet.table()))));
        return Main.DONE;
    }

    private DryingCase asked(ParseResult given) {
        Problems problems = new Problems();
        Cell wood = new Cell(name(), 0, "WOOD", given.matchedPositionalValue(0, ""), problems);
        Cell thick = new Cell(name(), 0, "THICKNESS", given.matchedPositionalValue(1, ""), problems);
        Options options = new Options(name(), given, problems);
        Optional<Species> species = Woods.species(wood);
        Optional<Length> thickness = thick.lengthUpTo(THICKEST, "check the unit");
        Optional<Length> width = options.find("--width").flatMap(cell -> cell.lengthUpTo(WIDEST, "check the unit"));
        Optional<Length> length = options.find("--length").flatMap(cell -> cell.lengthUpTo(LONGEST, "check the unit"));
        Optional<DryingCase.Amount> amount = amount(options);
        Optional<Double> from = options.find("--from").flatMap(cell -> cell.quantity(Units.PERCENT, MOISTURE));
        Optional<Double> to = options.or("--to", "20 %").quantity(Units.PERCENT, MOISTURE);
        Optional<DryingAir> air =
                AirReader.read(options.find("--place"), options.find("--temperature"), options.find("--humidity"));
        Optional<Double> rings = GreenSizeCommand.angle(options.or("--rings", "flat"));
        Optional<Length> pith = options.find("--pith")
                .flatMap(cell -> cell.lengthUpTo(WIDEST, "measure from the pith to the middle of the board"));
        Optional<Stacking> stacking = StackingReader.read(
                options.find("--stack-width"),
                options.find("--gap"),
                options.find("--sticker"),
                options.find("--spacing"));
        if (from.isPresent() && to.isPresent() && to.get() > from.get()) {
            options.or("--to", "20 %")
                    .refuse(
                            "up to the moisture at the start, "
                                    + options.or("--from", "").text(),
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

    private static Optional<DryingCase.Amount> amount(Options options) {
        Optional<Cell> boards = options.find("--boards");
        Optional<Cell> feet = options.find("--board-feet");
        if (boards.isPresent() && feet.isPresent()) {
            feet.get().refuse("a number of boards or board feet", "leave one of the two out");
            return Optional.empty();
        }
        if (boards.isPresent()) {
            return boards.get().count(1, MOST_BOARDS).map(DryingCase.Boards::new);
        }
        return feet.flatMap(cell -> cell.quantity(Units.BOARD_FEET, FEET)).map(DryingCase.Feet::new);
    }

    /** What stands behind the options, read as the job files are. */
    private record Options(String command, ParseResult given, Problems problems) {

        /** The value of an option, if it is given. */
        Optional<Cell> find(String name) {
            Optional<String> text = Optional.ofNullable(given.matchedOptionValue(name, null));
            return text.map(value -> new Cell(command, 0, name, value, problems));
        }

        /** The value of an option, or another where it is not given. */
        Cell or(String name, String otherwise) {
            return new Cell(command, 0, name, given.matchedOptionValue(name, otherwise), problems);
        }
    }
}
