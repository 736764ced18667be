package org.woodyield.show;

import org.woodyield.measure.Length;
import org.woodyield.measure.Rounding;
import org.woodyield.sawing.Saw;

/** How lengths are written for the reader of a plan: as the scale of the saw is marked, in inches or in millimetres. */
enum LengthText {
    /** Inches and feet with binary fractions. */
    INCHES {
        @Override
        String unit() {
            return "in";
        }

        @Override
        String size(Length length) {
            return isExactly(length, 64)
                    ? length.inInches(64, Rounding.HALF_UP)
                    : NumberText.fixed(length.toInches(), 3) + " in";
        }

        @Override
        String near(Length length) {
            return length.inInches(16, Rounding.HALF_UP);
        }

        @Override
        String longways(Length length) {
            return length.inFeet(8, Rounding.HALF_UP);
        }

        @Override
        Length scaleBar(Length across) {
            return Length.inches(across.compareTo(Length.inches(16)) < 0 ? 4 : 6);
        }
    },
    /** Millimetres and metres. */
    MILLIMETRES {
        @Override
        String unit() {
            return "mm";
        }

        @Override
        String size(Length length) {
            return length.inMillimetres(1);
        }

        @Override
        String near(Length length) {
            return length.inMillimetres(0);
        }

        @Override
        String longways(Length length) {
            return NumberText.fixed(length.toMetres(), 2) + " m";
        }

        @Override
        Length scaleBar(Length across) {
            return Length.millimetres(across.compareTo(Length.millimetres(400)) < 0 ? 100 : 200);
        }
    };

    /** Of a saw whose scale is marked in fractions of an inch, inches; of any other, millimetres. */
    static LengthText of(Saw saw) {
        return isExactly(saw.settingStep(), 64) ? INCHES : MILLIMETRES;
    }

    private static boolean isExactly(Length length, int denominator) {
        return length.equals(length.roundedTo(Length.inches(1, denominator), Rounding.DOWN));
    }

    /** The unit of sizes and of measured widths. */
    abstract String unit();

    /** A size without its unit, for a column that has it in its header. */
    final String bare(String size) {
        String tail = " " + unit();
        return size.endsWith(tail) ? size.substring(0, size.length() - tail.length()) : size;
    }

    /** A size or a setting, every digit that a saw or a gauge can show. */
    abstract String size(Length length);

    /** A measured width, to the nearest sixteenth of an inch or millimetre. */
    abstract String near(Length length);

    /** A length of a log or a piece. */
    abstract String longways(Length length);

    /** A round length to be drawn beside something so wide. */
    abstract Length scaleBar(Length across);
}
