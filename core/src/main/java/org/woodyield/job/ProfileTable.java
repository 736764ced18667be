package org.woodyield.job;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.woodyield.log.ProfileStation;
import org.woodyield.measure.Length;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.wood.NearestNames;

/** Reads the measured profiles of logs. What makes a profile that of its log, the log itself decides. */
final class ProfileTable {

    private static final String ID = "id";
    private static final String DISTANCE = "distance";
    private static final String DIAMETER = "diameter";

    static final List<Table.Column> COLUMNS =
            List.of(Table.Column.required(ID), Table.Column.required(DISTANCE), Table.Column.required(DIAMETER));

    private static final Length LONGEST = Length.millimetres(30_000);
    private static final Length LARGEST = Length.millimetres(3000);
    private static final String STATION = "station ";

    private record Entry(Optional<ProfileStation> station, Table.Row row) {}

    private final Map<String, List<Entry>> byLog = new LinkedHashMap<>();

    /** Reads all rows; those that cannot be a station are noted. */
    static ProfileTable read(List<Table.Row> rows) {
        ProfileTable table = new ProfileTable();
        rows.forEach(table::row);
        return table;
    }

    private void row(Table.Row row) {
        Optional<String> id = row.cell(ID).words("the id of a log");
        Optional<Length> distance = row.cell(DISTANCE).lengthOrNoneUpTo(LONGEST, "measure from the small end");
        Optional<Length> diameter = row.cell(DIAMETER).lengthUpTo(LARGEST, "check the unit");
        id.ifPresent(log -> byLog.computeIfAbsent(log, key -> new ArrayList<>())
                .add(new Entry(distance.flatMap(z -> diameter.map(d -> new ProfileStation(z, d))), row)));
    }

    /** Notes each row of a log that is not there. */
    void refuseUnknown(Set<String> logs) {
        byLog.forEach((id, entries) -> {
            if (!logs.contains(id)) {
                entries.forEach(entry -> entry.row()
                        .cell(ID)
                        .refuse("the id of a log in " + JobFile.LOGS.fileName(), NearestNames.question(id, logs)));
            }
        });
    }

    boolean has(String id) {
        return byLog.containsKey(id);
    }

    /** The stations of a log, with so much bark taken off each diameter; empty where one could not be read. */
    Optional<List<ProfileStation>> stations(String id, Length off) {
        List<ProfileStation> stations = new ArrayList<>();
        for (Entry entry : byLog.getOrDefault(id, List.of())) {
            if (entry.station().isEmpty()) {
                return Optional.empty();
            }
            ProfileStation station = entry.station().get();
            stations.add(
                    new ProfileStation(station.distance(), station.diameter().minus(off)));
        }
        return Optional.of(stations);
    }

    /** Notes what a log refused of its profile, at the station where it stands. */
    void refuse(String id, OutOfDomainException refusal) {
        List<Entry> entries = byLog.getOrDefault(id, List.of());
        String parameter = refusal.parameter();
        int at = parameter.lastIndexOf(STATION);
        int number = at < 0 ? entries.size() : Integer.parseInt(parameter.substring(at + STATION.length()));
        String column = at > 0 || parameter.startsWith("large") ? DIAMETER : DISTANCE;
        entries.get(number - 1).row().cell(column).refuse(refusal);
    }
}
