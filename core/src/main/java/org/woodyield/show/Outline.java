package org.woodyield.show;

import java.util.Optional;
import org.woodyield.log.LogSolid;
import org.woodyield.sawing.Frame;

/**
 * One section of a log as it lies in its frame: an ellipse, turned and lifted. Metres, x to the right and y upward from the
 * axis at mid-length, as {@link org.woodyield.sawing.Rectangle}.
 */
record Outline(double x, double y, double halfLong, double halfShort, double turnDegrees) {

    static Outline insideBark(LogSolid solid, Frame frame, double z) {
        return of(solid, frame, z, solid.section(z));
    }

    static Outline overBark(LogSolid solid, Frame frame, double z) {
        return of(solid, frame, z, solid.sectionOverBark(z));
    }

    static Optional<Outline> rot(LogSolid solid, Frame frame, double z) {
        return solid.rotSection(z).map(section -> of(solid, frame, z, section));
    }

    private static Outline of(LogSolid solid, Frame frame, double z, LogSolid.Section section) {
        double turn = StrictMath.toRadians(frame.turnDegrees());
        double cos = StrictMath.cos(turn);
        double sin = StrictMath.sin(turn);
        double x = section.centreXMetres() * cos - section.centreYMetres() * sin;
        double y = section.centreXMetres() * sin + section.centreYMetres() * cos;
        double lift = frame.largeEndLift().toMetres() * (z / solid.lengthMetres() - 0.5);
        return new Outline(x, y + lift, section.halfLongMetres(), section.halfShortMetres(), frame.turnDegrees());
    }

    /** Where the axis stands at a share of the length. */
    static double axisHeight(Frame frame, double share) {
        return frame.largeEndLift().toMetres() * (share - 0.5);
    }

    double halfWidth() {
        return reach(StrictMath.cos(turn()), StrictMath.sin(turn()));
    }

    double halfHeight() {
        return reach(StrictMath.sin(turn()), StrictMath.cos(turn()));
    }

    private double reach(double alongLong, double alongShort) {
        double p = halfLong * alongLong;
        double q = halfShort * alongShort;
        return StrictMath.sqrt(p * p + q * q);
    }

    double top() {
        return y + halfHeight();
    }

    double bottom() {
        return y - halfHeight();
    }

    /** Half the level chord at a height, and its middle; NaN outside. */
    double[] chord(double height) {
        double c = StrictMath.cos(turn());
        double s = StrictMath.sin(turn());
        double v = height - y;
        double a2 = halfLong * halfLong;
        double b2 = halfShort * halfShort;
        double a = c * c / a2 + s * s / b2;
        double b = v * c * s * (1 / a2 - 1 / b2);
        double k = v * v * (s * s / a2 + c * c / b2) - 1;
        return new double[] {StrictMath.sqrt(b * b - a * k) / a, x - b / a};
    }

    private double turn() {
        return StrictMath.toRadians(turnDegrees);
    }
}
