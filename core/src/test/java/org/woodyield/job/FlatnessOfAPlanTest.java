package org.woodyield.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a job says of its guide, and what the plan then says of flat lumber. */
class FlatnessOfAPlanTest {

    private static final String LENGTH = "saw.guide-length = 16 ft\n";
    private static final String DIP = "saw.guide-dip = 1/16 in\n";
    private static final String WIND = "saw.guide-wind = 0.2 degrees\n";
    private static final String SPAN = "saw.guide-tested-span = 8 ft\n";
    private static final String SAG = "saw.guide-tested-dip = 1/8 in\n";
    private static final String BASE = "saw.carriage-base = 14 in\n";
    private static final List<String> ALL = List.of(LENGTH, DIP, WIND, SPAN, SAG, BASE);

    @TempDir
    Path folder;

    private EditedDemo job;

    @BeforeEach
    void aSmallJob() {
        job = EditedDemo.small(folder.resolve("job"));
    }

    private void put(String old, String changed) {
        job.with("job.properties", old, changed);
    }

    private List<Map<String, String>> table(String name) throws IOException {
        Path out = folder.resolve("plan");
        if (!Files.exists(out)) {
            assertThat(job.run("--out", out.toString()).err()).contains("the plan stands in");
        }
        List<String> lines = Files.readAllLines(out.resolve("plan-" + name + ".csv"));
        String[] header = lines.get(0).split(",", -1);
        List<Map<String, String>> rows = new ArrayList<>();
        for (String line : lines.subList(1, lines.size())) {
            String[] cells = line.split(",", -1);
            Map<String, String> row = new HashMap<>();
            for (int i = 0; i < header.length; i++) {
                row.put(header[i], cells[i]);
            }
            rows.add(row);
        }
        return rows;
    }

    private static String text(Map<String, String> row, String column) {
        return row.getOrDefault(column, "no such column");
    }

    private static double number(Map<String, String> row, String column) {
        return Double.parseDouble(text(row, column));
    }

    /** Worked out once more from the sizes in the table of pieces. */
    @Test
    void everyPlanedPieceCarriesTheGuideByItsOwnWidthAndLength() throws IOException {
        put(DIP, "saw.guide-dip = 1/8 in\n");
        Map<String, Double> most = new HashMap<>();
        Map<String, Integer> under = new HashMap<>();
        int planed = 0;
        for (Map<String, String> piece : table("pieces")) {
            if (text(piece, "wanted").equals("post")) {
                assertThat(text(piece, "flat-lost-mm"))
                        .as("rough pieces have no allowance")
                        .isEmpty();
                continue;
            }
            planed++;
            double share = number(piece, "length-mm") / (16 * 304.8);
            double wind = number(piece, "width-mm") * Math.toRadians(0.2 * share) / 2;
            double arc = 3.175 * share * share;
            double u = Math.min(1, wind / (4 * arc));
            double loss = wind / 2 + arc * (1 - u * u) + u * wind / 2;
            assertThat(number(piece, "flat-lost-mm")).isCloseTo(loss, within(0.001));
            assertThat(number(piece, "of-planing-percent")).isCloseTo(100 * loss / 1.5875, within(0.01));
            most.merge(text(piece, "log"), loss, Math::max);
            under.merge(text(piece, "log"), loss > 1.5875 ? 1 : 0, Integer::sum);
        }
        assertThat(planed).isPositive();
        for (Map<String, String> log : table("flatness")) {
            String id = text(log, "log");
            if (most.containsKey(id)) {
                assertThat(number(log, "most-lost-mm")).isCloseTo(most.getOrDefault(id, 0.0), within(0.001));
                assertThat((int) number(log, "under-target")).isEqualTo(under.getOrDefault(id, 0));
            } else {
                assertThat(text(log, "remark")).isEqualTo("nothing is planed");
            }
        }
    }

