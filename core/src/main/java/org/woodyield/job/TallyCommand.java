package org.woodyield.job;

import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.woodyield.lumber.HardwoodTally;
import org.woodyield.lumber.HardwoodThickness;
import org.woodyield.lumber.KilnNet;
import org.woodyield.lumber.NominalSize;
import org.woodyield.lumber.Tally;
import org.woodyield.measure.Length;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.measure.Rounding;
import org.woodyield.show.TallySheet;
import org.woodyield.source.Sources;
import org.woodyield.wood.SpeciesCatalogue;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;

/** Counts a table of lumber by nominal size, by surface measure or by measured size. */
final class TallyCommand implements Subcommand {

    private static final String ROWS = "tally.csv";
    private static final String SUMS = "sums.csv";
    private static final String REFUSED = "refused.csv";
    private static final String SIZE = "size";
    private static final String LENGTH = "length";
    private static final String QUANTITY = "quantity";
    private static final String SPECIES = "species";
    private static final String GRADE = "grade";
    private static final List<Table.Column> COLUMNS = List.of(
            Table.Column.required(SIZE),
            Table.Column.required(LENGTH),
            Table.Column.optional(QUANTITY),
            Table.Column.optional(SPECIES),
            Table.Column.optional(GRADE));
    private static final Length LONGEST = Length.millimetres(30_000);
    private static final Length WIDEST = Length.millimetres(1000);
    private static final Length WIDEST_BOARD = Length.inches(60);
    private static final int MOST_PIECES = 1_000_000;
    private static final int MOST_BOARDS = 1000;

    /** Thickness and width without a unit, or with one behind both. */
    private static final Pattern TWO_NUMBERS =
            Pattern.compile("[0-9 ./-]+[xX\\u00d7][0-9 ./-]+?\\s*([a-z\"']*)", Pattern.CASE_INSENSITIVE);

    /** What is counted. */
    private enum By {
        NOMINAL,
        SURFACE,
        MEASURED
    }

    private static final Map<String, By> BY =
            Map.of("nominal", By.NOMINAL, "surface", By.SURFACE, "measured", By.MEASURED);

    @Override
    public String name() {
        return "tally";
    }

    @Override
    public CommandSpec spec() {
        return new Usage(
                        "Counts lumber, row by row: board feet as exact fractions, solid volume, and sums by size, species and"
                                + " grade. A bad row is named and counted; the others go on.")
                .argument(
                        "PIECES",
                        "Table of pieces: size, length; optional quantity (1 without it), species, grade. Sizes as"
                                + " thickness x width: nominal 2x4; hardwood '5/4 x 6 1/4', the width in inches; measured"
                                + " '47 x 100 mm' or '2 x 4 in', with the unit.")
                .option(
                        "--by",
                        "MEASURE",
                        "nominal, which is taken if not given; surface, hardwood by surface measure beside the tally by"
                                + " the ends; or measured, solid volume with every digit, and as Japan counts.")
                .option(
                        "--half",
                        "WAY",
                        "Where an exact half of the whole foot goes, up or down; up if not given. By surface the first"
                                + " half of a bundle, and its board feet.")
                .option(
                        "--kiln-net",
                        "CUSTOM",
                        "With surface: take off for kiln drying by a custom of sellers, such as usual.")
                .flag("--working", "Show how the whole comes about as well.")
                .out(
                        "Write " + ROWS + ", " + SUMS + " and " + REFUSED
                                + " to this folder too, which must be new or empty.",
                        "result")
                .spec();
    }

