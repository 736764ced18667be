package org.woodyield.wood;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.source.Standing;

class SpeciesCatalogueTest {

    private final SpeciesCatalogue catalogue = SpeciesCatalogue.published();

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "douglas-fir | douglas-fir",
                "Douglas Fir | douglas-fir",
                "Pine, eastern white | eastern-white-pine",
                "QUERCUS ALBA | white-oak",
                "red oak | northern-red-oak",
                "Pseudotsuga menziesii | douglas-fir",
                "western red cedar | western-redcedar"
            })
    void findsASpeciesUnderAnyOfItsNames(String name, String id) {
        assertThat(catalogue.find(name).id()).isEqualTo(id);
    }

    @ParameterizedTest
    @CsvSource({"duglas-fir,douglas-fir", "whit oak,white-oak", "easten white pine,eastern-white-pine"})
    void offersTheNearestNamesForOneMisspelt(String misspelt, String meant) {
        assertThatExceptionOfType(OutOfDomainException.class)
                .isThrownBy(() -> catalogue.find(misspelt))
                .satisfies(refusal -> assertThat(refusal.remedy()).startsWith("nearest: " + meant + ","));
    }

    @Test
    void refusesAnEmptyName() {
        assertThatExceptionOfType(OutOfDomainException.class).isThrownBy(() -> catalogue.find(" "));
    }

    @Test
    void keepsTheStandingOfEachValueApart() {
        Species oak = catalogue.find("northern-red-oak");
        assertThat(oak.specificGravityGreen().orElseThrow().source().standing()).isEqualTo(Standing.PUBLISHED);
        assertThat(oak.tangentialPercent().orElseThrow().source().standing()).isEqualTo(Standing.MEMORY);
        assertThat(catalogue
                        .find("douglas-fir")
                        .tangentialPercent()
                        .orElseThrow()
                        .source()
                        .standing())
                .isEqualTo(Standing.PUBLISHED);
    }

    @Test
    void leavesMissingWhatNoTablePrints() {
        assertThat(catalogue.find("gray birch").tangentialPercent()).isEmpty();
        assertThat(catalogue.find("gray birch").radialPercent()).isPresent();
        assertThat(catalogue.find("southern magnolia").specificGravityGreen()).isEmpty();
    }

    @Test
    void joinsEveryRowOfTheTablesItReads() {
        assertThat(catalogue.all().stream().filter(s -> s.specificGravityGreen().isPresent()))
                .as("156 FIA species, three of them under a second type")
                .hasSize(159);
        assertThat(catalogue.all().stream().filter(s -> s.radialPercent().isPresent()))
                .as("66 rows read and 51 recalled")
                .hasSize(117);
    }
}
