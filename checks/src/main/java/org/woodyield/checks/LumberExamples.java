package org.woodyield.checks;

import static org.woodyield.checks.Examples.feet;
import static org.woodyield.checks.Examples.inches;

import java.util.List;
import java.util.stream.Stream;
import org.woodyield.lumber.BoardMeasure;
import org.woodyield.lumber.ConnectorFit;
import org.woodyield.lumber.CoverArea;
import org.woodyield.lumber.FallDown;
import org.woodyield.lumber.GostShrinkage;
import org.woodyield.lumber.GreenTargetSize;
import org.woodyield.lumber.HardwoodGrade;
import org.woodyield.lumber.HardwoodTally;
import org.woodyield.lumber.HardwoodThickness;
import org.woodyield.lumber.JapaneseMeasure;
import org.woodyield.lumber.KilnNet;
import org.woodyield.lumber.MetricSizeChange;
import org.woodyield.lumber.MetricSizes;
import org.woodyield.lumber.NominalSize;
import org.woodyield.lumber.Product;
import org.woodyield.lumber.SizeControl;
import org.woodyield.lumber.SurfaceMeasure;
import org.woodyield.lumber.Tally;
import org.woodyield.lumber.UndersizeZ;
import org.woodyield.measure.Length;
import org.woodyield.measure.Rounding;

/** Examples of {@code org.woodyield.lumber}. */
final class LumberExamples {

    private LumberExamples() {}

    static void list(Examples.Builder examples) {
        sizes(examples);
        examples.example("lumber.board-measure", x -> BoardMeasure.working(x[0], x[1], x[2]), 2, 8, 12)
                .example(
                        "lumber.volume-factor",
                        x -> BoardMeasure.volumeFactorWorking(x[0], x[1], x[2], x[3], x[4], x[5]),
                        1.5,
                        2,
                        7.25,
                        8,
                        12,
                        12)
                .example("lumber.tally", x -> tally((int) x[0]).wholeBoardFeetWorking(Rounding.HALF_UP), 11)
                .example(
                        "lumber.bundle-tally",
                        x -> new HardwoodTally(List.of(board("4/4", x[0]), board("4/4", 9), board("6/4", 7.5)))
                                .boardFeetWorking(Rounding.HALF_UP, Rounding.HALF_UP),
                        6.25)
                .example(
                        "lumber.surface-measure",
                        x -> SurfaceMeasure.squareFeetWorking(x[0], x[1], Rounding.HALF_UP),
                        6.5,
                        10)
                .example(
                        "lumber.connector-fit",
                        x -> new ConnectorFit(inches(1.5), inches(1.5625)).offWorking(inches(x[0])),
                        1.6875)
                .example("lumber.cutting-units", x -> HardwoodGrade.cuttingUnitsWorking(x[0], x[1]), 5, 4)
                .example("lumber.clear-share", x -> HardwoodGrade.clearPercentWorking(x[0]), 10)
                .example("lumber.fall-down-spares", x -> losses().piecesToSawWorking((int) x[0]), 24)
                .example("lumber.fall-down", x -> losses().stagesWorking(x[0], x[1], x[2]), 128, 2.5, 0.02)
                .example("lumber.kiln-net", x -> KilnNet.customs().get(0).netWorking(x[0]), 1000)
                .example(
                        "lumber.japan-volume",
                        x -> JapaneseMeasure.cubicMetresWorking(x[0], x[1], x[2]),
                        105,
                        105,
                        3000)
                .example(
                        "lumber.cover-board-feet",
                        x -> new CoverArea(
                                        "wall",
                                        x[0],
                                        false,
                                        Length.inches(1),
                                        Length.inches(4),
                                        Length.inches(10),
                                        Length.inches(1),
                                        List.of(Length.feet(8)),
                                        x[1],
                                        Product.Wood.of(Product.Wood.Kind.ANY),
                                        Product.Surface.ROUGH,
                                        15)
                                .boardFeetForWorking(inches(x[2])),
                        20,
                        10,
                        8);
    }

    private static void sizes(Examples.Builder examples) {
        examples.example("lumber.critical-size", x -> target(x).criticalWorking(), 1.5, 0.0625, 3, 0.03)
                .example("lumber.green-target-size", x -> target(x).targetWorking(), 1.5, 0.0625, 3, 0.03)
                .example("lumber.saw-setting", x -> target().settingWorking(inches(x[0])), 0.0625)
                .example("lumber.dry-rough-size", x -> target().dryWorking(inches(x[0])), 1.6875)
                .example("lumber.dry-planed-size", x -> target().planedWorking(inches(x[0])), 1.6875)
                .example("lumber.scant-share", x -> target().scantWorking(inches(x[0])), 1.65)
                .example("lumber.kiln-dried-thickness", x -> HardwoodThickness.kilnDriedInchesWorking(x[0]), 1)
                .example("lumber.gost-green-size", x -> GostShrinkage.greenMillimetresWorking(x[0], x[1]), 50, 15)
                .example(
                        "lumber.en-1313-1-size",
                        x -> MetricSizeChange.millimetresWorking(x[0], x[1], x[2]),
                        100,
                        12,
                        30)
                .example(
                        "lumber.planed-metric",
                        x -> MetricSizes.planedMillimetresWorking(x[0], MetricSizes.Use.CONSTRUCTION),
                        50)
                .example("lumber.size-mean", x -> control(x).working(SizeControl.Convention.PLAIN), 1.13, 1.12)
                .example("lumber.size-within", x -> control(x).working(SizeControl.Convention.PLAIN), 1.13, 1.12)
                .example("lumber.size-between", x -> control(x).working(SizeControl.Convention.PLAIN), 1.13, 1.12)
                .example("lumber.size-total", x -> control(x).working(SizeControl.Convention.PLAIN), 1.13, 1.12);
    }

    private static FallDown losses() {
        return new FallDown(Length.inches(1), 2, 4);
    }

    private static GreenTargetSize target(double... x) {
        return x.length == 0
                ? target(1.5, 0.0625, 3, 0.03)
                : GreenTargetSize.planedDry(inches(x[0]), inches(x[1]), x[2], UndersizeZ.exact(5), inches(x[3]));
    }

    /** Three boards, each read at three places; two of the readings are given. */
    private static SizeControl control(double[] x) {
        return SizeControl.of(
                List.of(readings(x[0], x[1], 1.14), readings(1.1, 1.12, 1.11), readings(1.15, 1.13, 1.16)));
    }

    private static List<Length> readings(Double... inches) {
        return Stream.of(inches).map(Examples::inches).toList();
    }

    private static Tally tally(int count) {
        return new Tally(List.of(
                new Tally.Line(NominalSize.parse("2x4"), Length.feet(8), count, "pine", "unsorted"),
                new Tally.Line(NominalSize.parse("1x6"), Length.feet(10), 7, "pine", "unsorted")));
    }

    private static HardwoodTally.Board board(String thickness, double widthInches) {
        return new HardwoodTally.Board(HardwoodThickness.parse(thickness), inches(widthInches), feet(8));
    }
}
