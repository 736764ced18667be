package org.woodyield.show;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.woodyield.measure.Volume;
import org.woodyield.plan.WhatIf;
import org.woodyield.sawing.SawingSensitivity.Outcome;
import org.woodyield.show.Block.Prose;
import org.woodyield.show.Block.Section;
import org.woodyield.show.Block.Tabular;
import org.woodyield.show.PlanTable.Cell;

/** How one log would be sawn if one thing were otherwise. */
final class WhatIfSection {

    private WhatIfSection() {}

    static Section of(WhatIf whatIf) {
        boolean priced = !whatIf.bought().isEmpty();
        PlanTable.Builder table = PlanTable.of("what-if", "Log " + whatIf.log() + " with one thing otherwise")
                .text("What", "what")
                .number("Pieces", "pieces")
                .number("Passes", "passes")
                .number("Lumber, ft3", "lumber-ft3")
                .number("Kerf, ft3", "kerf-ft3");
        if (priced) {
            table.number("Lumber bought, " + whatIf.unit(), "bought");
        }
        table.number("Points", "points").number("Difference, points", "difference-points");
        Outcome base = whatIf.sensitivity().base();
        List<Outcome> outcomes = new ArrayList<>(List.of(base));
        outcomes.addAll(whatIf.sensitivity().changed());
        for (int i = 0; i < outcomes.size(); i++) {
            row(
                    table,
                    outcomes.get(i),
                    base,
                    priced ? Optional.of(whatIf.bought().get(i)) : Optional.empty());
        }
        return new Section(
                "what-if",
                "What if",
                List.of(
                        new Tabular(table.build()),
                        new Prose(
                                "Each line is the pattern with the most points of its own search, by the measure by which"
                                        + " the cuts of this log were chosen; a size more counts at its full price each time. Points are"
                                        + " no money: how they count is told where the logs are listed."
                                        + (priced
                                                ? " Lumber bought is what this lumber would cost in full, be it needed or not, before"
                                                        + " what drying loses."
                                                : "")
                                        + " The other logs and the list are left as they are.")));
    }

    private static double shown(Outcome outcome) {
        return Double.parseDouble(NumberText.fixed(outcome.objective(), 2));
    }

    private static void row(PlanTable.Builder table, Outcome outcome, Outcome base, Optional<Double> bought) {
        // Of the figures as shown, so that a reader who subtracts finds it.
        double difference = shown(outcome) - shown(base);
        String text = NumberText.fixed(difference, 2);
        List<Cell> cells = new ArrayList<>(List.of(
                Cell.text(outcome.what()),
                Cell.whole(outcome.pieces()),
                Cell.whole(outcome.passes()),
                Cell.number(outcome.lumberCubicMetres() / Volume.CUBIC_METRES_PER_CUBIC_FOOT, 2, 6),
                Cell.number(outcome.kerfCubicMetres() / Volume.CUBIC_METRES_PER_CUBIC_FOOT, 2, 6)));
        bought.ifPresent(price -> cells.add(Cell.number(price, 2)));
        cells.add(Cell.number(outcome.objective(), 2));
        cells.add(new Cell(difference > 0.005 ? "+" + text : text, Optional.of(difference), 2, false));
        table.row(cells);
    }
}
