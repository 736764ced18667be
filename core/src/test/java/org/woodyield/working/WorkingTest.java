package org.woodyield.working;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.woodyield.measure.Rounding;
import org.woodyield.source.Source;
import org.woodyield.source.Sources;

class WorkingTest {

    private static final Source TRADE = Sources.get("trade");

    private static Working.Builder board() {
        return Working.of("board feet of a board")
                .given("T", "nominal thickness", 1, "in")
                .given("W", "nominal width", 5.5, "in")
                .constant("k", "square inches and feet to the board foot", 12, "", TRADE)
                .lookup("L", "length", "third row", 7, "ft", TRADE);
    }

    @Test
    void theResultIsWhatTheLastLineSays() {
        Working working = board().step("v", "board feet", "T * W * L / k", "bf", TRADE)
                .round("r", "tallied", "v", Rounding.HALF_UP, 1, "bf", TRADE)
                .note("widths are nominal")
                .build();
        assertThat(working.title()).isEqualTo("board feet of a board");
        assertThat(working.lines()).extracting(Working.Line::symbol).containsExactly("T", "W", "k", "L", "v", "r");
        assertThat(working.value("v")).isEqualTo(1 * 5.5 * 7 / 12);
        assertThat(working.value()).isEqualTo(3);
        assertThat(working.result().unit()).isEqualTo("bf");
        assertThat(working.notes()).containsExactly("widths are nominal");
        assertThat(working.lines().get(0).source().id()).isEqualTo("given");
        Working told = working.givenBy(Sources.get("user"));
        assertThat(told.lines())
                .extracting(line -> line.source().id())
                .doesNotContain("given")
                .contains("user");
        assertThat(told.lines())
                .extracting(Working.Line::value)
                .isEqualTo(working.lines().stream().map(Working.Line::value).toList());
        assertThat(told.notes()).isEqualTo(working.notes());
        assertThat(working.lines().get(2).source()).isEqualTo(TRADE);
        assertThatThrownBy(() -> working.value("x")).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void aStepKeepsWhatItWasComputedFrom() {
        Working working =
                board().step("v", "board feet", "T * W * L / k", "bf", TRADE).build();
        Working.Step step = (Working.Step) working.result();
        assertThat(step.inputs())
                .containsExactly(Map.entry("T", 1.0), Map.entry("W", 5.5), Map.entry("L", 7.0), Map.entry("k", 12.0));
        assertThat(step.formula().evaluate(step.inputs())).isEqualTo(step.value());
        assertThatThrownBy(() -> step.inputs().clear()).isInstanceOf(UnsupportedOperationException.class);
        Map<String, Double> own = new HashMap<>(Map.of("T", 1.0));
        Working.Step copy = new Working.Step("v", "", step.formula(), own, 1, "", TRADE);
        own.put("T", 2.0);
        assertThat(copy.inputs()).containsEntry("T", 1.0);
    }

    @Test
    void aSymbolNeedsAValueBeforeItIsUsed() {
        assertThatThrownBy(() -> board().step("v", "", "T * Q", "", TRADE)).hasMessage("the symbol Q has no value");
        assertThatThrownBy(() -> board().round("r", "", "Q", Rounding.UP, 1, "", TRADE))
                .hasMessage("the symbol Q has no value yet");
        assertThatThrownBy(() -> Working.of("nothing").build()).isInstanceOf(IllegalStateException.class);
    }

    @Test
    void theLatestValueOfASymbolCounts() {
        Working working = Working.of("twice")
                .given("x", "first", 1, "")
                .step("x", "second", "x + 1", "", TRADE)
                .step("x", "third", "x * 5", "", TRADE)
                .build();
        assertThat(working.value("x")).isEqualTo(10);
    }

    @Test
    void aBuilderThatGoesOnDoesNotChangeWhatItBuilt() {
        Working.Builder builder = board();
        Working before = builder.build();
        builder.note("later").given("z", "later", 1, "");
        assertThat(before.lines()).hasSize(4);
        assertThat(before.notes()).isEmpty();
    }
}
