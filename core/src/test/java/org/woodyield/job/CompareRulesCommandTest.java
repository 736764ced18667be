package org.woodyield.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CompareRulesCommandTest {

    @TempDir
    Path folder;

    @Test
    void rulesStandBesideEachOtherWithTheEffectOfAMisreadDiameter() {
        Run run = Run.of("compare-rules", "--rules", "doyle,international-quarter", "--from", "8 in", "--to", "20 in");
        assertThat(run.code()).isZero();
        // By hand, Doyle at 16 ft: (8 - 4)^2 = 16 and (20 - 4)^2 = 256.
        assertThat(run.out())
                .containsPattern("(?m)^ *doyle +published +16 .* 256$")
                .doesNotContain("scribner");
        // Doyle at 15 in: (16 - 4)^2 / (15 - 4)^2 = 1.190.
        assertThat(run.out()).containsPattern("(?m)^ *doyle .* 19\\.0$");
    }

    @Test
    void thePageAndTheTableHoldEveryRuleThatIsOffered() throws IOException {
        Path out = folder.resolve("out");
        Run run = Run.of("compare-rules", "--out", out.toString());
        assertThat(run.code()).isZero();
        List<String> lines = Files.readAllLines(out.resolve("rules.csv"));
        assertThat(lines).contains("doyle,published,small end,6,16.00,4.00,-43.75,56.25,-75.00,125.00,");
        assertThat(Files.readString(out.resolve("rules.html")))
                .contains("<svg", "international-eighth", "MEMORY")
                .doesNotContain("<script");
        assertThat(Run.of("compare-rules", "--out", out.toString()).code()).isEqualTo(Main.INPUT);
        assertThat(Run.of("compare-rules", "--out", out.toString(), "--replace").code())
                .isZero();
    }

    @Test
    void aPanelWithoutACurveSaysWhy() throws IOException {
        Path out = folder.resolve("empty");
        // The statute has one section of up to 12 ft.
        Run.of("compare-rules", "--rules", "vermont,doyle", "--length", "20 ft", "--out", out.toString());
        assertThat(Files.readString(out.resolve("rules.html"))).containsPattern(">for \\d+ to \\d+ ft only<");
        Path thick = folder.resolve("thick");
        // The table of the diagram rule ends at 44 in.
        Run.of(
                "compare-rules",
                "--rules",
                "scribner-diagram,doyle",
                "--from",
                "50 in",
                "--to",
                "60 in",
                "--out",
                thick.toString());
        assertThat(Files.readString(thick.resolve("rules.html"))).contains(">not for these diameters<");
    }

    @Test
    void aRuleThatAnswersAtOneDiameterOnlyIsDrawnAsACross() throws IOException {
        Path out = folder.resolve("lone");
        // The table of the diagram rule ends at 44 in.
        Run.of(
                "compare-rules",
                "--rules",
                "scribner-diagram",
                "--from",
                "44 in",
                "--to",
                "46 in",
                "--out",
                out.toString());
        assertThat(Files.readString(out.resolve("rules.html")))
                .containsPattern("d=\"M[\\d.]+ [\\d.]+h7M[\\d.]+ [\\d.]+v7\"");
    }

    @Test
    void badInputIsRefusedAllTogether() {
        Run run = Run.of("compare-rules", "--rules", "doile", "--length", "16", "--from", "6.5 in");
        assertThat(run.code()).isEqualTo(Main.INPUT);
        assertThat(run.err()).contains("doile", "add the unit", "whole inches");
        assertThat(Run.of("compare-rules", "--from", "20 in", "--to", "8 in").err())
                .contains("give the lesser diameter first");
        assertThat(Run.of("compare-rules", "--length", "900 ft").err()).contains("try 16 ft");
        assertThat(Run.of("compare-rules", "--replace").code()).isEqualTo(Main.INPUT);
    }
}
