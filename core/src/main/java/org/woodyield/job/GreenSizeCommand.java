package org.woodyield.job;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.woodyield.lumber.ConnectorFit;
import org.woodyield.lumber.GreenTargetSize;
import org.woodyield.lumber.NominalSize;
import org.woodyield.lumber.NormalLaw;
import org.woodyield.lumber.Product;
import org.woodyield.lumber.SizeChain;
import org.woodyield.lumber.SoftwoodSizes;
import org.woodyield.lumber.UndersizeZ;
import org.woodyield.measure.Domain;
import org.woodyield.measure.Length;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.measure.Rounding;
import org.woodyield.show.NumberText;
import org.woodyield.show.WorkingText;
import org.woodyield.source.Sources;
import org.woodyield.wood.Face;
import org.woodyield.wood.ShrinkageModel;
import org.woodyield.wood.SizeChange;
import org.woodyield.wood.Species;
import org.woodyield.working.Working;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;

/** From a dressed size to the size to saw green, each figure with its working, and back from a sawn size. */
final class GreenSizeCommand implements Subcommand {

    private static final List<Face> FACES = List.of(Face.THICKNESS, Face.WIDTH);
    /** A thousandth of an inch, in nanometres. */
    private static final long THOUSANDTH = 25_400;

    private static final Domain MOISTURE = new Domain(
            "moisture", "%", 4, 30, "give water over oven-dry wood; above 30 % wood has not begun to shrink");

    private static final String SAWN_AT = "--sawn-at";
    private static final String COEFFICIENT = "coefficient";
    private static final Domain SAWN_MOISTURE = new Domain(
            "moisture", "%", 4, 30, "give water over oven-dry wood; leave " + SAWN_AT + " out for green wood");

    private static final Domain RINGS =
            new Domain("ring angle", "degrees", 0, 90, "write flat, quarter, or an angle such as 30 deg");

    @Override
    public String name() {
        return "green-size";
    }

    @Override
    public CommandSpec spec() {
        return new Usage("Tells what to saw green so that it dries and planes to the dressed size, with the working.")
                .argument(
                        "SIZE",
                        "Nominal size, such as 2x4, whose dressed dry size is wanted; or the dry size itself with"
                                + " its unit, such as '1 3/4 in x 6 in'.")
                .argument("WOOD", "Name of the species.")
                .option("--moisture", "PERCENT", "Final moisture on the oven-dry basis; 15 %% if not given.")
                .option(
                        "--rings",
                        "ANGLE",
                        "Flat, quarter, or degrees between rings and wide face; else flat and quarter.")
                .option("--planing", "LENGTH", "Planed off both faces together; 1/16 in if not given.")
                .option("--variation", "LENGTH", "Standard deviation of sawn sizes; 0.03 in if not given.")
                .option("--undersize", "PERCENT", "Share that may come out scant; 5 %% if not given.")
                .option("--step", "LENGTH", "Finest step of the saw's scale; 1/16 in if not given.")
                .option(
                        "--model",
                        "NAME",
                        "straight-line, which is taken if not given, or lumber-equation; with " + SAWN_AT
                                + " also coefficient, and every one that applies if not given.")
                .option(
                        "--boards",
                        "TABLE",
                        "Table of boards measured as sawn, column readings (1.70 in; 1.73 in), optional id; their"
                                + " deviation in all is taken for --variation.")
                .option(
                        "--connector",
                        "SEAT",
                        "Least and greatest width that a metal connector takes, such as '1 1/2 in; 1 9/16 in', as its"
                                + " maker prints them; does the thickness fit?")
                .option("--sawn", "SIZE", "The way back: thickness x width sawn green, in inches; is it enough?")
                .option(
                        SAWN_AT,
                        "PERCENT",
                        "Moisture at which the size of --sawn was measured, if it was not green, such as '12 %%'."
                                + " Dimensional-change coefficients hold where both moistures are 6 to 14 %%.")
                .spec();
    }

