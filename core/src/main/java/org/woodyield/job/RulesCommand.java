package org.woodyield.job;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.woodyield.log.Log;
import org.woodyield.log.SolidVolume;
import org.woodyield.measure.Length;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.measure.Rounding;
import org.woodyield.scaling.CubicRule;
import org.woodyield.scaling.DiameterAt;
import org.woodyield.scaling.Firmwood;
import org.woodyield.scaling.Jurisdiction;
import org.woodyield.scaling.KerfRule;
import org.woodyield.scaling.LogRule;
import org.woodyield.scaling.LogRules;
import org.woodyield.scaling.Scale;
import org.woodyield.scaling.ScalingConvention;
import org.woodyield.show.NumberText;
import org.woodyield.show.RuleText;
import org.woodyield.show.WorkingText;
import org.woodyield.source.Sources;
import org.woodyield.wood.SpeciesCatalogue;
import org.woodyield.working.Working;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;

/** Lists log rules, cubic rules and laws, describes one, or shows how one scales a log. */
final class RulesCommand implements Subcommand {

    private static final String MIDDLE = "--middle";
    private static final String EXAMPLE = "such as '14 in' '16 ft'";

    @Override
    public String name() {
        return "rules";
    }

    @Override
    public CommandSpec spec() {
        return new Usage(
                        "Lists log rules, cubic rules and laws with their limits, standing and source, or shows the working"
                                + " of one.")
                .argumentIfAny(
                        "RULE",
                        "Key of a rule or of a place with a law, the latter also with " + Scalings.LAW
                                + " before it, or " + OwnRule.WORDS + "; without it all are listed.")
                .argumentIfAny(
                        "DIAMETER",
                        "Diameter inside bark, such as '14 in'; the working is then shown. For a log rule the scaling"
                                + " diameter, for a law that of the small end, for a cubic rule the reading at its place, for"
                                + " huber that of mid-length.")
                .argumentIfAny("LENGTH", "Length, such as '16 ft'.")
                .argumentIfAny(
                        "LARGE",
                        "Diameter of the large end, where a law divides the log or a rule asks for more than the small"
                                + " end; the other is then that of the small end.")
                .option(
                        MIDDLE,
                        "DIAMETER",
                        "Diameter at mid-length, for newton and huber; where both ends are given without it, their mean"
                                + " is assumed and the working says so.")
                .spec();
    }

    /** The log that is asked about. */
    private record Asked(Length diameter, Length length, Optional<Length> large, Optional<Length> middle) {

        Length needLarge(String why) {
            return large.orElseThrow(() -> new BadInputException(
                    "LARGE is not given; allowed: the diameter of the large end behind the length; " + why));
        }

        Log log(String why, boolean needed) {
            Length end = needed ? needLarge(why) : large.orElse(diameter);
            return new Log(
                    "asked about",
                    SpeciesCatalogue.published().all().iterator().next(),
                    length,
                    diameter,
                    diameter,
                    end,
                    Length.ZERO,
                    Length.ZERO,
                    0,
                    false);
        }
    }

    @Override
    public int run(ParseResult given, Terminal terminal) {
        String id = given.matchedPositionalValue(0, "");
        String diameter = given.matchedPositionalValue(1, "");
        String length = given.matchedPositionalValue(2, "");
        String large = given.matchedPositionalValue(3, "");
        String middle = given.matchedOptionValue(MIDDLE, null);
        if (id.isEmpty()) {
            return terminal.print("list", list());
        }
        List<String> problems = new ArrayList<>();
        Optional<Scaling> rule = OwnRule.is(id) ? OwnRule.read(id, problems).map(Scalings::plain) : Scalings.rule(id);
        if (!problems.isEmpty()) {
            throw new BadInputException(problems.toArray(String[]::new));
        }
        if (diameter.isBlank() != length.isBlank()) {
            throw new BadInputException("a working needs a diameter and a length, " + EXAMPLE);
        }
        Optional<Asked> asked = diameter.isEmpty()
                ? Optional.empty()
                : Optional.of(new Asked(
                        parsed("DIAMETER", diameter),
                        parsed("LENGTH", length),
                        large.isEmpty() ? Optional.empty() : Optional.of(parsed("LARGE", large)),
                        Optional.ofNullable(middle).map(text -> parsed(MIDDLE, text))));
        if (middle != null && rule.filter(RulesCommand::asksMiddle).isEmpty()) {
            throw new BadInputException(MIDDLE + " is not used by '" + id + "'; allowed: with "
                    + Arrays.stream(SolidVolume.values())
                            .filter(SolidVolume::asksMiddle)
                            .map(SolidVolume::id)
                            .collect(Collectors.joining(" or "))
                    + "; leave it out, and write the diameter at the place that the rule names as DIAMETER");
        }
        if (middle != null && asked.isEmpty()) {
            throw new BadInputException(
                    MIDDLE + " is given without a log; allowed: behind a diameter and a length, " + EXAMPLE);
        }
        if (rule.isEmpty()) {
            Optional<Jurisdiction> place = Scalings.law(id, problems);
            if (place.isEmpty()) {
                throw new BadInputException(Scalings.unknown("rule", id, Scalings.keysOfRules()), problems.get(0));
            }
            return terminal.print("law", asked.map(log -> law(place.get(), log)).orElse(RuleText.card(place.get())));
        }
        return terminal.print("rule", asked.map(log -> working(rule.get(), log)).orElseGet(() -> card(rule.get())));
    }

