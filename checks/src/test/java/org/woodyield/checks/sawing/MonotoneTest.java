package org.woodyield.checks.sawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import org.woodyield.log.LogSolid;
import org.woodyield.log.LogSolid.Station;
import org.woodyield.measure.Length;
import org.woodyield.measure.Rounding;
import org.woodyield.sawing.Frame;
import org.woodyield.sawing.LengthWorth;
import org.woodyield.sawing.PassCost;
import org.woodyield.sawing.PieceOption;
import org.woodyield.sawing.Saw;
import org.woodyield.sawing.SearchSpace;
import org.woodyield.sawing.Wane;

/** When the optimum never falls, and for each condition a case in which it falls without it. */
class MonotoneTest {

    private static final PassCost BY_WIDTH = (stage, width, along) -> 200 * width;

    /**
     * A thinner kerf by whole grid steps, where each pass costs the same, in live sawing of a straight, sound log parallel to
     * its axis: each face that moves moves toward the axis, and the pieces go with their faces. So no piece needs to be sawn
     * thicker; it is tried with and without.
     */
    @Property(tries = 400)
    void thinnerKerf(@ForAll long seed) {
        Random random = new Random(seed);
        aThinnerKerfNeverLoses(straight(Problem.random(seed, false), random), random);
    }

    /**
     * With cants it holds where passes are free. Strips that filled a cant from face to face no longer do with a thinner kerf,
     * and need an edge pass more.
     */
    @Property(tries = 400)
    void thinnerKerfWithCants(@ForAll long seed) {
        Random random = new Random(seed);
        aThinnerKerfNeverLoses(straight(Problem.random(seed, true), random).withCost(PassCost.free()), random);
    }

    private static void aThinnerKerfNeverLoses(Problem straight, Random random) {
        Problem any = straight.withoutLimits();
        int grid = 1 + random.nextInt(2);
        Length step = any.saw().settingStep();
        Length less = step.times(grid);
        Length over = any.space().overThick();
        SearchSpace space = any.space().withGrid(less);
        Problem thick =
                any.withSaw(any.saw().withKerf(any.saw().kerf().plus(less))).withSpace(space);
        Problem thin = any.withSpace(random.nextBoolean() ? space.withOverThick(over.plus(less)) : space);
        assertThat(thin.value()).isGreaterThanOrEqualTo(thick.value());
    }

    /** A log that contains the other, with the same axis; no limit of the saw, and each pass costs the same. */
    @Property(tries = 400)
    void moreWood(@ForAll long seed) {
        Random random = new Random(seed);
        Problem old = alongItsAxis(seed, random);
        assertThat(old.withSolid(larger(old.solid(), random)).value()).isGreaterThanOrEqualTo(old.value());
    }

    /** The same with heart rot in it, which stays where it is and as large as it is. */
    @Property(tries = 400)
    void moreWoodAroundTheSameRot(@ForAll long seed) {
        Random random = new Random(seed);
        Problem old = alongItsAxis(seed, random).withRandomRot(seed);
        LogSolid larger = larger(old.solid(), random).withRot(old.solid().rot().orElseThrow());
        assertThat(old.withSolid(larger).value()).isGreaterThanOrEqualTo(old.value());
    }

    private static Problem alongItsAxis(long seed, Random random) {
        Problem any = Problem.random(seed, random.nextBoolean()).withoutLimits();
        return any.withSpace(any.space().withLays(List.of(Frame.Lay.AXIS))).withCost(PassCost.each(random.nextInt(8)));
    }

    /** Wood laid on all around the same axis; without rot. */
    private static LogSolid larger(LogSolid old, Random random) {
        List<Station> stations = new ArrayList<>();
        for (int i = 0; i < old.stationCount(); i++) {
            Station s = old.station(i);
            stations.add(new Station(
                    s.zMetres(),
                    s.meanRadiusMetres() + 0.006 * random.nextDouble(),
                    s.centreXMetres(),
                    s.centreYMetres()));
        }
        return LogSolid.of(stations, old.axisRatio(), Length.ofMetres(old.barkMetres(), Rounding.HALF_EVEN));
    }

