package org.woodyield.wood;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.woodyield.measure.OutOfDomainException;

/** The air in which lumber dries, and from which its equilibrium moisture follows. */
public sealed interface DryingAir {

    /**
     * One temperature and one humidity.
     *
     * @param equation with the coefficients for the unit of the temperature
     * @param air the two
     */
    record Steady(EquilibriumMoisture equation, OutdoorMoisture.Air air) implements DryingAir {
        /**
         * Checks the air.
         *
         * @throws OutOfDomainException if the equation does not hold for it
         */
        public Steady {
            equation.percent(air.temperature(), air.humidityPercent());
        }
    }

    /**
     * The twelve months of a year. A month may be colder than the equation reaches: it then has no figure.
     *
     * @param equation with the coefficients for the unit of the temperatures
     * @param months January first
     */
    record Year(EquilibriumMoisture equation, List<OutdoorMoisture.Air> months) implements DryingAir {
        /**
         * Keeps an immutable copy.
         *
         * @throws OutOfDomainException if there are not twelve months, or a humidity is outside
         */
        public Year {
            months = List.copyOf(months);
            if (months.size() != 12) {
                throw new OutOfDomainException(
                        "months", Integer.toString(months.size()), "", "12", "give each month once");
            }
            months.forEach(month -> EquilibriumMoisture.HUMIDITY.require(month.humidityPercent()));
        }
    }

    /**
     * A place with its moisture month by month as others have given it.
     *
     * @param city the place
     */
    record Place(OutdoorMoisture.City city) implements DryingAir {}

    /**
     * A place with the range of its moisture over parts of the year as others have given it.
     *
     * @param ranges one or more, of one place
     */
    record Seasons(List<OutdoorMoisture.Range> ranges) implements DryingAir {
        /** Keeps an immutable copy. */
        public Seasons {
            ranges = List.copyOf(ranges);
        }
    }

    /**
     * The air of a place by its name.
     *
     * @param name as in {@link OutdoorMoisture#cities} or {@link OutdoorMoisture#ranges}; case and commas do not matter
     * @return a place or its seasons
     * @throws OutOfDomainException if there is none of that name; the limits list all
     */
    static DryingAir ofPlace(String name) {
        List<OutdoorMoisture.Range> ranges = OutdoorMoisture.ranges().stream()
                .filter(range -> same(range.name(), name))
                .toList();
        return OutdoorMoisture.cities().stream()
                .filter(city -> same(city.name(), name))
                .findFirst()
                .<DryingAir>map(Place::new)
                .or(() -> ranges.isEmpty() ? Optional.empty() : Optional.of(new Seasons(ranges)))
                .orElseThrow(() -> unknown(name));
    }

    private static OutOfDomainException unknown(String name) {
        List<String> names = Stream.concat(
                        OutdoorMoisture.cities().stream().map(OutdoorMoisture.City::name),
                        OutdoorMoisture.ranges().stream().map(OutdoorMoisture.Range::name))
                .distinct()
                .toList();
        String near = NearestNames.question(name, names);
        return new OutOfDomainException(
                "place",
                "'" + name + "'",
                "",
                String.join("; ", names),
                (near.isEmpty() ? "" : near + " ") + "for another place give its temperature and humidity by month");
    }

    private static boolean same(String a, String b) {
        return plain(a).equals(plain(b));
    }

    private static String plain(String name) {
        return name.toLowerCase(Locale.ROOT).replace(',', ' ').strip().replaceAll("\\s+", " ");
    }
}
