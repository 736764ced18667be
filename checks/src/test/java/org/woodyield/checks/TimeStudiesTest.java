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
import java.util.Map;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.woodyield.show.NumberText;
import org.woodyield.work.TimeBreakdown;
import org.woodyield.work.WorkInput;
import org.woodyield.work.WorkInputs;

/** The time studies are all told, misses too; no ratio passes or fails. */
class TimeStudiesTest {

    private static final Path FILE = Path.of("src/main/resources/org/woodyield/checks/" + TimeStudies.FILE);
    private static final List<TimeStudies.Study> STUDIES = TimeStudies.read().studies();

    /** Not the digit of a unit. */
    private static final Pattern NUMBER = Pattern.compile("(?<![A-Za-z])\\d+(?:\\.\\d+)?");

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

    private static TimeStudies.Study study(String id) {
        return STUDIES.stream()
                .filter(study -> study.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    private static TimeBreakdown time(String id) {
        return study(id).predicted().flatMap(TimeStudies.Predicted::hours).orElseThrow();
    }

    private static double cutAlone(String id) {
        return study(id).predicted().flatMap(TimeStudies.Predicted::cutAlone).orElseThrow();
    }

    private static double value(String id) {
        return study(id).predicted().orElseThrow().value();
    }

    /** Minutes for the predicted volume at an observed rate. */
    private static double minutesAt(String id, double rate) {
        return value(id) * time(id).total() / rate;
    }

    private static double passes(String id) {
        return time(id).setting() / WorkInputs.bandDefaults().get(WorkInput.SETTING);
    }

    private static String rounded(double value) {
        return String.valueOf(Math.round(value));
    }

    private static String significant(double value) {
        return NumberText.significant(value, 2);
    }

    /** All numbers in the words are those of the prediction and its parts, in this order. */
    @Test
    void everyNumberInTheWordsOfACauseComesFromTheParts() {
        TimeBreakdown kenya = time("kenya-chain-time");
        TimeBreakdown ghana = time("ghana-tree");
        TimeBreakdown mill = time("small-log-mill");
        TimeBreakdown beech = time("beech-band-lumber");
        List<Double> rates = study("small-log-mill").observed();
        double beechRate = study("beech-band-lumber").observed().get(0);
        double handling = ghana.setting()
                + ghana.guide()
                + ghana.carrying()
                + ghana.warmUp()
                + ghana.coolDown()
                + ghana.refuelling()
                + ghana.sharpening()
                + ghana.rest();
        Map<String, List<String>> numbers = Map.of(
                "kenya-chain-time",
                List.of(
                        rounded(100 * (kenya.setting() + kenya.guide() + kenya.carrying()) / kenya.total()),
                        rounded(100 * (kenya.rest() + kenya.warmUp() + kenya.coolDown()) / kenya.total()),
                        rounded(100
                                * cutAlone("kenya-chain-time")
                                / study("kenya-chain-time").observed().get(0))),
                "kenya-chain-fuel",
                List.of(rounded(100 * cutAlone("kenya-chain-fuel") / value("kenya-chain-fuel"))),
                "ghana-tree",
                List.of(significant(handling / ghana.cutting())),
                "small-log-mill",
                List.of(
                        significant(value("small-log-mill") * mill.total() / 60),
                        NumberText.fixed(minutesAt("small-log-mill", rates.get(1)), 1),
                        rounded(minutesAt("small-log-mill", rates.get(0))),
                        rounded(mill.total()),
                        significant(mill.cutting()),
                        rounded(mill.loading()),
                        rounded(mill.setting() + mill.carrying()),
                        rounded(passes("small-log-mill"))),
                "beech-band-lumber",
                List.of(
                        rounded(minutesAt("beech-band-lumber", beechRate)),
                        rounded(beech.setting() + beech.carrying()),
                        rounded(passes("beech-band-lumber")),
                        rounded(beech.cutting())),
                "beech-band-logs",
                List.of(rounded(minutesAt("beech-band-logs", beechRate)), rounded(beech.cutting())));
        for (TimeStudies.Study study : STUDIES) {
            study.cause()
                    .ifPresent(cause -> assertThat(NUMBER.matcher(cause.why())
                                    .results()
                                    .map(MatchResult::group)
                                    .toList())
                            .as(study.id())
                            .isEqualTo(numbers.getOrDefault(study.id(), List.of())));
        }
    }

    /** The page takes handling for the first cause of the rows of time. */
    @Test
    void theCutAloneLiesNearerToWhatWasObserved() {
        for (TimeStudies.Study study : STUDIES) {
            study.predicted().filter(figure -> figure.hours().isPresent()).ifPresent(figure -> {
                double observed = StrictMath.sqrt(
                        study.observed().get(0) * study.observed().get(1));
                double cut = StrictMath.log(figure.cutAlone().orElseThrow() / observed);
                assertThat(Math.abs(cut))
                        .as(study.id())
                        .isLessThan(Math.abs(StrictMath.log(figure.value() / observed)) / 2);
            });
        }
    }

    /** What is said of how others work is marked, here and on the page. */
    @Test
    void whatNobodyPublishedIsMarked() throws IOException {
        for (String id : List.of("ghana-tree", "small-log-mill")) {
            assertThat(study(id).whyWords()).contains("is common practice, no source.");
        }
        assertThat(STUDIES).noneMatch(study -> study.whyWords().contains("practice:"));
        assertThat(Files.readString(
                        FILE.resolveSibling("book").resolve("time-studies.mustache"), StandardCharsets.UTF_8))
                .containsPattern(
                        "crews, mills with a deck and sawyers without a guide [^.]* is common practice, no source\\.");
    }
}
