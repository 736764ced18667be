package org.woodyield.show;

import java.util.List;
import org.woodyield.working.Working;

/** A part of a plan as it is shown; text and page are made from the same parts. */
sealed interface Block {

    /** A heading with what belongs under it. */
    record Section(String id, String title, List<Block> blocks) implements Block {
        public Section {
            blocks = List.copyOf(blocks);
        }
    }

    /** A paragraph. */
    record Prose(String text) implements Block {}

    /** A paragraph that must not be overlooked. */
    record Warning(String text) implements Block {}

    /** Sentences one below the other. */
    record Points(List<String> lines) implements Block {
        public Points {
            lines = List.copyOf(lines);
        }
    }

    /** Key figures, each with its name and what it counts. */
    record Facts(List<Fact> facts) implements Block {
        public Facts {
            facts = List.copyOf(facts);
        }
    }

    /** One key figure. */
    record Fact(String name, String value, String note) {}

    /** A table. */
    record Tabular(PlanTable table) implements Block {}

    /** A drawing; only a page shows it. */
    record Figure(String svg, String caption) implements Block {}

    /** How figures came about, folded away on a page; a text leaves it out. */
    record Workings(String title, List<Derivation> derivations) implements Block {
        public Workings {
            derivations = List.copyOf(derivations);
        }
    }

    /** A working and what it is the working of. */
    record Derivation(String title, Working working) {
        Derivation alsoOf(String another) {
            return new Derivation(title + "; " + another, working);
        }
    }
}