    @Override
    public int run(ParseResult given, Terminal terminal) throws IOException {
        Problems problems = new Problems();
        Arguments arguments = new Arguments(name(), given, problems);
        Asked asked = new Asked(arguments);
        Optional<Species> species = Woods.species(arguments.argument(1, "WOOD"));
        Optional<Finished> finished = asked.finished();
        Optional<Double> moisture = arguments.cell("--moisture", "15 %").quantity(Units.PERCENT, MOISTURE);
        Optional<Length> planing =
                arguments.cell("--planing", "1/16 in").lengthOrNoneUpTo(Length.inches(1), "give what both faces lose");
        Optional<Length> variation = arguments
                .cell("--variation", "0.03 in")
                .lengthOrNoneUpTo(Length.inches(1, 2), "give a standard deviation");
        Optional<MeasuredBoards> boards = asked.boards();
        Optional<ConnectorFit> connector = asked.connector();
        Optional<Double> undersize =
                arguments.cell("--undersize", "5 %").quantity(Units.PERCENT, SettingsReader.UNDERSIZE);
        Optional<Length> step =
                arguments.cell("--step", "1/16 in").lengthUpTo(Length.inches(1), "give the finest step");
        Optional<Double> sawnAt = arguments.find(SAWN_AT).flatMap(cell -> cell.quantity(Units.PERCENT, SAWN_MOISTURE));
        Optional<ShrinkageModel> model = asked.model();
        Optional<List<Double>> rings = asked.rings();
        Optional<List<Length>> sawn = asked.sawn();
        arguments
                .find(SAWN_AT)
                .filter(cell -> sawn.filter(List::isEmpty).isPresent())
                .ifPresent(
                        cell -> cell.refuse("together with --sawn", "add --sawn SIZE, or leave " + SAWN_AT + " out"));
        problems.stopIfAny();
        Finished dressed = finished.orElseThrow();
        StringBuilder out = new StringBuilder(boards.map(MeasuredBoards::text).orElse(""));
        boolean first = true;
        for (double angle : rings.orElseThrow()) {
            SizeChain chain = new SizeChain(
                    species.orElseThrow(),
                    dressed.thickness(),
                    dressed.width(),
                    moisture.orElseThrow(),
                    angle,
                    model.orElseThrow(),
                    planing.orElseThrow(),
                    UndersizeZ.exact(undersize.orElseThrow()),
                    boards.map(MeasuredBoards::variation).orElseGet(variation::orElseThrow));
            out.append(first ? "" : "\n\n");
            first = false;
            out.append(dressed.name()).append(' ').append(chain.species().commonName());
            out.append(", ").append(chain.cut()).append(": dressed ").append(size(dressed.thickness()));
            out.append(" x ").append(size(dressed.width())).append(" dry (").append(dressed.restsOn());
            out.append(")\n");
            if (sawnAt.isPresent()) {
                Optional<String> only = arguments.find("--model").map(Cell::text);
                out.append(sawnDrier(chain, sawn.orElseThrow(), sawnAt.get(), only, boards));
                connector.ifPresent(seat -> out.append(seated(
                        seat,
                        chain.green(Face.THICKNESS).finished(),
                        drier(chain, Face.THICKNESS, sawn.orElseThrow().get(0), sawnAt.get(), only)
                                .results()
                                .get(0)
                                .size())));
                continue;
            }
            out.append(
                    sawn.orElseThrow().isEmpty()
                            ? forth(chain, step.orElseThrow(), boards)
                            : back(chain, sawn.orElseThrow(), boards));
            connector.ifPresent(seat -> out.append(seated(
                    chain,
                    seat,
                    sawn.orElseThrow().isEmpty()
                            ? chain.green(Face.THICKNESS).setting(step.orElseThrow())
                            : sawn.orElseThrow().get(0))));
            out.append(otherModels(chain));
        }
        return terminal.print("size", out.toString());
    }

    private static String forth(SizeChain chain, Length step, Optional<MeasuredBoards> boards) {
        StringBuilder out = new StringBuilder();
        for (Face face : FACES) {
            GreenTargetSize green = chain.green(face);
            Length setting = green.setting(step);
            out.append("  ").append(word(face)).append(": saw ").append(inches(green.targetInches()));
            out.append(", set the saw to ").append(setting).append("; then ");
            out.append(NumberText.percent(green.scantShare(setting))).append(" come out scant\n");
        }
        for (Face face : FACES) {
            out.append('\n').append(working(chain.settingWorking(face, step), boards));
        }
        return out.toString();
    }

    /** Whether the thickness goes into a connector: planed to size, and left rough as it dries. */
    private static String seated(SizeChain chain, ConnectorFit seat, Length sawn) {
        GreenTargetSize green = chain.green(Face.THICKNESS);
        return seated(seat, green.finished(), green.dryInches(sawn));
    }

