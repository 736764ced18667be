package org.woodyield.job;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import org.woodyield.measure.Length;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.scaling.KerfRule;
import org.woodyield.show.NumberText;
import org.woodyield.wood.NearestNames;

/** A log rule from assumptions for somebody's own saw, written in place of a rule's key. */
final class OwnRule {

    private static final String WORD = "own ";
    private static final String KEY = "own-";
    private static final String NAME = "Own saw, ";
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

    /** The dashes of a key before each assumption but the first. */
    private static final Pattern NEXT = Pattern.compile("-(?=(?:" + String.join("|", NAMES) + ")-)");

    /** Whether this is written in place of a key, or is the key of such a rule. */
    static boolean is(String key) {
        String text = (key + " ").toLowerCase(Locale.ROOT);
        return text.startsWith(WORD) || text.startsWith(KEY);
    }

    /** As it is written; a key, which has dashes for all but letters and digits, is taken apart again. */
    private static String written(String key) {
        String text = key.strip();
        if (!text.toLowerCase(Locale.ROOT).startsWith(KEY)) {
            return text;
        }
        return WORD
                + NEXT.matcher(text.substring(KEY.length()).toLowerCase(Locale.ROOT))
                        .replaceAll("; ")
                        .replaceAll("(\\d)-(\\d+)-(\\d+)", "$1 $2/$3")
                        .replaceAll("(\\d)-(\\d+)", "$1/$2")
                        .replace('-', ' ');
    }

    /** The key of a rule that is written so: names columns, and is read back to the same rule. */
    private static String key(String written) {
        return written.toLowerCase(Locale.ROOT)
                .replaceAll("[\"\u2033\u201d]|''", " in ")
                .replaceAll("['\u2032\u2019]", " ft ")
                .replaceAll("[^a-z0-9.]+", "-")
                .replaceAll("-$", "");
    }

    /** All that a rule was made of: what was written, and what was taken for the rest. */
    static List<String> assumptions(KerfRule rule) {
        String written = rule.name().substring(NAME.length());
        Map<String, String> all = new LinkedHashMap<>();
        all.put(KERF, inches(rule.kerfInches()));
        all.put(BOARD, inches(rule.boardThicknessInches()));
        all.put(SHRINKAGE, inches(rule.shrinkageInches()));
        all.put(SLAB, inches(rule.slabPlankInches()));
        all.put(TAPER, inches(rule.taperInchesPerFoot()) + " per ft");
        all.put(SECTION, NumberText.full(rule.sectionFeet()) + " ft");
        Set<String> given = new LinkedHashSet<>();
        for (String part : written.split(";", -1)) {
            given.add(part.strip().toLowerCase(Locale.ROOT).split(" ", 2)[0]);
        }
        List<String> taken = new ArrayList<>();
        all.forEach((name, value) -> {
            if (!given.contains(name)) {
                taken.add(name + " " + value);
            }
        });
        List<String> lines = new ArrayList<>(List.of("Given: " + written + "."));
        if (!taken.isEmpty()) {
            lines.add("Not given, and taken as in the International rule: " + String.join("; ", taken) + ".");
        }
        return lines;
    }

    private static String inches(double value) {
        return NumberText.significant(value, 6) + " in";
    }

    /** Whether this is an assumption of such a rule, written as if it were a key of its own. */
    static boolean isAssumption(String key) {
        return NAMES.stream().anyMatch(name -> key.toLowerCase(Locale.ROOT).startsWith(name + " "));
    }

    /** The rule; what cannot be read is noted. */
    static Optional<KerfRule> read(String key, List<String> problems) {
        Problems found = new Problems();
        Optional<KerfRule> rule = rule(new Cell("rule '" + key + "'", 0, "", written(key), found), found);
        found.inOrder().forEach(problem -> problems.add(problem.toString()));
        return rule;
    }

    private static Optional<KerfRule> rule(Cell key, Problems problems) {
        Map<String, Cell> given = new HashMap<>();
        for (Cell part : key.part((key.text() + " ").substring(WORD.length())).split(';')) {
            int end = part.text().indexOf(' ');
            String name = (end < 0 ? part.text() : part.text().substring(0, end)).toLowerCase(Locale.ROOT);
            if (!NAMES.contains(name)) {
                String near = NearestNames.question(name, NAMES);
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
                    key(key.text()),
                    NAME + key.text().substring(WORD.length()).strip(),
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
