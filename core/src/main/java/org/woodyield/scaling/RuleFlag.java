package org.woodyield.scaling;

import java.util.List;

/**
 * Something that one would expect of a log rule and that does not hold for this one, with logs that show it.
 *
 * @param fault what does not hold
 * @param sentence the same for a reader
 * @param counterexample the logs, in the order that the fault asks for
 */
public record RuleFlag(Fault fault, String sentence, List<Case> counterexample) {

    /** What does not hold. */
    public enum Fault {
        /** Two logs of one length, the thinner first; the thicker scales less. */
        FALLS_AS_DIAMETER_GROWS(2),
        /** Two logs of one diameter, the shorter first; the longer scales less. */
        FALLS_AS_LENGTH_GROWS(2),
        /** A log that can be sawn and scales nothing. */
        GIVES_NOTHING(1),
        /** A log, then the two logs into which it is cut; together these scale more. */
        CUTTING_ADDS_SCALE(3);

        private final int cases;

        Fault(int cases) {
            this.cases = cases;
        }
    }

    /**
     * A log as a rule sees it.
     *
     * @param diameterInches scaling diameter
     * @param lengthFeet scaling length
     */
    public record Case(double diameterInches, double lengthFeet) {}

    /**
     * Keeps an immutable copy.
     *
     * @throws IllegalArgumentException if the fault needs another count of logs
     */
    public RuleFlag {
        counterexample = List.copyOf(counterexample);
        if (counterexample.size() != fault.cases) {
            throw new IllegalArgumentException(fault + " is shown by " + fault.cases + " logs");
        }
    }

    /**
     * Whether the counterexample shows the fault.
     *
     * @param rule the rule that carries the flag
     * @return true if the rule's own values do what the flag says
     */
    public boolean shownBy(LogRule rule) {
        double[] scale = counterexample.stream()
                .mapToDouble(log -> rule.boardFeet(log.diameterInches, log.lengthFeet))
                .toArray();
        Case first = counterexample.get(0);
        Case second = counterexample.get(counterexample.size() > 1 ? 1 : 0);
        return switch (fault) {
            case FALLS_AS_DIAMETER_GROWS ->
                first.lengthFeet == second.lengthFeet
                        && first.diameterInches < second.diameterInches
                        && scale[0] > scale[1];
            case FALLS_AS_LENGTH_GROWS ->
                first.diameterInches == second.diameterInches
                        && first.lengthFeet < second.lengthFeet
                        && scale[0] > scale[1];
            case GIVES_NOTHING -> scale[0] == 0;
            case CUTTING_ADDS_SCALE ->
                first.lengthFeet == second.lengthFeet + counterexample.get(2).lengthFeet
                        && scale[1] + scale[2] > scale[0];
        };
    }

    static RuleFlag fallsWithDiameter(String sentence, double length, double thin, double thick) {
        return new RuleFlag(
                Fault.FALLS_AS_DIAMETER_GROWS, sentence, List.of(new Case(thin, length), new Case(thick, length)));
    }

    static RuleFlag fallsWithLength(String sentence, double diameter, double shorter, double longer) {
        return new RuleFlag(
                Fault.FALLS_AS_LENGTH_GROWS,
                sentence,
                List.of(new Case(diameter, shorter), new Case(diameter, longer)));
    }

    static RuleFlag givesNothing(String sentence, double diameter, double length) {
        return new RuleFlag(Fault.GIVES_NOTHING, sentence, List.of(new Case(diameter, length)));
    }

    static RuleFlag cuttingAdds(String sentence, double diameter, double length, double first, double otherDiameter) {
        return new RuleFlag(
                Fault.CUTTING_ADDS_SCALE,
                sentence,
                List.of(
                        new Case(diameter, length),
                        new Case(diameter, first),
                        new Case(otherDiameter, length - first)));
    }
}
