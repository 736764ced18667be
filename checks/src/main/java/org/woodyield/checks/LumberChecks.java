package org.woodyield.checks;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.woodyield.lumber.BoardMeasure;
import org.woodyield.lumber.GreenTargetSize;
import org.woodyield.lumber.HardwoodGrade;
import org.woodyield.lumber.HardwoodTally;
import org.woodyield.lumber.HardwoodThickness;
import org.woodyield.lumber.KilnNet;
import org.woodyield.lumber.MetricSizeChange;
import org.woodyield.lumber.MetricSizes;
import org.woodyield.lumber.NominalSize;
import org.woodyield.lumber.SizeControl;
import org.woodyield.lumber.SizeHistory;
import org.woodyield.lumber.SoftwoodSizes;
import org.woodyield.lumber.SurfaceMeasure;
import org.woodyield.lumber.UndersizeZ;
import org.woodyield.measure.Length;
import org.woodyield.measure.Rounding;

/** What the check tables call in {@code org.woodyield.lumber}. */
final class LumberChecks {

    private LumberChecks() {}

    static void list(Catalogue.Builder catalogue) {
        catalogue
                .number("lumber.dressed-face", LumberChecks::dressedFace)
                .number("lumber.dressed-millimetres", LumberChecks::dressedMillimetres)
                .number(
                        "lumber.board-measure",
                        given -> BoardMeasure.boardFeet(
                                given.number("thickness_in"), given.number("width_in"), given.number("length_ft")))
                .number("lumber.dressed-timber-face", LumberChecks::dressedTimberFace)
                .number("lumber.dressed-board-width", LumberChecks::dressedBoardWidth)
                .number("lumber.green-board-by-step", LumberChecks::greenBoardByStep)
                .number("lumber.dressed-face-before-1970", LumberChecks::before1970)
                .number("lumber.volume-factor", LumberChecks::volumeFactor)
                .number(
                        "lumber.surface-exact",
                        given -> SurfaceMeasure.exact(inches(given, "width_in"), feet(given))
                                .value())
                .number(
                        "lumber.surface-measure",
                        given -> SurfaceMeasure.squareFeet(
                                given.number("width_in"), given.number("length_ft"), Rounding.HALF_UP))
                .number(
                        "lumber.bundle-tally",
                        given -> new HardwoodTally(List.of(board(given))).boardFeet(Rounding.HALF_UP, Rounding.HALF_UP))
                .text("lumber.end-tally", LumberChecks::endTally)
                .number("lumber.clear-share", given -> HardwoodGrade.clearPercent(given.number("units")))
                .number("lumber.cuttings-allowed", LumberChecks::cuttingsAllowed)
                .number("lumber.kiln-dried-thickness", LumberChecks::kilnDriedInches)
                .number("lumber.kiln-dried-millimetres", given -> kilnDriedInches(given) * 25.4)
                .number("lumber.kiln-dried-width-scant", LumberChecks::leastWidthScant)
                .number("lumber.kiln-net", LumberChecks::kilnNet)
                .number(
                        "lumber.planed-metric",
                        given -> MetricSizes.planedMillimetres(given.number("sawn_mm"), MetricSizes.Use.CONSTRUCTION))
                .number("lumber.en-1313-1-allowance", LumberChecks::en1313Allowance)
                .number("lumber.critical-size", given -> planedGreen(given).criticalInches())
                .number("lumber.green-target-size", given -> planedGreen(given).targetInches())
                .number("lumber.undersize-z", given -> UndersizeZ.exact(given.number("undersize_percent")))
                .number("lumber.size-mean", given -> sizeControl(given).meanInches())
                .number("lumber.size-within", given -> sizeControl(given).withinInches())
                .number("lumber.size-between", given -> sizeControl(given).betweenInches(convention(given)))
                .number("lumber.size-total", given -> sizeControl(given).totalInches(convention(given)));
    }

    /** A face of dimension lumber, whose other face is one that goes with it. */
    private static double dressedFace(Given given) {
        Length nominal = inches(given, "nominal_in");
        boolean width = given.text("face").equals("width");
        NominalSize size =
                width ? new NominalSize(Length.inches(2), nominal) : new NominalSize(nominal, Length.inches(16));
        SoftwoodSizes.Size dressed = SoftwoodSizes.dressed(size, condition(given));
        return (width ? dressed.width() : dressed.thickness()).toInches();
    }

    private static SoftwoodSizes.Condition condition(Given given) {
        return given.text("condition").equals("dry") ? SoftwoodSizes.Condition.DRY : SoftwoodSizes.Condition.GREEN;
    }

    private static double dressedTimberFace(Given given) {
        NominalSize size = new NominalSize(Length.inches(5), inches(given, "nominal_in"));
        return SoftwoodSizes.dressed(size, condition(given)).width().toInches();
    }

    private static double dressedBoardWidth(Given given) {
        NominalSize size = new NominalSize(Length.inches(1), inches(given, "nominal_in"));
        return SoftwoodSizes.dressed(size, condition(given)).width().toInches();
    }

