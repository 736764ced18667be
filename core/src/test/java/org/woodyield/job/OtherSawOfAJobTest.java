package org.woodyield.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowable;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.plan.JobInput;
import org.woodyield.plan.JobPlan;
import org.woodyield.plan.Planner;
import org.woodyield.work.SupplyWay;
import org.woodyield.work.SupplyWays;
import org.woodyield.work.WorkInput;

/** Buying another saw, as one of the ways to come by the lumber of a job. */
class OtherSawOfAJobTest {

    private static final String FILE = "other-saw.properties";

    @TempDir
    private Path folder;

    private EditedDemo job() {
        return EditedDemo.small(folder.resolve("job"));
    }

    private static JobPlan plan(EditedDemo job) throws IOException {
        return Planner.plan(JobReader.read(new JobFiles.Folder(job.folder())));
    }

    /** How many patterns a plan is told to search at most. */
    private static Set<Integer> mostPatterns(EditedDemo job) throws IOException {
        Set<Integer> told = new HashSet<>();
        Planner.plan(JobReader.read(new JobFiles.Folder(job.folder())), (done, most) -> told.add(most), Runnable::run);
        return told;
    }

    private static JobPlan.Ways ways(JobPlan plan) {
        return plan.ways().orElseThrow();
    }

    private static String words(EditedDemo job) {
        Run run = Run.of(job.folder().toString());
        assertThat(run.code()).isZero();
        return run.out().replaceAll("\\s+", " ");
    }

    private static Optional<SupplyWay> other(SupplyWays ways) {
        return ways.ways().stream()
                .filter(way -> way.kind() == SupplyWay.Kind.OTHER_SAW)
                .findFirst();
    }

    /** The saw of the job, as a file of another saw. */
    private static EditedDemo withTheSameSaw(EditedDemo job) {
        List<String> keys = Keys.ofSaw().stream().map(Key::text).toList();
        StringBuilder text = new StringBuilder();
        for (String line : job.text("job.properties").split("\n", -1)) {
            if (keys.stream().anyMatch(key -> line.startsWith(key + " ="))) {
                text.append(line.startsWith("saw.name") ? "saw.name = its twin" : line)
                        .append('\n');
            }
        }
        return job.write(FILE, text.toString().getBytes(StandardCharsets.UTF_8));
    }

    @Test
    void itStandsAmongTheWaysWithItsIntervalAndShare() throws IOException {
        JobPlan plan = plan(job());
        SupplyWays ways = ways(plan).workFree();
        int place = ways.ways().indexOf(other(ways).orElseThrow());
        assertThat(ways(plan).free().costs().get(place).drawn()).isPresent();
        assertThat(ways(plan).free().cheapestShare(place)).isPresent();
        assertThat(ways(plan).other().orElseThrow().name()).isEqualTo("small band mill");
        assertThat(ways.crossings())
                .anySatisfy(pair -> assertThat(pair.other().kind()).isEqualTo(SupplyWay.Kind.OTHER_SAW));
    }

    @Test
    void withoutTheFileThereIsNoSuchWay() throws IOException {
        JobPlan plan = plan(job().without(FILE));
        assertThat(ways(plan).other()).isEmpty();
        assertThat(other(ways(plan).workFree())).isEmpty();
        assertThat(ways(plan).workFree().leftOut()).isEmpty();
    }

    /** A twin of the saw saws the same lumber at the same cost, in every draw. */
    @Test
    void aTwinOfTheSawCostsTheSame() throws IOException {
        JobPlan plan = plan(withTheSameSaw(job()));
        JobPlan.OtherSaw twin = ways(plan).other().orElseThrow();
        assertThat(twin.usable()).isEqualTo(plan.usable());
        assertThat(twin.serves()).isEqualTo(plan.usable());
        assertThat(twin.bought()).isZero();
        for (SupplyWays side : List.of(ways(plan).workFree(), ways(plan).workValued())) {
            SupplyWay own = side.ways().stream()
                    .filter(way -> way.kind() == SupplyWay.Kind.OWN_SAW)
                    .findFirst()
                    .orElseThrow();
            SupplyWay its = other(side).orElseThrow();
            assertThat(its.fixed()).isEqualTo(own.fixed());
            assertThat(its.perBoardFoot()).isEqualTo(own.perBoardFoot());
        }
    }

    @Test
    void twinsAreNotCalledTheCheaperOfTwo() {
        EditedDemo job = withTheSameSaw(job());
        Run run = Run.of("compare-saws", job.folder().toString());
        assertThat(run.out().replaceAll("\\s+", " "))
                .contains("cost the same at every volume.")
                .doesNotContain("is the cheaper of the two");
    }

