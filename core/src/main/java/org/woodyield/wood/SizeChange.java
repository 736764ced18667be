package org.woodyield.wood;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.woodyield.measure.Domain;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.source.Sourced;
import org.woodyield.source.Sources;
import org.woodyield.working.Calculation;
import org.woodyield.working.Working;

/**
 * What a size becomes when the wood comes to another moisture, by each of the models that can say so. They do not agree to
 * the last digit, and where one ends is not where another does; {@link #compare} asks them all.
 *
 * <p>By a model of shrinkage from green: D (1 - S2/100) / (1 - S1/100), S1 and S2 its shrinkage to the two moistures. By
 * dimensional-change coefficients: D + D C (M2 - M1), C turned with the rings.
 */
public final class SizeChange {

    /** At and above this, wood counts as green and has not shrunk yet, percent. */
    public static final double GREEN = 30;

    /** How the model of {@link #byCoefficient} is named where all are asked. */
    public static final String COEFFICIENT = "dimensional-change coefficient";

    private static final Domain SIZE = Domain.positive("size", "");
    private static final Domain MOISTURE =
            new Domain("moisture", "%", 0, 300, "give the moisture on the oven-dry basis, water over dry wood");

    /**
     * What one model says.
     *
     * @param model the model in words
     * @param size the size at the second moisture, in the unit in which it was given
     * @param working how it came about
     */
    public record Result(String model, double size, Working working) {}

    /**
     * A model that does not apply.
     *
     * @param model the model in words
     * @param reason what it would need
     */
    public record LeftOut(String model, String reason) {}

    /**
     * What all models say.
     *
     * @param results of the models that apply, the one with the widest range first
     * @param leftOut the models that do not, each with its reason
     */
    public record Comparison(List<Result> results, List<LeftOut> leftOut) {
        /** Keeps immutable copies. */
        public Comparison {
            results = List.copyOf(results);
            leftOut = List.copyOf(leftOut);
        }

        /**
         * How far the models are apart.
         *
         * @return greatest less least size; empty where fewer than two models apply
         */
        public Optional<Double> spread() {
            if (results.size() < 2) {
                return Optional.empty();
            }
            double least = results.stream().mapToDouble(Result::size).min().orElseThrow();
            double greatest = results.stream().mapToDouble(Result::size).max().orElseThrow();
            return Optional.of(greatest - least);
        }
    }

    private SizeChange() {}

    /**
     * The size at another moisture by a model of shrinkage from green.
     *
     * @param model the model
     * @param species the species
     * @param face the dimension
     * @param ringAngleDegrees angle between the annual rings and the wide face, 0 to 90
     * @param size the size at the first moisture, in any unit
     * @param fromPercent the first moisture: one for which the model holds, or 30 % and more for green wood
     * @param toPercent the second moisture, likewise
     * @return the size in the same unit
     * @throws OutOfDomainException if the size is not above zero, or the model refuses the species or a moisture
     */
    @Calculation("wood.size-change")
    public static double size(
            ShrinkageModel model,
            Species species,
            Face face,
            double ringAngleDegrees,
            double size,
            double fromPercent,
            double toPercent) {
        SIZE.require(size);
        double before = shrinkage(model, species, face, ringAngleDegrees, fromPercent);
        double after = shrinkage(model, species, face, ringAngleDegrees, toPercent);
        return size * (1 - after / 100) / (1 - before / 100);
    }

    private static double shrinkage(
            ShrinkageModel model, Species species, Face face, double ringAngleDegrees, double moisture) {
        MOISTURE.require(moisture);
        boolean shrinks = moisture < GREEN || !model.appliesTo(species);
        return shrinks ? model.percent(species, face, ringAngleDegrees, moisture) : 0;
    }

