package org.woodyield.sawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalLong;
import java.util.Random;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.woodyield.log.LogSolid;
import org.woodyield.measure.Length;

/** The quick way to the worth of the best row against the search of rows strip by strip. */
class RoomsTest {

    private static final LogSolid LOG = LogSolid.of(
            List.of(new LogSolid.Station(0, 0.2, 0, 0), new LogSolid.Station(2.4384, 0.21, 0, 0)), 1, Length.ZERO);

    /** A flitch with rooms of its own, in a cant or not. */
    private static final class Case {
        private final Lattice lattice;
        private final Chords chords;
        private final int[][] from;
        private final int[][] to;
        private final int clip0;
        private final int clip1;
        private final long edge;

        Case(Random random) {
            List<PieceOption> options = new ArrayList<>();
            int sizes = 1 + random.nextInt(4);
            for (int i = 0; i < sizes; i++) {
                int width = 12 + random.nextInt(40);
                List<LengthWorth> lengths = new ArrayList<>();
                for (int feet = 5; feet <= 8; feet++) {
                    // Now and then a shorter piece is worth more than a longer one, or is not wanted.
                    double odd = random.nextInt(4) == 0 ? 0.5 + random.nextDouble() : 1;
                    if (feet == 8 || random.nextInt(6) > 0) {
                        lengths.add(new LengthWorth(Length.feet(feet), width * feet * odd));
                    }
                }
                options.add(PieceOption.fixed("o" + i, Length.inches(1), Length.inches(width, 8), lengths));
            }
            Saw saw = new Saw(
                    "s",
                    Length.inches(1 + random.nextInt(3), 8),
                    Length.inches(60),
                    Length.inches(1, 8),
                    Saw.Reference.PREVIOUS_FACE,
                    Length.ZERO,
                    Length.ZERO);
            SearchSpace space = SearchSpace.standard().withGrid(Length.inches(1, 8));
            Length length = Length.feet(8);
            Lie lie = new Lie(LOG, 0, 0);
            lattice = Lattice.of(saw, options, space, length);
            chords = new Chords(lie, lattice, space, length);
            int trims = chords.trims.length;
            int middle = chords.centre;
            int half = 4 + random.nextInt(44);
            int spread = random.nextInt(20);
            from = new int[trims][chords.count];
            to = new int[trims][chords.count];
            for (int t = 0; t < trims; t++) {
                Arrays.fill(from[t], middle - half - random.nextInt(spread + 1));
                Arrays.fill(to[t], middle + half + random.nextInt(spread + 1));
            }
            boolean cant = random.nextInt(3) > 0;
            clip0 = cant ? middle - half - random.nextInt(spread + 1) : Rows.NO_CLIP;
            clip1 = cant ? middle + half + random.nextInt(spread + 1) : -Rows.NO_CLIP;
            edge = new long[] {0, 3_000_000, 40_000_000, 300_000_000, Search.NO_EDGING}[random.nextInt(5)];
        }

        long slowly() {
            return new Rows(lattice, chords)
                    .best(0, chords.centre, chords.centre + 8, from, to, clip0, clip1, edge, edge / 2, Long.MAX_VALUE);
        }

        OptionalLong quickly() {
            return quickly(Lattice.NONE, Long.MAX_VALUE);
        }

        OptionalLong quickly(long reached, long bound) {
            return new Rooms(lattice, lattice.thicknesses.get(0), chords, edge, edge / 2)
                    .best(from, to, chords.centre, chords.centre + 8, clip0, clip1, reached, bound);
        }
    }

    @Property(tries = 2000)
    void theQuickWayFindsTheWorthThatTheSearchFinds(@ForAll long seed) {
        Case one = new Case(new Random(seed));
        OptionalLong quick = one.quickly();
        if (quick.isPresent()) {
            long slow = one.slowly();
            assertThat(Math.max(quick.getAsLong(), 0)).isEqualTo(Math.max(slow, 0));
            if (slow > 0) {
                // A row that is known to be there, and a bound that is met, spare work and change nothing.
                assertThat(one.quickly(slow, Long.MAX_VALUE)).hasValue(Math.max(quick.getAsLong(), slow));
                assertThat(one.quickly(slow - 1, slow + 1)).hasValue(Math.max(quick.getAsLong(), slow - 1));
            }
        }
    }

    @Example
    void mostRowsGoTheQuickWayAndManyOfThemReachFromOneSawnSideToTheOther() {
        int quick = 0;
        int worthSomething = 0;
        int acrossACant = 0;
        Random random = new Random(20261127);
        for (int i = 0; i < 2000; i++) {
            Case one = new Case(random);
            OptionalLong best = one.quickly();
            quick += best.isPresent() ? 1 : 0;
            worthSomething += best.isPresent() && best.getAsLong() > 0 ? 1 : 0;
            acrossACant += best.isPresent() && best.getAsLong() > 0 && one.edge == Search.NO_EDGING ? 1 : 0;
        }
        assertThat(quick).isGreaterThan(1000);
        assertThat(worthSomething).isGreaterThan(1000);
        assertThat(acrossACant).isPositive();
    }
}
