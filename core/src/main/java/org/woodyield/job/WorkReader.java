package org.woodyield.job;

import java.util.Optional;
import org.woodyield.measure.Domain;
import org.woodyield.measure.Length;
import org.woodyield.measure.Rounding;
import org.woodyield.work.WorkInput;

/** Reads a figure of work or money as people write it into the unit in which it is computed. */
final class WorkReader {

    private WorkReader() {}

    static Optional<Double> read(Cell cell, WorkInput input) {
        Domain domain = input.domain();
        return switch (input.unit()) {
            case "" -> plainOrPercent(cell, domain);
            case "L/L" -> plainOrPercent(cell, domain);
            case "1/year", "1/km" -> percent(cell, domain);
            case "money" -> cell.number(domain);
            case "money/h" -> cell.rate(Units.HOURS, domain);
            case "money/L" -> cell.rate(Units.LIQUID, domain);
            case "money/bf" -> cell.rate(Units.BOARD_FEET, domain);
            case "kW" -> cell.quantity(Units.POWER, domain);
            case "min" -> cell.quantity(Units.MINUTES, domain);
            case "h" -> cell.quantity(Units.HOURS, domain);
            case "years" -> cell.quantity(Units.YEARS, domain);
            case "L" -> cell.quantity(Units.LIQUID, domain);
            case "L/h" -> cell.quantity(Units.LIQUID_PER_HOUR, domain);
            case "m2" -> cell.quantity(Units.AREA, domain);
            case "m/min" -> cell.quantity(Units.FEED, domain);
            case "m/s" -> cell.quantity(Units.SPEED, domain);
            case "m" -> length(cell, domain).map(Length::toMetres);
            case "mm" ->
                cell.length(
                                Length.ZERO,
                                Length.ofMetres(domain.greatest() / 1000, Rounding.DOWN),
                                domain.limits(),
                                domain.remedy())
                        .map(Length::toMillimetres)
                        .filter(value -> holds(cell, domain, value));
            default -> cell.quantity(Units.only(input.unit()), domain);
        };
    }

    private static Optional<Length> length(Cell cell, Domain domain) {
        return cell.length(
                Length.ZERO, Length.ofMetres(domain.greatest(), Rounding.DOWN), domain.limits(), domain.remedy());
    }

    private static boolean holds(Cell cell, Domain domain, double value) {
        if (!domain.holds(value)) {
            cell.refuse(domain.limits(), domain.remedy());
            return false;
        }
        return true;
    }

    /** A share may be written as 0.7 or as 70 %. */
    private static Optional<Double> plainOrPercent(Cell cell, Domain domain) {
        return cell.text().endsWith("%") ? percent(cell, domain) : cell.number(domain);
    }

    private static Optional<Double> percent(Cell cell, Domain domain) {
        double least = domain.least() == Double.MIN_VALUE ? Double.MIN_VALUE : domain.least() * 100;
        Domain inPercent = new Domain(
                domain.parameter(), "%", least, Math.min(domain.greatest() * 100, Double.MAX_VALUE), domain.remedy());
        return cell.quantity(Units.PERCENT, inPercent).map(value -> value / 100);
    }
}
