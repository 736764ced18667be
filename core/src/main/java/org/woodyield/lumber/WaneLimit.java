package org.woodyield.lumber;

import java.util.List;
import org.woodyield.measure.Domain;
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

    private static final Domain SHARE = Domain.of("wane, share of thickness and width", "", 0, 0.5);
    private static final PublishedTable TABLE = PublishedTable.read(WaneLimit.class, "wane_limits_memory.csv");
    private static final List<WaneLimit> LIMITS = TABLE.rows().stream()
            .map(row -> new WaneLimit(
                    row.text("grade"), row.number("of_thickness"), row.number("of_width"), TABLE.source()))
            .toList();

    /**
     * Refuses what is not a share.
     *
     * @throws OutOfDomainException if a share is not from 0 to one half
     */
    public WaneLimit {
        SHARE.require(thicknessShare);
        SHARE.require(widthShare);
    }

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
}