    @Test
    void aBadGuideLeavesPiecesUnderTheirTarget() throws IOException {
        put(DIP, "saw.guide-dip = 1 in\n");
        assertThat(job.run().out()).contains("straighten");
        assertThat(table("flatness"))
                .anySatisfy(row -> assertThat(text(row, "remark")).isEqualTo("some under target"))
                .noneSatisfy(row -> assertThat(text(row, "remark")).isEqualTo("all hold"));
    }

    @Test
    void supportsStandNoFartherApartThanTheTestAllows() throws IOException {
        // A quarter of 1/16 in is an eighth of the tested dip: half the tested span, 4 ft.
        for (Map<String, String> row : table("guide-supports")) {
            assertThat(number(row, "guide-mm")).isCloseTo(100 * 25.4 + 2 * 14 * 25.4, within(0.01));
            assertThat(number(row, "supports")).isEqualTo(4);
            double apart = number(row, "guide-mm") / 3;
            assertThat(number(row, "apart-mm")).isCloseTo(apart, within(0.01));
            assertThat(number(row, "dip-mm")).isCloseTo(3.175 * Math.pow(apart / (8 * 304.8), 3), within(0.001));
        }
    }

    @Test
    void withoutTheKeysThePlanSaysWhichWouldTellMore() throws IOException {
        ALL.forEach(key -> put(key, ""));
        String out = job.run().out().replaceAll("\\s+", " ");
        assertThat(out)
                .contains("when saw.guide-length, saw.guide-dip and saw.guide-wind say how the guide lies")
                .contains("saw.guide-tested-span and saw.guide-tested-dip", "saw.carriage-base is given");
        assertThat(table("pieces").get(0)).doesNotContainKey("flat-lost-mm");
        assertThat(text(table("flatness").get(0), "under-target")).isEmpty();
        assertThat(number(table("flatness").get(0), "dip-allowed-mm")).isPositive();
    }

    @Test
    void overABedAPassHarmsItsTwoSides() throws IOException {
        ALL.forEach(key -> put(key, ""));
        put("saw.rides = previous face", "saw.rides = bed\nsaw.wander = 1/8 in");
        for (Map<String, String> row : table("flatness")) {
            assertThat(number(row, "harmed-badly-laid")).isGreaterThanOrEqualTo(number(row, "harmed"));
            // An eighth of an inch is more than the sixteenth that planing takes.
            assertThat(text(row, "under-target")).isEqualTo(text(row, "harmed"));
        }
        assertThat(table("flatness"))
                .anySatisfy(row -> assertThat(number(row, "harmed")).isPositive());
    }

    @Test
    void keysThatDoNotFitAreRefusedAndTheRemedyWorks() {
        put(LENGTH, "");
        refused("saw.guide-dip: '1/16 in'", "only together with saw.guide-length", "such as 14 ft");
        put(DIP, DIP + "saw.guide-length = 14 ft\n");
        assertThat(job.run("--check").code()).isZero();
        put(SAG, "");
        refused("saw.guide-tested-span: '8 ft'", "only together with saw.guide-tested-dip");
        put(SPAN, "");
        put(DIP, "saw.guide-dip = -1 in\n");
        refused("saw.guide-dip: '-1 in'");
        put("saw.guide-dip = -1 in\n", "");
        put("saw.guide-length = 14 ft\n", "");
        refused("saw.guide-wind", "only together with saw.guide-dip");
        put(WIND, "saw.wander = 1/8 in\n");
        refused("saw.wander: '1/8 in'", "only for a saw that rides a fixed bed", "take the key out");
        put("saw.rides = previous face", "saw.rides = bed");
        refused("saw.carriage-base", "only for a saw that rides the face cut before", "take the key out");
        put(BASE, "");
        assertThat(job.run("--check").code()).isZero();
        put("finish.flatness-share = 25 %", "finish.flatness-share = 0 %");
        refused("finish.flatness-share: '0 %'", "0.1 to 100");
    }

    private void refused(String... parts) {
        Run run = job.run("--check");
        assertThat(run.err()).contains(parts);
        assertThat(run.code()).isEqualTo(2);
    }
}
