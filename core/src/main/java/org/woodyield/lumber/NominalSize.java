package org.woodyield.lumber;

import java.util.Comparator;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.woodyield.measure.Length;
import org.woodyield.measure.OutOfDomainException;

/**
 * A size by which softwood lumber is named and counted, which is not the size that it measures.
 *
 * @param thickness the nominal thickness, 3/8 to 24 in
 * @param width the nominal width, no less than the thickness, up to 30 in
 */
public record NominalSize(Length thickness, Length width) {

    /** How the trade divides lumber by its nominal thickness. */
    public enum LumberClass {
        /** Under 2 inches. */
        BOARD("board"),
        /** From 2 to under 5 inches. */
        DIMENSION("dimension"),
        /** 5 inches and over. */
        TIMBER("timber");

        private final String label;

        LumberClass(String label) {
            this.label = label;
        }

        /**
         * The word for it.
         *
         * @return one word, as the size tables write it
         */
        public String label() {
            return label;
        }
    }

    /** By thickness, then by width. */
    static final Comparator<NominalSize> THINNEST_FIRST =
            Comparator.comparing(NominalSize::thickness).thenComparing(NominalSize::width);

    private static final Length LEAST = Length.inches(3, 8);
    private static final Length THICKEST = Length.inches(24);
    private static final Length WIDEST = Length.inches(30);
    private static final Pattern TEXT =
            Pattern.compile("\\s*([0-9][0-9 ./-]*?)\\s*(?:in)?\\s*[x×]\\s*([0-9][0-9 ./-]*?)\\s*(?:in)?\\s*");

    /**
     * Checks that this can be a nominal size.
     *
     * @throws OutOfDomainException if thickness or width is outside, or the two are crossed
     */
    public NominalSize {
        if (thickness.compareTo(LEAST) < 0 || thickness.compareTo(THICKEST) > 0) {
            throw new OutOfDomainException("nominal thickness", thickness.toString(), "", "3/8 to 24 in", "");
        }
        if (width.compareTo(thickness) < 0 || width.compareTo(WIDEST) > 0) {
            throw new OutOfDomainException(
                    "nominal width",
                    width.toString(),
                    "",
                    "from the thickness, " + thickness + ", to 30 in",
                    "write the thickness first, as in 2x4");
        }
    }

    /**
     * Reads a size as people write it.
     *
     * @param text for example {@code 2x4}, {@code 1 1/4 x 6} or {@code 6 × 8 in}
     * @return the size
     * @throws OutOfDomainException if the text is not a size
     */
    public static NominalSize parse(String text) {
        Matcher matcher = TEXT.matcher(text.toLowerCase(Locale.ROOT));
        if (!matcher.matches()) {
            throw unreadable(text);
        }
        try {
            return new NominalSize(Length.parse(matcher.group(1) + " in"), Length.parse(matcher.group(2) + " in"));
        } catch (OutOfDomainException e) {
            if (e.parameter().startsWith("nominal")) {
                throw e;
            }
            throw unreadable(text);
        }
    }

    private static OutOfDomainException unreadable(String text) {
        return new OutOfDomainException(
                "nominal size", "'" + text + "'", "", "thickness x width in inches, such as 2x4 or 1 1/4 x 6", "");
    }

    /**
     * The class of lumber.
     *
     * @return by nominal thickness
     */
    public LumberClass lumberClass() {
        if (thickness.compareTo(Length.inches(2)) < 0) {
            return LumberClass.BOARD;
        }
        return thickness.compareTo(Length.inches(5)) < 0 ? LumberClass.DIMENSION : LumberClass.TIMBER;
    }

    /**
     * Whether it is a strip: a board under 6 inches wide.
     *
     * @return true if so
     * @see org.woodyield.source.Sources source navy-lumber
     */
    public boolean isStrip() {
        return lumberClass() == LumberClass.BOARD && width.compareTo(Length.inches(6)) < 0;
    }

    /**
     * The size as the trade writes it.
     *
     * @return for example {@code 2x4} or {@code 1 1/4 x 6}
     */
    @Override
    public String toString() {
        String t = inches(thickness);
        String w = inches(width);
        return t.contains("/") || w.contains("/") ? t + " x " + w : t + "x" + w;
    }

    private static String inches(Length length) {
        String text = length.toString();
        return text.endsWith(" in") ? text.substring(0, text.length() - 3) : text;
    }
}
