package org.woodyield.show;

import java.util.List;
import org.woodyield.show.Block.Derivation;
import org.woodyield.show.Block.Fact;
import org.woodyield.show.Block.Facts;
import org.woodyield.show.Block.Figure;
import org.woodyield.show.Block.Points;
import org.woodyield.show.Block.Prose;
import org.woodyield.show.Block.Section;
import org.woodyield.show.Block.Tabular;
import org.woodyield.show.Block.Warning;
import org.woodyield.show.Block.Workings;

/**
 * A plan as one HTML page that needs nothing beside itself: style and drawings lie in it, there is no script, and it asks
 * for nothing from anywhere. It is well-formed XML as well.
 */
final class PlanPage {

    private PlanPage() {}

    static String of(String title, List<Block> preface, List<Section> sections) {
        Markup out = new Markup();
        out.open("html", "lang", "en").line().open("head").line();
        out.empty("meta", "charset", "utf-8").line();
        out.empty("meta", "name", "viewport", "content", "width=device-width, initial-scale=1")
                .line();
        out.element("title", title).line();
        out.open("style").line().trusted(PageStyle.CSS).closeLine();
        out.closeLine().open("body").line();
        out.open("header").line().element("h1", title).line();
        preface.forEach(block -> write(block, out));
        out.open("nav", "aria-label", "Contents").open("ol").line();
        for (Section section : sections) {
            out.open("li")
                    .element("a", section.title(), "href", "#" + section.id())
                    .closeLine();
        }
        out.close().closeLine();
        out.closeLine().open("main").line();
        for (Section section : sections) {
            out.open("section", "id", section.id(), "aria-labelledby", section.id() + "-heading")
                    .line();
            out.element("h2", section.title(), "id", section.id() + "-heading").line();
            section.blocks().forEach(block -> write(block, out));
            out.closeLine();
        }
        out.closeLine().closeLine().close();
        return "<!DOCTYPE html>\n" + out + "\n";
    }

    private static void write(Block block, Markup out) {
        if (block instanceof Prose prose) {
            out.element("p", prose.text()).line();
        } else if (block instanceof Warning warning) {
            out.element("p", warning.text(), "class", "warning").line();
        } else if (block instanceof Points points) {
            out.open("ul").line();
            points.lines().forEach(line -> out.element("li", line).line());
            out.closeLine();
        } else if (block instanceof Facts facts) {
            out.open("dl", "class", "facts").line();
            for (Fact fact : facts.facts()) {
                out.open("div").element("dt", fact.name()).element("dd", fact.value(), "class", "figure");
                out.element("dd", fact.note()).closeLine();
            }
            out.closeLine();
        } else if (block instanceof Tabular tabular) {
            out.add(tabular.table().html());
        } else if (block instanceof Figure figure) {
            out.open("figure").line();
            out.open("div", "class", "scroll", "tabindex", "0", "role", "region", "aria-label", figure.caption());
            out.trusted(figure.svg()).closeLine();
            out.element("figcaption", figure.caption()).closeLine();
        } else if (block instanceof Workings workings) {
            out.open("details").element("summary", workings.title()).line();
            for (Derivation derivation : workings.derivations()) {
                out.trusted(WorkingText.html(derivation.working(), derivation.title(), 3));
            }
            out.closeLine();
        }
    }
}
