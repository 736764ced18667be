package org.woodyield.scaling;

import java.util.List;
import org.woodyield.measure.Length;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.measure.Volume;
import org.woodyield.source.Sources;
import org.woodyield.working.Calculation;
import org.woodyield.working.Working;

/**
 * The sound solid volume of a log: its gross volume by any formula or rule, less the volume of its defects, which are added
 * and capped as in {@link NetScale} but not rounded. Sweep and crook take nothing: the wood is there.
 *
 * @param gross the solid volume
 * @param diameter of the log where the defects were measured
 * @param length of the log
 * @param defects its defects, possibly none
 */
@Calculation("scaling.net-volume")
public record NetVolume(Volume gross, Length diameter, Length length, List<Defect> defects) {

    /**
     * Keeps an immutable copy.
     *
     * @throws OutOfDomainException if a defect does not fit the log
     */
    public NetVolume {
        defects = List.copyOf(defects);
        for (Defect defect : defects) {
            defect.cubicFeet(gross.cubicFeet(), diameter.toInches(), length.toFeet());
        }
    }

    /**
     * The sound volume of a log whose defects may say where they lie; what overlaps is counted once, as in
     * {@link NetScale#of(Scale, List)}.
     *
     * @param gross the solid volume
     * @param diameter of the log where the defects were measured
     * @param length of the log
     * @param defects its defects, possibly none
     * @return the sound volume
     * @throws OutOfDomainException if a defect does not fit the log, or sectors without a place make more than a full turn
     */
    public static NetVolume of(Volume gross, Length diameter, Length length, List<NetScale.Placed> defects) {
        NetScale.requirePlaces(defects, length, 1);
        List<DefectStretches.Lying> lying = defects.stream()
                .flatMap(placed -> NetScale.lying(placed, Length.ZERO, length, Length.ZERO, length).stream())
                .toList();
        return new NetVolume(
                gross,
                diameter,
                length,
                DefectStretches.countedOnce(
                        length,
                        lying,
                        defect -> defect.cubicFeet(gross.cubicFeet(), diameter.toInches(), length.toFeet())));
    }

    private double[] deductions() {
        return defects.stream()
                .mapToDouble(defect -> defect.cubicFeet(gross.cubicFeet(), diameter.toInches(), length.toFeet()))
                .toArray();
    }

    /**
     * The gross volume less the defects.
     *
     * @return in cubic feet, 0 to the gross volume
     */
    public double cubicFeet() {
        double all = gross.cubicFeet();
        return all - Math.min(all, NetScale.sum(deductions()));
    }

    /**
     * The gross volume less the defects.
     *
     * @return 0 to the gross volume
     */
    public Volume volume() {
        return Volume.ofCubicFeet(cubicFeet());
    }

    /**
     * How it comes about.
     *
     * @return a working whose value has the bits of {@link #cubicFeet}
     */
    public Working working() {
        Working.Builder working = Working.of("Sound solid volume")
                .given("G", "gross volume", gross.cubicFeet(), "ft3")
                .given("D", "diameter of the log", diameter.toInches(), "in")
                .given("L", "length of the log", length.toFeet(), "ft");
        for (int i = 0; i < defects.size(); i++) {
            String n = Integer.toString(i + 1);
            defects.get(i)
                    .deduct(working, true)
                    .step(
                            "d" + n,
                            "deduction " + n + ", " + defects.get(i).label(),
                            "d",
                            "ft3",
                            Sources.get("defect-solid"));
        }
        return working.step(
                        "T",
                        "all deductions, from the least, no more than the gross volume",
                        "min(G, " + NetScale.sumText(deductions()) + ")",
                        "ft3",
                        Sources.get("definition"))
                .step("N", "sound volume", "G - T", "ft3", Sources.get("definition"))
                .build();
    }
}
