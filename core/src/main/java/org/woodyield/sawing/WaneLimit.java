package org.woodyield.sawing;

import java.util.List;
import org.woodyield.measure.Length;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.source.PublishedTable;
import org.woodyield.source.Source;

/**
 * How much wane a grade of dimension lumber allows along the full length of a piece. Meeting this limit does not make a
 * graded piece: knots, slope of grain and all else decide too, and a grader.
 *
 * @param grade name of the grade
 * @param thicknessShare of the finished thickness
 * @param widthShare of the finished width
 * @param source what the limits rest on
 * @see org.woodyield.source.Sources source wane-limits-memory
 */
public record WaneLimit(String grade, double thicknessShare, double widthShare, Source source) {

    private static final PublishedTable TABLE = PublishedTable.read(WaneLimit.class, "wane_limits_memory.csv");
    private static final List<WaneLimit> LIMITS = TABLE.rows().stream()
            .map(row -> new WaneLimit(
                    row.text("grade"), row.number("of_thickness"), row.number("of_width"), TABLE.source()))
            .toList();

    /**
     * All grades whose limits are known.
     *
     * @return in the order of the table
     */
    public static List<WaneLimit> all() {
        return LIMITS;
    }

    /**
     * The limit of a grade.
     *
     * @param grade its name, capitals or not
     * @return the limit
     * @throws OutOfDomainException if no such grade is known
     */
    public static WaneLimit of(String grade) {
        return LIMITS.stream()
                .filter(limit -> limit.grade().equalsIgnoreCase(grade.strip()))
                .findFirst()
                .orElseThrow(() -> new OutOfDomainException(
                        "grade",
                        grade,
                        "",
                        String.join(", ", LIMITS.stream().map(WaneLimit::grade).toList()),
                        "or give the shares of thickness and width"));
    }

    /**
     * The wane that may be on a green piece which is to finish to a size. The limit is a share of the finished size; it is
     * not widened by what planing takes off the waned faces, so that a piece within it stays within it however it is
     * planed.
     *
     * @param finishedThickness above zero
     * @param finishedWidth above zero
     * @param greenThickness as sawn, no less than finished
     * @param greenWidth as sawn, no less than finished
     * @return the wane as shares of the green size, {@code share * finished / green}
     * @throws OutOfDomainException if a size is not above zero or a green one is less than the finished one
     */
    public Wane wane(Length finishedThickness, Length finishedWidth, Length greenThickness, Length greenWidth) {
        return new Wane(
                share("thickness", thicknessShare, finishedThickness, greenThickness),
                share("width", widthShare, finishedWidth, greenWidth));
    }

    private static double share(String what, double share, Length finished, Length green) {
        if (!finished.isPositive() || green.compareTo(finished) < 0) {
            throw new OutOfDomainException(
                    "green " + what,
                    green.toString(),
                    "",
                    "above zero and no less than finished, " + finished,
                    "change the two");
        }
        return share * (finished.toMetres() / green.toMetres());
    }
}
