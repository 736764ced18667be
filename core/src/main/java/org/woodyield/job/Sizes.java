package org.woodyield.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.woodyield.lumber.Product;
import org.woodyield.lumber.Product.Size;
import org.woodyield.lumber.Product.Surface;
import org.woodyield.measure.Length;
import org.woodyield.measure.OutOfDomainException;

/** Reads sizes: nominal ones are written without a unit ({@code 2x4}, {@code 5/4x6}), measured ones with it. */
final class Sizes {

    /** A thickness, nominal or measured. */
    record Thickness(boolean nominal, Length length) {}

    private static final String NUMBER = "(?:\\d{1,2}/4|\\d{1,2}(?: [1-3]/[24])?)";
    private static final Pattern NOMINAL = Pattern.compile("(" + NUMBER + ") ?x ?(" + NUMBER + ")");
    private static final Pattern NOMINAL_THICKNESS = Pattern.compile(NUMBER);
    private static final String ALLOWED =
            "a nominal size such as 2x4 or 5/4x6, or a measured one such as 45 mm x 145 mm, the thickness first";
    /** The lengths that may be wanted: a log is not sawn into pieces shorter than a hand is wide. */
    static final Length SHORTEST = Length.millimetres(100);

    static final Length LONGEST = Length.millimetres(30_000);
    static final String LENGTHS = "100 mm (about 4 in) to 30 m";
    static final String OTHER_LENGTH = "check the unit; want one longer piece and cut shorter ones from it";

    private static final Length GREATEST = Length.millimetres(1000);

    private Sizes() {}

    static Optional<Size> size(Cell cell) {
        String text =
                cell.text().toLowerCase(Locale.ROOT).replace('\u00d7', 'x').replaceAll("\\s+", " ");
        if (text.isEmpty()) {
            return cell.missing(ALLOWED, "");
        }
        Matcher nominal = NOMINAL.matcher(text);
        try {
            if (nominal.matches()) {
                return within(cell, true, inches(nominal.group(1)), inches(nominal.group(2)));
            }
            String[] parts = text.split(" ?x ?", -1);
            if (parts.length == 2) {
                return within(cell, false, Length.parse(parts[0]), Length.parse(parts[1]));
            }
            cell.refuse(ALLOWED, "");
        } catch (OutOfDomainException e) {
            cell.refuse(ALLOWED, e.remedy());
        }
        return Optional.empty();
    }

    static Optional<Thickness> thickness(Cell cell) {
        String text = cell.text().toLowerCase(Locale.ROOT).replaceAll("\\s+", " ");
        if (NOMINAL_THICKNESS.matcher(text).matches()) {
            return Optional.of(new Thickness(true, inches(text)))
                    .filter(thickness -> thickness.length().isPositive() || refused(cell));
        }
        return cell.lengthUpTo(GREATEST, "a thickness without unit is a nominal one, in inches")
                .map(length -> new Thickness(false, length));
    }

    /** The lengths that will do, shortest first. */
    static Optional<List<Length>> lengths(Cell cell) {
        List<Length> lengths = new ArrayList<>();
        List<Cell> parts = cell.list().orElse(List.of());
        for (Cell part : parts) {
            part.length(
                            SHORTEST,
                            LONGEST,
                            LENGTHS,
                            "write the lengths as 6 ft; 8 ft; 10 ft; cut shorter ones from longer ones")
                    .ifPresent(lengths::add);
        }
        return !parts.isEmpty() && lengths.size() == parts.size()
                ? Optional.of(lengths.stream().distinct().sorted().toList())
                : Optional.empty();
    }

    private static Optional<Size> within(Cell cell, boolean nominal, Length thickness, Length width) {
        if (!thickness.isPositive() || !width.isPositive()) {
            cell.refuse("a thickness and a width above 0", "write both, such as 2x4 or 45 mm x 145 mm");
            return Optional.empty();
        }
        Size size = new Size(nominal, thickness, width);
        if (size.width().compareTo(GREATEST) > 0) {
            cell.refuse("a width up to " + GREATEST.inMillimetres(0), "check the unit");
            return Optional.empty();
        }
        return Optional.of(size);
    }

    private static boolean refused(Cell cell) {
        cell.refuse("a thickness above 0", "");
        return false;
    }

    private static Length inches(String number) {
        return Length.parse(number + " in");
    }

    /** What a size measures when it is finished; nothing, with a note of the problem, where the tables have no such size. */
    static Optional<Product.Section> finished(Cell cell, Size size, Surface surface) {
        try {
            return Optional.of(size.finished(surface));
        } catch (OutOfDomainException e) {
            boolean rough = surface == Surface.ROUGH;
            // The table of rough sizes may lack one that is sawn all the same; a measured size does without the table.
            boolean mayBeMeasured = rough && size.nominal();
            cell.refuse(
                    e.limits() + (rough ? ", for rough lumber" : ""),
                    mayBeMeasured
                            ? "it is the " + e.parameter() + " that the table lacks; write " + size.thickness() + " x "
                                    + size.width() + " to " + e.remedy()
                            : e.remedy());
            return Optional.empty();
        }
    }
}
