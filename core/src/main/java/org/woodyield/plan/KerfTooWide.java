package org.woodyield.plan;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.woodyield.log.Log;
import org.woodyield.lumber.CoverArea;
import org.woodyield.lumber.NaturalEdge;
import org.woodyield.lumber.Product;
import org.woodyield.measure.Length;

/**
 * Why a kerf does not suit a job: it takes all of a log, or is wider than a board is thick. The log comes first, since a kerf as
 * wide as a log says more of a wrong unit.
 *
 * @param ofLog whether it is a log, not something wanted
 * @param id the thinnest log, or else the thinnest thing wanted; the first of several as thin
 * @param thickness least diameter of its small end, or its thickness
 */
public record KerfTooWide(boolean ofLog, String id, Length thickness) {

    /**
     * Sets a kerf beside a job.
     *
     * @param kerf width of the slot
     * @param logs the logs; one as thin as the kerf does not suit it
     * @param pieces the pieces wanted; one that is thinner than the kerf does not suit it
     * @param areas the areas to cover, by the thickness of their boards
     * @param naturalEdges the boards wanted with natural edges
     * @return the reason; nothing where the kerf suits the job
     */
    public static Optional<KerfTooWide> of(
            Length kerf, List<Log> logs, List<Product> pieces, List<CoverArea> areas, List<NaturalEdge> naturalEdges) {
        Optional<KerfTooWide> thinnestLog = logs.stream()
                .map(log -> new KerfTooWide(true, log.id(), log.smallEndShort()))
                .min(Comparator.comparing(KerfTooWide::thickness))
                .filter(log -> kerf.compareTo(log.thickness) >= 0);
        return thinnestLog.or(() -> Stream.of(
                        pieces.stream()
                                .map(piece -> new KerfTooWide(
                                        false, piece.id(), piece.size().thickness())),
                        areas.stream().map(area -> new KerfTooWide(false, area.id(), area.thickness())),
                        naturalEdges.stream().map(board -> new KerfTooWide(false, board.id(), board.thickness())))
                .flatMap(each -> each)
                .min(Comparator.comparing(KerfTooWide::thickness))
                .filter(board -> kerf.compareTo(board.thickness) > 0));
    }

    /** The reason as a clause. */
    String words() {
        return ofLog ? "log " + id + " is no thicker" : id + " is only " + thickness + " thick";
    }
}