    @Override
    public int run(ParseResult given, Terminal terminal) throws IOException {
        Optional<PlanFolder> folder = Usage.folder(given, Set.of(ROWS, SUMS, REFUSED));
        Problems problems = new Problems();
        Arguments arguments = new Arguments(name(), given, problems);
        Optional<By> by = arguments.cell("--by", "nominal").choice(BY);
        Optional<Rounding> half = arguments.cell("--half", "up").choice(Choices.HALF);
        Optional<KilnNet> net = arguments.find("--kiln-net").flatMap(TallyCommand::custom);
        arguments
                .find("--kiln-net")
                .filter(cell -> !by.equals(Optional.of(By.SURFACE)))
                .ifPresent(cell -> cell.refuse("with --by surface", "a custom of hardwood sellers; leave it out here"));
        problems.stopIfAny();
        String name = given.matchedPositionalValue(0, "");
        RowByRow table = RowByRow.of(
                Sheets.file(name), Sheets.text(name, "size, length"), COLUMNS, "a row for each size", "add the pieces");
        boolean worked = given.matchedOptionValue("--working", false);
        Optional<TallySheet> sheet = switch (by.orElseThrow()) {
            case NOMINAL -> nominal(table, half.orElseThrow(), worked);
            case SURFACE -> surface(table, half.orElseThrow(), net, worked);
            case MEASURED -> measured(table, worked);
        };
        table.tell(terminal, folder.map(target -> REFUSED));
        if (sheet.isEmpty()) {
            String written = folder.map(
                            target -> "the rows stand in " + target.write(Map.of(REFUSED, table.refusedTable())))
                    .orElse("nothing is written");
            throw new BadInputException("no row of " + Sheets.file(name) + " can be counted; " + written);
        }
        String working = worked ? "\n" + sheet.get().working(Sources.get("command-line")) : "";
        int code = terminal.print("tally", sheet.get().text() + working);
        unknown(sheet.get().species()).forEach(terminal::say);
        int counted = sheet.get().count();
        terminal.say(table.count() + (table.count() == 1 ? " row: " : " rows: ") + counted + " counted, "
                + (table.count() - counted) + " refused");
        folder.ifPresent(target -> terminal.say("the tally stands in "
                + target.write(Map.of(
                        ROWS,
                        Outputs.csv(sheet.get().rows()),
                        SUMS,
                        Outputs.csv(sheet.get().sums()),
                        REFUSED,
                        table.refusedTable()))));
        return code;
    }

    /** What is said of species that the tables do not have: they are summed as they stand. */
    private static List<String> unknown(Set<String> names) {
        List<String> said = new ArrayList<>();
        for (String name : names) {
            try {
                SpeciesCatalogue.published().find(name);
            } catch (OutOfDomainException e) {
                said.add("species '" + name + "' is not in the tables and is summed as a name of its own; "
                        + (e.remedy().isEmpty() ? "'species' lists the names" : e.remedy()));
            }
        }
        return said;
    }

    private static Optional<KilnNet> custom(Cell cell) {
        Map<String, KilnNet> customs = new LinkedHashMap<>();
        KilnNet.customs().forEach(custom -> customs.put(custom.id(), custom));
        return cell.choice(customs);
    }

    private static Optional<TallySheet> nominal(RowByRow table, Rounding half, boolean worked) {
        List<Tally.Line> lines = values(table, row -> {
            Optional<NominalSize> size = size(row.cell(SIZE));
            return piece(row, MOST_PIECES)
                    .flatMap(piece -> size.map(
                            found -> new Tally.Line(found, piece.length, piece.count, piece.species, piece.grade)));
        });
        return lines.isEmpty() ? Optional.empty() : Optional.of(TallySheet.nominal(new Tally(lines), half, worked));
    }

    private static Optional<NominalSize> size(Cell cell) {
        if (cell.isEmpty()) {
            return cell.missing("a nominal size such as 2x4", "");
        }
        try {
            return Optional.of(NominalSize.parse(cell.text()));
        } catch (OutOfDomainException e) {
            cell.refuse(e.limits(), e.remedy().isEmpty() ? "measured sizes are counted by --by measured" : e.remedy());
            return Optional.empty();
        }
    }

    private static Optional<TallySheet> surface(RowByRow table, Rounding half, Optional<KilnNet> net, boolean worked) {
        List<TallySheet.Boards> boards = values(table, row -> {
            Optional<Faces> faces = Faces.read(
                    row.cell(SIZE), TallyCommand::quarters, cell -> length(cell, "in", WIDEST_BOARD), "5/4 x 6 1/4");
            return piece(row, MOST_BOARDS)
                    .flatMap(piece -> faces.flatMap(found -> inside(
                            row,
                            () -> new TallySheet.Boards(
                                    new HardwoodTally.Board(found.thickness, found.width, piece.length),
                                    piece.count,
                                    piece.species,
                                    piece.grade))));
        });
        return boards.isEmpty() ? Optional.empty() : Optional.of(TallySheet.surface(boards, half, half, net, worked));
    }