    /** With a kerf of an inch: what lacks is bought, each thing at its own price. */
    @Test
    void whatItMakesLessIsBoughtAtItsPrice() throws IOException {
        EditedDemo job = job().with(FILE, "saw.kerf = 1/16 in", "saw.kerf = 1 in")
                .write("prices.csv", """
                        size,wood,price
                        any,softwood,2 per bf
                        any,hardwood,5 per bf
                        """.getBytes(StandardCharsets.UTF_8));
        JobPlan plan = plan(job);
        JobPlan its = Planner.plan(plan.input()
                .otherSaw()
                .map(other -> plan.input().withSaw(other.saw(), other.work()))
                .orElseThrow());
        double serves = 0;
        double bought = 0;
        double spent = 0;
        for (int i = 0; i < plan.supply().size(); i++) {
            String id = plan.supply().get(i).wantedId();
            double own = usable(plan, id);
            double other = usable(its, id);
            // Nothing here is sawn beyond the need, so all of it counts in full.
            assertThat(plan.supply().get(i).surplus()).isZero();
            serves += Math.min(own, other);
            bought += Math.max(0, own - other);
            spent += Math.max(0, own - other) * (id.equals("stud") ? 2 : 5);
        }
        JobPlan.OtherSaw told = ways(plan).other().orElseThrow();
        assertThat(bought).isPositive();
        assertThat(told.bought()).isCloseTo(bought, within(1e-9));
        assertThat(told.serves().value()).isCloseTo(serves, within(1e-9));
        assertThat(told.price().orElseThrow().amount() * bought).isCloseTo(spent, within(1e-9));
        assertThat(other(ways(plan).workFree()).orElseThrow().name()).contains("buying what lacks");
    }

    private static double usable(JobPlan plan, String id) {
        return plan.fallDown().stream()
                .filter(lot -> lot.wantedId().equals(id))
                .mapToDouble(lot -> lot.stages().usable().value())
                .sum();
    }

    /** Setting the saws the other way round changes their names and not the number of jobs after which they change places. */
    @Test
    void theTwoSawsChangePlacesAtTheSameVolumeTheOtherWayRound() throws IOException {
        JobPlan plan = plan(
                job().with("job.properties", "money.planing-price = 0.12 per bf\n", "money.planing-price = 0 per bf\n")
                        .with("job.properties", "money.grader-rate = 0.05 per bf\n", "money.grader-rate = 0 per bf\n"));
        JobInput.OtherSaw other = plan.input().otherSaw().orElseThrow();
        JobInput turned = plan.input()
                .withSaw(other.saw(), other.work())
                .withOtherSaw(Optional.of(
                        new JobInput.OtherSaw(plan.input().saw(), plan.input().work())));
        double jobs = graded(ways(plan).workFree()) / plan.usable().value();
        JobPlan round = Planner.plan(turned);
        assertThat(graded(ways(round).workFree()) / round.usable().value()).isCloseTo(jobs, within(1e-6 * jobs));
    }

    private static double graded(SupplyWays ways) {
        return ways.crossings().stream()
                .filter(pair ->
                        pair.one().use() == SupplyWay.Use.GRADED && pair.other().use() == SupplyWay.Use.GRADED)
                .filter(pair -> List.of(SupplyWay.Kind.OWN_SAW, SupplyWay.Kind.OTHER_SAW)
                        .containsAll(List.of(pair.one().kind(), pair.other().kind())))
                .findFirst()
                .orElseThrow()
                .volumes()
                .get(0)
                .value();
    }

    /** A saw that is owned already costs nothing to buy, and its years have nothing to pay back. */
    @Test
    void sawsThatAreOwnedAlreadyArePlanned() throws IOException {
        EditedDemo job = job();
        for (String line : List.of("money.purchase = 1150", "money.other-outlay = 240", "money.resale = 450")) {
            job.with("job.properties", line, line.replaceFirst("= .*", "= 0"));
        }
        for (String line : List.of("money.purchase = 5200", "money.other-outlay = 350", "money.resale = 2600")) {
            job.with(FILE, line, line.replaceFirst("= .*", "= 0"));
        }
        assertThat(words(job)).contains("the savings pay the outlay in 0.0 years");
        assertThat(Run.of("compare-saws", job.folder().toString()).code()).isZero();
        JobPlan plan = plan(job);
        assertThat(plan.prospects().paidFree().orElseThrow().value()).isEqualTo(1);
    }

