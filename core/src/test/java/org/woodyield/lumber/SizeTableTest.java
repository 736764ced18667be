package org.woodyield.lumber;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.woodyield.lumber.SizeTable.Entry;
import org.woodyield.lumber.SizeTable.Measure;
import org.woodyield.lumber.SizeTable.Section;
import org.woodyield.measure.Length;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.source.Source;

class SizeTableTest {

    private static final SizeTable SOFTWOOD = SizeTable.named("softwood");

    private static Length in(String text) {
        return Length.parse(text + " in");
    }

    @Test
    void everyFaceIsFoundByItsNameAndByEachOfItsMeasures() {
        for (SizeTable table : SizeTable.all()) {
            for (Entry entry : table.entries()) {
                assertThat(table.ofNominal(entry.nominal())).as(table.key()).contains(entry);
                for (Measure measure : entry.measures()) {
                    assertThat(table.ofMeasured(measure.length()))
                            .as(table.key())
                            .contains(entry);
                }
            }
        }
    }

    @Test
    void everySectionIsFoundByItsNameAndByItsMeasuresInEachState() {
        int sections = 0;
        for (SizeTable table : SizeTable.all()) {
            for (Entry thickness : table.entries()) {
                for (Entry width : table.entries()) {
                    boolean together = thickness.kind().equals(width.kind())
                            && List.of("thickness", SizeTable.EITHER).contains(thickness.face())
                            && List.of("width", SizeTable.EITHER).contains(width.face())
                            && width.nominal().compareTo(thickness.nominal()) >= 0;
                    if (!together) {
                        continue;
                    }
                    sections++;
                    Section section = new Section(thickness, width);
                    assertThat(table.ofNominal(thickness.nominal(), width.nominal()))
                            .contains(section);
                    for (Measure thick : thickness.measures()) {
                        for (Measure wide : width.measures()) {
                            if (thick.state().equals(wide.state())) {
                                assertThat(table.ofMeasured(thick.length(), wide.length()))
                                        .contains(section);
                            }
                        }
                    }
                }
            }
        }
        assertThat(sections).isGreaterThan(800);
    }

    @Test
    void sectionsOfSoftwoodAreThoseThatItIsDressedTo() {
        List<Section> dimension = SOFTWOOD.ofNominal(Length.inches(2), Length.inches(4)).stream()
                .filter(section -> section.thickness().kind().equals("dimension"))
                .toList();
        assertThat(dimension).isNotEmpty();
        for (Section section : dimension) {
            assertThat(section.thickness().measures()).contains(new Measure("dry", in("1 1/2")));
            assertThat(section.width().measures()).contains(new Measure("dry", in("3 1/2")));
        }
        for (int t = 5; t <= 24; t++) {
            for (int w = t; w <= 24; w++) {
                SoftwoodSizes.Size dressed = SoftwoodSizes.dressed(
                        new NominalSize(Length.inches(t), Length.inches(w)), SoftwoodSizes.Condition.GREEN);
                Section section =
                        SOFTWOOD.ofNominal(Length.inches(t), Length.inches(w)).get(0);
                assertThat(section.thickness().measures()).contains(new Measure("green", dressed.thickness()));
                assertThat(section.width().measures()).contains(new Measure("green", dressed.width()));
            }
        }
    }

    @Test
    void twoFacesInDifferentStatesAreNoSection() {
        // 1 1/2 in is a 2 in thickness dry, 3 9/16 in a 4 in width green.
        assertThatExceptionOfType(OutOfDomainException.class)
                .isThrownBy(() -> SOFTWOOD.ofMeasured(in("1 1/2"), in("3 9/16")))
                .withMessageContaining("same state");
    }

