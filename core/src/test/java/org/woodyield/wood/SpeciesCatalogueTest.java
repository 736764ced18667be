package org.woodyield.wood;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.source.PublishedTable;
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
                .satisfies(refusal -> assertThat(refusal.remedy()).matches("nearest: " + meant + "(,.*)?"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"xyzzy", "qwertyuiop", "unobtainium"})
    void offersNothingWhereNothingIsNear(String name) {
        assertThatExceptionOfType(OutOfDomainException.class)
                .isThrownBy(() -> catalogue.find(name))
                .satisfies(refusal -> assertThat(refusal.remedy()).isEmpty());
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
        assertThat(catalogue.all()).hasSize(190);
        assertThat(catalogue.all().stream().filter(s -> s.specificGravityGreen().isPresent()))
                .as("156 FIA species, three of them under a second type")
                .hasSize(159);
        assertThat(catalogue.all().stream().filter(s -> s.radialPercent().isPresent()))
                .as("66 rows read, 51 recalled, 27 of imported woods")
                .hasSize(144);
        assertThat(joined("table_4_1")).hasSize(25 + 43);
        assertThat(joined("table_4_4")).hasSize(27);
        assertThat(joined("table_5_3")).hasSize(12);
        assertThat(joined("tm_5_852_4")).hasSize(10);
    }

    /** The rows of a table that some species leads to. */
    private static Set<String> joined(String column) {
        return PublishedTable.read(SpeciesCatalogue.class, "species.csv").rows().stream()
                .map(row -> row.text(column))
                .filter(name -> !name.isEmpty())
                .collect(Collectors.toSet());
    }

    @Test
    void keepsMoistureOfHeartwoodAndSapwoodApart() {
        Species fir = catalogue.find("douglas-fir");
        assertThat(fir.heartwoodMoisturePercent().orElseThrow().value()).isEqualTo(37);
        assertThat(fir.sapwoodMoisturePercent().orElseThrow().value()).isEqualTo(115);
        assertThat(fir.sapwoodMoisturePercent().orElseThrow().source().standing())
                .isEqualTo(Standing.PUBLISHED);
        assertThat(catalogue.find("tamarack").sapwoodMoisturePercent()).isEmpty();
        assertThat(catalogue
                        .find("white oak")
                        .heartwoodMoisturePercent()
                        .orElseThrow()
                        .source()
                        .standing())
                .isEqualTo(Standing.MEMORY);
    }

    @Test
    void takesGravityAtTwelvePercentFromTheHandbookFirst() {
        assertThat(catalogue
                        .find("ponderosa pine")
                        .specificGravityAt12()
                        .orElseThrow()
                        .source()
                        .id())
                .isEqualTo("wood-handbook-5-3");
        assertThat(catalogue
                        .find("western hemlock")
                        .specificGravityAt12()
                        .orElseThrow()
                        .source()
                        .id())
                .isEqualTo("tm-5-852-4");
        assertThat(catalogue.find("white oak").specificGravityAt12()).isEmpty();
    }

    @Test
    void knowsImportedWoodsByShrinkageAlone() {
        Species mahogany = catalogue.find("Mahogany, true");
        assertThat(mahogany.volumetricPercent().orElseThrow().value()).isEqualTo(7.8);
        assertThat(mahogany.radialPercent().orElseThrow().source().standing()).isEqualTo(Standing.PUBLISHED);
        assertThat(mahogany.specificGravityGreen()).isEmpty();
        assertThat(catalogue
                        .find("merbau")
                        .radialPercent()
                        .orElseThrow()
                        .source()
                        .standing())
                .as("its name was recalled")
                .isEqualTo(Standing.MEMORY);
    }

    /** Ten letters may hold three wrong ones: a third and no more. */
    @Test
    void offersANameUpToAThirdOfWhoseLettersAreWrong() {
        assertThatExceptionOfType(OutOfDomainException.class)
                .isThrownBy(() -> catalogue.find("bolsom pir"))
                .satisfies(refusal -> assertThat(refusal.remedy()).isEqualTo("nearest: balsam-fir"));
        assertThatExceptionOfType(OutOfDomainException.class)
                .isThrownBy(() -> catalogue.find("bolsom pit"))
                .satisfies(refusal -> assertThat(refusal.remedy()).isEmpty());
    }

    @Test
    void saysThatANameIsEmptyWhereItIs() {
        assertThatExceptionOfType(OutOfDomainException.class)
                .isThrownBy(() -> catalogue.find(" "))
                .satisfies(refusal -> {
                    assertThat(refusal.value()).isEqualTo("empty");
                    assertThat(refusal.remedy()).isEmpty();
                });
        assertThatExceptionOfType(OutOfDomainException.class)
                .isThrownBy(() -> catalogue.find(" xyzzy "))
                .satisfies(refusal -> assertThat(refusal.value()).isEqualTo("'xyzzy'"));
    }

    @Test
    void offersEverySpeciesThatHoldsTheWordAndThoseKnownBestFirst() {
        assertThatExceptionOfType(OutOfDomainException.class)
                .isThrownBy(() -> catalogue.find("hemlock"))
                .satisfies(refusal -> assertThat(refusal.remedy())
                        .isEqualTo("write the name in full: eastern hemlock, western hemlock, mountain hemlock"));
        assertThatExceptionOfType(OutOfDomainException.class)
                .isThrownBy(() -> catalogue.find("Oak"))
                .satisfies(refusal -> assertThat(refusal.remedy())
                        .as("22 oaks, of which twelve are written out")
                        .startsWith("write the name in full: white oak, ")
                        .endsWith(", or one of 10 more"));
    }

    @ParameterizedTest
    @CsvSource({
        "fir,fir,0",
        "fir,firs,1",
        "oak,ok,1",
        "oak,elk,2",
        "form,from,1",
        "ab,ba,1",
        "kitten,sitting,3",
        "'',oak,3"
    })
    void countsLettersPutInTakenOutReplacedAndChangedOver(String a, String b, int distance) {
        assertThat(NearestNames.edits(a, b)).isEqualTo(distance);
        assertThat(NearestNames.edits(b, a)).isEqualTo(distance);
    }

    /** Table 4-1 prints red alder's sapwood and no heartwood; a row of a second file may name a source of its own. */
    @Test
    void followsTheJoinToARowAndToNothingWhereNothingIsPrinted() {
        SpeciesTables.Joined moisture = SpeciesTables.Joined.of(
                "table_4_1", "species", "green_moisture_4_1.csv", "green_moisture_4_1_memory.csv");
        PublishedTable.Row alder = species("red-alder");
        assertThat(moisture.cell(alder, "sapwood_pct", "%"))
                .hasValueSatisfying(cell -> assertThat(cell.value()).isEqualTo(97));
        assertThat(moisture.cell(alder, "heartwood_pct", "%")).isEmpty();
        assertThat(moisture.cell(species("gray-birch"), "sapwood_pct", "%")).isEmpty();
        assertThat(moisture.cell(species("white-oak"), "heartwood_pct", "%"))
                .hasValueSatisfying(cell -> assertThat(cell.source().id()).isEqualTo("wood-handbook-4-1-memory"));
    }

    @Test
    void refusesTwoRowsOfOneKeyAndAJoinThatLeadsNowhere() {
        assertThatThrownBy(() -> SpeciesTables.Joined.of(
                        "table_4_1", "species", "green_moisture_4_1.csv", "green_moisture_4_1.csv"))
                .isInstanceOf(IllegalStateException.class)
                .hasMessageContaining("green_moisture_4_1.csv line");
        assertThatThrownBy(() ->
                        SpeciesTables.keyed(PublishedTable.read(SpeciesCatalogue.class, "shrinkage_4_3.csv"), "group"))
                .isInstanceOf(IllegalStateException.class)
                .hasMessageContaining("second hardwood");
        assertThatThrownBy(() -> SpeciesTables.joined(species("red-alder"), "table_4_1", Map.of()))
                .isInstanceOf(IllegalStateException.class)
                .hasMessageContaining("Alder, red");
    }

    @Test
    void findsTheRowOfATableByTheSpeciesItIsJoinedTo() {
        Map<String, PublishedTable.Row> days =
                SpeciesTables.byId(PublishedTable.read(SpeciesCatalogue.class, "air_drying_days.csv"), "air_drying");
        assertThat(days)
                .hasEntrySatisfying(
                        "red-alder", row -> assertThat(row.number("max_days")).isEqualTo(180));
        assertThat(days).doesNotContainKey("gray-birch");
    }

    private static PublishedTable.Row species(String id) {
        return PublishedTable.read(SpeciesCatalogue.class, "species.csv").rows().stream()
                .filter(row -> row.text("id").equals(id))
                .findFirst()
                .orElseThrow();
    }
}
