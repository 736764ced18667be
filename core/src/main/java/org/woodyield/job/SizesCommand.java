package org.woodyield.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.woodyield.lumber.GostShrinkage;
import org.woodyield.lumber.MetricSizeChange;
import org.woodyield.lumber.SizeTable;
import org.woodyield.measure.Domain;
import org.woodyield.measure.Length;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.show.SizeText;
import org.woodyield.show.WorkingText;
import org.woodyield.source.Sources;
import org.woodyield.wood.NearestNames;
import org.woodyield.working.Working;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;

/** Lists the tables of sizes, shows one, or looks a size up in it, from the name to the measure or back. */
final class SizesCommand implements Subcommand {

    private static final String EN_336 = "en-336";
    private static final String GOST_GREEN = "gost-6782-1";
    private static final Length GREATEST = Length.millimetres(1000);
    private static final Domain MOISTURE =
            new Domain("moisture", "%", 0, 200, "give water over oven-dry wood, in percent");

    @Override
    public String name() {
        return "sizes";
    }

    @Override
    public CommandSpec spec() {
        return new Usage(
                        "Lists the tables of lumber sizes with standing and source, shows one in full, or looks a size up"
                                + " in it both ways.")
                .argumentIfAny("TABLE", "Key of a table; without it all are listed.")
                .argumentIfAny(
                        "SIZE",
                        "Nominal size, such as 2x4, 5/4 or '50 x 150'; one face or two. Without a unit it is in inches,"
                                + " in a metric table in millimetres.")
                .option("--measured", "SIZE", "The way back: what a piece measures, one face or two.")
                .option(
                        "--moisture",
                        "PERCENT",
                        "With " + EN_336 + ", what the size measures at this moisture by EN 1313-1; with " + GOST_GREEN
                                + ", what to saw green for it. With the working.")
                .spec();
    }

    @Override
    public int run(ParseResult given, Terminal terminal) {
        Problems problems = new Problems();
        Arguments arguments = new Arguments(name(), given, problems);
        Cell key = arguments.argument(0, "TABLE");
        if (key.isEmpty()) {
            requireTable(arguments);
            return terminal.print("list", SizeText.list(SizeTable.all()));
        }
        Optional<SizeTable> table = table(key);
        problems.stopIfAny();
        return terminal.print("sizes", answer(table.orElseThrow(), arguments));
    }

    private static void requireTable(Arguments arguments) {
        for (String option : List.of("--measured", "--moisture")) {
            arguments.find(option).ifPresent(cell -> cell.refuse("behind the key of a table", "sizes lists the keys"));
        }
        arguments.problems().stopIfAny();
    }

    private static Optional<SizeTable> table(Cell key) {
        String word = key.text().toLowerCase(Locale.ROOT);
        try {
            return Optional.of(SizeTable.named(word));
        } catch (OutOfDomainException e) {
            key.refuse(
                    e.limits(),
                    NearestNames.question(
                            word, SizeTable.all().stream().map(SizeTable::key).toList()));
            return Optional.empty();
        }
    }

    private static String answer(SizeTable table, Arguments arguments) {
        Cell nominal = arguments.argument(1, "SIZE");
        Optional<Cell> measured = arguments.find("--measured");
        Optional<Double> moisture =
                arguments.find("--moisture").flatMap(cell -> cell.quantity(Units.PERCENT, MOISTURE));
        if (!nominal.isEmpty() && measured.isPresent()) {
            measured.get().refuse("a nominal size or a measured one", "leave one of the two out");
        }
        if (nominal.isEmpty() && moisture.isPresent()) {
            arguments.cell("--moisture", "").refuse("behind a table and a nominal size", "name the size");
        }
        arguments.problems().stopIfAny();
        if (nominal.isEmpty() && measured.isEmpty()) {
            return SizeText.full(table);
        }
        Cell asked = measured.orElse(nominal);
        List<Length> faces = faces(asked, table.metric());
        arguments.problems().stopIfAny();
        String found = "";
        try {
            found = found(table, faces, measured.isPresent());
        } catch (OutOfDomainException e) {
            asked.refuse(
                    e.limits(),
                    faces.size() == 1
                            ? e.remedy()
                            : e.parameter() + " is " + e.value() + (e.remedy().isEmpty() ? "" : "; " + e.remedy()));
        }
        arguments.problems().stopIfAny();
        return moisture.isEmpty() ? found : found + atMoisture(table, faces, moisture.get(), arguments);
    }

    private static String found(SizeTable table, List<Length> faces, boolean back) {
        if (faces.size() == 1) {
            return SizeText.entries(table, back ? table.ofMeasured(faces.get(0)) : table.ofNominal(faces.get(0)));
        }
        return SizeText.sections(
                table,
                back ? table.ofMeasured(faces.get(0), faces.get(1)) : table.ofNominal(faces.get(0), faces.get(1)));
    }

    private static String atMoisture(SizeTable table, List<Length> faces, double moisture, Arguments arguments) {
        Cell cell = arguments.cell("--moisture", "");
        StringBuilder text = new StringBuilder();
        for (Length face : faces) {
            try {
                Optional<Working> working = atMoisture(table, face.toMillimetres(), moisture);
                if (working.isEmpty()) {
                    cell.refuse("with " + EN_336 + " or " + GOST_GREEN, "leave it out here");
                } else {
                    text.append('\n').append(WorkingText.plain(working.get().givenBy(Sources.get("command-line"))));
                }
            } catch (OutOfDomainException e) {
                cell.refuse(e);
            }
        }
        arguments.problems().stopIfAny();
        return text.toString();
    }

    private static Optional<Working> atMoisture(SizeTable table, double millimetres, double moisture) {
        return switch (table.key()) {
            case EN_336 ->
                Optional.of(
                        MetricSizeChange.millimetresWorking(millimetres, moisture, MetricSizeChange.FIBRE_SATURATION));
            case GOST_GREEN -> Optional.of(GostShrinkage.greenMillimetresWorking(millimetres, moisture));
            default -> Optional.empty();
        };
    }

    /** One face or two; a number without a unit is in the unit of the table. */
    private static List<Length> faces(Cell cell, boolean metric) {
        List<Length> faces = new ArrayList<>();
        List<Cell> parts = cell.part(cell.text().replace('\u00d7', 'x')).split('x');
        if (parts.size() > 2) {
            cell.refuse("one face, or thickness x width", "");
        }
        for (Cell part : parts) {
            part.withUnit(metric ? "mm" : "in")
                    .lengthUpTo(GREATEST, "check the unit")
                    .ifPresent(faces::add);
        }
        return faces;
    }
}
