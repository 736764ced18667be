package org.woodyield.show;

import java.util.ArrayList;
import java.util.List;
import org.woodyield.log.FormulaErrors;
import org.woodyield.log.SolidForm;
import org.woodyield.source.Standing;

/**
 * The matrix of solid-volume formulas against solids, as plain text and Markdown: {@code exact}, or the error in percent of
 * the true volume on solids with the given ends. A formula that is exact by chance on these ends alone shows 0.00 %.
 */
public final class FormulaErrorsText {

    private FormulaErrorsText() {}

    /**
     * As plain text, no line over 100 characters.
     *
     * @param errors the matrix
     * @param unit of its measures, for example {@code m}
     * @return lines, each with its line end
     */
    public static String plain(FormulaErrors errors, String unit) {
        TextTable table = new TextTable("").left("Formula");
        for (SolidForm form : SolidForm.values()) {
            table.right(form.label());
        }
        errors.rows().forEach(row -> table.row(cells(row)));
        StringBuilder out = new StringBuilder(TextTable.paragraph("", "", caption(errors, unit)));
        out.append('\n').append(table.text());
        for (String note : notes(errors)) {
            out.append('\n').append(TextTable.paragraph("", "", note));
        }
        return out.toString();
    }

    /**
     * As Markdown.
     *
     * @param errors the matrix
     * @param unit of its measures, for example {@code m}
     * @return a paragraph, a table and notes
     */
    public static String markdown(FormulaErrors errors, String unit) {
        StringBuilder out = new StringBuilder(caption(errors, unit)).append("\n\n| Formula |");
        StringBuilder rule = new StringBuilder("|:--|");
        for (SolidForm form : SolidForm.values()) {
            out.append(' ').append(form.label()).append(" |");
            rule.append("--:|");
        }
        out.append('\n').append(rule).append('\n');
        for (FormulaErrors.Row row : errors.rows()) {
            out.append("| ").append(String.join(" | ", cells(row))).append(" |\n");
        }
        for (String note : notes(errors)) {
            out.append('\n').append(note).append('\n');
        }
        return out.toString();
    }

    private static String caption(FormulaErrors errors, String unit) {
        return "Error of each formula, in percent of the true volume, on solids with ends of "
                + NumberText.full(errors.small()) + " and " + NumberText.full(errors.large()) + " " + unit
                + " and a length of " + NumberText.full(errors.length()) + " " + unit
                + "; the cylinder has the small end at both.";
    }

    private static List<String> cells(FormulaErrors.Row row) {
        List<String> cells = new ArrayList<>();
        cells.add(row.label());
        for (SolidForm form : SolidForm.values()) {
            String percent = NumberText.fixed(100 * row.on(form), 2);
            boolean above = row.on(form) > 0 && !percent.equals("0.00");
            cells.add(row.exactOn().contains(form) ? "exact" : (above ? "+" : "") + percent + " %");
        }
        return cells;
    }

    private static List<String> notes(FormulaErrors errors) {
        return errors.rows().stream()
                .filter(row -> row.source().standing() != Standing.PUBLISHED)
                .map(row -> row.label() + ": " + row.source().citation() + ".")
                .toList();
    }
}
