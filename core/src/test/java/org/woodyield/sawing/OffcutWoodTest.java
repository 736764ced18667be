package org.woodyield.sawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.woodyield.log.LogSolid;
import org.woodyield.log.LogSolid.Station;
import org.woodyield.measure.Length;

/** The wood of one offcut of an oval log that tapers. */
class OffcutWoodTest {

    private static SawingPlan plan(double ratio) {
        LogSolid solid = LogSolid.of(
                List.of(new Station(0, 0.2, 0, 0), new Station(2.4, 0.21, 0, 0), new Station(3, 0.25, 0, 0)),
                ratio,
                Length.ZERO);
        return BestPattern.find(
                solid,
                BestPatternTest.saw(Saw.Reference.BED),
                BestPatternTest.sizes(),
                SearchSpace.standard().withGrid(Length.inches(1, 8)),
                PassCost.each(20));
    }

    /** Against strips of thin slices, added up. */
    @ParameterizedTest
    @ValueSource(doubles = {1, 0.8, 0.6})
    void ofTheFirstSlabItIsTheSumOfStrips(double ratio) {
        SawingPlan plan = plan(ratio);
        Offcut slab = plan.offcuts().get(0);
        assertThat(slab.place().bottom()).isEqualTo(plan.passes().get(0).kerf().top());
        Lie lie = Lie.of(plan.solid(), plan.frame());
        double length = plan.solid().lengthMetres();
        int slices = 600;
        int strips = 2000;
        double from = slab.place().bottom().toMetres();
        double step = (0.5 - from) / strips;
        double sum = 0;
        for (int i = 0; i < slices; i++) {
            Lie.Plane section = lie.inside(length * (i + 0.5) / slices);
            for (int j = 0; j < strips; j++) {
                sum += 2 * Math.max(0, section.halfLevel(from + (j + 0.5) * step)) * step * length / slices;
            }
        }
        assertThat(sum).isPositive();
        assertThat(plan.wood(slab).cubicMetres()).isCloseTo(sum, within(sum * 1e-3));
    }

    @Test
    void slabsAndEdgingsAddUpToTheBalance() {
        SawingPlan plan = plan(0.8);
        double slabs = 0;
        double edgings = 0;
        for (Offcut offcut : plan.offcuts()) {
            double wood = plan.wood(offcut).cubicMetres();
            if (offcut.kind() == Offcut.Kind.SLAB) {
                slabs += wood;
            } else {
                edgings += wood;
            }
        }
        assertThat(slabs).isCloseTo(plan.balance().slab().cubicMetres(), within(1e-12));
        assertThat(edgings).isCloseTo(plan.balance().edging().cubicMetres(), within(1e-12));
    }
}