    /** More sizes, cants too, turns, frames, starts or thicker pieces, or a grid that holds the other's points. */
    @Property(tries = 400)
    void moreChoice(@ForAll long seed) {
        Random random = new Random(seed);
        Problem any = Problem.random(seed, false);
        Problem few = any.withCost(PassCost.each(random.nextInt(8)))
                .withSpace(any.space().withGrid(Length.millimetres(24)));
        SearchSpace space = few.space();
        List<PieceOption> sizes = new ArrayList<>(few.options());
        sizes.add(new PieceOption(
                "one more",
                Length.millimetres(12),
                Length.millimetres(16),
                Length.millimetres(16),
                Length.ZERO,
                List.of(new LengthWorth(Length.millimetres(2100), 20)),
                Wane.NONE));
        List<Double> turns = new ArrayList<>(space.turnsDegrees());
        turns.add(45.0);
        List<Frame.Lay> lays = new ArrayList<>(space.lays());
        lays.add(Frame.Lay.BARK_ABOVE);
        Problem more = switch (random.nextInt(7)) {
            case 0 -> few.withOptions(sizes);
            case 1 -> few.withSpace(space.withCants(true));
            case 2 -> few.withSpace(space.withTurns(turns));
            case 3 -> few.withSpace(space.withLays(lays));
            case 4 ->
                few.withSpace(
                        space.withStartStep(Length.millimetres(space.startStep().isPositive() ? 100 : 700)));
            case 5 -> few.withSpace(space.withOverThick(space.overThick().plus(Length.millimetres(8))));
            default -> few.withSpace(space.withGrid(Length.millimetres(8)));
        };
        assertThat(more.value()).isGreaterThanOrEqualTo(few.value());
    }

    private static Problem straight(Problem problem, Random random) {
        double small = problem.solid().station(0).meanRadiusMetres();
        return new Problem(
                LogSolid.of(
                        List.of(
                                new Station(0, small, 0, 0),
                                new Station(3, small * (1 + 0.3 * random.nextDouble()), 0, 0)),
                        problem.solid().axisRatio(),
                        Length.ZERO),
                problem.saw(),
                problem.options(),
                problem.space().withTurns(List.of(90.0 * random.nextInt(2))).withLays(List.of(Frame.Lay.AXIS)),
                PassCost.each(random.nextInt(8)));
    }

    /** A cylinder and one size, in steps of 4 mm; passes are free. */
    static Problem cylinder(double radius, int kerf, int grid, int overThick, boolean cants, int thickness, int width) {
        Length step = Length.millimetres(4);
        double r = radius * 0.004;
        return new Problem(
                        LogSolid.of(List.of(new Station(0, r, 0, 0), new Station(3, r, 0, 0)), 1, Length.ZERO),
                        new Saw(
                                "",
                                step.times(kerf),
                                Problem.WIDE,
                                step,
                                Saw.Reference.PREVIOUS_FACE,
                                Length.ZERO,
                                Length.ZERO),
                        List.of(),
                        SearchSpace.standard()
                                .withGrid(step.times(grid))
                                .withOverThick(step.times(overThick))
                                .withCants(cants),
                        PassCost.free())
                .withSize(thickness, width);
    }

    @Test
    void aKerfThinnerByPartOfAGridStepCanBeWorse() {
        assertThat(cylinder(6.53, 1, 3, 0, false, 2, 4)
                        .withSize(4, 5)
                        .withCost(PassCost.each(1))
                        .value())
                .isLessThan(cylinder(6.53, 2, 3, 0, false, 2, 4)
                        .withSize(4, 5)
                        .withCost(PassCost.each(1))
                        .value());
    }

    @Test
    void aThinnerKerfCanBeWorseWhereStripsFilledTheCantAndPassesCost() {
        // Two strips of 3 and a kerf of 2 fill the cant of 8.
        assertThat(twoStripsInACant(1, 1)).isLessThan(twoStripsInACant(2, 0));
        assertThat(twoStripsInACant(1, 0)).isLessThan(twoStripsInACant(2, 0));
    }

    /** Boards of 3 by 8, worth 24 each, at 1 a pass, in a log with rot from end to end; lengths in steps of 4 mm. */
    private static Problem aroundRot(double radius, int kerf, double rot) {
        Problem sound = cylinder(radius, kerf, 1, 0, false, 3, 8).withCost(PassCost.each(1));
        return sound.withSolid(sound.solid().withRot(new LogSolid.Rot(rot * 0.004, 0, 3, 0, 0)));
    }

