package org.woodyield.job;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.woodyield.measure.Length;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.scaling.KerfRule;

/** A log rule from assumptions for somebody's own saw, written in place of a rule's key. */
final class OwnRule {

    private static final String WORD = "own ";
    private static final String KERF = "kerf";
    private static final String BOARD = "board";
    private static final String SHRINKAGE = "shrinkage";
    private static final String SLAB = "slab";
    private static final String TAPER = "taper";
    private static final String SECTION = "section";
    private static final List<String> NAMES = List.of(KERF, BOARD, SHRINKAGE, SLAB, TAPER, SECTION);
    private static final Length LONGEST = Length.feet(60);
    private static final double STEEPEST = 0.08;

    /** How one is written, for the help. */
    static final String WORDS = "'" + WORD + "kerf 3/16 in; slab 2 in; taper 1 in per 8 ft' for a saw of one's own";

    /** What can be said, for the list of rules. */
    static final String LIST = """
            own kerf 3/16 in; board 1 in; shrinkage 1/16 in; slab 2 in; taper 1 in per 8 ft; section 4 ft
                A rule for your own saw, derived from these assumptions; in quotes, since it has blanks.
                Only the kerf is needed: for the others those of the International rule are taken,
                board 1 in, shrinkage 1/16 in, taper 1/2 in per 4 ft, section 4 ft, and as slab, the
                plank as wide as the log that goes for slabs and edgings, 2.53 in.
            """;

    private OwnRule() {}

    /** Whether this is written in place of a key. */
    static boolean is(String key) {
        return (key + " ").toLowerCase(Locale.ROOT).startsWith(WORD);
    }

    /** The rule; what cannot be read is noted. */
    static Optional<KerfRule> read(String key, List<String> problems) {
        Problems found = new Problems();
        Optional<KerfRule> rule = rule(new Cell("rule '" + key + "'", 0, "", key, found), found);
        found.inOrder().forEach(problem -> problems.add(problem.toString()));
        return rule;
    }

    private static Optional<KerfRule> rule(Cell key, Problems problems) {
        Map<String, Cell> given = new HashMap<>();
        for (Cell part : key.part((key.text() + " ").substring(WORD.length())).split(';')) {
            int end = part.text().indexOf(' ');
            String name = (end < 0 ? part.text() : part.text().substring(0, end)).toLowerCase(Locale.ROOT);
            if (!NAMES.contains(name)) {
                String near = Nearest.question(name, NAMES);
                part.refuse(
                        String.join(", ", NAMES) + ", each with its value, such as " + WORD + "kerf 3/16 in; slab 2 in",
                        near);
                continue;
            }
            Cell value =
                    new Cell("own rule", 0, name, end < 0 ? "" : part.text().substring(end), problems);
            if (given.putIfAbsent(name, value) != null) {
                value.refuse("each assumption once", "remove one of the two");
            }
        }
        if (problems.isEmpty() && !given.containsKey(KERF)) {
            key.refuse("the kerf at least", "add it, such as " + WORD + "kerf 3/16 in");
        }
        if (!problems.isEmpty()) {
            return Optional.empty();
        }
        Map<String, Double> inches = new HashMap<>();
        given.forEach((name, cell) -> (name.equals(TAPER)
                        ? cell.slope(STEEPEST).map(ratio -> 12 * ratio)
                        : cell.lengthOrNoneUpTo(LONGEST, "check the unit").map(Length::toInches))
                .ifPresent(value -> inches.put(name, value)));
        if (!problems.isEmpty()) {
            return Optional.empty();
        }
        try {
            KerfRule usual = KerfRule.likeInternational(inches.getOrDefault(KERF, 0.0));
            return Optional.of(new KerfRule(
                    key.text().toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9.]+", "-"),
                    "Own saw, " + key.text().substring(WORD.length()).strip(),
                    inches.getOrDefault(BOARD, usual.boardThicknessInches()),
                    usual.kerfInches(),
                    inches.getOrDefault(SHRINKAGE, usual.shrinkageInches()),
                    inches.getOrDefault(SLAB, usual.slabPlankInches()),
                    inches.getOrDefault(TAPER, usual.taperInchesPerFoot()),
                    given.containsKey(SECTION) ? inches.getOrDefault(SECTION, 0.0) / 12 : usual.sectionFeet()));
        } catch (OutOfDomainException e) {
            key.refuse(e.parameter() + " " + e.limits(), e.remedy());
            return Optional.empty();
        }
    }
}
