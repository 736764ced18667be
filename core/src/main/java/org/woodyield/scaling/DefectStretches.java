package org.woodyield.scaling;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.ToDoubleFunction;
import org.woodyield.measure.Domain;
import org.woodyield.measure.Length;

/**
 * The defects of a stretch of log that is scaled as one, with what overlaps counted once.
 *
 * <p>Where length cuts lie, nothing is left for other defects to take. Where other defects together would take as much as
 * the stretch gives, it counts as cut. Defects without a place are taken to lie apart from all but those that go along the
 * whole stretch.
 */
final class DefectStretches {

    private static final Domain TOGETHER = new Domain(
            "angle of the sectors without a place, together",
            "degrees",
            0,
            360,
            "say where each begins, such as 'at 0 ft', so that only those that overlap are taken together");

    /** Three sectors of 120 degrees are a full turn, though the last bits of their sum are not. */
    private static final double NEARLY = 1 - 1e-12;

    /** A defect of the stretch and where it begins there; empty if nobody said. */
    record Lying(Defect defect, Optional<Length> begins) {
        private boolean covers(Length from, Length to) {
            return begins.isPresent()
                    && begins.get().compareTo(from) <= 0
                    && begins.get().plus(length()).compareTo(to) >= 0;
        }

        private boolean isCut() {
            return defect instanceof Defect.LengthCut;
        }

        private Length length() {
            return defect.stretch().orElseThrow();
        }
    }

    private final Length whole;
    private final ToDoubleFunction<Defect> deduction;
    private final List<Lying> all = new ArrayList<>();
    private final TreeSet<Length> marks = new TreeSet<>();
    private final TreeSet<Length> lostFrom = new TreeSet<>();

    private DefectStretches(Length whole, List<Lying> defects, ToDoubleFunction<Defect> deduction) {
        this.whole = whole;
        this.deduction = deduction;
        for (Lying one : defects) {
            // What does not fit the stretch is refused here.
            takes(one.defect());
            all.add(normal(one));
        }
        requireNoMoreThanAFullTurn();
        marks.add(Length.ZERO);
        marks.add(whole);
        for (Lying one : all) {
            one.begins().ifPresent(begins -> {
                marks.add(begins);
                marks.add(begins.plus(one.length()));
            });
        }
        for (Length from : marks) {
            if (from.compareTo(whole) < 0 && isLost(from, after(from))) {
                lostFrom.add(from);
            }
        }
    }

    /**
     * What the defects are where each piece of wood is lost once.
     *
     * @param whole the length of the stretch
     * @param defects within the stretch
     * @param deduction what one defect takes off it
     * @throws org.woodyield.measure.OutOfDomainException if a defect does not fit, or sectors without a place make more than a full turn
     */
    static List<Defect> countedOnce(Length whole, List<Lying> defects, ToDoubleFunction<Defect> deduction) {
        return new DefectStretches(whole, defects, deduction).defects();
    }

    /** What goes along the whole stretch begins where it begins; what takes more than its own length gives is a cut. */
    private Lying normal(Lying one) {
        if (one.defect().stretch().isEmpty()) {
            return new Lying(one.defect().over(whole), Optional.of(Length.ZERO));
        }
        if (one.length().compareTo(whole) >= 0) {
            return new Lying(one.defect().over(whole), Optional.of(Length.ZERO));
        }
        Defect cut = new Defect.LengthCut(one.length());
        return one.begins().isEmpty() && takes(one.defect()) > takes(cut) ? new Lying(cut, one.begins()) : one;
    }

    private double takes(Defect defect) {
        return deduction.applyAsDouble(defect);
    }

    private void requireNoMoreThanAFullTurn() {
        List<Lying> sectors = all.stream()
                .filter(one -> one.defect() instanceof Defect.Sector
                        && (one.begins().isEmpty() || one.covers(Length.ZERO, whole)))
                .toList();
        double degrees = NetScale.sum(sectors.stream()
                .mapToDouble(one -> ((Defect.Sector) one.defect()).degrees())
                .toArray());
        if (sectors.stream().anyMatch(one -> one.begins().isEmpty())) {
            TOGETHER.require(degrees);
        }
    }

    /** The next mark; behind the last there is none, and it is its own. */
    private Length after(Length mark) {
        Length next = marks.higher(mark);
        return next == null ? mark : next;
    }

    /** Whether nothing is left of the log between two marks that stand next to each other. */
    private boolean isLost(Length from, Length to) {
        List<Lying> here = all.stream().filter(one -> one.covers(from, to)).toList();
        if (here.stream().anyMatch(Lying::isCut)) {
            return true;
        }
        double share = takes(new Defect.LengthCut(to.minus(from)));
        double sum = NetScale.sum(here.stream()
                .mapToDouble(one -> takes(one.defect().over(to.minus(from))))
                .toArray());
        return sum > share || (here.size() > 1 && sum >= share * NEARLY && share > 0);
    }

    private List<Defect> defects() {
        List<Defect> found = new ArrayList<>(cuts());
        Length unplaced = Length.ZERO;
        for (Lying one : all) {
            if (one.isCut() && one.begins().isEmpty()) {
                unplaced = unplaced.plus(one.length());
                found.add(one.defect());
            }
        }
        for (Lying one : all) {
            if (!one.isCut()) {
                left(one, unplaced).ifPresent(found::add);
            }
        }
        return found;
    }

    /** One cut for each run of stretches that are lost. */
    private List<Defect> cuts() {
        List<Defect> cuts = new ArrayList<>();
        Length begun = Length.ZERO;
        boolean lost = false;
        for (Length mark : marks) {
            boolean next = lostFrom.contains(mark);
            if (lost && !next) {
                cuts.add(new Defect.LengthCut(mark.minus(begun)));
            } else if (next && !lost) {
                begun = mark;
            }
            lost = next;
        }
        return cuts;
    }

    /** What a defect still takes beside the cuts; empty if nothing. */
    private Optional<Defect> left(Lying one, Length unplacedCuts) {
        if (one.begins().isEmpty()) {
            return Optional.of(one.defect());
        }
        Length left = Length.ZERO;
        for (Length from : marks) {
            Length to = after(from);
            if (one.covers(from, to) && !lostFrom.contains(from)) {
                left = left.plus(to.minus(from));
            }
        }
        if (one.covers(Length.ZERO, whole)) {
            left = left.minus(unplacedCuts);
        }
        if (!left.isPositive()) {
            return Optional.empty();
        }
        return Optional.of(
                one.defect() instanceof Defect.AlongPart along && left.equals(whole)
                        ? along.whole()
                        : one.defect().over(left));
    }
}