    private static String seated(ConnectorFit seat, Length finished, double dryInches) {
        Length rough = Length.ofInches(dryInches, Rounding.HALF_UP);
        return "\n  connector for " + size(seat.least()) + " to " + size(seat.greatest()) + ": planed to "
                + size(finished) + " it " + fit(seat, finished) + "; left rough, "
                + inches(rough.toInches()) + " dry, it " + fit(seat, rough)
                + ". Size alone says nothing of strength; the maker, the local authority and licensed practice decide.\n\n"
                + working(seat.offWorking(finished))
                + '\n' + working(seat.offWorking(rough));
    }

    private static String fit(ConnectorFit seat, Length board) {
        String off = inches(Math.abs(seat.offInches(board)));
        return switch (seat.fit(board)) {
            case FITS -> "fits";
            case LOOSE -> "stands loose by " + off;
            case TOO_WIDE -> "is too wide by " + off;
        };
    }

    private static String working(Working working) {
        return WorkingText.plain(working.givenBy(Sources.get("command-line")));
    }

    /** The deviation of sawing is that of the boards where they were measured. */
    private static String working(Working working, Optional<MeasuredBoards> boards) {
        return working(
                boards.map(measured -> working.givenBy("s", measured.source())).orElse(working));
    }

    private static String back(SizeChain chain, List<Length> sawn, Optional<MeasuredBoards> boards) {
        StringBuilder out = new StringBuilder();
        for (int i = 0; i < FACES.size(); i++) {
            GreenTargetSize green = chain.green(FACES.get(i));
            double planed = green.planedInches(sawn.get(i));
            double spare = planed - green.finished().toInches();
            out.append("  ").append(word(FACES.get(i))).append(": sawn ").append(size(sawn.get(i)));
            out.append(" it measures ")
                    .append(inches(green.dryInches(sawn.get(i))))
                    .append(" dry and ");
            out.append(inches(planed)).append(" planed, ").append(inches(Math.abs(spare)));
            out.append(spare < 0 ? " too little; " : " to spare; ");
            out.append(NumberText.percent(green.scantShare(sawn.get(i)))).append(" come out scant\n");
        }
        for (int i = 0; i < FACES.size(); i++) {
            out.append('\n').append(working(chain.planedWorking(FACES.get(i), sawn.get(i)), boards));
            out.append('\n').append(working(chain.green(FACES.get(i)).scantWorking(sawn.get(i)), boards));
        }
        return out.toString();
    }

    /** What a size becomes that was measured when the wood had dried already, by each model or by the one asked for. */
    private static SizeChange.Comparison drier(
            SizeChain chain, Face face, Length sawn, double sawnAt, Optional<String> only) {
        SizeChange.Comparison all = SizeChange.compare(
                chain.species(),
                face,
                chain.ringAngleDegrees(),
                sawn.toInches(),
                "in",
                sawnAt,
                chain.moisturePercent());
        String label = only.map(name -> name.equals(COEFFICIENT)
                        ? SizeChange.COEFFICIENT
                        : chain.model().label())
                .orElse("");
        SizeChange.Comparison asked = new SizeChange.Comparison(
                all.results().stream()
                        .filter(result -> label.isEmpty() || result.model().equals(label))
                        .toList(),
                all.leftOut().stream()
                        .filter(left -> label.isEmpty() || left.model().equals(label))
                        .toList());
        if (asked.results().isEmpty()) {
            throw new BadInputException(asked.leftOut().stream()
                    .map(left -> "not by the " + left.model() + ": " + left.reason()
                            + "; without --model every model that applies is told")
                    .toArray(String[]::new));
        }
        return asked;
    }

