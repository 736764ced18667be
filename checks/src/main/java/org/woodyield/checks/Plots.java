package org.woodyield.checks;

import static org.woodyield.checks.Examples.inches;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.woodyield.log.LogSolid;
import org.woodyield.measure.Length;
import org.woodyield.sawing.LengthWorth;
import org.woodyield.sawing.PieceOption;
import org.woodyield.sawing.Saw;
import org.woodyield.sawing.SearchSpace;
import org.woodyield.sawing.Wane;
import org.woodyield.scaling.LogRule;
import org.woodyield.scaling.LogRules;
import org.woodyield.show.NumberText;
import org.woodyield.source.Sourced;
import org.woodyield.source.Standing;
import org.woodyield.wood.EquilibriumMoisture;
import org.woodyield.wood.Species;
import org.woodyield.wood.SpeciesCatalogue;
import org.woodyield.work.CuttingRate;
import org.woodyield.work.WorkInput;
import org.woodyield.work.WorkInputs;

/** The plots of the book; every value is computed from core when the book is written. */
final class Plots {

    /** The plot that is drawn in panels. */
    static final String EVERY_RULE = "every-rule";

    private static final double LENGTH_FEET = 12;
    private static final int SPECIES = 18;
    private static final List<String> RULES = List.of("doyle", "scribner-decimal-c", "international-quarter");

    private Plots() {}

    static List<Plot> all() {
        List<Plot> all = new ArrayList<>(List.of(rules(), everyRule(), overrun(), kerf()));
        all.addAll(SawingPlots.all());
        all.addAll(List.of(moisture(), shrinkage(), feed()));
        return List.copyOf(all);
    }

    private static Plot rules() {
        double[] diameters = range(6, 30, 1);
        Map<String, List<Double>> series = new LinkedHashMap<>();
        for (String id : RULES) {
            LogRule rule = LogRules.byId(id);
            series.put(label(rule), values(diameters, rule, d -> rule.boardFeet(d, 16)));
        }
        return numbers(
                "rules",
                "Board feet by rule and diameter",
                "Three rules for logs of 16 ft. Doyle is far below the others in small logs and catches up as logs grow.",
                "scaling diameter, in",
                "board feet, scale",
                diameters,
                series);
    }

    /** Each rule over one of them, for at the size of a panel their own curves look alike. */
    private static Plot everyRule() {
        double[] diameters = range(6, 30, 1);
        LogRule beside = LogRules.byId("international-quarter");
        Map<String, List<Double>> series = new LinkedHashMap<>();
        for (LogRule rule : LogRules.all()) {
            series.put(
                    rule.id() + " [" + rule.standing().label() + "]",
                    values(
                            diameters,
                            rule,
                            d -> 100 * rule.boardFeet(d, LENGTH_FEET) / beside.unroundedBoardFeet(d, LENGTH_FEET)));
        }
        return numbers(
                EVERY_RULE,
                "Every log rule against International 1/4-inch",
                "Board feet by each rule for logs of 12 ft, in percent of International 1/4-inch before its rounding, which is the"
                        + " broken line at 100; from 6 to 30 in of the diameter where the rule takes it. More than 200 is drawn at"
                        + " the upper edge. Rules that were recalled with little confidence are left out; the standing of the"
                        + " others is in brackets.",
                "scaling diameter, in",
                "percent of International 1/4-inch",
                diameters,
                series);
    }

    private static Plot overrun() {
        double[] diameters = range(8, 24, 2);
        List<Double> tally = new ArrayList<>();
        for (double diameter : diameters) {
            tally.add(boards(LogExamples.log(LENGTH_FEET, diameter, diameter + 1.5), 0.25));
        }
        Map<String, List<Double>> series = new LinkedHashMap<>();
        for (String id : RULES) {
            LogRule rule = LogRules.byId(id);
            List<Double> percent = new ArrayList<>();
            for (int i = 0; i < diameters.length; i++) {
                double scale =
                        rule.diameterInches().holds(diameters[i]) ? rule.boardFeet(diameters[i], LENGTH_FEET) : 0;
                percent.add(scale > 0 ? 100 * (tally.get(i) / scale - 1) : Double.NaN);
            }
            series.put(label(rule), percent);
        }
        return numbers(
                "overrun",
                "Overrun by rule and diameter",
                "What the tally exceeds the scale by, for straight logs of 12 ft with 1/8 in of taper to the foot, sawn live "
                        + "into boards 1 in thick with square edges, kerf 1/4 in, by the best pattern of the library. Green "
                        + "sizes without allowance for drying and planing: a mill gets less.",
                "small-end diameter, in",
                "overrun, %",
                diameters,
                series);
    }

    private static Plot kerf() {
        double[] kerfs = range(0.0625, 0.5, 0.0625);
        Map<String, List<Double>> series = new LinkedHashMap<>();
        for (double diameter : new double[] {10, 14, 20}) {
            LogSolid solid = LogSolid.of(LogExamples.log(LENGTH_FEET, diameter, diameter + 1.5));
            double cubicFeet = solid.volume().cubicFeet();
            series.put(
                    "log of " + NumberText.full(diameter) + " in",
                    DoubleStream.of(kerfs)
                            .map(kerf -> 100
                                    * boards(LogExamples.log(LENGTH_FEET, diameter, diameter + 1.5), kerf)
                                    / 12
                                    / cubicFeet)
                            .boxed()
                            .toList());
        }
        return numbers(
                "kerf",
                "Yield against kerf",
                "Share of the wood of a straight log of 12 ft that becomes boards 1 in thick, sawn live by the best pattern of "
                        + "the library. The steps come where one board more no longer fits.",
                "kerf, in",
                "lumber in the solid volume, %",
                kerfs,
                series);
    }

