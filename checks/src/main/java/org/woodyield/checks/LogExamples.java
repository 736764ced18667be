package org.woodyield.checks;

import static org.woodyield.checks.Examples.feet;
import static org.woodyield.checks.Examples.inches;

import java.util.List;
import java.util.OptionalDouble;
import org.woodyield.log.BarkRatio;
import org.woodyield.log.CentroidVolume;
import org.woodyield.log.FormClass;
import org.woodyield.log.FormClassStem;
import org.woodyield.log.GirthVolume;
import org.woodyield.log.HeartRot;
import org.woodyield.log.Log;
import org.woodyield.log.LogSolid;
import org.woodyield.log.MeasuredStem;
import org.woodyield.log.MeasuredTree;
import org.woodyield.log.SolidForm;
import org.woodyield.log.SolidVolume;
import org.woodyield.log.StemPoint;
import org.woodyield.log.StemVolumeEquation;
import org.woodyield.log.TaperCurve;
import org.woodyield.measure.Length;

/** Examples of {@code org.woodyield.log}. */
final class LogExamples {

    private LogExamples() {}

    static void list(Examples.Builder examples) {
        examples.example("log.inside-bark", x -> new BarkRatio(x[0]).insideWorking(x[1], "in"), 0.92, 15)
                .example("log.bark-of-stem", x -> new BarkRatio(x[0]).percentOfStemWorking(), 0.92)
                .example("log.bark-of-wood", x -> new BarkRatio(x[0]).percentOfWoodWorking(), 0.92)
                .example("log.form-class", x -> new FormClass(x[0]).upperInchesWorking(x[1]), 78, 16)
                .example(
                        "log.form-class-stem",
                        x -> new FormClassStem(
                                        x[0], new FormClass(x[1]), OptionalDouble.of(x[2]), OptionalDouble.of(x[3]))
                                .working(x[4]),
                        16,
                        78,
                        0.7,
                        0.125,
                        13)
                .example(
                        "log.taper-curve",
                        x -> TaperCurve.fitParabola(
                                        x[0],
                                        x[1],
                                        List.of(
                                                new StemPoint(4.5, 14),
                                                new StemPoint(17.3, 12.6),
                                                new StemPoint(33.5, 10.4),
                                                new StemPoint(50, 7.5)))
                                .working(x[2]),
                        16,
                        75,
                        25)
                .example(
                        "log.solid-volume",
                        x -> SolidVolume.NEWTON.working(x[0], x[1], x[2], x[3], "ft"),
                        1,
                        1.1,
                        1.3,
                        16)
                .example("log.solid-form-volume", x -> SolidForm.PARABOLOID.working(x[0], x[1], x[2], "ft"), 1, 1.3, 16)
                .example("log.girth-volume", x -> GirthVolume.QUARTER.working(x[0], x[1], "ft"), 4, 16)
                .example(
                        "log.centroid-position",
                        x -> CentroidVolume.positionWorking(x[0], x[1], x[2], "ft"),
                        1,
                        1.3,
                        16)
                .example(
                        "log.centroid-volume",
                        x -> CentroidVolume.volumeWorking(x[0], x[1], x[2], x[3], "ft"),
                        1,
                        1.15,
                        1.3,
                        16)
                .example(
                        "log.integrated-volume",
                        x -> LogSolid.of(log(x[0], x[1], x[2])).volumeWorking(),
                        12,
                        12,
                        14)
                .example(
                        "log.rot-volume",
                        x -> LogSolid.of(log(12, 12, 14).withRot(new HeartRot(inches(x[0]), Length.ZERO, feet(x[1]))))
                                .rotVolumeWorking(),
                        4,
                        6)
                .example(
                        "log.stem-profile",
                        x -> new MeasuredStem(
                                        List.of(new StemPoint(1, 15), new StemPoint(17, 12.5), new StemPoint(33, 9)))
                                .working(x[0]),
                        13)
                .example(
                        "log.stem-volume",
                        x -> StemVolumeEquation.fit(MeasuredTree.blackCherry()).working(x[0], x[1]),
                        14,
                        75);
    }

    /** A straight pine log with a round small end. */
    static Log log(double lengthFeet, double smallEndInches, double largeEndInches) {
        return new Log(
                "A",
                Examples.pine(),
                feet(lengthFeet),
                inches(smallEndInches),
                inches(smallEndInches),
                inches(largeEndInches),
                Length.ZERO,
                Length.ZERO,
                0,
                false);
    }
}