    /**
     * A kerf of 2 runs along the rot of 1.9 and leaves two boards, 1 to 4 from the axis: three level passes and four edges, so
     * 2 x 24 - 7 = 41. A kerf of 1 leaves rot on a board there. Thicker boards are not allowed and would hold rot too. To cut
     * the rot out takes two kerfs of 1 with a slab of 1 between them, which moves a board to 2 to 5 from the axis: its corner, 4
     * to the side and 5 off, lies 6.4 from the axis, outside the radius of 6.3. One board stays: 24 - 4 = 20.
     */
    @Test
    void aKerfThinnerByAGridStepCanBeWorseWhereItRanAlongTheRotAndNoPieceMayBeThicker() {
        Problem thick = aroundRot(6.3, 2, 0.95);
        Problem thin = aroundRot(6.3, 1, 0.95);
        assertThat(thin.space().overThick()).isEqualTo(Length.ZERO);
        assertThat(thin.space().grid())
                .isEqualTo(thick.saw().kerf().minus(thin.saw().kerf()));
        assertThat(thick.value()).isEqualTo(41);
        assertThat(thin.value()).isEqualTo(20);
        // Without the rot the boards close up, and nothing is lost.
        assertThat(thin.withSolid(thin.sound()).value())
                .isGreaterThanOrEqualTo(thick.withSolid(thick.sound()).value());
    }

    private static double twoStripsInACant(int kerf, int overThick) {
        Length step = Length.millimetres(4);
        Problem strips = cylinder(6, kerf, 1, overThick, true, 3, 3);
        List<PieceOption> sizes = new ArrayList<>(strips.options());
        sizes.add(PieceOption.fixed(
                "wide", step.times(3), step.times(8), List.of(new LengthWorth(Length.millimetres(3000), 1))));
        return strips.withOptions(sizes).withCost(PassCost.each(4)).value();
    }

    @Test
    void aThinnerKerfCanBeWorseWhereItsCutsAreWiderAndCostMore() {
        assertThat(cylinder(8.8, 1, 1, 1, false, 2, 5).withCost(BY_WIDTH).value())
                .isLessThan(
                        cylinder(8.8, 2, 1, 0, false, 2, 5).withCost(BY_WIDTH).value());
    }

    @Test
    void moreWoodCanBeWorseWhereTheSawIsTooNarrowForIt() {
        Problem old = cylinder(4.3, 1, 1, 0, false, 2, 3);
        Saw s = old.saw();
        Saw narrow = new Saw(
                s.name(),
                s.kerf(),
                Length.millimetres(36),
                s.settingStep(),
                s.reference(),
                s.leastHeight(),
                s.sawingVariation());
        assertThat(cylinder(4.8, 1, 1, 0, false, 2, 3).withSaw(narrow).value())
                .isLessThan(old.withSaw(narrow).value());
    }

    /**
     * The two boards around the rot of 1.9, worth 41, stay in a thicker log. Where its rot is thicker too, 3.2, a kerf of 2
     * no longer takes it. With one board 2 to 5 from the axis, two kerfs and a slab leave the other 3 to 6 from it on the far
     * side: its corner lies 7.2 from the axis, outside 6.8. One board stays: 24 - 4 = 20.
     */
    @Test
    void moreWoodCanBeWorseWhereItsRotGrewToo() {
        assertThat(aroundRot(6.3, 2, 0.95).value()).isEqualTo(41);
        assertThat(aroundRot(6.8, 2, 0.95).value()).isEqualTo(41);
        assertThat(aroundRot(6.8, 2, 1.6).value()).isEqualTo(20);
    }

    @Test
    void moreWoodCanBeWorseWhereWiderCutsCostMore() {
        assertThat(cylinder(7.8, 1, 1, 0, false, 2, 4).withCost(BY_WIDTH).value())
                .isLessThan(
                        cylinder(7.3, 1, 1, 0, false, 2, 4).withCost(BY_WIDTH).value());
    }

    @Test
    void aFinerGridThatLacksThePointsOfTheOtherCanBeWorse() {
        assertThat(cylinder(6.3, 1, 2, 0, false, 2, 4)
                        .withCost(PassCost.each(1))
                        .value())
                .isLessThan(cylinder(6.3, 1, 3, 0, false, 2, 4)
                        .withCost(PassCost.each(1))
                        .value());
    }
}