    /**
     * How {@link #size} came about.
     *
     * @param model the model
     * @param species the species
     * @param face the dimension
     * @param ringAngleDegrees angle between the annual rings and the wide face
     * @param size the size at the first moisture
     * @param unit the unit of the size
     * @param fromPercent the first moisture
     * @param toPercent the second moisture
     * @return the working; its value equals the size bit for bit
     * @throws OutOfDomainException as {@link #size}
     */
    public static Working sizeWorking(
            ShrinkageModel model,
            Species species,
            Face face,
            double ringAngleDegrees,
            double size,
            String unit,
            double fromPercent,
            double toPercent) {
        SIZE.require(size);
        Working.Builder working = Working.of(
                        "Size at another moisture, " + words(face) + ", " + species.commonName() + ", " + model.label())
                .given("D_1", "size at the first moisture", size, unit);
        shrinkageSteps(working, "S_1", "first", model, species, face, ringAngleDegrees, fromPercent);
        shrinkageSteps(working, "S_2", "second", model, species, face, ringAngleDegrees, toPercent);
        return working.step(
                        "D_2",
                        "size at the second moisture",
                        "D_1 * (1 - S_2 / 100) / (1 - S_1 / 100)",
                        unit,
                        Sources.get("definition"))
                .build();
    }

    private static void shrinkageSteps(
            Working.Builder working,
            String symbol,
            String which,
            ShrinkageModel model,
            Species species,
            Face face,
            double ringAngleDegrees,
            double moisture) {
        String name = "shrinkage from green to the " + which + " moisture";
        double value = shrinkage(model, species, face, ringAngleDegrees, moisture);
        if (moisture < GREEN) {
            working.include(model.working(species, face, ringAngleDegrees, moisture))
                    .step(symbol, name, "S", "%", Sources.get("definition"));
        } else {
            working.constant(symbol, name + ": none, the wood is green", value, "%", Sources.get("definition"));
        }
    }

    /**
     * The size at another moisture by the species' dimensional-change coefficients: those of Table 13-5, or where it was not
     * read those that follow from shrinkage to oven-dry.
     *
     * @param species a species with either
     * @param face the dimension
     * @param ringAngleDegrees angle between the annual rings and the wide face, 0 to 90
     * @param size the size at the first moisture, in any unit
     * @param fromPercent the first moisture, 6 to 14 %
     * @param toPercent the second moisture, 6 to 14 %
     * @return the size in the same unit
     * @throws OutOfDomainException if an argument is outside or the species has neither
     */
    @Calculation("wood.size-by-coefficient")
    public static double byCoefficient(
            Species species, Face face, double ringAngleDegrees, double size, double fromPercent, double toPercent) {
        RingAngle.DEGREES.require(ringAngleDegrees);
        double turned = RingAngle.turned(
                face,
                coefficient(species, DimensionalChange.Direction.RADIAL),
                coefficient(species, DimensionalChange.Direction.TANGENTIAL),
                ringAngleDegrees);
        return size + DimensionalChange.change(size, turned, fromPercent, toPercent);
    }

    /**
     * How {@link #byCoefficient} came about.
     *
     * @param species a species with coefficients or shrinkage
     * @param face the dimension
     * @param ringAngleDegrees angle between the annual rings and the wide face
     * @param size the size at the first moisture
     * @param unit the unit of the size
     * @param fromPercent the first moisture
     * @param toPercent the second moisture
     * @return the working; its value equals the size bit for bit
     * @throws OutOfDomainException as {@link #byCoefficient}
     */
    public static Working byCoefficientWorking(
            Species species,
            Face face,
            double ringAngleDegrees,
            double size,
            String unit,
            double fromPercent,
            double toPercent) {
        byCoefficient(species, face, ringAngleDegrees, size, fromPercent, toPercent); // refuses what cannot be shown
        Working.Builder working = Working.of("Size at another moisture, " + words(face) + ", " + species.commonName()
                        + ", dimensional-change coefficient")
                .given("D", "size at the first moisture", size, unit)
                .given("M_1", "first moisture", fromPercent, "%")
                .given("M_2", "second moisture", toPercent, "%");
        RingAngle.given(working, ringAngleDegrees).constant("pi", "pi", Math.PI, "", Sources.get("definition"));
        coefficientSteps(working, "R", "radial", species, DimensionalChange.Direction.RADIAL);
        coefficientSteps(working, "T", "tangential", species, DimensionalChange.Direction.TANGENTIAL);
        RingAngle.shares(working)
                .step(
                        "C",
                        "change in this direction for each percent",
                        RingAngle.formula(face, "C_R", "C_T"),
                        "per %",
                        Sources.get("ring-angle"))
                .step("change", "change of the size", "D * (C * (M_2 - M_1))", unit, Sources.get("wood-handbook-13-2"))
                .step("D_2", "size at the second moisture", "D + change", unit, Sources.get("definition"))
                .note("Based on the size at 10 % moisture; the handbook says the true change is about 5 % more.");
        return working.build();
    }

