package org.woodyield.show;

import java.util.ArrayList;
import java.util.List;
import org.woodyield.source.Source;
import org.woodyield.source.Standing;
import org.woodyield.working.Working;
import org.woodyield.working.Working.Given;
import org.woodyield.working.Working.Line;
import org.woodyield.working.Working.Lookup;
import org.woodyield.working.Working.Rounded;
import org.woodyield.working.Working.Step;

/**
 * A {@link Working} to be followed by hand, as plain text, Markdown, and HTML with MathML.
 *
 * <p>Each step reads: symbol = formula = the same with numbers put in = value and unit with every digit, and after it, if
 * it is long, the value to five digits. A rounding says its name. Whatever does not rest on a publication says what it
 * rests on, MEMORY included.
 */
public final class WorkingText {

    private static final int SHORT = 5;
    private static final int SENSIBLE = 13;
    private static final int TAIL = 5;
    private static final String HEADERS = "| Symbol | Stands for | Value | Rests on |\n|:--|:--|--:|:--|\n";

    private WorkingText() {}

    /**
     * As plain text, no line over 100 characters.
     *
     * @param working the working
     * @return lines, each with its line end
     */
    public static String plain(Working working) {
        StringBuilder out = new StringBuilder();
        String title = TextTable.oneLine(working.title());
        out.append(TextTable.paragraph("", "", title));
        out.append("=".repeat(Math.min(TextTable.WIDTH, title.length()))).append('\n');
        int number = 0;
        for (List<Line> group : groups(working)) {
            if (isGiven(group.get(0))) {
                out.append(number == 0 ? "Given\n" : "\nWith\n").append(givenTable(group));
                continue;
            }
            for (Line line : group) {
                number++;
                String start = number + ". ";
                String indent = " ".repeat(start.length());
                out.append('\n').append(TextTable.paragraph(start, indent, line.name()));
                for (String equation : equations(line)) {
                    out.append(TextTable.paragraph(indent + "  ", indent + "      ", equation));
                }
                if (line.source().standing() != Standing.DERIVED) {
                    out.append(TextTable.paragraph(
                            indent + "  Source: ",
                            indent + "          ",
                            line.source().citation()));
                }
            }
        }
        if (!working.notes().isEmpty()) {
            out.append('\n');
            working.notes().forEach(note -> out.append(TextTable.paragraph("Note: ", "      ", note)));
        }
        return out.toString();
    }

    private static String givenTable(List<Line> group) {
        TextTable table =
                new TextTable("  ").left("").left("").right("").left("").left("");
        for (Line line : group) {
            String value = given(line.value());
            table.row(
                    line.symbol(),
                    meaning(line),
                    value,
                    line.unit(),
                    line.source().citation());
        }
        return table.text();
    }

    /**
     * As Markdown with a table of what is given and a numbered list of steps.
     *
     * @param working the working
     * @return lines, each with its line end; begins with a heading of level 3
     */
    public static String markdown(Working working) {
        StringBuilder out =
                new StringBuilder("### ").append(mark(working.title())).append("\n\n");
        int number = 0;
        for (List<Line> group : groups(working)) {
            if (isGiven(group.get(0))) {
                out.append(HEADERS);
                for (Line line : group) {
                    out.append("| ").append(code(line.symbol())).append(" | ").append(mark(meaning(line)));
                    out.append(" | ").append(quantity(mark(given(line.value())), mark(line.unit())));
                    out.append(" | ").append(mark(line.source().citation())).append(" |\n");
                }
                out.append('\n');
                continue;
            }
            for (Line line : group) {
                number++;
                String start = number + ". ";
                String indent = " ".repeat(start.length());
                out.append(start).append(mark(line.name())).append("\n\n");
                out.append(indent).append("```text\n");
                for (String equation : equations(line)) {
                    out.append(indent).append(TextTable.oneLine(equation)).append('\n');
                }
                out.append(indent).append("```\n");
                if (line.source().standing() != Standing.DERIVED) {
                    out.append('\n').append(indent).append("Source: ");
                    out.append(mark(line.source().citation())).append('\n');
                }
                out.append('\n');
            }
        }
        working.notes().forEach(note -> out.append("Note: ").append(mark(note)).append("\n\n"));
        return out.toString().stripTrailing() + "\n";
    }

    /**
     * As an HTML section whose formulas are MathML.
     *
     * @param working the working
     * @param level the level of its heading, 2 to 6
     * @return one {@code section} element, well-formed XML
     * @throws IllegalArgumentException if there is no such heading
     */
    public static String html(Working working, int level) {
        if (level < 2 || level > 6) {
            throw new IllegalArgumentException("heading level is " + level + "; allowed: 2 to 6");
        }
        return html(working, working.title(), level);
    }

    static String html(Working working, String title, int level) {
        Markup out = new Markup().open("section", "class", "working").line();
        out.element("h" + level, title).line();
        int number = 0;
        for (List<Line> group : groups(working)) {
            if (isGiven(group.get(0))) {
                given(group, number == 0 ? "Given" : "With", out);
                continue;
            }
            out.open("ol", "class", "steps", "start", number == 0 ? "" : Integer.toString(number + 1));
            out.line();
            group.forEach(line -> step(line, out));
            out.closeLine();
            number += group.size();
        }
        working.notes()
                .forEach(note ->
                        out.element("p", "Note: " + note, "class", "note").line());
        return out.closeLine().toString();
    }

