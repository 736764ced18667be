package org.woodyield.checks;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The time studies are all told, misses too; no ratio passes or fails. */
class TimeStudiesTest {

    private static final Path FILE = Path.of("src/main/resources/org/woodyield/checks/" + TimeStudies.FILE);
    private static final List<TimeStudies.Study> STUDIES = TimeStudies.read().studies();

    @TempDir
    Path folder;

    @Test
    void everyStudyIsPredictedWithWhatWasTakenOrSaysWhyNot() throws IOException {
        String rows = Files.readAllLines(FILE).get(0);
        assertThat(rows).isEqualTo("# rows: " + STUDIES.size());
        assertThat(STUDIES).extracting(TimeStudies.Study::id).doesNotHaveDuplicates();
        for (TimeStudies.Study study : STUDIES) {
            if (study.predicted().isPresent()) {
                TimeStudies.Predicted figure = study.predicted().get();
                assertThat(study.taken()).as(study.id()).isNotBlank();
                assertThat(study.whyNot()).as(study.id()).isBlank();
                assertThat(study.observed()).as(study.id()).hasSize(2).allMatch(each -> each > 0);
                assertThat(figure.least()).as(study.id()).isPositive().isLessThan(figure.value());
                assertThat(figure.greatest()).as(study.id()).isGreaterThan(figure.value());
            } else {
                assertThat(study.whyNot()).as(study.id()).isNotBlank();
                assertThat(study.ratioWords()).isEqualTo("–");
            }
        }
    }

    /** Chosen before the first run; a change has to be meant, and the page then has to say so. */
    @Test
    void theInputsAreTheFrozenOnes() throws IOException, NoSuchAlgorithmException {
        String text = Files.readString(FILE).replace("\r\n", "\n");
        byte[] digest = MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
        assertThat(HexFormat.of().formatHex(digest))
                .isEqualTo("0957e71fe349c77a7c1bb67b2ffa9a5829d4c6d8061e51ede9980d3e1dc0ad21");
    }

    @Test
    void thePageTellsEachWithItsRatio() throws IOException {
        Book.write(Run.of(Catalogue.all(), CheckTables.all()), folder);
        String page = Files.readString(folder.resolve("time-studies.html"));
        assertThat(page).contains("Nothing passes or fails here");
        for (TimeStudies.Study study : STUDIES) {
            assertThat(page).contains("<th scope=\"row\">" + study.id() + "</th>");
            assertThat(page).contains("<td class=\"number\">" + study.ratioWords() + "</td>");
        }
    }

    /** The ratio is that of the figures that stand beside it. */
    @Test
    void predictedOverObservedIsTheirQuotient() {
        for (TimeStudies.Study study : STUDIES) {
            study.predicted().ifPresent(figure -> {
                List<Double> ratios = List.of(study.ratioWords().split("; ")).stream()
                        .map(Double::valueOf)
                        .toList();
                List<Double> observed = study.observed().stream().distinct().toList();
                assertThat(ratios).hasSameSizeAs(observed);
                for (int i = 0; i < ratios.size(); i++) {
                    double ratio = figure.value() / observed.get(i);
                    assertThat(ratios.get(i)).isBetween(ratio * 0.94, ratio * 1.06);
                }
            });
        }
    }

    /** A saw that did nothing but cut would do no less in an hour. */
    @Test
    void theCutAloneBoundsThePrediction() {
        for (TimeStudies.Study study : STUDIES) {
            study.predicted().flatMap(TimeStudies.Predicted::cutAlone).ifPresent(cut -> {
                double value = study.predicted().orElseThrow().value();
                boolean more = study.unit().contains("/") && !study.unit().startsWith("L");
                assertThat(more ? cut > value : cut < value).as(study.id()).isTrue();
            });
        }
    }
}