    @Test
    void aSawThatCanSawNoLogIsLeftOutAndThePlanGoesOn() throws IOException {
        EditedDemo job = job().with(FILE, "saw.width-of-cut = 26 in", "saw.width-of-cut = 2 in");
        JobPlan plan = plan(job);
        assertThat(plan.usable().value()).isPositive();
        assertThat(other(ways(plan).workFree())).isEmpty();
        assertThat(ways(plan).other().orElseThrow().leftOut()).isPresent();
        assertThat(words(job)).contains("Another saw, small band mill: left out, it can saw none of the logs:");
    }

    /** What is wrong with another saw alone leaves the plan of the saw of the job as it is without that saw. */
    @Test
    void aKerfThatIsTooWideLeavesTheOtherSawOutAndThePlanAsItIs() throws IOException {
        EditedDemo job =
                job().with("wanted.csv", "stud,2x4", "stud,1x4").with(FILE, "saw.kerf = 1/16 in", "saw.kerf = 45 mm");
        JobPlan plan = plan(job);
        assertThat(words(job))
                .contains(
                        "Another saw, small band mill: left out, its kerf of 45 mm is too wide: stud is only 1 in thick");
        assertThat(other(ways(plan).workFree())).isEmpty();
        assertThat(plan.supply())
                .isEqualTo(plan(job().with("wanted.csv", "stud,2x4", "stud,1x4").without(FILE))
                        .supply());
        assertThat(mostPatterns(job().with("wanted.csv", "stud,2x4", "stud,1x4")
                        .with(FILE, "saw.kerf = 1/16 in", "saw.kerf = 45 mm")))
                .as("its patterns are not waited for")
                .isEqualTo(mostPatterns(
                        job().with("wanted.csv", "stud,2x4", "stud,1x4").without(FILE)));
        job = job().with("wanted.csv", "stud,2x4", "stud,1x4").with(FILE, "saw.kerf = 1/16 in", "saw.kerf = 45 mm");
        Run check = job.run("--check");
        assertThat(check.code()).isZero();
        assertThat(check.out()).contains("The other saw would be left out of the plan, its kerf of 45 mm is too wide");
        // A comparison of saws has nothing to compare then.
        Run compared = Run.of("compare-saws", job.folder().toString());
        assertThat(compared.code()).isEqualTo(Main.INPUT);
        assertThat(compared.err()).contains(FILE, "saw.kerf: '45 mm'");
    }

    /** Up to the next setting the kerf is wider than any that is searched with; the plan of the saw of the job is not asked that. */
    @Test
    void whatIsRefusedInPlanningTheOtherSawLeavesItOut() {
        EditedDemo job = job().with(FILE, "saw.kerf = 1/16 in", "saw.kerf = 50 mm");
        assertThat(words(job)).contains("Another saw, small band mill: left out, it cannot be planned: kerf is 50 mm;");
    }

    @Test
    void whatItLacksIsNamedWithItsFile() throws IOException {
        EditedDemo job = job().with(FILE, "money.purchase = 5200\n", "").with(FILE, "money.other-outlay = 350\n", "");
        assertThat(words(job))
                .contains(
                        "Another saw: left out, no price of the saw (money.purchase in other-saw.properties)," + " no")
                .doesNotContain("Prices are missing");
        JobPlan plan = plan(job);
        assertThat(ways(plan).workFree().leftOut())
                .singleElement()
                .satisfies(
                        out -> assertThat(out.missing()).containsExactly(WorkInput.PURCHASE, WorkInput.OTHER_OUTLAY));
    }

    @Test
    void aNameThatTheSawOfTheJobHasIsRefusedWithItsFile() {
        EditedDemo job = job();
        String name = job.text("job.properties")
                .lines()
                .filter(line -> line.startsWith("saw.name"))
                .findFirst()
                .orElseThrow();
        job.with(FILE, "saw.name = small band mill", name);
        for (String[] arguments : new String[][] {
            {job.folder().toString()},
            {job.folder().toString(), "--check"},
            {"compare-saws", job.folder().toString()}
        }) {
            Run run = Run.of(arguments);
            assertThat(run.code()).isEqualTo(2);
            assertThat(run.err())
                    .contains(FILE, "saw.name", "the saw of job.properties is called so; give another saw.name");
        }
    }

    @Test
    void theTwoMustDifferByName() {
        JobInput job = read(job());
        assertThat(catchThrowable(() -> job.withOtherSaw(Optional.of(new JobInput.OtherSaw(job.saw(), job.work())))))
                .isInstanceOf(OutOfDomainException.class)
                .hasMessageContaining("other saw");
    }

    private static JobInput read(EditedDemo job) {
        try {
            return JobReader.read(new JobFiles.Folder(job.folder()));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
