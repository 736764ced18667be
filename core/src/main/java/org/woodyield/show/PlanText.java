package org.woodyield.show;

import java.util.List;
import org.woodyield.show.Block.Fact;
import org.woodyield.show.Block.Facts;
import org.woodyield.show.Block.Points;
import org.woodyield.show.Block.Prose;
import org.woodyield.show.Block.Section;
import org.woodyield.show.Block.Tabular;
import org.woodyield.show.Block.Warning;

/** A plan for a terminal: no line over 100 characters, drawings and workings left to the page. */
final class PlanText {

    private PlanText() {}

    static String of(String title, List<Block> preface, List<Section> sections) {
        StringBuilder out = new StringBuilder();
        String head = TextTable.paragraph("", "", title);
        out.append(head)
                .append("=".repeat(Math.min(TextTable.WIDTH, head.indexOf('\n'))))
                .append('\n');
        preface.forEach(block -> write(block, out));
        for (Section section : sections) {
            String line = TextTable.oneLine(section.title());
            out.append('\n').append(TextTable.paragraph("", "", line));
            out.append("-".repeat(Math.min(TextTable.WIDTH, line.length()))).append('\n');
            section.blocks().forEach(block -> write(block, out));
        }
        return out.toString();
    }

    private static void write(Block block, StringBuilder out) {
        if (block instanceof Prose prose) {
            out.append(TextTable.paragraph("", "", prose.text()));
        } else if (block instanceof Warning warning) {
            out.append(TextTable.paragraph("* ", "* ", warning.text()));
        } else if (block instanceof Points points) {
            points.lines().forEach(line -> out.append(TextTable.paragraph("- ", "  ", line)));
        } else if (block instanceof Facts facts) {
            TextTable table = new TextTable("").left("").left("").left("");
            for (Fact fact : facts.facts()) {
                table.row(fact.name(), fact.value(), fact.note());
            }
            out.append(table.text());
        } else if (block instanceof Tabular tabular) {
            out.append('\n').append(TextTable.paragraph("", "", tabular.table().title()));
            out.append(tabular.table().plain("  ")).append('\n');
        }
    }
}