    /** The dry size of a board and the step from dry to green of the 1 1/4 in board. */
    private static double greenBoardByStep(Given given) {
        Length step = boardThickness("1 1/4", SoftwoodSizes.Condition.GREEN)
                .minus(boardThickness("1 1/4", SoftwoodSizes.Condition.DRY));
        given.text("condition");
        return boardThickness(given.text("nominal_in"), SoftwoodSizes.Condition.DRY)
                .plus(step)
                .toInches();
    }

    private static Length boardThickness(String nominal, SoftwoodSizes.Condition condition) {
        NominalSize size = new NominalSize(Length.parse(nominal + " in"), Length.inches(6));
        return SoftwoodSizes.dressed(size, condition).thickness();
    }

    private static double before1970(Given given) {
        given.text("condition");
        List<SizeHistory.Fact> facts = SizeHistory.in(given.text("face"), inches(given, "nominal_in"), 1969).stream()
                .filter(fact -> fact.source().id().equals("gorman-idaho"))
                .toList();
        if (facts.size() != 1) {
            throw new IllegalStateException("facts: " + facts);
        }
        return facts.get(0).dressed().toInches();
    }

    private static double volumeFactor(Given given) {
        return BoardMeasure.volumeFactor(
                given.numberIfPrinted("thickness_in").orElse(1.0),
                given.numberIfPrinted("nominal_thickness_in").orElse(1.0),
                given.numberIfPrinted("width_in").orElse(1.0),
                given.numberIfPrinted("nominal_width_in").orElse(1.0),
                given.numberIfPrinted("length_ft").orElse(1.0),
                given.numberIfPrinted("nominal_length_ft").orElse(1.0));
    }

    private static Length feet(Given given) {
        return Length.parse(given.text("length_ft") + " ft");
    }

    private static HardwoodTally.Board board(Given given) {
        return new HardwoodTally.Board(
                HardwoodThickness.parse(given.text("thickness")), inches(given, "width_in"), feet(given));
    }

    private static String endTally(Given given) {
        HardwoodTally.Board board = HardwoodTally.asEndTallied(board(given), Rounding.HALF_UP);
        return board.width() + " x " + board.length().inFeet(1, Rounding.DOWN);
    }

    private static double cuttingsAllowed(Given given) {
        return HardwoodGrade.named(given.text("grade"))
                .ways()
                .get(0)
                .mostCuttings(given.whole("surface_ft2"))
                .orElseThrow();
    }

    private static double kilnDriedInches(Given given) {
        return HardwoodThickness.kilnDriedInches(
                HardwoodThickness.parse(given.text("thickness")).toInches());
    }

    /** The allowance on the least widths is the same for every thickness. */
    private static double leastWidthScant(Given given) {
        HardwoodThickness.parse(given.text("thickness"));
        return HardwoodThickness.kilnDriedAllowances().stream()
                .filter(allowance -> allowance.dimension().equals("width")
                        && allowance.appliesTo().startsWith("the least widths"))
                .findFirst()
                .orElseThrow()
                .scant()
                .toInches();
    }

    private static double kilnNet(Given given) {
        String custom = given.text("custom");
        return KilnNet.customs().stream()
                .filter(net -> net.id().equals(custom))
                .findFirst()
                .orElseThrow()
                .net(given.number("gross_bf"));
    }

    /** From fibre saturation to the final moisture, for a size that holds at the final moisture. */
    private static double en1313Allowance(Given given) {
        double size = given.number("size_mm");
        double saturation = MetricSizeChange.FIBRE_SATURATION;
        double green = MetricSizeChange.millimetres(100, saturation, saturation);
        double dry = MetricSizeChange.millimetres(100, given.number("final_percent"), saturation);
        return size * green / dry - size;
    }

    private static double dressedMillimetres(Given given) {
        SoftwoodSizes.Size size =
                SoftwoodSizes.dressed(NominalSize.parse(given.text("nominal")), SoftwoodSizes.Condition.DRY);
        Length face = given.text("face").equals("width") ? size.width() : size.thickness();
        return face.roundedTo(Length.millimetres(1), Rounding.HALF_UP).toMillimetres();
    }

    private static GreenTargetSize planedGreen(Given given) {
        return GreenTargetSize.planedGreen(
                inches(given, "finished_in"),
                inches(given, "planing_in"),
                given.number("z"),
                inches(given, "deviation_in"));
    }

    private static SizeControl sizeControl(Given given) {
        List<List<Length>> boards = new ArrayList<>();
        for (String board : given.text("readings_in").split("; ", -1)) {
            boards.add(List.of(board.split(" ", -1)).stream()
                    .map(reading -> Length.parse(reading + " in"))
                    .toList());
        }
        return SizeControl.of(boards);
    }

    private static SizeControl.Convention convention(Given given) {
        return given.textIfPrinted("convention").equals(Optional.of("components"))
                ? SizeControl.Convention.COMPONENTS
                : SizeControl.Convention.PLAIN;
    }

    private static Length inches(Given given, String column) {
        return Length.parse(given.text(column) + " in");
    }
}
