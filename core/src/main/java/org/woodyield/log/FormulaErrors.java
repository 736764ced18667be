package org.woodyield.log;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.source.Source;
import org.woodyield.source.Sources;

/**
 * Which solid-volume formula is exact on which solid, and by how much it is wrong on a given one: computed, each formula
 * with the diameters that the solid has where the formula asks for them. On a cylinder both ends are the small end.
 *
 * @param small diameter at the small end
 * @param large diameter at the large end
 * @param length in the same unit
 * @param rows one for each formula
 */
public record FormulaErrors(double small, double large, double length, List<Row> rows) {

    /** What a formula that is exact loses to rounding of doubles, with a wide margin; the others are off by more. */
    private static final double NOTHING = 1e-12;

    /**
     * One formula.
     *
     * @param label its name
     * @param source what it rests on
     * @param relative its error on each solid with the given ends, as a share of the true volume
     * @param exactOn the solids on which it is exact, whatever their ends and length
     */
    public record Row(String label, Source source, Map<SolidForm, Double> relative, Set<SolidForm> exactOn) {
        /** Keeps immutable copies. */
        public Row {
            relative = Map.copyOf(relative);
            exactOn = Set.copyOf(exactOn);
        }

        /**
         * The error on one solid.
         *
         * @param form the solid
         * @return as a share of the true volume, positive if the formula gives too much
         */
        public double on(SolidForm form) {
            Double error = relative.get(form);
            if (error == null) {
                throw new IllegalArgumentException("no error on a " + form.label());
            }
            return error;
        }
    }

    /** Keeps an immutable copy. */
    public FormulaErrors {
        rows = List.copyOf(rows);
    }

    /** A formula with the diameters that a solid has. */
    private interface Measured {
        double volume(SolidForm form, double small, double large, double length);
    }

    /**
     * The errors on solids with the given ends.
     *
     * @param small diameter at the small end, above zero
     * @param large diameter at the large end, no less
     * @param length in the same unit; it matters for the formulas with a taper of their own
     * @return a row for each formula
     * @throws OutOfDomainException if a measure is not above zero or the large end is the smaller
     */
    public static FormulaErrors of(double small, double large, double length) {
        List<Row> rows = new ArrayList<>();
        for (SolidVolume formula : SolidVolume.values()) {
            rows.add(row(
                    formula.label(),
                    formula.source(),
                    (form, a, c, l) -> formula.volume(a, form.diameter(a, c, 0.5), c, l),
                    small,
                    large,
                    length));
        }
        rows.add(row(
                "centroid",
                Sources.get("centroid-memory"),
                (form, a, c, l) ->
                        CentroidVolume.volume(a, form.diameter(a, c, CentroidVolume.position(a, c, l) / l), c, l),
                small,
                large,
                length));
        return new FormulaErrors(small, large, length, rows);
    }

    private static Row row(String label, Source source, Measured formula, double small, double large, double length) {
        Map<SolidForm, Double> errors = new EnumMap<>(SolidForm.class);
        Set<SolidForm> exact = EnumSet.noneOf(SolidForm.class);
        for (SolidForm form : SolidForm.values()) {
            errors.put(form, error(formula, form, small, large, length));
            // Three shapes, so that no chance agreement passes for a rule.
            if (Math.abs(error(formula, form, 1, 1.25, 3)) < NOTHING
                    && Math.abs(error(formula, form, 1, 2, 5)) < NOTHING
                    && Math.abs(error(formula, form, 1, 3.5, 40)) < NOTHING) {
                exact.add(form);
            }
        }
        return new Row(label, source, errors, exact);
    }

    private static double error(Measured formula, SolidForm form, double small, double large, double length) {
        double end = form == SolidForm.CYLINDER ? small : large;
        return formula.volume(form, small, end, length) / form.volume(small, end, length) - 1;
    }
}
