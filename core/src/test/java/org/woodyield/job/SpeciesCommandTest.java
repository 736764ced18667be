package org.woodyield.job;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.woodyield.wood.Species;
import org.woodyield.wood.SpeciesCatalogue;

class SpeciesCommandTest {

    @Test
    void eachValueHasItsOwnStandingAndWhatIsMissingIsNamed() {
        String oak = Run.of("species", "Quercus alba").out();
        assertThat(oak)
                .contains("Id: white-oak; hardwood.")
                .containsPattern("tangential shrinkage, green to oven-dry +10\\.5 +% +published: wood-handbook-4-3")
                .containsPattern("green moisture of heartwood +64 +% +MEMORY: wood-handbook-4-1-memory")
                .contains("What the tables do not have", "- specific gravity, oven-dry mass over volume at 12 %.");
        assertThat(Run.of("species", "gray birch").out()).contains("- tangential shrinkage, green to oven-dry.");
    }

    @Test
    void everySpeciesHasASheet() {
        for (Species species : SpeciesCatalogue.published().all()) {
            assertThat(Run.of("species", species.id()).out()).startsWith(species.commonName() + "\n");
        }
    }

    @Test
    void theTwoGroupsAreListedAndAskedAbout() {
        String softwoods = Run.of("species", "softwood").out();
        String hardwoods = Run.of("species", "Hardwood").out();
        assertThat(softwoods).contains("eastern white pine").doesNotContain("white oak");
        assertThat(hardwoods).contains("white oak").doesNotContain("eastern white pine");
        assertThat(softwoods.lines().count() + hardwoods.lines().count())
                .isEqualTo(Run.of("species").out().lines().count());
        assertThat(Run.of("species", "sofwood").err()).contains("'species softwood' lists them");
    }

    @Test
    void aMisspeltNameGetsTheNearest() {
        Run run = Run.of("species", "duglas fir");
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).contains("nearest: douglas-fir");
        assertThat(Run.of("species", "xyzzy").err())
                .contains("the command species lists them")
                .doesNotContain("nearest");
        assertThat(Run.of("species", "oak").err()).contains("write the name in full: white oak");
    }
}