    @Test
    void whatNoTableHasIsRefusedWithWhatItHas() {
        assertThatExceptionOfType(OutOfDomainException.class)
                .isThrownBy(() -> SizeTable.named("pine"))
                .withMessageContaining("softwood, native");
        assertThatExceptionOfType(OutOfDomainException.class)
                .isThrownBy(() -> SOFTWOOD.ofNominal(Length.inches(2), Length.inches(13)))
                .withMessageContaining("12 in, 14 in, 16 in; nearest: 12 in, 14 in, 10 in");
        assertThatExceptionOfType(OutOfDomainException.class)
                .isThrownBy(() -> SOFTWOOD.ofNominal(Length.inches(4), Length.inches(2)))
                .withMessageContaining("thickness first");
        assertThatExceptionOfType(OutOfDomainException.class)
                .isThrownBy(() -> SizeTable.named("gost-24454").ofNominal(Length.millimetres(51)))
                .withMessageContaining("nearest: 50 mm, 44 mm, 60 mm");
        assertThatExceptionOfType(OutOfDomainException.class)
                .isThrownBy(() -> SizeTable.named("nordic").ofNominal(Length.millimetres(50)))
                .withMessageContaining("no such size");
    }

    @Test
    void aMetricTableSpeaksOfMillimetresEvenOfWholeInches() {
        assertThat(SizeTable.named("en-336").text(Length.inches(2))).isEqualTo("50.8 mm");
        assertThat(SOFTWOOD.text(Length.inches(2))).isEqualTo("2 in");
    }

    @Test
    void noKeyStandsTwiceAndNothingIsWithoutContent() {
        assertThat(SizeTable.all()).extracting(SizeTable::key).doesNotHaveDuplicates();
        assertThat(SizeTable.all())
                .allMatch(table -> !table.entries().isEmpty() || !table.facts().isEmpty());
    }

    @Test
    void aTableSpeaksOfItsSizesInSentences() {
        assertThat(statements("hardwood"))
                .contains(
                        "Kiln-dried, thickness, rough kiln-dried lumber, 3/8 in to 1 3/4 in thick: may be 1/16 in scant.",
                        "Kiln-dried, thickness, rough kiln-dried lumber, 2 in and more thick: may be 1/8 in scant.",
                        "Kiln-dried, width, the least widths of all grades: may be 1/4 in scant.");
        assertThat(statements("hardwood-grades"))
                .contains(
                        "Selects: boards from 4 in x 6 ft; better face FAS, poorer face No. 1 Common.",
                        "FAS, surface measure 6 to 15 ft2: SM x 11 clear cutting units of 12, in (SM + 0) / 4 cuttings, the"
                                + " fraction dropped, at most 4, and 1 more; one extra cutting.",
                        "No. 1 Common, surface measure 1 ft2: SM x 12 clear cutting units of 12, in 1 cutting; a clear face.",
                        "No. 3A Common, any surface measure (SM): SM x 4 clear cutting units of 12, in any number of"
                                + " cuttings.");
        assertThat(statements("nordic"))
                .contains("Finland: lengths from 2700 mm to 5400 mm by 300 mm.", "Sweden, planed size: moisture 16 %.");
        assertThat(statements("australia"))
                .contains(
                        "Australian dressed hardwood: lengths by 300 mm.",
                        "Australia, seasoned timber on average: moisture 10 to 15 %.");
        assertThat(statements("japan")).anyMatch(statement -> statement.contains("the fourth rounded half up"));
        assertThat(statements("australia")).noneMatch(statement -> statement.contains("the fourth rounded half up"));
    }

    private static List<String> statements(String key) {
        return SizeTable.named(key).facts().stream()
                .map(SizeTable.Fact::statement)
                .toList();
    }

    @Test
    void sizesOfEarlierYearsSayWhenTheyHeld() {
        assertThat(SizeTable.named("earlier").entries())
                .extracting(Entry::kind)
                .contains("in 1910", "from 1961", "up to 1969");
    }

