package org.woodyield.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.woodyield.lumber.NaturalEdge;
import org.woodyield.lumber.Product.Surface;
import org.woodyield.lumber.Product.Wood;
import org.woodyield.measure.Length;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.measure.Volume;
import org.woodyield.plan.JobPlan;
import org.woodyield.plan.LogPlan;
import org.woodyield.plan.Planner;
import org.woodyield.plan.Supply;
import org.woodyield.sawing.SawingPlan;
import org.woodyield.sawing.SawnPiece;
import org.woodyield.sawing.Verifier;
import org.woodyield.wood.WoodWeight;

/** Boards wanted with natural edges, from their table to the plan. */
class NaturalEdgeTest {

    private static final String FILE = "natural-edge.csv";
    private static final String HEADER = "id,thickness,least-width,lengths,quantity,wood,surface,moisture\n";

    @TempDir
    Path folder;

    private EditedDemo job;

    @BeforeEach
    void aSmallJob() {
        job = EditedDemo.small(folder.resolve("job"));
    }

    private EditedDemo wanting(String row) {
        return job.write(FILE, (HEADER + row + "\n").getBytes(StandardCharsets.UTF_8));
    }

    @Test
    void dearSlabsAreSawnAsWideAsTheyAreWanted() throws IOException {
        wanting("bench,2 in,6 in,6 ft; 8 ft,2,eastern white pine,dressed dry,10 %")
                .with("prices.csv", "any,softwood", "2 in x 6 in,eastern white pine,9.00 per bf\nany,softwood");
        JobPlan plan = Planner.plan(JobReader.read(new JobFiles.Folder(job.folder())));
        Supply bench = plan.supply().get(2);
        assertThat(bench.wantedId()).isEqualTo("bench");
        assertThat(bench.label()).contains("natural edges, 2 in thick, 6 in wide or more, 6 ft; 8 ft");
        assertThat(bench.sawn()).isPositive();
        SawingPlan log = plan.logs().get(0).sawing().orElseThrow();
        assertThat(Verifier.verify(log)).isEmpty();
        List<SawnPiece> slabs = log.pieces().stream().filter(SawnPiece::unedged).toList();
        assertThat(slabs).hasSize((int) bench.sawn());
        for (SawnPiece slab : slabs) {
            // It shrinks, and neither edge is planed nor scatters: 6 in and its shrinkage, up to the saw's step.
            assertThat(slab.width().toInches()).isBetween(6.1, 6.5);
            // 2 in, two faces planed, shrinkage, and the margin for the saw's scatter.
            assertThat(slab.thickness().toInches()).isBetween(2.1, 2.5);
        }
    }

    /** A slab weighs what it is, however little of its width counts. */
    @Test
    void theyAreWeighedAsWideAsTheyAre() throws IOException {
        wanting("bench,2 in,5 in,6 ft; 8 ft,4,eastern white pine,dressed dry,10 %")
                .with("prices.csv", "any,softwood", "2 in x 5 in,eastern white pine,9.00 per bf\nany,softwood");
        JobPlan plan = Planner.plan(JobReader.read(new JobFiles.Folder(job.folder())));
        double heaviest = 0;
        double greatestExcess = 1;
        for (LogPlan log : plan.logs()) {
            SawingPlan sawing = log.sawing().orElseThrow();
            double lumber = 0;
            for (SawnPiece piece : sawing.pieces()) {
                Volume size = Volume.ofPiece(piece.thickness(), piece.width(), piece.length());
                Volume wood = sawing.wood(piece);
                lumber += wood.cubicMetres();
                if (piece.unedged()) {
                    assertThat(wood.cubicMetres()).isGreaterThanOrEqualTo(size.cubicMetres());
                    greatestExcess = Math.max(greatestExcess, wood.cubicMetres() / size.cubicMetres());
                } else {
                    assertThat(wood.cubicMetres()).isCloseTo(size.cubicMetres(), within(1e-6));
                }
                heaviest =
                        Math.max(heaviest, WoodWeight.greenKilograms(log.log().species(), wood));
            }
            assertThat(lumber).isCloseTo(sawing.balance().lumber().cubicMetres(), within(1e-9));
        }
        assertThat(plan.heaviestPiece().orElseThrow().greenKilograms()).isEqualTo(heaviest);
        assertThat(greatestExcess).isGreaterThan(1.1);
    }

