package org.woodyield.wood;

import java.util.ArrayList;
import java.util.List;
import org.woodyield.measure.Domain;
import org.woodyield.measure.Length;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.source.Sources;
import org.woodyield.working.Calculation;
import org.woodyield.working.Working;

/**
 * How a board's end cups when it dries, if nothing holds it: the rings are arcs about the pith, along them the wood shrinks by
 * T and across them by R percent. A point at distance r and angle a from the line between pith and middle of the board comes
 * to r (1 - R/100) and a (1 - T/100) / (1 - R/100); that keeps both shrinkages true everywhere. The wood bends away from the
 * pith, since T is the greater.
 *
 * <p>A model of this library, of which no publication was found; weight on the stack and stickers hold boards flatter.
 *
 * @param width of the green board, above 0
 * @param thickness of the green board, above 0
 * @param ringAngleDegrees angle between the rings and the wide face in the middle of the board, 0 to 90
 * @param ringRadius distance of the middle of the board from the pith; far enough that the board ends before the pith
 * @param radialPercent R, shrinkage across the rings, 0 to 30 %
 * @param tangentialPercent T, shrinkage along the rings, 0 to 30 %
 */
public record Cupping(
        Length width,
        Length thickness,
        double ringAngleDegrees,
        Length ringRadius,
        double radialPercent,
        double tangentialPercent) {

    /** The two wide faces. */
    public enum Side {
        /** The face towards the bark. */
        BARK,
        /** The face towards the pith. */
        PITH
    }

    /**
     * A point of the end, seen from the middle of the board.
     *
     * @param along the wide face, inches
     * @param toBark square to it, inches
     */
    public record Point(double along, double toBark) {}

    private static final Domain SHRINKAGE = Domain.of("shrinkage", "%", 0, 30);

    /**
     * Checks that there is such a board.
     *
     * @throws OutOfDomainException if a value is outside or the board reaches to the pith
     */
    public Cupping {
        RingAngle.DEGREES.require(ringAngleDegrees);
        SHRINKAGE.require(radialPercent);
        SHRINKAGE.require(tangentialPercent);
        if (!width.isPositive() || !thickness.isPositive()) {
            throw new OutOfDomainException("section", thickness + " x " + width, "", "above 0", "");
        }
        double angle = ringAngleDegrees * Math.PI / 180;
        double reach = width.toInches() / 2 * StrictMath.sin(angle) + thickness.toInches() / 2 * StrictMath.cos(angle);
        if (!(ringRadius.toInches() > reach)) {
            throw new OutOfDomainException(
                    "distance from the pith",
                    ringRadius.toString(),
                    "",
                    "above " + Math.rint(reach * 1000) / 1000 + " in",
                    "a board that holds the pith splits rather than cups");
        }
    }

    /**
     * A board of a species dried to a moisture, shrinking on the straight line.
     *
     * @param species a species with radial and tangential shrinkage
     * @param moisturePercent the final moisture
     * @param width of the green board
     * @param thickness of the green board
     * @param ringAngleDegrees angle between the rings and the wide face
     * @param ringRadius distance of the middle of the board from the pith
     * @return the board
     * @throws OutOfDomainException if the model refuses the species or the moisture, or there is no such board
     */
    public static Cupping of(
            Species species,
            double moisturePercent,
            Length width,
            Length thickness,
            double ringAngleDegrees,
            Length ringRadius) {
        ShrinkageModel line = ShrinkageModel.straightLine();
        return new Cupping(
                width,
                thickness,
                ringAngleDegrees,
                ringRadius,
                line.percent(species, Face.THICKNESS, 0, moisturePercent),
                line.percent(species, Face.WIDTH, 0, moisturePercent));
    }

    /**
     * How far a wide face cups: the distance of its middle from the straight line between its edges.
     *
     * @param side which face
     * @return inches; above zero where the edges bend away from the pith, so that the bark side is hollow and the pith side
     *     raised
     */
    @Calculation("wood.cup-depth")
    public double depthInches(Side side) {
        double half = width.toInches() / 2;
        double out = (side == Side.BARK ? thickness.toInches() : -thickness.toInches()) / 2;
        double[] a = dried(-half, out);
        double[] m = dried(0, out);
        double[] b = dried(half, out);
        double across = (b[0] - a[0]) * (m[1] - a[1]) - (b[1] - a[1]) * (m[0] - a[0]);
        double chord = StrictMath.sqrt((b[0] - a[0]) * (b[0] - a[0]) + (b[1] - a[1]) * (b[1] - a[1]));
        return across / chord;
    }

    /** Where a point of the green board comes to: towards the bark from the pith, and across. */
    private double[] dried(double along, double toBark) {
        double turn = ringAngleDegrees * Math.PI / 180;
        double u = ringRadius.toInches() + along * StrictMath.sin(turn) + toBark * StrictMath.cos(turn);
        double v = along * StrictMath.cos(turn) - toBark * StrictMath.sin(turn);
        double r = StrictMath.sqrt(u * u + v * v) * (1 - radialPercent / 100);
        double angle = StrictMath.atan(v / u) * (1 - tangentialPercent / 100) / (1 - radialPercent / 100);
        return new double[] {r * StrictMath.cos(angle), r * StrictMath.sin(angle)};
    }

    /**
     * How {@link #depthInches} came about.
     *
     * @param side which face
     * @return the working; its value equals the depth bit for bit
     */
    public Working depthWorking(Side side) {
        Working.Builder working = Working.of("Cup of the face towards the " + (side == Side.BARK ? "bark" : "pith"))
                .given("W", "width, green", width.toInches(), "in")
                .given(
                        "H",
                        "thickness, green; for the pith side below zero",
                        side == Side.BARK ? thickness.toInches() : -thickness.toInches(),
                        "in")
                .given("radius", "distance of the middle from the pith", ringRadius.toInches(), "in")
                .given("R", "shrinkage across the rings", radialPercent, "%")
                .given("T", "shrinkage along the rings", tangentialPercent, "%");
        RingAngle.given(working, ringAngleDegrees)
                .constant("pi", "pi", Math.PI, "", Sources.get("definition"))
                .step("turn", "the angle in radians", "angle * pi / 180", "", Sources.get("definition"));
        point(working, "a", "-(W / 2)");
        point(working, "m", "0");
        point(working, "b", "W / 2");
        return working.step(
                        "across",
                        "twice the triangle of edges and middle",
                        "(x_b - x_a) * (y_m - y_a) - (y_b - y_a) * (x_m - x_a)",
                        "in2",
                        Sources.get("definition"))
                .step(
                        "chord",
                        "from edge to edge",
                        "sqrt((x_b - x_a) * (x_b - x_a) + (y_b - y_a) * (y_b - y_a))",
                        "in",
                        Sources.get("definition"))
                .step(
                        "depth",
                        side == Side.BARK ? "hollow of the face" : "rise of the face",
                        "across / chord",
                        "in",
                        Sources.get("definition"))
                .note(
                        "A model of this library: rings as arcs about the pith, nothing holding the board. Stickers and weight"
                                + " on the stack keep boards flatter.")
                .build();
    }

    private static void point(Working.Builder working, String name, String along) {
        String which = name.equals("m") ? "the middle" : "edge " + name;
        working.step("e_" + name, which + ": along the face", along, "in", Sources.get("definition"))
                .step(
                        "u_" + name,
                        which + ": from the pith towards the bark",
                        "radius + e_" + name + " * sin(turn) + H / 2 * cos(turn)",
                        "in",
                        Sources.get("definition"))
                .step(
                        "v_" + name,
                        which + ": across that",
                        "e_" + name + " * cos(turn) - H / 2 * sin(turn)",
                        "in",
                        Sources.get("definition"))
                .step(
                        "r_" + name,
                        which + ": distance from the pith, dry",
                        "sqrt(u_" + name + " * u_" + name + " + v_" + name + " * v_" + name + ") * (1 - R / 100)",
                        "in",
                        Sources.get("definition"))
                .step(
                        "t_" + name,
                        which + ": angle about the pith, dry",
                        "atan(v_" + name + " / u_" + name + ") * (1 - T / 100) / (1 - R / 100)",
                        "",
                        Sources.get("definition"))
                .step(
                        "x_" + name,
                        which + ": dry",
                        "r_" + name + " * cos(t_" + name + ")",
                        "in",
                        Sources.get("definition"))
                .step(
                        "y_" + name,
                        which + ": dry",
                        "r_" + name + " * sin(t_" + name + ")",
                        "in",
                        Sources.get("definition"));
    }

    /**
     * The outline of the end, round from the pith side's first edge.
     *
     * @param steps points to a face, 1 or more
     * @param dry whether as it dries, or green
     * @return the points, seen from the middle of the board
     * @throws OutOfDomainException if the steps are not 1 to 1000
     */
    public List<Point> outline(int steps, boolean dry) {
        Domain.of("points to a face", "", 1, 1000).require(steps);
        double half = width.toInches() / 2;
        double out = thickness.toInches() / 2;
        List<Point> points = new ArrayList<>();
        for (int i = 0; i <= steps; i++) {
            points.add(at(-half + 2 * half * i / steps, -out, dry));
        }
        for (int i = 0; i <= steps; i++) {
            points.add(at(half - 2 * half * i / steps, out, dry));
        }
        return List.copyOf(points);
    }

    /** The middle of the board stays where it is and the line from the pith through it keeps its direction. */
    private Point at(double along, double toBark, boolean dry) {
        if (!dry) {
            return new Point(along, toBark);
        }
        double turn = ringAngleDegrees * Math.PI / 180;
        double[] to = dried(along, toBark);
        double u = to[0] - ringRadius.toInches() * (1 - radialPercent / 100);
        return new Point(
                u * StrictMath.sin(turn) + to[1] * StrictMath.cos(turn),
                u * StrictMath.cos(turn) - to[1] * StrictMath.sin(turn));
    }
}
