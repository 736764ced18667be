package org.woodyield.show;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.woodyield.plan.JobPlan;
import org.woodyield.plan.WhatIf;
import org.woodyield.show.Block.Prose;
import org.woodyield.show.Block.Section;
import org.woodyield.show.Block.Tabular;
import org.woodyield.show.Block.Warning;
import org.woodyield.source.Source;
import org.woodyield.source.Standing;

/**
 * A plan as it is shown: as text for a terminal, as one HTML page with drawings, and as tables. All three are made from the
 * same parts and say the same.
 */
public final class PlanSheet {

    /**
     * The names that tables of a plan may have, in the order in which they are shown. A plan in which nothing is sawn, or no price is known, lacks
     * some of them.
     */
    public static final List<String> TABLE_NAMES = List.of(
            "wanted",
            "fall-down",
            "green-sizes",
            "logs",
            "yield",
            "passes",
            "pieces",
            "flatness",
            "guide-supports",
            "balance",
            "time",
            "spread",
            "days",
            "widest-cuts",
            "exposure",
            "weights",
            "drying",
            "final-sizes",
            "moving",
            "hauling",
            "yard-moisture",
            "stacks",
            "cupping",
            "missing-prices",
            "money",
            "piece-costs",
            "movers",
            "ways",
            "crossings",
            "choice-movers",
            "ranges",
            "years",
            "assumptions",
            "sources",
            "what-if");

    private final String title;
    private final List<Block> preface;
    private final List<Section> sections;

    private PlanSheet(String title, List<Block> preface, List<Section> sections) {
        this.title = title;
        this.preface = List.copyOf(preface);
        this.sections = List.copyOf(sections);
    }

    /**
     * Lays a plan out.
     *
     * @param plan the plan
     * @param origin what its input rests on; if that is {@link Standing#INVENTED} the plan says so at its head
     * @return the sheet
     */
    public static PlanSheet of(JobPlan plan, Source origin) {
        List<Block> preface = new ArrayList<>();
        if (origin.standing() == Standing.INVENTED) {
            preface.add(new Warning("Invented demonstration. " + origin.title()
                    + ": the logs, the prices and the building are made up; only the arithmetic and the sources are"
                    + " meant."));
        }
        preface.add(new Prose(plan.input().logs().size() + " logs, "
                + plan.supply().size() + " things wanted, sawn with "
                + plan.input().saw().name() + ", kerf " + plan.input().saw().kerf() + "."));
        return new PlanSheet(plan.input().title(), preface, PlanContent.of(plan, origin));
    }

    /**
     * The same sheet with what one log would give if one thing were otherwise, as its last section.
     *
     * @param whatIf the answers for a log
     * @return a new sheet
     */
    public PlanSheet with(WhatIf whatIf) {
        List<Section> more = new ArrayList<>(sections);
        more.add(WhatIfSection.of(whatIf));
        return new PlanSheet(title, preface, more);
    }

    /**
     * The plan as plain text, no line over 100 characters.
     *
     * @return lines, each with its line end
     */
    public String text() {
        return PlanText.of(title, preface, sections);
    }

    /**
     * The plan as one self-contained HTML page: inline style and drawings, no script, no request to anywhere.
     *
     * @return a page that is well-formed XML too
     */
    public String html() {
        return PlanPage.of(title, preface, sections);
    }

    /**
     * Every table of the plan in the order in which it is shown, those of single logs put together into one.
     *
     * @return tables with different names
     */
    public List<PlanTable> tables() {
        Map<String, PlanTable> tables = new LinkedHashMap<>();
        for (Section section : sections) {
            for (Block block : section.blocks()) {
                if (block instanceof Tabular tabular) {
                    PlanTable table = tabular.table();
                    PlanTable whole = table.log().isPresent() ? table.withLogColumn() : table;
                    tables.merge(table.name(), whole, (all, one) -> all.followedBy(one, capital(one.name())));
                }
            }
        }
        return List.copyOf(tables.values());
    }

    private static String capital(String name) {
        return Character.toUpperCase(name.charAt(0)) + name.substring(1) + " of all logs";
    }
}
