package org.woodyield.checks;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.woodyield.measure.Length;
import org.woodyield.sawing.KerfStack;
import org.woodyield.source.Sourced;
import org.woodyield.source.Sources;
import org.woodyield.work.BreakEven;
import org.woodyield.work.CarbonMonoxide;
import org.woodyield.work.CuttingRate;
import org.woodyield.work.FellingFuel;
import org.woodyield.work.KerfWorth;
import org.woodyield.work.MachineRate;
import org.woodyield.work.NoiseLimit;
import org.woodyield.work.VibrationDay;
import org.woodyield.work.WorkInput;
import org.woodyield.work.WorkInputs;

/** What the check tables call in {@code org.woodyield.work}. */
final class WorkChecks {

    private WorkChecks() {}

    static void list(Catalogue.Builder catalogue) {
        money(catalogue);
        kerf(catalogue);
        exposure(catalogue);
        catalogue
                .number(
                        "work.felling-fuel",
                        given -> FellingFuel.valueOf(given.text("plot"))
                                .fuelMillilitres(given.number("breast_height_cm")))
                .number(
                        "work.felling-oil",
                        given -> FellingFuel.valueOf(given.text("plot"))
                                .oilMillilitres(given.number("breast_height_cm")))
                .number(
                        "work.fuel-by-the-hour",
                        given -> MachineRate.fuelLitresPerHour(
                                given.number("kg_per_hp_h"),
                                given.number("hp"),
                                given.number("load"),
                                given.number("kg_per_l")))
                .number("work.feed-ratio", given -> feed(given, "_2") / feed(given, ""))
                .number(
                        "work.crossing-worth",
                        given -> given.number("bought_per_bf")
                                * BreakEven.volume(
                                        given.number("outlay"),
                                        given.number("running_per_bf"),
                                        given.number("bought_per_bf")));
    }

    private static void money(Catalogue.Builder catalogue) {
        catalogue
                .number(
                        "work.unit-cost",
                        given -> given.has("recovery")
                                ? MachineRate.unitCost(given.number("cost_per_m3_log"), given.number("recovery"))
                                : MachineRate.unitCost(given.number("per_hour"), given.number("units_per_hour")))
                .number(
                        "work.average-annual-investment",
                        given -> MachineRate.averageAnnualInvestment(
                                given.number("price"), given.number("resale"), given.number("years")))
                .number("work.depreciation", WorkChecks::depreciation)
                .number("work.interest", WorkChecks::interest)
                .number("work.ownership", given -> depreciation(given) + interest(given));
    }

    private static double depreciation(Given given) {
        return MachineRate.depreciationPerHour(
                given.number("price"), given.number("resale"), given.number("years"), given.number("hours_per_year"));
    }

    private static double interest(Given given) {
        return MachineRate.interestPerHour(
                given.number("price"),
                given.number("resale"),
                given.number("years"),
                given.number("rate"),
                given.number("hours_per_year"));
    }

    private static void kerf(Catalogue.Builder catalogue) {
        catalogue
                .number(
                        "work.wood-saved",
                        given -> KerfWorth.savedPercent(given.number("before_in"), given.number("after_in")))
                .number("work.stack-saved", WorkChecks::savedByKerf)
                .number(
                        "work.wood-added",
                        given -> -KerfWorth.savedPercent(
                                wood(given, "thickness_in", "kerf_in"), wood(given, "thickness_after_in", "kerf_in")))
                .number(
                        "work.kerf-worth",
                        given -> KerfWorth.worthPerThousand(given.number("price"), savedByKerf(given)));
    }

    private static double wood(Given given, String thickness, String kerf) {
        return KerfStack.woodNeededInches(given.whole("boards"), given.number(thickness), given.number(kerf));
    }

    /** For each of some equal steps from one kerf to the other. */
    private static double savedByKerf(Given given) {
        return KerfWorth.savedPercent(
                        wood(given, "thickness_in", "kerf_in"), wood(given, "thickness_in", "kerf_after_in"))
                / given.whole("steps");
    }

    private static void exposure(Catalogue.Builder catalogue) {
        catalogue
                .number(
                        "work.exposure-limit",
                        given -> limit(given.text("limit")).value())
                .number("work.vibration", given -> new VibrationDay(tasks(given)).dailyExposure())
                .number(
                        "work.vibration-time",
                        given -> VibrationDay.hoursUntil(given.number("a1"), given.number("daily")))
                .number(
                        "work.noise-time",
                        given -> (given.text("limit").equals("osha") ? NoiseLimit.OSHA : NoiseLimit.NIOSH)
                                        .allowedHours(given.number("level_dba"))
                                * 60);
    }

    private static Sourced limit(String name) {
        return switch (name) {
            case "vibration action value" -> VibrationDay.ACTION_VALUE;
            case "vibration limit value" -> VibrationDay.LIMIT_VALUE;
            case "carbon monoxide NIOSH eight hours" -> CarbonMonoxide.NIOSH_EIGHT_HOURS;
            case "carbon monoxide NIOSH ceiling" -> CarbonMonoxide.NIOSH_CEILING;
            case "carbon monoxide OSHA eight hours" -> CarbonMonoxide.OSHA_EIGHT_HOURS;
            case "carbon monoxide measured shift" -> CarbonMonoxide.MEASURED_SHIFT;
            case "carbon monoxide measured peak" -> CarbonMonoxide.MEASURED_PEAK;
            default -> throw new IllegalArgumentException("no limit " + name);
        };
    }

    private static List<VibrationDay.Task> tasks(Given given) {
        List<VibrationDay.Task> tasks = new ArrayList<>();
        for (int i = 1; i <= 3; i++) {
            Optional<Double> vibration = given.numberIfPrinted("a" + i);
            Optional<Double> hours = given.numberIfPrinted("t" + i);
            if (vibration.isPresent() && hours.isPresent()) {
                tasks.add(new VibrationDay.Task("task " + i, vibration.get(), hours.get()));
            }
        }
        return tasks;
    }

    private static double feed(Given given, String which) {
        CuttingRate rate = CuttingRate.of(
                WorkInputs.chainDefaults().with(WorkInput.RATED_POWER, given.number("power" + which + "_kw")),
                !given.has("wood")
                        || given.textIfPrinted("wood" + which)
                                .orElse("hardwood")
                                .equals("hardwood"),
                new Sourced(
                        given.has("gravity")
                                ? given.numberIfPrinted("gravity" + which).orElse(0.6)
                                : 0.6,
                        "",
                        Sources.get("definition")),
                Length.parse(given.text("kerf" + which + "_mm") + " mm"));
        return rate.feedCentimetresPerSecond(Length.parse(given.text("width_mm") + " mm"));
    }
}
