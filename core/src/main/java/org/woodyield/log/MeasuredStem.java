package org.woodyield.log;

import java.util.ArrayList;
import java.util.List;
import org.woodyield.measure.Domain;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.source.Sources;
import org.woodyield.working.Working;

/**
 * A stem as it was measured, straight between the places. A fitted {@link TaperCurve} would miss the places themselves, and
 * where a stem is bowed outward, as most are above the butt swell, the straight line promises less; so standing trees and
 * bucking take this. The tip may be a place, with no diameter.
 *
 * @param points from the ground up, two or more; none thicker than the one below
 */
public record MeasuredStem(List<StemPoint> points) implements StemProfile {

    /**
     * Checks the order and keeps an immutable copy.
     *
     * @throws OutOfDomainException if there are fewer than two places, heights do not rise, or diameters grow upward
     */
    public MeasuredStem {
        points = List.copyOf(points);
        if (points.size() < 2) {
            throw new OutOfDomainException(
                    "places measured on the stem", Integer.toString(points.size()), "", "2 or more", "measure more");
        }
        for (int i = 1; i < points.size(); i++) {
            StemPoint below = points.get(i - 1);
            StemPoint here = points.get(i);
            if (here.heightFeet() <= below.heightFeet() || here.diameterInches() > below.diameterInches()) {
                throw new OutOfDomainException(
                        "place " + (i + 1) + " on the stem",
                        here.diameterInches() + " in at " + here.heightFeet() + " ft",
                        "",
                        "higher than " + below.heightFeet() + " ft and no thicker than " + below.diameterInches()
                                + " in",
                        "list the places from the ground up; leave out a bulge, or fit a taper curve");
            }
        }
    }

    /**
     * A stem as it is scaled: at swellings, which real stems have at knots and forks, no thicker than at the least place
     * below. So no log is scaled on a bulge, and a narrow place counts from there up. Common practice, no source.
     *
     * @param points from the ground up, two or more
     * @return a stem whose places are at the same heights
     * @throws OutOfDomainException if there are fewer than two places, heights do not rise, or the last place is thicker than
     *     the first, which is no swelling but a stem listed from the top down, or a slip
     */
    public static MeasuredStem withoutSwellings(List<StemPoint> points) {
        if (points.size() > 1) {
            StemPoint first = points.get(0);
            StemPoint last = points.get(points.size() - 1);
            if (last.diameterInches() > first.diameterInches()) {
                throw new OutOfDomainException(
                        "diameter at the top of the stem",
                        Double.toString(last.diameterInches()),
                        "in",
                        "no more than at its first place, " + first.diameterInches() + " in",
                        "list the places from the ground up, or check the first diameter");
            }
        }
        List<StemPoint> taken = new ArrayList<>();
        for (StemPoint point : points) {
            boolean swells = !taken.isEmpty()
                    && point.diameterInches() > taken.get(taken.size() - 1).diameterInches();
            taken.add(
                    swells
                            ? new StemPoint(
                                    point.heightFeet(),
                                    taken.get(taken.size() - 1).diameterInches())
                            : point);
        }
        return new MeasuredStem(taken);
    }

    @Override
    public Domain heightFeet() {
        return new Domain(
                "height on the stem",
                "ft",
                points.get(0).heightFeet(),
                points.get(points.size() - 1).heightFeet(),
                "measure the stem there too");
    }

    private int above(double heightFeet) {
        heightFeet().require(heightFeet);
        int i = 1;
        while (points.get(i).heightFeet() < heightFeet) {
            i++;
        }
        return i;
    }

    @Override
    public double diameterInches(double heightFeet) {
        int i = above(heightFeet);
        StemPoint p = points.get(i - 1);
        StemPoint q = points.get(i);
        return p.diameterInches()
                - (p.diameterInches() - q.diameterInches())
                        * ((heightFeet - p.heightFeet()) / (q.heightFeet() - p.heightFeet()));
    }

    @Override
    public Working working(double heightFeet) {
        int i = above(heightFeet);
        StemPoint p = points.get(i - 1);
        StemPoint q = points.get(i);
        return Working.of("Diameter on a measured stem")
                .given("h", "height", heightFeet, "ft")
                .given("h1", "height below", p.heightFeet(), "ft")
                .given("d1", "diameter below", p.diameterInches(), "in")
                .given("h2", "height above", q.heightFeet(), "ft")
                .given("d2", "diameter above", q.diameterInches(), "in")
                .step(
                        "d",
                        "straight between them",
                        "d1 - (d1 - d2) * ((h - h1) / (h2 - h1))",
                        "in",
                        Sources.get("definition"))
                .build();
    }
}