    /** Board feet of the best live pattern into boards of 1 in, 3 in to 16 in wide, as long as the log. */
    private static double boards(org.woodyield.log.Log log, double kerfInches) {
        Length length = log.length();
        PieceOption option = new PieceOption(
                "board",
                Length.inches(1),
                Length.inches(3),
                Length.inches(16),
                Length.inches(1, 2),
                List.of(new LengthWorth(length, 3 * length.toFeet() / 12)),
                Wane.NONE);
        Saw saw = new Saw(
                "saw",
                inches(kerfInches),
                Length.inches(40),
                Length.inches(1, 16),
                Saw.Reference.BED,
                Length.ZERO,
                Length.ZERO);
        SearchSpace space = SearchSpace.standard().withTurns(List.of(0.0)).withCants(false);
        return SawingPlots.boardFeet(log, saw, option, space);
    }

    private static Plot moisture() {
        double[] humidities = range(5, 95, 5);
        Map<String, List<Double>> series = new LinkedHashMap<>();
        for (double temperature : new double[] {30, 70, 110}) {
            series.put(
                    NumberText.full(temperature) + " °F",
                    DoubleStream.of(humidities)
                            .map(h -> EquilibriumMoisture.fahrenheit().percent(temperature, h))
                            .boxed()
                            .toList());
        }
        return numbers(
                "moisture",
                "Equilibrium moisture",
                "The moisture, in percent of the oven-dry mass, that wood comes to in air that stays as it is. The coefficients "
                        + "are from MEMORY; the computed values agree with a published table.",
                "relative humidity, %",
                "equilibrium moisture, %",
                humidities,
                series);
    }

    private static Plot shrinkage() {
        List<Species> all = SpeciesCatalogue.published().all().stream()
                .filter(species -> published(species.radialPercent()) && published(species.tangentialPercent()))
                .toList();
        List<Species> shown = IntStream.range(0, Math.min(SPECIES, all.size()))
                .mapToObj(i -> all.get(i * all.size() / Math.min(SPECIES, all.size())))
                .toList();
        Map<String, List<Double>> series = new LinkedHashMap<>();
        series.put(
                "radial",
                shown.stream()
                        .map(species -> species.radialPercent().orElseThrow().value())
                        .toList());
        series.put(
                "tangential",
                shown.stream()
                        .map(species ->
                                species.tangentialPercent().orElseThrow().value())
                        .toList());
        return new Plot(
                "shrinkage",
                "Shrinkage by species",
                "From green to oven-dry, species picked evenly from those of the library whose two values are published. Along the rings "
                        + "wood shrinks about twice as much as across them.",
                "species",
                "shrinkage, %",
                shown.stream().map(Species::commonName).toList(),
                true,
                series);
    }

    private static boolean published(java.util.Optional<Sourced> value) {
        return value.map(sourced -> sourced.source().standing() == Standing.PUBLISHED)
                .orElse(false);
    }

    private static Plot feed() {
        double[] widths = range(4, 24, 1);
        Map<String, List<Double>> series = new LinkedHashMap<>();
        for (double power : new double[] {3, 4.2, 6}) {
            WorkInputs inputs = WorkInputs.chainDefaults().with(WorkInput.RATED_POWER, power);
            CuttingRate rate = CuttingRate.of(inputs, Examples.pine(), inches(0.375));
            series.put(
                    "chain saw of " + NumberText.full(power) + " kW",
                    DoubleStream.of(widths)
                            .map(width -> rate.feedCentimetresPerSecond(inches(width)))
                            .boxed()
                            .toList());
        }
        return numbers(
                "feed",
                "Feed against width of cut",
                "A chain saw in eastern white pine, kerf 3/8 in. Flat where the chain or the sawyer limits the feed, falling "
                        + "where the engine does. It rests on a cutting energy from MEMORY: a factor of two either way.",
                "width of cut, in",
                "feed, cm/s",
                widths,
                series);
    }

    private static String label(LogRule rule) {
        return rule.name()
                + (rule.standing() == Standing.PUBLISHED
                        ? ""
                        : " [" + rule.standing().label() + "]");
    }

    private static List<Double> values(double[] diameters, LogRule rule, DoubleUnaryOperator value) {
        return DoubleStream.of(diameters)
                .map(d -> rule.diameterInches().holds(d) ? value.applyAsDouble(d) : Double.NaN)
                .boxed()
                .toList();
    }

    private static double[] range(double from, double to, double step) {
        int count = (int) StrictMath.floor((to - from) / step + 0.5) + 1;
        double[] values = new double[count];
        for (int i = 0; i < count; i++) {
            values[i] = from + i * step;
        }
        return values;
    }

    private static Plot numbers(
            String id,
            String title,
            String words,
            String xName,
            String yName,
            double[] x,
            Map<String, List<Double>> series) {
        List<String> places = DoubleStream.of(x).mapToObj(NumberText::full).toList();
        return new Plot(id, title, words, xName, yName, places, false, series);
    }
}