    @Test
    void timbersRunFromFiveToTwentyFourInches() {
        assertThat(SOFTWOOD.ofNominal(Length.inches(24))).isNotEmpty();
        assertThatExceptionOfType(OutOfDomainException.class)
                .isThrownBy(() -> SOFTWOOD.ofNominal(Length.inches(25)))
                .withMessageContaining("nearest: 24 in, 23 in, 22 in");
    }

    @Test
    void aTableWithoutSectionsOrSizesSaysSo() {
        assertThatExceptionOfType(OutOfDomainException.class)
                .isThrownBy(() -> SizeTable.named("nordic").ofNominal(Length.millimetres(50), Length.millimetres(100)))
                .withMessageContaining("pairs no thickness with a width");
        assertThatExceptionOfType(OutOfDomainException.class)
                .isThrownBy(() -> SOFTWOOD.ofMeasured(in("1.4")))
                .withMessageContaining("measured size")
                .withMessageContaining("nearest: ");
        assertThatExceptionOfType(OutOfDomainException.class)
                .isThrownBy(() -> SOFTWOOD.ofMeasured(in("1.4"), in("3 1/2")))
                .withMessageContaining("measured thickness");
        assertThatExceptionOfType(OutOfDomainException.class)
                .isThrownBy(() -> SOFTWOOD.ofMeasured(in("3 1/2"), in("1 1/2")))
                .withMessageContaining("measured width")
                .withMessageContaining("thickness first");
    }

    @Test
    void everyMetricRowBelongsToATableAndIsShownThere() {
        for (MetricSizes.Series series : MetricSizes.series()) {
            assertThat(SizeTable.named(series.table()).entries())
                    .filteredOn(entry ->
                            entry.kind().equals(series.name()) && entry.face().equals(series.face()))
                    .extracting(Entry::nominal)
                    .containsExactlyElementsOf(series.sizes());
        }
        MetricSizes.lengths().forEach(row -> assertShown(row.table(), row.name() + ": lengths", row.source()));
        MetricSizes.referenceMoistures()
                .forEach(row -> assertShown(row.table(), row.rule() + ", " + row.what() + ": moisture", row.source()));
        MetricTolerance.all()
                .forEach(row -> assertShown(
                        row.table(),
                        row.rule() + ", " + row.dimension() + " above "
                                + row.above().inMillimetres(0),
                        row.source()));
    }

    private static void assertShown(String table, String begins, Source source) {
        assertThat(SizeTable.named(table).facts()).anySatisfy(fact -> {
            assertThat(fact.statement()).startsWith(begins);
            assertThat(fact.source()).isEqualTo(source);
        });
    }

    @Test
    void theNarrowFaceInWordsIsTheOneThatIsComputed() {
        String words = MetricSizes.gostNarrowFaces();
        for (int[] range : new int[][] {{16, 50}, {60, 100}}) {
            for (int millimetres : range) {
                assertThat(words)
                        .contains(MetricSizes.gostLeastNarrowFace(Length.millimetres(millimetres))
                                        .inMillimetres(0)
                                + " at " + range[0] + " to " + range[1] + " mm thick");
            }
        }
        assertThat(words).contains("3/5 of the thickness at 125 to 300 mm thick");
        assertThat(MetricSizes.gostLeastNarrowFace(Length.millimetres(125))).isEqualTo(Length.millimetres(75));
        assertThatExceptionOfType(OutOfDomainException.class)
                .isThrownBy(() -> MetricSizes.gostLeastNarrowFace(Length.millimetres(55)))
                .withMessageContaining("16 to 50 mm; 60 to 100 mm; 125 to 300 mm");
    }

    /** The doubt of a timber's cell stands there as the table of timbers has it. */
    @Test
    void aTimbersDoubtIsTheOneOfItsRow() {
        assertThat(SOFTWOOD.ofNominal(in("8")))
                .filteredOn(entry -> entry.kind().equals("timber"))
                .extracting(Entry::note)
                .containsExactly("green: one reprint takes 3/4 in off a green timber too");
        assertThat(SoftwoodSizes.timberDoubt(in("6"))).isEmpty();
    }
}