    private static double coefficient(Species species, DimensionalChange.Direction direction) {
        return DimensionalChange.coefficient(species, direction)
                .map(Sourced::value)
                .orElseGet(() -> DimensionalChange.coefficientFromShrinkage(
                        shrinkage(species, direction).value()));
    }

    private static void coefficientSteps(
            Working.Builder working,
            String letter,
            String word,
            Species species,
            DimensionalChange.Direction direction) {
        Optional<Sourced> printed = DimensionalChange.coefficient(species, direction);
        String name = word + " change for each percent";
        if (printed.isPresent()) {
            working.lookup(
                    "C_" + letter,
                    name,
                    species.commonName(),
                    printed.get().value(),
                    "per %",
                    printed.get().source());
            return;
        }
        Sourced shrinkage = shrinkage(species, direction);
        working.lookup(
                        "S_" + letter,
                        word + " shrinkage to oven-dry",
                        species.commonName(),
                        shrinkage.value(),
                        "%",
                        shrinkage.source())
                .step(
                        "C_" + letter,
                        name + ", not read in print",
                        "S_" + letter + " / (3000 - 20 * S_" + letter + ")",
                        "per %",
                        Sources.get("definition"));
    }

    private static Sourced shrinkage(Species species, DimensionalChange.Direction direction) {
        return (direction == DimensionalChange.Direction.RADIAL ? species.radialPercent() : species.tangentialPercent())
                .orElseThrow(() -> new OutOfDomainException(
                        "species",
                        species.commonName(),
                        "",
                        "species with a dimensional-change coefficient or shrinkage in the tables",
                        "choose a species that shrinks alike"));
    }

    /**
     * Asks every model.
     *
     * @param species the species
     * @param face the dimension
     * @param ringAngleDegrees angle between the annual rings and the wide face, 0 flat-sawn to 90 quarter-sawn
     * @param size the size at the first moisture
     * @param unit the unit of the size
     * @param fromPercent the first moisture; 30 % and more is green
     * @param toPercent the second moisture
     * @return what each says, or why it cannot
     * @throws OutOfDomainException if no model could be asked: size, angle or a moisture is no such thing
     */
    public static Comparison compare(
            Species species,
            Face face,
            double ringAngleDegrees,
            double size,
            String unit,
            double fromPercent,
            double toPercent) {
        SIZE.require(size);
        RingAngle.DEGREES.require(ringAngleDegrees);
        MOISTURE.require(fromPercent);
        MOISTURE.require(toPercent);
        List<Result> results = new ArrayList<>();
        List<LeftOut> leftOut = new ArrayList<>();
        for (ShrinkageModel model : List.of(ShrinkageModel.straightLine(), ShrinkageModel.lumberEquation())) {
            ask(
                    model.label(),
                    () -> sizeWorking(model, species, face, ringAngleDegrees, size, unit, fromPercent, toPercent),
                    results,
                    leftOut);
        }
        ask(
                COEFFICIENT,
                () -> byCoefficientWorking(species, face, ringAngleDegrees, size, unit, fromPercent, toPercent),
                results,
                leftOut);
        return new Comparison(results, leftOut);
    }

    private static void ask(String model, Supplier<Working> question, List<Result> results, List<LeftOut> leftOut) {
        try {
            Working working = question.get();
            results.add(new Result(model, working.value(), working));
        } catch (OutOfDomainException e) {
            leftOut.add(new LeftOut(model, e.getMessage()));
        }
    }

    private static String words(Face face) {
        return face == Face.WIDTH ? "width" : "thickness";
    }
}
