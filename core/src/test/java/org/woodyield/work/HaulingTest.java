package org.woodyield.work;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;
import org.woodyield.measure.OutOfDomainException;

class HaulingTest {

    @Test
    void byHand() {
        assertThat(Hauling.trips(1001, 500)).isEqualTo(3);
        assertThat(Hauling.trips(1000, 500)).isEqualTo(2);
        assertThat(Hauling.trips(0, 500)).isZero();
        assertThat(Hauling.tripsOfLogs(List.of(300.0, 200.0, 300.0, 300.0), 500))
                .isEqualTo(3);
        assertThat(Hauling.tripsOfLogs(List.of(), 500)).isZero();
        assertThat(Hauling.minutes(3, 25, 5, 20)).isEqualTo(175);
        assertThat(Hauling.cost(175, 12, 5, 2.5)).isEqualTo(47.5);
    }

    @Property
    void noTripIsOverloadedAndNoneIsIdle(
            @ForAll @Size(min = 1, max = 30) List<@DoubleRange(min = 1, max = 400) Double> logs,
            @ForAll @DoubleRange(min = 400, max = 2000) double limit) {
        int trips = (int) Hauling.tripsOfLogs(logs, limit);
        assertThat(Hauling.tripsOfLogsWorking(logs, limit).value()).isEqualTo(trips);
        double sum = logs.stream().mapToDouble(Double::doubleValue).sum();
        assertThat(trips).isBetween((int) Math.ceil(sum / limit * (1 - 1e-12)), logs.size());
        // Two trips that follow each other carry more than one could.
        int pairs = (trips - 1) / 2;
        assertThat(pairs * limit).isLessThanOrEqualTo(sum * (1 + 1e-12));
    }

    @Property
    void theWorkingsAgreeBitForBitAndMoreNeverCostsLess(
            @ForAll @DoubleRange(min = 0, max = 90_000) double goods,
            @ForAll @DoubleRange(min = 20, max = 5000) double limit,
            @ForAll @IntRange(min = 1, max = 40) int places,
            @ForAll @DoubleRange(min = 0, max = 300) double minutes,
            @ForAll @DoubleRange(min = 0, max = 80) double money) {
        double trips = Hauling.trips(goods, limit);
        double time = Hauling.minutes(places, minutes, trips, minutes);
        double cost = Hauling.cost(time, money, trips, money);
        assertThat(Hauling.tripsWorking(goods, limit).value()).isEqualTo(trips);
        assertThat(Hauling.minutesWorking(places, minutes, trips, minutes).value())
                .isEqualTo(time);
        assertThat(Hauling.costWorking(time, money, trips, money).value()).isEqualTo(cost);
        assertThat(Hauling.trips(goods + 1, limit)).isGreaterThanOrEqualTo(trips);
        assertThat(Hauling.trips(goods, limit + 1)).isLessThanOrEqualTo(trips);
        assertThat(Hauling.minutes(places + 1, minutes, trips, minutes)).isGreaterThanOrEqualTo(time);
        assertThat(Hauling.cost(time, money + 1, trips, money)).isGreaterThanOrEqualTo(cost);
    }

    @Test
    void aLogThatIsTooHeavyIsRefusedWithAWayOut() {
        assertThatThrownBy(() -> Hauling.tripsOfLogs(List.of(300.0, 600.0), 500))
                .isInstanceOf(OutOfDomainException.class)
                .hasMessageContaining("600")
                .hasMessageContaining("500")
                .hasMessageContaining("buck it shorter");
    }

    @Test
    void valuesOutsideAreRefused() {
        assertThatThrownBy(() -> Hauling.trips(-1, 500)).isInstanceOf(OutOfDomainException.class);
        assertThatThrownBy(() -> Hauling.trips(100, 19)).isInstanceOf(OutOfDomainException.class);
        assertThatThrownBy(() -> Hauling.tripsWorking(Double.NaN, 30)).isInstanceOf(OutOfDomainException.class);
        assertThatThrownBy(() -> Hauling.tripsOfLogs(List.of(Double.NaN), 30)).isInstanceOf(OutOfDomainException.class);
        assertThatThrownBy(() -> Hauling.tripsOfLogsWorking(List.of(5.0), 0)).isInstanceOf(OutOfDomainException.class);
        assertThatThrownBy(() -> Hauling.minutes(0, 10, 1, 1)).isInstanceOf(OutOfDomainException.class);
        assertThatThrownBy(() -> Hauling.minutesWorking(1, 10, -1, 1)).isInstanceOf(OutOfDomainException.class);
        assertThatThrownBy(() -> Hauling.cost(-1, 1, 1, 1)).isInstanceOf(OutOfDomainException.class);
        assertThatThrownBy(() -> Hauling.costWorking(1, 1, 1, Double.POSITIVE_INFINITY))
                .isInstanceOf(OutOfDomainException.class);
    }
}