    @Test
    void theirStackAndCupAreSaidToBeLeftOut() {
        wanting("bench,2 in,6 in,6 ft,2,softwood,dressed dry,10 %")
                .with("prices.csv", "any,softwood", "2 in x 6 in,softwood,9.00 per bf\nany,softwood");
        assertThat(job.run().out()).contains("Stack and cup of bench: left out");
    }

    @Test
    void thePlanNamesThemAndShowsHowWideTheyReallyAre() {
        Run run = wanting("bench,2 in,6 in,6 ft,2,softwood,dressed dry,10 %")
                .with("prices.csv", "any,softwood", "2 in x 6 in,softwood,9.00 per bf\nany,softwood")
                .run();
        assertThat(run.code()).isZero();
        assertThat(run.out()).contains("natural edges, 2 in thick").containsPattern("bench +2 [0-9/]+ +[6-9]");
        assertThat(job.run("--check").out()).contains("1 kind with natural edges");
    }

    @Test
    void aJobOfNaturalEdgesAloneIsAJob() {
        job.write("wanted.csv", "id,size,length,quantity,wood,surface,moisture\n".getBytes(StandardCharsets.UTF_8))
                .write(FILE, (HEADER + "slab,2 in,5 in,4 ft,3,any,rough,12 %\n").getBytes(StandardCharsets.UTF_8));
        Run run = job.run();
        assertThat(run.err()).isEmpty();
        assertThat(run.out()).contains("slab", "met");
    }

    @Test
    void whatNoLogCanGiveIsRefused() {
        refused("bench,2 in,14 in,6 ft,2,softwood,rough,10 %", "least-width: '14 in'", "no log can give it");
        refused("bench,2 in,6 in,6 ft; 9 ft,2,softwood,rough,10 %", "lengths: '6 ft; 9 ft'", "leave them out");
        refused("bench,2 in,6 in,6 ft,2,red maple,rough,10 %", "wood: 'red maple'", "change the wood");
        refused("bench,2 in,1 in,6 ft,2,softwood,rough,10 %", "least-width: '1 in'", "the thickness or more");
        refused("stud,2 in,6 in,6 ft,2,softwood,rough,10 %", "each name once");
        refused("bench,2 in,6 in,6 ft,0,softwood,rough,10 %", "quantity: '0'");
        refused("bench,1/8 in,6 in,6 ft,2,softwood,rough,10 %", "bench is 1/8 in thick");
    }

    private void refused(String row, String... parts) {
        Run run = wanting(row).run("--check");
        assertThat(run.err()).contains(parts);
        assertThat(run.code()).isEqualTo(2);
    }

    @Test
    void theLibraryRefusesWhatIsNoBoard() {
        Length inch = Length.inches(1);
        Wood any = Wood.of(Wood.Kind.ANY);
        List<Length> lengths = List.of(Length.feet(6), Length.feet(8));
        NaturalEdge board = new NaturalEdge("slab", inch.times(2), inch.times(12), lengths, 1, any, Surface.ROUGH, 12);
        assertThat(board.tally(Length.feet(6)).value()).isEqualTo(12);
        for (Runnable bad : List.<Runnable>of(
                () -> new NaturalEdge(" ", inch, inch, lengths, 1, any, Surface.ROUGH, 12),
                () -> new NaturalEdge("a", Length.ZERO, inch, lengths, 1, any, Surface.ROUGH, 12),
                () -> new NaturalEdge("a", inch.times(2), inch, lengths, 1, any, Surface.ROUGH, 12),
                () -> new NaturalEdge("a", inch, inch, List.of(), 1, any, Surface.ROUGH, 12),
                () -> new NaturalEdge("a", inch, inch, List.of(inch, inch), 1, any, Surface.ROUGH, 12),
                () -> new NaturalEdge("a", inch, inch, lengths, 0, any, Surface.ROUGH, 12),
                () -> new NaturalEdge("a", inch, inch, lengths, 1, any, Surface.ROUGH, Double.NaN))) {
            assertThatThrownBy(bad::run).isInstanceOf(OutOfDomainException.class);
        }
    }
}
