package org.woodyield.job;

import java.util.List;
import java.util.Optional;
import org.woodyield.log.MeasuredStem;
import org.woodyield.log.StemPoint;

/** What is said of a stem that was measured thicker at some place than below it. */
final class Swellings {

    private Swellings() {}

    /** The places that are taken as thinner than they were measured, in a sentence without its point. */
    static Optional<String> words(String stem, List<StemPoint> measured, MeasuredStem taken) {
        StringBuilder places = new StringBuilder();
        for (int i = 0; i < measured.size(); i++) {
            StemPoint was = measured.get(i);
            double is = taken.points().get(i).diameterInches();
            if (is < was.diameterInches()) {
                places.append(places.isEmpty() ? "" : "; ")
                        .append(OutputTable.fixed(was.diameterInches(), 2))
                        .append(" in at ")
                        .append(OutputTable.fixed(was.heightFeet(), 2))
                        .append(" ft as ")
                        .append(OutputTable.fixed(is, 2))
                        .append(" in");
            }
        }
        return places.isEmpty()
                ? Optional.empty()
                : Optional.of(stem + " swells and is taken as no thicker there than at the least place below (common"
                        + " practice, no source): " + places);
    }
}
