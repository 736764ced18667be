package org.woodyield.lumber;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.woodyield.measure.Length;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.wood.Face;
import org.woodyield.wood.ShrinkageModel;
import org.woodyield.wood.SpeciesCatalogue;

class SizeChainTest {

    private static SizeChain chain(String species, double angle, double moisture) {
        return new SizeChain(
                SpeciesCatalogue.published().find(species),
                Length.parse("1 1/2 in"),
                Length.parse("3 1/2 in"),
                moisture,
                angle,
                ShrinkageModel.straightLine(),
                Length.parse("1/16 in"),
                UndersizeZ.exact(5),
                Length.parse("0.03 in"));
    }

    @Property(tries = 300)
    void thereAndBackIsTheFinishedSizeBeforeAnyRounding(
            @ForAll @DoubleRange(max = 90) double angle, @ForAll @DoubleRange(max = 30) double moisture) {
        SizeChain chain = chain("white oak", angle, moisture);
        for (Face face : Face.values()) {
            double green = chain.green(face).criticalInches();
            double shrinkage = chain.model().percent(chain.species(), face, angle, moisture);
            double planed = green * (1 - shrinkage / 100) - 0.0625;
            assertThat(planed).isCloseTo(chain.green(face).finished().toInches(), within(1e-14));
        }
    }

    @Property(tries = 300)
    void workingsGiveTheSameBits(
            @ForAll Face face,
            @ForAll @DoubleRange(max = 90) double angle,
            @ForAll @DoubleRange(max = 30) double moisture) {
        SizeChain chain = chain("douglas-fir", angle, moisture);
        Length step = Length.inches(1, 16);
        Length setting = chain.green(face).setting(step);
        assertThat(chain.settingWorking(face, step).value()).isEqualTo(setting.toInches());
        assertThat(chain.planedWorking(face, setting).value())
                .isEqualTo(chain.green(face).planedInches(setting));
        assertThat(chain.green(face).scantShare(setting)).isLessThanOrEqualTo(0.05 + 1e-6);
    }

    /** Only the step of the scale comes between: what is sawn to it dries and planes to the size, or a step too much. */
    @Property(tries = 300)
    void whatIsSawnToTheStepIsNeverTooLittleAndNeverAStepTooMuch(
            @ForAll Face face,
            @ForAll @DoubleRange(max = 90) double angle,
            @ForAll @DoubleRange(min = 8, max = 19) double moisture,
            @ForAll @IntRange(max = 6) int halvings) {
        Length step = Length.inches(1, 1L << halvings);
        for (String species : List.of("douglas-fir", "white oak", "eastern white pine")) {
            GreenTargetSize green = chain(species, angle, moisture).green(face);
            Length setting = green.setting(step);
            double over = green.planedInches(setting) - green.finished().toInches();
            assertThat(setting.toInches() - green.targetInches()).isBetween(-1e-9, step.toInches());
            // The allowance for the saw's scatter, 1.645 x 0.03 in, is to spare as well.
            assertThat(over).isBetween(-1e-9, step.toInches() + 0.0494);
        }
    }

    @Test
    void refusesASpeciesWithoutShrinkageAndNamesTheCut() {
        assertThatExceptionOfType(OutOfDomainException.class).isThrownBy(() -> chain("gray birch", 0, 15));
        assertThat(chain("douglas-fir", 0, 15).cut()).isEqualTo("flat-sawn");
        assertThat(chain("douglas-fir", 90, 15).cut()).isEqualTo("quarter-sawn");
        assertThat(chain("douglas-fir", 37.5, 15).cut()).isEqualTo("rings at 37.5 degrees");
    }

    @Test
    void aWorkingNamesSpeciesCutFaceSizeAndMoisture() {
        SizeChain chain = chain("douglas-fir", 0, 12);
        Length step = Length.inches(1, 16);
        assertThat(chain.settingWorking(Face.THICKNESS, step).title())
                .isEqualTo("Douglas-fir, flat-sawn, thickness green, to finish 1 1/2 in planed at 12 % moisture");
        assertThat(chain.planedWorking(Face.WIDTH, Length.parse("3.75 in")).title())
                .isEqualTo("Douglas-fir, flat-sawn, width dry and planed, sawn 3.75 in, at 12 % moisture");
        assertThat(chain.settingWorking(Face.WIDTH, step).title()).contains("to finish 3 1/2 in");
    }

    @Test
    void eachFaceHasItsOwnFinishedSizeAndShowsItsShrinkage() {
        SizeChain chain = chain("douglas-fir", 0, 12);
        assertThat(chain.green(Face.WIDTH).finished()).isEqualTo(Length.parse("3 1/2 in"));
        assertThat(chain.green(Face.THICKNESS).finished()).isEqualTo(Length.parse("1 1/2 in"));
        assertThat(chain.settingWorking(Face.WIDTH, Length.inches(1, 16)).lines())
                .anyMatch(line -> line.name().equals("tangential shrinkage to oven-dry"));
        assertThat(chain.planedWorking(Face.WIDTH, Length.inches(4)).lines())
                .anyMatch(line -> line.name().equals("tangential shrinkage to oven-dry"));
    }
}
