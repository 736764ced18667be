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
                assertThat(study.causeWords()).as(study.id()).isNotBlank().isNotEqualTo("–");
                assertThat(study.whyWords()).as(study.id()).isNotBlank().isNotEqualTo("–");
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

    /** What the page says of all rows of time, and the class of the cause that the figures themselves show. */
    @Test
    void everyPredictionOfTimeIsSlowAndTheCauseFitsTheCutAlone() {
        for (TimeStudies.Study study : STUDIES) {
            study.predicted().filter(figure -> figure.hours().isPresent()).ifPresent(figure -> {
                double slowest = study.observed().get(0);
                double fastest = study.observed().get(1);
                double cut = figure.cutAlone().orElseThrow();
                boolean rate = study.unit().contains("/");
                assertThat(rate ? figure.value() < slowest : figure.value() > fastest)
                        .as(study.id())
                        .isTrue();
                boolean cutShort = rate ? cut < slowest : cut > fastest;
                assertThat(study.causeWords().contains("cut too slow"))
                        .as(study.id())
                        .isEqualTo(cutShort);
            });
        }
    }

    /** The figures in the words about the farthest miss are those of the prediction. */
    @Test
    void theFarthestMissIsWorkedThrough() {
        TimeStudies.Study mill = STUDIES.stream()
                .filter(study -> study.id().equals("small-log-mill"))
                .findFirst()
                .orElseThrow();
        TimeStudies.Predicted figure = mill.predicted().orElseThrow();
        double minutes = figure.hours().orElseThrow().total();
        double lumber = figure.value() * minutes / 60;
        assertThat(minutes).isBetween(51.5, 52.5 + 0.1);
        assertThat(lumber).isBetween(0.0385, 0.0395);
        assertThat(60 * lumber / mill.observed().get(1)).isBetween(0.75, 0.85);
        assertThat(60 * lumber / mill.observed().get(0)).isBetween(7.5, 8.5);
        assertThat(mill.whyWords()).contains("0.039 m3", "52 min", "2.7 min is the cut", "0.8 to 8 min");
    }
}
