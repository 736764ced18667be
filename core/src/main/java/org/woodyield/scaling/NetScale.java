package org.woodyield.scaling;

import java.util.Arrays;
import java.util.List;
import org.woodyield.measure.BoardFeet;
import org.woodyield.measure.Domain;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.measure.Rounding;
import org.woodyield.source.Sources;
import org.woodyield.working.Calculation;
import org.woodyield.working.Working;

/**
 * The net scale of a log: what a rule gives, less its defects.
 *
 * <p>Each defect is reckoned from the gross scale and rounded to the step, an exact half up; the deductions are added, from
 * the least, and are together never more than the gross scale. So the order in which defects are named does not matter, and
 * wood with two defects may be taken off twice, but never more than there is: name only the worse of two that overlap.
 *
 * @param rule the rule
 * @param scalingDiameterInches the log's scaling diameter
 * @param lengthFeet its scaling length
 * @param defects its defects, possibly none
 * @param deductionStepBoardFeet deductions go to multiples of this
 */
@Calculation("scaling.net-scale")
public record NetScale(
        LogRule rule,
        double scalingDiameterInches,
        double lengthFeet,
        List<Defect> defects,
        double deductionStepBoardFeet) {

    /** The least share of sound wood of a softwood saw log: a third of its gross scale. Recalled with medium confidence. */
    public static final double SOFTWOOD_LEAST_SHARE = 1.0 / 3;

    /**
     * Keeps an immutable copy and scales once.
     *
     * @throws OutOfDomainException if the rule refuses the log, a defect does not fit it, or the step is not above zero
     */
    public NetScale {
        defects = List.copyOf(defects);
        Domain.positive("step of deductions", "bf").require(deductionStepBoardFeet);
        double gross = rule.boardFeet(scalingDiameterInches, lengthFeet);
        for (Defect defect : defects) {
            defect.boardFeet(gross, scalingDiameterInches, lengthFeet);
        }
    }

    /**
     * A net scale with deductions in whole board feet, by Scribner Decimal C in its tens.
     *
     * @param rule the rule
     * @param scalingDiameterInches the log's scaling diameter
     * @param lengthFeet its scaling length
     * @param defects its defects, possibly none
     * @return the net scale
     * @throws OutOfDomainException if the rule refuses the log or a defect does not fit it
     */
    public static NetScale of(LogRule rule, double scalingDiameterInches, double lengthFeet, List<Defect> defects) {
        return new NetScale(
                rule, scalingDiameterInches, lengthFeet, defects, rule.id().equals("scribner-decimal-c") ? 10 : 1);
    }

    private double grossBoardFeet() {
        return rule.boardFeet(scalingDiameterInches, lengthFeet);
    }

    /** As the defects stand, rounded. */
    private double[] deductions() {
        double gross = grossBoardFeet();
        return defects.stream()
                .mapToDouble(defect -> Rounding.HALF_UP.toStep(
                        defect.boardFeet(gross, scalingDiameterInches, lengthFeet), deductionStepBoardFeet))
                .toArray();
    }

    /** From the least, so that the sum has the same bits in whatever order the defects stand. */
    static double sum(double[] deductions) {
        double[] rising = deductions.clone();
        Arrays.sort(rising);
        double sum = 0;
        for (double deduction : rising) {
            sum += deduction;
        }
        return sum;
    }

    /** The same sum in symbols. */
    static String sumText(double[] deductions) {
        Integer[] order = new Integer[deductions.length];
        Arrays.setAll(order, i -> i);
        Arrays.sort(order, (a, b) -> Double.compare(deductions[a], deductions[b]));
        StringBuilder text = new StringBuilder();
        for (int i : order) {
            text.append(text.isEmpty() ? "d" : " + d").append(i + 1);
        }
        return text.isEmpty() ? "0" : text.toString();
    }

    private double net() {
        double gross = grossBoardFeet();
        return gross - Math.min(gross, sum(deductions()));
    }

    /**
     * The scale without regard to defects.
     *
     * @return board feet of a scale
     */
    public BoardFeet gross() {
        return BoardFeet.scale(grossBoardFeet());
    }

    /**
     * The scale less the deductions.
     *
     * @return board feet of a scale, 0 to the gross scale
     */
    public BoardFeet boardFeet() {
        return BoardFeet.scale(net());
    }

    /**
     * The share of the gross scale that is sound.
     *
     * @return 0 to 1
     * @throws OutOfDomainException if the log scales nothing
     */
    @Calculation("scaling.sound-share")
    public double soundShare() {
        return net() / someGross();
    }

    private double someGross() {
        double gross = grossBoardFeet();
        if (!(gross > 0)) {
            throw new OutOfDomainException(
                    "gross scale", "0", "bf", "above 0", "a log that scales nothing has no share of sound wood");
        }
        return gross;
    }

    /**
     * Whether enough of the log is sound.
     *
     * @param leastShare of the gross scale, for example {@link #SOFTWOOD_LEAST_SHARE}
     * @return true if the sound share is no less
     * @throws OutOfDomainException if the share is not 0 to 1, or the log scales nothing
     */
    public boolean merchantable(double leastShare) {
        Domain.of("least share of sound wood", "", 0, 1).require(leastShare);
        return soundShare() >= leastShare;
    }

    /**
     * How the net scale comes about.
     *
     * @return a working whose value has the bits of {@link #boardFeet}
     */
    public Working working() {
        return lines().build();
    }

    /**
     * How the share of sound wood comes about.
     *
     * @return a working whose value has the bits of {@link #soundShare}
     * @throws OutOfDomainException if the log scales nothing
     */
    public Working soundShareWorking() {
        someGross();
        return lines().step("s", "share of sound wood", "N / G", "", Sources.get("definition"))
                .note("A softwood saw log is usually culled with less than a third sound: "
                        + Sources.get("merchantable-third-memory").citation() + ".")
                .build();
    }

    private Working.Builder lines() {
        Working gross = rule.working(scalingDiameterInches, lengthFeet);
        Working.Builder working = Working.of("Net scale by " + rule.name())
                .include(gross)
                .step("G", "gross scale", gross.result().symbol(), "bf", Sources.get("definition"))
                .given("D", "scaling diameter", scalingDiameterInches, "in")
                .given("L", "scaling length", lengthFeet, "ft");
        for (int i = 0; i < defects.size(); i++) {
            Defect defect = defects.get(i);
            working.note("Deduction " + (i + 1) + ", " + defect.label() + ": "
                    + defect.source().citation() + ".");
            defect.deduct(working, false)
                    .round(
                            "d" + (i + 1),
                            "deduction " + (i + 1) + ", " + defect.label(),
                            "d",
                            Rounding.HALF_UP,
                            deductionStepBoardFeet,
                            "bf",
                            Sources.get("fsh-2409-11-1985"));
        }
        return working.step(
                        "T",
                        "all deductions, from the least, no more than the gross scale",
                        "min(G, " + sumText(deductions()) + ")",
                        "bf",
                        Sources.get("definition"))
                .step("N", "net scale", "G - T", "bf", Sources.get("definition"));
    }
}
