package org.woodyield.show;

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
        PlanTable.Builder table = PlanTable.of("what-if", "Log " + whatIf.log() + " with one thing otherwise")
                .text("What", "what")
                .number("Pieces", "pieces")
                .number("Passes", "passes")
                .number("Lumber, ft3", "lumber-ft3")
                .number("Kerf, ft3", "kerf-ft3")
                .number("Worth less passes, " + whatIf.unit(), "objective")
                .number("Difference", "difference");
        Outcome base = whatIf.sensitivity().base();
        row(table, base, base);
        whatIf.sensitivity().changed().forEach(outcome -> row(table, outcome, base));
        return new Section(
                "what-if",
                "What if",
                List.of(
                        new Tabular(table.build()),
                        new Prose("Each line is the best pattern of its own search, at the prices at which this log was"
                                + " sawn; a size more counts at its full price each time. The other logs and the list are"
                                + " left as they are.")));
    }

    private static double shown(Outcome outcome) {
        return Double.parseDouble(NumberText.fixed(outcome.objective(), 2));
    }

    private static void row(PlanTable.Builder table, Outcome outcome, Outcome base) {
        // Of the figures as shown, so that a reader who subtracts finds it.
        double difference = shown(outcome) - shown(base);
        String text = NumberText.fixed(difference, 2);
        table.row(
                Cell.text(outcome.what()),
                Cell.whole(outcome.pieces()),
                Cell.whole(outcome.passes()),
                Cell.number(outcome.lumberCubicMetres() / Volume.CUBIC_METRES_PER_CUBIC_FOOT, 2, 6),
                Cell.number(outcome.kerfCubicMetres() / Volume.CUBIC_METRES_PER_CUBIC_FOOT, 2, 6),
                Cell.number(outcome.objective(), 2),
                new Cell(difference > 0.005 ? "+" + text : text, Optional.of(difference), 2, false));
    }
}