    private static String sawnDrier(
            SizeChain chain, List<Length> sawn, double sawnAt, Optional<String> only, Optional<MeasuredBoards> boards) {
        StringBuilder out = new StringBuilder();
        StringBuilder workings = new StringBuilder();
        StringBuilder leftOut = new StringBuilder();
        for (int i = 0; i < FACES.size(); i++) {
            Face face = FACES.get(i);
            Length size = sawn.get(i);
            SizeChange.Comparison all = drier(chain, face, size, sawnAt, only);
            for (SizeChange.Result result : all.results()) {
                Working planed = planed(chain, result.working());
                double spare = planed.value() - chain.green(face).finished().toInches();
                Working scant = scant(chain, face, size, result.working());
                out.append("  ")
                        .append(word(face))
                        .append(": sawn ")
                        .append(size(size))
                        .append(" at ");
                out.append(NumberText.full(sawnAt)).append(" % it measures ").append(inches(result.size()));
                out.append(" at ")
                        .append(NumberText.full(chain.moisturePercent()))
                        .append(" % and ");
                out.append(inches(planed.value())).append(" planed, ").append(inches(Math.abs(spare)));
                out.append(spare < 0 ? " too little; " : " to spare; ");
                out.append(NumberText.percent(scant.value())).append(" come out scant, by the ");
                out.append(result.model()).append('\n');
                workings.append('\n').append(working(planed));
                workings.append('\n').append(working(scant, boards));
            }
            for (SizeChange.LeftOut left : all.leftOut()) {
                leftOut.append("  ").append(word(face)).append(": not by the ").append(left.model());
                leftOut.append("; ").append(left.reason()).append('\n');
            }
        }
        return out.append(leftOut).append(workings).toString();
    }

    /** How a size that dried, or swelled, comes out planed. */
    private static Working planed(SizeChain chain, Working size) {
        return Working.of(size.title() + ", planed")
                .include(size)
                .given("P", "planing, both faces", chain.planing().toInches(), "in")
                .step("planed", "planed", size.result().symbol() + " - P", "in", Sources.get("definition"))
                .build();
    }

    /** The share that comes out scant where the saw scatters about a size that changes by a known share of itself. */
    private static Working scant(SizeChain chain, Face face, Length sawn, Working size) {
        double least =
                (chain.green(face).finished().toInches() + chain.planing().toInches())
                        * (sawn.toInches() / size.value());
        double deviation = chain.deviation().toInches();
        double off = least - sawn.toInches();
        return Working.of("Share of pieces that are scant, " + word(face) + ", by that change")
                .constant("A", "size as sawn", sawn.toInches(), "in", Sources.get("command-line"))
                .constant(
                        "B",
                        "what it comes to, from above",
                        size.value(),
                        "in",
                        size.result().source())
                .given("F", "finished size", chain.green(face).finished().toInches(), "in")
                .given("P", "planing, both faces", chain.planing().toInches(), "in")
                .step("C", "least size as sawn", "(F + P) * (A / B)", "in", Sources.get("definition"))
                .given("s", "standard deviation of sawing", deviation, "in")
                .lookup(
                        "share",
                        "share below the least size",
                        deviation > 0 ? "standard normal law below (C - A) / s" : "no scatter: all or none",
                        deviation > 0 ? NormalLaw.shareBelow(off / deviation) : off > 0 ? 1 : 0,
                        "",
                        Sources.get("normal-law"))
                .build();
    }

    /** What each model makes of the least green size, so that the choice of the model can be judged. */
    private static String otherModels(SizeChain chain) {
        StringBuilder out = new StringBuilder("\nThe models of shrinkage beside each other, green to ")
                .append(NumberText.full(chain.moisturePercent()))
                .append(" %\n");
        for (Face face : FACES) {
            double green = chain.green(face).criticalInches();
            SizeChange.Comparison all = SizeChange.compare(
                    chain.species(),
                    face,
                    chain.ringAngleDegrees(),
                    green,
                    "in",
                    SizeChange.GREEN,
                    chain.moisturePercent());
            for (SizeChange.Result result : all.results()) {
                out.append("  ")
                        .append(word(face))
                        .append(' ')
                        .append(inches(green))
                        .append(" dries to ");
                out.append(inches(result.size()))
                        .append(" by the ")
                        .append(result.model())
                        .append('\n');
            }
            for (SizeChange.LeftOut left : all.leftOut()) {
                out.append("  ")
                        .append(word(face))
                        .append(": not by the ")
                        .append(left.model())
                        .append("; ");
                out.append(left.reason()).append('\n');
            }
        }
        return out.toString();
    }

    private static String word(Face face) {
        return face == Face.WIDTH ? "width" : "thickness";
    }

    private static String inches(double value) {
        return NumberText.fixed(value, 3) + " in";
    }

    /** The size wanted, dry: its name and what it rests on. */
    private record Finished(String name, Length thickness, Length width, String restsOn) {}

    /** In inches where it is a fraction or so many thousandths of one, as it was then written; else in millimetres. */
    private static String size(Length length) {
        boolean decimal =
                length.toNanometres() % THOUSANDTH == 0 && length.toString().endsWith("mm");
        return decimal ? NumberText.significant(length.toInches(), 6) + " in" : length.toString();
    }

