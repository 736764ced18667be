package org.woodyield.show;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.woodyield.lumber.HardwoodTally;
import org.woodyield.lumber.NominalSize;
import org.woodyield.lumber.Tally;
import org.woodyield.measure.Length;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.measure.Rounding;

class TallySheetTest {

    @Provide
    Arbitrary<List<Tally.Line>> lines() {
        Arbitrary<NominalSize> sizes =
                Arbitraries.of("2x4", "2x6", "1x8", "3/4 x 6", "8x8", "2x13").map(NominalSize::parse);
        Arbitrary<Length> lengths = Arbitraries.integers().between(1, 9000).map(Length::millimetres);
        return Combinators.combine(
                        sizes,
                        lengths,
                        Arbitraries.integers().between(0, 500),
                        Arbitraries.of("", "pine", "oak"),
                        Arbitraries.of("", "No. 2"))
                .as(Tally.Line::new)
                .list()
                .ofMinSize(1)
                .ofMaxSize(12);
    }

    @Provide
    Arbitrary<List<TallySheet.Boards>> boards() {
        Arbitrary<Length> thicknesses =
                Arbitraries.of("3/4", "1", "1 1/4", "2").map(text -> Length.parse(text + " in"));
        // Quarter inches and whole feet, so that exact halves are frequent.
        Arbitrary<Length> widths = Arbitraries.integers().between(12, 60).map(quarters -> Length.inches(quarters, 4));
        Arbitrary<Length> lengths = Arbitraries.integers().between(4, 16).map(Length::feet);
        return Combinators.combine(
                        Combinators.combine(thicknesses, widths, lengths).as(HardwoodTally.Board::new),
                        Arbitraries.integers().between(1, 9),
                        Arbitraries.of("", "oak"),
                        Arbitraries.of("FAS", "No. 1 Common"))
                .as(TallySheet.Boards::new)
                .list()
                .ofMinSize(1)
                .ofMaxSize(12);
    }

    @Property(tries = 100)
    void noSumDependsOnTheOrderOfTheRows(
            @ForAll("lines") List<Tally.Line> lines,
            @ForAll("boards") List<TallySheet.Boards> boards,
            @ForAll Random random) {
        List<Tally.Line> otherLines = new ArrayList<>(lines);
        List<TallySheet.Boards> otherBoards = new ArrayList<>(boards);
        Collections.shuffle(otherLines, random);
        Collections.shuffle(otherBoards, random);
        assertThat(nominal(otherLines).sums()).isEqualTo(nominal(lines).sums());
        assertThat(measured(otherLines).sums()).isEqualTo(measured(lines).sums());
        assertThat(surface(otherBoards).sums()).isEqualTo(surface(boards).sums());
    }

    @Property(tries = 100)
    void theWholeIsThatOfTheTally(@ForAll("lines") List<Tally.Line> lines) {
        List<PlanTable.Cell> all = last(nominal(lines));
        assertThat(all.get(3).text()).isTrue();
        assertThat(all.get(4).value()).contains(new Tally(lines).total().value());
    }

    @Property(tries = 100)
    void rowsAddUpToTheWhole(@ForAll("boards") List<TallySheet.Boards> boards) {
        TallySheet sheet = surface(boards);
        double rows = sheet.rows().rows().stream()
                .mapToDouble(row -> row.get(6).value().orElseThrow())
                .sum();
        assertThat(last(sheet).get(4).value()).contains(rows);
    }

    @Property(tries = 100)
    void boardsWithoutASpeciesAndGradeAreCountedAsTheLibraryCountsThem(
            @ForAll("boards") List<TallySheet.Boards> boards) {
        List<TallySheet.Boards> plain = boards.stream()
                .map(row -> new TallySheet.Boards(row.board(), row.count(), "", ""))
                .toList();
        HardwoodTally tally = new HardwoodTally(plain.stream()
                .flatMap(row -> Collections.nCopies(row.count(), row.board()).stream())
                .toList());
        double surface = tally.surfaceMeasures(Rounding.HALF_UP).stream()
                .mapToLong(Long::longValue)
                .sum();
        assertThat(last(surface(plain)).get(5).value()).contains(surface);
        double whole = new BigDecimal(last(surface(plain)).get(4).value().orElseThrow())
                .setScale(0, RoundingMode.HALF_UP)
                .doubleValue();
        assertThat(whole).isEqualTo(tally.boardFeet(Rounding.HALF_UP, Rounding.HALF_UP));
    }

    @Test
    void sizesThatAreNotDressedAreLeftOutOfTheSolidVolumeAndCounted() {
        TallySheet sheet = nominal(List.of(
                new Tally.Line(NominalSize.parse("2x4"), Length.feet(8), 24, "", ""),
                new Tally.Line(NominalSize.parse("2x13"), Length.feet(8), 2, "", "")));
        // By hand: 24 x 5 1/3 + 2 x 17 1/3 = 162 2/3; 24 x 1.5 x 3.5 x 96 / 1728 = 7 ft3.
        assertThat(sheet.text()).contains("162 2/3 bf, 163 bf", "7.000", "ft3: 2 pieces left out");
    }

    @Test
    void nothingIsNoTally() {
        assertThatExceptionOfType(OutOfDomainException.class).isThrownBy(() -> nominal(List.of()));
        assertThatExceptionOfType(OutOfDomainException.class).isThrownBy(() -> surface(List.of()));
        assertThatExceptionOfType(OutOfDomainException.class).isThrownBy(() -> measured(List.of()));
    }

    private static TallySheet nominal(List<Tally.Line> lines) {
        return TallySheet.nominal(new Tally(lines), Rounding.HALF_UP, false);
    }

    private static TallySheet surface(List<TallySheet.Boards> boards) {
        return TallySheet.surface(boards, Rounding.HALF_UP, Rounding.HALF_UP, Optional.empty(), false);
    }

    private static TallySheet measured(List<Tally.Line> lines) {
        return TallySheet.measured(
                lines.stream()
                        .map(line -> new TallySheet.Measured(
                                line.size().thickness(),
                                line.size().width(),
                                line.length(),
                                line.count(),
                                line.species(),
                                line.grade()))
                        .toList(),
                false);
    }

    private static List<PlanTable.Cell> last(TallySheet sheet) {
        List<List<PlanTable.Cell>> rows = sheet.sums().rows();
        return rows.get(rows.size() - 1);
    }
}
