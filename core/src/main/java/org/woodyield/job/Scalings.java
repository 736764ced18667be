package org.woodyield.job;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.woodyield.log.SolidVolume;
import org.woodyield.measure.OutOfDomainException;
import org.woodyield.scaling.CubicRule;
import org.woodyield.scaling.Jurisdiction;
import org.woodyield.scaling.LogRule;
import org.woodyield.scaling.LogRules;
import org.woodyield.wood.NearestNames;

/** Finds rules and laws by the keys that somebody wrote. */
final class Scalings {

    /** What stands before the key of a law where a rule may have the same. */
    static final String LAW = "law-";

    private Scalings() {}

    /** Log rules only, of a list with commas, all problems noted; none for an empty text. A {@link OwnRule} may stand for a key. */
    static List<LogRule> logRules(String ids, List<String> problems) {
        List<LogRule> rules = new ArrayList<>();
        for (String id : keys(ids, "rule", problems)) {
            if (OwnRule.is(id)) {
                OwnRule.read(id, problems).ifPresent(rules::add);
                continue;
            }
            try {
                rules.add(LogRules.byId(id));
            } catch (OutOfDomainException e) {
                problems.add(e.getMessage());
            }
        }
        return rules;
    }

    /**
     * Log rules, cubic rules and volume formulas of one list with commas and laws of another, all problems noted.
     * A {@link OwnRule} may stand for a key.
     */
    static List<Scaling> of(String rules, String laws, List<String> problems) {
        List<Scaling> found = new ArrayList<>();
        for (String id : keys(rules, "rule", problems)) {
            if (OwnRule.is(id)) {
                OwnRule.read(id, problems).map(Scalings::plain).ifPresent(found::add);
                continue;
            }
            rule(id).ifPresentOrElse(found::add, () -> problems.add(unknown("rule", id, keysOfRules())));
        }
        for (String id : keys(laws, "law", problems)) {
            law(id, problems).map(Scalings::law).ifPresent(found::add);
        }
        return found;
    }

    /** A law by its key, with or without {@link #LAW} before it. */
    static Optional<Jurisdiction> law(String id, List<String> problems) {
        try {
            return Optional.of(Jurisdiction.byId(id.startsWith(LAW) ? id.substring(LAW.length()) : id));
        } catch (OutOfDomainException e) {
            String near = NearestNames.question(
                    id,
                    Arrays.stream(Jurisdiction.values()).map(Jurisdiction::id).toList());
            problems.add(e.getMessage() + (near.isEmpty() ? "" : "; " + near));
            return Optional.empty();
        }
    }

    static Scaling.BoardFeet law(Jurisdiction place) {
        return new Scaling.BoardFeet(
                LAW + place.id(),
                place.label() + ", " + place.rule().name(),
                place.rule(),
                place.convention(),
                place.source());
    }

    static Scaling.BoardFeet plain(LogRule rule) {
        return new Scaling.BoardFeet(
                rule.id(), rule.name(), rule, Scaling.PLAIN, rule.sources().get(0));
    }

    static Optional<Scaling> rule(String id) {
        return Optional.ofNullable(all().get(id));
    }

    private static Map<String, Scaling> all() {
        Map<String, Scaling> all = new LinkedHashMap<>();
        Stream.concat(LogRules.all().stream(), LogRules.onRequest().stream())
                .map(rule -> new Scaling.BoardFeet(
                        rule.id(),
                        rule.name(),
                        rule,
                        Scaling.PLAIN,
                        rule.sources().get(0)))
                .forEach(one -> all.put(one.key(), one));
        for (CubicRule rule : CubicRule.values()) {
            all.put(rule.id(), new Scaling.Cubic(rule));
        }
        all.put(Scaling.BritishColumbia.KEY, new Scaling.BritishColumbia());
        for (SolidVolume formula : SolidVolume.values()) {
            all.put(formula.id(), new Scaling.Formula(formula));
        }
        return all;
    }

    /** The keys of all rules, those that answer only when asked for among them. */
    static Collection<String> keysOfRules() {
        return all().keySet();
    }

    static String unknown(String what, String id, Collection<String> known) {
        String near = NearestNames.question(id, known);
        return what + " is '" + id + "'; allowed: " + String.join(", ", known) + (near.isEmpty() ? "" : "; " + near);
    }

    private static Set<String> keys(String list, String what, List<String> problems) {
        Set<String> keys = new LinkedHashSet<>();
        if (list.isBlank()) {
            return keys;
        }
        for (String part : list.split(",", -1)) {
            if (part.indexOf(';') >= 0 && !OwnRule.is(part.strip())) {
                problems.add(
                        what + " is '" + part.strip() + "'; allowed: one key, several with commas between them; write "
                                + String.join(", ", List.of(part.strip().split("\\s*;\\s*", -1))));
            } else if (OwnRule.isAssumption(part.strip())) {
                problems.add(what + " is '" + part.strip() + "'; allowed: a key; the assumptions of a rule of one's own"
                        + " stand behind 'own' with semicolons between them, such as own kerf 3/16 in; slab 2 in");
            } else if (!keys.add(part.strip())) {
                problems.add(what + " '" + part.strip() + "' is named twice; name each " + what + " once");
            }
        }
        return keys;
    }
}