    private static String list() {
        List<LogRule> all = new ArrayList<>(LogRules.all());
        LogRules.onRequest().stream().filter(rule -> !all.contains(rule)).forEach(all::add);
        return "Log rules, board feet\n\n" + RuleText.list(all, LogRules.onRequest())
                + OwnRule.LIST
                + "\nCubic rules and formulas for the solid volume\n\n"
                + RuleText.cubic(List.of(CubicRule.values()), List.of(SolidVolume.values()))
                + RuleText.firmwood(Scaling.BritishColumbia.KEY)
                + "\nLaws and written practice of places; scale takes them by --law\n\n"
                + RuleText.laws(Arrays.asList(Jurisdiction.values()));
    }

    private static String card(Scaling rule) {
        if (rule instanceof Scaling.BoardFeet feet) {
            boolean alsoLaw = Arrays.stream(Jurisdiction.values())
                    .anyMatch(place -> place.id().equals(feet.key()));
            return RuleText.card(feet.rule())
                    + (feet.rule() instanceof KerfRule own ? RuleText.points(OwnRule.assumptions(own)) : "")
                    + (alsoLaw ? "- A place has this key too: rules " + Scalings.LAW + feet.key() + "\n" : "");
        }
        if (rule instanceof Scaling.Cubic cubic) {
            return RuleText.card(cubic.rule());
        }
        if (rule instanceof Scaling.Formula formula) {
            return RuleText.card(formula.formula());
        }
        return RuleText.firmwood(Scaling.BritishColumbia.KEY);
    }

    private static String working(Scaling rule, Asked asked) {
        if (rule instanceof Scaling.BoardFeet feet) {
            return shown(feet.rule()
                    .working(asked.diameter().toInches(), asked.length().toFeet()));
        }
        if (rule instanceof Scaling.Cubic cubic) {
            CubicRule one = cubic.rule();
            return asked.large().isPresent() || !one.asksTaper()
                    ? shown(one.working(asked.log("", false)))
                    : shown(one.working(asked.diameter(), asked.length()));
        }
        if (rule instanceof Scaling.Formula formula) {
            return shown(volume(formula.formula(), asked));
        }
        return shown(Firmwood.cubicMetresWorking(
                asked.diameter().toMillimetres() / 20,
                asked.needLarge("the rule wants the radii of both ends").toMillimetres() / 20,
                asked.length().toMetres()));
    }

    private static boolean asksMiddle(Scaling rule) {
        return rule instanceof Scaling.Formula formula && formula.formula().asksMiddle();
    }

    /** A diameter that stands alone is the one that the formula asks for; a middle that nobody gave is told as assumed. */
    private static Working volume(SolidVolume formula, Asked asked) {
        boolean assumed = formula.asksMiddle()
                && asked.middle().isEmpty()
                && (formula.asksLargeEnd() || asked.large().isPresent());
        Log log = asked.log("the formula wants both ends", formula.asksLargeEnd());
        Length middle = assumed
                ? log.meanDiameter(log.length().dividedBy(2, Rounding.DOWN))
                : asked.middle().orElse(asked.diameter());
        Working working = formula.working(
                log.smallEndMean().toFeet(),
                middle.toFeet(),
                log.largeEndMean().toFeet(),
                log.length().toFeet(),
                "ft");
        return assumed ? working.givenBy("m", Sources.get("middle-assumed")) : working;
    }

    private static String shown(Working working) {
        return WorkingText.plain(working.givenBy(Sources.get("command-line")));
    }

    /** From the log as measured to the scale: diameter, length, parts, rule. */
    private static String law(Jurisdiction place, Asked asked) {
        ScalingConvention convention = place.convention();
        DiameterAt where = convention.diameterAt().orElse(place.rule().diameterAt());
        Log known = asked.log("the diameter is wanted at the " + where.label(), where != DiameterAt.SMALL_END);
        int parts = convention.segments(known, place.rule().diameterAt()).size();
        Log log = asked.log("the log is scaled in " + parts + " parts by its taper", parts > 1);
        Scale scale = place.scale(log);
        StringBuilder text = new StringBuilder(RuleText.card(place)).append('\n');
        if (where == DiameterAt.SMALL_END) {
            Working diameter = convention.scalingDiameterInchesWorking(log);
            text.append(shown(diameter)).append('\n');
        }
        text.append("Scaling length ")
                .append(NumberText.full(convention.scalingLengthFeet(log)))
                .append(" ft of ")
                .append(log.length().inFeet(16, Rounding.HALF_UP))
                .append("; ")
                .append(parts == 1 ? "scaled as one: " : "scaled in parts from the small end: ");
        for (int i = 0; i < parts; i++) {
            ScalingConvention.Segment segment = scale.segments().get(i);
            text.append(i == 0 ? "" : "; ")
                    .append(NumberText.full(segment.diameterInches()))
                    .append(" in x ")
                    .append(NumberText.full(segment.lengthFeet()))
                    .append(" ft");
        }
        return text.append(".\n\n").append(shown(scale.working())).toString();
    }

    private static Length parsed(String what, String text) {
        try {
            return Length.parse(text);
        } catch (OutOfDomainException e) {
            throw new BadInputException(what + ": " + e.getMessage());
        }
    }
}