    /** An angle between rings and wide face, in degrees or in a word. */
    static Optional<Double> angle(Cell cell) {
        return switch (cell.text()) {
            case "flat" -> Optional.of(0.0);
            case "quarter" -> Optional.of(90.0);
            default -> cell.quantity(Units.DEGREES, RINGS);
        };
    }

    /** What stands on the command line, read as the job files are. */
    private record Asked(Arguments arguments) {

        /** The dressed size of a nominal one, or the size itself where it is written with its unit. */
        Optional<Finished> finished() {
            Cell cell = arguments.argument(0, "SIZE");
            return Sizes.size(cell).flatMap(size -> size.nominal() ? nominal(cell) : Optional.of(measured(size)));
        }

        private static Optional<Finished> nominal(Cell cell) {
            try {
                NominalSize size = NominalSize.parse(cell.text());
                SoftwoodSizes.Size dressed = SoftwoodSizes.dressed(size, SoftwoodSizes.Condition.DRY);
                return Optional.of(new Finished(
                        size.toString(),
                        dressed.thickness(),
                        dressed.width(),
                        dressed.source().citation()));
            } catch (OutOfDomainException e) {
                cell.refuse(e);
                return Optional.empty();
            }
        }

        private static Finished measured(Product.Size size) {
            return new Finished(
                    size(size.thickness()) + " x " + size(size.width()), size.thickness(), size.width(), "as given");
        }

        /** The model of shrinkage; that of the coefficients starts from wood that is not green. */
        Optional<ShrinkageModel> model() {
            Cell cell = arguments.cell("--model", "straight-line");
            if (!cell.text().equals(COEFFICIENT)) {
                return cell.choice(Choices.SHRINKAGE);
            }
            if (arguments.find(SAWN_AT).isPresent()) {
                return Optional.of(ShrinkageModel.straightLine());
            }
            cell.refuse(
                    "from green wood: " + String.join(", ", Choices.SHRINKAGE.keySet()),
                    "coefficients hold from 6 to 14 %; add " + SAWN_AT + " and --sawn for wood that had dried");
            return Optional.empty();
        }

        /** The angles asked for; flat-sawn and quarter-sawn where none is. */
        Optional<List<Double>> rings() {
            Cell cell = arguments.cell("--rings", "both");
            return cell.text().equals("both")
                    ? Optional.of(List.of(0.0, 90.0))
                    : angle(cell).map(List::of);
        }

        /** Boards that were measured, if a table of them is named. */
        Optional<MeasuredBoards> boards() throws IOException {
            Optional<Cell> option = arguments.find("--boards");
            if (option.isEmpty()) {
                return Optional.empty();
            }
            if (arguments.find("--variation").isPresent()) {
                option.get().refuse("a table of boards or --variation", "leave one of the two out");
                return Optional.empty();
            }
            return MeasuredBoards.read(option.get().text(), option.get(), arguments.problems());
        }

        /** The seat of a connector, if one is named. */
        Optional<ConnectorFit> connector() {
            return arguments.find("--connector").flatMap(cell -> {
                Optional<List<Length>> seat =
                        cell.lengthsUpTo(Length.inches(30), "take both from what the maker prints");
                try {
                    if (seat.isPresent() && seat.get().size() == 2) {
                        return Optional.of(
                                new ConnectorFit(seat.get().get(0), seat.get().get(1)));
                    }
                    cell.refuse("two widths with a semicolon, the least first", "take both from what the maker prints");
                } catch (OutOfDomainException e) {
                    cell.refuse(e);
                }
                return Optional.empty();
            });
        }

        /** Thickness and width sawn, or nothing where that was not asked. */
        Optional<List<Length>> sawn() {
            Cell cell = arguments.cell("--sawn", "");
            if (cell.isEmpty()) {
                return Optional.of(List.of());
            }
            List<Length> sizes = new ArrayList<>();
            List<Cell> parts = cell.split('x');
            for (Cell part : parts) {
                part.withUnit("in")
                        .lengthUpTo(Length.inches(30), "write thickness x width, such as 1 11/16 x 3 7/8")
                        .ifPresent(sizes::add);
            }
            if (parts.size() != 2) {
                cell.refuse("thickness x width, such as 1 11/16 x 3 7/8", "");
            }
            return sizes.size() == 2 ? Optional.of(sizes) : Optional.empty();
        }
    }
}
