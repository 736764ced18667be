package org.woodyield.checks;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.woodyield.lumber.GreenTargetSize;
import org.woodyield.lumber.UndersizeZ;
import org.woodyield.measure.Length;
import org.woodyield.scaling.LogRule;
import org.woodyield.scaling.LogRules;
import org.woodyield.show.WorkingText;
import org.woodyield.wood.Face;
import org.woodyield.wood.ShrinkageModel;
import org.woodyield.wood.Species;
import org.woodyield.wood.SpeciesCatalogue;

/** The example of the README, and that it stands there as it is run here. */
class ReadmeTest {

    @Test
    void theExampleRuns() {
        LogRule rule = LogRules.byId("international-quarter");
        double boardFeet = rule.boardFeet(14, 12);
        String howSo = WorkingText.plain(rule.working(14, 12));

        Species pine = SpeciesCatalogue.published().find("eastern white pine");
        double shrinkage = ShrinkageModel.straightLine().percent(pine, Face.THICKNESS, 90, 15);
        GreenTargetSize thickness = GreenTargetSize.planedDry(
                Length.parse("1 1/2 in"),
                Length.parse("1/16 in"),
                shrinkage,
                UndersizeZ.exact(5),
                Length.parse("0.03 in"));
        Length setting = thickness.setting(Length.parse("1/16 in"));

        // By hand: 0.904762 x (0.66 x 14^2 - 1.47 x 14 - 0.79) = 97.7, to the nearest 5 bf.
        assertThat(boardFeet).isEqualTo(100);
        assertThat(howSo).contains("0.904762");
        // By hand: 6.1 % x 15/30 = 3.05 %; 1.5625 / 0.9695 + 1.645 x 0.03 = 1.661; the next sixteenth is 1 11/16.
        assertThat(setting).isEqualTo(Length.parse("1 11/16 in"));
    }

    @Test
    void itStandsInTheReadmeAsItIsRun() throws IOException {
        String here = squeezed(Files.readString(Path.of("src/test/java/org/woodyield/checks/ReadmeTest.java")));
        String readme = Files.readString(Path.of("../README.md"));
        String example = squeezed(
                readme.substring(readme.indexOf("```java") + 7, readme.indexOf("```", readme.indexOf("```java") + 7)));
        assertThat(example).isNotEmpty();
        assertThat(here).contains(example);
    }

    private static String squeezed(String text) {
        return text.replaceAll("\\s+", "");
    }
}