    private static Optional<Length> quarters(Cell cell) {
        try {
            return Optional.of(HardwoodThickness.parse(cell.text()));
        } catch (OutOfDomainException e) {
            cell.refuse(e);
            return Optional.empty();
        }
    }

    private static Optional<TallySheet> measured(RowByRow table, boolean worked) {
        List<TallySheet.Measured> pieces = values(table, row -> {
            Optional<Faces> faces = measuredFaces(row.cell(SIZE));
            return piece(row, MOST_PIECES)
                    .flatMap(piece -> faces.flatMap(found -> inside(
                            row,
                            () -> new TallySheet.Measured(
                                    found.thickness,
                                    found.width,
                                    piece.length,
                                    piece.count,
                                    piece.species,
                                    piece.grade))));
        });
        return pieces.isEmpty() ? Optional.empty() : Optional.of(TallySheet.measured(pieces, worked));
    }

    /** What the row gives, if its size and length are within what is counted; else the cell at fault is named. */
    private static <T> Optional<T> inside(Table.Row row, Supplier<T> counted) {
        try {
            return Optional.of(counted.get());
        } catch (OutOfDomainException e) {
            row.cell(e.parameter().equals(LENGTH) ? LENGTH : SIZE).refuse(e);
            return Optional.empty();
        }
    }

    private static <T> List<T> values(RowByRow table, Function<Table.Row, Optional<T>> meaning) {
        List<T> values = new ArrayList<>();
        table.read(meaning, (value, line) -> values.add(value));
        return values;
    }

    /** What every row has beside its size. */
    private record Piece(Length length, int count, String species, String grade) {}

    private static Optional<Piece> piece(Table.Row row, int most) {
        Optional<Length> length = row.cell(LENGTH).lengthUpTo(LONGEST, "give the length of one piece");
        Optional<Integer> count = row.hasAny(List.of(Table.Column.optional(QUANTITY)))
                ? row.cell(QUANTITY).count(1, most)
                : Optional.of(1);
        Optional<String> species = words(row, SPECIES);
        Optional<String> grade = words(row, GRADE);
        if (length.isEmpty() || count.isEmpty() || species.isEmpty() || grade.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new Piece(length.get(), count.get(), species.get(), grade.get()));
    }

    private static Optional<String> words(Table.Row row, String column) {
        return row.cellIfAny(column).map(cell -> cell.words("a name")).orElse(Optional.of(""));
    }

    /** A measured section. */
    private record Faces(Length thickness, Length width) {

        static Optional<Faces> read(
                Cell cell,
                Function<Cell, Optional<Length>> thickness,
                Function<Cell, Optional<Length>> width,
                String example) {
            List<Cell> parts = cell.part(cell.text().replace('\u00d7', 'x').replace('X', 'x'))
                    .split('x');
            if (parts.size() != 2) {
                cell.refuse("thickness x width", "write it as " + example);
                return Optional.empty();
            }
            Optional<Length> thick = thickness.apply(parts.get(0));
            Optional<Length> wide = width.apply(parts.get(1));
            return thick.flatMap(t -> wide.map(w -> new Faces(t, w)));
        }
    }

    /** A number without a unit is in the unit of the measure. */
    private static Optional<Length> length(Cell cell, String unit, Length greatest) {
        return cell.withUnit(unit).lengthUpTo(greatest, "check the unit");
    }

    /** A unit behind the width holds for the thickness too; without any, 2x4 might be inches, or a name. */
    private static Optional<Faces> measuredFaces(Cell cell) {
        Matcher bare = TWO_NUMBERS.matcher(cell.text());
        if (!bare.matches()) {
            return Faces.read(cell, TallyCommand::measure, TallyCommand::measure, "47 x 100 mm");
        }
        if (bare.group(1).isEmpty()) {
            cell.refuse(
                    "thickness x width with the unit in which they were measured, such as 47 x 100 mm",
                    "write " + cell.text() + " mm or " + cell.text()
                            + " in; nominal sizes such as 2x4 are counted without --by measured");
            return Optional.empty();
        }
        return Faces.read(cell, part -> length(part, bare.group(1), WIDEST), TallyCommand::measure, "47 x 100 mm");
    }

    private static Optional<Length> measure(Cell cell) {
        return cell.lengthUpTo(WIDEST, "check the unit");
    }
}