    private static void given(List<Line> group, String caption, Markup out) {
        out.open("div", "class", "scroll", "tabindex", "0", "role", "region", "aria-label", caption);
        out.open("table").element("caption", caption).open("thead").open("tr");
        for (String header : new String[] {"Symbol", "Stands for", "Value", "Unit", "Rests on"}) {
            out.element("th", header, "scope", "col", "class", header.equals("Value") ? "number" : "");
        }
        out.close().close().line().open("tbody").line();
        for (Line line : group) {
            out.open("tr").open("th", "scope", "row").add(FormulaText.symbol(line.symbol()));
            out.close().element("td", meaning(line));
            out.element("td", given(line.value()), "class", "number").element("td", line.unit());
            out.open("td");
            source(line.source(), out);
            out.close().closeLine();
        }
        out.close().close().closeLine();
    }

    /** Runs of given values and runs of steps, in the order of the working, which may come back to a symbol. */
    private static List<List<Line>> groups(Working working) {
        List<List<Line>> groups = new ArrayList<>();
        for (Line line : working.lines()) {
            boolean begins =
                    groups.isEmpty() || isGiven(groups.get(groups.size() - 1).get(0)) != isGiven(line);
            if (begins) {
                groups.add(new ArrayList<>());
            }
            groups.get(groups.size() - 1).add(line);
        }
        return groups;
    }

    private static void step(Line line, Markup out) {
        out.open("li").element("p", line.name());
        if (line instanceof Step step) {
            out.open("div", "class", "equation").add(FormulaText.equation(step.symbol(), step.formula()));
            if (!step.inputs().isEmpty()) {
                out.add(FormulaText.substitution(step.formula(), step.inputs()));
            }
            out.close();
            out.element("p", "= " + value(step.value(), step.unit()), "class", "value");
        } else if (line instanceof Rounded rounded) {
            out.open("p", "class", "value")
                    .add(FormulaText.symbol(rounded.symbol()))
                    .text(" = ");
            out.add(FormulaText.symbol(rounded.from()))
                    .text(" " + rounding(rounded))
                    .close();
        }
        if (line.source().standing() != Standing.DERIVED) {
            out.open("p", "class", "source").text("Source: ");
            source(line.source(), out);
            out.close();
        }
        out.closeLine();
    }

    private static void source(Source source, Markup out) {
        if (source.standing() == Standing.MEMORY) {
            out.element("strong", source.citation(), "class", "memory");
        } else {
            out.text(source.citation());
        }
    }

    private static boolean isGiven(Line line) {
        return line instanceof Given || line instanceof Lookup;
    }

    private static String meaning(Line line) {
        return line instanceof Lookup lookup ? lookup.name() + ", from the table: " + lookup.cell() : line.name();
    }

    private static List<String> equations(Line line) {
        List<String> lines = new ArrayList<>();
        if (line instanceof Step step) {
            lines.add(step.symbol() + " = " + step.formula().text());
            String indent = " ".repeat(step.symbol().length());
            if (!step.inputs().isEmpty()) {
                lines.add(indent + " = " + FormulaText.plain(step.formula().root(), step.inputs()));
            }
            lines.add(indent + " = " + value(step.value(), step.unit()));
        } else if (line instanceof Rounded rounded) {
            lines.add(rounded.symbol() + " = " + rounded.from() + " " + rounding(rounded));
            lines.add(" ".repeat(rounded.symbol().length()) + " = " + became(rounded));
        }
        return lines;
    }

    private static String rounding(Rounded rounded) {
        String step = rounded.step() == 1
                ? "to a whole number"
                : "to a multiple of " + quantity(NumberText.full(rounded.step()), rounded.unit());
        return "rounded " + rounded.rounding().label() + ", " + step;
    }

    private static String became(Rounded rounded) {
        return value(rounded.value(), rounded.unit()) + ", from " + NumberText.full(rounded.before());
    }

    private static String value(double value, String unit) {
        String full = NumberText.full(value);
        String few = NumberText.significant(value, SHORT);
        return quantity(full, unit) + (full.equals(few) ? "" : "  (" + quantity(few, unit) + ")");
    }

    /** All digits, since the steps are worked out with them; where a conversion left a tail such as 69.80000000000001, also
     * without it. */
    private static String given(double value) {
        String full = NumberText.full(value);
        String sensible = NumberText.significant(value, SENSIBLE);
        return full.length() < sensible.length() + TAIL ? full : full + " (" + sensible + ")";
    }

    private static String quantity(String number, String unit) {
        return unit.isEmpty() ? number : number + " " + unit;
    }

    private static String code(String symbol) {
        return "`" + symbol.replace('`', '\'') + "`";
    }

    /** Takes their meaning from the characters that Markdown gives one. */
    private static String mark(String text) {
        StringBuilder out = new StringBuilder();
        for (char c : TextTable.oneLine(text).toCharArray()) {
            if ("\\`*_{}[]()#+-.!|<>~&".indexOf(c) >= 0 && !plainHere(c, text)) {
                out.append('\\');
            }
            out.append(c);
        }
        return out.toString();
    }

    /** Marks that mean something only at the start of a line stay as they are inside one. */
    private static boolean plainHere(char c, String text) {
        return ".-+()!{}".indexOf(c) >= 0 && !text.isEmpty() && text.charAt(0) != c;
    }
}
